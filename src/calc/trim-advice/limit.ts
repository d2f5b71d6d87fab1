import {heavyOf, type FlyingPlane} from '../flight/flying-plane.js';
import type {Problem} from '../problem.js';

/**
 * What holds up all trimming where a plane balances behind the limit that its builder set; nothing where it does not. Nobody should trim such a plane by its tail
 * or its throw; which weights mend it, `balanceFirst` says.
 */
export function problemBehindLimit(plane: FlyingPlane): Problem | undefined {
  const {margin, wanted: [least], aero} = plane;
  if (heavyOf(plane) !== 'tail') return undefined;
  return {code: 'balance-behind-limit', path: 'ballast.masses', args: {margin, least, forward: (least - margin) * aero.shape.wing.meanAerodynamicChord}};
}
