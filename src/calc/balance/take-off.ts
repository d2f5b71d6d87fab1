import type {GliderDesign} from '../design/design.js';
import {massToAdd} from './adding.js';
import type {MassId} from './mass-item.js';
import {withMass, type Addition} from './remedy.js';
import type {PlaneBalance} from './plane-balance.js';

/** Mass that could come off the heavy end instead of weight going on the other. `mass` is what comes off. */
export interface TakingOff extends Addition {
  readonly from: Extract<MassId, 'weight' | 'tailplane'>;
  /** What there is of it now. */
  readonly of: number;
}

/**
 * What could come off the heavy end so that the balance reaches the middle of its target: from a fitted weight that stands
 * there, or from tailplane and fins as much as peeling their skins on one face. Each alone; none where there is not enough to take.
 */
export function takingOff(plane: PlaneBalance, {ballast, tail, board}: GliderDesign): readonly TakingOff[] {
  if (plane.heavy === 'neither') return [];
  const tailParts = tail.weighed === undefined ? plane.masses.parts.filter(({id}) => id === 'tailplane' || id === 'fins') : [];
  const tailMass = tailParts.reduce((sum, {mass}) => sum + mass, 0);
  const tailAt = tailParts.reduce((sum, {mass, at}) => sum + mass * at, 0) / tailMass;
  const candidates = [
    ...ballast.masses.map(({mass, at}) => ({from: 'weight', of: mass, most: mass, at}) as const),
    ...tailMass > 0 ? [{from: 'tailplane', of: tailMass, most: tailMass * board.skinShare / 2, at: tailAt} as const] : [],
  ];
  return candidates.flatMap(({from, of, most, at}) => {
    const added = massToAdd(plane, plane.target.middle, at);
    if (!added.ok) return [];
    const off = -added.value;
    return off > 0 && off <= most ? [{...withMass(plane, -off, at), mass: off, from, of}] : [];
  });
}
