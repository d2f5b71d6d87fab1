import {html, nothing} from 'lit';
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
import {emphasised} from '../base/emphasis.js';
import {isNoGlide} from './held-up.js';
import {changeWords, effectWords} from './sentences.js';

/** What brings a balance in front of its limit, or lets a plane glide at all, with the button that says it done; and what to make of it where something else was seen. */
export function remedy(host: GliderElement, problems: readonly Problem[], seen: Sight | undefined, button: (values: Values, said: string) => TemplateResult): TemplateResult {
  const words = host.say(trimAdviceWords), {design} = host.state;
  const doing = problems.map(({code}) => code).find(isNoGlide);
  if (!doing) {
    const plane = flyingPlane(design), weight = plane.ok ? behindLimit(plane.value, design)?.weight : undefined;
    return html`<p class="remedy">${words.remedy}</p>${weight ? button(weight.values, words.fastened) : nothing}`;
  }
  const flight = flightOf(design), slips = flight.ok ? tailRemedy(design, flight.value) : undefined;
  return html`${seen && speaksAgainst(doing, seen) ? html`<p class="remedy">${emphasised(words.remedyUnlike)}</p>` : nothing}
    ${slips ? html`<p class="remedy">${emphasised(words.remedyTail({change: changeWords(host, slips), effect: effectWords(host, slips) ?? ''}))}</p>${button(slips.values, words.changedIt)}` : nothing}`;
}
