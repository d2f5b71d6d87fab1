import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {screenInk} from '../../drawing/ink.js';
import {Pen} from '../../drawing/pen.js';
import type {View} from '../../drawing/view.js';
import type {GliderElement} from './element.js';
import type {Fields} from './fields.js';
import type {Draw, FigureOptions, Handle} from './figure.js';

let figures = 0;

/** What a figure needs once it is seen: the pen, and the handles that a pointer can take hold of. */
export class FigureDrawing<T> {
  #host: GliderElement;
  #options: FigureOptions<T>;
  #draw: Draw<T>;
  #fields: Fields | undefined;
  #pen: {readonly svg: SVGSVGElement; readonly pen: Pen} | undefined;
  #view: View | undefined;
  #drawn: {readonly data: T; readonly width: number; readonly reader: string} | undefined;
  #holding: string | undefined;

  constructor(host: GliderElement, options: FigureOptions<T>, draw: Draw<T>, fields: Fields | undefined) {
    this.#host = host;
    this.#options = options;
    this.#draw = draw;
    this.#fields = fields;
  }

  /** Draws what there is to draw, unless it stands there already. */
  draw(svg: SVGSVGElement, width: number): void {
    const data = this.#options.data();
    if (data === undefined) return;
    const {reader} = this.#host;
    if (this.#pen?.svg !== svg) {
      this.#pen = {svg, pen: new Pen(svg, screenInk, `glider-figure-${String(++figures)}`)};
      this.#drawn = undefined;
    }
    const {data: old, width: oldWidth, reader: oldReader} = this.#drawn ?? {};
    if (old !== data || oldWidth !== width || oldReader !== reader) {
      const first = !this.#view;
      this.#view = this.#draw(this.#pen.pen, width, data);
      this.#drawn = {data, width, reader};
      if (first) this.#host.requestUpdate();   // handles can be placed now
    }
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
