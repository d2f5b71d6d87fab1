import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {spanOf} from '../../calc/sheet/span-steps.js';
import {sheetSearchWords} from '../../messages/en/sheet-search.js';
import type {GliderElement} from '../base/element.js';
import type {Found} from './found.js';
import type {Layouts} from './layouts.js';

/** How far the search has got, with what stops it or lets it go on. One line that is always there, so that nothing jumps. */
export function searchLine(host: GliderElement, layouts: Layouts, found: Found, straight: boolean): TemplateResult {
  const {standing, cut} = found;
  const words = host.say(sheetSearchWords);
  const {state, seconds, better, trying, failed} = layouts;
  const what = (n: number): string => (found.wanted === 'span' ? words.wing(host.write(spanOf(n, found.step), 'length')) : words.gliders(n));
  const vain = failed === undefined ? '' : words.vain(what(failed));
  const stop = html`<button type="button" part="button" @click=${() => { layouts.stop(); }}>${words.stop}</button>`;
  const lookOn = html`<button type="button" part="button" @click=${() => { layouts.lookOn(); }}>${words.lookOn}</button>`;
  const still = standing === 'awaited' ? straight ? words.awaitedStraight : words.awaited : '';
  const proved = found.wanted === 'sheets' && cut.sheets === cut.least && cut.leftOut.length === 0 && cut.sheets > 1 && standing === 'answers' ? words.proved : '';
  const [said, button] = ((): readonly [string, TemplateResult | typeof nothing] => {
    switch (state) {
      case 'soon': return [words.soon, nothing];
      case 'looking': return [trying === undefined ? words.looking({seconds, better}) : words.trying({what: what(trying), seconds}), stop];
      case 'resting': return [words.resting({seconds, better}), lookOn];
      case 'stopped': return [words.stopped, lookOn];
      case 'ended': return [standing === 'not found' ? straight ? words.notStraight : words.awaited : words.ended({better}), nothing];
      case 'not loaded': return [words.notLoaded, nothing];
    }
  })();
  return html`<div class="search" part="search"><p class="source">${[said, state === 'looking' ? '' : proved, state === 'looking' || state === 'soon' ? '' : vain, still].filter(Boolean).join(' ')}</p>${button}</div>`;
}
