import {wingDihedral} from '../bench/dihedral.js';
import type {GliderDesign} from '../design/design.js';
import {wingAsFlown} from '../geometry/fold/dihedral.js';
import {leastRoot} from '../geometry/fold/least-root.js';
import {good, refused, type Outcome} from '../problem.js';

/** What turns less than this is flat: no hand could tell, and its share of a right angle is beyond reckoning. */
const leastAngle = 1e-6;

type Wing = GliderDesign['wing'];
type Board = GliderDesign['board'];
export type Joints = Wing['joints'];

/** The joints as planned, whether by their angles or by the blocks. Refused as `wingDihedral`. */
export function plannedJoints(wing: Wing, board: Board): Outcome<Joints> {
  if (wing.dihedralBy !== 'block') return good(wing.joints);
  const dihedral = wingDihedral(wing, board);
  return dihedral.ok ? good(dihedral.value.joints.map(({angle, at}) => ({angle, at}))) : dihedral;
}

/**
 * Height of a tip's lower edge over the bench on which the middle lies, m. Where the whole skin is the upper one, a tilted board's lower face
 * comes nearer to it by t (1 − cos). Right-angled triangles; own derivation.
 */
export function tipOverBench({span, jointFace}: Wing, {thickness}: Board, joints: Joints): number {
  const {tipRise} = wingAsFlown(span / 2, joints);
  const middle = joints[0]?.at === 0 ? joints[0].angle : 0, tip = joints.reduce((sum, {angle}) => sum + angle, 0);
  return tipRise + (jointFace === 'opening' ? thickness * (Math.cos(middle) - Math.cos(tip)) : 0);
}

/**
 * The joints of a half whose tip stands so high: the planned ones, each turned by the same share more or less; alike where none was
 * planned to turn, and in the middle where there are none.
 *
 * Refused: 'tip-too-high' {most}; `path` is the field of that tip.
 */
export function jointsFromTip(wing: Wing, board: Board, planned: Joints, height: number, path: string): Outcome<Joints> {
  const some = planned.some(({angle}) => angle > leastAngle);
  const shape = planned.length === 0 ? [{angle: 1, at: 0}] : some ? planned : planned.map(({at}) => ({angle: 1, at}));
  const turned = (share: number): Joints => shape.map(({angle, at}) => ({angle: angle * share, at}));
  const upright = Math.PI / 2 / shape.reduce((sum, {angle}) => sum + angle, 0);
  const {at, most} = leastRoot((share) => tipOverBench(wing, board, turned(share)), height, upright);
  return at === undefined ? refused({code: 'tip-too-high', path, args: {most}}) : good(turned(at));
}
