import type {Range} from '../../calc/aero/range.js';
import type {BalanceFirst} from '../../calc/flight/balance-first.js';
import {finestSlip, riseToAdvised, tailCall} from '../../calc/flight/calls.js';
import type {FlightCheck} from '../../calc/flight/flight-check.js';
import type {Problem} from '../../calc/problem.js';
import {flightCheckWords} from '../../messages/en/flight-check.js';
import type {Answer} from '../base/calculator.js';
import {explain} from '../base/explain.js';
import type {GliderElement} from '../base/element.js';
import {aimWords} from '../base/aim.js';
import {near} from '../base/near.js';
import {slipWords} from '../base/slip.js';
import {balanceFirstWords} from '../base/weights.js';
import {written} from './numbers.js';

const speed = (host: GliderElement, value: number): string => written(host, {id: 'speed', kind: 'speed'}, value);
const sinkWords = (host: GliderElement, {least, most}: Range): string =>
  host.say(flightCheckWords).range(written(host, {id: 'sink', kind: 'speed'}, least, true), written(host, {id: 'sink', kind: 'speed'}, most));
const ratio = (host: GliderElement, value: number): string => host.write(value, 'count', {digits: 0});
const share = (host: GliderElement, value: number): string => host.write(value, 'ratio', {digits: 0});

/** Whether it will fly and what to do about it, and what follows. */
export function answerWords(host: GliderElement, check: FlightCheck): Answer {
  const {flight, trim} = check;
  if (check.first) return firstWords(host, check, check.first);
  const problem = !flight.ok ? flight.problems[0] : !trim.ok ? trim.problems[0] : undefined;
  return problem ? remedyWords(host, check, problem) : flyingWords(host, check);
}

/** A plane that does not balance is neither trimmed nor thrown before it does. */
function firstWords(host: GliderElement, {flight, trim, plane}: FlightCheck, first: BalanceFirst): Answer {
  const words = host.say(flightCheckWords), {sentence, then} = balanceFirstWords(host, first);
  const chord = plane.aero.shape.wing.meanAerodynamicChord;
  const now = trim.ok ? [words.asItIs({speed: speed(host, trim.value.glide.speed), ratio: ratio(host, trim.value.glide.ratio.usual)})]
    : !flight.ok && flight.problems[0]?.code === 'flight-unstable' ? [words.unsteady({behind: near(host, Math.abs(plane.margin * chord)), ahead: plane.margin > 0})]
      : [{'trim-dives': words.divesNow, 'trim-stalls': words.stallsNow}[trim.problems[0]?.code ?? ''] ?? ''].filter(Boolean);
  return {sentence, aside: [...now, ...then].join(' ')};
}

function remedyWords(host: GliderElement, {flight}: FlightCheck, problem: Problem): Answer {
  const words = host.say(flightCheckWords);
  const {code, args = {}} = problem;
  const number = (name: string): number => Number(args[name] ?? 0);
  const best = flight.ok ? words.then({ratio: ratio(host, flight.value.advised.ratio.usual), speed: speed(host, flight.value.advised.speed)}) : '';
  if (code === 'trim-dives') return {sentence: words.dives(slipWords(host, number('edge'))), aside: best};
  if (code === 'trim-stalls') return {sentence: words.stalls(slipWords(host, number('edge'))), aside: best};
  return {sentence: explain(host, problem)};
}

function flyingWords(host: GliderElement, check: FlightCheck): Answer {
  const {flight, trim, plane, design, measures} = check;
  if (!flight.ok || !trim.ok) return {sentence: ''};
  const words = host.say(flightCheckWords);
  const {glide} = trim.value, {best, advised} = flight.value;
  const rise = riseToAdvised(flight.value), call = tailCall(flight.value);
  const there = {speed: speed(host, advised.speed), ratio: ratio(host, advised.ratio.usual)};
  // a plane slower than that may glide flatter still: how near the stall it is, its own measure says
  const better = !call && Math.abs(rise) >= finestSlip && advised.ratio.usual > glide.ratio.usual;
  // a Reynolds number follows from the rest: nobody sets it
  const out = measures.filter(({id, standing}) => standing !== 'within' && id !== 'reynolds').map(({id}) => words.measures[id].name);
  const sink = measures.find(({id}) => id === 'sink')?.value ?? glide.sink;
  return {
    sentence: call ? words.calls[call.speed]({speed: speed(host, glide.speed), by: slipWords(host, call.rise)})
      : words.flies({aim: aimWords(host, {angle: -glide.angle, height: design.launch.height}), speed: speed(host, glide.speed), ratio: words.range(ratio(host, glide.ratio.least), ratio(host, glide.ratio.most))}),
    aside: [
      ...call ? [words.then(there)] : [],
      words.sinks({now: call !== undefined, sink: sinkWords(host, sink), margin: share(host, plane.margin)}),
      ...better ? [(advised === best ? words.better : words.flatter)({up: rise > 0, by: slipWords(host, rise), ...there})] : [],
      out.length > 0 ? words.out(out) : words.allUsual,
    ].join(' '),
  };
}

/** The plot in one sentence, for those who do not see it. */
export function pictureName(host: GliderElement, {flight, trim, measures}: FlightCheck): string {
  const words = host.say(flightCheckWords);
  if (!flight.ok) return '';
  const {stall, best} = flight.value;
  const sink = measures.find(({id}) => id === 'sink')?.value;
  const here = trim.ok && sink ? words.pictureHere({speed: speed(host, trim.value.glide.speed), sink: sinkWords(host, sink)}) : '';
  return `${words.picture({stall: speed(host, stall), best: speed(host, best.speed)})} ${here}`.trim();
}

export const caption = (host: GliderElement, {trim}: FlightCheck): string => {
  const words = host.say(flightCheckWords);
  return trim.ok ? `${words.caption} ${words.captionHere}` : words.caption;
};
