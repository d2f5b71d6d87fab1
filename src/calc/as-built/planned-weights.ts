import {planeBalance} from '../balance/plane-balance.js';
import {withValues, type GliderDesign} from '../design/design.js';

/**
 * A plan without the weights that only the built plane needs. A weight is fitted to put right the plane that is on the bench; the plan, lighter or heavier at
 * that end than what was built, would be carried out of its balance by it, and be blamed for what is no fault. So those that carry the plan beyond its target
 * are left off, the latest first, and the last of them as far as brings it to the middle. A plan within its target stays what it is.
 */
export function withoutAddedWeights(plan: GliderDesign): GliderDesign {
  const balance = planeBalance(plan);
  const {masses} = plan.ballast;
  if (!balance.ok || balance.value.heavy === 'neither') return plan;
  const {heavy, at, mass, target: {middle}} = balance.value;
  const outside = (place: number): boolean => (heavy === 'nose' ? place < at : place > at);
  const last = masses.reduce((found, one, i) => (one.mass > 0 && outside(one.at) ? i : found), -1);
  const added = masses[last];
  if (!added) return plan;
  const without = withValues(plan, {'ballast.masses': masses.filter((_, i) => i !== last)});
  const rest = planeBalance(without);
  if (!rest.ok || rest.value.heavy === 'neither') return without;
  if (rest.value.heavy === heavy) return withoutAddedWeights(without);
  // moments about the middle of the target
  const excess = mass * (middle - at) / (middle - added.at);
  return withValues(plan, {'ballast.masses': masses.map((one, i) => (i === last ? {...one, mass: one.mass - excess} : one))});
}
