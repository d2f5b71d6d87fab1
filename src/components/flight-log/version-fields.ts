import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {differences} from '../../calc/flight-log/differences.js';
import type {FlightLog, Version} from '../../calc/flight-log/log.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import {designOf} from './found.js';
import {differencesInWords} from './sentences.js';

export interface VersionActions {
  readonly current: Version | undefined;
  readonly choose: (id: string) => void;
  readonly rename: (version: Version, name: string) => void;
  readonly start: () => void;
  /** The version's glider is the one on the page after all. */
  readonly confirm: (version: Version) => void;
  /** Whether the next throw counts for a new version, since the glider on the page has moved on. */
  readonly movedOn: boolean;
}

/** In what the glider on the page differs from a version's; nothing where there is none to compare. */
export function movedOnFrom(host: GliderElement, version: Version): ReturnType<typeof differences> {
  const design = designOf(version);
  return host.link.linked && design ? differences(design, host.state.design) : [];
}

/** The next name: A, B … Z, A2 … */
export function nextName({versions}: FlightLog): string {
  const taken = new Set(versions.map(({name}) => name));
  for (let i = 0; ; i++) {
    const name = String.fromCharCode(65 + i % 26) + (i < 26 ? '' : String(Math.floor(i / 26) + 1));
    if (!taken.has(name)) return name;
  }
}

/** Which version is thrown, and the start of a new one. */
export class VersionFields {
  readonly #host: GliderElement;
  #draft: string | undefined;
  #of: string | undefined;

  constructor(host: GliderElement) { this.#host = host; }

  render(log: FlightLog, actions: VersionActions): TemplateResult {
    const host = this.#host;
    const words = host.say(flightLogWords);
    const {current} = actions;
    if (!current) return html``;
    if (this.#of !== current.id) {
      this.#draft = undefined;
      this.#of = current.id;
    }
    const wrong = (name: string): string | undefined =>
      (name === '' ? words.nameEmpty : log.versions.some((other) => other !== current && other.name === name) ? words.nameTaken : undefined);
    const problem = wrong((this.#draft ?? current.name).trim());
    return html`<div class="fields names">
      <div class="field" part="field"><label for="field-version">${words.thrown}</label><span class="q"><select id="field-version" .value=${live(current.id)}
        @change=${(e: Event) => { actions.choose((e.target as HTMLSelectElement).value); }}>${log.versions.map(({id, name: said}) => html`<option value=${id} ?selected=${id === current.id}>${said}</option>`)}</select></span><span></span></div>
      <div class="field" part="field"><label for="field-name">${words.name}</label><span class="q"><input id="field-name" part="input" type="text" autocomplete="off" maxlength="40" .value=${live(this.#draft ?? current.name)}
        aria-invalid=${problem ? 'true' : 'false'} aria-describedby="field-name-problem"
        @input=${(e: Event) => { this.#draft = (e.target as HTMLInputElement).value; host.requestUpdate(); }}
        @change=${(e: Event) => {
          const name = (e.target as HTMLInputElement).value.trim();
          if (wrong(name) !== undefined) return;
          this.#draft = undefined;
          if (name !== current.name) actions.rename(current, name);
        }}></span>
        <span id="field-name-problem">${problem ? html`<span class="problem" part="problem">${problem}</span>` : nothing}</span></div>
      <button type="button" part="button" @click=${() => { actions.start(); }}>${words.newVersion}</button></div>
      ${this.#renderChanged(log, current, actions)}`;
  }

  /** The glider on the page has moved on from the version that is thrown. */
  #renderChanged(log: FlightLog, current: Version, {start, confirm, movedOn}: VersionActions): TemplateResult | typeof nothing {
    const host = this.#host;
    const words = host.say(flightLogWords);
    const what = differencesInWords(host, movedOnFrom(host, current));
    return what.length === 0 ? nothing : html`<div class="changed"><p>${words.changed({name: words.version(current.name), what})} ${words.counts(words.version(movedOn ? nextName(log) : current.name))}</p><div class="buttons">
      <button type="button" part="button" @click=${() => { start(); }}>${words.itIs(nextName(log))}</button>
      <button type="button" part="button" @click=${() => { confirm(current); }}>${words.still(current.name)}</button></div></div>`;
  }
}
