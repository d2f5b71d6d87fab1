import type {Step} from './dormand-prince.js';

/** The state at any time: between two steps the cubic that has the states and rates of both, outside them the nearest step's. */
export function stateAt(steps: readonly Step[], time: number): Pick<Step, 'time' | 'state'> {
  const first = steps[0], final = steps.at(-1);
  if (!first || !final) throw new RangeError('a way has a start');
  if (!(time > first.time)) return first;
  if (time >= final.time) return final;
  let low = 0, high = steps.length - 1;
  while (high - low > 1) {
    const middle = low + high >> 1;
    if ((steps[middle]?.time ?? 0) <= time) low = middle; else high = middle;
  }
  const a = steps[low], b = steps[high];
  return a && b ? {time, state: between(a, b, time)} : first;
}

function between(a: Step, b: Step, time: number): Float64Array {
  const length = b.time - a.time, t = (time - a.time) / length, r = 1 - t;
  return a.state.map((from, i) => {
    const to = b.state[i] ?? 0, out = (a.rates[i] ?? 0) * length, back = (b.rates[i] ?? 0) * length;
    return r * r * ((1 + 2 * t) * from + t * out) + t * t * ((1 + 2 * r) * to - r * back);
  });
}
