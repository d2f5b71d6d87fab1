import {highest} from '../highest.js';
import type {Airframe} from './airframe.js';
import type {Step, Way} from './dormand-prince.js';

/** A plane at one moment of its flight. SI units, angles in rad. */
export interface Moment {
  readonly time: number;
  /** Over the ground from the hand, and over the ground upwards. */
  readonly x: number;
  readonly height: number;
  /** Through the air, and how steeply it moves upwards through it, whole turns counted. */
  readonly speed: number;
  readonly angle: number;
  readonly pitch: number;
  readonly rate: number;
  readonly attack: number;
  /** Of moving and of height, as seen from the air, J; and what drag has taken until then. */
  readonly energy: number;
  readonly taken: number;
}

/** A flight from the hand to the ground. */
export interface Track {
  readonly ended: 'landed' | 'still-flying' | 'given-up';
  readonly moments: readonly Moment[];
  readonly last: Moment;
  readonly highest: Moment;
  /** Any moment between the first and the last; the nearest of them outside. */
  readonly at: (time: number) => Moment;
}

export function trackOf({steps, ended}: Way, airframe: Airframe, wind: number): Track {
  const turn = 2 * Math.PI;
  const moment = (time: number, [x = 0, height = 0, along = 0, up = 0, pitch = 0, rate = 0, taken = 0]: Iterable<number> & ArrayLike<number>): Moment => {
    const speed = Math.hypot(along, up), way = Math.atan2(up, along);
    const angle = way + turn * Math.round((pitch - way) / turn);
    return {
      time, x: x - wind * time, height, speed, angle, pitch, rate, attack: pitch - angle,
      energy: airframe.mass * (speed * speed / 2 + airframe.gravity * height), taken,
    };
  };
  const moments = steps.map(({time, state}) => moment(time, state));
  const first = steps[0], final = steps.at(-1);
  if (!first || !final) throw new RangeError('a way has a start');
  const at = (time: number): Moment => {
    if (!(time > first.time)) return moment(first.time, first.state);
    if (time >= final.time) return moment(final.time, final.state);
    let low = 0, high = steps.length - 1;
    while (high - low > 1) {
      const middle = low + high >> 1;
      if ((steps[middle]?.time ?? 0) <= time) low = middle; else high = middle;
    }
    const a = steps[low], b = steps[high];
    return a && b ? moment(time, between(a, b, time)) : moment(first.time, first.state);
  };
  return {
    ended: ended === 'event' ? 'landed' : ended === 'time' ? 'still-flying' : 'given-up', moments, at,
    last: moment(final.time, final.state), highest: highestOf(moments, at),
  };
}

/** The highest moment, between the steps too: where the way turns downwards. */
function highestOf(moments: readonly Moment[], at: (time: number) => Moment): Moment {
  const top = moments.reduce((best, {height}, i) => (height > (moments[best]?.height ?? 0) ? i : best), 0);
  const [from, to] = [moments[Math.max(top - 1, 0)], moments[Math.min(top + 1, moments.length - 1)]];
  const step = moments[top];
  if (!from || !to || !step) throw new RangeError('a way has a start');
  const between = at(highest((time) => at(time).height, [from.time, to.time]));
  return between.height > step.height ? between : step;
}

/** The cubic that has the states and rates of both ends. */
function between(a: Step, b: Step, time: number): Float64Array {
  const length = b.time - a.time, t = (time - a.time) / length, r = 1 - t;
  return a.state.map((from, i) => {
    const to = b.state[i] ?? 0, out = (a.rates[i] ?? 0) * length, back = (b.rates[i] ?? 0) * length;
    return r * r * ((1 + 2 * t) * from + t * out) + t * t * ((1 + 2 * r) * to - r * back);
  });
}
