import type {Point, Polygon} from '../polygon/point.js';
import {grooveToClose} from './groove.js';

/** A panel as it stands: where its lower face begins, how steep it is and how long, in metres and radians. */
export interface Standing extends Point {
  readonly heading: number;
  readonly length: number;
  /** How much lower face lies between the first crease and this panel. */
  readonly before: number;
}

/** A place on the lower faces of the propped panels. */
export interface LowerPlace extends Point {
  /** Which panel, the flat one being 0. */
  readonly panel: number;
  /** From the first crease, along the lower faces. */
  readonly along: number;
  /** Whether it is the corner at the root of the panel's lower face. */
  readonly root: boolean;
}

/**
 * The panels as they stand on the bench, from the flat one outwards. The flat panel runs from its edge at x = −panels[0] to
 * the first crease above x = 0; `tilt` raises it about that edge.
 *
 * @param d height of the pivots over the lower faces
 */
export function poseOf(panels: readonly number[], d: number, folds: readonly number[], tilt: number): Standing[] {
  let heading = tilt, before = -(panels[0] ?? 0), pivot = {x: before, y: d};
  return panels.map((length, i) => {
    const {x, y} = pointOn({x: pivot.x, y: pivot.y, heading}, 0, -d), panel = {x, y, heading, length, before};
    pivot = pointOn(panel, length, d);
    heading += folds[i] ?? 0;
    before += length;
    return panel;
  });
}

/** The point of a panel that lies `along` its lower face and `up` from it. */
export const pointOn = ({x, y, heading}: Pick<Standing, 'x' | 'y' | 'heading'>, along: number, up = 0): Point => ({
  x: x + along * Math.cos(heading) - up * Math.sin(heading),
  y: y + along * Math.sin(heading) + up * Math.cos(heading),
});

/** The lower corner of the propped free edge. */
export const freeEdge = (pose: readonly Standing[]): LowerPlace => placeAlong(pose, Infinity);

/** The place that lies `along` the lower faces from the first crease, on whichever panel, or at the free edge. */
export const placeAlong = (pose: readonly Standing[], along: number): LowerPlace => placeOn(pose, ({before}) => along - before);

/**
 * The lowest place of the propped panels at or beyond `x`: where a stack whose near face stands there touches them. Each
 * panel is steeper than the one before, so it is the first place met, which in front of a panel is its root; when the
 * panels end before, it is the free edge. `least` lets the first panel's line be followed back beyond its root.
 */
export const placeOver = (pose: readonly Standing[], x: number, least = 0): LowerPlace =>
  placeOn(pose, (panel) => (x - panel.x) / Math.cos(panel.heading), least);

/** The first place at which the way still to go along a propped panel ends on it. */
function placeOn(pose: readonly Standing[], wayOn: (panel: Standing) => number, least = 0): LowerPlace {
  const found = pose.findIndex((panel, i) => i > 0 && wayOn(panel) <= panel.length);
  const i = found > 0 ? found : pose.length - 1, panel = pose[i] ?? {x: 0, y: 0, heading: 0, length: 0, before: 0};
  const along = Math.min(panel.length, Math.max(i > 1 ? 0 : least, wayOn(panel)));
  const {x, y} = pointOn(panel, along);
  return {x, y, panel: i, along: panel.before + along, root: along === 0};
}

/** The outer face of the skin left whole, from the flat edge to the propped one: a corner for each crease. */
export const skinOf = (pose: readonly Standing[], d: number): Point[] =>
  pose.flatMap((panel, i) => [...(i ? [] : [pointOn(panel, 0, d)]), pointOn(panel, panel.length, d)]);

/**
 * The cross-section of each panel, counter-clockwise from its lower corner nearest the flat edge. A closing groove takes
 * half its width, or what just closes, off the upper face on either side; a cut that opens leaves the ends square.
 */
export function boardsOf(
  pose: readonly Standing[], thickness: number, folds: readonly number[], grooves: 'square' | readonly (number | undefined)[],
): Polygon[] {
  return pose.map((panel, i) => {
    const bevel = (crease: number): number => {
      const fold = folds[crease];
      return fold === undefined || grooves === 'square' ? 0 : Math.min(panel.length, grooves[crease] ?? grooveToClose(thickness, fold)) / 2;
    };
    return [
      pointOn(panel, 0), pointOn(panel, panel.length),
      pointOn(panel, panel.length - bevel(i), thickness), pointOn(panel, bevel(i - 1), thickness),
    ];
  });
}
