import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {GliderElement} from '../base/element.js';

/** What an optional field reads and keeps: `read` gives nothing for a text that will not do. */
export interface OptionalValue<T> {
  get(): T | undefined;
  set(value: T | undefined): void;
  read(text: string): T | undefined;
  write(value: T): string;
}

/** A field of the element's own that may stay empty: what is typed stays until it will do. */
export class OptionalField<T> {
  readonly #host: GliderElement;
  readonly #name: string;
  readonly #value: OptionalValue<T>;
  #draft: string | undefined;

  constructor(host: GliderElement, name: string, value: OptionalValue<T>) {
    this.#host = host;
    this.#name = name;
    this.#value = value;
  }

  /** Whether what is typed will not do. */
  get wrong(): boolean { return this.#draft !== undefined && this.#draft.trim() !== '' && this.#value.read(this.#draft) === undefined; }

  /** `why` says what would do. */
  render(label: string, why: string, {disabled = false, hint = '', text = false} = {}): TemplateResult {
    const id = `field-${this.#name}`;
    const value = this.#value.get();
    return html`<div class="field" part="field"><label for=${id}>${label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" inputmode=${text ? 'text' : 'decimal'} placeholder=${hint} ?disabled=${disabled}
        .value=${live(this.#draft ?? (value === undefined ? '' : this.#value.write(value)))}
        aria-invalid=${this.wrong ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @input=${(e: Event) => { this.#take((e.target as HTMLInputElement).value); }} @change=${() => { this.#committed(); }}></span>
      <span id=${`${id}-problem`}>${this.wrong ? html`<span class="problem" part="problem">${why}</span>` : ''}</span></div>`;
  }

  #take(text: string): void {
    this.#draft = text;
    if (!this.wrong) this.#value.set(text.trim() === '' ? undefined : this.#value.read(text));
    this.#host.requestUpdate();
  }

  #committed(): void {
    if (!this.wrong) this.#draft = undefined;
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }
}
