import {outOfTrue, type AsBuiltStudy} from '../../calc/as-built/study.js';
import type {Truth, TruthId} from '../../calc/as-built/tolerances.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';

/** A length as small as what is measured here. */
export const fine = (host: GliderElement, value: number): string => host.write(value, 'length', host.system === 'inch' ? {fraction: 32} : {digits: 1});

const speedOf = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'speed', {digits: 1});

/** A circle, in whole metres or feet. */
export const circle = (host: GliderElement, radius: number): string => host.write(Math.abs(radius), 'length', {unit: host.system === 'inch' ? 'ft' : 'm', digits: 0});

/** Wider than this, nobody sees a circle. */
export const widest = 300;

/** The step that is looked at, as a reader writes it: a millimetre or a gram, or a sixteenth of an inch or of an ounce. */
export function stepOf(host: GliderElement, {kind, step}: Truth): {readonly words: string; readonly times: number} {
  if (host.system !== 'inch') return {words: host.write(step, kind), times: 1};
  const usual = kind === 'length' ? 0.0254 / 16 : 0.028349523125 / 16;
  return {words: kind === 'length' ? host.write(usual, kind, {fraction: 16}) : host.write(usual, kind, {digits: 2}), times: usual / step};
}

/** Whether what was measured is within what the plane bears; undefined where it was not measured. */
export function fits({id, within}: Truth, off: Readonly<Partial<Record<TruthId, number>>>): boolean | undefined {
  const by = off[id];
  return by === undefined ? undefined : Math.abs(by) <= within;
}

export function asBuiltAnswer(host: GliderElement, study: AsBuiltStudy): Answer {
  const words = host.say(asBuiltWords);
  if (study.built.counted.length === 0) return {sentence: [words.nothing, ...begin(host, study)].join(' ')};
  const off = outOfTrue(study);
  const known = study.truths.filter((truth) => fits(truth, off) !== undefined), bad = known.filter((truth) => fits(truth, off) === false);
  const aside = bad.length > 0 ? words.tooFarOff(bad.map(({id}) => words.names[id])) : known.length > 0 ? words.trueEnough : undefined;
  return {sentence: flies(host, study), ...(aside !== undefined && {aside})};
}

/** What to measure first. */
function begin(host: GliderElement, {truths}: AsBuiltStudy): string[] {
  const words = host.say(asBuiltWords);
  const first = truths.find(({id, glide}) => glide && id in words.firsts && id !== 'nose');
  if (!first?.glide) return [];
  const {words: step, times} = stepOf(host, first), by = first.glide.speed * times;
  return [words.begin({what: words.firsts[first.id as keyof typeof words.firsts], step: words.truth.truths[first.id].step(step), by: speedOf(host, by), slower: by < 0})];
}

function flies(host: GliderElement, study: AsBuiltStudy): string {
  const words = host.say(asBuiltWords);
  const {trim, planned} = study;
  if (!trim.ok) {
    const [problem] = trim.problems;
    const length = (name: string): string => host.write(Math.abs(Number(problem?.args?.[name] ?? NaN)), 'length');
    return {'trim-dives': words.dives(length('edge')), 'trim-stalls': words.stalls(length('edge')), 'flight-unstable': words.unstable(length('forward'))}[problem?.code ?? ''] ?? words.silent;
  }
  const {speed} = trim.value.glide;
  const by = planned.trim.ok ? speed - planned.trim.value.glide.speed : undefined;
  const beside = by === undefined ? '' : speedOf(host, by) === speedOf(host, 0) ? words.asPlanned : words.offPlan({by: speedOf(host, by), slower: by < 0});
  return `${words.flies(speedOf(host, speed))}${beside}${turning(host, study)}.`;
}

/** To which side, of a plane on which something was measured that turns one. */
function turning(host: GliderElement, {turn, built: {counted}}: AsBuiltStudy): string {
  const words = host.say(asBuiltWords);
  if (!counted.some((path) => /^built\.(tip|bow|leftTip)/.test(path))) return '';
  if (!turn) return words.straight;
  const {radius, ends, bank} = turn.track;
  if (ends === 'tight') return words.rollsOver(bank < 0 ? 'left' : 'right');
  if (!Number.isFinite(radius)) return words.straight;
  const way = radius < 0 ? 'left' : 'right';
  return Math.abs(radius) > widest ? words.hardlyTurns(way) : words.turns({way, radius: circle(host, radius)});
}
