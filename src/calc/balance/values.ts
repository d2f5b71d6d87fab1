import type {GliderDesign} from '../design/design.js';
import {good, type Outcome} from '../problem.js';
import type {QuantityKind} from '../units/kinds.js';
import type {DerivedValue} from '../values.js';
import {planeBalance, type PlaneBalance} from './plane-balance.js';
import {remedyOf} from './remedy.js';

const mapped = <T, R>(outcome: Outcome<T>, pick: (value: T) => R): Outcome<R> => outcome.ok ? good(pick(outcome.value)) : outcome;

/** A value of the balanced plane; "about" while any mass in it is estimated or its model is only good to a range. */
const value = (kind: QuantityKind, pick: (plane: PlaneBalance) => number, about = true): DerivedValue =>
  ({kind, about, of: (design) => mapped(planeBalance(design), pick)});

const behindWing = (pick: (plane: PlaneBalance) => number): DerivedValue => value('length', (plane) => pick(plane) - plane.wingAt);

/** Where the plane balances and should balance, in m behind the wing's leading edge at the root. */
export const balanceValues: Readonly<Record<string, DerivedValue>> = {
  point: value('length', (plane) => plane.behindWing),
  target: behindWing(({target}) => target.middle),
  targetFrom: behindWing(({target}) => target.from),
  targetTo: behindWing(({target}) => target.to),
  neutralPoint: value('length', ({neutral}) => neutral.behindWing),
  margin: value('ratio', ({margin}) => margin),
};

/** What it weighs, and over how much wing. */
export const massValues: Readonly<Record<string, DerivedValue>> = {
  total: value('mass', ({mass}) => mass),
  /** At `ballast.at`, to balance in the middle of the target; nothing where none is needed. */
  noseNeeded: {kind: 'mass', about: true, of: noseNeeded},
  wingLoading: value('areal-mass', ({wingLoading}) => wingLoading),
  cubeLoading: value('cube-loading', ({cubeLoading}) => cubeLoading),
};

export const tailValues: Readonly<Record<string, DerivedValue>> = {
  volume: value('ratio', ({neutral}) => neutral.tailVolume, false),
};

function noseNeeded(design: GliderDesign): Outcome<number> {
  const plane = planeBalance(design);
  if (!plane.ok) return plane;
  return mapped(remedyOf(plane.value, design), (remedy) => remedy?.end === 'nose' ? remedy.middle.mass : 0);
}
