import type {FoldFace} from './stack.js';

/**
 * Width at the surface, in metres, that a V groove needs at least so that a fold of `angle` rad can close:
 * w = 2 t tan(f/2). The two bevels meet in the plane that halves the fold; own derivation.
 */
export const grooveToClose = (thickness: number, angle: number): number => 2 * thickness * Math.tan(angle / 2);

/**
 * Width, in metres, to which the mouth of a straight cut opens at a fold of `angle` rad, with the whole skin facing up:
 * 2 t sin(f/2), the chord of an arc of radius t about the pivot.
 */
export const slotThatOpens = (thickness: number, angle: number): number => 2 * thickness * Math.sin(angle / 2);

/** Fold in rad at which a V groove `width` wide at the surface is shut and stops the panel: 2 atan(w / 2t). */
export const grooveStop = (thickness: number, width: number): number => 2 * Math.atan2(width, 2 * thickness);

/**
 * Cross-section left to fill with glue, in m² (m³ for each metre of crease).
 *
 * Opening: ½ t² sin f, the triangle between the two faces of the cut. Closing: ½ t (w − 2 t tan(f/2)), what a V groove
 * `width` wide, more than it need be, leaves open below the two upper faces; nothing when it just closes. Own derivation.
 */
export const glueFill = (thickness: number, angle: number, face: FoldFace, width = 0): number =>
  face === 'opening' ? thickness ** 2 * Math.sin(angle) / 2 : Math.max(0, thickness * (width - grooveToClose(thickness, angle)) / 2);
