import {Svg} from '@svgdotjs/svg.js';
import type {Element as SvgElement} from '@svgdotjs/svg.js';
import type {Ink} from './ink.js';
import type {View} from './view.js';

export interface XY { readonly x: number; readonly y: number }

/** Line weights and what they mean; a reader tells them apart by style, not by colour alone. */
export type Stroke =
  | 'cut'      // outline of a part
  | 'fine'     // the same, where two outlines lie so near that they would run together
  | 'thin'     // construction, bench, extension lines
  | 'dash'     // hidden behind something
  | 'grain'    // of a board: hardly there
  | 'mark'     // pencil mark: short dash
  | 'accent'   // what the reader may move
  | 'knife'    // a cut that is pointed out: the same, heavy and dashed
  | 'none';
export type Fill = 'none' | 'board' | 'stack' | 'hatch' | 'paper' | 'line' | 'accent' | 'soft';

export interface TextOptions {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly soft?: boolean;
  readonly accent?: boolean;
  readonly sizePx?: number;
  readonly weight?: number;
  /** Turned about its own point, degrees clockwise. */
  readonly turn?: number;
  /** A rim of paper, or of board, around the letters where they cross a line. */
  readonly halo?: boolean | 'board';
}

type Attributes = Record<string, string | number>;

/** A number for an attribute; svg.js would write what is not a number as 0, so it is refused here. */
function sure(n: number): number {
  if (!Number.isFinite(n)) throw new RangeError('a figure was given a number that is none');
  return Math.round(n * 1e4) / 1e4;
}

/** A path through points, in millimetres. */
export const through = (points: readonly XY[], closed = false): string =>
  points.map(({x, y}, i) => `${i ? 'L' : 'M'}${String(sure(x))} ${String(sure(y))}`).join('') + (closed ? 'Z' : '');

/**
 * Draws in millimetres into one `<svg>`, by key: a node with the same key is moved, not made again, and what was not drawn this
 * time is removed at `finish`. Line widths and letters are given in screen pixels, so that they stay as heavy and as large at any scale.
 */
export class Pen {
  readonly ink: Ink;
  /** Millimetres per pixel of the view. */
  u = 1;
  #root: Svg;
  #nodes = new Map<string, {readonly node: SvgElement; readonly tag: string; has: Attributes}>();
  #fresh = new Set<string>();
  #order: string[] = [];
  #id: string;

  constructor(svg: SVGSVGElement, ink: Ink, id = 'g') {
    this.ink = ink;
    this.#root = new Svg(svg);
    this.#id = id;
  }

  begin(view: View): void {
    this.u = view.mmPerPx;
    this.#fresh.clear();
    this.#order = [];
    const {x, y, width, height} = view.box;
    this.#root.attr({viewBox: [x, y, width, height].map(sure).join(' ')});
    this.#hatch();
  }

  /** Removes what was not drawn again, and puts the rest in the order of drawing. */
  finish(): void {
    for (const [key, {node}] of this.#nodes) {
      if (!this.#fresh.has(key)) { node.remove(); this.#nodes.delete(key); }
    }
    let before: Element | null = null;
    for (const key of this.#order) {
      const node = this.#nodes.get(key)?.node.node as Element | undefined;
      if (!node) continue;
      const expected: Element | null = before ? before.nextElementSibling : this.#root.node.firstElementChild;
      if (node !== expected) this.#root.node.insertBefore(node, expected);
      before = node;
    }
  }

  #use(key: string, tag: string, attributes: Attributes): SvgElement {
    let kept = this.#nodes.get(key);
    if (kept && kept.tag !== tag) { kept.node.remove(); kept = undefined; }
    if (!kept) {
      const node = (this.#root as unknown as {element(tag: string): SvgElement}).element(tag);
      this.#nodes.set(key, kept = {node, tag, has: {}});
    }
    this.#fresh.add(key);
    this.#order.push(key);
    // most of a figure stays as it was, and to tell the browser again takes half the time of drawing it
    const {node, has} = kept;
    for (const name in attributes) if (attributes[name] !== has[name]) node.attr(name, attributes[name]);
    for (const name in has) if (!(name in attributes)) node.attr(name, null);
    kept.has = attributes;
    return node;
  }

  #stroke(stroke: Stroke): Attributes {
    const {ink, u} = this;
    const none = 'none';
    switch (stroke) {
      case 'cut': return {'stroke': ink.line, 'stroke-width': sure(1.6 * u), 'stroke-dasharray': none, 'stroke-linejoin': 'round'};
      case 'fine': return {'stroke': ink.line, 'stroke-width': sure(1 * u), 'stroke-dasharray': none, 'stroke-linejoin': 'round'};
      case 'thin': return {'stroke': ink.soft, 'stroke-width': sure(0.8 * u), 'stroke-dasharray': none, 'stroke-linejoin': 'round'};
      case 'dash': return {'stroke': ink.soft, 'stroke-width': sure(1 * u), 'stroke-dasharray': `${String(sure(7 * u))} ${String(sure(3.5 * u))}`, 'stroke-linejoin': 'round'};
      case 'grain': return {'stroke': ink.hatch, 'stroke-width': sure(0.7 * u), 'stroke-dasharray': none, 'stroke-linejoin': 'round'};
      case 'mark': return {'stroke': ink.soft, 'stroke-width': sure(1 * u), 'stroke-dasharray': `${String(sure(3 * u))} ${String(sure(2.5 * u))}`, 'stroke-linejoin': 'round'};
      case 'accent': return {'stroke': ink.accent, 'stroke-width': sure(1.6 * u), 'stroke-dasharray': none, 'stroke-linejoin': 'round'};
      case 'knife': return {'stroke': ink.accent, 'stroke-width': sure(3.4 * u), 'stroke-dasharray': `${String(sure(9 * u))} ${String(sure(4 * u))}`, 'stroke-linejoin': 'round'};
      case 'none': return {stroke: none};
    }
  }

  #fill(fill: Fill): string {
    const {ink} = this;
    return {none: 'none', board: ink.fill, stack: ink.accentSoft, hatch: `url(#${this.#id}-hatch)`, paper: ink.paper, line: ink.line, accent: ink.accent, soft: ink.soft}[fill];
  }

  #hatch(): void {
    const {u} = this;
    const pattern = this.#use('hatch', 'pattern', {
      id: `${this.#id}-hatch`, patternUnits: 'userSpaceOnUse', width: sure(7 * u), height: sure(7 * u), patternTransform: 'rotate(45)',
    });
    const line = (pattern.node.firstElementChild ?? pattern.node.appendChild(document.createElementNS('http://www.w3.org/2000/svg', 'path')));
    line.setAttribute('d', `M0 0V${String(sure(7 * u))}`);
    line.setAttribute('stroke', this.ink.hatch);
    line.setAttribute('stroke-width', String(sure(1.4 * u)));
  }

  path(key: string, d: string, stroke: Stroke, fill: Fill = 'none'): void {
    this.#use(key, 'path', {d, fill: this.#fill(fill), ...this.#stroke(stroke)});
  }

  line(key: string, a: XY, b: XY, stroke: Stroke = 'thin'): void { this.path(key, through([a, b]), stroke); }
  polyline(key: string, points: readonly XY[], stroke: Stroke, fill: Fill = 'none'): void { this.path(key, through(points), stroke, fill); }
  polygon(key: string, points: readonly XY[], stroke: Stroke = 'cut', fill: Fill = 'board'): void { this.path(key, through(points, true), stroke, fill); }

  circle(key: string, at: XY, radiusPx: number, stroke: Stroke, fill: Fill = 'none'): void {
    this.#use(key, 'circle', {cx: sure(at.x), cy: sure(at.y), r: sure(radiusPx * this.u), fill: this.#fill(fill), ...this.#stroke(stroke)});
  }

  /** Lettering of 12.5 px unless told otherwise; never under 11. */
  text(key: string, at: XY, words: string, {anchor = 'start', soft = false, accent = false, sizePx = 12.5, weight = 400, turn = 0, halo = false}: TextOptions = {}): void {
    const node = this.#use(key, 'text', {
      'x': sure(at.x), 'y': sure(at.y), 'fill': accent ? this.ink.accent : soft ? this.ink.soft : this.ink.line, 'font-family': this.ink.font,
      'font-size': sure(Math.max(sizePx, 11) * this.u), 'font-weight': weight, 'text-anchor': anchor,
      ...turn === 0 ? {} : {transform: `rotate(${String(sure(turn))} ${String(sure(at.x))} ${String(sure(at.y))})`},
      ...halo ? {'paint-order': 'stroke', 'stroke': halo === 'board' ? this.ink.fill : this.ink.paper, 'stroke-width': sure(3 * this.u), 'stroke-linejoin': 'round'} : {stroke: 'none'},
    });
    if (node.node.textContent !== words) node.node.textContent = words;
  }

  /** A crease as seen on the face that carries the groove, a double thin line; dashed where the groove is on the face turned away. */
  crease(key: string, a: XY, b: XY, away = false): void {
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const off = (away ? 1.6 : 1.3) * this.u;
    const n = {x: -(b.y - a.y) / length * off, y: (b.x - a.x) / length * off};
    this.path(key, through([{x: a.x + n.x, y: a.y + n.y}, {x: b.x + n.x, y: b.y + n.y}]) + through([{x: a.x - n.x, y: a.y - n.y}, {x: b.x - n.x, y: b.y - n.y}]), away ? 'dash' : 'thin');
  }

  /**
   * A dimension line between two points, set off to the left of the way from a to b by `offPx` (to the right if negative), with
   * extension lines and slashed ends. Its figure stands along the line, or level beside it where `upright`.
   */
  dimension(key: string, a: XY, b: XY, offPx: number, words: string, {accent = false, gapPx = 4, upright = false}: {readonly accent?: boolean; readonly gapPx?: number; readonly upright?: boolean} = {}): void {
    const {u} = this;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length < 1e-9) return;
    const along = {x: (b.x - a.x) / length, y: (b.y - a.y) / length};
    const side = Math.sign(offPx) || 1;
    const n = {x: along.y * side, y: -along.x * side};
    const off = Math.abs(offPx) * u;
    const at = (p: XY, d: number): XY => ({x: p.x + n.x * d, y: p.y + n.y * d});
    const slash = (p: XY): string => through([
      {x: p.x - (along.x - n.x) * 3.5 * u, y: p.y - (along.y - n.y) * 3.5 * u}, {x: p.x + (along.x - n.x) * 3.5 * u, y: p.y + (along.y - n.y) * 3.5 * u}]);
    const [p, q] = [at(a, off), at(b, off)];
    this.path(`${key}-lines`, through([at(a, gapPx * u), at(a, off + 5 * u)]) + through([at(b, gapPx * u), at(b, off + 5 * u)]) + through([p, q]) + slash(p) + slash(q), accent ? 'accent' : 'thin');
    if (upright) {
      const beside = at({x: (a.x + b.x) / 2, y: (a.y + b.y) / 2}, off + 7 * u);
      this.text(`${key}-figure`, {x: beside.x, y: beside.y + 4.5 * u}, words, {anchor: Math.abs(n.x) < 0.3 ? 'middle' : n.x > 0 ? 'start' : 'end', accent, halo: true});
      return;
    }
    let turn = Math.atan2(along.y, along.x) * 180 / Math.PI;
    // an upright figure is read from the right-hand side of the page
    if (turn > 89.99 || turn < -90.01) turn -= Math.sign(turn) * 180;
    // letters stand on the outer side of the line
    const up = n.y < -1e-9 || (Math.abs(n.y) <= 1e-9 && n.x < 0);
    const middle = at({x: (a.x + b.x) / 2, y: (a.y + b.y) / 2}, off + (up ? 5 : 14) * u);
    this.text(`${key}-figure`, middle, words, {anchor: 'middle', turn, accent, halo: true});
  }

  /** The angle at `apex` between two directions (radians, y downwards), with its figure beside the arc. */
  angle(key: string, apex: XY, from: number, to: number, radiusPx: number, words: string): void {
    const r = radiusPx * this.u;
    const p = {x: apex.x + r * Math.cos(from), y: apex.y + r * Math.sin(from)};
    const q = {x: apex.x + r * Math.cos(to), y: apex.y + r * Math.sin(to)};
    const sweep = to > from ? 1 : 0;
    this.path(`${key}-arc`, `${through([p])}A${String(sure(r))} ${String(sure(r))} 0 ${Math.abs(to - from) > Math.PI ? '1' : '0'} ${String(sweep)} ${String(sure(q.x))} ${String(sure(q.y))}`, 'accent');
    const middle = (from + to) / 2;
    this.text(`${key}-figure`, {x: apex.x + (r + 8 * this.u) * Math.cos(middle), y: apex.y + (r + 8 * this.u) * Math.sin(middle) + 4.5 * this.u}, words, {anchor: Math.cos(middle) >= 0 ? 'start' : 'end', accent: true});
  }

  /** The quartered disc that marks a balance point. */
  balanceDisc(key: string, at: XY, radiusPx = 8): void {
    const r = radiusPx * this.u;
    const {x, y} = at;
    this.circle(`${key}-disc`, at, radiusPx, 'cut', 'paper');
    const quarter = (sx: number, sy: number): string => `M${String(sure(x))} ${String(sure(y))}L${String(sure(x + sx * r))} ${String(sure(y))}A${String(sure(r))} ${String(sure(r))} 0 0 ${sx * sy > 0 ? '1' : '0'} ${String(sure(x))} ${String(sure(y + sy * r))}Z`;
    this.path(`${key}-quarters`, quarter(1, -1) + quarter(-1, 1), 'none', 'line');
  }
}
