import {css, html, nothing} from 'lit';
import type {ReactiveController, TemplateResult} from 'lit';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import type {Stepwise} from '../../calc/stepwise.js';
import type {Pen, XY} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import type {GliderElement} from './element.js';
import type {Fields} from './fields.js';
import type {FigureDrawing} from './figure-drawing.js';

/** A point of a figure that a pointer can take hold of; the keyboard's way to the same value is the field of its path. */
export interface Handle {
  readonly key: string;
  readonly path: DimensionPath;
  readonly at: XY;
  /** The changes that ask for the handle to be where the pointer is, in millimetres of the figure. */
  drag(to: XY): readonly Change[];
}

/**
 * Draws a figure for a width in pixels and tells the view it used. Pure but for the pen. One that takes more than a few milliseconds is drawn in
 * steps, in tasks after the one that changed what else is seen, so that none holds up a tap.
 */
export type Draw<T> = (pen: Pen, widthPx: number, data: T) => View | Stepwise<View>;

export interface FigureOptions<T> {
  /** The drawing module, loaded when the figure first comes into sight. */
  load(): Promise<Draw<T>>;
  /** What to draw; nothing when there is no good answer yet. */
  data(): T | undefined;
  /** `view` is how the figure lies on the screen now: a figure that is laid out anew at each width needs it. */
  handles?(data: T, view: View): readonly Handle[];
  /** About how tall the figure becomes, in pixels: the page keeps so much free, and holds still when the figure comes. */
  height?(widthPx: number): number;
}

/**
 * Figures out of sight are drawn one by one while the page has nothing else to do, once any figure has been seen: a print wants them all, also
 * those that come to the page when all others are drawn.
 */
const unseen = new Set<() => void>();
let anyDrawn = false;
let drawingAhead = false;
const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in window) requestIdleCallback(work, {timeout: 5000}); else setTimeout(work, 500);
};

function drawAhead(): void {
  if (drawingAhead || !anyDrawn) return;
  drawingAhead = true;
  whenIdle(() => {
    drawingAhead = false;
    const [see] = unseen;
    if (!see) return;
    see();
    drawAhead();
  });
}

/**
 * One figure of an element: an `<svg>` named as one image, and a sibling layer of handles for pointers only. What draws it is loaded when it comes
 * near, or after another figure of the page has come.
 */
export class Figure<T> implements ReactiveController {
  #host: GliderElement;
  #fields: Fields | undefined;
  #options: FigureOptions<T>;
  #drawing: FigureDrawing<T> | undefined;
  #loading = false;
  #svg: SVGSVGElement | undefined;
  #seen = false;
  #intersection: IntersectionObserver | undefined;
  #resize: ResizeObserver | undefined;
  #width = 0;

  constructor(host: GliderElement, options: FigureOptions<T>, fields?: Fields) {
    this.#host = host;
    this.#options = options;
    this.#fields = fields;
    host.addController(this);
  }

  hostConnected(): void { window.addEventListener('beforeprint', this.#print); }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.#print);
    unseen.delete(this.#see);
    this.#intersection?.disconnect();
    this.#resize?.disconnect();
    this.#svg = undefined;
  }

  /** The figure's place in the element; `name` says in words what the picture shows. */
  render(name: string): TemplateResult {
    return html`<figure part="figure"><div class="sheet"><svg direction="ltr" role="img" aria-label=${name}></svg>${this.#drawing?.renderHandles() ?? nothing}</div></figure>`;
  }

  hostUpdated(): void {
    const svg = this.#host.renderRoot.querySelector<SVGSVGElement>('.sheet > svg');
    if (!svg) return;
    if (svg !== this.#svg) {
      this.#svg = svg;
      this.#intersection?.disconnect();
      this.#resize?.disconnect();
      this.#intersection = new IntersectionObserver((entries) => { if (entries.some((e) => e.isIntersecting)) this.#see(); }, {rootMargin: '400px'});
      this.#intersection.observe(svg);
      if (!this.#seen) {
        unseen.add(this.#see);
        drawAhead();
      }
      requestAnimationFrame(() => { this.#reserve(svg); });   // before it is painted, when the page is laid out in any case
      this.#resize = new ResizeObserver(([entry]) => {
        const width = Math.round(entry?.contentRect.width ?? 0);
        if (width === 0 || width === this.#width) return;
        this.#width = width;
        // a figure that grows inside its own observer's call would be told of again at once
        requestAnimationFrame(() => { this.#redraw(); });
      });
      this.#resize.observe(svg.parentElement ?? svg);
    }
    this.#redraw();
  }

  /** A print waits for no other task. */
  readonly #print = (): void => {
    this.#see();
    if (this.#svg && this.#width > 0) this.#drawing?.drawAtOnce(this.#svg, this.#width);
  };

  /** Once it comes into sight, or at the latest when the page is printed. */
  readonly #see = (): void => {
    this.#seen = true;
    unseen.delete(this.#see);
    this.#intersection?.disconnect();
    this.#redraw();
  };

  #reserve(svg: SVGSVGElement): void {
    const width = svg.parentElement?.clientWidth ?? 0;
    if (!this.#drawing && width > 0) svg.style.setProperty('block-size', `${String(this.#options.height?.(width) ?? Math.round(width / 4) + 50)}px`);
  }

  #redraw(): void {
    if (!this.#seen || !this.#svg || this.#width === 0) return;
    if (this.#drawing) { this.#drawing.draw(this.#svg, this.#width); return; }
    if (this.#loading) return;
    this.#loading = true;
    void Promise.all([import('./figure-drawing.js'), this.#options.load()]).then(([{FigureDrawing: Drawing}, draw]) => {
      this.#drawing = new Drawing(this.#host, this.#options, draw, this.#fields);
      this.#redraw();
      anyDrawn = true;
      drawAhead();
    }, () => { this.#loading = false; });
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
