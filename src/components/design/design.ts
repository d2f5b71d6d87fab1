import {ReactiveElement} from 'lit';
import {changeFrom} from '../../calc/design/change-from.js';
import {defaultDesign, valueAt, withValues} from '../../calc/design/design.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {attributeOf, dimensionPaths} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {readDesignFile, writeDesignFile} from '../../calc/design/file.js';
import {createDesignStore} from '../../calc/design/store.js';
import type {Change, DesignHandle, DesignState, DesignStore} from '../../calc/design/store.js';
import type {Problem} from '../../calc/problem.js';
import type {SystemOfUnits} from '../../calc/units/kinds.js';
import {version} from '../../version.js';
import {MOVED, SEEK} from '../base/link.js';
import type {SeekDetail} from '../base/link.js';

const pathOf: ReadonlyMap<string, DimensionPath> = new Map(dimensionPaths.map((path) => [attributeOf(path), path]));

/**
 * One glider for a page: other elements read it and ask it for changes. It shows nothing itself; what it encloses is shown as
 * if it were not there.
 *
 * Its values come, each before the next, from: what a reader changed, its attributes (one for each dimension, such as `wing-span="640 mm"`), its file
 * (`src`, or a `<script type="application/json">` child), the defaults.
 *
 * @summary Owns a glider that elements on the page share.
 * @attr {string} src - Address of a design file; under a strict policy it needs `connect-src`.
 * @attr {string} units - `metric` or `inch`, for every element that reads this glider.
 * @fires glider-change - Whenever the glider becomes another; `detail` is the new revision.
 */
export class GliderDesignElement extends ReactiveElement {
  static readonly version: string = version;
  static override properties = {src: {type: String}, units: {type: String}};
  static override get observedAttributes(): string[] { return [...super.observedAttributes, 'id', ...pathOf.keys()]; }

  declare src: string | undefined;
  declare units: SystemOfUnits | undefined;

  #store: DesignStore = createDesignStore();
  #base: GliderDesign = defaultDesign;
  #children: MutationObserver | undefined;
  #fetching: AbortController | undefined;
  #fileText: string | undefined;
  /** Whether any file was read, or a glider set by a program. */
  #held = false;
  #ready = false;
  /** Its first file is still on the way: better the author's own numbers than ones that will be replaced. */
  #awaited = false;

  constructor() {
    super();
    this.#store.subscribe((state) => {
      if (this.#ready) this.dispatchEvent(new CustomEvent<DesignState>('glider-change', {detail: state, bubbles: true, composed: true}));
    });
  }

  /** What elements hold on to: the current revision, the way to ask, the way to hear. */
  get handle(): DesignHandle { return this.#store; }

  /** The glider as plain frozen data in SI units; set it to put another in its place. */
  get design(): GliderDesign { return this.#store.current().design; }
  set design(design: GliderDesign) {
    this.#base = withValues(defaultDesign, Object.fromEntries(dimensionPaths.map((path) => [path, valueAt(design, path)])));
    this.#held = true;
    this.#store.replace(this.#base);
  }

  /** The glider as the text of a design file; set it to read one. What cannot be read is in `state.notices` and `state.refused`. */
  get file(): string { return writeDesignFile(this.#store.current()); }
  set file(text: string) { this.#read(text); }

  get state(): DesignState { return this.#store.current(); }

  /** Asks for changes as an element would. */
  request(changes: readonly Change[]): readonly Problem[] { return this.#store.request(changes); }

  protected override createRenderRoot(): this { return this; }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#readInline();
    this.#children = new MutationObserver(() => { this.#readInline(); });
    this.#children.observe(this, {childList: true});
    this.#awaited = this.hasAttribute('src') && !this.hasUpdated;
    this.ownerDocument.addEventListener(SEEK, this.#offer);
    this.#tell();
    this.#ready = true;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#children?.disconnect();
    this.#fetching?.abort();
    this.ownerDocument.removeEventListener(SEEK, this.#offer);
    this.#tell();
  }

  override attributeChangedCallback(name: string, old: string | null, value: string | null): void {
    super.attributeChangedCallback(name, old, value);
    if (old === value) return;
    if (name === 'id') { if (this.isConnected) this.#tell(); return; }
    const path = pathOf.get(name);
    if (path) this.#store.request([this.#fromAttribute(path, value)]);
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('units')) this.#store.present(this.units === 'inch' || this.units === 'metric' ? this.units : undefined);
    if (changed.has('src') && this.src) void this.#fetch(this.src);
  }

  #fromAttribute(path: DimensionPath, text: string | null): Change {
    return text === null ? {path, value: valueAt(this.#base, path)} : changeFrom(path, text);
  }

  readonly #offer = (event: Event): void => {
    (event as CustomEvent<SeekDetail>).detail.offer(this, this.#awaited ? undefined : this.#store);
  };

  #tell(): void { this.ownerDocument.dispatchEvent(new CustomEvent(MOVED)); }

  #readInline(): void {
    const script = this.querySelector(':scope > script[type="application/json"]');
    const text = script?.textContent;
    if (text === undefined || text.trim() === '' || text === this.#fileText) return;
    // a classic script in the head meets an element whose child is not all there yet
    if (this.ownerDocument.readyState === 'loading' && !script?.nextSibling && !this.nextSibling) {
      this.ownerDocument.addEventListener('DOMContentLoaded', () => { this.#readInline(); }, {once: true});
      return;
    }
    this.#fileText = text;
    this.#read(text);
  }

  #read(text: string): void {
    const read = readDesignFile(text);
    if (!read.ok) { this.#keep(read.problems); return; }
    this.#held = true;
    const {design, texts, refused, problems} = read.value;
    this.#base = design;
    this.#store.replace(design, {texts, refused, notices: problems.filter((p) => p.path === undefined)});
    const attributes = [...pathOf].filter(([name]) => this.hasAttribute(name)).map(([name, path]) => this.#fromAttribute(path, this.getAttribute(name)));
    if (attributes.length > 0) this.#store.request(attributes);
  }

  /** A file that cannot be read leaves the glider as it is; where none was read before, it is no more than a stand-in. */
  #keep(notices: readonly Problem[]): void {
    const {design, texts, refused} = this.#store.current();
    this.#store.replace(design, {texts, refused, notices, ...(!this.#held && {unread: true})});
  }

  async #fetch(src: string): Promise<void> {
    this.#fetching?.abort();
    const fetching = this.#fetching = new AbortController();
    try {
      const response = await fetch(new URL(src, this.baseURI), {signal: fetching.signal});
      if (!response.ok) throw new Error(String(response.status));
      this.#read(await response.text());
    } catch {
      if (fetching.signal.aborted) return;
      this.#keep([{code: 'file-not-fetched', args: {src}}]);
    } finally {
      if (this.#awaited && !fetching.signal.aborted) {
        this.#awaited = false;
        if (this.isConnected) this.#tell();
      }
    }
  }
}
