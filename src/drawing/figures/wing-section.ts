import type {FoldFace} from '../../calc/geometry/fold/prop.js';
import type {XY} from '../pen.js';
import {bentBoard} from './bent-board.js';

/**
 * A wing's section as it flies: the folded board, panel by panel, millimetres, y upwards, its lower corners at front and rear on y = 0 and
 * the front one at x = 0. On the bench the section lies the other way up.
 */
export function wingSection(chord: number, creases: readonly number[], folds: readonly number[], thickness: number, face: FoldFace): readonly (readonly XY[])[] {
  const cuts = [0, ...creases.filter((at) => at < chord), chord];
  let angle = 0;
  const {panels} = bentBoard({
    thickness, face, from: {x: 0, y: 0},
    panels: cuts.slice(1).map((cut, i) => ({length: cut - (cuts[i] ?? 0), angle: i ? angle += folds[i - 1] ?? 0 : 0})),
  });
  const turned = panels.map((panel) => panel.map(({x, y}) => ({x, y: -y})));
  // over on its back, the board's upper face of the bench is the lower one
  const front = turned[0]?.[3] ?? {x: 0, y: 0};
  const rear = turned.at(-1)?.[2] ?? front;
  const level = Math.hypot(rear.x - front.x, rear.y - front.y) || 1;
  const [c, s] = [(rear.x - front.x) / level, (rear.y - front.y) / level];
  return turned.map((panel) => panel.map(({x, y}) => ({x: c * (x - front.x) + s * (y - front.y), y: c * (y - front.y) - s * (x - front.x)})));
}
