import type {Flown, ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import type {Moment} from '../../calc/flight/simulation/track.js';
import type {TurnPoint} from '../../calc/flight/simulation/turning.js';
import type {FlightPathPicture, PathSketch, PlaneSketch} from '../../drawing/figures/flight-path.js';
import {flightPathWords} from '../../messages/en/flight-path.js';
import {gravity} from '../../calc/aero/air.js';
import type {GliderElement} from '../base/element.js';
import {far, hasRight, high, mainOf, nameOf, seconds} from './sentences.js';
import {turnNow, turnPicture} from './turn-picture.js';

export {drawFlightPath} from '../../drawing/figures/flight-path.js';

const MM = 1000;
/** How finely a path is drawn, s. */
const grain = 0.03;

interface Drawn { readonly reader: string; readonly still: Omit<FlightPathPicture, 'planes'>; shown?: {readonly time: number; readonly picture: FlightPathPicture} }
const drawn = new WeakMap<ThrowStudy, Drawn>();

/** The flights as a figure at one moment; the same object for the same flights, reader and moment. */
export function flightPathPicture(host: GliderElement, study: ThrowStudy, time: number): FlightPathPicture {
  const {reader} = host;
  let kept = drawn.get(study);
  if (kept?.reader !== reader) drawn.set(study, kept = {reader, still: pictureOf(host, study)});
  if (kept.shown?.time !== time) {
    const {still} = kept, turn = study.turn?.ok ? study.turn.value : undefined;
    kept.shown = {time, picture: time > 0 ? {
      ...still, planes: study.flown.map(({id, track}) => ({key: id, ...planeAt(track.at(time))})), ...(still.plan && turn && {plan: turnNow(host, still.plan, turn, time)}),
    } : {...still, planes: []}};
  }
  return kept.shown.picture;
}

const planeAt = (moment: Moment | TurnPoint): PlaneSketch => ({
  at: {x: moment.x * MM, y: -Math.max(moment.height, 0) * MM}, pitch: moment.pitch, ...('heading' in moment && {side: Math.cos(moment.heading)}),
});

function pictureOf(host: GliderElement, study: ThrowStudy): Omit<FlightPathPicture, 'planes'> {
  const words = host.say(flightPathWords);
  const main = mainOf(study);
  const {ball, right: {height, speed}} = study;
  const fall = Math.sqrt(2 * height / gravity);
  const unit = host.system === 'inch' ? 304.8 : MM;
  return {
    hand: height * MM,
    paths: study.flown.map((one) => pathOf(host, one, one === main, study)),
    ball: !hasRight(study) ? undefined : {
      points: Array.from({length: 17}, (_, i) => i / 16 * fall).map((t) => ({x: speed * t * MM, y: (gravity * t * t / 2 - height) * MM})),
      words: words.ball(far(host, ball)),
    },
    ruler: {unit, write: (n) => host.write(n, 'count', {digits: 0}), symbol: host.system === 'inch' ? 'ft' : 'm'},
    ...(study.turn?.ok && {plan: turnPicture(host, study.turn.value)}),
    words: {hand: high(host, height), top: main && main.track.highest.height > height + 0.1 ? high(host, main.track.highest.height) : undefined},
  };
}

function pathOf(host: GliderElement, one: Flown, main: boolean, study: ThrowStudy): PathSketch {
  const {track, id} = one;
  const {last} = track;
  const count = Math.max(Math.ceil(last.time / grain), 2);
  return {
    key: id, main, style: main ? 'main' : id === 'right' ? 'right' : id === 'fast' || id === 'tail-heavy' ? 'long' : id === 'up' ? 'dotted' : 'short',
    points: Array.from({length: count + 1}, (_, i) => planeAt(track.at(last.time * i / count)).at),
    marks: (every) => Array.from({length: Math.floor(last.time / every)}, (_, i) => (i + 1) * every)
      .map((time) => ({...planeAt(track.at(time)), words: time % 0.5 === 0 ? seconds(host, time, time % 1 === 0 ? 0 : 1) : ''})),
    length: last.time,
    words: host.say(flightPathWords).landing(nameOf(host, id, study), far(host, last.x)),
  };
}
