import {wingDihedral} from '../../bench/dihedral.js';
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
}

/**
 * The wing's planform in flight: spans and areas shrink with the dihedral, about 2 % with usual tips. The chord is taken
 * as cut: camber shortens it by less than 1 %. Refused with what the dihedral or the planform refuse.
 */
export const wingAsFlown = memo((wing: GliderDesign['wing'], board: GliderDesign['board']): Outcome<FlownWing> => {
  const dihedral = wingDihedral(wing, board);
  if (!dihedral.ok) return dihedral;
  const {panels} = dihedral.value;
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
  return half.ok ? good({...planform.value, quarterChordSweep: quarter.value, halfChordSweep: half.value}) : half;
});
