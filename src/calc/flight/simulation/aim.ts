import type {Throw} from './throw.js';

/** Where a hand aims, so that it can be told in plain words. */
export interface Aim {
  readonly way: 'level' | 'down' | 'up';
  /** From level, without a sign. */
  readonly angle: number;
  /** How far ahead the line of a throw downwards meets the ground, m; missing where that is too far to point at. */
  readonly ground?: number;
}

/** Less than half a degree is level; further away nobody points at a spot on the ground. Common practice, no source. */
const level = Math.PI / 360, farthest = 25;

/** Where a throw is aimed: the line that leaves the hand, straight on to the ground. */
export function aimOf({angle, height}: Pick<Throw, 'angle' | 'height'>): Aim {
  if (Math.abs(angle) < level) return {way: 'level', angle: 0};
  if (angle > 0) return {way: 'up', angle};
  const ground = height / Math.tan(-angle);
  return {way: 'down', angle: -angle, ...(ground <= farthest && {ground})};
}
