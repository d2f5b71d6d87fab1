/** What the downwash behind a wing depends on. Lengths over the wing's span. */
export interface DownwashInputs {
  readonly aspectRatio: number;
  /** Tip chord over root chord. */
  readonly taper: number;
  readonly quarterChordSweep: number;
  /** From the wing's aerodynamic centre back to the tail's. */
  readonly armOverSpan: number;
  /** The tail above or below the plane of the wing. */
  readonly heightOverSpan?: number;
}

/** What aspect ratio, taper and the tail's place make of the downwash: K_A, K_λ and K_H. */
export interface DownwashFactors {
  readonly aspect: number;
  readonly taper: number;
  readonly place: number;
}

/** K_A = 1/A − 1/(1 + A^1.7), K_λ = (10 − 3λ)/7, K_H = (1 − |h/b|) / ∛(2 l/b). */
export const downwashFactors = ({aspectRatio, taper, armOverSpan, heightOverSpan = 0}: DownwashInputs): DownwashFactors => ({
  aspect: 1 / aspectRatio - 1 / (1 + aspectRatio ** 1.7),
  taper: Math.max(10 - 3 * taper, 0) / 7,
  place: Math.max(1 - Math.abs(heightOverSpan), 0) / Math.cbrt(2 * armOverSpan),
});

/**
 * How much the air behind a wing turns down for each radian that the wing is turned up: 4.44 (K_A K_λ K_H √cos Λ)^1.19, Λ the sweep of the
 * quarter-chord line. USAF Stability and Control DATCOM, section 4.4.1 (from memory).
 *
 * Chosen because it knows how far back the tail is; a far wake, 2a/πA, turns down too much this close behind a wing. Below
 * an aspect ratio of about one, or a tail at the wing itself, the formula leaves its range and is held between 0 and 1.
 */
export function downwashGradient(inputs: DownwashInputs): number {
  const {aspect, taper, place} = downwashFactors(inputs);
  return Math.min(4.44 * Math.max(aspect * taper * place * Math.sqrt(Math.cos(inputs.quarterChordSweep)), 0) ** 1.19, 1);
}
