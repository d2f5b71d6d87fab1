import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {wholePieces, type Piece, type WholePieces} from './pieces.js';
import type {PlaneBalance} from './plane-balance.js';
import {remedyOf, withMass, type Addition, type Remedy} from './remedy.js';
import {slideWing, type Slide} from './slide-wing.js';
import {takingOff, type TakingOff} from './take-off.js';
import {mostThrowable, throwableBalance} from './throwable-balance.js';
import {weightsForBalance, withoutHeavyEnd, type Lightened, type WeightsForBalance} from './weights-for-balance.js';

/** What there is to weight a plane with: whole pieces of one kind, as many as it takes or so many; or anything of any mass. */
export interface WeightsAtHand {
  readonly piece?: Piece;
  readonly count?: number;
}

/** How a plane balances and everything that would put it right. */
export interface BalancePlan {
  readonly design: GliderDesign;
  readonly plane: PlaneBalance;
  /** What comes off the heavy end first, and the plane without it. */
  readonly lightened: Lightened;
  /** What weight such a plane needs then: undefined where nothing needs to be added. */
  readonly remedy: Outcome<Remedy | undefined>;
  /** The same in weights of any mass, which is what the plane needs wherever it is asked. */
  readonly weights: Outcome<WeightsForBalance | undefined>;
  /** Whole pieces and their place, where pieces were asked for and weight is needed. */
  readonly whole: Outcome<WholePieces> | undefined;
  /** What to fit then: the whole pieces, or else a mass that reaches the middle. */
  readonly advice: Addition | undefined;
  readonly slide: Outcome<Slide> | undefined;
  readonly off: readonly TakingOff[];
}

/** The balance of a plane and what to do about it, remembered for the same design and the same weights at hand. Refused as {@link throwableBalance}. */
export const balancePlan = memo((design: GliderDesign, atHand: WeightsAtHand): Outcome<BalancePlan> => {
  const balance = throwableBalance(design);
  if (!balance.ok) return balance;
  const plane = balance.value;
  const lightened = withoutHeavyEnd(plane, design);
  const weights = weightsForBalance(design);
  // weights that would make it too heavy to be thrown are no remedy
  const remedy = weights.ok ? remedyOf(lightened.plane, lightened.design) : weights;
  const needed = remedy.ok ? remedy.value : undefined;
  const most = mostThrowable(design);
  const whole = needed && atHand.piece && wholePieces(lightened.plane, needed, atHand.piece, atHand.count, most.ok ? most.value : Infinity);
  const on = weights.ok ? weights.value?.on : undefined;
  return good({
    design, plane, lightened, remedy, weights, whole,
    advice: whole?.ok ? whole.value : on && withMass(lightened.plane, on.mass, on.at),
    slide: plane.heavy === 'neither' ? undefined : slideWing(plane, design),
    off: takingOff(plane, design),
  });
});
