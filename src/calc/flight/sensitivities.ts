import type {Air} from '../aero/air.js';
import type {Setting} from '../aero/plane-loads.js';
import {loadedWith, type FlyingPlane} from './flying-plane.js';
import {glideAt, type Glide} from './glide.js';
import {liftOf, trimmedAt} from './trimmed.js';

/** What a small change at the bench does to the glide that a plane settles to. */
export interface Change {
  /** m/s. */
  readonly speed: number;
  readonly ratio: number;
  /** Static margin, mean chords. */
  readonly margin: number;
}

/** Missing where the plane would no longer glide. */
export interface Sensitivities {
  /** One more gram at the nose. */
  readonly noseGram?: Change;
  /** The tail's rear edge one millimetre higher. */
  readonly tailMillimetre?: Change;
  /** The wing's creases folded one degree further, all together. */
  readonly foldDegree?: Change;
}

/** Sensitivities of a trimmed plane, each by flying the changed plane: exact steps of one gram, one millimetre, one degree. */
export function sensitivitiesOf(plane: FlyingPlane, air: Air, from: Glide): Sensitivities {
  const {built, wingAt, tailChord, margin} = plane;
  const change = (changed: FlyingPlane, setting: Setting): Change | undefined => {
    const trimmed = trimmedAt(changed, setting);
    if (!(changed.margin > 0) || !(liftOf(changed, trimmed) > 0)) return undefined;
    const {speed, ratio} = glideAt(changed, trimmed, air);
    return {speed: speed - from.speed, ratio: ratio.usual - from.ratio.usual, margin: changed.margin - margin};
  };
  const noseGram = change(loadedWith(plane, 1e-3, -wingAt), built);
  const tailMillimetre = change(plane, {...built, tailIncidence: built.tailIncidence - Math.asin(Math.min(1e-3 / tailChord, 1))});
  const foldDegree = change(plane, {...built, fold: built.fold + Math.PI / 180});
  return {...(noseGram && {noseGram}), ...(tailMillimetre && {tailMillimetre}), ...(foldDegree && {foldDegree})};
}
