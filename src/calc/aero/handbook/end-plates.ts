/** Plates taller than half the span are taken as half the span: the rule is a straight line through small plates. */
const tallest = 0.5;

/**
 * The aspect ratio that a surface acts with when plates stand on its ends: A (1 + 1.9 h/b), h the height of a plate and b
 * the span. Hoerner, Fluid-Dynamic Drag (1965), chapter 7 (from memory).
 */
export const endPlatedAspectRatio = (aspectRatio: number, heightOverSpan: number): number =>
  aspectRatio * (1 + 1.9 * Math.min(heightOverSpan, tallest));
