import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {GliderElement} from '../base/element.js';

/** What an optional field reads and keeps: an author's text until a reader writes another; `read` gives nothing for a text that will not do. */
export interface OptionalValue<T> {
  get(): T | string | null | undefined;
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

  /** What to work with; nothing where nothing is written or it will not do. */
  get value(): T | undefined { return this.#read(this.#given); }

  /** Whether what is typed, or what the author wrote, will not do. */
  get wrong(): boolean {
    const text = this.#draft ?? this.#given;
    return text.trim() !== '' && this.#read(text) === undefined;
  }

  get #given(): string {
    const given = this.#value.get() ?? '';
    return typeof given === 'string' ? given : this.#value.write(given);
  }

  #read(text: string): T | undefined { return text.trim() === '' ? undefined : this.#value.read(text); }

  /** `why` says what would do. */
  render(label: string, why: string, {disabled = false, hint = '', text = false} = {}): TemplateResult {
    const id = `field-${this.#name}`;
    const {value} = this;
    return html`<div class="field" part="field"><label for=${id}>${label}</label>
      <span class="q"><input id=${id} part="input" type="text" autocomplete="off" inputmode=${text ? 'text' : 'decimal'} placeholder=${hint} ?disabled=${disabled}
        .value=${live(this.#draft ?? (value === undefined ? this.#given : this.#value.write(value)))}
        aria-invalid=${this.wrong ? 'true' : 'false'} aria-describedby=${`${id}-problem`}
        @input=${(e: Event) => { this.#take((e.target as HTMLInputElement).value); }} @change=${() => { this.#committed(); }}></span>
      <span id=${`${id}-problem`}>${this.wrong ? html`<span class="problem" part="problem">${why}</span>` : ''}</span></div>`;
  }

  #take(text: string): void {
    this.#draft = text;
    if (!this.wrong) this.#value.set(this.#read(text));
    this.#host.requestUpdate();
  }

  #committed(): void {
    if (!this.wrong) this.#draft = undefined;
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }
}
