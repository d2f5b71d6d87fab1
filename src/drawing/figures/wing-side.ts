import type {WingDihedral} from '../../calc/bench/dihedral.js';
import {wingStations} from '../../calc/bench/wing-stations.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {sectionAt} from '../../calc/geometry/planform/section-at.js';
import type {XY} from '../pen.js';
import {wingSection} from './wing-section.js';

type Outline = readonly XY[];

/** A wing from the left, millimetres, y downwards from the upper edge of the body, x from the nose. */
export interface SideOfWing {
  /** The board at the middle of the wing, edge-on. */
  readonly root: readonly Outline[];
  /** The panels that rise towards the tip, each as its outline. */
  readonly raised: readonly Outline[];
  /** The board at the tip, where the tip stands higher than the middle. */
  readonly tip: readonly Outline[];
}

const MM = 1000;

export function sideOfWing({wing, arrangement, board}: GliderDesign, dihedral: WingDihedral | undefined, folds: readonly number[]): SideOfWing {
  const stations = wingStations(wing);
  const creases = wing.creases.map(({at}) => at * MM);
  const section = (chord: number, back: number, up: number): readonly Outline[] =>
    wingSection(chord * MM, creases, folds, board.thickness * MM, wing.foldFace)
      .map((panel) => panel.map(({x, y}) => ({x: (arrangement.wingAt + back) * MM + x, y: -up * MM - y})));
  const edge = (at: number, up: number): {readonly front: XY; readonly rear: XY} => {
    const {chord, back} = sectionAt(stations, at) ?? {chord: wing.chord, back: 0};
    const x = arrangement.wingAt + back;
    return {front: {x: x * MM, y: -up * MM}, rear: {x: (x + chord) * MM, y: -up * MM}};
  };

  let up = 0;
  const raised: Outline[] = [];
  for (const {from, to, angle} of dihedral?.panels ?? []) {
    const cuts = [from, ...stations.map(({at}) => at).filter((at) => at > from && at < to), to];
    if (angle > 0) {
      const edges = cuts.map((at) => edge(at, up + (at - from) * Math.sin(angle)));
      raised.push([...edges.map(({front}) => front), ...edges.map(({rear}) => rear).reverse()]);
    }
    up += (to - from) * Math.sin(angle);
  }
  const tip = stations.at(-1);
  return {root: section(wing.chord, 0, 0), raised, tip: tip && up > 0 ? section(tip.chord, tip.back, up) : []};
}
