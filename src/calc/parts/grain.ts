import {bounds} from '../geometry/polygon/index.js';
import type {Part} from './part.js';

/** Which way the grain of a board runs: along its first measure, which is its long edge, or across that; or it has none. */
export type Grain = 'none' | 'length' | 'width';

/**
 * A part as it may lie on board with a grain: its longer side along the grain, so that it is stiff along its length and
 * creases easily along it, and either end first. One as wide as it is long may lie anyhow.
 */
export function alongGrain(part: Part, grain: Grain): Part {
  const {length, width} = bounds(part.outline);
  if (grain === 'none' || Math.abs(length - width) <= 1e-6 * length) return part;
  return {...part, mayTurn: false, mayTurnHalf: true, liesAcross: length > width !== (grain === 'length')};
}
