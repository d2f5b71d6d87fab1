import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {sheetSearchWords} from '../../messages/en/sheet-search.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import type {Hand} from './hand.js';
import {piecesOf, type LaidOut} from './laid-out.js';
import {pieceName} from './picture.js';

/** Which part is in hand, where it lies, and what can be done with it. */
export function handBar(host: GliderElement, hand: Hand, laid: LaidOut): TemplateResult {
  const words = host.say(sheetSearchWords);
  const open = hand.number !== undefined || hand.held.length > 0;
  return html`<details class="panel hand" part="hand" ?open=${open} @toggle=${(e: Event) => { hand.open((e.target as HTMLDetailsElement).open); }}><summary>${words.byHand}</summary>${
    open || hand.isOpen ? contents(host, hand, laid) : nothing}</details>`;
}

/** What stands in it once it is opened: of many gliders there is much to choose from. */
function contents(host: GliderElement, hand: Hand, laid: LaidOut): TemplateResult {
  const words = host.say(sheetSearchWords);
  const {piece, number, held} = hand;
  const several = laid.plans.length > 1;
  return html`<div class="opened">
    <div class="field" part="field"><label for="field-in-hand">${words.inHand}</label>
      <span class="q"><select id="field-in-hand" .value=${live(number === undefined ? '' : String(number))} @change=${(e: Event) => {
        const {value} = e.target as HTMLSelectElement;
        hand.take(laid, value === '' ? undefined : Number(value));
      }}><option value="" ?selected=${number === undefined}>${words.none}</option>
        ${piecesOf(laid).map(({piece: each, plan}) => html`<option value=${each.number} ?selected=${each.number === number}>${several
          ? words.onSheet({number: each.number, part: pieceName(host, each.part), sheet: host.say(sheetWords).sheetNumbers(plan.first, plan.alike)})
          : host.say(sheetWords).piece({number: each.number, part: pieceName(host, each.part)})}</option>`)}
      </select></span></div>
    ${piece === undefined ? nothing : html`<div class="moves">
      ${hand.mayTurn ? html`<button type="button" part="button" class="turn" ?disabled=${hand.isAsking} @click=${() => { hand.turn(); }}>${words.turn}</button>` : nothing}
      <button type="button" part="button" class="hold" ?disabled=${hand.isAsking} aria-pressed=${hand.holdsInHand ? 'true' : 'false'} @click=${() => { hand.holdOrLetGo(); }}>${hand.holdsInHand ? words.letGo : words.hold}</button>
      ${hand.isMoved ? html`<button type="button" part="button" class="back" ?disabled=${hand.isAsking} @click=${() => { hand.putBack(); }}>${words.putBack}</button>` : nothing}</div>`}
    ${held.length > 0 ? html`<p class="source">${words.manyHeld(held.length)} <button type="button" part="button" class="all" @click=${() => { hand.letAllGo(); }}>${words.letAllGo}</button></p>` : nothing}
    <div class="told" role="status"><p class="source">${told(host, hand)}</p>
      ${hand.refusal ? html`<p class="problem" part="problem">${explain(host, inWords(host, hand.refusal))}</p>` : nothing}
      ${laid.problems.filter(({code}) => code.startsWith('held-')).map((problem) => html`<p class="problem" part="problem">${explain(host, inWords(host, problem))}</p>`)}</div>
  </div>`;
}

function told(host: GliderElement, hand: Hand): string {
  const words = host.say(sheetSearchWords);
  const {piece} = hand;
  // where a finger points there may be no keys at all
  if (!piece) return matchMedia('(pointer: coarse)').matches ? words.handHelpTouch : words.handHelp;
  if (hand.isAsking) return words.asking;
  const {part, placed: {x, y}, number} = piece;
  const where = {part: `${String(number)} ${pieceName(host, part)}`, across: host.write(x, 'length', {fraction: 32}), up: host.write(y, 'length', {fraction: 32})};
  return hand.isMoved ? words.moved(where) : hand.holdsInHand ? words.held(where) : `${words.lies(where)} ${words.handKeys}`;
}

type Problem = NonNullable<Hand['refusal']>;

/** With the parts' names as readers know them. */
function inWords(host: GliderElement, {args = {}, ...problem}: Problem): Problem {
  const {parts} = host.say(sheetWords);
  const named = Object.fromEntries(Object.entries(args).map(([name, value]) => {
    const [id = '', lengths = ''] = String(value).split(' ');
    return [name, (name === 'id' || name === 'other') && id in parts ? `${parts[id as keyof typeof parts]} ${lengths}`.trim() : value];
  }));
  return {...problem, args: named};
}
