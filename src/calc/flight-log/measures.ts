import type {QuantityKind} from '../units/kinds.js';
import type {FlightLog, Throw, Version} from './log.js';
import {meanSpeed} from './throw-check.js';

/** What throws are compared by. */
export type MeasureId = 'distance' | 'time' | 'ratio' | 'sink' | 'speed';

export interface Measure {
  readonly id: MeasureId;
  /** None for the glide ratio, which is a plain number. */
  readonly kind: QuantityKind | undefined;
  readonly better: 'more' | 'less' | 'neither';
  /** Of one throw; undefined where it was not measured. */
  of(one: Throw): number | undefined;
}

/**
 * Each from one throw, hand to ground: glide ratio d/h, sink h/t, speed √(d² + h²)/t. What the hand gave is in them too, so they are those of the
 * plane's own glide only where it was thrown at its gliding speed.
 */
export const measures: readonly Measure[] = [
  {id: 'distance', kind: 'length', better: 'more', of: ({distance}) => distance},
  {id: 'time', kind: 'time', better: 'more', of: ({time}) => time},
  {id: 'ratio', kind: undefined, better: 'more', of: ({distance, height}) => (distance === undefined || height === undefined ? undefined : distance / height)},
  {id: 'sink', kind: 'speed', better: 'less', of: ({time, height}) => (time === undefined || height === undefined ? undefined : height / time)},
  {id: 'speed', kind: 'speed', better: 'neither', of: (one) => (one.height === undefined ? undefined : meanSpeed(one))},
];

export const measureOf = (id: string | null | undefined): Measure => {
  const found = measures.find((each) => each.id === id) ?? measures[0];
  if (!found) throw new TypeError('there are no measures');
  return found;
};

/** The throws of one version and what they measured. */
export interface Flown {
  readonly version: Version;
  readonly throws: readonly Throw[];
  /** Those that count and were measured so, oldest first. */
  readonly counted: readonly Throw[];
  readonly values: readonly number[];
}

/** The throws of each version by one measure, in the order of the versions. */
export function flownBy({versions, throws}: FlightLog, measure: Measure): readonly Flown[] {
  const by = new Map<string, Throw[]>(versions.map(({id}) => [id, []]));
  for (const one of throws) by.get(one.version)?.push(one);
  return versions.map((version) => {
    const own = by.get(version.id) ?? [];
    const counted = own.filter((one) => !one.out && measure.of(one) !== undefined);
    return {version, throws: own, counted, values: counted.map((one) => measure.of(one) ?? 0)};
  });
}
