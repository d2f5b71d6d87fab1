import {highest} from '../highest.js';
import type {Airframe} from './airframe.js';
import {stateAt} from './between-steps.js';
import type {Way} from './dormand-prince.js';

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
  const at = (time: number): Moment => {
    const one = stateAt(steps, time);
    return moment(one.time, one.state);
  };
  return {
    ended: ended === 'event' ? 'landed' : ended === 'time' ? 'still-flying' : 'given-up', moments, at,
    last: at(Infinity), highest: highestOf(moments, at),
  };
}

/** The highest moment, between the steps too: where the way turns downwards. */
export function highestOf<M extends Moment>(moments: readonly M[], at: (time: number) => M): M {
  const top = moments.reduce((best, {height}, i) => (height > (moments[best]?.height ?? 0) ? i : best), 0);
  const [from, to] = [moments[Math.max(top - 1, 0)], moments[Math.min(top + 1, moments.length - 1)]];
  const step = moments[top];
  if (!from || !to || !step) throw new RangeError('a way has a start');
  const between = at(highest((time) => at(time).height, [from.time, to.time]));
  return between.height > step.height ? between : step;
}
