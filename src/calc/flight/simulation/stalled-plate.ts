/** How far beyond the angle of its most lift a board's flow has left it altogether, rad. An assumption: the way there is not known. */
export const stallWidth = 6 * Math.PI / 180;

/** From 0 where the flow still lies to the board to 1 where it has left it; its slope and bend begin and end at nothing, so that steps can be long. */
export function leftBy(beyond: number): number {
  const t = Math.min(Math.max(beyond / stallWidth, 0), 1);
  return t * t * t * (t * (6 * t - 15) + 10);
}

/**
 * The force square to a plate that the flow has left, on its area: 2 sin α / (1 + 0.7 |sin α|). Held square to the stream that is the 1.17 of plates of
 * low aspect: S. F. Hoerner, Fluid-Dynamic Drag (1965), chapter 3 (from memory). The way up to it is an assumption of the same form as Lord Rayleigh's
 * 2π sin α / (4 + π sin α) (1876), which leaves out the suction behind the plate.
 *
 * @param sine of the angle between plate and stream
 */
export const plateForce = (sine: number): number => 2 * sine / (1 + 0.7 * Math.abs(sine));

/** Where that force acts, behind the plate's front edge over its chord: ½ − ¾ cos α / (4 + π |sin α|). Rayleigh (1876). */
export const plateCentre = (sine: number, cosine: number): number => 0.5 - 0.75 * cosine / (4 + Math.PI * Math.abs(sine));
