import type {WingDihedral} from '../../calc/bench/dihedral.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {Change} from '../../calc/design/store.js';
import type {DihedralLayout, DihedralPicture} from '../../drawing/figures/dihedral-layout.js';
import {toStep, within} from '../base/dragged.js';
import type {Handle} from '../base/figure.js';

const MM = 1000;
/** Nearer than this to the middle, a joint dragged there becomes a V. */
const TO_THE_MIDDLE = 6e-3;

/**
 * What a pointer can take hold of: each joint along the span, the top of each block for its height and its foot for its place. Whoever moves a
 * block starts from the block.
 */
export function dihedralHandles(result: WingDihedral, wing: GliderDesign['wing'], picture: DihedralPicture, layout: DihedralLayout, step: number): readonly Handle[] {
  const heights = result.joints.map(({block}) => ({height: block}));
  return picture.sketches.flatMap((sketch, order): Handle[] => {
    const index = result.joints.length - 1 - order;
    const bench = layout.benches[order] ?? 0;
    const joint = result.joints[index];
    if (!joint) return [];
    const {near, far, height} = sketch.block;
    return [
      {key: `joint-${String(index)}`, path: 'wing.joints', at: {x: sketch.joint, y: bench}, drag: ({x}) => [moved(wing, index, x / MM, step)]},
      {
        key: `place-${String(index)}`, path: 'wing.blockFromJoint', at: {x: near, y: bench},
        drag: ({x}) => [
          {path: 'wing.dihedralBy', value: 'block'}, {path: 'wing.blocks', value: heights}, {path: 'wing.jointPlace', value: 'bench'},
          {path: 'wing.blockFromJoint', value: Math.max(toStep(x / MM - joint.at, step), step)},
        ],
      },
      {
        key: `block-${String(index)}`, path: 'wing.blocks', at: {x: far, y: bench - height},
        drag: ({y}) => {
          const blocks = heights.map((block, i) => (i === index ? {height: within(toStep((bench - y) / MM, step), 0, 2)} : block));
          return [...(wing.dihedralBy === 'place' ? [] : [{path: 'wing.dihedralBy', value: 'block'} as const]), {path: 'wing.blocks', value: blocks}];
        },
      },
    ];
  });
}

function moved(wing: GliderDesign['wing'], index: number, to: number, step: number): Change {
  const inner = wing.joints[index - 1]?.at ?? -1;
  const outer = wing.joints[index + 1]?.at ?? wing.span / 2;
  const room = 5 * step;
  const at = index === 0 && to < TO_THE_MIDDLE ? 0 : within(toStep(to, step), Math.max(inner + room, room), outer - room);
  return {path: 'wing.joints', value: wing.joints.map((joint, i) => (i === index ? {...joint, at} : joint))};
}
