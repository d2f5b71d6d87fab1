import type {Advice, Cause} from '../../calc/trim-advice/advice.js';
import type {CauseId} from '../../calc/trim-advice/causes.js';
import {balanceFirst} from '../../calc/flight/balance-first.js';
import type {ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import type {Change} from '../../calc/trim-advice/change.js';
import type {Sight} from '../../calc/trim-advice/seen.js';
import type {Fact} from '../../calc/trim-advice/weighing.js';
import {trimAdviceCauseWords} from '../../messages/en/trim-advice-causes.js';
import {trimAdviceWords} from '../../messages/en/trim-advice.js';
import {costsNothing, measuring} from '../../calc/trim-advice/choosing.js';
import {aimWords} from '../base/aim.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {slipWords} from '../base/slip.js';
import {balanceFirstWords} from '../base/weights.js';

const far = (host: GliderElement, value: number): string => host.write(value, 'length', host.system === 'inch' ? {unit: 'ft', digits: 0} : {unit: 'm', digits: 1});
const speed = (host: GliderElement, value: number): string => host.write(value, 'speed', {digits: 1});
const turn = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'angle', {digits: 0});

const degree = Math.PI / 180;

/** To half a gram, as it is weighed out. */
const weight = (host: GliderElement, value: number): string =>
  host.write(value, 'mass', host.system === 'inch' ? {digits: 2} : value >= 0.01 && Math.abs(value * 1e3 - Math.round(value * 1e3)) > 0.01 ? {digits: 1} : {});

/** As small as a sheet of paper. */
const fine = (host: GliderElement, value: number): string => host.write(value, 'length', {digits: host.system === 'inch' ? 3 : 1});

function placeWords(host: GliderElement, at: number): string {
  const words = host.say(trimAdviceCauseWords);
  return at < 0 ? words.ahead(host.write(-at, 'length')) : words.behind(host.write(at, 'length'));
}

/** A sentence begins with a capital, unless it begins with a number. */
export const capital = (words: string): string => words.replace(/^\**\p{L}/u, (start) => start.toUpperCase());

/** Before the first throw: how to throw it, after what its balance and its tail want first. */
export function beginAnswer(host: GliderElement, {right, call}: ThrowStudy): Answer {
  const words = host.say(trimAdviceWords);
  const first = balanceFirst(host.state.design);
  if (first) {
    const {sentence, then} = balanceFirstWords(host, first);
    return {sentence, aside: [...then, words.beginAfter].join(' ')};
  }
  return {
    sentence: words.begin({speed: speed(host, right.speed), angle: aimWords(host, right)}),
    aside: [...call ? [words.beginCalls[call.speed](slipWords(host, call.rise))] : [], words.beginAside].join(' '),
  };
}

/** A change as something to do against a cause, in this plane's numbers; what is exact stands between `**`. */
export function changeWords(host: GliderElement, one: Change, cause?: CauseId): string {
  const words = host.say(trimAdviceCauseWords);
  const {change} = words;
  const length = (value: number): string => host.write(value, 'length', {fraction: 32});
  switch (one.id) {
    case 'nose-on': return change['nose-on']({mass: weight(host, one.mass), at: placeWords(host, one.at), fitted: one.fitted});
    case 'nose-off': return change['nose-off']({mass: weight(host, one.mass), at: placeWords(host, one.at)});
    case 'weight-back': case 'weight-forward': return change[one.id]({mass: weight(host, one.mass), by: length(one.by), to: placeWords(host, one.to)});
    case 'slip-more': case 'slip-less': {
      const {boards, cards, papers} = one.stack;
      return change[one.id]({edge: slipWords(host, one.edge), stack: words.series(boards, cards, papers)});
    }
    case 'throw': {
      const angle = aimWords(host, one);
      if (cause === 'thrown-banked') return change.level({speed: speed(host, one.speed), angle});
      return change[cause === 'thrown-fast' ? 'noFaster' : 'throw']({speed: speed(host, one.speed), angle, ball: far(host, one.ball)});
    }
    case 'fin': return change.fin({strip: length(one.strip), bend: length(one.bend), side: words.towards[one.side]});
    case 'tip': return change.tip({mass: weight(host, one.mass), tip: words.tip[one.side ?? 'neither']});
    case 'untwist': return change.untwist({edge: length(one.edge), half: words.half[one.side ?? 'neither']});
    case 'straighten': return change.straighten({by: fine(host, one.by), way: words.towards[one.side]});
    case 'square': return change.square(fine(host, one.to));
    case 'even-tips': return change['even-tips']({by: fine(host, one.by), tip: words.tip[one.side]});
    case 'dihedral': return change.dihedral(host.write(one.by, 'angle'));
    case 'fin-larger': return change['fin-larger']({by: length(one.by), height: length(one.height)});
    case 'secure': return change.secure[one.what];
    case 'calm': return change.calm;
    case 'measure': return change.measure[one.what];
  }
}

/** What the model expects of a change of balance or tail. */
export function effectWords(host: GliderElement, one: Change): string | undefined {
  if (!('after' in one) || one.after.speed === undefined) return undefined;
  const words = host.say(trimAdviceCauseWords);
  const after = speed(host, one.after.speed);
  return one.before.speed === undefined ? words.effectAnew(after) : words.effect({before: speed(host, one.before.speed), after});
}

/** How far something turns a plane: beyond a quarter of a circle, the small motions it was reckoned by are no longer small. */
function turned(host: GliderElement, by: number): string {
  const words = host.say(trimAdviceCauseWords), size = Math.abs(by);
  return size < degree ? words.under(turn(host, degree)) : size > Math.PI / 2 ? words.over(turn(host, Math.PI / 2)) : words.about(turn(host, by));
}

/** What speaks for a cause or against it. */
export function factWords(host: GliderElement, one: Fact): string {
  const words = host.say(trimAdviceCauseWords), {fact} = words;
  const share = (value: number): string => host.write(value, 'ratio', {digits: 0});
  switch (one.id) {
    case 'margin-high': case 'margin-low': return fact[one.id]({margin: share(one.margin), least: share(one.least), most: share(one.most)});
    case 'near-stall': case 'far-from-stall': return fact[one.id](host.write(one.ratio, 'count', {digits: 2}));
    case 'speed-high': return fact['speed-high']({speed: speed(host, one.speed), best: speed(host, one.best)});
    case 'hand-faster': case 'hand-slower': return fact[one.id]({speed: speed(host, one.speed), right: speed(host, one.right)});
    case 'wind': return fact.wind(speed(host, Math.abs(one.wind)));
    case 'turns-by': return fact['turns-by']({fault: one.cause === 'heavy-tip' ? weight(host, one.fault) : host.write(one.fault, 'angle'), turns: turned(host, one.turns)});
    case 'measured-bow': return fact['measured-bow']({by: fine(host, one.by), way: words.towards[one.side], turns: turned(host, one.turns)});
    case 'measured-skew': case 'measured-tips': return fact[one.id]({left: fine(host, one.left), right: fine(host, one.right), turns: turned(host, one.turns)});
    case 'faster-now': return fact['faster-now']({speed: speed(host, one.speed), before: speed(host, one.before)});
    case 'looks-so': case 'measures-fit': case 'measures-miss': case 'tightens': case 'rolls-out':
    case 'wags': case 'dies-away': case 'same-every-time': case 'hand-steeper': case 'hand-flatter': case 'folds': case 'tried': return fact[one.id];
  }
}

/** How likely a cause is, in a word: its share rests on common practice and is no probability to two digits. */
export function likelihood(host: GliderElement, {share}: Cause): string {
  const words = host.say(trimAdviceCauseWords);
  return share >= 0.35 ? words.likely : share >= 0.15 ? words.possible : words.lessLikely;
}

/** What belongs beside the answer itself: a number that was measured, and why a speed is another one than before. */
const toldAtOnce = /^(measured-|faster-now$)/;

/** Why it is so: a throw that is too fast shakes boards by another way than it makes a plane climb. */
export function whyWords(host: GliderElement, cause: CauseId, seen: Sight): string {
  const {why} = host.say(trimAdviceCauseWords);
  return why[cause === 'thrown-fast' && seen === 'flutters' ? 'fast-flutter' : cause];
}

/** What to do next, and why. */
export function adviceAnswer(host: GliderElement, advice: Advice): Answer {
  const {next, because, first, causes, seen, vain} = advice, words = host.say(trimAdviceCauseWords);
  if (next === 'stop') return stopAnswer(host, advice);
  if (because === 'no-fit' && first) return {sentence: words.measureFirst(changeWords(host, first.change, first.cause.id)), aside: words.noFit[measuring[seen.what] === 'held' ? 'held' : 'measured'](words.vain(vain))};
  const why = because in words.because ? words.because[because as keyof typeof words.because] : '';
  if (next === 'again' || !first) return {sentence: words.again(why)};
  const change = changeWords(host, first.change, first.cause.id), cause = words.cause[first.cause.id];
  const [likeliest = first.cause] = causes;
  const sentence = likeliest === first.cause ? words.first({change, cause}) : costsNothing(first.change)
    ? words.firstThough({change, cause, likeliest: words.cause[likeliest.id]}) : words.firstNow({change, cause});
  return {
    sentence,
    aside: [whyWords(host, first.cause.id, seen.what), ...first.cause.facts.filter(({id}) => toldAtOnce.test(id)).map((fact) => factWords(host, fact)), effectWords(host, first.change), why].filter(Boolean).join(' '),
  };
}

/** That nothing is changed any more, why, and what to do instead. */
function stopAnswer(host: GliderElement, {because, seen: {what}, vain, study: {right, ball}}: Advice): Answer {
  const words = host.say(trimAdviceCauseWords), {afterStop} = words;
  const throwing = changeWords(host, {id: 'throw', speed: right.speed, angle: right.angle, height: right.height, ball});
  const look = capital(changeWords(host, {id: 'measure', what: measuring[what]}));
  if (because === 'either-way' || because === 'unsteady') return {sentence: words.stopFor[because], aside: afterStop[because](throwing)};
  if (because === 'many') return {sentence: words.stopFor.many, aside: afterStop.many(look)};
  if (because === 'no-fit') return {sentence: words.stopFor['no-fit'], aside: afterStop['no-fit']({vain: words.vain(vain), look})};
  return {sentence: words.stop, aside: words.because['two-good']};
}
