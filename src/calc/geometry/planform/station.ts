import {good, refused, type Outcome, type Problem} from '../../problem.js';

/** One place along half a wing: the half is straight-edged from each station to the next. */
export interface Station {
  /** Distance out from the centre line, m. */
  readonly at: number;
  /** Leading edge to trailing edge, m. */
  readonly chord: number;
  /** How far the leading edge here is set back from the leading edge at the root, m; negative when ahead of it. */
  readonly back: number;
}

/** The piece of a half wing between two neighbouring stations. */
export interface Panel {
  readonly inner: Station;
  readonly outer: Station;
  readonly width: number;
}

/** Half a wing whose stations have been checked. */
export interface HalfWing {
  readonly root: Station;
  readonly tip: Station;
  /** From the root out. */
  readonly panels: readonly Panel[];
}

/**
 * Checks the stations of a half wing and pairs them into panels.
 *
 * Refused: 'planform-too-few-stations', 'planform-not-finite' {station}, 'planform-chord-not-positive' {station, chord},
 * 'planform-not-from-centre' {at}, 'planform-out-of-order' {station, at, after}, 'planform-no-span'. `station` counts
 * from 0 at the root. Two stations at one place are a step in the chord.
 */
export function halfWing(stations: readonly Station[]): Outcome<HalfWing> {
  const [root] = stations;
  const tip = stations.at(-1);
  if (!root || !tip || stations.length < 2) return refused({code: 'planform-too-few-stations'});
  const problems: Problem[] = [];
  const panels: Panel[] = [];
  stations.forEach((outer, station) => {
    const {at, chord, back} = outer;
    const inner = stations[station - 1];
    if (![at, chord, back].every(Number.isFinite)) problems.push({code: 'planform-not-finite', args: {station}});
    else if (chord <= 0) problems.push({code: 'planform-chord-not-positive', args: {station, chord}});
    if (!inner) return;
    if (at < inner.at) problems.push({code: 'planform-out-of-order', args: {station, at, after: inner.at}});
    panels.push({inner, outer, width: at - inner.at});
  });
  if (Number.isFinite(root.at) && root.at !== 0) problems.push({code: 'planform-not-from-centre', args: {at: root.at}});
  if (!problems.length && tip.at <= 0) problems.push({code: 'planform-no-span'});
  return problems.length ? refused(...problems) : good({root, tip, panels});
}

/** The integral across a panel of the product of two lengths that change evenly from its inner to its outer station. */
export function integral(panel: Panel, f: (at: Station) => number, g: (at: Station) => number): number {
  const f0 = f(panel.inner), f1 = f(panel.outer), g0 = g(panel.inner), g1 = g(panel.outer);
  return panel.width * (2 * f0 * g0 + f0 * g1 + f1 * g0 + 2 * f1 * g1) / 6;
}
