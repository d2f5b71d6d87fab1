import {wingDihedral, type WingDihedral} from '../../bench/dihedral.js';
import {wingStations} from '../../bench/wing-stations.js';
import type {GliderDesign} from '../../design/design.js';
import {asFlown, planformOf, sectionAt, sweepOf, type Planform} from '../../geometry/planform/index.js';
import {memo} from '../../memo.js';
import {good, type Outcome} from '../../problem.js';

/** A wing seen from straight above in flight, its tips raised. */
export interface FlownWing extends Planform {
  /** rad, positive backwards. */
  readonly quarterChordSweep: number;
  readonly halfChordSweep: number;
  /** How high the tips stand over the middle, m. */
  readonly tipRise: number;
}

/** A stretch of half a wing at one angle from level. */
export type Tilted = WingDihedral['panels'][number];

/**
 * The wing's planform in flight: spans and areas shrink with the dihedral, about 2 % with usual tips. The chord is taken
 * as cut: camber shortens it by less than 1 %. Refused with what the planform refuses, and with what the bench does where
 * the blocks are given and not the angles.
 */
export const flownWing = memo((wing: GliderDesign['wing'], board: GliderDesign['board']): Outcome<FlownWing> => {
  const tilted = tiltedPanels(wing, board);
  if (!tilted.ok) return tilted;
  const panels = tilted.value;
  const cut = wingStations(wing);
  const joints = panels.map(({from}) => from).filter((at) => at > 0 && !cut.some((s) => s.at === at));
  const stations = [...cut, ...joints.flatMap((at) => sectionAt(cut, at) ?? [])].sort((a, b) => a.at - b.at);
  const angles = stations.slice(1).map(({at}) => panels.find(({to}) => at <= to)?.angle ?? panels.at(-1)?.angle ?? 0);
  const flown = asFlown(stations, angles);
  if (!flown.ok) return flown;
  const planform = planformOf(flown.value);
  const quarter = sweepOf(flown.value, 0.25);
  const half = sweepOf(flown.value, 0.5);
  if (!planform.ok) return planform;
  if (!quarter.ok) return quarter;
  const tipRise = panels.reduce((sum, {from, to, angle}) => sum + (to - from) * Math.sin(angle), 0);
  return half.ok ? good({...planform.value, quarterChordSweep: quarter.value, halfChordSweep: half.value, tipRise}) : half;
});

/** Angles that are given need no bench: a block that cannot be stood there does not keep a plane from balancing. */
export function tiltedPanels(wing: GliderDesign['wing'], board: GliderDesign['board']): Outcome<readonly Tilted[]> {
  if (wing.dihedralBy === 'block') {
    const dihedral = wingDihedral(wing, board);
    return dihedral.ok ? good(dihedral.value.panels) : dihedral;
  }
  let angle = 0;
  const edges = [{at: 0, angle: 0}, ...wing.joints];
  return good(edges.map((edge, i) => ({from: edge.at, to: edges[i + 1]?.at ?? wing.span / 2, angle: angle += edge.angle})).filter(({from, to}) => to > from));
}
