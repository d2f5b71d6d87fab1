/**
 * Lift slope per radian of a thin wing in slow air: 2πA / (2 + √(4 + A² (1 + tan²Λ))), Λ the sweep of the half-chord line.
 *
 * Without sweep this is Helmbold's formula (1942) for straight wings; with it Lowry and Polhamus, NACA TN 3911 (1957). Both
 * from memory. Good to about 7 %: it is a little high for square-cut wings.
 */
export const liftSlope = (aspectRatio: number, halfChordSweep = 0): number =>
  2 * Math.PI * aspectRatio / (2 + Math.sqrt(4 + (aspectRatio / Math.cos(halfChordSweep)) ** 2));
