import type {GliderDesign} from '../design/design.js';
import type {Station} from '../geometry/planform/index.js';
import {memo} from '../memo.js';

/** The half wing as cut, from the root to the tip. Not checked: what reads it refuses stations out of order. */
export const wingStations = memo((wing: GliderDesign['wing']): readonly Station[] => [
  {at: 0, chord: wing.chord, back: 0},
  ...wing.stations.map(({at, chord, back}) => ({at, chord, back})),
  {at: wing.span / 2, chord: wing.tipChord ?? wing.chord, back: wing.sweep},
]);

/** The half tailplane as cut. */
export const tailStations = memo((tail: GliderDesign['tail']): readonly Station[] => [
  {at: 0, chord: tail.chord, back: 0},
  {at: tail.span / 2, chord: tail.tipChord ?? tail.chord, back: tail.sweep},
]);
