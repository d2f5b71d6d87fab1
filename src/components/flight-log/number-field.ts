import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {checkThrow, throwLimits, type ThrowNumber} from '../../calc/flight-log/throw-check.js';
import type {Problem} from '../../calc/problem.js';
import {readQuantity} from '../../calc/units/read.js';
import type {GliderElement} from '../base/element.js';
import {explainThrow, farUnit} from './written.js';

/** The field of one number of a throw: text as it is typed, empty for not measured. */
export class NumberField {
  readonly #host: GliderElement;
  readonly name: ThrowNumber;
  #typed = '';
  /** A number that was given or read, written in the reader's way, which may not say it in full. */
  #exact: number | undefined;
  /** Whether a person has left the field, so that what is wrong with it may be said. */
  #left = false;

  constructor(host: GliderElement, name: ThrowNumber) {
    this.#host = host;
    this.name = name;
  }

  get #unit(): string { return this.name === 'time' ? 's' : farUnit(this.#host); }

  /** Shows a number, in digits that read back the same to a thousandth. */
  show(value: number | undefined): void {
    this.#left = false;
    this.#exact = value;
    this.#typed = '';
  }

  get #text(): string {
    if (this.#exact === undefined) return this.#typed;
    const {kind} = throwLimits[this.name];
    return this.#host.write(this.#exact, kind, {unit: this.#unit, digits: 3, bare: true}).replace(/[.,]?0+$/, '');
  }

  /** The number, nothing where nothing is written, or what is wrong. */
  read(): {readonly value?: number | undefined; readonly problem?: Problem} {
    if (this.#exact !== undefined) return {value: this.#exact};
    if (this.#text.trim() === '') return {};
    const {kind} = throwLimits[this.name];
    const read = readQuantity(this.#text, kind, {bareUnit: this.#unit, decimal: this.#host.decimal});
    if (!read.ok) return {problem: {...read.problem, path: this.name}};
    const [problem] = checkThrow({[this.name]: read.value}).filter(({path, code}) => path === this.name && code !== 'throw-empty');
    return problem ? {problem} : {value: read.value};
  }

  /** From now on what is wrong is said. */
  leave(): void { this.#left = true; }

  /** What was typed in another way is written in the field's own. */
  #settle(): void {
    const {value} = this.read();
    if (value !== undefined) this.show(value);
    else this.#left = this.#text.trim() !== '';
    this.#host.requestUpdate();
  }

  render(label: string, also?: Problem): TemplateResult {
    const problem = this.#left ? this.read().problem ?? also : undefined;
    const id = `field-${this.name}`;
    return html`<div class="field" part="field"><label for=${id}>${label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" inputmode="decimal" enterkeyhint="done" .value=${live(this.#text)}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @input=${(e: Event) => { this.#typed = (e.target as HTMLInputElement).value; this.#exact = undefined; this.#host.requestUpdate(); }}
        @change=${() => { this.#settle(); }}><span class="unit" aria-hidden="true">${this.#unit}</span></span>
      <span id=${`${id}-problem`}>${problem ? html`<span class="problem" part="problem">${explainThrow(this.#host, problem)}</span>` : nothing}</span></div>`;
  }
}
