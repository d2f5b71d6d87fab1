import fc from 'fast-check';
import {planeBalance, type PlaneBalance} from '../../../src/calc/balance/plane-balance.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';

/** The balance of a plane that has one. */
export function balanced(design: GliderDesign): PlaneBalance {
  const balance = planeBalance(design);
  if (!balance.ok) throw new Error(balance.problems.map(({code}) => code).join());
  return balance.value;
}

const between = (least: number, most: number) => fc.double({min: least, max: most, noNaN: true});

/** Gliders of many shapes and weights, all of which can be built. */
export const anyGlider = fc.record({
  'wing.span': between(0.45, 0.9), 'wing.chord': between(0.08, 0.16), 'wing.tipChord': between(0.06, 0.16), 'wing.sweep': between(-0.02, 0.06),
  'wing.creases': fc.constantFrom([], [{at: 0.03}], [{at: 0.02}, {at: 0.05}]),
  'wing.joints': between(0, 0.3).map((angle) => [{angle, at: 0.15}]),
  'wing.peeled': fc.constantFrom('none', 'above', 'below', 'both'),
  'wing.weighed': fc.option(between(0.01, 0.05), {nil: undefined}),
  'board.arealMass': between(0.25, 0.65), 'board.sheetMass': fc.option(between(0.08, 0.2), {nil: undefined}),
  'body.length': between(0.6, 0.75), 'body.tailHeight': fc.option(between(0.01, 0.03), {nil: undefined}), 'body.layers': fc.integer({min: 1, max: 3}),
  'tail.span': between(0.15, 0.3), 'tail.chord': between(0.05, 0.1), 'tail.fins.count': fc.integer({min: 0, max: 2}),
  'arrangement.wingAt': between(0.12, 0.25), 'arrangement.tailAt': between(0.45, 0.55),
  'ballast.at': between(-0.02, 0.06),
  'ballast.masses': fc.array(fc.record({mass: between(0, 0.02), at: between(0, 0.6)}), {maxLength: 3}),
}).map((values) => withValues(defaultDesign, values));

/** The same, weighted at the tail until it is the tail that is heavy, but no more than a builder would meet. */
export const tailHeavyGlider = fc.tuple(anyGlider, between(0.01, 0.05)).map(([design, share]) => {
  const bare = withValues(design, {'ballast.masses': []});
  const {target, at, mass} = balanced(bare);
  const tail = bare.body.length;
  const wanted = target.to + share * (tail - target.to);
  // what it takes at the tail, or at the nose where the tail is too heavy already
  const place = at < wanted ? tail : 0;
  const added = mass * (at - wanted) / (wanted - place);
  return withValues(bare, {'ballast.masses': [{mass: added, at: place}]});
});
