import fc from 'fast-check';
import {planeAero, type PlaneAero} from '../../../src/calc/aero/plane-aero.js';
import type {Fineness} from '../../../src/calc/aero/plane-shape.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';

export const aeroOf = ({wing, tail, arrangement, board}: GliderDesign, fineness?: Fineness) => planeAero(wing, tail, arrangement, board, fineness);

/** The air's side of a design that has one. */
export function aeroIn(design: GliderDesign, fineness?: Fineness): PlaneAero {
  const aero = aeroOf(design, fineness);
  if (!aero.ok) throw new Error(aero.problems.map(({code}) => code).join());
  return aero.value;
}

/** Quite different planes. */
export const varieties: Readonly<Record<string, GliderDesign>> = {
  'usual': defaultDesign,
  'with one fin': withValues(defaultDesign, {'tail.fins.count': 1}),
  'without fins': withValues(defaultDesign, {'tail.fins.count': 0}),
  'V wing, tapered and swept': withValues(defaultDesign, {'wing.tipChord': 0.07, 'wing.sweep': 0.06, 'wing.joints': [{angle: 0.1, at: 0}, {angle: 0.15, at: 0.2}]}),
  'three joints a side': withValues(defaultDesign, {'wing.joints': [{angle: 0.05, at: 0}, {angle: 0.1, at: 0.12}, {angle: 0.15, at: 0.25}]}),
  'long and narrow': withValues(defaultDesign, {'wing.span': 1.4, 'wing.chord': 0.06, 'wing.creases': [{at: 0.02}], 'wing.stack': 0.005, 'wing.joints': [{angle: 0.2, at: 0.4}]}),
  'swept far': withValues(defaultDesign, {'wing.sweep': 0.15, 'arrangement.wingAt': 0.1}),
  'stubby': withValues(defaultDesign, {'wing.span': 0.36, 'wing.chord': 0.18, 'wing.joints': [], 'wing.creases': [{at: 0.06}]}),
};

const between = (least: number, most: number) => fc.double({min: least, max: most, noNaN: true});
const orNone = (value: fc.Arbitrary<number>) => fc.option(value, {nil: undefined});

/** Designs of any shape within the hard limits of their dimensions, most of them no planes. */
export const anyShape = fc.record({
  'wing.span': between(0.02, 2), 'wing.chord': between(0.01, 0.4), 'wing.tipChord': orNone(between(0.001, 0.4)), 'wing.sweep': between(-0.5, 0.8),
  'wing.creases': fc.constantFrom([], [{at: 0.005}], [{at: 0.03}], [{at: 0.02}, {at: 0.06}]), 'wing.stack': between(0, 0.04),
  'wing.joints': fc.constantFrom([], [{angle: 0.2, at: 0}], [{angle: 1.2, at: 0.1}], [{angle: 0.1, at: 0.05}, {angle: 0.3, at: 0.1}]),
  'wing.stations': fc.constantFrom([], [{chord: 0.08, at: 0.1, back: 0.02}], [{chord: 0.1, at: 0.05, back: 0}, {chord: 0.06, at: 0.05001, back: 0}]),
  'wing.pressed': fc.constantFrom('none', 'both', 'above', 'below'),
  'tail.span': between(1e-4, 0.6), 'tail.chord': between(1e-3, 0.2), 'tail.tipChord': orNone(between(1e-3, 0.2)), 'tail.sweep': between(-0.3, 0.3),
  'tail.fins.count': fc.integer({min: 0, max: 2}), 'tail.fins.height': between(1e-3, 0.6), 'tail.fins.chord': between(1e-3, 0.4), 'tail.fins.tipChord': orNone(between(1e-3, 0.4)),
  'arrangement.wingAt': between(0, 0.3), 'arrangement.tailAt': between(0.2, 2), 'body.length': between(0.1, 2), 'body.height': between(1e-3, 0.2),
  'arrangement.tailIncidence': between(-0.3, 0.3), 'arrangement.wingIncidence': between(-0.3, 0.3),
}).map((values) => withValues(defaultDesign, values));

/** Planes that somebody might build. */
export const likelyShape = fc.record({
  'wing.span': between(0.5, 1), 'wing.chord': between(0.09, 0.13), 'taper': between(0.6, 1), 'wing.sweep': between(-0.02, 0.06),
  'wing.creases': fc.constantFrom([], [{at: 0.03}], [{at: 0.045}]), 'wing.stack': between(0.004, 0.012), 'wing.joints': between(0, 0.25).map((angle) => [{angle, at: 0.15}]),
  'tail.span': between(0.18, 0.35), 'tail.chord': between(0.06, 0.1), 'tail.fins.count': fc.integer({min: 1, max: 2}), 'tail.fins.height': between(0.05, 0.1),
  'arrangement.wingAt': between(0.1, 0.18), 'arrangement.tailAt': between(0.45, 0.55),
}).map(({taper, ...values}) => withValues(defaultDesign, {...values, 'wing.tipChord': taper * values['wing.chord']}));
