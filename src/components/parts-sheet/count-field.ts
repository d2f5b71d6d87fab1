import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Problem} from '../../calc/problem.js';
import {readQuantity} from '../../calc/units/read.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';

/** A whole number that belongs to the element and not to the glider, with its field: what is typed stays until it will do. */
export class CountField {
  readonly #host: GliderElement;
  readonly #name: string;
  readonly #most: number;
  readonly #get: () => number | null | undefined;
  readonly #set: (value: number) => void;
  #draft: string | undefined;

  constructor(host: GliderElement, name: string, most: number, get: () => number | null | undefined, set: (value: number) => void) {
    this.#host = host;
    this.#name = name;
    this.#most = most;
    this.#get = get;
    this.#set = set;
  }

  /** The number to work with; one where the author gave none. */
  get value(): number { return this.#get() ?? 1; }

  /** Why there is no number to work with, if so. */
  get problem(): Problem | undefined {
    if (this.#draft === undefined) return this.#check(this.value);
    const read = readQuantity(this.#draft, 'count', {decimal: this.#host.decimal});
    return read.ok ? this.#check(read.value) : {...read.problem, path: this.#name};
  }

  #check(value: number): Problem | undefined {
    if (Number.isInteger(value) && value >= 1 && value <= this.#most) return undefined;
    return {code: 'count-out-of-range', path: this.#name, args: {least: 1, most: this.#most, kind: 'count'}};
  }

  render(label: string, disabled: boolean): TemplateResult {
    const {problem} = this;
    const id = `field-${this.#name}`;
    const shown = this.#draft ?? (Number.isFinite(this.value) ? String(this.value) : '');
    return html`<div class="field" part="field"><label for=${id}>${label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" inputmode="numeric" .value=${live(shown)} ?disabled=${disabled}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @input=${(e: Event) => { this.#take((e.target as HTMLInputElement).value); }}
        @keydown=${(e: KeyboardEvent) => { this.#step(e); }}
        @change=${() => { this.#committed(); }}></span>
      <span id=${`${id}-problem`}>${problem ? html`<span class="problem" part="problem">${explain(this.#host, problem)}</span>` : ''}</span></div>`;
  }

  #take(text: string): void {
    this.#draft = text;
    const read = readQuantity(text, 'count', {decimal: this.#host.decimal});
    if (read.ok && !this.#check(read.value)) this.#set(read.value);
    this.#host.requestUpdate();
  }

  #step(event: KeyboardEvent): void {
    const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    const next = (Number.isInteger(this.value) ? this.value : 0) + by;
    if (by === 0 || this.#check(next)) return;
    event.preventDefault();
    this.#draft = undefined;
    this.#set(next);
    this.#committed();
  }

  #committed(): void {
    if (!this.problem) this.#draft = undefined;
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }
}
