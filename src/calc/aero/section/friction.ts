/** Mean friction of one side of a smooth flat plate in laminar flow: 1.328/√Re. H. Blasius (1908). */
export const laminarFriction = (reynolds: number): number => 1.328 / Math.sqrt(reynolds);

/**
 * The same with a turbulent boundary layer from the front edge: 0.455/(lg Re)^2.58. Prandtl and Schlichting; H. Schlichting,
 * Boundary-Layer Theory. Fitted from 10⁵ upwards; used down to 10⁴ here, where no smooth plate stays turbulent by itself
 * but a blunt front edge or a crease trips it.
 */
export const turbulentFriction = (reynolds: number): number => 0.455 / Math.log10(reynolds) ** 2.58;

/**
 * The same, laminar up to a point and turbulent behind it as if it had been so from the front edge:
 * C_t(Re) − (Re_t/Re) (C_t(Re_t) − C_l(Re_t)). Prandtl (1927); Anderson, Fundamentals of Aerodynamics, example 4.9.
 *
 * @param transition Reynolds number of the length that is laminar
 * @param turbulent the law for the turbulent part
 */
export function mixedFriction(reynolds: number, transition: number, turbulent: (reynolds: number) => number = turbulentFriction): number {
  if (transition >= reynolds) return laminarFriction(reynolds);
  if (transition <= 0) return turbulent(reynolds);
  return turbulent(reynolds) - transition / reynolds * (turbulent(transition) - laminarFriction(transition));
}
