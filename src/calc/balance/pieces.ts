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

/** So far from where weight usually goes, it is still there that a builder sticks it, m. Common practice, no source. */
const handy = 0.025;

/** A balance that pieces bring to a handy place keeps so far from the edges of its target, as a share of its width: nobody lays them to the tenth of a millimetre. */
const room = 0.1;

/**
 * Whole pieces and the place for them: near the place where weight usually goes, so that the balance lands in the middle of its target or at least within. Only
 * where no number of them does that there, wherever they come out even, in the middle if they can. Without a count, the count that does it best.
 *
 * Refused: 'pieces-too-light' or 'pieces-too-heavy' {piece, count}: so many cannot be placed anywhere within reach, or weigh with the plane more than `most` kg.
 */
export function wholePieces(plane: PlaneBalance, remedy: Remedy, piece: Piece, count?: number, most = Infinity): Outcome<WholePieces> {
  const counts = count === undefined ? Array.from({length: mostPieces}, (_, i) => i + 1) : [count];
  const candidates = counts.filter((n) => plane.mass + n * massOf(piece) <= most).flatMap((n) => landing(plane, remedy, piece, n) ?? []);
  const best = candidates.reduce<Landing | undefined>((a, b) => (a && a.rank <= b.rank ? a : b), undefined);
  if (best) return good(best.pieces);
  const lightest = counts.at(-1) ?? 1;
  const tooLight = lightest * massOf(piece) < remedy.middle.mass;
  return refused({code: tooLight ? 'pieces-too-light' : 'pieces-too-heavy', args: {piece: piece.id, count: count ?? (tooLight ? mostPieces : 1)}});
}

/** The better, the less. */
interface Landing {
  readonly pieces: WholePieces;
  readonly rank: number;
}

function landing(plane: PlaneBalance, {reach, place: usual}: Remedy, piece: Piece, count: number): Landing | undefined {
  const mass = count * massOf(piece);
  const {from, to, middle} = plane.target;
  const wanted = placeToAdd(plane, middle, mass);
  // the whole of a piece lies on the body
  const radius = Math.min(piece.diameter, reach.to - reach.from) / 2;
  const onBody = (place: number): number => Math.min(Math.max(place, reach.from + radius), reach.to - radius);
  const laid = (place: number, edge: number, behind: number): Landing | undefined => {
    const addition = withMass(plane, mass, place), exact = place === wanted;
    const {at} = addition.after;
    if (at < from + edge - 1e-9 || at > to - edge + 1e-9) return undefined;
    return {pieces: {...addition, piece, count, stack: count * piece.thickness, exact}, rank: behind + (exact ? Math.abs(place - usual) : 100 + Math.abs(at - middle))};
  };
  return laid(onBody(Math.min(Math.max(wanted, usual - handy), usual + handy)), room * (to - from), 0) ?? laid(onBody(wanted), 0, 1000);
}
