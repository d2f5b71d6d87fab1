import {html, LitElement, nothing} from 'lit';
import type {PropertyDeclarations, PropertyValues, TemplateResult} from 'lit';
import type {DimensionPath, DimensionValue} from '../../calc/design/dimensions.js';
import {changeFrom} from '../../calc/design/change-from.js';
import {defaultDesign, valueAt} from '../../calc/design/design.js';
import {createDesignStore} from '../../calc/design/store.js';
import type {Change, DesignState, DesignStore} from '../../calc/design/store.js';
import type {QuantityKind, SystemOfUnits} from '../../calc/units/kinds.js';
import {writeQuantity} from '../../calc/units/write.js';
import type {WriteOptions} from '../../calc/units/write.js';
import {commonWords} from '../../messages/en/common.js';
import {arrivals, decimalMark, loadWords, wordsFor} from '../../messages/speaker.js';
import type {Topic} from '../../messages/topic.js';
import {version} from '../../version.js';
import {DesignLink} from './link.js';
import type {DesignSource} from './link.js';
import {langAround, unitsOf, watchLang} from './surroundings.js';

/** The dimensions that a calculator on its own takes as short attributes: `chord` -> `wing.chord`. */
export type ShortNames = Readonly<Record<string, DimensionPath>>;

/** Lit's property table for a set of short names. */
export const shortProperties = (names: ShortNames): PropertyDeclarations =>
  Object.fromEntries(Object.keys(names).map((name) => [name, {type: String, attribute: name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}]));

/**
 * What every element that reads a glider shares: which design it belongs to, whose language and units it speaks, and how
 * it asks for a change.
 *
 * A calculator alone is a calculator with a private design, so there is one way of the data: attributes, fields and
 * handles all ask the design, and each revision renders the element once.
 *
 * @fires input - While a person types or drags; from the native input, composed.
 * @fires change - Once per committed edit.
 */
export class GliderElement extends LitElement {
  static readonly version: string = version;
  static readonly shortNames: ShortNames = {};

  static override properties: PropertyDeclarations = {
    design: {attribute: 'design'},
    units: {type: String},
  };

  /** The id of a `<glider-design>` on the page, or a design's handle; without it the nearest enclosing one. */
  declare design: DesignSource | undefined;
  /** `metric` or `inch`; otherwise the design's, otherwise the language's. */
  declare units: SystemOfUnits | undefined;

  #own: DesignStore | undefined;
  #warned = false;
  #unwatch: (() => void) | undefined;
  #awaited = new Set<Promise<unknown>>();
  #words = new WeakSet<Promise<boolean>>();
  readonly link: DesignLink = new DesignLink(this, () => (this.#own ??= createDesignStore()));

  /** The revision that this element shows. */
  get state(): DesignState { return this.link.state; }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#unwatch = watchLang(() => { this.requestUpdate(); });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#unwatch?.();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const names = (this.constructor as typeof GliderElement).shortNames;
    const set = Object.keys(names).filter((name) => changed.has(name) && (this as Record<string, unknown>)[name] !== undefined);
    if (changed.has('design')) this.link.seek();
    if (set.length === 0) return;
    const used = set.filter((name) => (this as Record<string, unknown>)[name] !== null);
    if (this.link.status !== 'private' && used.length > 0) this.#warnOnce(used);
    // kept for the private design all the same, so that they count again when the element leaves the page's design
    this.#own ??= createDesignStore();
    this.#own.request(set.flatMap((name) => {
      const path = names[name];
      const text = (this as Record<string, unknown>)[name];
      // Lit gives null for an attribute taken away
      return !path ? [] : text === null ? [{path, value: valueAt(defaultDesign, path)}] : typeof text === 'string' ? [changeFrom(path, text)] : [];
    }));
  }

  #warnOnce(names: readonly string[]): void {
    if (this.#warned) return;
    this.#warned = true;
    console.warn(`<${this.localName}> belongs to a design, so its own ${names.join(', ')} is not used.`);
  }

  /** What the element is to have before its rendering counts as complete. */
  await(arrival: Promise<unknown>): void {
    this.#awaited.add(arrival);
    void arrival.finally(() => { this.#awaited.delete(arrival); });
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    let complete = await super.getUpdateComplete();
    while (this.#awaited.size > 0) {
      await Promise.all(this.#awaited);
      complete = await super.getUpdateComplete();
    }
    return complete;
  }

  /** The reader's language here and now. */
  get speech(): string { return this.isConnected ? langAround(this) : this.getAttribute('lang') ?? 'en'; }
  get system(): SystemOfUnits {
    return this.units === 'inch' || this.units === 'metric' ? this.units : this.state.units ?? unitsOf(this.speech);
  }
  get decimal(): '.' | ',' { return decimalMark(this.speech); }
  /** Language, units and the words that have arrived: what was written for one reader is written anew for another. */
  get reader(): string { return `${this.speech} ${this.system} ${String(arrivals())}`; }

  /** The words of a topic in the reader's language; renders again once they have been loaded. */
  say<T>(topic: Topic<T>): T {
    const lang = this.speech;
    const missing = loadWords(topic, lang);
    if (missing && this.isConnected && !this.#words.has(missing)) {
      this.#words.add(missing);
      this.await(missing.then((arrived) => { if (arrived) this.requestUpdate(); }, () => undefined));
    }
    return wordsFor(topic, lang);
  }

  /** A quantity as this reader reads it. */
  write(value: number, kind: QuantityKind, options: WriteOptions = {}): string {
    return writeQuantity(value, kind, {system: this.system, decimal: this.decimal, ...options});
  }

  /** Asks the design for changes that a person made in this element. */
  ask(changes: readonly Change[]): void { this.link.request(changes); }

  /** Asks for one dimension at a value in SI units. */
  askFor(path: DimensionPath, value: DimensionValue): void { this.ask([{path, value}]); }

  /** What stands here while there is no glider to show: the author's own content, a dash, or why not. */
  protected renderWithout(): TemplateResult {
    const words = this.say(commonWords);
    return html`<slot>${words.dash}</slot>${this.link.status === 'missing' && typeof this.design === 'string'
      ? html` <span class="problem" part="problem">${words.noDesign(this.design)}</span>` : nothing}`;
  }
}
