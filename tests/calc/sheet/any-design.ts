import fc from 'fast-check';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';

const mm = 1e-3;

const length = (least: number, most: number) => fc.double({min: least, max: most, noNaN: true});
/** Gliders and boards of many sizes. */
export const anyDesign = fc.record({
  'board.length': length(0.25, 1.1), 'board.width': length(0.2, 0.8), 'board.margin': fc.constantFrom(0, 4 * mm), 'board.gap': fc.constantFrom(0, 1 * mm, 3 * mm),
  'board.grain': fc.constantFrom('none', 'none', 'length', 'width'),
  'wing.span': length(0.4, 1), 'wing.chord': length(0.08, 0.16), 'wing.tipChord': length(0.07, 0.16), 'wing.sweep': length(-0.02, 0.09),
  'body.length': length(0.45, 0.8), 'body.tailHeight': length(0.01, 0.032),
  'tail.span': length(0.15, 0.35), 'tail.tipChord': length(0.05, 0.09), 'tail.fins.count': fc.constantFrom(0, 1, 2), 'tail.fins.tipChord': length(0.03, 0.09),
}).map((values) => withValues(defaultDesign, values));
