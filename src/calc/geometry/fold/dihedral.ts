/** A panel of one half of a wing: from y0 to y1 along the flat wing in metres, chords there, its angle to level in rad. */
export interface DihedralPanel {
  readonly y0: number;
  readonly y1: number;
  readonly chord0: number;
  readonly chord1: number;
  readonly angle: number;
}

/**
 * Equivalent dihedral in rad, each strip counted by its area times its distance from the centre line, as it counts in
 * rolling: ∫ Γ c y dy / ∫ c y dy, with the chord linear between the ends of a panel:
 * ∫ c y dy = (y₁ − y₀) (c₀ (2 y₀ + y₁) + c₁ (y₀ + 2 y₁)) / 6. Strip theory; closed form derived here. 0 without panels.
 */
export function equivalentDihedral(panels: readonly DihedralPanel[]): number {
  let whole = 0, turned = 0;
  for (const {y0, y1, chord0, chord1, angle} of panels) {
    const moment = (y1 - y0) * (chord0 * (2 * y0 + y1) + chord1 * (y0 + 2 * y1)) / 6;
    whole += moment;
    turned += moment * angle;
  }
  return whole > 0 ? turned / whole : 0;
}

/**
 * The other usual meaning of equivalent dihedral, in rad: the plain V whose halves, cut as long, lift their tips as high:
 * asin(rise / half). Right-angled triangle; own derivation. No rise makes more than a right angle.
 */
export const sameRiseDihedral = (tipRise: number, half: number): number =>
  (half > 0 ? Math.asin(Math.min(1, Math.max(-1, tipRise / half))) : 0);

/** One half of a wing seen from the front, in metres: y out from the centre line, z up from it. */
export interface WingAsFlown {
  /** The lower skin from the centre line to the tip, a corner for each joint. */
  readonly points: readonly {readonly y: number; readonly z: number}[];
  /** From tip to tip as it flies. */
  readonly span: number;
  readonly tipRise: number;
}

/**
 * The wing as it flies from the half-wing as cut. At each joint the panels outside turn up by its angle against the panel
 * inside it; a joint on the centre line gives each half its angle. Projection of each panel; own derivation.
 *
 * @param half flat, from the centre line to the tip
 * @param joints from the centre outwards, none beyond the tip: distance from the centre line along the flat wing, angle in rad
 */
export function wingAsFlown(half: number, joints: readonly {readonly at: number; readonly angle: number}[]): WingAsFlown {
  const points = [{y: 0, z: 0}];
  let y = 0, z = 0, inside = 0, slope = 0;
  for (const {at, angle} of [...joints, {at: half, angle: 0}]) {
    y += (at - inside) * Math.cos(slope);
    z += (at - inside) * Math.sin(slope);
    if (at > inside) points.push({y, z});
    [inside, slope] = [at, slope + angle];
  }
  return {points, span: 2 * y, tipRise: z};
}
