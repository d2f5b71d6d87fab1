import {good, type Outcome} from '../../problem.js';
import {grooveStop} from './groove.js';
import {leastRoot} from './least-root.js';
import {refusal, rightAngle, rounding} from './lengths.js';
import {foldFromProp, placeForFold, propForFold, type FoldFromProp, type Panel, type PropPlace} from './prop.js';
import type {Prop, PropPlacing} from './stack.js';

/** A V joint on the centre line: one half flat on the bench and the other propped, or both tips propped alike. */
export type VPropped = 'one' | 'both';

/** A V wing at rest: `angle` is its whole fold; the bench coordinates are those of the propped half, or of either. */
export interface VFromBlock extends FoldFromProp {
  /** Dihedral of each half, in rad: half of the fold. */
  readonly panelAngle: number;
}

/**
 * The dihedral that a block gives a V.
 *
 * One half flat: the other rises by the whole fold, so a block under its edge is L sin 2Γ high. Both tips propped: each
 * rises by half of it, L sin Γ. Contact as in `foldFromProp`; with both propped and the cut opening underneath, each half
 * stands on the corner of the cut, t sin Γ from the joint. Own derivation. A tip joint beside a flat centre is
 * `foldFromProp` itself.
 *
 * Refused as there; both propped, also `fold-past-groove` {angle, most} when the groove shuts before the halves come down.
 */
export function vFromBlock(half: Panel, block: Prop, propped: VPropped): Outcome<VFromBlock> {
  if (propped === 'one') {
    const fold = foldFromProp(half, block);
    return fold.ok ? good({...fold.value, panelAngle: fold.value.angle / 2}) : fold;
  }
  const {fromCrease: x = 0, height, where} = block;
  // a distance from the joint says less from the corner, which moves out as the half rises: (x − t sin Γ) tan Γ = h
  const corner = where === 'bench' && x > 0
    ? leastRoot((angle) => (x - cornerOf(half, angle)) * Math.tan(angle), height, rightAngle * (1 - rounding)).at ?? rightAngle : 0;
  const risen = foldFromProp(standing(half), {...block, fromCrease: x - cornerOf(half, corner)});
  if (!risen.ok) return risen;
  const {angle, tilt, contact, edgeFromCrease} = risen.value, out = cornerOf(half, angle);
  if (tilt > 0) return refusal('fold-past-groove', {angle: angle + tilt, most: angle});
  return good({
    ...risen.value, panelAngle: angle, angle: 2 * angle, contact: {x: contact.x + out, y: contact.y}, edgeFromCrease: edgeFromCrease + out,
  });
}

/** The block that a wanted dihedral of each half needs: the exact inverse of `vFromBlock`. Refused as `propForFold`. */
export const blockForV = (half: Panel, panelAngle: number, block: PropPlacing, propped: VPropped): Outcome<{readonly height: number}> =>
  (propped === 'one' ? propForFold(half, 2 * panelAngle, block)
    : propForFold(standing(half), panelAngle, {...block, fromCrease: (block.fromCrease ?? 0) - cornerOf(half, panelAngle)}));

/** Where a block at hand must stand for a wanted dihedral of each half. Refused as `placeForFold`. */
export function placeForV(half: Panel, panelAngle: number, height: number, propped: VPropped): Outcome<PropPlace> {
  if (propped === 'one') return placeForFold(half, 2 * panelAngle, height);
  const place = placeForFold(standing(half), panelAngle, height);
  return place.ok ? good({...place.value, fromCrease: place.value.fromCrease + cornerOf(half, panelAngle)}) : place;
}

/** With both tips propped, each half rises from the line it stands on as a closing panel does, with half of the groove's stop. */
const standing = ({length, thickness, face, groove}: Panel): Panel => ({
  length, thickness, face: 'closing',
  ...(face === 'closing' && groove !== undefined && {groove: 2 * thickness * Math.tan(grooveStop(thickness, groove) / 4)}),
});

/** How far from the joint that line lies. */
const cornerOf = ({face, thickness}: Panel, angle: number): number => (face === 'opening' ? thickness * Math.sin(angle) : 0);

/**
 * How much further a panel folds on a block `by` metres taller, in rad: the difference between left and right when the
 * two blocks differ by that. Refused as `foldFromProp`, for either block.
 */
export function foldDifference(panel: Panel, prop: Prop, by: number): Outcome<number> {
  const meant = foldFromProp(panel, prop), built = foldFromProp(panel, {...prop, height: prop.height + by});
  return !meant.ok ? meant : !built.ok ? built : good(built.value.angle - meant.value.angle);
}
