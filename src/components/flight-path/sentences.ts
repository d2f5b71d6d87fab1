import type {BalanceFirst} from '../../calc/flight/balance-first.js';
import {launchWind} from '../../calc/flight/launch-wind.js';
import type {Flown, FlownId, ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import type {Throw} from '../../calc/flight/simulation/throw.js';
import type {Moment} from '../../calc/flight/simulation/track.js';
import {turnSeen} from '../../calc/flight/simulation/turn-seen.js';
import type {Problem} from '../../calc/problem.js';
import {flightPathWords} from '../../messages/en/flight-path.js';
import {acrossWords} from '../base/across.js';
import {aimWords} from '../base/aim.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {slipWords} from '../base/slip.js';
import {balanceFirstWords} from '../base/weights.js';

/** A distance over the floor, as a tape laid along it shows it. */
export const far = (host: GliderElement, value: number): string =>
  host.write(value, 'length', host.system === 'inch' ? {unit: 'ft', digits: 0} : {unit: 'm', digits: value < 10 ? 1 : 0});

/** A height, finer than a distance. */
export const high = (host: GliderElement, value: number): string =>
  host.write(Math.max(value, 0), 'length', {unit: host.system === 'inch' ? 'ft' : 'm', digits: 1});

export const seconds = (host: GliderElement, value: number, digits = 1): string =>
  host.say(flightPathWords).seconds(host.write(value, 'count', {digits}));

export const speedWords = (host: GliderElement, value: number): string => host.write(value, 'speed', {digits: 1});

const number = (problem: Problem | undefined, name: string): number => Number(problem?.args?.[name] ?? NaN);

/** How fast and which way a hand moves. */
export const handWords = (host: GliderElement, thrown: Throw): {readonly speed: string; readonly aim: string} => ({speed: speedWords(host, thrown.speed), aim: aimWords(host, thrown)});

/** The flight that the answer is about: of the plane as crooked as it is, of the reader's own throw where it differs. */
export const mainOf = ({flown}: ThrowStudy): Flown | undefined =>
  flown.find(({id}) => id === 'crooked') ?? flown.find(({id}) => id === 'own') ?? flown.find(({id}) => id === 'right');

export const distanceWords = (host: GliderElement, {track: {last, ended}}: Flown): string =>
  ended === 'landed' ? far(host, last.x) : host.say(flightPathWords).stillFlying(far(host, last.x));

/** What the hand must do, or what the plane needs before it is thrown: its balance before its tail. */
export function throwAnswer(host: GliderElement, study: ThrowStudy, first: BalanceFirst | undefined): Answer {
  const words = host.say(flightPathWords);
  const main = mainOf(study);
  const {trim, right, ball, call} = study;
  if (!main) return {sentence: words.thrownAllTheSame};
  const flies = {distance: distanceWords(host, main), time: seconds(host, main.track.last.time)};
  if (first) {
    const {sentence, then} = balanceFirstWords(host, first);
    return {sentence, aside: [...then, words.asItIsThrown({...handWords(host, main.thrown), ...flies}), ...turnSentence(host, study)].join(' ')};
  }
  if (!trim.ok) return {sentence: whyNot(host, trim.problems[0]), aside: words.thrownAllTheSame};
  const {glide, speed} = trim.value;
  const {height, wind} = main.thrown;
  const top = main.track.highest.height > height + 0.05 ? high(host, main.track.highest.height) : undefined;
  const still = Math.abs(wind) < 1e-9, comes = launchWind(wind);
  const own = main.thrown.speed !== right.speed || main.thrown.angle !== right.angle || main.thrown.attack !== right.attack;
  const throws = own
    ? words.own({...handWords(host, main.thrown), ...flies, top, should: speedWords(host, right.speed)})
    : words.right({...handWords(host, right), ...flies, ball: far(host, ball)});
  return {
    sentence: [...comes === 'calm' ? [] : [words.wind[comes](speedWords(host, Math.abs(wind)))], throws, ...turnSentence(host, study)].join(' '),
    aside: [
      ...call ? [words.calls[call.speed](slipWords(host, call.rise))] : [],
      words.tape({ball: far(host, ball), height: high(host, height)}),
      ...still ? [words.speedRange(speedWords(host, speed.least), speedWords(host, speed.most))] : [],
      glide.ratio.usual < 1.5 ? words.steep(speedWords(host, glide.sink.usual))
        : words.glide({ratio: host.write(glide.ratio.usual, 'count', {digits: 0}), sink: speedWords(host, glide.sink.usual)}),
    ].join(' '),
  };
}

const side = (value: number): 'left' | 'right' => (value < 0 ? 'left' : 'right');

/** Nearer than can be read, to either side. */
const ahead = (host: GliderElement, y: number): boolean => high(host, Math.abs(y)) === high(host, 0);

/** How far to a side, and to which; or straight ahead. */
export function asideWords(host: GliderElement, y: number): string {
  const {plan} = host.say(flightPathWords);
  return ahead(host, y) ? plan.ahead : plan.aside(high(host, Math.abs(y)), side(y));
}

export const bankWords = (host: GliderElement, bank: number): string => host.write(Math.abs(bank), 'angle', {digits: 0});

function turnSentence(host: GliderElement, {turn}: ThrowStudy): readonly string[] {
  if (!turn) return [];
  const words = host.say(flightPathWords);
  if (!turn.ok) return [words.crookedNoGlide];
  const {last, tightening, ends} = turn.value, seen = turnSeen(turn.value), {side: way} = seen;
  const aside = high(host, Math.abs(last.y));
  switch (seen.kind) {
    case 'rolls-over': return [words.rollsOver(way)];
    case 'too-steep': return [words.steepTurn(way)];
    case 'hardly': return [ahead(host, last.y) ? words.straightOn : words.hardlyTurns({way, aside})];
    case 'circle': {
      const landsThere = ends === 'landed' && side(last.y) === way && !ahead(host, last.y) && Math.abs(last.heading) < Math.PI;
      return [words.turns({way, across: acrossWords(host, seen.across), tighter: tightening, aside: landsThere ? aside : undefined})];
    }
  }
}

/** What the view from above shows, where there is one. */
export const turnedName = (host: GliderElement, {turn}: ThrowStudy): readonly string[] =>
  turn?.ok ? [host.say(flightPathWords).plan.picture(asideWords(host, turn.value.last.y))] : [];

function whyNot(host: GliderElement, problem: Problem | undefined): string {
  const words = host.say(flightPathWords);
  const edge = slipWords(host, number(problem, 'edge'));
  switch (problem?.code ?? '') {
    case 'trim-dives': return words.dives(edge);
    case 'trim-stalls': return words.stalls(edge);
    default: return words.thrownAllTheSame;
  }
}

/** Whether there is a throw to be called right: none of a plane that does not glide, or that is to be balanced first. */
export const hasRight = ({trim, heavy}: ThrowStudy): boolean => trim.ok && heavy === 'neither';

/** What a flight is called. Of a plane that is to be balanced first, more or less weight at its nose may be what balances it. */
export function nameOf(host: GliderElement, id: FlownId, study: ThrowStudy): string {
  const words = host.say(flightPathWords);
  if (id === 'right' && !hasRight(study)) return words.asItIs;
  return study.heavy !== 'neither' && (id === 'nose-heavy' || id === 'tail-heavy') ? words.moved[id] : words.names[id];
}

/** The same, with how much weight makes it so. */
export function fullNameOf(host: GliderElement, {id, noseMass}: Flown, study: ThrowStudy): string {
  const words = host.say(flightPathWords);
  const name = nameOf(host, id, study);
  if (noseMass === undefined) return name;
  const mass = host.write(Math.abs(noseMass), 'mass');
  return `${name}: ${noseMass > 0 ? words.more(mass) : words.less(mass)}`;
}

/** Where a plane is at one moment, in words. */
export function momentWords(host: GliderElement, one: Flown, time: number, study: ThrowStudy): string {
  const {turn} = study;
  const words = host.say(flightPathWords);
  const name = nameOf(host, one.id, study);
  const {last, ended} = one.track;
  if (time >= last.time && ended === 'landed') return words.landed({name, time: seconds(host, last.time), distance: far(host, last.x)});
  const moment: Moment = one.track.at(time);
  const nose = Math.atan2(Math.sin(moment.pitch), Math.cos(moment.pitch));
  const now = words.now({
    name, time: seconds(host, time, 2), height: high(host, moment.height), distance: far(host, moment.x), speed: speedWords(host, moment.speed),
    nose: host.write(Math.abs(nose), 'angle', {digits: 0}), up: nose >= 0,
  });
  const turned = one.id === 'crooked' && turn?.ok ? turn.value.at(time) : undefined;
  return turned ? `${now}, ${words.nowTurning({bank: bankWords(host, turned.bank), aside: asideWords(host, turned.y)})}` : now;
}
