import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {layPanels} from './lattice/lay-panels.js';
import {causes, planeLoads, type LoadInputs, type PlaneLoads, type StripSection} from './plane-loads.js';
import {planeShape, usualFineness, type Fineness, type PlaneShape} from './plane-shape.js';
import type {Range} from './range.js';
import {recent} from './recent.js';
import {flatSection, idealLift, type ThinSection} from './section/thin-section.js';
import type {WingSection} from './section/wing-section.js';

/**
 * Dynamic pressure at the tail over that at the wing. In the middle of the wing's wake it is about 0.87 a few chords behind a plate
 * with a drag coefficient of 0.03, just above or below the wake it is 1: A. Silverstein and S. Katzoff, NACA Report 648 (1939), from memory. A tail
 * level with the wing flies through its edge.
 */
export const tailEfficiency: Range = {least: 0.87, usual: 0.95, most: 1};

/** A plane in the air, whatever it weighs. Angles in rad, lengths in m, places behind the wing's leading edge at the root. */
export interface PlaneAero extends PlaneLoads {
  readonly shape: PlaneShape;
  /** Where moments are taken: the quarter point of the wing's mean chord. */
  readonly x: number;
  /** Where more lift has no moment. The body is left out. */
  readonly neutralPoint: number;
  /** How much the air at the tail turns down for each radian of angle of attack, as the tail feels it. */
  readonly downwash: number;
  /** Greatest camber over the chord, at the middle of the wing. */
  readonly camber: number;
  readonly rootSection: ThinSection;
  /** Panels of the lattice, both halves together. */
  readonly panels: number;
}

const remembered = recent(planeLoads);

const stage = memo((
  wing: GliderDesign['wing'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'], fineness: Fineness,
): Outcome<PlaneAero> => {
  const shaped = planeShape(wing, tail, arrangement, board, fineness);
  if (!shaped.ok) return shaped;
  const shape = shaped.value;
  const {surfaces, sectionAt, wing: flown} = shape;
  const strips = layPanels(surfaces.slice(0, 1)).strips;
  const sections: WingSection[] = [];
  for (const {chord} of strips) {
    const section = sectionAt(chord);
    if (!section.ok) return section;
    sections.push(section.value);
  }
  const x = flown.quarterChordBack;
  const inputs: LoadInputs = {
    surfaces, sections: sections.map(({thin}) => forStrip(thin)), perFold: sections.map(({perFold}) => forStrip(perFold)),
    area: flown.area, span: flown.span, chord: flown.meanAerodynamicChord, x, tailEfficiency: tailEfficiency.usual,
  };
  const loads = remembered(inputs);
  if (!loads.ok) return refused({code: 'surfaces-in-one-another', path: 'arrangement.tailAt'});
  const {lift, moment, tailLift, strips: all} = loads.value;
  const slope = causes.indexOf('attack'), tailTurned = causes.indexOf('tailIncidence');
  const root = sections[0];
  return good({
    ...loads.value, shape, x,
    neutralPoint: x - flown.meanAerodynamicChord * (moment[slope] ?? 0) / (lift[slope] ?? 1),
    downwash: 1 - (tailLift[slope] ?? 0) / (tailLift[tailTurned] ?? 1),
    camber: root?.camber ?? 0, rootSection: root?.thin ?? flatSection,
    panels: 2 * all.reduce((sum, strip) => sum + strip.rows * strip.share, 0),
  });
});

/**
 * The whole plane in potential flow, solved once and split into what causes the lift, so that a new angle or a new balance solves nothing again. Reads no
 * masses, and the same surfaces are not solved twice even when something else of the same parts has changed.
 *
 * Refused: as {@link planeShape}, and 'surfaces-in-one-another' where the lattice cannot be solved.
 */
export const planeAero = (
  wing: GliderDesign['wing'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
  fineness: Fineness = usualFineness,
): Outcome<PlaneAero> => stage(wing, tail, arrangement, board, fineness);

const forStrip = (section: ThinSection): StripSection =>
  ({zeroLiftAngle: section.zeroLiftAngle, quarterChordMoment: section.quarterChordMoment, idealLift: idealLift(section)});
