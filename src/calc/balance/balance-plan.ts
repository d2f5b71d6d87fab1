import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {wholePieces, type Piece, type WholePieces} from './pieces.js';
import {planeBalance, type PlaneBalance} from './plane-balance.js';
import {remedyOf, type Addition, type Remedy} from './remedy.js';
import {slideWing, type Slide} from './slide-wing.js';
import {takingOff, type TakingOff} from './take-off.js';

/** What there is to weight a plane with: whole pieces of one kind, as many as it takes or so many; or anything of any mass. */
export interface WeightsAtHand {
  readonly piece?: Piece;
  readonly count?: number;
}

/** How a plane balances and everything that would put it right. */
export interface BalancePlan {
  readonly design: GliderDesign;
  readonly plane: PlaneBalance;
  /** Undefined where nothing needs to be done. */
  readonly remedy: Outcome<Remedy | undefined>;
  /** Whole pieces and their place, where pieces were asked for and weight is needed. */
  readonly whole: Outcome<WholePieces> | undefined;
  /** What to fit: the whole pieces, or else the mass that reaches the middle. */
  readonly advice: Addition | undefined;
  readonly slide: Outcome<Slide> | undefined;
  readonly off: readonly TakingOff[];
}

/** The balance of a plane and what to do about it, remembered for the same design and the same weights at hand. Refused as {@link planeBalance}. */
export const balancePlan = memo((design: GliderDesign, atHand: WeightsAtHand): Outcome<BalancePlan> => {
  const balance = planeBalance(design);
  if (!balance.ok) return balance;
  const plane = balance.value;
  const remedy = remedyOf(plane, design);
  const needed = remedy.ok ? remedy.value : undefined;
  const whole = needed && atHand.piece && wholePieces(plane, needed, atHand.piece, atHand.count);
  return good({
    design, plane, remedy, whole,
    advice: whole?.ok ? whole.value : needed?.middle,
    slide: plane.heavy === 'neither' ? undefined : slideWing(plane, design),
    off: takingOff(plane, design),
  });
});
