import {farWakeDrag} from '../../../src/calc/aero/lattice/far-wake.js';
import type {Strip} from '../../../src/calc/aero/lattice/lay-panels.js';
import {solveLattice} from '../../../src/calc/aero/lattice/solve.js';
import type {Surface} from '../../../src/calc/aero/lattice/surface.js';
import {planeLoads, type PlaneLoads, type StripSection} from '../../../src/calc/aero/plane-loads.js';

/** A straight-tapered half wing with its root at the origin. */
export const wingOf = ({span, root = 1, tip = root, sweep = 0, dihedral = 0, strips = 14, rows = 4, freeTip = true, group = 0, x = 0, z = 0}: {
  readonly span: number; readonly root?: number; readonly tip?: number; readonly sweep?: number; readonly dihedral?: number;
  readonly strips?: number; readonly rows?: number; readonly freeTip?: boolean; readonly group?: number; readonly x?: number; readonly z?: number;
}): Surface => ({
  group, strips, rows, freeTip,
  ribs: [
    {x, y: 0, z, chord: root},
    {x: x + span / 2 * Math.tan(sweep), y: span / 2 * Math.cos(dihedral), z: z + span / 2 * Math.sin(dihedral), chord: tip},
  ],
});

/** One wing alone, turned up by a radian: slope of lift and of moment about the apex on `chord`, circulations, and δ of C_Di = C_L² (1 + δ)/πA. */
export function turnedUp(wing: Surface, area: number, span: number, chord = 1) {
  const solved = solveLattice([wing]);
  if (!solved.ok) throw new Error(solved.problems.map(({code}) => code).join());
  const {lattice, symmetric} = solved.value;
  const load = symmetric(lattice.nz);
  const circulation = new Float64Array(lattice.strips.length);
  let lift = 0, moment = 0;
  load.forEach((g, i) => {
    const s = lattice.strip[i] ?? 0, up = 4 * g * (lattice.strips[s]?.dy ?? 0) / area;
    circulation[s] = (circulation[s] ?? 0) + g;
    lift += up;
    moment -= up * ((lattice.ax[i] ?? 0) + (lattice.bx[i] ?? 0)) / 2 / chord;
  });
  return {lift, moment, centre: -moment / lift, circulation, delta: deltaOf(lattice.strips, circulation, span)};
}

/** δ of a load: how much more drag than an elliptic load of the same lift over the same span. */
export function deltaOf(strips: readonly Strip[], circulation: ArrayLike<number>, span: number): number {
  const drag = farWakeDrag(strips), n = strips.length;
  let lift = 0, costs = 0;
  strips.forEach((strip, s) => {
    lift += 4 * (circulation[s] ?? 0) * strip.dy;
    strips.forEach((_, t) => { costs += (circulation[s] ?? 0) * (drag[s * n + t] ?? 0) * (circulation[t] ?? 0); });
  });
  return costs * Math.PI * span * span / lift ** 2 - 1;
}

const flat: StripSection = {zeroLiftAngle: 0, quarterChordMoment: 0, idealLift: 0};

/** Loads of surfaces on a wing of such an area, span and mean chord; every strip of the wing has the same section. */
export function loadsOf(surfaces: readonly Surface[], area: number, span: number, {chord = 1, section = flat, perFold = flat, tailEfficiency = 1} = {}): PlaneLoads {
  const many = (one: StripSection) => Array.from({length: 400}, () => one);
  const loads = planeLoads({surfaces, sections: many(section), perFold: many(perFold), area, span, chord, x: chord / 4, tailEfficiency});
  if (!loads.ok) throw new Error(loads.problems.map(({code}) => code).join());
  return loads.value;
}
