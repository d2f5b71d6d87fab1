import type {CauseId} from './causes.js';
import type {ChangeId, Past, Seen, Sight} from './seen.js';

/** What to do next, and why. */
export interface Next {
  readonly next: 'stop' | 'again' | 'change';
  readonly because:
    | 'two-good' | 'no-fit' | 'either-way' | 'unsteady' | 'many'
    | 'first-good' | 'differs' | 'hand' | 'lost'
    | 'first' | 'still' | 'confirmed' | 'measured' | 'overshot' | 'other';
  /** How many steps in a row have changed nothing of what is seen. */
  readonly vain: number;
}

const ways: Readonly<Partial<Record<Sight, number>>> = {dives: 1, swoops: -1, zooms: -1, drops: -1};
const sides: Readonly<Partial<Record<Sight, number>>> = {left: 1, right: -1};

/** Whether two throws did the same: a swoop ends as a zoom where the ground is near. */
export const alike = (a: Sight, b: Sight): boolean => a === b || (a === 'swoops' && b === 'zooms') || (a === 'zooms' && b === 'swoops');

export const flips = (a: Sight, b: Sight): boolean => (ways[a] ?? 0) * (ways[b] ?? 0) < 0 || (sides[a] ?? 0) * (sides[b] ?? 0) < 0;

/** Steps at the bench that have a size, and so can go too far; the others are done or not. */
const steps: ReadonlySet<ChangeId> = new Set<ChangeId>([
  'nose-on', 'nose-off', 'weight-back', 'weight-forward', 'slip-more', 'slip-less', 'fin', 'tip', 'untwist', 'dihedral', 'fin-larger',
]);
export const isStep = (change: ChangeId | undefined): boolean => change !== undefined && steps.has(change);

/** After these the plane is as it was. */
const asItWas = (change: ChangeId | undefined): boolean => change === undefined || change === 'throw' || change === 'calm';

/** Throws of the same plane that fly otherwise one after another, and steps at the bench, after which somebody has to look elsewhere. Common practice, no source. */
const mostTurns = 3, mostSteps = 8;

/** What to do after a throw, from this one and those before it. One change at a time; two good glides in a row and nothing is changed any more. */
export function nextAfter(seen: Seen, history: readonly Past[]): Next {
  const before = history.at(-1), vain = runOf(seen, history).length;
  const found = (next: Next['next'], because: Next['because']): Next => ({next, because, vain});
  if (seen.what === 'good') return before && before.changed === undefined && before.seen.what === 'good' ? found('stop', 'two-good') : found('again', 'first-good');
  if (before === undefined) return found('change', 'first');
  if (turnsOf(seen, history) >= mostTurns) return found('stop', 'unsteady');
  const same = alike(before.seen.what, seen.what);
  // the same plane that flew otherwise was thrown otherwise
  if (asItWas(before.changed) && !same) return found('again', before.seen.what === 'good' ? 'lost' : before.changed === undefined ? 'differs' : 'hand');
  if (history.filter(({changed}) => isStep(changed)).length >= mostSteps) return found('stop', 'many');
  if (!same) return found('change', isStep(before.changed) && flips(before.seen.what, seen.what) ? 'overshot' : 'other');
  return found('change', before.changed === undefined ? 'confirmed' : before.changed === 'measure' ? 'measured' : 'still');
}

/** How often in a row the same plane flew otherwise, up to now. */
function turnsOf(seen: Seen, history: readonly Past[]): number {
  const all = [...history, {seen}];
  let turns = 0;
  for (let i = all.length - 1; i > 0; i--) {
    const one = all[i], before = all[i - 1];
    if (!one || !before || !asItWas(before.changed) || alike(before.seen.what, one.seen.what)) break;
    turns += 1;
  }
  return turns;
}

/** A speed asked for that differs by less is the same plane's. Common practice, no source. */
export const sameSpeed = 0.03;

/**
 * The steps in a row after which it still does what it does now. Where measuring has given other numbers, what was done before was done by the wrong ones, and
 * does not count.
 *
 * @param right how fast the plane is to be thrown now, m/s
 */
export function runOf({what}: Seen, history: readonly Past[], right?: number): readonly Past[] {
  const run: Past[] = [];
  let then = right;
  for (const past of [...history].reverse()) {
    if (!alike(past.seen.what, what)) break;
    if (past.changed === 'measure' && past.right !== undefined && then !== undefined && Math.abs(past.right / then - 1) > sameSpeed) break;
    if (past.changed !== undefined) run.unshift(past);
    then = past.right ?? then;
  }
  return run;
}

/** How often a step went too far: each time the next one is half as large. */
export function halvingsAfter(seen: Seen, history: readonly Past[]): number {
  const all = [...history, {seen}];
  return all.filter((one, i) => {
    const before = all[i - 1];
    return before !== undefined && isStep(before.changed) && flips(before.seen.what, one.seen.what);
  }).length;
}

/** How often a change was made for the same sight already, with the sight still there. */
export const triesOf = (change: ChangeId, {what}: Seen, history: readonly Past[]): number =>
  history.filter(({seen, changed}) => alike(seen.what, what) && changed === change).length;

/** What is left of a suspicion each time its change was made and did not help: a hand is mended or not, a balance may need another step. Common practice, no source. */
export const leftOver = (cause: CauseId): number => cause === 'nose-heavy' || cause === 'tail-heavy' ? 0.8 : 0.35;
