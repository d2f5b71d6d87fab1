import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Problem} from '../../calc/problem.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {readQuantity} from '../../calc/units/read.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';

/** A length that belongs to the element and not to the glider, in m, and how it is kept. */
export interface OwnLength {
  get(): number;
  set(value: number): void;
  least(): number;
  most(): number;
}

/** The field of such a length: what is typed stays until it will do. */
export class LengthField {
  readonly #host: GliderElement;
  readonly #name: string;
  readonly #own: OwnLength;
  #draft: string | undefined;

  constructor(host: GliderElement, name: string, own: OwnLength) {
    this.#host = host;
    this.#name = name;
    this.#own = own;
  }

  /** Why what is typed is not what is worked with, if so. */
  get problem(): Problem | undefined {
    const read = this.#draft === undefined ? undefined : this.#read(this.#draft);
    return read && (read.ok ? this.#check(read.value) : {...read.problem, path: this.#name});
  }

  #read(text: string): ReturnType<typeof readQuantity> {
    return readQuantity(text, 'length', {bareUnit: usualUnit('length', this.#host.system), decimal: this.#host.decimal});
  }

  #check(value: number): Problem | undefined {
    const least = this.#own.least(), most = this.#own.most();
    if (value < least) return {code: 'dimension-too-small', path: this.#name, args: {least}};
    return value > most ? {code: 'dimension-too-large', path: this.#name, args: {most}} : undefined;
  }

  render(label: string, disabled: boolean, problem: Problem | undefined = this.problem): TemplateResult {
    const host = this.#host;
    const id = `field-${this.#name}`;
    return html`<div class="field" part="field"><label for=${id}>${label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" inputmode="decimal" .value=${live(this.#draft ?? this.#shown())} ?disabled=${disabled}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @input=${(e: Event) => { this.#take((e.target as HTMLInputElement).value); }}
        @change=${() => { this.#committed(); }}><span class="unit" aria-hidden="true">${usualUnit('length', host.system)}</span></span>
      <span id=${`${id}-problem`}>${problem ? html`<span class="problem" part="problem">${explain(host, problem)}</span>` : ''}</span></div>`;
  }

  /** To a tenth of a millimetre or a 64th of an inch: finer than a box is measured. */
  #shown(): string {
    const value = this.#own.get();
    const tenths = Math.round(value * 1e4);
    return this.#host.write(value, 'length', {bare: true, ...this.#host.system === 'inch' ? {fraction: 64} : {digits: tenths % 10 === 0 ? 0 : 1}});
  }

  #take(text: string): void {
    this.#draft = text;
    const read = this.#read(text);
    if (read.ok && !this.#check(read.value)) this.#own.set(read.value);
    this.#host.requestUpdate();
  }

  #committed(): void {
    if (!this.problem) this.#draft = undefined;
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }
}
