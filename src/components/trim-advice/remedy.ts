import {nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {balanceFirst} from '../../calc/flight/balance-first.js';
import {flightOf} from '../../calc/flight/flight.js';
import type {Problem} from '../../calc/problem.js';
import type {Values} from '../../calc/trim-advice/change.js';
import {speaksAgainst, tailRemedy} from '../../calc/trim-advice/no-glide.js';
import type {Sight} from '../../calc/trim-advice/seen.js';
import {trimAdviceWords} from '../../messages/en/trim-advice.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import {balanceFirstWords} from '../base/weights.js';
import {isNoGlide} from './held-up.js';
import {changeWords, effectWords} from './sentences.js';

/** What comes before a throw, the balance before the tail, and what to make of it where something else was seen. */
export function heldAnswer(host: GliderElement, held: Problem, seen: Sight | undefined): Answer {
  const words = host.say(trimAdviceWords);
  const first = balanceFirst(host.state.design), balance = first && balanceFirstWords(host, first);
  const slips = balance || !isNoGlide(held.code) ? undefined : slipsOf(host);
  return {
    sentence: words.notYet(balance?.sentence ?? explain(host, held)),
    aside: [
      ...balance?.then ?? [],
      ...slips ? [words.remedyTail({change: changeWords(host, slips), effect: effectWords(host, slips) ?? ''})] : [],
      ...isNoGlide(held.code) && seen && speaksAgainst(held.code, seen) ? [words.remedyUnlike] : [],
    ].join(' '),
  };
}

/** The button that says it done: what balances a plane, or lets one that is balanced glide at all. */
export function remedyButton(host: GliderElement, problems: readonly Problem[], button: (values: Values, said: string) => TemplateResult): TemplateResult | typeof nothing {
  const words = host.say(trimAdviceWords);
  const first = balanceFirst(host.state.design);
  if (first) {
    const {weights} = first;
    return weights ? button({'ballast.masses': weights.masses}, weights.off.length > 0 ? words.changedIt : words.fastened) : nothing;
  }
  const slips = problems.some(({code}) => isNoGlide(code)) ? slipsOf(host) : undefined;
  return slips ? button(slips.values, words.changedIt) : nothing;
}

function slipsOf({state: {design}}: GliderElement): ReturnType<typeof tailRemedy> {
  const flight = flightOf(design);
  return flight.ok ? tailRemedy(design, flight.value) : undefined;
}
