import {withValues, type GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {massToAdd} from './adding.js';
import {planeBalance, type Balanced, type PlaneBalance} from './plane-balance.js';
import {remedyOf, withMass, type Remedy} from './remedy.js';
import {throwableBalance} from './throwable-balance.js';
import {tidied, weightAt, withMore} from './with-more.js';

type Weight = GliderDesign['ballast']['masses'][number];

/** Of a weight that is fitted, so much comes off and so much stays. kg, and m behind the nose. */
export interface Taken {
  readonly mass: number;
  readonly left: number;
  readonly at: number;
}

/** A weight to fit, kg, and where, m behind the nose; with what lies there already, it comes to `together`. */
export interface Put {
  readonly mass: number;
  readonly at: number;
  readonly together: number;
}

/** What to do with the weights of a plane so that it balances within its target. */
export interface WeightsForBalance {
  /** As it balances now. */
  readonly plane: PlaneBalance;
  readonly heavy: 'nose' | 'tail';
  /** How far outside its target, m. */
  readonly outside: number;
  /** What comes off the heavy end, the furthest out first. */
  readonly off: readonly Taken[];
  /** What the light end still needs then. */
  readonly on: Put | undefined;
  /** The weights fitted then: the same as `ballast.masses`. */
  readonly masses: readonly Weight[];
  readonly after: Balanced;
}

/**
 * The one answer to which weight goes where: nothing for a plane that balances within its target. Weight comes off the heavy end before any goes on the light
 * one, which would only be carried along. It aims at the middle of the target, with masses as fine as they are written, and goes where the design says that
 * weights go, or near the end that needs it if that is of no use.
 *
 * Refused as `throwableBalance`, also of the plane with them, and `remedyOf`.
 */
export const weightsForBalance = memo((design: GliderDesign): Outcome<WeightsForBalance | undefined> => {
  const balance = throwableBalance(design);
  if (!balance.ok) return balance;
  const plane = balance.value, {heavy, target, at} = plane;
  if (heavy === 'neither') return good(undefined);
  const {off, design: lighter, plane: then} = withoutHeavyEnd(plane, design);
  const remedy = remedyOf(then, lighter);
  if (!remedy.ok) return remedy;
  const {masses} = lighter.ballast;
  const on = remedy.value && putting(then, remedy.value, masses);
  const changed = on ? withMore(masses, on.mass, on.at) : masses;
  const after = throwableBalance(withValues(design, {'ballast.masses': changed}));
  return after.ok ? good({plane, heavy, outside: heavy === 'tail' ? at - target.to : target.from - at, off, on, masses: changed, after: after.value}) : after;
});

function putting(plane: PlaneBalance, {middle, place: at}: Remedy, masses: readonly Weight[]): Put {
  const there = weightAt(masses, at)?.mass ?? 0;
  const together = weighedOut(there + middle.mass, (all) => within(plane, withMass(plane, all - there, at).after.at));
  return {mass: tidied(together - there), at, together};
}

/** A plane without what made one end of it too heavy. */
export interface Lightened {
  readonly off: readonly Taken[];
  readonly design: GliderDesign;
  readonly plane: PlaneBalance;
}

/** Takes fitted weights off the heavy end, the furthest out first, until the plane balances in the middle of its target, or none is left there. */
export function withoutHeavyEnd(plane: PlaneBalance, design: GliderDesign): Lightened {
  const {heavy, target: {from, to, middle}} = plane;
  const outside = (at: number): number => (heavy === 'nose' ? from - at : at - to);
  let now: Lightened = {off: [], design, plane};
  while (heavy !== 'neither' && now.plane.heavy === heavy) {
    const {masses} = now.design.ballast, before = now.plane;
    const weight = masses.filter(({mass, at}) => mass > 0 && outside(at) > 0).reduce<Weight | undefined>((far, one) => (far && outside(far.at) >= outside(one.at) ? far : one), undefined);
    const added = weight && massToAdd(before, middle, weight.at);
    if (!weight || !added?.ok) break;
    const {mass, at} = weight, kept = mass + added.value;
    const left = kept > 0 ? Math.min(weighedOut(kept, (one) => within(before, withMass(before, one - mass, at).after.at)), mass) : 0;
    const lighter = withValues(now.design, {'ballast.masses': masses.flatMap((one) => one !== weight ? [one] : left > 0 ? [{mass: left, at}] : [])});
    const balance = planeBalance(lighter);
    // a plane that is nothing but its weights keeps them
    if (!balance.ok || left === mass) break;
    now = {off: [...now.off, {mass: tidied(mass - left), left, at}], design: lighter, plane: balance.value};
  }
  return now;
}

const within = ({target: {from, to}}: PlaneBalance, at: number): boolean => at >= from && at <= to;

/** A mass as it is written and weighed out, whole grams from ten on and tenths below, as long as that does it; otherwise to a hundredth, or exactly. */
function weighedOut(mass: number, does: (mass: number) => boolean): number {
  const grain = mass < 0.00995 ? 1e4 : 1e3;
  return [grain, 1e5].map((parts) => Math.round(mass * parts) / parts).find((one) => one > 0 && does(one)) ?? mass;
}
