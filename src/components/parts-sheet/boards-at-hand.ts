import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Board} from '../../calc/sheet/engine/job.js';
import {readList} from '../../calc/units/list.js';
import {sheetQuestionWords} from '../../messages/en/sheet-question.js';
import type {GliderElement} from '../base/element.js';
import {CountField} from './count-field.js';
import {LengthField} from './length-field.js';

/** More rows than this are no list of boards at hand. */
const mostRows = 12;
/** No board is smaller or larger, m. */
const least = 0.02, most = 5;

interface Row {
  readonly nth: number;
  length: number;
  width: number;
  count: number;
  leftover: boolean;
  readonly fields: readonly {readonly name: 'length' | 'width'; readonly field: LengthField}[];
  readonly countField: CountField;
}

const columns = [{name: 'length', kind: 'length'}, {name: 'width', kind: 'length'}, {name: 'count', kind: 'count'}] as const;

/** Boards beside that of the design, and pieces left over: a short list that a reader edits. */
export class BoardsAtHand {
  readonly #host: GliderElement;
  #rows: readonly Row[] = [];
  #next = 1;
  #unread = false;
  #boards: readonly Board[] | undefined;

  constructor(host: GliderElement) { this.#host = host; }

  /** As an author wrote them: `400mm@300mm@2`. */
  read(boards: string | undefined, pieces: string | undefined): void {
    this.#unread = false;
    this.#rows = [{text: boards, leftover: false}, {text: pieces, leftover: true}].flatMap(({text, leftover}) => {
      const read = readList(text ?? '', columns);
      const items = read.ok ? read.value : [];
      const good = items.filter(({length = 0, width = 0, count = 0}) =>
        [length, width].every((side) => side >= least && side <= most) && Number.isInteger(count) && count >= 1 && count <= 99);
      this.#unread ||= !read.ok || good.length < items.length;
      return good.map(({length = 0, width = 0, count = 0}) => this.#row(length, width, count, leftover));
    }).slice(0, mostRows);
    this.#boards = undefined;
  }

  /** The same list until something in it changes. */
  get boards(): readonly Board[] {
    return this.#boards ??= this.#rows.map(({nth, length, width, count, leftover}) => ({id: `board ${String(nth)}`, length, width, count, leftover}));
  }

  get wrong(): boolean { return this.#rows.some(({fields, countField}) => countField.problem !== undefined || fields.some(({field}) => field.problem !== undefined)); }

  /** Whether the author's list could not be read, or not all of it. */
  get unread(): boolean { return this.#unread; }

  #row(length: number, width: number, count: number, leftover: boolean): Row {
    const nth = this.#next++;
    const row: Row = {
      nth, length, width, count, leftover,
      fields: (['length', 'width'] as const).map((name) => ({name, field: new LengthField(this.#host, `board-${String(nth)}-${name}`, {
        get: () => row[name], set: (value) => { row[name] = value; this.#boards = undefined; }, least: () => least, most: () => most,
      })})),
      countField: new CountField(this.#host, `board-${String(nth)}-count`, 99, () => row.count, (value) => {
        row.count = value;
        this.#changed();
      }),
    };
    return row;
  }

  #changed(): void {
    this.#boards = undefined;
    this.#host.requestUpdate();
  }

  #commit(): void {
    this.#changed();
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }

  render(disabled: boolean): TemplateResult {
    const words = this.#host.say(sheetQuestionWords);
    const inch = this.#host.system === 'inch';
    return html`<fieldset class="boards" ?disabled=${disabled}><legend>${words.others}</legend>
      ${this.#unread ? html`<p class="problem" part="problem">${words.unreadBoards}</p>` : nothing}
      ${this.#rows.map((row) => html`<div class="fields" role="group" aria-label=${words.nth(row.nth)}>
        ${row.fields.map(({name, field}) => field.render(words[name], disabled))}${row.countField.render(words.count, disabled)}
        <div class="field" part="field"><label for=${`field-board-${String(row.nth)}-kind`}>${words.kind}</label>
          <span class="q"><select id=${`field-board-${String(row.nth)}-kind`} .value=${live(row.leftover ? 'left' : 'board')} @change=${(e: Event) => {
            row.leftover = (e.target as HTMLSelectElement).value === 'left';
            this.#commit();
          }}>${(['left', 'board'] as const).map((kind) => html`<option value=${kind} ?selected=${row.leftover === (kind === 'left')}>${words.kinds[kind]}</option>`)}</select></span><span></span></div>
        <button type="button" class="remove" part="button" aria-label=${words.remove(row.nth)} @click=${() => {
          this.#rows = this.#rows.filter((each) => each !== row);
          this.#commit();
        }}>×</button></div>`)}
      ${this.#rows.length >= mostRows ? nothing : html`<button type="button" part="button" @click=${() => {
        this.#rows = [...this.#rows, inch ? this.#row(12 * 0.0254, 8 * 0.0254, 1, true) : this.#row(0.3, 0.2, 1, true)];
        this.#commit();
      }}>${words.add}</button>`}</fieldset>`;
  }
}
