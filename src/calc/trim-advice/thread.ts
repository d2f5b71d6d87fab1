import type {CauseId} from './causes.js';
import type {ChangeId, Past, Seen, Sight} from './seen.js';

/** What to do next, and why. */
export interface Next {
  readonly next: 'stop' | 'again' | 'change';
  readonly because: 'two-good' | 'first-good' | 'differs' | 'first' | 'still' | 'overshot' | 'lost';
}

const ways: Readonly<Partial<Record<Sight, number>>> = {dives: 1, swoops: -1, zooms: -1, drops: -1};
const sides: Readonly<Partial<Record<Sight, number>>> = {left: 1, right: -1};

/** What to do after a throw, from this one and those before it. One change at a time; two good glides in a row and nothing is changed any more. */
export function nextAfter(seen: Seen, history: readonly Past[]): Next {
  const before = history.at(-1);
  const unchanged = before !== undefined && before.changed === undefined;
  if (seen.what === 'good') {
    return unchanged && before.seen.what === 'good' ? {next: 'stop', because: 'two-good'} : {next: 'again', because: 'first-good'};
  }
  if (before === undefined) return {next: 'change', because: 'first'};
  // the same plane that flew otherwise was thrown otherwise
  if (unchanged && before.seen.what !== seen.what) return {next: 'again', because: before.seen.what === 'good' ? 'lost' : 'differs'};
  return {next: 'change', because: before.seen.what === seen.what ? 'still' : flips(before.seen.what, seen.what) ? 'overshot' : 'first'};
}

const flips = (a: Sight, b: Sight): boolean => (ways[a] ?? 0) * (ways[b] ?? 0) < 0 || (sides[a] ?? 0) * (sides[b] ?? 0) < 0;

/** How often a change went too far: each time the next step is half as large. */
export function halvingsAfter(seen: Seen, history: readonly Past[]): number {
  const all = [...history, {seen}];
  return all.filter((one, i) => {
    const before = all[i - 1];
    return before?.changed !== undefined && flips(before.seen.what, one.seen.what);
  }).length;
}

/** How often a change was made for the same sight already, with the sight still there. */
export const triesOf = (change: ChangeId, {what}: Seen, history: readonly Past[]): number =>
  history.filter(({seen, changed}) => seen.what === what && changed === change).length;

/** What is left of a suspicion each time its change was made and did not help: a hand is mended or not, a balance may need another step. Common practice, no source. */
export const leftOver = (cause: CauseId): number => cause === 'nose-heavy' || cause === 'tail-heavy' ? 0.8 : 0.35;
