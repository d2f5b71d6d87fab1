import {coins, massOf, washers, type Coin, type Washer} from '../../../shared/ballast.js';
import {good, refused, type Outcome} from '../problem.js';
import {placeToAdd} from './adding.js';
import type {PlaneBalance} from './plane-balance.js';
import {withMass, type Addition, type Remedy} from './remedy.js';

export type Piece = Coin | Washer;

/** Coins and washers that a nose can be weighted with, each by its id. */
export const pieces: readonly Piece[] = [...coins, ...washers];
export const pieceOf = (id: string): Piece | undefined => pieces.find((piece) => piece.id === id);

/** Whole pieces, all at one place, and the plane with them. */
export interface WholePieces extends Addition {
  readonly piece: Piece;
  readonly count: number;
  /** As high as they stand in one stack, m. */
  readonly stack: number;
  /** Whether the balance comes to the middle of its target, or only within. */
  readonly exact: boolean;
}

/** More pieces than this are no whole number anybody counts out: take a heavier piece. */
const mostPieces = 60;

/**
 * Whole pieces and the place for them, so that the balance lands in the middle of its target or, where the place for that is out of
 * reach, still within it. Without a count, the count whose place is nearest to where weight should go.
 *
 * Refused: 'pieces-too-light' or 'pieces-too-heavy' {piece, count}: so many cannot be placed anywhere within reach.
 */
export function wholePieces(plane: PlaneBalance, remedy: Remedy, piece: Piece, count?: number): Outcome<WholePieces> {
  const counts = count === undefined ? Array.from({length: mostPieces}, (_, i) => i + 1) : [count];
  const candidates = counts.flatMap((n) => landing(plane, remedy, piece, n) ?? []);
  const best = candidates.reduce<WholePieces | undefined>((a, b) => (a && rank(a, remedy) <= rank(b, remedy) ? a : b), undefined);
  if (best) return good(best);
  const lightest = counts.at(-1) ?? 1;
  const tooLight = lightest * massOf(piece) < remedy.middle.mass;
  return refused({code: tooLight ? 'pieces-too-light' : 'pieces-too-heavy', args: {piece: piece.id, count: count ?? (tooLight ? mostPieces : 1)}});
}

/** What lands in the middle comes before what only lands within; then what is near the place where weight should go. */
const rank = ({exact, place}: WholePieces, remedy: Remedy): number => (exact ? 0 : 100) + Math.abs(place - remedy.place);

function landing(plane: PlaneBalance, {reach}: Remedy, piece: Piece, count: number): WholePieces | undefined {
  const mass = count * massOf(piece);
  const {from, to, middle} = plane.target;
  const wanted = placeToAdd(plane, middle, mass);
  // the whole of a piece lies on the body
  const radius = Math.min(piece.diameter, reach.to - reach.from) / 2;
  const place = Math.min(Math.max(wanted, reach.from + radius), reach.to - radius);
  const addition = withMass(plane, mass, place);
  const {at} = addition.after;
  if (at < from - 1e-9 || at > to + 1e-9) return undefined;
  return {...addition, piece, count, stack: count * piece.thickness, exact: place === wanted};
}
