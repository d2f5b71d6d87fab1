import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {changeFrom} from '../../calc/design/change-from.js';
import {valueAt} from '../../calc/design/design.js';
import {isChoiceRow, isListRow, isNumberRow, rowOf} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {checkValue} from '../../calc/design/read-dimension.js';
import type {RefusedEntry} from '../../calc/design/store.js';
import type {Problem} from '../../calc/problem.js';
import type {QuantityKind} from '../../calc/units/kinds.js';
import {writeListForReading} from '../../calc/units/list.js';
import {readQuantity} from '../../calc/units/read.js';
import {unitFor, usualUnit} from '../../calc/units/kinds.js';
import {commonWords} from '../../messages/en/common.js';
import {dimensionWords} from '../../messages/en/dimensions.js';
import type {GliderElement} from './element.js';
import {explain} from './explain.js';
import {later} from './later.js';

const loadNotes = () => import('../../messages/en/dimension-notes.js');

export interface FieldOptions {
  readonly label?: string;
  readonly disabled?: boolean;
  /** Written as finely as something small is measured: tenths of a millimetre, or 1/64 in. */
  readonly fine?: boolean;
}

/** One number of one item of a list dimension, edited in a field of its own. */
export interface ItemOptions extends FieldOptions {
  readonly index: number;
  readonly name: string;
}

type Item = Readonly<Record<string, number>>;

/** How far one press of an arrow key goes, in the unit shown. */
const steps: Readonly<Record<string, number>> = {'in': 1 / 16, 'oz': 1 / 16, '°': 0.5, '%': 0.5, 'g/m²': 10};

/**
 * The fields of one element: native inputs in the element's own root, each labelled, with the unit inside and what is wrong beneath.
 *
 * What is being typed is kept as it is typed; everything else is written from the design in the reader's units.
 */
export class Fields {
  /** The path that a handle or a field has in hand now: both are lit together. */
  lit: DimensionPath | undefined;
  /** What the calculator itself found wrong, to be shown beside the fields it names. */
  found: readonly Problem[] = [];
  #troubled = false;
  #shown = new Set<string>();
  #asked = false;
  #host: GliderElement & {lock?: string};
  #drafts = new Map<string, string>();

  constructor(host: GliderElement) { this.#host = host; }

  /** To be called before the fields are rendered again. */
  begin(): void { this.#shown.clear(); }

  /** Whether a problem stands beside a field that was just rendered. */
  shows({path, also = []}: Problem): boolean { return [path, ...also].some((p) => p !== undefined && this.#shown.has(p)); }

  /** The field that fits the row of a path. */
  of(path: DimensionPath, options: FieldOptions = {}): TemplateResult {
    const row = rowOf(path);
    if (isChoiceRow(row)) return this.choice(path, options);
    return isNumberRow(row) ? this.number(path, options) : this.text(path, options);
  }

  number(path: DimensionPath, options: FieldOptions = {}): TemplateResult {
    const row = rowOf(path);
    if (!isNumberRow(row)) throw new TypeError(`${path} is no number`);
    const value = valueAt(this.#host.state.design, path) as number | undefined;
    return this.#input(path, path, options, {
      kind: row.kind, shown: value === undefined ? '' : this.#bare(value, row.kind, options.fine), value,
      take: (text) => { this.#host.ask([changeFrom(path, text, this.#reading(row.kind))]); },
      set: (next) => { if (!checkValue(path, next)) this.#host.askFor(path, next); },
    });
  }

  /** A field for one number of a list, such as the first crease. */
  item(path: DimensionPath, options: ItemOptions): TemplateResult {
    const row = rowOf(path);
    const field = isListRow(row) ? row.list.find(({name}) => name === options.name) : undefined;
    if (!field) throw new TypeError(`${path} has no ${options.name}`);
    const items = valueAt(this.#host.state.design, path) as readonly Item[];
    const value = items[options.index]?.[options.name];
    const names = isListRow(row) ? row.list.map(({name}) => name) : [];
    const replaced = (next: number): readonly Item[] => items.map((item, i) => (i === options.index ? {...item, [options.name]: next} : item));
    return this.#input(path, `${path}.${String(options.index)}.${options.name}`, options, {
      kind: field.kind, shown: value === undefined ? '' : this.#bare(value, field.kind), value,
      concerns: ({args = {}}) => args[options.name] === value || !names.some((name) => name in args),
      take: (text) => {
        const read = readQuantity(text, field.kind, this.#reading(field.kind));
        this.#host.ask([read.ok ? {path, value: replaced(read.value)} : {path, refused: {text, problem: {...read.problem, path}}}]);
      },
      set: (next) => { if (!checkValue(path, replaced(next))) this.#host.askFor(path, replaced(next)); },
    });
  }

  /** A field for a name or a whole list. */
  text(path: DimensionPath, options: FieldOptions = {}): TemplateResult {
    const row = rowOf(path);
    const value = valueAt(this.#host.state.design, path);
    const {system, decimal} = this.#host;
    return this.#input(path, path, options, {
      shown: isListRow(row) ? writeListForReading(value as readonly Item[], row.list, {system, decimal}) : value as string,
      take: (text) => { this.#host.ask([changeFrom(path, text, {decimal, ...(isListRow(row) && {bareUnit: row.list.map(({kind}) => usualUnit(kind, system)).join(' @ ')})})]); },
    });
  }

  choice(path: DimensionPath, {label, disabled = false}: FieldOptions = {}): TemplateResult {
    const row = rowOf(path);
    if (!isChoiceRow(row)) throw new TypeError(`${path} is no choice`);
    const words = this.#host.say(dimensionWords)[path];
    const value = valueAt(this.#host.state.design, path);
    const id = `field-${path}`;
    return html`<div class="field choice" part="field" @pointerenter=${this.#ask} @focusin=${this.#ask}>
      <label for=${id} title=${this.#note(path)}>${label ?? words.label}</label>
      <span class="q"><select id=${id} .value=${live(value as string)} ?disabled=${disabled}
        @change=${(e: Event) => { this.#host.askFor(path, (e.target as HTMLSelectElement).value); this.#committed(); }}>
        ${row.choices.map((choice, i) => html`<option value=${choice} ?selected=${choice === value}>${words.choices?.[i] ?? choice}</option>`)}
      </select></span>${this.#problems(path, id)}</div>`;
  }

  #input(path: DimensionPath, key: string, {label, disabled = false}: FieldOptions, field: {
    readonly kind?: QuantityKind; readonly shown: string; readonly value?: number | undefined;
    /** Whether a clash that names this dimension is about this number of it. */
    readonly concerns?: (problem: Problem) => boolean;
    readonly take: (text: string) => void; readonly set?: (value: number) => void;
  }): TemplateResult {
    const host = this.#host;
    const words = host.say(dimensionWords)[path];
    const id = `field-${key}`;
    const refused = this.#refusedAt(path, key);
    const draft = this.#drafts.get(key) ?? (key === path ? refused?.text : undefined);
    const unit = field.kind && usualUnit(field.kind, host.system);
    const wide = field.kind === undefined;
    return html`<div class="field ${wide ? 'wide' : ''} ${this.lit === path ? 'lit' : ''}" part="field" @pointerenter=${this.#ask} @focusin=${this.#ask}>
      <label for=${id} title=${this.#note(path)}>${label ?? words.label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" spellcheck="false" inputmode=${wide ? 'text' : 'decimal'}
        .value=${live(draft ?? field.shown)} ?disabled=${disabled} aria-invalid=${refused ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @focus=${() => { this.#light(path); }} @blur=${() => { this.#light(undefined); }}
        @input=${(e: Event) => {
          const {value} = e.target as HTMLInputElement;
          this.#drafts.set(key, value);
          field.take(value);
        }}
        @keydown=${(e: KeyboardEvent) => { this.#step(e, key, field); }}
        @change=${() => {
          if (key === path || !host.state.refused[path]) this.#drafts.delete(key);
          host.requestUpdate();
          this.#committed();
        }}>${unit ? html`<span class="unit">${unit}</span>` : nothing}</span>${this.#problems(path, id, key, field.concerns)}</div>`;
  }

  /** Arrow keys step by what a ruler or a scale can show; with Shift ten times as far. */
  #step(event: KeyboardEvent, key: string, {kind, value, set}: {readonly kind?: QuantityKind; readonly value?: number | undefined; readonly set?: (value: number) => void}): void {
    const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (!direction || !kind || !set || value === undefined) return;
    event.preventDefault();
    const symbol = usualUnit(kind, this.#host.system);
    const {si = 1, offset = 0} = unitFor(symbol, kind) ?? {};
    const step = (steps[symbol] ?? 1) * si * (event.shiftKey ? 10 : 1);
    this.#drafts.delete(key);
    set(offset + (Math.round((value - offset) / step) + direction) * step);
    this.#committed();
  }

  #light(path: DimensionPath | undefined): void {
    this.lit = path;
    this.#host.requestUpdate();
  }

  /** What a dimension means, once a reader has come near a field. */
  #note(path: DimensionPath): string | typeof nothing {
    const notes = this.#asked ? later(this.#host, loadNotes) : undefined;
    return notes ? this.#host.say(notes.dimensionNotes)[path] : nothing;
  }

  readonly #ask = (): void => {
    if (this.#asked) return;
    this.#asked = true;
    this.#host.requestUpdate();
  };

  #committed(): void {
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }

  #reading(kind: QuantityKind): {bareUnit: string; decimal: '.' | ','} {
    return {bareUnit: usualUnit(kind, this.#host.system), decimal: this.#host.decimal};
  }

  #bare(value: number, kind: QuantityKind, fine = false): string {
    return this.#host.write(value, kind, {bare: true, ...(fine && (this.#host.system === 'inch' ? {fraction: 64} : {digits: 1}))});
  }

  /** The entry refused at a path, where it was typed: a list is typed in one field, or number by number. */
  #refusedAt(path: DimensionPath, key: string): RefusedEntry | undefined {
    const elsewhere = [...this.#drafts.keys()].some((typed) => typed !== key && (typed === path || typed.startsWith(`${path}.`)));
    return elsewhere && !this.#drafts.has(key) ? undefined : this.#host.state.refused[path];
  }

  /** What is wrong with a path: the refused entry, else clashes with other values and what the calculator found. */
  #problems(path: DimensionPath, id: string, key: string = path, concerns: (problem: Problem) => boolean = () => true): TemplateResult {
    const {refused, problems} = this.#host.state;
    this.#shown.add(path);
    const entry = this.#refusedAt(path, key);
    const standing = entry ? [entry.problem] : refused[path] ? []
      : [...new Map([...problems, ...this.found].filter((p) => (p.path === path && concerns(p)) || p.also?.includes(path)).map((p) => [p.code, p])).values()];
    if (standing.length > 0) this.#troubled = true;
    return html`<span id=${`${id}-problem`}>${standing.map((p) => html`<span class="problem" part="problem">${explain(this.#host, p)}</span>`)}</span>`;
  }

  /** A disclosure for the fields that few readers need; it stands open while something in it is wrong, also with what is no dimension. */
  more(build: () => readonly TemplateResult[], wrong = false): TemplateResult {
    const before = this.#troubled;
    this.#troubled = false;
    const fields = build();
    const open = wrong || this.#troubled;
    this.#troubled ||= before;
    return html`<details class="more" ?open=${open}><summary>${this.#host.say(commonWords).more}</summary><div class="fields">${fields}</div></details>`;
  }
}
