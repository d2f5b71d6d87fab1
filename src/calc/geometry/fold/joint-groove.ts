import type {Point} from '../polygon/point.js';
import type {FoldedSection} from './camber.js';
import {grooveToClose} from './groove.js';
import type {FoldFace} from './stack.js';

/** Width that a closing joint needs where the section stands `height` over the line it turns about: 2 z tan(f/2), metres. */
export const jointGrooveWidth = (height: number, fold: number): number => grooveToClose(height, fold);

/** A place of a joint across the wing, in metres. */
export interface JointGroovePlace {
  /** Behind the lower front edge, along the line of the two lower edges. */
  readonly x: number;
  /** Of the upper face over that line. */
  readonly height: number;
  /** Of the groove there. */
  readonly width: number;
}

/**
 * The groove of a closing dihedral joint across a cambered wing, corner by corner of its upper face; straight between.
 *
 * The wing lies as it flies, on its two lower edges, and the joint turns about the line between them. The section arches
 * over that line, so the groove is widest at the crest, about twice the width it has at the edges. Own derivation.
 *
 * @param section as it flies
 * @param face of the camber creases: `closing` leaves the upper skin whole, `opening` the lower one
 * @param fold at the joint, in rad
 */
export function jointGrooveAlong({points}: FoldedSection, thickness: number, face: FoldFace, fold: number): JointGroovePlace[] {
  const below = face === 'closing' ? -thickness : 0, above = below + thickness;
  const ends = points.slice(1).flatMap((to, i) => {
    const from = points[i] ?? to, length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const up = {x: (from.y - to.y) / length, y: (to.x - from.x) / length};
    return [from, to].map((end) => ({upper: raised(end, up, above), lower: raised(end, up, below)}));
  });
  const front = ends[0]?.lower, rear = ends.at(-1)?.lower;
  if (!front || !rear) return [];
  const chord = Math.hypot(rear.x - front.x, rear.y - front.y) || 1;
  const c = (rear.x - front.x) / chord, s = (rear.y - front.y) / chord;
  const places = ends.map(({upper: {x, y}}) => {
    const height = Math.max(0, c * (y - front.y) - s * (x - front.x));
    return {x: c * (x - front.x) + s * (y - front.y), height, width: jointGrooveWidth(height, fold)};
  });
  // an upper skin left whole has one corner at a crease, an upper face that opened has two
  return places.filter(({x}, i) => i === 0 || x - (places[i - 1]?.x ?? 0) > 1e-9);
}

const raised = ({x, y}: Point, up: Point, by: number): Point => ({x: x + by * up.x, y: y + by * up.y});
