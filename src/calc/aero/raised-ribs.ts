import {sectionAt, type Station} from '../geometry/planform/index.js';
import type {Tilted} from './handbook/flown-wing.js';
import type {Rib} from './lattice/surface.js';

/**
 * The ribs of a half wing as it flies: its stations and its dihedral joints, each panel turned up by its own angle. Chords and
 * set-back stay as they were cut.
 */
export function raisedRibs(stations: readonly Station[], panels: readonly Tilted[]): readonly Rib[] {
  const joints = panels.map(({from}) => from).filter((at) => at > 0 && !stations.some((s) => s.at === at));
  const all = [...stations, ...joints.flatMap((at) => sectionAt(stations, at) ?? [])].sort((a, b) => a.at - b.at);
  let y = 0, z = 0, before = 0;
  return all.map(({at, chord, back}) => {
    const angle = panels.find(({to}) => at <= to)?.angle ?? panels.at(-1)?.angle ?? 0;
    y += (at - before) * Math.cos(angle);
    z += (at - before) * Math.sin(angle);
    before = at;
    return {x: back, y, z, chord};
  });
}
