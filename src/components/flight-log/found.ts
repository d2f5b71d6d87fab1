import {compare, meanInterval, type Comparison, type Interval, type StudentT} from '../../calc/flight-log/comparison.js';
import {differences, type Difference} from '../../calc/flight-log/differences.js';
import {unfairness, type Unfairness} from '../../calc/flight-log/fairness.js';
import type {FlightLog, Version} from '../../calc/flight-log/log.js';
import {flownBy, type Flown, type Measure} from '../../calc/flight-log/measures.js';
import {throwsToSettle, type MoreThrows} from '../../calc/flight-log/plan.js';
import {commonScatter, spreadOf, type Spread} from '../../calc/flight-log/spread.js';
import {readDesignFile} from '../../calc/design/file.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {Outcome} from '../../calc/problem.js';

/** A version with its throws by the measure chosen. */
export interface Told extends Flown {
  readonly spread: Spread | undefined;
  /** Where its true average lies; undefined until the statistics have arrived, or with one throw. */
  readonly interval: Interval | undefined;
}

/** Two versions beside one another, the older first. */
export interface Pair {
  readonly a: Told;
  readonly b: Told;
  /** Undefined until the statistics have arrived. */
  readonly comparison: Outcome<Comparison> | undefined;
  readonly more: MoreThrows | undefined;
  readonly unfair: readonly Unfairness[];
  /** What differs between the gliders; undefined where one of them is not known. */
  readonly differences: readonly Difference[] | undefined;
}

/** What the log tells. */
export interface LogFound {
  readonly log: FlightLog;
  readonly measure: Measure;
  readonly told: readonly Told[];
  readonly pair: Pair | undefined;
  /** The version told of where two are not compared: the one thrown last. */
  readonly single: Told | undefined;
  /** Common to all versions. */
  readonly scatter: number | undefined;
}

/** Which versions a reader wants compared, by their ids; `none` for no comparison, undefined for the two thrown last. */
export interface Picked { readonly a: string | undefined; readonly b: string | undefined }

const designs = new Map<string, GliderDesign | undefined>();

/** The glider of a version, where it is known. */
export function designOf({design}: Version): GliderDesign | undefined {
  if (design === undefined) return undefined;
  if (!designs.has(design)) {
    const read = readDesignFile(design);
    designs.set(design, read.ok ? read.value.design : undefined);
  }
  return designs.get(design);
}

const lastThrown = ({counted}: Flown): number => counted.at(-1)?.at ?? -Infinity;

export function findIn(log: FlightLog, measure: Measure, picked: Picked, t: StudentT | undefined): LogFound {
  const told = flownBy(log, measure).map((flown): Told => {
    const spread = spreadOf(flown.values);
    const interval = spread && t ? meanInterval(spread, t) : undefined;
    return {...flown, spread, interval: interval?.ok ? interval.value : undefined};
  });
  const flown = told.filter(({spread}) => spread).sort((x, y) => lastThrown(y) - lastThrown(x));
  const named = (id: string | undefined): Told | undefined => told.find(({version, spread}) => version.id === id && spread);
  const b = named(picked.b) ?? flown[0];
  const a = picked.a === 'none' ? undefined : named(picked.a) ?? flown.find((one) => one !== b);
  return {
    log, measure, told, single: b, scatter: commonScatter(told.map(({spread}) => spread)),
    pair: a && b && a !== b ? pairOf(a, b, t) : undefined,
  };
}

function pairOf(one: Told, other: Told, t: StudentT | undefined): Pair {
  const [a, b] = one.version.at <= other.version.at ? [one, other] : [other, one];
  const comparison = t && compare(a.values, b.values, t);
  const [designA, designB] = [designOf(a.version), designOf(b.version)];
  return {
    a, b, comparison, unfair: unfairness(a, b),
    more: t && comparison?.ok ? throwsToSettle(comparison.value, t) : undefined,
    differences: designA && designB && differences(designA, designB),
  };
}

/** More lanes than this are no picture any more: the versions thrown last are shown. */
export const mostLanes = 6;

/** The versions that the picture shows, in their own order; the two that are compared are always among them. */
export function shownIn({told, pair}: LogFound): readonly Told[] {
  const thrown = told.filter(({throws, spread}) => spread ?? throws.length > 0);
  const wanted = new Set<Told>(pair ? [pair.a, pair.b] : []);
  for (const one of [...thrown].reverse()) if (wanted.size < mostLanes) wanted.add(one);
  return thrown.filter((one) => wanted.has(one));
}
