import {massOf} from '../../../shared/ballast.js';
import {pieceOf, pieces, type Piece} from '../../calc/balance/pieces.js';

/** Weights without a number of pieces. */
export type Loose = 'clay' | 'grams';

/** What a reader can choose to weight a plane with. */
export interface WeightChoices {
  readonly pieces: readonly Piece[];
  readonly loose: readonly Loose[];
  /** What is chosen to begin with. */
  readonly first: string;
}

/** The small change that a nose is usually weighted with, where the reader's language says which country. */
const usual: Readonly<Record<string, string>> = {EUR: 'eur-0.05', GBP: 'gbp-0.02', USD: 'usd-0.05'};

function currencyOf(speech: string): string {
  if (/^en-us\b/i.test(speech)) return 'USD';
  return /^en-gb\b/i.test(speech) ? 'GBP' : 'EUR';
}

/** The choices: what the page's author says is at hand, otherwise the coins of the reader's country, washers, clay and anything weighed. */
export function weightChoices(atHand: string | undefined, speech: string): WeightChoices {
  const named = (atHand ?? '').split(/[\s,;]+/).filter(Boolean);
  const known = named.flatMap((id) => pieceOf(fullId(id)) ?? []);
  const loose = (['clay', 'grams'] as const).filter((id) => named.includes(id));
  const [piece] = known;
  if (piece) return {pieces: known, loose, first: piece.id};
  if (loose[0]) return {pieces: [], loose, first: loose[0]};
  const currency = currencyOf(speech);
  return {
    pieces: pieces.filter((one) => !('currency' in one) || one.currency === currency).filter((one) => massOf(one) > 2e-4),
    loose: ['clay', 'grams'], first: usual[currency] ?? 'grams',
  };
}

/** `m8` -> `washer-m8`, `eur-5c` -> `eur-0.05`: the ids of the coins and washers as people write them. */
function fullId(id: string): string {
  const lower = id.toLowerCase();
  if (/^m\d+$/.test(lower)) return `washer-${lower}`;
  const cents = /^(eur|gbp|usd)-(\d+)(?:c|p)$/.exec(lower);
  if (!cents) return lower;
  const value = Number(cents[2]);
  return `${cents[1] ?? ''}-${value < 100 ? (value / 100).toFixed(2) : String(value / 100)}`;
}
