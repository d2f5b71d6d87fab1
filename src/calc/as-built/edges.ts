import {angleFromEdges} from '../geometry/fold/tail-slip.js';
import {good, refused, type Outcome} from '../problem.js';

/** No surface is set more steeply than this, rad. */
const steepest = 20 * Math.PI / 180;

/** The angle of a surface, front edge up, from the heights of its edges over one line. Refused: 'edges-too-far-apart' {most}. */
export function angleOfEdges(chord: number, front: number, rear: number, path: string): Outcome<number> {
  const risen = angleFromEdges(chord, front, rear);
  return risen.ok && Math.abs(risen.value) <= steepest ? good(-risen.value + 0)
    : refused({code: 'edges-too-far-apart', path, args: {most: chord * Math.sin(steepest)}});
}
