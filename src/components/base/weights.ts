import type {GliderDesign} from '../../calc/design/design.js';
import type {BalanceFirst} from '../../calc/flight/balance-first.js';
import type {Glide} from '../../calc/flight/glide.js';
import type {Problem} from '../../calc/problem.js';
import type {Taken, WeightsForBalance} from '../../calc/balance/weights-for-balance.js';
import {weightsWords, type End, type Place} from '../../messages/en/weights.js';
import type {GliderElement} from './element.js';
import {near} from './near.js';
import {slipWords} from './slip.js';

/** Where a weight goes, measured from one end of the body. */
export function placeWords(end: End, place: number, bodyLength: number, host: GliderElement): Place {
  const from = end === 'nose' ? place : bodyLength - place;
  return {end, distance: host.write(Math.abs(from), 'length'), beyond: from < 0};
}

/** What comes off, weight by weight. */
export function takeWords(host: GliderElement, off: readonly Taken[], heavy: End, {body}: GliderDesign): readonly string[] {
  const {take} = host.say(weightsWords);
  const mass = (value: number): string => host.write(value, 'mass');
  return off.map(({mass: taken, left, at}) => {
    const place = placeWords(heavy, at, body.length, host);
    return left > 0 ? take.some({...place, mass: mass(taken), of: mass(taken + left), left: mass(left)}) : take.all({...place, mass: mass(taken)});
  });
}

/** Which weights go where, in words to be read after a semicolon. */
export function doingWords(host: GliderElement, {off, on, heavy}: WeightsForBalance, design: GliderDesign): string {
  const words = host.say(weightsWords);
  const mass = (value: number): string => host.write(value, 'mass');
  const place = on && placeWords(heavy === 'tail' ? 'nose' : 'tail', on.at, design.body.length, host);
  const put = !on || !place ? [] : [on.together > on.mass ? words.putMore({...place, mass: mass(on.mass), together: mass(on.together)}) : words.put({...place, mass: mass(on.mass)})];
  return words.then([...takeWords(host, off, heavy, design), ...put]);
}

/** What comes first where a plane balances outside its target, and how it flies then. */
export function balanceFirstWords(host: GliderElement, {design, plane: {behindWing}, heavy, outside, weights, then, call}: BalanceFirst): {readonly sentence: string; readonly then: readonly string[]} {
  const words = host.say(weightsWords);
  const slip = (problem: Problem): string => slipWords(host, Number(problem.args?.['edge'] ?? 0));
  const speed = (glide: Glide): string => host.write(glide.speed, 'speed', {digits: host.system === 'inch' ? 0 : 1});
  const trim = then?.ok ? then.value.trim : then;
  const [problem] = !trim || trim.ok ? [] : trim.problems;
  return {
    // less than a millimetre is still too much
    sentence: words.first({
      at: near(host, Math.abs(behindWing)), ahead: behindWing < 0, by: host.write(Math.max(outside, 1e-3), 'length', host.system === 'inch' ? {fraction: 32} : {digits: 0}), heavy, doing: weights && doingWords(host, weights, design),
    }),
    then: trim?.ok && call ? [words.thenCalls[call.speed]({speed: speed(trim.value.glide), by: slipWords(host, call.rise)})]
      : trim?.ok ? [words.thenFlies({speed: speed(trim.value.glide), ratio: host.write(trim.value.glide.ratio.usual, 'count', {digits: 0})})]
      : problem?.code === 'trim-dives' ? [words.thenDives(slip(problem))] : problem?.code === 'trim-stalls' ? [words.thenStalls(slip(problem))] : [],
  };
}
