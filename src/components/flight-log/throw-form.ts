import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Throw} from '../../calc/flight-log/log.js';
import {checkThrow, throwNumbers} from '../../calc/flight-log/throw-check.js';
import type {Problem} from '../../calc/problem.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import {NumberField} from './number-field.js';
import {Stopwatch} from './stopwatch.js';

type Word = 'path' | 'surface' | 'wind';

/** What a throw is written down with; the log gives it its name, version and time. */
export type Written = Omit<Throw, 'id' | 'version' | 'at' | 'out'>;

/** The watch and the fields of one throw. Height, ground and wind stay from throw to throw. */
export class ThrowForm {
  readonly #host: GliderElement;
  readonly #write: (written: Written, correcting: Throw | undefined) => void;
  readonly #numbers;
  readonly #watch: Stopwatch;
  #words: Readonly<Record<Word, string>> = {path: '', surface: '', wind: ''};
  #note = '';
  #correcting: Throw | undefined;
  #heightKnown = false;
  /** What is wrong with the numbers together. */
  #wrong: Problem | undefined;

  constructor(host: GliderElement, write: (written: Written, correcting: Throw | undefined) => void) {
    this.#host = host;
    this.#write = write;
    this.#numbers = {distance: new NumberField(host, 'distance'), time: new NumberField(host, 'time'), height: new NumberField(host, 'height')};
    this.#watch = new Stopwatch(host, (seconds) => { this.#numbers.time.show(seconds); });
  }

  get correcting(): Throw | undefined { return this.#correcting; }

  /** Takes a throw from the list to be corrected. */
  correct(one: Throw): void {
    this.#correcting = one;
    this.#heightKnown = true;
    for (const name of throwNumbers) this.#numbers[name].show(one[name]);
    this.#words = {path: one.path, surface: one.surface, wind: one.wind};
    this.#note = one.note;
    this.#watch.clear();
    this.#wrong = undefined;
    this.#host.requestUpdate();
    void this.#host.updateComplete.then(() => { this.#host.renderRoot.querySelector<HTMLElement>('#field-distance')?.focus(); });
  }

  /** Back to an empty form. */
  clear(): void {
    this.#correcting = undefined;
    this.#numbers.distance.show(undefined);
    this.#numbers.time.show(undefined);
    this.#words = {...this.#words, path: ''};
    this.#note = '';
    this.#watch.clear();
    this.#wrong = undefined;
    this.#host.requestUpdate();
  }

  readonly #submit = (event: Event): void => {
    event.preventDefault();
    for (const name of throwNumbers) this.#numbers[name].leave();
    const read = throwNumbers.map((name) => [name, this.#numbers[name].read()] as const);
    const numbers = Object.fromEntries(read.map(([name, {value}]) => [name, value]));
    const broken = read.some(([, {problem}]) => problem);
    this.#wrong = broken ? undefined : checkThrow(numbers)[0];
    this.#host.requestUpdate();
    if (broken || this.#wrong) {
      void this.#host.updateComplete.then(() => { this.#host.renderRoot.querySelector<HTMLElement>('form [aria-invalid=true]')?.focus(); });
      return;
    }
    const {path, surface, wind} = this.#words;
    const correcting = this.#correcting;
    const note = this.#note.trim();
    this.clear();
    this.#write({...numbers, path, surface, wind, note}, correcting);
  };

  render(versionFields: TemplateResult): TemplateResult {
    const words = this.#host.say(flightLogWords);
    if (!this.#heightKnown) {
      this.#heightKnown = true;
      this.#numbers.height.show(this.#host.state.design.launch.height);
    }
    const {distance, time, height} = this.#numbers;
    const also = (name: string): Problem | undefined => (this.#wrong?.path === name ? this.#wrong : undefined);
    return html`<form novalidate @submit=${this.#submit}>
      ${this.#watch.render()}
      <div class="entry"><div class="fields">${distance.render(words.distance, also('distance'))}${time.render(words.time, also('time'))}${height.render(words.height, also('height'))}
        ${this.#choice('path', words.path, words.paths)}${this.#choice('surface', words.surface, words.surfaces)}${this.#choice('wind', words.wind, words.winds)}
        <div class="field wide" part="field"><label for="field-note">${words.note}</label><span class="q"><input id="field-note" part="input" type="text" autocomplete="off" maxlength="300" .value=${live(this.#note)}
          @input=${(e: Event) => { this.#note = (e.target as HTMLInputElement).value; }}></span><span></span></div></div>
      ${versionFields}
      <p class="do-it"><button type="submit" class="main" part="button">${this.#correcting ? words.correct : words.write}</button>
        ${this.#correcting ? html`<button type="button" part="button" @click=${() => { this.clear(); }}>${words.leave}</button>` : nothing}</p></div>
    </form>`;
  }

  #choice(name: Word, label: string, choices: Readonly<Record<string, string>>): TemplateResult {
    const value = this.#words[name];
    const id = `field-${name}`;
    const own = value === '' || Object.hasOwn(choices, value) ? [] : [value];
    return html`<div class="field" part="field"><label for=${id}>${label}</label><span class="q"><select id=${id} .value=${live(value)}
      @change=${(e: Event) => { this.#words = {...this.#words, [name]: (e.target as HTMLSelectElement).value}; this.#host.requestUpdate(); }}>
      <option value="" ?selected=${value === ''}>${this.#host.say(flightLogWords).unsaid}</option>
      ${Object.entries(choices).map(([key, said]) => html`<option value=${key} ?selected=${key === value}>${said}</option>`)}
      ${own.map((said) => html`<option value=${said} selected>${said}</option>`)}</select></span><span></span></div>`;
  }
}
