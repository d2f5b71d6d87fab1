import {good, type Outcome} from '../problem.js';
import {farWakeDrag} from './lattice/far-wake.js';
import type {Lattice} from './lattice/lay-panels.js';
import {solveLattice} from './lattice/solve.js';
import type {Surface} from './lattice/surface.js';
import {sideLoads, type SideLoads} from './side-loads.js';

/**
 * What a plane's lift is caused by, each by itself: the angle of attack, the wing's folded section, its incidence, the tail's incidence, folding
 * the creases further. Angles in rad; the section is there once. Lists by cause are in this order.
 */
export const causes = ['attack', 'section', 'wingIncidence', 'tailIncidence', 'fold'] as const;
export type Cause = (typeof causes)[number];
export type PerCause = readonly number[];

/** How much there is of each cause. */
export type Setting = Readonly<Record<Exclude<Cause, 'section'>, number>>;
export const amountsOf = (setting: Setting): PerCause => causes.map((cause) => cause === 'section' ? 1 : setting[cause]);

export const total = (perCause: PerCause, amounts: PerCause): number => perCause.reduce((sum, each, k) => sum + each * (amounts[k] ?? 0), 0);
export const totalOfPairs = (pairs: readonly PerCause[], amounts: PerCause): number =>
  pairs.reduce((sum, row, k) => sum + total(row, amounts) * (amounts[k] ?? 0), 0);

/** The section of one strip of the wing, as the lattice needs it. Angles in rad. */
export interface StripSection {
  readonly zeroLiftAngle: number;
  readonly quarterChordMoment: number;
  readonly idealLift: number;
}

/** All that the loads depend on, as plain numbers. */
export interface LoadInputs {
  readonly surfaces: readonly Surface[];
  /** By strip of the wing, which is the first surface: as it is folded, and per radian of further fold. */
  readonly sections: readonly StripSection[];
  readonly perFold: readonly StripSection[];
  readonly area: number;
  readonly span: number;
  /** Mean aerodynamic chord. */
  readonly chord: number;
  /** Where moments are taken and about what the plane turns. */
  readonly x: number;
  /** Dynamic pressure at the tail over that at the wing. */
  readonly tailEfficiency: number;
}

/** A strip of the right half with what each cause loads it with. */
export interface StripLoad {
  readonly group: number;
  readonly along: number;
  /** The middle of its quarter-chord line. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly dy: number;
  readonly dz: number;
  readonly width: number;
  readonly chord: number;
  readonly rows: number;
  /** 1, or ½ in the plane of symmetry. */
  readonly share: number;
  /** Circulation over the speed of flight, m. */
  readonly circulation: PerCause;
}

/** Coefficients on the wing's area and mean chord; moments about `LoadInputs.x`, nose up positive. */
export interface PlaneLoads {
  readonly strips: readonly StripLoad[];
  readonly lift: PerCause;
  readonly moment: PerCause;
  /** The tail's part of the lift. */
  readonly tailLift: PerCause;
  /** Per unit of q c̄ / 2V. */
  readonly pitching: {readonly lift: number; readonly moment: number};
  /** Drag that lift costs, by pairs of causes. */
  readonly induced: readonly PerCause[];
  /** Drag of losing all suction at the leading edges, by pairs of causes. */
  readonly suction: readonly PerCause[];
  readonly side: SideLoads;
  /** Second moment of the wing's area about the centre line, over area × span². */
  readonly spread: number;
}

/** The loads of a plane, cause by cause. Refused as {@link solveLattice}. */
export function planeLoads(inputs: LoadInputs): Outcome<PlaneLoads> {
  const solved = solveLattice(inputs.surfaces);
  if (!solved.ok) return solved;
  const {lattice, symmetric} = solved.value;
  const winds = windsOf(lattice, inputs);
  const loads = winds.map((wind) => symmetric(wind));
  const pitch = symmetric(lattice.cx.map((x, i) => (x - inputs.x) * (lattice.nz[i] ?? 0)));
  const {chord} = inputs;
  const sums = loads.map((load) => liftOf(lattice, load, inputs)), pitching = liftOf(lattice, pitch, inputs);
  const byStrip = loads.map((load) => stripCirculations(lattice, load));
  return good({
    strips: lattice.strips.map(({group, along, x, y, z, dy, dz, width, chord: c, rows, share}, s) =>
      ({group, along, x, y, z, dy, dz, width, chord: c, rows, share, circulation: byStrip.map((load) => load[s] ?? 0)})),
    lift: sums.map(({lift}) => lift), moment: sums.map(({moment}) => moment), tailLift: sums.map(({tailLift}) => tailLift),
    pitching: {lift: pitching.lift * 2 / chord, moment: pitching.moment * 2 / chord},
    induced: inducedOf(lattice, byStrip, inputs), suction: suctionOf(lattice, byStrip, inputs),
    side: sideLoads(solved.value, inputs, winds, loads),
    spread: lattice.strips.reduce((sum, s) => sum + (s.group === 0 ? 2 * s.y * s.y * s.chord * s.width : 0), 0) / (inputs.area * inputs.span ** 2),
  });
}

/** The air's normal velocity at each control point over the speed of flight, cause by cause. */
function windsOf({strips, count, nz, strip}: Lattice, {sections, perFold}: LoadInputs): readonly Float64Array[] {
  const winds = causes.map(() => new Float64Array(count)) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const [attack, section, wingIncidence, tailIncidence, fold] = winds;
  for (let i = 0; i < count; i++) {
    const s = strip[i] ?? 0, up = nz[i] ?? 0, at = strips[s];
    attack[i] = up;
    if (at?.group !== 0) { tailIncidence[i] = up; continue; }
    wingIncidence[i] = up;
    section[i] = -slopeOf(sections[s], i - at.first, at.rows);
    fold[i] = -slopeOf(perFold[s], i - at.first, at.rows);
  }
  return winds;
}

/**
 * The slope of a section at a control point: of the straight line and parabola that have its zero-lift angle and its moment, z' = a + 4h (1 − 2ξ) with
 * c_m = −πh and α₀ = a − 2h. Panels a quarter and three quarters long give a parabola's lift exactly and 1 − 1/n² of its moment, which is made good:
 * R. M. James, Computer Methods in Applied Mechanics and Engineering 1 (1972).
 */
function slopeOf(section: StripSection | undefined, row: number, rows: number): number {
  if (!section) return 0;
  const h = -section.quarterChordMoment / (Math.PI * (1 - 1 / (rows * rows)));
  return section.zeroLiftAngle + 2 * h + 4 * h * (1 - 2 * (row + 0.75) / rows);
}

/** Lift and moment of a load that is alike on both halves, by the law of Kutta and Joukowski on each bound vortex. */
function liftOf(
  {strips, count, ax, bx, strip}: Lattice, load: Float64Array, {area, chord, x, tailEfficiency}: LoadInputs,
): {lift: number; moment: number; tailLift: number} {
  let lift = 0, moment = 0, tailLift = 0;
  for (let i = 0; i < count; i++) {
    const at = strips[strip[i] ?? 0];
    if (!at) continue;
    const up = 4 / area * (load[i] ?? 0) * at.dy * (at.group === 0 ? 1 : tailEfficiency);
    lift += up;
    moment -= up * (((ax[i] ?? 0) + (bx[i] ?? 0)) / 2 - x) / chord;
    if (at.group !== 0) tailLift += up;
  }
  return {lift, moment, tailLift};
}

function stripCirculations({strips, strip}: Lattice, load: Float64Array): Float64Array {
  const sums = new Float64Array(strips.length);
  load.forEach((circulation, i) => { const s = strip[i] ?? 0; sums[s] = (sums[s] ?? 0) + circulation; });
  return sums;
}

function inducedOf({strips}: Lattice, byStrip: readonly Float64Array[], {area}: LoadInputs): readonly PerCause[] {
  const drag = farWakeDrag(strips), n = strips.length;
  const washes = byStrip.map((load) => Float64Array.from(strips, (_, s) => load.reduce((sum, g, t) => sum + (drag[s * n + t] ?? 0) * g, 0)));
  return byStrip.map((load) => washes.map((wash) => load.reduce((sum, g, s) => sum + g * (wash[s] ?? 0), 0) / area));
}

/**
 * The leading edge's suction, which a thin board loses most of: strip by strip (c_l − c_l,ideal)²/2π on its area. Thin-aerofoil theory: Abbott and
 * von Doenhoff, Theory of Wing Sections, chapter 4. On a flat wing its sum and the induced drag make the drag of a force normal to the board.
 */
function suctionOf({strips}: Lattice, byStrip: readonly Float64Array[], {area, sections, perFold}: LoadInputs): readonly PerCause[] {
  const beyond = strips.map(({chord, group}, s) => byStrip.map((load, k) => {
    const ideal = group !== 0 ? 0 : causes[k] === 'section' ? sections[s]?.idealLift ?? 0 : causes[k] === 'fold' ? perFold[s]?.idealLift ?? 0 : 0;
    return 2 * (load[s] ?? 0) / chord - ideal;
  }));
  return causes.map((_, k) => causes.map((__, l) => strips.reduce((sum, {chord, width}, s) =>
    sum + chord * width * (beyond[s]?.[k] ?? 0) * (beyond[s]?.[l] ?? 0), 0) / (Math.PI * area)));
}
