import type {Pen, XY} from '../pen.js';

/** A drawing pin from above: a part that somebody holds in its place. */
export function drawPin(pen: Pen, key: string, at: XY): void {
  pen.circle(`${key}-pin`, at, 5, 'accent', 'paper');
  pen.circle(`${key}-point`, at, 2, 'none', 'accent');
}

/** Where a pin goes on a piece: near its lower right corner, as far in as there is room. */
export function pinOn(outline: readonly XY[], u: number): XY {
  const right = Math.max(...outline.map(({x}) => x)), low = Math.max(...outline.map(({y}) => y));
  const left = Math.min(...outline.map(({x}) => x)), high = Math.min(...outline.map(({y}) => y));
  return {x: right - Math.min(11 * u, (right - left) / 2), y: low - Math.min(11 * u, (low - high) / 2)};
}
