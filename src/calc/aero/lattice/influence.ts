import type {Lattice} from './lay-panels.js';

/** What each panel's vortex does at each control point, across the surface there; row by row. */
export interface Influence {
  /** Loads alike on both halves. */
  readonly symmetric: Float64Array;
  /** Loads opposite on the two halves. */
  readonly antisymmetric: Float64Array;
}

/** Over how much of its strip's width a trailing vortex is spread where it passes another surface: less, and single vortices show. */
export const spread = 1;

/**
 * 1/ρ² of a trailing vortex, spread out over a width δ for surfaces other than its own: (ρ² + 3δ²)/(ρ² + δ²)².
 *
 * Behind a wing the real wake is a smooth sheet, but the lattice has a vortex every strip, and a tail in the plane of the wing
 * would see whichever is nearest. The field of the sheet a little way off it is smooth, and following it back to the sheet along its slope
 * gives this kernel: to the second order in δ what the sheet does, and finite even on the vortex itself. Own derivation.
 */
export const spreadOut = (rho2: number, delta2: number): number => (rho2 + 3 * delta2) / (rho2 + delta2) ** 2;

/**
 * The normal velocity at each control point from a horseshoe vortex of strength 1 on each panel and from its mirror image, by the law of Biot
 * and Savart: a bound vortex and two that trail straight back. J. Katz and A. Plotkin, Low-Speed Aerodynamics, chapter 12.
 *
 * Only the right half is laid out. What the mirror image does at a point is what the vortex itself does at the mirrored point, mirrored.
 */
export function influenceOf(lattice: Lattice): Influence {
  const {count, strips, ax, ay, az, bx, by, bz, cx, cy, cz, ny, nz, strip} = lattice;
  const symmetric = new Float64Array(count * count), antisymmetric = new Float64Array(count * count);
  const group = Int32Array.from(strip, (s) => strips[s]?.group ?? 0);
  const delta2 = Float64Array.from(strip, (s) => (spread * (strips[s]?.width ?? 0)) ** 2);
  const share = Float64Array.from(strip, (s) => strips[s]?.share ?? 1);

  /** Two semi-infinite vortices and a bound one; across a surface with the normal (0, my, mz). */
  const horseshoe = (j: number, px: number, py: number, pz: number, my: number, mz: number, core2: number): number => {
    const x1 = px - (ax[j] as number), y1 = py - (ay[j] as number), z1 = pz - (az[j] as number);
    const x2 = px - (bx[j] as number), y2 = py - (by[j] as number), z2 = pz - (bz[j] as number);
    const r1 = Math.sqrt(x1 * x1 + y1 * y1 + z1 * z1), r2 = Math.sqrt(x2 * x2 + y2 * y2 + z2 * z2);
    const legA = trailing(x1, y1 * y1 + z1 * z1, r1, core2), legB = trailing(x2, y2 * y2 + z2 * z2, r2, core2);
    const facing = r1 * r2 + x1 * x2 + y1 * y2 + z1 * z2;
    const bound = facing > 0 ? (r1 + r2) / (r1 * r2 * facing) : 0;
    const vy = bound * (z1 * x2 - x1 * z2) + legA * z1 - legB * z2;
    const vz = bound * (x1 * y2 - y1 * x2) - legA * y1 + legB * y2;
    return (vy * my + vz * mz) / (4 * Math.PI);
  };

  for (let i = 0; i < count; i++) {
    const px = cx[i] as number, py = cy[i] as number, pz = cz[i] as number, my = ny[i] as number, mz = nz[i] as number;
    for (let j = 0; j < count; j++) {
      const core2 = group[i] === group[j] ? 0 : delta2[j] as number;
      const own = horseshoe(j, px, py, pz, my, mz, core2);
      const image = horseshoe(j, px, -py, pz, -my, mz, core2);
      // a surface in the plane of symmetry carries nothing there while both halves are loaded alike
      symmetric[i * count + j] = share[j] === 1 ? own + image : i === j ? 1 : 0;
      antisymmetric[i * count + j] = (own - image) * (share[j] as number);
    }
  }
  return {symmetric, antisymmetric};
}

/**
 * A vortex of strength 4π from a point straight back to infinity, over its distance ρ: (1 + x/r)/ρ², in a form that loses no digits
 * ahead of its beginning; behind it, the part of an infinite vortex is spread out.
 */
function trailing(x: number, rho2: number, r: number, core2: number): number {
  if (x <= 0) return 1 / (r * (r - x));
  return 2 * (core2 > 0 ? spreadOut(rho2, core2) : 1 / rho2) - 1 / (r * (r + x));
}
