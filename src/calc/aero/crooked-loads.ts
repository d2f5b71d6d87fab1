import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import type {Lattice} from './lattice/lay-panels.js';
import {spread} from './lattice/influence.js';
import {washAlong} from './lattice/far-wake.js';
import {solveLattice} from './lattice/solve.js';
import {tailEfficiency, type PlaneAero} from './plane-aero.js';
import {causes} from './plane-loads.js';
import {lostSuction} from './section/board-drag.js';
import {idealLift} from './section/thin-section.js';
import type {SideForce, SideLoad} from './side-loads.js';

const section = causes.indexOf('section');

/** What boards that are not alike on both sides do: about the point where moments are taken, on the wing's area and span. */
export interface CrookedLoads {
  /** For each radian that the fins' rear edges stand to the right. */
  readonly fin: SideLoad;
  /** For each radian by which the left half of the wing stands at more incidence than the right. */
  readonly twist: SideLoad;
}

/**
 * Loads of crooked boards, opposite on the two halves, from the same lattice. The half that lifts more is also held back more: the wash of either load on
 * the other, far behind (M. Munk, 1921), and the lost suction, both split by strips. Own derivation.
 *
 * Refused: 'surfaces-in-one-another', as the plane itself is.
 */
export const crookedLoads = memo((aero: PlaneAero): Outcome<CrookedLoads> => {
  const solved = solveLattice(aero.shape.surfaces);
  if (!solved.ok) return refused({code: 'surfaces-in-one-another', path: 'arrangement.tailAt'});
  const {lattice, antisymmetric} = solved.value;
  const loadOf = (wind: (group: number, ny: number, nz: number) => number): Float64Array =>
    antisymmetric(Float64Array.from(lattice.strip, (s, i) => wind(lattice.strips[s]?.group ?? 0, lattice.ny[i] ?? 0, lattice.nz[i] ?? 0)));
  // a fin turned to the right meets the air as if that came from the right; a flat tailplane does not notice
  const fin = loadOf((group, ny) => (group === 0 ? 0 : -ny)), twist = loadOf((group, _, nz) => (group === 0 ? -nz / 2 : 0));
  return good({
    fin: {bare: forceOf(lattice, fin, aero), perCause: []},
    twist: {bare: forceOf(lattice, twist, aero), perCause: yawOfDrag(lattice, twist, aero).map((yaw) => ({force: 0, roll: 0, yaw}))},
  });
});

/** Forces square to the oncoming air on the bound vortices of both halves: Kutta and Joukowski. */
function forceOf({strips, strip, count, ax, ay, az, bx, by, bz}: Lattice, load: Float64Array, {x: x0, shape}: PlaneAero): SideForce {
  let force = 0, roll = 0, yaw = 0;
  for (let i = 0; i < count; i++) {
    const at = strips[strip[i] ?? 0];
    if (!at) continue;
    const strength = (load[i] ?? 0) * at.share * (at.group === 0 ? 1 : tailEfficiency.usual);
    const x = ((ax[i] ?? 0) + (bx[i] ?? 0)) / 2 - x0, y = ((ay[i] ?? 0) + (by[i] ?? 0)) / 2, z = ((az[i] ?? 0) + (bz[i] ?? 0)) / 2;
    const aside = -strength * at.dz, up = strength * at.dy;
    force += aside;
    roll -= y * up - z * aside;
    yaw -= x * aside;
  }
  const {area, span} = shape.wing, q = 4 / area;
  return {force: q * force, roll: q * roll / span, yaw: q * yaw / span};
}

/** Yaw to the right by the drag that a load opposite on both halves adds on the right and takes from the left, for each cause of lift. */
function yawOfDrag({strips, strip}: Lattice, load: Float64Array, aero: PlaneAero): readonly number[] {
  const {area, span} = aero.shape.wing;
  const opposite = new Float64Array(strips.length);
  load.forEach((circulation, i) => { const s = strip[i] ?? 0; opposite[s] = (opposite[s] ?? 0) + circulation; });
  const ideal = idealLift(aero.rootSection);
  return (aero.strips[0]?.circulation ?? []).map((_, cause) => {
    const alike = aero.strips.map(({circulation}) => circulation[cause] ?? 0);
    let yaw = 0;
    strips.forEach((one, s) => {
      let wash = 0;
      strips.forEach((source, t) => {
        const core2 = one.group === source.group ? 0 : (spread * source.width) ** 2;
        const own = washAlong(one, source, 1, core2), image = washAlong(one, source, -1, core2);
        const both = source.share < 1 ? 0 : (own + image) * (alike[t] ?? 0), odd = (own - image) * source.share * (opposite[t] ?? 0);
        wash += (alike[s] ?? 0) * odd + (opposite[s] ?? 0) * both;
      });
      const beyond = 2 * (alike[s] ?? 0) / one.chord - (one.group === 0 && cause === section ? ideal : 0);
      yaw += 2 * one.share * one.y * (-wash + lostSuction.usual * one.width * beyond * 2 * (opposite[s] ?? 0) / Math.PI);
    });
    return yaw / (area * span);
  });
}
