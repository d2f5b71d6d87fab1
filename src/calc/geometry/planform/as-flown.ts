import {good, refused, type Outcome} from '../../problem.js';
import {halfWing, type Station} from './station.js';

/**
 * The stations of a half wing seen from straight above when its panels are tilted up, each by its own angle from level
 * in radians, from the root out. Chords stay, distances across shrink by the cosine.
 *
 * Refused as {@link halfWing} says, and with 'dihedral-one-per-panel' {panels, angles} or
 * 'dihedral-past-upright' {panel, angle} for a panel at or past a right angle.
 */
export function asFlown(stations: readonly Station[], angles: readonly number[]): Outcome<readonly Station[]> {
  const half = halfWing(stations);
  if (!half.ok) return half;
  const {panels} = half.value;
  if (panels.length !== angles.length) {
    return refused({code: 'dihedral-one-per-panel', args: {panels: panels.length, angles: angles.length}});
  }
  const upright = angles.findIndex((angle) => !(Math.abs(angle) < Math.PI / 2));
  if (upright >= 0) return refused({code: 'dihedral-past-upright', args: {panel: upright, angle: angles[upright] ?? NaN}});
  let at = 0;
  return good(stations.map((station, i) => {
    at += (panels[i - 1]?.width ?? 0) * Math.cos(angles[i - 1] ?? 0);
    return {...station, at};
  }));
}
