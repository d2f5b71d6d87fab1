import {asBuilt} from '../as-built/as-built.js';
import {withValues, type GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import type {Outcome} from '../problem.js';
import {balanceFirst} from './balance-first.js';
import {finestSlip, riseToAdvised, tailCall} from './calls.js';
import {flightOf, type Trim} from './flight.js';

const edges = ['built.wingFront', 'built.wingRear', 'built.tailFront', 'built.tailRear'] as const;

/** A plan that asks for another speed of its own, which the edges as they were measured are nearer to. */
export interface BetterThanPlan {
  readonly speed: 'slower' | 'faster';
  /** What the plane would settle to with its edges as planned, or why to nothing. */
  readonly planned: Outcome<Trim>;
}

/**
 * Whether measured edges of wing and tail set a plane nearer to the glide that is advised than its plan does, which then is what should be changed: who has laid the
 * slips that were advised under the tail is not sent back. Undefined where the plan asks for nothing, where it is as near, and where the balance comes first.
 */
export const betterThanPlan = memo((design: GliderDesign): BetterThanPlan | undefined => {
  if (!edges.some((path) => asBuilt(design).counted.includes(path)) || balanceFirst(design)) return undefined;
  const plan = flightOf(withValues(design, Object.fromEntries(edges.map((path) => [path, undefined])))), now = flightOf(design);
  if (!plan.ok || !now.ok || !now.value.trim.ok) return undefined;
  const {trim} = plan.value, code = trim.ok ? undefined : trim.problems[0]?.code;
  const speed = trim.ok ? tailCall(plan.value)?.speed : code === 'trim-dives' ? 'slower' : code === 'trim-stalls' ? 'faster' : undefined;
  const nearer = Math.abs(riseToAdvised(plan.value)) - Math.abs(riseToAdvised(now.value));
  return speed && nearer >= finestSlip ? {speed, planned: trim} : undefined;
});
