import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type * as OnSupports from '../../calc/as-built/on-supports.js';
import type {Weighed} from '../../calc/as-built/on-supports.js';
import {good, refused, type Outcome} from '../../calc/problem.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import {commonWords} from '../../messages/en/common.js';
import type {GliderElement} from '../base/element.js';
import {emphasised} from '../base/emphasis.js';
import {explain} from '../base/explain.js';
import {OwnField} from '../base/own-field.js';

type How = 'fingers' | 'scale';

/** The plane as it is thrown on a scale, and its balance on two fingers or by what one of two supports carries. */
export class Weighing {
  #host: GliderElement;
  #how: How = 'scale';
  #under: 'front' | 'rear' = 'rear';
  #fitted = true;
  readonly #mass: OwnField;
  readonly #at: OwnField;
  readonly #front: OwnField;
  readonly #rear: OwnField;
  readonly #reading: OwnField;

  constructor(host: GliderElement) {
    this.#host = host;
    this.#mass = new OwnField(host, 'weighing-mass', 'mass', [1e-4, 10]);
    this.#at = new OwnField(host, 'weighing-at', 'length', [-2, 10]);
    this.#front = new OwnField(host, 'weighing-front', 'length', [-2, 10]);
    this.#rear = new OwnField(host, 'weighing-rear', 'length', [-2, 10]);
    this.#reading = new OwnField(host, 'weighing-reading', 'mass', [0, 10]);
  }

  get #fields(): readonly OwnField[] { return this.#how === 'scale' ? [this.#mass, this.#front, this.#rear, this.#reading] : [this.#mass, this.#at]; }

  /** Mass and balance behind the wing's front edge as typed; nothing until all of it is there. */
  #found({balanceOnSupports}: typeof OnSupports): Outcome<Weighed> | undefined {
    if (this.#fields.some(({value, wrong}) => value === undefined || wrong)) return undefined;
    const mass = this.#mass.value ?? 0;
    if (this.#how === 'fingers') return good({mass, at: this.#at.value ?? 0});
    const at = balanceOnSupports({front: this.#front.value ?? 0, rear: this.#rear.value ?? 0, scale: this.#under, reading: this.#reading.value ?? 0, mass});
    return at.ok ? good({mass, at: at.value}) : at;
  }

  /** Without the weights listed, where they are fitted: what a design keeps. */
  #bare({withoutWeights}: typeof OnSupports, plane: Weighed): Outcome<Weighed> {
    const {ballast: {masses}, arrangement: {wingAt}} = this.#host.state.design;
    return this.#fitted && masses.length > 0 ? withoutWeights(plane, masses.map(({mass, at}) => ({mass, at: at - wingAt}))) : good(plane);
  }

  render(lever: typeof OnSupports, locked: boolean): TemplateResult {
    const host = this.#host, {form: words} = host.say(asBuiltWords);
    const again = (): void => { host.requestUpdate(); };
    const found = this.#found(lever), bare = found?.ok ? this.#bare(lever, found.value) : found ?? refused();
    const {masses} = host.state.design.ballast;
    return html`<div class="fields weighing">
      ${this.#select('weighing-how', words.how, this.#how, [['scale', words.hows.scale], ['fingers', words.hows.fingers]], (value) => { this.#how = value === 'fingers' ? 'fingers' : 'scale'; })}
      ${this.#mass.render(words.mass, again)}
      ${this.#how === 'fingers' ? this.#at.render(words.at, again) : html`${this.#front.render(words.front, again)}${this.#rear.render(words.rear, again)}
        ${this.#select('weighing-under', words.under, this.#under, [['rear', words.supports.rear], ['front', words.supports.front]], (value) => { this.#under = value === 'front' ? 'front' : 'rear'; })}
        ${this.#reading.render(words.reading, again)}`}
      ${masses.length === 0 ? nothing : html`<label class="fitted"><input id="weighing-fitted" type="checkbox" .checked=${live(this.#fitted)} @change=${(e: Event) => {
        this.#fitted = (e.target as HTMLInputElement).checked;
        host.requestUpdate();
      }}> ${words.fitted}</label>`}
      <div class="wide said" aria-live="polite">${this.#said(found, bare)}</div>
      <button type="button" part="button" class="use" ?disabled=${!bare.ok || locked} @click=${() => { if (bare.ok) this.#take(bare.value); }}>${host.say(commonWords).use}</button>
      ${this.#how === 'scale' ? html`<p class="source wide">${words.hint}</p>` : nothing}</div>`;
  }

  #said(found: Outcome<Weighed> | undefined, bare: Outcome<Weighed>): TemplateResult | typeof nothing {
    const host = this.#host, {form: words} = host.say(asBuiltWords);
    if (!found) return nothing;
    const wrong = found.ok ? bare : found;
    if (!found.ok || !bare.ok) return html`<p class="problem" part="problem">${wrong.ok ? nothing : wrong.problems.map((problem) => explain(host, problem)).join(' ')}</p>`;
    const written = ({at, mass}: Weighed): {readonly at: string; readonly mass: string} => ({at: host.write(at, 'length'), mass: host.write(mass, 'mass')});
    return html`<p>${emphasised(words.found(written(found.value)))} ${bare.value === found.value ? nothing : words.foundBare(written(bare.value))}</p>`;
  }

  #take({mass, at}: Weighed): void {
    this.#host.ask([{path: 'measured.mass', value: mass}, {path: 'measured.balance', value: at}]);
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }

  #select(id: string, label: string, chosen: string, options: readonly (readonly [value: string, label: string])[], choose: (value: string) => void): TemplateResult {
    return html`<div class="field choice" part="field"><label for=${id}>${label}</label><span class="q"><select id=${id} .value=${live(chosen)} @change=${(e: Event) => {
      choose((e.target as HTMLSelectElement).value);
      this.#host.requestUpdate();
    }}>${options.map(([value, name]) => html`<option value=${value} ?selected=${value === chosen}>${name}</option>`)}</select></span></div>`;
  }
}
