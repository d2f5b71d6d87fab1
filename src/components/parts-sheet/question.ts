import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {sheetQuestionWords} from '../../messages/en/sheet-question.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {Fields} from '../base/fields.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import {boardField} from './board-field.js';
import {wantedOf} from './found.js';
import {notices, notSplicedSentence, priceUnread} from './own-notices.js';
import {atHandUnread, mayBeSpliced, sparesUnread, type OwnEntries, type OwnQuestions} from './own-questions.js';

/** Fields behind the few that most readers need. */
const more: readonly DimensionPath[] = [
  'board.gap', 'board.margin', 'board.grain', 'wing.chord', 'wing.tipChord', 'body.length', 'body.height', 'body.layers', 'tail.span', 'tail.chord', 'tail.fins.count',
  'board.thickness', 'board.sheetMass',
];

/** Who asks: the element with its fields, and what of it is locked. */
export interface Asking {
  readonly host: GliderElement & OwnEntries;
  readonly fields: Fields;
  readonly own: OwnQuestions;
  readonly locked: (path: DimensionPath) => boolean;
  readonly lockedOwn: (name: string) => boolean;
  /** Whether better layouts are looked for: how parts are cut, and on which other boards, is for the search alone. */
  readonly searches: boolean;
}

/** All that is asked: what is wanted, the board and the numbers first; cutting, other boards and money behind. */
export function question(asking: Asking): TemplateResult {
  const {host, fields, own, locked, lockedOwn, searches} = asking;
  const words = host.say(sheetWords), ownWords = host.say(sheetQuestionWords);
  const {wanted} = own;
  const of = (path: DimensionPath): TemplateResult => fields.of(path, {disabled: locked(path)});
  const sheets = own.sheets.render(words.sheetsAtHand, lockedOwn('sheets'));
  const kits = own.kits.render(words.kits, lockedOwn('kits'));
  const spares = own.spares.render(ownWords.spares, explain(host, sparesUnread), {disabled: lockedOwn('spares'), hint: '0'});
  return html`<div class="fields">
    ${choice(asking, 'wanted', words.wanted, ['sheets', 'gliders', 'span'] as const, words.questions, wanted, (to) => { host.wanted = wantedOf(to); })}
    ${boardField(host, locked('board.length') || locked('board.width'))}
    ${of('board.length')}${of('board.width')}
    ${wanted === 'sheets' ? kits : wanted === 'gliders' ? sheets : html`${sheets}${kits}`}
    ${wanted === 'sheets' ? spares : nothing}
    ${searches ? choice(asking, 'cuts', ownWords.cuts, ['free', 'straight'] as const, ownWords.ways, own.cuts, (to) => { host.cuts = to; }) : nothing}
    ${wanted === 'span' ? nothing : of('wing.span')}
    ${fields.more(() => [
      ...wanted === 'span' ? [of('wing.span')] : [], ...more.map(of),
      ...wanted === 'sheets' ? [
        own.price.render(ownWords.price, priceUnread(host), {disabled: lockedOwn('price')}),
        own.currency.render(ownWords.currency, '', {disabled: lockedOwn('currency'), text: true}),
      ] : [],
      ...wanted === 'sheets' && searches ? [
        own.atHand.render(ownWords.atHand, explain(host, atHandUnread), {disabled: lockedOwn('at-hand'), hint: ownWords.asNeeded}),
        own.boards.render(lockedOwn('boards')),
      ] : [],
      ...searches ? [splicing(asking)] : [],
    ], notices(host, own, searches).length > 0 || wanted === 'sheets' && searches && own.atHand.wrong)}
  </div>`;
}

function choice<T extends string>({host, lockedOwn}: Asking, name: string, label: string, values: readonly T[], words: Readonly<Record<T, string>>, chosen: T, take: (to: T) => void): TemplateResult {
  const id = `field-${name}`;
  return html`<div class="field choice" part="field"><label for=${id}>${label}</label>
    <span class="q"><select id=${id} .value=${live(chosen)} ?disabled=${lockedOwn(name)} @change=${(e: Event) => {
      const to = values.find((each) => each === (e.target as HTMLSelectElement).value);
      if (to !== undefined) take(to);
      host.dispatchEvent(new Event('change', {bubbles: true}));
    }}>${values.map((one) => html`<option value=${one} ?selected=${one === chosen}>${words[one]}</option>`)}</select></span><span></span></div>`;
}

/** A box to tick for each part that may be made of several lengths. */
function splicing({host, own, lockedOwn}: Asking): TemplateResult {
  const words = host.say(sheetQuestionWords);
  return html`<fieldset class="splice" ?disabled=${lockedOwn('splice')}><legend>${words.splice}</legend>${mayBeSpliced.map((id) => html`<label><input type="checkbox" name=${id}
    .checked=${live(own.splice.includes(id))} @change=${(e: Event) => {
      const {checked} = e.target as HTMLInputElement;
      host.splice = mayBeSpliced.filter((each) => (each === id ? checked : own.splice.includes(each))).join(' ');
      host.dispatchEvent(new Event('change', {bubbles: true}));
    }}> ${words.splicedParts[id]}</label>`)}
    ${own.notSpliced.length > 0 ? html`<p class="problem" part="problem">${notSplicedSentence(host, own)}</p>` : nothing}</fieldset>`;
}
