import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {Advice, Cause} from '../../calc/trim-advice/advice.js';
import type {CauseId} from '../../calc/trim-advice/causes.js';
import type {Change} from '../../calc/trim-advice/change.js';
import type {Sight} from '../../calc/trim-advice/seen.js';
import {trimAdviceCauseWords} from '../../messages/en/trim-advice-causes.js';
import type {GliderElement} from '../base/element.js';
import {emphasised, plain} from '../base/emphasis.js';
import {capital, changeWords, effectWords, factWords, likelihood, whyWords} from './sentences.js';

/** Every cause with what speaks for it and what mends it, the likeliest first. */
export function causeList(host: GliderElement, {causes, next, because, unlike, seen}: Advice, did: (change: Change, cause: CauseId) => void): TemplateResult | typeof nothing {
  if (causes.length === 0) return nothing;
  const words = host.say(trimAdviceCauseWords);
  return html`<section aria-label=${words.causes}><h4>${next === 'again' ? `${words.ifAgain}: ` : because === 'no-fit' ? `${words.ifMeasured}: ` : ''}${words.causes}</h4>
    ${unlike ? html`<p class="unlike">${emphasised(words.unlike)}</p>` : nothing}
    <ol class="causes" part="causes">${causes.map((cause) => oneCause(host, cause, seen.what, did))}</ol></section>`;
}

function oneCause(host: GliderElement, cause: Cause, seen: Sight, did: (change: Change, cause: CauseId) => void): TemplateResult {
  const words = host.say(trimAdviceCauseWords);
  return html`<li><strong>${capital(words.cause[cause.id])}</strong> <span class="how">(${likelihood(host, cause)}; ${words.blame[cause.blame]})</span>
    <p>${[whyWords(host, cause.id, seen), ...cause.facts.map((fact) => factWords(host, fact))].join(' ')}</p>
    <ul class="changes">${cause.changes.map((change, i) => oneChange(host, change, cause.id, i > 0, did))}</ul></li>`;
}

function oneChange(host: GliderElement, change: Change, cause: CauseId, other: boolean, did: (change: Change, cause: CauseId) => void): TemplateResult {
  const words = host.say(trimAdviceCauseWords);
  const said = changeWords(host, change, cause), effect = effectWords(host, change);
  return html`<li><span>${emphasised(other ? `${words.or}: ${said}` : capital(said))}.${effect === undefined ? nothing : html` <span class="effect">${effect}</span>`}</span>
    <button type="button" part="button" aria-label=${words.didName(plain(said))} @click=${() => { did(change, cause); }}>${words.did}</button></li>`;
}
