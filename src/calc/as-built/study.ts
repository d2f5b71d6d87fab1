import {planeBalance, type PlaneBalance} from '../balance/plane-balance.js';
import {withValues, type GliderDesign} from '../design/design.js';
import type {DimensionPath} from '../design/dimensions.js';
import {balanceFirst, type BalanceFirst} from '../flight/balance-first.js';
import {betterThanPlan, type BetterThanPlan} from '../flight/better-than-plan.js';
import {flightOf, type Trim} from '../flight/flight.js';
import {flyingPlane, type FlyingPlane} from '../flight/flying-plane.js';
import {rightThrow} from '../flight/simulation/as-gliding.js';
import {turnTrack, type Crooked, type TurnTrack} from '../flight/simulation/turning.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {asBuilt, measurements, type AsBuilt} from './as-built.js';
import {crookedAsBuilt} from './crooked.js';
import {withoutAddedWeights} from './planned-weights.js';
import {plannedSizes, type PlannedSizes} from './planned-sizes.js';
import {metricSteps, tolerancesOf, type Steps, type Truth, type TruthId} from './tolerances.js';

/** A plane as measured beside the same plane as planned. */
export interface AsBuiltStudy {
  readonly design: GliderDesign;
  readonly built: AsBuilt;
  readonly sizes: PlannedSizes;
  readonly planned: {readonly plane: FlyingPlane; readonly trim: Outcome<Trim>};
  readonly plane: FlyingPlane;
  readonly trim: Outcome<Trim>;
  /** Where it balances as measured, beside where it should. */
  readonly balance: PlaneBalance;
  /** What comes before a throw and before any slip, where that lies outside its target. */
  readonly first: BalanceFirst | undefined;
  /** Where the edges fly better as measured, and the plan is what should be changed. */
  readonly better: BetterThanPlan | undefined;
  /** What is crooked, and the flight with it; missing where nothing is, or where it does not glide. */
  readonly turn?: {readonly crooked: Crooked; readonly track: TurnTrack};
  /** Of the plane as measured, or else as planned; empty where neither glides. */
  readonly truths: readonly Truth[];
}

/** The design before anything was measured on the finished plane. */
const unmeasured = memo((design: GliderDesign): GliderDesign => withValues(design, Object.fromEntries(measurements.map((path) => [path, undefined]))));

const trimOf = (design: GliderDesign): Outcome<Trim> => {
  const flight = flightOf(design);
  return flight.ok ? flight.value.trim : flight;
};

const stage = memo((design: GliderDesign, steps: Steps): Outcome<AsBuiltStudy> => {
  const built = asBuilt(design), bare = unmeasured(design);
  const plan = built.counted.includes('measured.balance') ? withoutAddedWeights(bare) : bare;
  const plane = flyingPlane(design), planned = flyingPlane(plan), balance = planeBalance(design);
  if (!plane.ok) return plane;
  if (!balance.ok) return balance;
  if (!planned.ok) return planned;
  const crooked = crookedAsBuilt(design);
  const bent = crooked.ok && (crooked.value.fin !== 0 || crooked.value.tipMass !== 0);
  const trim = trimOf(design);
  const track = bent && trim.ok ? turnTrack(design, crooked.value, {thrown: rightThrow(trim.value.glide, design.launch)}) : undefined;
  const truths = tolerancesOf(design, steps), before = truths.ok ? truths : tolerancesOf(plan, steps);
  return good({
    design, built, balance: balance.value, first: balanceFirst(design), better: betterThanPlan(design), sizes: plannedSizes(plan), planned: {plane: planned.value, trim: trimOf(plan)}, plane: plane.value, trim,
    ...(bent && track?.ok && {turn: {crooked: crooked.value, track: track.value}}), truths: before.ok ? before.value : [],
  });
});

/** What measuring tells about a finished plane. Refused as `flyingPlane`. */
export const asBuiltStudy = (design: GliderDesign, steps: Steps = metricSteps): Outcome<AsBuiltStudy> => stage(design, steps);

/**
 * How far a measured plane is out of true, m, for each thing that was measured so that it counts: what the tolerances are to be held against. A balance is out by as
 * much as it lies outside its target.
 */
export function outOfTrue({design, sizes, balance, built: {counted}}: AsBuiltStudy): Readonly<Partial<Record<TruthId, number>>> {
  const {hollow, tipLeft, tipRight, tailFront, tailRear, leftTipToTail, rightTipToTail, bow} = design.built;
  const off: Partial<Record<TruthId, number>> = {};
  const note = (id: TruthId, path: DimensionPath, measured: number | undefined, plan: number | undefined): void => {
    if (measured !== undefined && plan !== undefined && counted.includes(path)) off[id] = measured - plan;
  };
  note('hollow', 'built.hollow', hollow, sizes.hollow);
  note('tips', 'built.tipLeft', tipLeft, tipRight);
  note('skew', 'built.leftTipToTail', leftTipToTail, rightTipToTail);
  note('bow', 'built.bow', bow, 0);
  note('tail', 'built.tailRear', tailRear, tailFront === undefined ? undefined : tailFront + sizes.tail);
  // not against the plan's own place: anywhere in the target is right, and a weight that brought it there is no fault
  const {at, heavy, target: {from, to}} = balance;
  note('balance', 'measured.balance', at, heavy === 'nose' ? from : heavy === 'tail' ? to : at);
  return off;
}
