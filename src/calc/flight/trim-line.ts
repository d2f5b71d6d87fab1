import type {Air} from '../aero/air.js';
import type {Setting} from '../aero/plane-loads.js';
import type {FlyingPlane} from './flying-plane.js';
import {glideWith, loadsAt, usualBalance, type Balance, type Glide, type Loads} from './glide.js';
import {trimmedFor} from './trimmed.js';

/** A plane with its tail set for one lift coefficient after another, all else as it is built. */
export interface TrimLine {
  readonly glide: (lift: number) => Glide;
  /** How fast and how steeply, and nothing more: for looking through many lifts. */
  readonly usual: (lift: number) => Balance;
}

/**
 * The tail and the angle of attack go straight with the lift, and so what the lift costs goes as its square: three lifts say it for all, and no list of
 * causes is gone through again.
 */
export function trimLine(plane: FlyingPlane, air: Air): TrimLine {
  const none = trimmedFor(plane, 0, plane.built), one = trimmedFor(plane, 1, plane.built), back = trimmedFor(plane, -1, plane.built);
  const setting = (lift: number): Setting => ({
    ...plane.built, attack: none.attack + lift * (one.attack - none.attack), tailIncidence: none.tailIncidence + lift * (one.tailIncidence - none.tailIncidence),
  });
  const [at0, at1, atBack] = [none, one, back].map((each) => loadsAt(plane, each)) as [Loads, Loads, Loads];
  const square = (of: 'induced' | 'suction'): (lift: number) => number => {
    const start = at0[of], slope = (at1[of] - atBack[of]) / 2, bend = (at1[of] + atBack[of]) / 2 - start;
    return (lift) => Math.max(start + lift * (slope + lift * bend), 0);
  };
  const induced = square('induced'), suction = square('suction');
  const loads = (lift: number): Loads => ({lift, induced: induced(lift), suction: suction(lift)});
  return {glide: (lift) => glideWith(plane, setting(lift), loads(lift), air), usual: (lift) => usualBalance(plane, loads(lift), air)};
}
