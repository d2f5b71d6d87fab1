import type {Throw} from './log.js';
import type {Flown} from './measures.js';
import {spreadOf} from './spread.js';

/** What makes a comparison less than fair. */
export type Unfairness = 'few' | 'surfaces' | 'winds' | 'windy' | 'heights' | 'turns';

/** Throws of each that a comparison should have. Common practice, no source. */
export const fewestThrows = 5;
/** Hands this far apart let go at another height: m. */
const sameHeight = 0.1;

/** Words for air that does not move. */
const calm = new Set(['', 'calm']);

const words = (throws: readonly Throw[], of: (one: Throw) => string): ReadonlySet<string> => new Set(throws.map(of).filter((word) => word !== ''));

const differ = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  a.size > 0 && b.size > 0 && (a.size !== b.size || [...a].some((word) => !b.has(word)));

/** What keeps two versions' throws from being thrown alike; the throws that count decide. */
export function unfairness({counted: a}: Flown, {counted: b}: Flown): readonly Unfairness[] {
  if (a.length === 0 || b.length === 0) return [];
  const found: Unfairness[] = [];
  if (Math.min(a.length, b.length) < fewestThrows) found.push('few');
  if (differ(words(a, ({surface}) => surface), words(b, ({surface}) => surface))) found.push('surfaces');
  const wind = ({wind: blows}: Throw): string => (calm.has(blows) ? '' : blows);
  const [windsA, windsB] = [words(a, wind), words(b, wind)];
  if (windsA.size !== windsB.size || differ(windsA, windsB)) found.push('winds');
  else if (windsA.size > 0) found.push('windy');
  const heights = [a, b].map((throws) => spreadOf(throws.flatMap(({height}) => height ?? []))?.mean);
  if (heights[0] !== undefined && heights[1] !== undefined && Math.abs(heights[0] - heights[1]) > sameHeight) found.push('heights');
  // air, arm and glider change in the course of an afternoon
  const last = (throws: readonly Throw[]): number => throws.reduce((late, {at}) => Math.max(late, at), -Infinity);
  const first = (throws: readonly Throw[]): number => throws.reduce((early, {at}) => Math.min(early, at), Infinity);
  if (Math.min(a.length, b.length) > 1 && (last(a) < first(b) || last(b) < first(a))) found.push('turns');
  return found;
}
