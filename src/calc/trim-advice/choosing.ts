import type {CauseId} from './causes.js';
import type {Change, Measured} from './change.js';
import type {ChangeId, Past, Sight} from './seen.js';
import {isStep, type Next} from './thread.js';

/** A cause with its changes, and how likely it is now and was before anyone tried to mend it. */
export interface Listed<C extends {readonly id: CauseId; readonly changes: readonly Change[]}> {
  readonly cause: C;
  readonly untried: number;
  readonly weight: number;
}

/** What to try before anything else. */
export interface First<C> {
  readonly cause: C;
  readonly change: Change;
}

/** What is told in the end, and what to try first where something is. */
export interface Choice<C> extends Next {
  readonly first: First<C> | undefined;
}

/** What has to be looked at where a plane does not do what it should. */
export const measuring: Readonly<Record<Sight, Measured>> = {
  good: 'trim', dives: 'trim', swoops: 'trim', zooms: 'trim', drops: 'trim', left: 'straight', right: 'straight', rolls: 'straight', wags: 'held', flutters: 'held',
};

/**
 * What costs nothing is tried first where it is nearly as likely as the likeliest cause: as likely as that was before anyone tried to mend it, so that a check
 * which costs nothing does not come up only after a change. Common practice, no source.
 */
const nearlyAsLikely = 0.45;
export const costsNothing = (change: Change): boolean => change.id === 'throw' || change.id === 'calm' || (change.id === 'secure' && change.what !== 'wing');

/** So many steps in vain, and the plane is measured before there is another. Common practice, no source. */
const beforeMeasuring = 2;

/** The same step the other way. */
const back: Readonly<Partial<Record<ChangeId, ChangeId>>> = {
  'nose-on': 'nose-off', 'nose-off': 'nose-on', 'weight-back': 'weight-forward', 'weight-forward': 'weight-back', 'slip-more': 'slip-less', 'slip-less': 'slip-more',
  'fin': 'fin', 'tip': 'tip', 'untwist': 'untwist',
};

const doneOnce = (change: ChangeId, cause: CauseId | undefined): string => (change === 'secure' ? `secure ${cause ?? ''}` : change);

/**
 * What to try first of all that might help, or that it is time to measure or to stop. What can only be done or not is asked for once; a step of balance, tail
 * or shape may follow another. Two steps in vain, and what was seen does not fit the plane as it was measured: it is measured, one more step follows, and then none.
 *
 * @param listed the likeliest first, with the steps that leave the plane within its usual ranges
 * @param run the steps in a row after which it still does what it does
 * @param known causes that were measured: they come before what costs nothing
 * @param halvings how often a step went too far
 * @param smaller whether a step is smaller than the one that went too far
 */
export function choose<C extends {readonly id: CauseId; readonly changes: readonly Change[]}>(
  listed: readonly Listed<C>[], what: Sight, next: Next, history: readonly Past[], run: readonly Past[], known: ReadonlySet<CauseId>, halvings: number, smaller: (change: Change) => boolean,
): Choice<C> {
  const vain = run.length, likeliest = listed[0]?.cause;
  const found = (first: First<C> | undefined, because: Next['because'] = next.because, then: Next['next'] = next.next): Choice<C> => ({next: then, because, vain, first});
  const stop = (because: Next['because']): Choice<C> => found(undefined, because, 'stop');
  if (next.next === 'stop' || !likeliest) return found(undefined);
  if (next.because === 'overshot') {
    const last = history.at(-1)?.changed, all = listed.flatMap(({cause}) => cause.changes.map((change) => ({cause, change}))).filter(({change}) => isStep(change.id));
    const steps = all.filter(({change}) => change.id === (last && back[last])).concat(all);
    const first = steps.find(({change}) => smaller(change));
    if (first) return found(first);
    if (steps.length > 0 || halvings > 1) return stop('either-way');
    return choose(listed, what, {...next, because: 'other'}, history, run, known, halvings, smaller);
  }
  const done = new Set(run.map(({changed, cause}) => changed && doneOnce(changed, cause)));
  const measured = done.has('measure'), since = measured ? run.slice(run.map(({changed}) => changed).lastIndexOf('measure') + 1) : run;
  const roomForSteps = !measured || !since.some(({changed}) => isStep(changed));
  const open = listed.flatMap((one) => {
    const change = one.cause.changes.find(({id}) => (isStep(id) ? roomForSteps : !done.has(doneOnce(id, one.cause.id))));
    return change ? [{...one, change}] : [];
  });
  if (measured) {
    if (since.length > 0 && vain > beforeMeasuring) return stop('no-fit');
    const steps = open.filter(({change}) => isStep(change.id));
    const first = steps.find(({cause}) => !run.some((past) => past.cause === cause.id)) ?? steps[0] ?? open[0];
    return first ? found(first) : stop('no-fit');
  }
  const measure = (): Choice<C> => found({cause: likeliest, change: {id: 'measure', what: measuring[what]}}, vain > 0 ? 'no-fit' : next.because);
  if (vain >= beforeMeasuring || open.length === 0) return measure();
  // the throw is looked at before a second step at the bench
  const thrown = run.some(({changed}) => isStep(changed)) ? open.find(({change}) => change.id === 'throw') : undefined;
  const first = thrown ?? firstOf(open, known);
  // measured for want of a step: not for a wing that may have gone flat
  return first?.change.id === 'measure' && first.cause.id !== 'lost-camber' ? measure() : found(first);
}

type Open<C> = First<C> & {readonly untried: number; readonly weight: number};

function firstOf<C extends {readonly id: CauseId}>(open: readonly Open<C>[], known: ReadonlySet<CauseId>): Open<C> | undefined {
  const [likeliest] = open;
  if (!likeliest || known.has(likeliest.cause.id)) return likeliest;
  return open.find(({change, weight}) => costsNothing(change) && weight >= nearlyAsLikely * likeliest.untried) ?? likeliest;
}
