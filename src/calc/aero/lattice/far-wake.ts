import {spread, spreadOut} from './influence.js';
import type {Strip} from './lay-panels.js';

/**
 * The drag that lift costs, from the wake far behind the plane where only the trailing vortices are left: D = −½ ρ ∫ Γ w_n ds, as
 * the matrix Q of a quadratic form in the circulations Γ of the strips, D = ½ ρ Σ Σ Γ_s Q_st Γ_t, both halves, loads alike on both. M. Munk, NACA Report
 * 121 (1921); J. Katz and A. Plotkin, Low-Speed Aerodynamics, section 8.4.
 *
 * Row by row. Strips in the plane of symmetry carry no such load.
 */
export function farWakeDrag(strips: readonly Strip[]): Float64Array {
  const n = strips.length, drag = new Float64Array(n * n);
  strips.forEach((strip, s) => {
    strips.forEach((source, t) => {
      if (strip.share < 1 || source.share < 1) return;
      const core2 = strip.group === source.group ? 0 : (spread * source.width) ** 2;
      drag[s * n + t] = -2 * (washAlong(strip, source, 1, core2) + washAlong(strip, source, -1, core2));
    });
  });
  return drag;
}

/** Normal velocity over a strip from another's two trailing vortices, times the strip's width; `side` −1 for the mirror image. */
export function washAlong({y, z, dy, dz}: Strip, source: Strip, side: 1 | -1, core2: number): number {
  let wash = 0;
  for (const end of [-0.5, 0.5]) {
    const across = side * y - (source.y + end * source.dy), up = z - (source.z + end * source.dz);
    const rho2 = across * across + up * up;
    const turn = Math.sign(end) * (core2 > 0 ? spreadOut(rho2, core2) : 1 / rho2) / (2 * Math.PI);
    wash += turn * (up * side * dz + across * dy);
  }
  return wash;
}
