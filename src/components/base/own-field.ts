import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Problem} from '../../calc/problem.js';
import {usualUnit, type QuantityKind} from '../../calc/units/kinds.js';
import {readQuantity, type ReadOptions} from '../../calc/units/read.js';
import type {GliderElement} from './element.js';
import {explain} from './explain.js';

/** A quantity that belongs to the element and not to the design: what is typed, what it says, and what is wrong with it. */
export class OwnField {
  #host: GliderElement;
  #id: string;
  #kind: QuantityKind;
  #limits: readonly [number, number];
  #text: string | undefined;
  #problem: Problem | undefined;
  readonly #usual: number | undefined;
  readonly #unit: () => string;
  value: number | undefined;

  /** Emptied, it goes back to its usual value, or to none. `unit` is what it is shown in, where that is not the usual unit of its kind. */
  constructor(host: GliderElement, id: string, kind: QuantityKind, limits: readonly [number, number], value?: number, unit?: () => string) {
    this.#usual = value;
    this.#unit = unit ?? (() => usualUnit(kind, host.system));
    this.#host = host;
    this.#id = id;
    this.#kind = kind;
    this.#limits = limits;
    this.value = value;
  }

  get wrong(): boolean { return this.#problem !== undefined; }

  /** Reads a text; a bare number takes the unit shown beside the field. */
  read(text: string): void {
    const host = this.#host;
    if (text.trim() === '') {
      this.set(this.#usual);
      this.#text = text;
      host.requestUpdate();
      return;
    }
    this.#take(text, {bareUnit: this.#unit(), decimal: host.decimal});
    host.requestUpdate();
  }

  /** Takes what a page's author wrote: a dot and a unit. */
  give(text: string | null | undefined): void {
    if (text === undefined || text === null || text.trim() === '') this.set(this.#usual);
    else this.#take(text, {});
    if (!this.#problem) this.#text = undefined;
  }

  #take(text: string, options: ReadOptions): void {
    const read = readQuantity(text, this.#kind, options);
    const [least, most] = this.#limits;
    this.#text = text;
    this.#problem = !read.ok ? read.problem
      : read.value < least ? {code: 'dimension-too-small', args: {least, kind: this.#kind}} : read.value > most ? {code: 'dimension-too-large', args: {most, kind: this.#kind}} : undefined;
    if (read.ok && !this.#problem) this.value = read.value;
  }

  /** Takes a value that was found elsewhere. */
  set(value: number | undefined): void {
    this.#text = undefined;
    this.#problem = undefined;
    this.value = value;
  }

  /**
   * @param taken called once per edit that reads
   * @param found what the element finds wrong with a value that reads
   */
  render(label: string, taken: () => void = () => undefined, found?: Problem): TemplateResult {
    const host = this.#host, problem = this.#problem ?? found;
    const unit = this.#unit();
    const shown = this.#text ?? (this.value === undefined ? '' : host.write(this.value, this.#kind, {bare: true, unit}));
    return html`<div class="field" part="field"><label for=${this.#id}>${label}</label>
      <span class="q"><input id=${this.#id} part="input" type="text" autocomplete="off" spellcheck="false" inputmode="decimal" .value=${live(shown)}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby=${`${this.#id}-problem`}
        @input=${(e: Event) => { this.read((e.target as HTMLInputElement).value); if (!this.#problem) taken(); }}
        @change=${() => {
          if (!this.#problem) this.#text = undefined;
          host.requestUpdate();
          host.dispatchEvent(new Event('change', {bubbles: true}));
        }}><span class="unit">${unit}</span></span>
      <span id=${`${this.#id}-problem`}>${problem ? html`<span class="problem" part="problem">${explain(host, problem)}</span>` : nothing}</span></div>`;
  }
}
