import type {SolvedLattice} from './lattice/solve.js';

/** Side force to the right, rolling moment right wing down, yawing moment nose right: coefficients on the wing's area and span. */
export interface SideForce {
  readonly force: number;
  readonly roll: number;
  readonly yaw: number;
}

/** What a motion to the side gives: at no lift, and what each cause of lift adds. */
export interface SideLoad {
  readonly bare: SideForce;
  readonly perCause: readonly SideForce[];
}

/** Per radian of sideslip (wind from the right), and per unit of p b / 2V and r b / 2V in stability axes. */
export interface SideLoads {
  readonly sideslip: SideLoad;
  readonly rolling: SideLoad;
  readonly yawing: SideLoad;
}

export const totalSide = ({bare, perCause}: SideLoad, amounts: readonly number[]): SideForce =>
  perCause.reduce((sum, each, k) => plus(sum, each, amounts[k] ?? 0), bare);

const plus = (a: SideForce, b: SideForce, times: number): SideForce =>
  ({force: a.force + times * b.force, roll: a.roll + times * b.roll, yaw: a.yaw + times * b.yaw});

interface Reference {
  readonly area: number;
  readonly span: number;
  readonly x: number;
  readonly tailEfficiency: number;
}

/** The air that a motion brings to a point (x from the turning point, y, z), over the speed of flight. */
type Motion = (x: number, y: number, z: number) => readonly [u: number, v: number, w: number];

/** Seen from the plane, for one radian of sideslip, and for p and r of one radian per metre flown. */
const motions: Readonly<Record<keyof SideLoads, Motion>> = {
  sideslip: () => [0, -1, 0],
  rolling: (_, y, z) => [0, -z, y],
  yawing: (x, y) => [-y, x, 0],
};

/**
 * Forces and moments of small motions to the side: each motion's own load, opposite on the two halves, in the oncoming air; and each cause's
 * load, alike on both, in the air that the motion brings. In yaw the outer wing's larger speed also makes more of every cause. Forces are taken square to
 * the undisturbed air at each panel (Kutta and Joukowski); trailing vortices stay straight behind, so the part of sweep in the effect of sideslip comes out
 * at about half. Own derivation.
 */
export function sideLoads(
  {lattice, antisymmetric}: SolvedLattice, {area, span, x: x0, tailEfficiency}: Reference,
  winds: readonly Float64Array[], loads: readonly Float64Array[],
): SideLoads {
  const {count, strips, strip, ax, ay, az, bx, by, bz, cx, cy, cz, ny, nz} = lattice;

  /** The force on each panel of the right half, doubled for the left, gathered. */
  const gather = (load: Float64Array, air: Motion, scale: number): SideForce => {
    let force = 0, roll = 0, yaw = 0;
    for (let i = 0; i < count; i++) {
      const at = strips[strip[i] as number];
      if (!at) continue;
      const lx = (bx[i] as number) - (ax[i] as number), ly = at.dy, lz = at.dz;
      const x = ((ax[i] as number) + (bx[i] as number)) / 2 - x0, y = ((ay[i] as number) + (by[i] as number)) / 2, z = ((az[i] as number) + (bz[i] as number)) / 2;
      const [u, v, w] = air(x, y, z);
      const strength = (load[i] as number) * at.share * (at.group === 0 ? 1 : tailEfficiency);
      const fx = strength * (v * lz - w * ly), fy = strength * (w * lx - u * lz), fz = strength * (u * ly - v * lx);
      force += fy;
      roll -= y * fz - z * fy;
      yaw -= x * fy - y * fx;
    }
    const q = 4 * scale / area;
    return {force: q * force, roll: q * roll / span, yaw: q * yaw / span};
  };

  const oncoming: Motion = () => [1, 0, 0];
  const of = (name: keyof SideLoads, scale: number): SideLoad => {
    const motion = motions[name];
    const wind = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      const [, v, w] = motion((cx[i] as number) - x0, cy[i] as number, cz[i] as number);
      wind[i] = v * (ny[i] as number) + w * (nz[i] as number);
    }
    const perCause = loads.map((load, k) => {
      const inMotion = gather(load, motion, scale);
      if (name !== 'yawing') return inMotion;
      const faster = antisymmetric(Float64Array.from(winds[k] ?? [], (own, i) => -(cy[i] as number) * own));
      return plus(inMotion, gather(faster, oncoming, scale), 1);
    });
    return {bare: gather(antisymmetric(wind), oncoming, scale), perCause};
  };
  return {sideslip: of('sideslip', 1), rolling: of('rolling', 2 / span), yawing: of('yawing', 2 / span)};
}
