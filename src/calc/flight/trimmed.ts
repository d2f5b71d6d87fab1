import {amountsOf, causes, total, type Setting} from '../aero/plane-loads.js';
import {liftLimit} from '../aero/section/board-drag.js';
import {rangeOf, type Range} from '../aero/range.js';
import type {FlyingPlane} from './flying-plane.js';

const attack = causes.indexOf('attack'), tail = causes.indexOf('tailIncidence');

/** The angle of attack at which the moment about the balance point is nothing, every other angle as it is. */
export function trimmedAt(plane: FlyingPlane, setting: Setting): Setting {
  const rest = total(plane.moment, amountsOf({...setting, attack: 0}));
  return {...setting, attack: -rest / (plane.moment[attack] ?? NaN)};
}

/** The angle of attack and the tail's incidence for a lift coefficient without moment: two equations with two unknowns. */
export function trimmedFor(plane: FlyingPlane, lift: number, setting: Setting): Setting {
  const rest = amountsOf({...setting, attack: 0, tailIncidence: 0});
  const [la, lt, ma, mt] = [plane.lift[attack] ?? 0, plane.lift[tail] ?? 0, plane.moment[attack] ?? 0, plane.moment[tail] ?? 0];
  const l = lift - total(plane.lift, rest), m = -total(plane.moment, rest), d = la * mt - lt * ma;
  return {...setting, attack: (l * mt - lt * m) / d, tailIncidence: (la * m - l * ma) / d};
}

export const liftOf = (plane: FlyingPlane, setting: Setting): number => total(plane.lift, amountsOf(setting));

/** The lift coefficient at which the first strip of the wing comes to the most that its section can be used for, trimmed by the tail. */
export function mostLift(plane: FlyingPlane): Range {
  const none = amountsOf(trimmedFor(plane, 0, plane.built)), one = amountsOf(trimmedFor(plane, 1, plane.built));
  const limit = liftLimit(plane.aero.camber);
  const wing = plane.aero.strips.filter(({group}) => group === 0).map(({circulation, chord}) => {
    const at = (amounts: readonly number[]): number => 2 * total(circulation, amounts) / chord;
    return {bare: at(none), more: at(one) - at(none)};
  });
  return rangeOf((end) => Math.min(...wing.filter(({more}) => more > 0).map(({bare, more}) => (limit[end] - bare) / more)));
}
