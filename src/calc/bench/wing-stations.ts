import {memo} from '../memo.js';
import type {GliderDesign} from '../design/design.js';
import type {Station} from '../geometry/planform/station.js';

/** The half wing as it lies on the board, from root to tip, straight-edged in between. */
export const wingStations = memo(({span, chord, tipChord, sweep, stations}: GliderDesign['wing']): readonly Station[] => [
  {at: 0, chord, back: 0},
  ...stations,
  {at: span / 2, chord: tipChord ?? chord, back: sweep},
]);
