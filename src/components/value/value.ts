import {css, html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {changeFrom} from '../../calc/design/change-from.js';
import {valueAt} from '../../calc/design/design.js';
import {isChoiceRow, isDimensionPath, isListRow, isNumberRow, rowOf} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Outcome} from '../../calc/problem.js';
import type {QuantityKind} from '../../calc/units/kinds.js';
import {writeListForReading} from '../../calc/units/list.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {derivedValue} from '../../calc/values.js';
import type {DerivedValue} from '../../calc/derived-value.js';
import {commonWords} from '../../messages/en/common.js';
import {dimensionWords} from '../../messages/en/dimensions.js';
import {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import {near} from '../base/near.js';
import {reckoned} from '../base/reckoned.js';
import {baseStyles} from '../base/styles.js';

/** The measurements on the finished plane that values about it depend on, by group. */
const measuredIn: Readonly<Record<string, RegExp>> = {
  flight: /^measured\.|^built\.(?!bow|leftTip|rightTip)/, balance: /^measured\.|^built\.tip/, mass: /^measured\.mass$|^built\.tip/,
};

/**
 * A live number inside a sentence: `<glider-value name="wing.span">30 cm</glider-value>`. The author's own text stands there until the
 * number is known, and again if it cannot be.
 *
 * @summary One number of a glider, live in a sentence.
 * @attr {string} name - A dimension (`wing.span`) or a value that follows from the glider (`wing.area`).
 * @attr {boolean} editable - Lets a reader change a dimension in place.
 * @attr {number} digits - Digits after the decimal mark.
 * @slot - The author's text, shown while there is no number.
 * @csspart value - The number as written.
 * @csspart input - The native input of an editable value.
 * @csspart problem - What is wrong with an entry.
 */
export class GliderValue extends GliderElement {
  static override properties = {
    ...GliderElement.properties,
    name: {type: String}, editable: {type: Boolean}, digits: {type: Number},
    _derived: {state: true, attribute: false},
  };

  static override styles = [baseStyles, css`
    :host { display: inline; container-type: normal; font: inherit; }
    input { font: inherit; color: inherit; background: none; border: 0; border-block-end: 1.5px solid var(--_accent); border-radius: 0; padding: 0; margin: 0; text-align: center; font-variant-numeric: tabular-nums; outline: none; }
    input { field-sizing: content; min-inline-size: 3ch; }
    input:focus-visible { outline: 2px solid var(--_accent); outline-offset: 2px; }
    input[aria-invalid='true'] { border-color: var(--_problem); }
    .stale { opacity: .55; user-select: none; -webkit-user-select: none; }
    .printed { display: none; }
    @media print { input, .stale, .problem { display: none; } .printed { display: inline; } }
  `];

  declare name: string | undefined;
  declare editable: boolean;
  declare digits: number | undefined;
  declare protected _derived: DerivedValue | undefined;

  #draft: string | undefined;
  #lastGood: string | undefined;
  #unknown = false;

  constructor() {
    super();
    this.editable = false;
  }

  /** The number in SI units, or why there is none. */
  get result(): Outcome<number> | undefined {
    const {name} = this;
    if (!name || this.link.status === 'missing' || this.link.status === 'seeking') return undefined;
    if (!isDimensionPath(name)) return this._derived?.of(this.state.design);
    const value = valueAt(this.state.design, name);
    return typeof value === 'number' ? {ok: true, value} : undefined;
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (!changed.has('name')) return;
    this._derived = undefined;
    this.#lastGood = undefined;
    this.#unknown = false;
    const {name} = this;
    if (!name || isDimensionPath(name)) return;
    derivedValue(name).then((derived) => {
      if (name !== this.name) return;
      this._derived = derived;
      if (!derived) { this.#unknown = true; this.requestUpdate(); }
    }, () => undefined);
  }

  override render(): TemplateResult {
    const {name} = this;
    if (this.link.status === 'missing' || this.link.status === 'seeking') return this.renderWithout();
    if (this.#unknown) return html`<slot></slot> <span class="problem" part="problem">${explain(this, {code: 'no-such-value', args: {name: name ?? ''}})}</span>`;
    if (name && isDimensionPath(name) && this.editable) {
      const row = rowOf(name);
      if (isNumberRow(row)) return this.#renderInput(name, row.kind);
    }
    // numbers of another glider than the author's would be wrong in the author's sentence
    if (this.state.unread) return html`<slot></slot>`;
    const text = this.#text();
    const refused = name && isDimensionPath(name) && this.state.refused[name];
    if (text === undefined || refused) {
      return this.#lastGood === undefined ? html`<slot></slot>` : html`<span part="value" class="stale">${this.#lastGood}</span>`;
    }
    this.#lastGood = text;
    const reads = Object.entries(measuredIn).find(([group]) => name?.startsWith(`${group}.`))?.[1];
    return html`<span part="value" title=${(reads && reckoned(this, (path) => reads.test(path))) ?? nothing}>${text}</span>`;
  }

  #text(): string | undefined {
    const {name, _derived: derived, result} = this;
    if (name && isDimensionPath(name)) {
      const row = rowOf(name);
      const value = valueAt(this.state.design, name);
      if (value === undefined) return undefined;
      if (isNumberRow(row)) return this.#written(value as number, row.kind);
      if (isListRow(row)) return writeListForReading(value as readonly Readonly<Record<string, number>>[], row.list, {system: this.system, decimal: this.decimal});
      if (isChoiceRow(row)) return this.say(dimensionWords)[name].choices?.[row.choices.indexOf(value as string)];
      return value as string;
    }
    if (!derived || !result?.ok) return undefined;
    const about = typeof derived.about === 'function' ? derived.about(this.state.design) : derived.about;
    // what is only about right is as round as the balance point writes it
    const round = about && derived.kind === 'length' && derived.digits === undefined && this.digits === undefined;
    const written = round ? near(this, result.value) : this.#written(result.value, derived.kind, derived.digits);
    return about ? this.say(commonWords).about(written) : written;
  }

  #written(value: number, kind: QuantityKind, usual?: number): string {
    const digits = this.digits === undefined || Number.isNaN(this.digits) ? usual : this.digits;
    return this.write(value, kind, {digits});
  }

  #renderInput(path: DimensionPath, kind: QuantityKind): TemplateResult {
    const value = valueAt(this.state.design, path) as number | undefined;
    const refused = this.state.refused[path];
    const problem = refused?.problem ?? this.state.problems.find((p) => p.path === path || p.also?.includes(path));
    const shown = this.#draft ?? refused?.text ?? (value === undefined ? '' : this.#written(value, kind));
    const label = this.say(commonWords).edit(this.say(dimensionWords)[path].label);
    return html`<span class="printed" aria-hidden="true">${value === undefined ? '' : this.#written(value, kind)}</span><input part="input" type="text" autocomplete="off" spellcheck="false" size=${Math.max(shown.length, 4)} aria-label=${label}
      aria-invalid=${problem ? 'true' : 'false'} aria-describedby="problem" .value=${live(shown)}
      @input=${(e: Event) => {
        this.#draft = (e.target as HTMLInputElement).value;
        this.ask([changeFrom(path, this.#draft, {bareUnit: usualUnit(kind, this.system), decimal: this.decimal})]);
      }}
      @change=${() => { this.#draft = undefined; this.requestUpdate(); this.dispatchEvent(new Event('change', {bubbles: true})); }}
      ><span id="problem">${problem ? html`<span class="problem" part="problem">${explain(this, problem)}</span>` : nothing}</span>`;
  }
}
