import type {GliderDesign} from '../design/design.js';
import {foldedSection, jointGrooveAlong} from '../geometry/fold/index.js';
import {sectionAt} from '../geometry/planform/section-at.js';
import {memo} from '../memo.js';
import {good} from '../problem.js';
import type {Outcome} from '../problem.js';
import {wingDihedral} from './dihedral.js';
import {panelsOf, wingFold} from './wing-fold.js';
import {wingStations} from './wing-stations.js';

/** The groove of a closing joint where the wing stands highest over its two lower edges, metres. */
export interface CrestGroove {
  /** The upper face over the line between the lower edges: the board's thickness where the wing is flat. */
  readonly height: number;
  readonly width: number;
}

/**
 * The widest place of the groove at each joint, from the centre outwards: across a cambered wing it is at the crest. Refused with what the wing's
 * dihedral or its camber refuse.
 */
export const crestGrooves = memo((wing: GliderDesign['wing'], board: GliderDesign['board']): Outcome<readonly CrestGroove[]> => {
  const dihedral = wingDihedral(wing, board);
  if (!dihedral.ok) return dihedral;
  const camber = wingFold(wing, board);
  if (!camber.ok) return camber;
  return good(dihedral.value.joints.map(({at, fold}) => {
    const chord = sectionAt(wingStations(wing), at)?.chord ?? wing.chord;
    const section = foldedSection(panelsOf({...wing, chord}), camber.value.folds);
    const places = jointGrooveAlong(section, board.thickness, wing.foldFace, fold);
    return places.reduce((most, {height, width}) => (height > most.height ? {height, width} : most), {height: 0, width: 0});
  }));
});
