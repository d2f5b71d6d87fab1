import {outOfTrue, type AsBuiltStudy} from '../../calc/as-built/study.js';
import type {Truth, TruthId} from '../../calc/as-built/tolerances.js';
import {turnSeen} from '../../calc/flight/simulation/turn-seen.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import {acrossWords} from '../base/across.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {near} from '../base/near.js';
import {slipWords} from '../base/slip.js';
import {balanceFirstWords} from '../base/weights.js';

/** A length as small as what is measured here. */
export const fine = (host: GliderElement, value: number): string => host.write(value, 'length', host.system === 'inch' ? {fraction: 32} : {digits: 1});

/** Where the plane should balance, behind the wing's front edge. */
export const balanceRange = (host: GliderElement, {balance: {target: {from, to}, wingAt}}: AsBuiltStudy): string =>
  host.say(asBuiltWords).truth.range(near(host, from - wingAt, true), near(host, to - wingAt));

const speedOf = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'speed', {digits: 1});

/** The step that is looked at, as a reader writes it. */
export const stepWords = (host: GliderElement, {kind, step}: Truth): string =>
  host.write(step, kind, host.system !== 'inch' ? {} : kind === 'length' ? {fraction: 16} : {digits: 2});

/** Whether what was measured is within what the plane bears; undefined where it was not measured. */
export function fits({id, within}: Truth, off: Readonly<Partial<Record<TruthId, number>>>): boolean | undefined {
  const by = off[id];
  // the target of a balance is its tolerance
  return by === undefined ? undefined : Math.abs(by) <= (id === 'balance' ? 0 : within);
}

export function asBuiltAnswer(host: GliderElement, study: AsBuiltStudy): Answer {
  const words = host.say(asBuiltWords);
  if (study.built.counted.length === 0) return unmeasured(host, study);
  const off = outOfTrue(study);
  const known = study.truths.filter((truth) => fits(truth, off) !== undefined), bad = known.filter((truth) => fits(truth, off) === false && !(truth.id === 'tail' && study.better));
  const balance = study.first && balanceFirstWords(host, study.first);
  const edges = study.better && words.better[study.better.speed];
  const truth = bad.length > 0 ? words.tooFarOff(bad.map(({id}) => words.names[id])) : known.length > 0 && !edges ? words.trueEnough : undefined;
  const aside = [...balance?.then ?? [], ...edges === undefined ? [] : [edges], ...truth === undefined ? [] : [truth]].join(' ');
  return {sentence: [...balance ? [balance.sentence] : [], flies(host, study)].join(' '), ...(aside && {aside})};
}

/** What comes before any measuring, or what to measure first. */
function unmeasured(host: GliderElement, study: AsBuiltStudy): Answer {
  const words = host.say(asBuiltWords);
  if (study.first) {
    const {sentence, then} = balanceFirstWords(host, study.first);
    return {sentence: [words.nothing, sentence].join(' '), aside: then.join(' ')};
  }
  return {sentence: [words.nothing, ...begin(host, study), ...study.trim.ok ? [] : [notGliding(host, study)]].join(' ')};
}

/** What to measure first. */
function begin(host: GliderElement, {truths}: AsBuiltStudy): string[] {
  const words = host.say(asBuiltWords);
  const first = truths.find(({id, turn}) => !turn && id in words.firsts && id !== 'nose');
  if (!first) return [];
  const what = words.firsts[first.id as keyof typeof words.firsts], step = words.truth.truths[first.id].step(stepWords(host, first)), by = first.glide?.speed;
  return [by === undefined ? words.beginNoGlide({what, step}) : words.begin({what, step, by: speedOf(host, by), slower: by < 0})];
}

/** What it does as measured. Where its balance comes first, the tail is not the cure. */
function flies(host: GliderElement, study: AsBuiltStudy): string {
  const words = host.say(asBuiltWords);
  const {trim, planned} = study;
  if (!trim.ok) return notGliding(host, study);
  const {speed} = trim.value.glide;
  const by = planned.trim.ok ? speed - planned.trim.value.glide.speed : undefined;
  const beside = by === undefined ? '' : speedOf(host, by) === speedOf(host, 0) ? words.asPlanned : words.offPlan({by: speedOf(host, by), slower: by < 0});
  return `${words.flies(speedOf(host, speed))}${beside}${turning(host, study)}.`;
}

/** Why it does not glide, with what to do unless the balance comes first. */
function notGliding(host: GliderElement, {built, trim, first}: AsBuiltStudy): string {
  const words = host.say(asBuiltWords), how = built.counted.length > 0 ? 'measured' : 'planned';
  const [problem] = trim.ok ? [] : trim.problems;
  const edge = first === undefined ? slipWords(host, Number(problem?.args?.['edge'] ?? NaN)) : undefined;
  return {'trim-dives': words.dives({how, edge}), 'trim-stalls': words.stalls({how, edge}), 'flight-unstable': words.unstable(how)}[problem?.code ?? ''] ?? words.silent;
}

/** To which side, of a plane on which something was measured that turns one. */
function turning(host: GliderElement, {turn, built: {counted}}: AsBuiltStudy): string {
  const words = host.say(asBuiltWords);
  if (!counted.some((path) => /^built\.(tip|bow|leftTip)/.test(path))) return '';
  if (!turn) return words.straight;
  const seen = turnSeen(turn.track), {side} = seen;
  switch (seen.kind) {
    case 'circle': return words.turns({way: side, across: acrossWords(host, seen.across)});
    case 'hardly': return words.hardlyTurns(side);
    case 'rolls-over': return words.rollsOver(side);
    case 'too-steep': return words.steepTurn(side);
  }
}
