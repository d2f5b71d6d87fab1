import {nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {flightOf} from '../../calc/flight/flight.js';
import {flyingPlane} from '../../calc/flight/flying-plane.js';
import type {Problem} from '../../calc/problem.js';
import type {Values} from '../../calc/trim-advice/change.js';
import {behindLimit} from '../../calc/trim-advice/limit.js';
import {speaksAgainst, tailRemedy} from '../../calc/trim-advice/no-glide.js';
import type {Sight} from '../../calc/trim-advice/seen.js';
import {trimAdviceWords} from '../../messages/en/trim-advice.js';
import type {GliderElement} from '../base/element.js';
import {isNoGlide} from './held-up.js';
import {changeWords, effectWords} from './sentences.js';

/** What to do first, and what to make of it where something else was seen. */
export function remedyWords(host: GliderElement, {code}: Problem, seen: Sight | undefined): string {
  const words = host.say(trimAdviceWords);
  if (!isNoGlide(code)) return words.remedy;
  const slips = slipsOf(host);
  return [
    ...slips ? [words.remedyTail({change: changeWords(host, slips), effect: effectWords(host, slips) ?? ''})] : [],
    ...seen && speaksAgainst(code, seen) ? [words.remedyUnlike] : [],
  ].join(' ');
}

/** The button that says it done: what brings a balance in front of its limit, or lets a plane glide at all. */
export function remedyButton(host: GliderElement, problems: readonly Problem[], button: (values: Values, said: string) => TemplateResult): TemplateResult | typeof nothing {
  const words = host.say(trimAdviceWords), {design} = host.state;
  if (problems.some(({code}) => isNoGlide(code))) {
    const slips = slipsOf(host);
    return slips ? button(slips.values, words.changedIt) : nothing;
  }
  const plane = flyingPlane(design), weight = plane.ok ? behindLimit(plane.value, design)?.weight : undefined;
  return weight ? button(weight.values, words.fastened) : nothing;
}

function slipsOf({state: {design}}: GliderElement): ReturnType<typeof tailRemedy> {
  const flight = flightOf(design);
  return flight.ok ? tailRemedy(design, flight.value) : undefined;
}
