import type {GliderDesign} from '../design/design.js';
import type {Station} from '../geometry/planform/index.js';
import {memo} from '../memo.js';

/** The half tailplane as cut, from its middle to its end. */
export const tailStations = memo((tail: GliderDesign['tail']): readonly Station[] => [
  {at: 0, chord: tail.chord, back: 0},
  {at: tail.span / 2, chord: tail.tipChord ?? tail.chord, back: tail.sweep},
]);
