import type {WingDihedral} from '../../calc/bench/dihedral.js';
import type {FoldFace} from '../../calc/geometry/fold/prop.js';
import type {XY} from '../pen.js';
import {bentBoard, mirrored} from './bent-board.js';
import type {BentOutline} from './bent-board.js';

/** The right half of a wing as it flies, from the front: millimetres, y upwards, from the middle of its lower face. */
export function flownHalf({panels}: WingDihedral, face: FoldFace, thickness: number): BentOutline {
  const rises = panels[0]?.angle ?? 0;
  return bentBoard({
    thickness, face, before: -rises, from: {x: 0, y: face === 'closing' ? 0 : thickness * Math.cos(rises)},
    panels: panels.map(({from, to, angle}) => ({length: (to - from) * 1000, angle})),
  });
}

/** Both halves; a middle that lies level is one piece. */
export function flownWing({panels: [first, ...rest]}: BentOutline): readonly (readonly XY[])[] {
  const [inner, outer, outerUpper] = first ?? [];
  if (!first || !inner || !outer || !outerUpper) return [];
  const level = Math.abs(outer.y - inner.y) < 1e-9;
  const middle = level ? [[...mirrored([outer]), outer, outerUpper, ...mirrored([outerUpper])]] : [mirrored(first), first];
  return [...middle, ...rest, ...rest.map(mirrored)];
}
