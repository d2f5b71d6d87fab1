/** Tail and wing as the neutral point sees them: pure numbers, places in mean chords behind the mean chord's front edge. */
export interface NeutralPointInputs {
  /** Aerodynamic centre of the wing: a quarter in the handbooks. */
  readonly wingCentre: number;
  readonly tailVolume: number;
  /** Dynamic pressure at the tail over that at the wing. */
  readonly tailEfficiency?: number;
  /** Lift slopes per radian, each on its own area. */
  readonly tailSlope: number;
  readonly slope: number;
  readonly downwash: number;
}

/**
 * The neutral point in mean chords: h_n = h_ac + V̄ η (a_t/a)(1 − dε/dα).
 *
 * Exact where V̄ is measured from the wing's aerodynamic centre to the tail's and `slope` is that of the whole plane, see
 * {@link wholeSlope}; books also use it with V̄ measured from the balance point and the wing's slope alone. Etkin and Reid,
 * Dynamics of Flight; H. Smith, Aircraft Flight Mechanics (open textbook).
 */
export const neutralPoint = ({wingCentre, tailVolume, tailEfficiency = 1, tailSlope, slope, downwash}: NeutralPointInputs): number =>
  wingCentre + tailVolume * tailEfficiency * tailSlope / slope * (1 - downwash);

/**
 * Lift slope of wing and tail together on the wing's area: a_w (1 + (S_t/S) η (a_t/a_w)(1 − dε/dα)). With it the neutral point is where the
 * lifts of wing and tail add up: their centre, each weighted by its own slope.
 */
export const wholeSlope = (wingSlope: number, tailSlope: number, areaShare: number, downwash: number, tailEfficiency = 1): number =>
  wingSlope + areaShare * tailEfficiency * tailSlope * (1 - downwash);
