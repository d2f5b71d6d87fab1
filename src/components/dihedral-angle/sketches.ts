import type {JointFold, WingDihedral} from '../../calc/bench/dihedral.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {bentBoard, mirrored} from '../../drawing/figures/bent-board.js';
import type {BenchSketch, DihedralPicture, FlownSketch} from '../../drawing/figures/dihedral-layout.js';
import {flownHalf, flownWing} from '../../drawing/figures/flown-wing.js';
import type {XY} from '../../drawing/pen.js';

const MM = 1000;

/** The lettering of the figure, already in the reader's words and units. */
export interface PictureWords {
  joint(joint: JointFold, order: number): BenchSketch['words'];
  readonly flown: FlownSketch['words'];
  readonly middle: string;
}

/** The figure of a wing's dihedral, in millimetres. */
export function dihedralPicture(result: WingDihedral, wing: GliderDesign['wing'], thickness: number, words: PictureWords): DihedralPicture {
  const half = wing.span / 2 * MM;
  // what shows of the other half: more of it where it is part of the fold
  const from = -half * (wing.joints[0]?.at === 0 ? 0.16 : 0.06);
  const inOrder = [...result.joints.keys()].reverse();
  const sketches = inOrder.map((index, order) => benchSketch(result, wing, index, thickness * MM, from, (joint) => words.joint(joint, order)));
  return {
    thickness: thickness * MM, from, broken: true, sketches,
    to: Math.max(half * 1.09, ...sketches.map(({block}) => block.far)),
    flown: flownSketch(result, wing, thickness * MM, words.flown),
    words: {middle: words.middle},
  };
}

/** One joint on the bench: joints further out are folded, those further in still flat. */
function benchSketch(
  {joints}: WingDihedral, wing: GliderDesign['wing'], index: number, thickness: number, from: number, words: (joint: JointFold) => BenchSketch['words'],
): BenchSketch {
  const joint = joints[index];
  if (!joint) throw new RangeError('no such joint');
  const face = wing.jointFace;
  let angle = joint.lean;
  const risen = joints.slice(index).map(({panel, angle: more}, i) => ({length: panel * MM, angle: i ? angle += more : angle}));
  const at = joint.at * MM;
  const both = joint.propped === 'both-halves';
  const board = both
    ? bentBoard({thickness, face, from: {x: 0, y: face === 'closing' ? 0 : thickness * Math.cos(joint.lean)}, before: -joint.lean, panels: risen})
    : bentBoard({thickness, face, from: {x: from, y: face === 'closing' ? 0 : thickness}, panels: [{length: at - from, angle: 0}, ...risen]});
  const propped = board.panels[both ? 0 : 1] ?? [];
  const {contact} = blockOf(joint, at);
  return {
    panels: both ? [...otherHalf(propped, from), ...board.panels] : board.panels,
    joint: at, start: propped[0] ?? contact, end: propped[1] ?? contact,
    lean: joint.lean, words: words(joint),
    waiting: joints.slice(0, index).map((inner) => inner.at * MM),
    ...blockOf(joint, at, wing.blockWidth * MM),
  };
}

/** A block stands with its inner upper edge at the contact and the rest of it outwards. */
function blockOf(joint: JointFold, at: number, width = 0): Pick<BenchSketch, 'block' | 'contact' | 'touches'> {
  const near = at + joint.place.fromJoint * MM;
  return {block: {near, far: near + width, height: joint.block * MM}, contact: {x: near, y: joint.place.height * MM}, touches: joint.place.kind !== 'none' && joint.block > 0};
}

/** The piece of a mirrored panel that lies right of `from`. */
function otherHalf([inner, outer, outerUpper, innerUpper]: readonly XY[], from: number): readonly (readonly XY[])[] {
  if (!inner || !outer || !outerUpper || !innerUpper) return [];
  const until = (a: XY, b: XY): XY => {
    const t = Math.min(1, (-from - a.x) / (b.x - a.x));
    return {x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y)};
  };
  return [mirrored([inner, until(inner, outer), until(innerUpper, outerUpper), innerUpper])];
}

function flownSketch(result: WingDihedral, wing: GliderDesign['wing'], thickness: number, words: FlownSketch['words']): FlownSketch {
  const right = flownHalf(result, wing.jointFace, thickness);
  const tip = right.panels.at(-1)?.[1] ?? {x: 0, y: 0};
  return {
    panels: flownWing(right),
    halfSpan: result.spanAsFlown / 2 * MM, tip, equivalent: result.equivalent, words,
  };
}
