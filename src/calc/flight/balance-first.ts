import type {WeightsForBalance} from '../balance/weights-for-balance.js';
import {weightsForBalance} from '../balance/weights-for-balance.js';
import {planeBalance, type PlaneBalance} from '../balance/plane-balance.js';
import {withValues, type GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import type {Outcome} from '../problem.js';
import {tailCall, type TailCall} from './calls.js';
import {flightOf, type Flight} from './flight.js';

/** What comes before a throw and before any trimming of a plane that balances outside its target. */
export interface BalanceFirst {
  readonly design: GliderDesign;
  readonly plane: PlaneBalance;
  readonly heavy: 'nose' | 'tail';
  /** How far outside, m. */
  readonly outside: number;
  /** Missing where no weight mends it: then the entries are to be looked at, or the wing slid. */
  readonly weights: WeightsForBalance | undefined;
  /** How it flies with those weights, and what is to be trimmed then. */
  readonly then: Outcome<Flight> | undefined;
  /** What that flight wants of the tail. */
  readonly call: TailCall | undefined;
}

/** Whether the balance has to be put right first, and how; undefined for a plane that balances within its target, or of which nobody can tell. */
export const balanceFirst = memo((design: GliderDesign): BalanceFirst | undefined => {
  const balance = planeBalance(design);
  if (!balance.ok || balance.value.heavy === 'neither') return undefined;
  const plane = balance.value, {heavy, at, target} = plane;
  const found = weightsForBalance(design);
  const weights = found.ok ? found.value : undefined;
  const then = weights && flightOf(withValues(design, {'ballast.masses': weights.masses}));
  return {
    design, plane, heavy: heavy === 'tail' ? 'tail' : 'nose', outside: heavy === 'tail' ? at - target.to : target.from - at,
    weights, then, call: then?.ok ? tailCall(then.value) : undefined,
  };
});
