import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type * as OnSupports from '../../calc/as-built/on-supports.js';
import type {Weighed} from '../../calc/as-built/on-supports.js';
import {sameValue, type GliderDesign} from '../../calc/design/design.js';
import {good, refused, type Outcome} from '../../calc/problem.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import {commonWords} from '../../messages/en/common.js';
import type {Calculator} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {emphasised} from '../base/emphasis.js';
import {explain} from '../base/explain.js';
import {OwnField} from '../base/own-field.js';

type Host = Pick<Calculator<unknown>, 'locked'> & GliderElement;
type How = 'fingers' | 'scale';
/** As typed: where it balances may not be known yet. */
type Known = Pick<Weighed, 'mass'> & Partial<Weighed>;

/** The plane as it is thrown on a scale, and its balance on two fingers or by what one of two supports carries. */
export class Weighing {
  #host: Host;
  #how: How = 'fingers';
  #under: 'front' | 'rear' = 'rear';
  #fitted = true;
  /** The weights listed when something was last typed here: what was on the plane then does not change with the list. */
  #weights: GliderDesign['ballast']['masses'] | undefined;
  readonly #mass: OwnField;
  readonly #at: OwnField;
  readonly #front: OwnField;
  readonly #rear: OwnField;
  readonly #reading: OwnField;

  constructor(host: Host) {
    this.#host = host;
    this.#mass = new OwnField(host, 'weighing-mass', 'mass', [1e-4, 10]);
    this.#at = new OwnField(host, 'weighing-at', 'length', [-2, 10]);
    this.#front = new OwnField(host, 'weighing-front', 'length', [-2, 10]);
    this.#rear = new OwnField(host, 'weighing-rear', 'length', [-2, 10]);
    this.#reading = new OwnField(host, 'weighing-reading', 'mass', [0, 10]);
  }

  /** What tells where it balances. */
  get #places(): readonly OwnField[] { return this.#how === 'scale' ? [this.#front, this.#rear, this.#reading] : [this.#at]; }

  /** Mass and balance behind the wing's front edge as typed, or the mass alone while nothing is said of the balance; nothing until that is all there. */
  #found({balanceOnSupports}: typeof OnSupports): Outcome<Known> | undefined {
    const {value: mass, wrong} = this.#mass;
    if (mass === undefined || wrong) return undefined;
    if (this.#places.every((field) => field.value === undefined && !field.wrong)) return good({mass});
    if (this.#places.some((field) => field.value === undefined || field.wrong)) return undefined;
    if (this.#how === 'fingers') return good({mass, at: this.#at.value ?? 0});
    const at = balanceOnSupports({front: this.#front.value ?? 0, rear: this.#rear.value ?? 0, scale: this.#under, reading: this.#reading.value ?? 0, mass});
    return at.ok ? good({mass, at: at.value}) : at;
  }

  /** The weights that were listed as the plane was weighed. */
  get #listed(): GliderDesign['ballast']['masses'] { return this.#weights ?? this.#host.state.design.ballast.masses; }

  /** Another plane, or one to be weighed anew: nothing typed counts any longer. */
  forget(): void {
    for (const field of [this.#mass, this.#at, this.#front, this.#rear, this.#reading]) field.set(undefined);
    this.#weights = undefined;
    this.#fitted = true;
    this.#host.requestUpdate();
  }

  /** Without the weights listed, where they are fitted: what a design keeps. */
  #bare({withoutWeights}: typeof OnSupports, plane: Known): Outcome<Known> {
    const {arrangement: {wingAt}} = this.#host.state.design, masses = this.#listed;
    if (!this.#fitted || masses.length === 0) return good(plane);
    const bare = withoutWeights({at: 0, ...plane}, masses.map(({mass, at}) => ({mass, at: at - wingAt})));
    return bare.ok && plane.at === undefined ? good({mass: bare.value.mass}) : bare;
  }

  render(lever: typeof OnSupports): TemplateResult {
    const host = this.#host, {form: words} = host.say(asBuiltWords);
    const again = (): void => {
      this.#weights = host.state.design.ballast.masses;
      host.requestUpdate();
    };
    const found = this.#found(lever), bare = found?.ok ? this.#bare(lever, found.value) : found ?? refused();
    const {masses} = host.state.design.ballast;
    const locked = bare.ok && (host.locked('measured.mass') || (bare.value.at !== undefined && host.locked('measured.balance')));
    return html`<div class="fields weighing">
      ${this.#mass.render(words.mass, again)}
      ${this.#select('weighing-how', words.how, this.#how, [['fingers', words.hows.fingers], ['scale', words.hows.scale]], (value) => { this.#how = value === 'fingers' ? 'fingers' : 'scale'; })}
      ${this.#how === 'fingers' ? this.#at.render(words.at, again) : html`${this.#front.render(words.front, again)}${this.#rear.render(words.rear, again)}
        ${this.#select('weighing-under', words.under, this.#under, [['rear', words.supports.rear], ['front', words.supports.front]], (value) => { this.#under = value === 'front' ? 'front' : 'rear'; })}
        ${this.#reading.render(words.reading, again)}`}
      ${masses.length === 0 ? nothing : html`<label class="fitted"><input id="weighing-fitted" type="checkbox" .checked=${live(this.#fitted)} @change=${(e: Event) => {
        this.#fitted = (e.target as HTMLInputElement).checked;
        again();
      }}> ${words.fitted}</label>`}
      <div class="wide said" aria-live="polite">${this.#said(found, bare)}</div>
      <button type="button" part="button" class="use" ?disabled=${!bare.ok || locked} @click=${() => { if (bare.ok) this.#take(bare.value); }}>${host.say(commonWords).use}</button>
      ${this.#how === 'scale' ? html`<p class="source wide">${words.hint}</p>` : nothing}</div>`;
  }

  #said(found: Outcome<Known> | undefined, bare: Outcome<Known>): TemplateResult | typeof nothing {
    const host = this.#host, {form: words} = host.say(asBuiltWords);
    if (!found) return nothing;
    const wrong = found.ok ? bare : found;
    if (!found.ok || !bare.ok) return html`<p class="problem" part="problem">${wrong.ok ? nothing : wrong.problems.map((problem) => explain(host, problem)).join(' ')}</p>`;
    const written = ({at, mass}: Known): {readonly at: string | undefined; readonly mass: string} => ({at: at === undefined ? undefined : host.write(at, 'length'), mass: host.write(mass, 'mass')});
    const {measured, ballast} = host.state.design, near = (a: number | undefined, b: number | undefined): boolean => a !== undefined && b !== undefined && Math.abs(a - b) < 1e-9;
    const kept = near(measured.mass, bare.value.mass) && (bare.value.at === undefined || near(measured.balance, bare.value.at));
    return html`<p>${emphasised([
      words.found(written(found.value)),
      ...bare.value === found.value ? [] : [words.bare({...written(bare.value), fitted: host.write(this.#listed.reduce((sum, {mass}) => sum + mass, 0), 'mass')})],
      kept ? words.isKept : words.willKeep(host.say(commonWords).use),
      ...sameValue(this.#listed, ballast.masses) ? [] : [words.since],
    ].join(' '))}</p>`;
  }

  #take({mass, at}: Known): void {
    this.#host.ask([{path: 'measured.mass', value: mass}, ...at === undefined ? [] : [{path: 'measured.balance', value: at} as const]]);
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }

  #select(id: string, label: string, chosen: string, options: readonly (readonly [value: string, label: string])[], choose: (value: string) => void): TemplateResult {
    return html`<div class="field choice" part="field"><label for=${id}>${label}</label><span class="q"><select id=${id} .value=${live(chosen)} @change=${(e: Event) => {
      choose((e.target as HTMLSelectElement).value);
      this.#host.requestUpdate();
    }}>${options.map(([value, name]) => html`<option value=${value} ?selected=${value === chosen}>${name}</option>`)}</select></span></div>`;
  }
}
