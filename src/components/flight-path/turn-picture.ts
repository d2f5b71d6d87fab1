import type {TurnPoint, TurnTrack} from '../../calc/flight/simulation/turning.js';
import type {TurnPicture, TurnSketch} from '../../drawing/figures/turn.js';
import {flightPathWords} from '../../messages/en/flight-path.js';
import type {GliderElement} from '../base/element.js';
import {asideWords, bankWords, seconds} from './sentences.js';

const MM = 1000;
const grain = 0.03;
/** Moments seen from behind. */
const banks = 5;

const sketch = ({x, y, heading, bank}: TurnPoint): TurnSketch => ({at: {x: x * MM, y: y * MM}, heading, bank});

const lettered = (host: GliderElement, {time, bank}: TurnPoint): string =>
  host.say(flightPathWords).plan.bank({time: seconds(host, time, 1), bank: bankWords(host, bank)});

/** A turn from above and from behind. */
export function turnPicture(host: GliderElement, {last, at}: TurnTrack): TurnPicture {
  const {plan} = host.say(flightPathWords);
  const count = Math.max(Math.ceil(last.time / grain), 2);
  return {
    points: Array.from({length: count + 1}, (_, i) => sketch(at(last.time * i / count)).at),
    marks: (every) => Array.from({length: Math.floor(last.time / every)}, (_, i) => sketch(at((i + 1) * every))),
    banks: Array.from({length: banks}, (_, i) => at(last.time * (i + 1) / banks)).map((moment) => ({bank: moment.bank, words: lettered(host, moment)})),
    words: {above: plan.above, behind: plan.behind, aside: asideWords(host, last.y)},
  };
}

/** The same with where the plane is at one moment. */
export const turnNow = (host: GliderElement, picture: TurnPicture, {at}: TurnTrack, time: number): TurnPicture =>
  ({...picture, now: {...sketch(at(time)), words: lettered(host, at(time))}});
