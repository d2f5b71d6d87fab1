import type {Air} from '../aero/air.js';
import {amountsOf, total, type StripLoad} from '../aero/plane-loads.js';
import {rangeOf, type Range} from '../aero/range.js';
import {airOf} from './air-of.js';
import type {GliderDesign} from '../design/design.js';
import {sectionAt} from '../geometry/planform/index.js';
import {wingStations} from '../bench/wing-stations.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {flightOf, type Flight} from './flight.js';

/** What carries a moment through a board: a force in both skins; foam against one skin; or foam alone. */
export type Carries = 'skins' | 'skin-and-foam' | 'foam';

/** How near a place of the wing is to folding up. Moments in N m. */
export interface BendingAt {
  /** From the middle along the wing, m. */
  readonly at: number;
  /** A dihedral joint is only as strong as its one whole skin. */
  readonly joint: boolean;
  /** The width that carries, m. */
  readonly chord: number;
  readonly carries: Carries;
  /** What the skins take for each metre of width, N/m, or the foam, Pa. */
  readonly bears: Range;
  /** What the air alone would make of `glide`. */
  readonly byAir: number;
  /** In the glide, and at twice the speed of the throw. */
  readonly glide: number;
  readonly fast: number;
  /** What such foam and skins take. */
  readonly takes: Range;
  /** The same over the moment at twice the speed: below 1 it folds. */
  readonly reserve: Range;
}

export interface WingStrength {
  /** What the wing carries of itself, kg. */
  readonly onWing: number;
  /** The middle, and each joint from there outwards. */
  readonly places: readonly BendingAt[];
  readonly weakest: BendingAt;
  readonly holds: 'yes' | 'perhaps' | 'no';
}

/**
 * Stress that foam takes when it is pressed, and when it is bent, Pa. Makers' data sheets give extruded polystyrene at least 25 to 40 psi
 * (ASTM D1621) and 50 to 75 psi (ASTM C203), expanded polystyrene 13 and 30 psi; the foam of paper-faced board lies between.
 */
const pressed: Range = {least: 0.9e5, usual: 1.7e5, most: 2.8e5};
const bent: Range = {least: 2.1e5, usual: 3.4e5, most: 5.2e5};

/** Force that a paper skin takes for each metre of its width, N/m, before the one in compression wrinkles. Common practice, no source. */
const skin: Range = {least: 1500, usual: 2500, most: 4000};

/** Twice the speed is four times the load. */
export const fastLoad = 4;

/**
 * Whether the wing will fold up: its bending moment in the glide and at twice the speed of the throw, against what the board takes. The air's load is
 * the lattice's, less the wing's own weight, both as heavy as the lift is large.
 *
 * With both skins, M = n h b with the weaker skin's force n; with one, the foam carries the other side, M = σ h² b / 3 pressed or torn;
 * bare foam, σ h² b / 6 bent: a sandwich and beams of straight stress. A joint has one skin cut; tape across the cut gives it back. Refused as {@link flightOf}, and with why there
 * is no glide.
 */
export function wingStrength(design: GliderDesign, air: Air = airOf(design)): Outcome<WingStrength> {
  const flight = flightOf(design, air);
  return flight.ok ? stage(design.wing, design.board, flight.value) : flight;
}

const stage = memo((wing: GliderDesign['wing'], board: GliderDesign['board'], {plane, trim, air}: Flight): Outcome<WingStrength> => {
  if (!trim.ok) return trim;
  const {glide: {speed, setting}} = trim.value;
  const pressure = air.density * speed ** 2 / 2;
  const strips = plane.aero.strips.filter(({group}) => group === 0);
  const amounts = amountsOf(setting);
  const onWing = plane.masses.parts.reduce((sum, {id, mass}) => sum + (id === 'wing' || id === 'wing-glue' ? mass : 0), 0);
  // the wing weighs what it carries less: its share of the plane's weight
  const relief = 1 - onWing / plane.mass;
  const momentAt = (at: number): number => {
    const from = pivot(strips, at);
    return strips.reduce((sum, {along, y, z, dy, dz, circulation}) => {
      if (along <= at) return sum;
      const force = 2 * pressure * total(circulation, amounts);
      return sum + force * (dy * (y - from.y) + dz * (z - from.z));
    }, 0);
  };
  const stations = wingStations(wing);
  const folds = [...wing.joints.some(({at}) => at === 0) ? [] : [{at: 0, joint: false}], ...wing.joints.map(({at}) => ({at, joint: true}))];
  const places = folds.map(({at, joint}) => {
    const byAir = momentAt(at), glide = byAir * relief, fast = fastLoad * glide;
    const chord = sectionAt(stations, at)?.chord ?? wing.chord, {carries, bears} = carrying(wing.peeled, joint, wing.jointFace);
    const takes = rangeOf((end) => bears[end] * modulus[carries](board.thickness) * chord);
    return {at, joint, chord, carries, bears, byAir, glide, fast, takes, reserve: rangeOf((end) => takes[end] / fast)};
  });
  const weakest = places.reduce((a, b) => (b.reserve.usual < a.reserve.usual ? b : a), places[0] as BendingAt);
  return good({onWing, places, weakest, holds: weakest.reserve.least >= 1 ? 'yes' : weakest.reserve.most < 1 ? 'no' : 'perhaps'});
});

/** Where the wing bends: the inner edge of the first strip outside that place. */
function pivot(strips: readonly StripLoad[], at: number): {y: number; z: number} {
  const first = strips.find(({along}) => along > at);
  return first ? {y: first.y - first.dy / 2, z: first.z - first.dz / 2} : {y: 0, z: 0};
}

/** A closing joint has its groove above, an opening one its slit below: that skin does not count. */
function carrying(peeled: GliderDesign['wing']['peeled'], joint: boolean, face: GliderDesign['wing']['jointFace']): Pick<BendingAt, 'carries' | 'bears'> {
  const above = peeled !== 'above' && peeled !== 'both' && !(joint && face === 'closing');
  const below = peeled !== 'below' && peeled !== 'both' && !(joint && face === 'opening');
  if (above && below) return {carries: 'skins', bears: skin};
  return {carries: above || below ? 'skin-and-foam' : 'foam', bears: below ? pressed : bent};
}

/** What a thickness makes of a force or a stress, for each metre of width: n h, σ h²/3, σ h²/6. */
const modulus: Readonly<Record<Carries, (thickness: number) => number>> = {
  'skins': (h) => h, 'skin-and-foam': (h) => h ** 2 / 3, 'foam': (h) => h ** 2 / 6,
};
