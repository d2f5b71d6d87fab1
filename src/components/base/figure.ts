import {css, html, nothing} from 'lit';
import type {ReactiveController, TemplateResult} from 'lit';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import type {Pen, XY} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import type {GliderElement} from './element.js';
import type {Fields} from './fields.js';

/** A point of a figure that a pointer can take hold of; the keyboard's way to the same value is the field of its path. */
export interface Handle {
  readonly key: string;
  readonly path: DimensionPath;
  readonly at: XY;
  /** The changes that ask for the handle to be where the pointer is, in millimetres of the figure. */
  drag(to: XY): readonly Change[];
}

/** Draws a figure for a width in pixels and tells the view it used. Pure but for the pen. */
export type Draw<T> = (pen: Pen, widthPx: number, data: T) => View;

export interface FigureOptions<T> {
  /** The drawing module, loaded when the figure first comes into sight. */
  load(): Promise<Draw<T>>;
  /** What to draw; nothing when there is no good answer yet. */
  data(): T | undefined;
  /** `view` is how the figure lies on the screen now: a figure that is laid out anew at each width needs it. */
  handles?(data: T, view: View): readonly Handle[];
}

let figures = 0;

/** One figure of an element: an `<svg>` named as one image, and a sibling layer of handles for pointers only. */
export class Figure<T> implements ReactiveController {
  #host: GliderElement;
  #fields: Fields | undefined;
  #options: FigureOptions<T>;
  #pen: Pen | undefined;
  #draw: Draw<T> | undefined;
  #loading: Promise<void> | undefined;
  #svg: SVGSVGElement | undefined;
  #seen = false;
  #intersection: IntersectionObserver | undefined;
  #resize: ResizeObserver | undefined;
  #width = 0;
  #view: View | undefined;
  #drawn: readonly [T, number, string] | undefined;
  #holding: string | undefined;

  constructor(host: GliderElement, options: FigureOptions<T>, fields?: Fields) {
    this.#host = host;
    this.#options = options;
    this.#fields = fields;
    host.addController(this);
  }

  hostConnected(): void { window.addEventListener('beforeprint', this.#see); }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.#see);
    this.#intersection?.disconnect();
    this.#resize?.disconnect();
    this.#svg = undefined;
    this.#pen = undefined;
    this.#drawn = undefined;
  }

  /** The figure's place in the element; `name` says in words what the picture shows. */
  render(name: string): TemplateResult {
    const data = this.#options.data();
    return html`<figure part="figure"><div class="sheet"><svg direction="ltr" role="img" aria-label=${name}></svg>${data === undefined || !this.#view ? nothing
      : html`<div class="handles" aria-hidden="true">${(this.#options.handles?.(data, this.#view) ?? []).map((handle) => html`<div class="handle ${this.#fields?.lit === handle.path || this.#holding === handle.key ? 'lit' : ''}" data-key=${handle.key}
          @pointerdown=${(e: PointerEvent) => { this.#take(e, handle.key); }}></div>`)}</div>`}</div></figure>`;
  }

  hostUpdated(): void {
    const svg = this.#host.renderRoot.querySelector<SVGSVGElement>('.sheet > svg');
    if (!svg) return;
    if (svg !== this.#svg) {
      this.#svg = svg;
      this.#pen = undefined;
      this.#drawn = undefined;
      this.#intersection?.disconnect();
      this.#resize?.disconnect();
      this.#intersection = new IntersectionObserver((entries) => { if (entries.some((e) => e.isIntersecting)) this.#see(); }, {rootMargin: '200px'});
      this.#intersection.observe(svg);
      this.#resize = new ResizeObserver(([entry]) => {
        const width = Math.round(entry?.contentRect.width ?? 0);
        if (width > 0 && width !== this.#width) { this.#width = width; this.#redraw(); }
      });
      this.#resize.observe(svg.parentElement ?? svg);
    }
    this.#redraw();
  }

  /** Once it comes into sight, or at the latest when the page is printed. */
  readonly #see = (): void => {
    this.#seen = true;
    this.#intersection?.disconnect();
    this.#redraw();
  };

  #redraw(): void {
    if (!this.#seen || !this.#svg || this.#width === 0) return;
    if (!this.#draw) {
      this.#loading ??= Promise.all([import('../../drawing/pen.js'), import('../../drawing/ink.js'), this.#options.load()]).then(([{Pen: Made}, {screenInk}, draw]) => {
        this.#make = (svg) => new Made(svg, screenInk, `glider-figure-${String(++figures)}`);
        this.#draw = draw;
        this.#redraw();
      });
      return;
    }
    const data = this.#options.data();
    if (data === undefined) return;
    const lang = this.#host.speech + this.#host.system;
    if (this.#drawn && this.#drawn[0] === data && this.#drawn[1] === this.#width && this.#drawn[2] === lang) { this.#place(data); return; }
    this.#pen ??= this.#make?.(this.#svg);
    if (!this.#pen) return;
    const first = !this.#view;
    this.#view = this.#draw(this.#pen, this.#width, data);
    this.#drawn = [data, this.#width, lang];
    if (first) this.#host.requestUpdate();   // handles can be placed now
    this.#place(data);
  }

  #make: ((svg: SVGSVGElement) => Pen) | undefined;

  #place(data: T): void {
    const view = this.#view;
    if (!view) return;
    const handles = this.#options.handles?.(data, view) ?? [];
    for (const node of this.#host.renderRoot.querySelectorAll<HTMLElement>('.handle')) {
      const handle = handles.find(({key}) => key === node.dataset['key']);
      if (!handle) continue;
      node.style.setProperty('left', `${String((handle.at.x - view.box.x) / view.mmPerPx)}px`);
      node.style.setProperty('top', `${String((handle.at.y - view.box.y) / view.mmPerPx)}px`);
    }
  }

  #take(event: PointerEvent, key: string): void {
    const node = event.currentTarget as HTMLElement;
    const view = this.#view;
    const sheet = node.closest('.sheet');
    if (!view || !sheet || event.button !== 0) return;
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    this.#holding = key;
    const move = (e: PointerEvent): void => {
      const data = this.#options.data();
      const now = this.#view ?? view;
      const handle = data === undefined ? undefined : this.#options.handles?.(data, now).find((h) => h.key === key);
      if (!handle) return;
      const corner = sheet.getBoundingClientRect();
      const to = {x: now.box.x + (e.clientX - corner.left) * now.mmPerPx, y: now.box.y + (e.clientY - corner.top) * now.mmPerPx};
      if (this.#fields) this.#fields.lit = handle.path;
      this.#host.ask(handle.drag(to));
      this.#host.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    };
    const drop = (): void => {
      node.removeEventListener('pointermove', move);
      node.removeEventListener('pointerup', drop);
      node.removeEventListener('pointercancel', drop);
      this.#holding = undefined;
      if (this.#fields) this.#fields.lit = undefined;
      this.#host.requestUpdate();
      this.#host.dispatchEvent(new Event('change', {bubbles: true}));
    };
    node.addEventListener('pointermove', move);
    node.addEventListener('pointerup', drop);
    node.addEventListener('pointercancel', drop);
    this.#host.requestUpdate();
  }
}

export const figureStyles = css`
  figure { margin: 0; }
  .sheet { position: relative; }
  .sheet svg { display: block; inline-size: 100%; block-size: auto; overflow: visible; font-family: inherit; }
  .handles { position: absolute; inset: 0; pointer-events: none; }
  .handle { position: absolute; inline-size: 44px; block-size: 44px; margin: -22px 0 0 -22px; pointer-events: auto; cursor: grab; touch-action: none; display: grid; place-items: center; }
  .handle::before { content: ""; inline-size: 13px; block-size: 13px; border-radius: 50%; background: var(--_accent); border: 2px solid var(--_paper); box-sizing: content-box; }
  .handle:hover::before, .handle.lit::before { outline: 2px solid var(--_accent); outline-offset: 1px; }
  .handle:active { cursor: grabbing; }
  @media (forced-colors: active) { .handle::before { background: Highlight; } }
`;
