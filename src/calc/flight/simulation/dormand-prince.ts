/** Writes how fast each part of a state changes. The rates of a state alone: none of the motions here depends on the clock. */
export type Rates = (state: Float64Array, rates: Float64Array) => void;

/** A state on the way, and how fast it was changing then. */
export interface Step {
  readonly time: number;
  readonly state: Float64Array;
  readonly rates: Float64Array;
}

export interface Way {
  /** From the start to the end, both counted. */
  readonly steps: readonly Step[];
  /** What ended it: the time given, the event, or steps that became too many or too short. */
  readonly ended: 'time' | 'event' | 'given-up';
}

export interface WayOptions {
  readonly until: number;
  /** Error allowed in a step, as a share of each part of the state, or of its scale where that is larger. */
  readonly tolerance: number;
  readonly scale: readonly number[];
  /** The way ends where this falls from above nothing to nothing. */
  readonly event: (state: Float64Array) => number;
}

/** J. R. Dormand and P. J. Prince, Journal of Computational and Applied Mathematics 6 (1980): order 5, with the fourth beside it for the error. */
const stages = [
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
] as const;
const errorWeights = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40] as const;

const most = 20_000, shortest = 1e-9;

/** Follows a motion with steps as long as its error allows. Never throws: a motion that cannot be followed is given up. */
export function follow(rates: Rates, start: readonly number[], {until, tolerance, scale, event}: WayOptions): Way {
  const size = start.length;
  // one list with a view on each of its seven slopes: the inner loops are where a flight's time goes
  const all = new Float64Array(7 * size), slopes = Array.from({length: 7}, (_, k) => all.subarray(k * size, (k + 1) * size));
  const [first, last] = [slopes[0] as Float64Array, slopes[6] as Float64Array];
  let state = Float64Array.from(start), next = new Float64Array(size);
  rates(state, first);
  const steps: Step[] = [{time: 0, state: state.slice(), rates: first.slice()}];

  /** One step into `next`, its end's rates into the last slope; gives the error over what is allowed. */
  const take = (length: number): number => {
    for (let s = 0; s < 6; s++) {
      const weights = stages[s] as readonly number[];
      for (let i = 0; i < size; i++) {
        let sum = 0;
        for (let k = 0; k <= s; k++) sum += (weights[k] as number) * (all[k * size + i] as number);
        next[i] = (state[i] as number) + length * sum;
      }
      rates(next, slopes[s + 1] as Float64Array);
    }
    let worst = 0;
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let k = 0; k < 7; k++) sum += (errorWeights[k] as number) * (all[k * size + i] as number);
      const allowed = tolerance * Math.max(Math.abs(state[i] as number), Math.abs(next[i] as number), scale[i] ?? 1);
      const share = Math.abs(length * sum) / allowed;
      worst = share <= worst ? worst : share;   // what is no number counts as too much
    }
    return worst;
  };

  let time = 0, length = Math.min(1e-2, until);
  while (steps.length < most) {
    const taken = Math.min(length, until - time);
    const error = take(taken);
    if (!(error <= 1)) {
      length = taken * Math.max(0.2, 0.9 * (error > 0 ? error : 1e9) ** -0.2);
      if (length < shortest) return {steps, ended: 'given-up'};
      continue;
    }
    const before = event(state), after = event(next);
    const over = before > 0 && after <= 0;
    const ended = over ? taken * cut(take, taken, before, () => event(next)) : taken;
    time += ended;
    steps.push({time, state: next.slice(), rates: last.slice()});
    if (over) return {steps, ended: 'event'};
    if (time >= until) return {steps, ended: 'time'};
    [state, next] = [next, state];
    first.set(last);
    length = taken * Math.min(5, 0.9 * Math.max(error, 1e-10) ** -0.2);
  }
  return {steps, ended: 'given-up'};
}

/** The share of a step at which the event comes, by false position on steps taken anew: what is kept is a step of full order. */
function cut(take: (length: number) => number, length: number, before: number, event: () => number): number {
  let [low, high, atLow, atHigh] = [0, 1, before, event()];
  let share = 1;
  for (let round = 0; round < 60; round++) {
    const middle = low + (high - low) * atLow / (atLow - atHigh);
    share = round % 3 === 2 ? (low + high) / 2 : middle;
    take(share * length);
    const at = event();
    if (Math.abs(at) < 1e-12 || high - low < 1e-12) break;
    if (at > 0) [low, atLow] = [share, at];
    else [high, atHigh] = [share, at];
  }
  return share;
}
