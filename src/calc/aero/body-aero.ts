import {bodyHeightAt, taperBegin} from '../parts/body.js';
import type {GliderDesign} from '../design/design.js';
import {turbulentFriction} from './section/friction.js';
import type {Range} from './range.js';

/** A body in the air. Areas in m². */
export interface BodyAero {
  /** What its square nose lifts with, upwards and to the side, for each radian: force over dynamic pressure, at the nose. */
  readonly noseLift: number;
  readonly noseSide: number;
  readonly wetted: number;
  readonly frontal: number;
  readonly length: number;
}

/**
 * The body as a slender wing on its side and on its edge: R. T. Jones, NACA Report 835 (1946). A body of full height from the very
 * nose has its whole force there, (π/2) h² on the dynamic pressure for each radian; a body that tapers behind adds nothing, since the air leaves its lower
 * edge.
 */
export function bodyAero(body: GliderDesign['body'], board: GliderDesign['board'], arrangement: GliderDesign['arrangement'], wing: GliderDesign['wing']): BodyAero {
  const width = body.layers * board.thickness, {height, length} = body;
  const begin = Math.min(Math.max(taperBegin(body, arrangement, wing), 0), length);
  const side = begin * height + (length - begin) * (height + bodyHeightAt(length, body, arrangement, wing)) / 2;
  return {
    noseLift: Math.PI / 2 * width ** 2, noseSide: Math.PI / 2 * height ** 2,
    wetted: 2 * side + 2 * width * length, frontal: width * height, length,
  };
}

/**
 * Square front and rear of a bar that is long along the stream, on its cross-section, friction taken off: S. F. Hoerner, Fluid-Dynamic Drag
 * (1965), chapter 3 (from memory).
 */
export const squareEnds: Range = {least: 0.4, usual: 0.7, most: 1};

/** Drag over dynamic pressure, m²: turbulent friction behind a square nose, and both ends, from {@link squareEnds}. */
export const bodyDrag = ({wetted, frontal, length}: BodyAero, speed: number, kinematicViscosity: number, ends: number): number =>
  wetted * turbulentFriction(Math.max(speed * length / kinematicViscosity, 1e3)) + frontal * ends;
