import type {GliderDesign} from '../design/design.js';
import {good, type Outcome} from '../problem.js';
import type {QuantityKind} from '../units/kinds.js';
import type {DerivedValue} from '../derived-value.js';
import {planeBalance, type PlaneBalance} from './plane-balance.js';
import {weightsForBalance} from './weights-for-balance.js';

const mapped = <T, R>(outcome: Outcome<T>, pick: (value: T) => R): Outcome<R> => outcome.ok ? good(pick(outcome.value)) : outcome;

/** A value of the balanced plane that is only good to the range of the flight model. */
const value = (kind: QuantityKind, pick: (plane: PlaneBalance) => number): DerivedValue =>
  ({kind, about: true, of: (design) => mapped(planeBalance(design), pick)});

/** A value that is as sure as the plane's masses. */
const ofMasses = (kind: QuantityKind, pick: (plane: PlaneBalance) => number): DerivedValue => ({
  ...value(kind, pick),
  about: (design) => {
    const plane = planeBalance(design);
    return plane.ok && plane.value.sure === 'about';
  },
});

const behindWing = (pick: (plane: PlaneBalance) => number): DerivedValue => value('length', (plane) => pick(plane) - plane.wingAt);

/** Where the plane balances and should balance, in m behind the wing's leading edge at the root. */
export const balanceValues: Readonly<Record<string, DerivedValue>> = {
  point: ofMasses('length', (plane) => plane.behindWing),
  target: behindWing(({target}) => target.middle),
  targetFrom: behindWing(({target}) => target.from),
  targetTo: behindWing(({target}) => target.to),
  neutralPoint: value('length', (plane) => plane.neutralPoint),
  margin: value('ratio', ({margin}) => margin),
};

/** What it weighs, and over how much wing. */
export const massValues: Readonly<Record<string, DerivedValue>> = {
  total: ofMasses('mass', ({mass}) => mass),
  /**
   * What goes on at the nose beside what is fitted: the weight that `weightsForBalance` names, which the balance point and the flight check name on the same page. As it is
   * weighed out, so within the target and not just in its middle, and after whatever comes off the tail first. Nothing where none is needed.
   */
  noseNeeded: {kind: 'mass', about: true, of: noseNeeded},
  wingLoading: ofMasses('areal-mass', ({wingLoading}) => wingLoading),
  cubeLoading: ofMasses('cube-loading', ({cubeLoading}) => cubeLoading),
};

export const tailValues: Readonly<Record<string, DerivedValue>> = {
  volume: {...value('count', ({handbook}) => handbook.tailVolume), about: false, digits: 2},
};

function noseNeeded(design: GliderDesign): Outcome<number> {
  return mapped(weightsForBalance(design), (weights) => weights?.heavy === 'tail' && weights.on ? weights.on.mass : 0);
}
