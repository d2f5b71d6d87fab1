import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {finished, type Stepwise} from '../../calc/stepwise.js';
import {screenInk} from '../../drawing/ink.js';
import {Pen} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import type {GliderElement} from './element.js';
import type {Fields} from './fields.js';
import type {Draw, FigureOptions, Handle} from './figure.js';
import {ownTask} from './own-task.js';

let figures = 0;

/** So long is drawn in one task, ms. */
const slice = 10;

interface Asked<T> {
  readonly svg: SVGSVGElement;
  readonly data: T;
  readonly width: number;
  readonly reader: string;
}

interface Begun<T> extends Asked<T> {
  readonly steps: Stepwise<View>;
}

const same = <T>(a: Asked<T>, b: Asked<T> | undefined): boolean => a.svg === b?.svg && a.data === b.data && a.width === b.width && a.reader === b.reader;

/** What a figure needs once it is seen: the pen, and the handles that a pointer can take hold of. */
export class FigureDrawing<T> {
  #host: GliderElement;
  #options: FigureOptions<T>;
  #draw: Draw<T>;
  #fields: Fields | undefined;
  #pen: {readonly svg: SVGSVGElement; readonly pen: Pen} | undefined;
  #view: View | undefined;
  /** What stands there, what is being drawn, and what is to be drawn after that. */
  #drawn: Asked<T> | undefined;
  #running: Begun<T> | undefined;
  #next: Begun<T> | undefined;
  #holding: string | undefined;

  constructor(host: GliderElement, options: FigureOptions<T>, draw: Draw<T>, fields: Fields | undefined) {
    this.#host = host;
    this.#options = options;
    this.#draw = draw;
    this.#fields = fields;
  }

  /** Draws what there is to draw, unless it stands there already; what is drawn in steps begins in a task of its own. */
  draw(svg: SVGSVGElement, width: number): void {
    const asked = this.#ask(svg, width);
    if (!asked || same(asked, this.#next ?? this.#running)) return;
    this.#next = undefined;
    if (!this.#running && same(asked, this.#drawn)) { this.#place(); return; }
    const drawing = this.#draw(this.#penFor(svg), width, asked.data);
    if (!('next' in drawing)) { this.#stands(drawing, asked); return; }
    this.#next = {...asked, steps: drawing};
    if (!this.#running) this.#host.await(this.#drawOn());
  }

  /** All of it, whatever was begun. */
  drawAtOnce(svg: SVGSVGElement, width: number): void {
    this.#next = this.#running = undefined;
    const asked = this.#ask(svg, width);
    if (!asked || same(asked, this.#drawn)) return;
    const drawing = this.#draw(this.#penFor(svg), width, asked.data);
    this.#stands('next' in drawing ? finished(drawing) : drawing, asked);
  }

  /** One drawing is ended before the next is begun, so that a part that is dragged is seen to move. */
  async #drawOn(): Promise<void> {
    for (let begun = this.#next; begun; begun = this.#next) {
      this.#next = undefined;
      this.#running = begun;
      try {
        await this.#follow(begun);
      } finally {
        if (this.#running === begun) this.#running = undefined;
      }
    }
  }

  async #follow(begun: Begun<T>): Promise<void> {
    for (;;) {
      await ownTask();
      if (this.#running !== begun) return;   // overtaken by a print
      this.#drawn = undefined;
      const due = performance.now() + slice;
      let step = begun.steps.next();
      while (!step.done && performance.now() < due) step = begun.steps.next();
      begun.svg.style.removeProperty('block-size');
      if (!step.done) continue;
      this.#stands(step.value, begun);
      return;
    }
  }

  #ask(svg: SVGSVGElement, width: number): Asked<T> | undefined {
    const data = this.#options.data();
    return data === undefined ? undefined : {svg, data, width, reader: this.#host.reader};
  }

  #penFor(svg: SVGSVGElement): Pen {
    if (this.#pen?.svg !== svg) this.#pen = {svg, pen: new Pen(svg, screenInk, `glider-figure-${String(++figures)}`)};
    return this.#pen.pen;
  }

  #stands(view: View, {svg, data, width, reader}: Asked<T>): void {
    const first = !this.#view;
    this.#view = view;
    this.#drawn = {svg, data, width, reader};
    svg.style.removeProperty('block-size');
    if (first) this.#host.requestUpdate();   // handles can be placed now
    this.#place();
  }

  renderHandles(): TemplateResult {
    return html`<div class="handles" aria-hidden="true">${this.#handles().map(({key, path}) => html`<div data-key=${key}
      class="handle ${this.#fields?.lit === path || this.#holding === key ? 'lit' : ''}" @pointerdown=${(e: PointerEvent) => { this.#take(e, key); }}></div>`)}</div>`;
  }

  #handles(): readonly Handle[] {
    const data = this.#options.data();
    return data === undefined || !this.#view ? [] : this.#options.handles?.(data, this.#view) ?? [];
  }

  #place(): void {
    const view = this.#view;
    if (!view) return;
    const handles = this.#handles();
    for (const node of this.#host.renderRoot.querySelectorAll<HTMLElement>('.handle')) {
      const handle = handles.find(({key}) => key === node.dataset['key']);
      if (!handle) continue;
      node.style.setProperty('left', `${String((handle.at.x - view.box.x) / view.mmPerPx)}px`);
      node.style.setProperty('top', `${String((handle.at.y - view.box.y) / view.mmPerPx)}px`);
    }
  }

  #take(event: PointerEvent, key: string): void {
    const node = event.currentTarget as HTMLElement;
    const sheet = node.closest('.sheet');
    const handle = this.#handles().find((h) => h.key === key);
    const view = this.#view;
    if (!sheet || !handle || !view || event.button !== 0) return;
    // a figure may be laid out anew with every move: the pointer is read on the scale it took hold at
    const corner = sheet.getBoundingClientRect();
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    this.#holding = key;
    const move = (e: PointerEvent): void => {
      if (this.#fields) this.#fields.lit = handle.path;
      this.#host.ask(handle.drag({
        x: view.box.x + (e.clientX - corner.left) * view.mmPerPx, y: view.box.y + (e.clientY - corner.top) * view.mmPerPx,
      }));
      this.#host.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    };
    const drop = (): void => {
      node.removeEventListener('pointermove', move);
      for (const end of ['pointerup', 'pointercancel']) node.removeEventListener(end, drop);
      this.#holding = undefined;
      if (this.#fields) this.#fields.lit = undefined;
      this.#host.requestUpdate();
      this.#host.dispatchEvent(new Event('change', {bubbles: true}));
    };
    node.addEventListener('pointermove', move);
    for (const end of ['pointerup', 'pointercancel']) node.addEventListener(end, drop);
    this.#host.requestUpdate();
  }
}
