import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {Box, View} from '../view.js';
import {belowPlan, isCrowded, layOutThreeView, moreCreases, noteLine} from './three-view-layout.js';
import type {ViewName} from './three-view-layout.js';
import {uprightDimension} from './upright-dimension.js';
import type {PlanLine, ThreeViewShapes} from './three-view-shapes.js';

/** The figures of every dimension line, written for the reader; one that is missing is not drawn. */
export interface ThreeViewFigures {
  readonly span: string;
  readonly chord: string;
  readonly tipChord?: string;
  readonly sweep?: string;
  readonly creases: readonly string[];
  readonly joints: readonly string[];
  readonly tailSpan: string;
  readonly tailChord: string;
  readonly wingAt: string;
  readonly tailAt: string;
  readonly bodyLength: string;
  readonly bodyHeight: string;
  readonly finHeight?: string;
  readonly flown: string;
  readonly rise?: string;
  readonly angles: readonly string[];
  readonly camber?: string;
}

export interface ThreeViewPicture {
  readonly shapes: ThreeViewShapes;
  readonly show: readonly ViewName[];
  /** The board at the middle of the wing, y upwards, for the enlarged section. */
  readonly section: readonly (readonly XY[])[];
  /** Places along the plane, millimetres from the nose: what the dimension lines join. */
  readonly places: {
    readonly wingAt: number; readonly chord: number; readonly tipBack: number; readonly tipChord: number; readonly halfSpan: number;
    readonly tailAt: number; readonly tailChord: number; readonly halfTail: number; readonly bodyLength: number; readonly bodyHeight: number;
    readonly creases: readonly number[]; readonly joints: readonly number[];
    readonly fin?: {readonly rear: number; readonly top: number; readonly foot: number};
    readonly tip?: XY;
    /** Where the plane balances, and where it should, from the nose. */
    readonly balance?: {readonly at: number; readonly from: number; readonly to: number};
    readonly foldPivots: readonly {readonly at: XY; readonly from: number; readonly to: number; readonly length: number}[];
    readonly thickness: number;
  };
  readonly figures: ThreeViewFigures;
  readonly words: {
    readonly side: string; readonly plan: string; readonly front: string; readonly section: string; readonly notes: readonly string[];
    readonly title: string; readonly rows: readonly (readonly [string, string])[];
  };
}

type Outline = readonly XY[];

/** A glider from the left, from above and from the front, to one scale, with its dimension lines. */
export function drawThreeView(pen: Pen, widthPx: number, picture: ThreeViewPicture): View {
  const layout = layOutThreeView(picture, widthPx);
  pen.begin(layout.view);
  const {side, plan, front} = layout.origins;
  if (side) drawSide(new Place(pen, 'side', side), picture);
  if (plan) drawPlan(new Place(pen, 'plan', plan), picture);
  if (front) drawFront(new Place(pen, 'front', front), picture);
  if (layout.corner) drawCorner(pen, layout.corner, picture);
  pen.finish();
  return layout.view;
}

/** A pen that draws in one view's own millimetres. */
class Place {
  readonly pen: Pen;
  readonly u: number;
  #key: string;
  #origin: XY;

  constructor(pen: Pen, key: string, origin: XY) {
    this.pen = pen;
    this.u = pen.u;
    this.#key = key;
    this.#origin = origin;
  }

  on = ({x, y}: XY): XY => ({x: this.#origin.x + x, y: this.#origin.y + y});

  /** A part that hides what lies behind it. */
  solid(key: string, outline: Outline | undefined, weight: 'cut' | 'fine' | 'thin' = 'cut'): void {
    if (!outline?.length) return;
    const at = outline.map(this.on);
    this.pen.polygon(`${this.#key}-${key}-paper`, at, 'none', 'paper');
    this.pen.polygon(`${this.#key}-${key}`, at, weight, 'board');
  }

  line(key: string, a: XY, b: XY, stroke: 'thin' | 'dash' | 'mark' | 'cut' = 'thin'): void { this.pen.line(`${this.#key}-${key}`, this.on(a), this.on(b), stroke); }
  /** A groove with the letter of its face, a little way along it; on a joint at its rear end, clear of the creases. */
  groove(key: string, {from, to, seen, face, kind}: PlanLine): void {
    this.pen.crease(`${this.#key}-${key}`, this.on(from), this.on(to), !seen);
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    if (length < 36 * this.u) return;   // the line itself tells the face where a letter would crowd it
    const near = Math.min(11 * this.u / length, 0.3);
    const share = kind === 'joint' ? 1 - near : near;
    this.text(`${key}-face`, {x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share + 4 * this.u}, face, {anchor: 'middle', soft: true, sizePx: 11, halo: true});
  }

  dimension(key: string, a: XY, b: XY, offPx: number, words: string | undefined, gapPx = 4): void {
    if (words === undefined) return;
    this.pen.dimension(`${this.#key}-${key}`, this.on(a), this.on(b), offPx, words, {gapPx});
  }

  upright(key: string, top: XY, foot: XY, offPx: number, words: string | undefined): void {
    if (words !== undefined) uprightDimension(this.pen, `${this.#key}-${key}`, this.on(top), this.on(foot), offPx, words);
  }

  /** Board seen edge-on: lighter lines where it is drawn so thin that its two outlines would run together. */
  edgeOn(key: string, outline: Outline | undefined, thickness: number): void { this.solid(key, outline, thickness / this.u < 4.5 ? 'fine' : 'cut'); }

  text(key: string, at: XY, words: string, options: Parameters<Pen['text']>[3] = {}): void { this.pen.text(`${this.#key}-${key}`, this.on(at), words, options); }
  hatched(key: string, outline: Outline): void { this.pen.polygon(`${this.#key}-${key}`, outline.map(this.on), 'thin', 'hatch'); }
  title(at: XY, words: string): void { this.text('title', at, words, {sizePx: 12, weight: 600}); }
  disc(at: XY): void { this.pen.balanceDisc(`${this.#key}-balance`, this.on(at), 7); }
}

function drawSide(at: Place, picture: ThreeViewPicture): void {
  const {shapes, places, figures, words} = picture;
  const {u} = at;
  const {side, extent} = shapes;
  at.title({x: 0, y: -extent.above - 14 * u}, words.side);
  side.wing.raised.forEach((panel, i) => { at.solid(`raised-${String(i)}`, panel, 'thin'); });
  at.solid('body', side.body);
  at.edgeOn('tail', side.tail, places.thickness);
  at.solid('fin', side.fin);
  side.wing.root.forEach((panel, i) => { at.edgeOn(`root-${String(i)}`, panel, places.thickness); });
  side.wing.tip.forEach((panel, i) => { at.edgeOn(`tip-${String(i)}`, panel, places.thickness); });

  const foot = places.bodyHeight;
  const crowded = isCrowded(picture, u) ? 1 : 0;
  const row = (n: number): number => -(18 + 23 * n);
  const below = (x: number): XY => ({x, y: foot});
  at.dimension('wing-at', below(0), below(places.wingAt), row(crowded), figures.wingAt);
  at.dimension('chord', below(places.wingAt), below(places.wingAt + places.chord), row(0), figures.chord);
  at.dimension('tail-chord', below(places.tailAt), below(places.tailAt + places.tailChord), row(0), figures.tailChord);
  at.dimension('tail-at', below(0), below(places.tailAt), row(1 + crowded), figures.tailAt);
  at.dimension('length', below(0), below(places.bodyLength), row(2 + crowded), figures.bodyLength);
  at.upright('height', {x: 0, y: 0}, {x: 0, y: foot}, -14, figures.bodyHeight);
  const {fin} = places;
  const rear = Math.max(fin?.rear ?? 0, places.bodyLength);
  if (fin) at.upright('fin', {x: rear, y: fin.top}, {x: rear, y: fin.foot}, 16, figures.finHeight);
  if (places.balance) {
    const {at: here, from, to} = places.balance;
    at.hatched('target', [{x: from, y: 0}, {x: to, y: 0}, {x: to, y: foot}, {x: from, y: foot}]);
    at.disc({x: here, y: foot / 2});
  }
}

function drawPlan(at: Place, {shapes, places, figures, words}: ThreeViewPicture): void {
  const {u} = at;
  const {plan, extent} = shapes;
  const {wingAt, chord, tipBack, tipChord, halfSpan} = places;
  at.title({x: 0, y: -extent.halfSpan - (36 + moreCreases(places)) * u}, words.plan);
  at.edgeOn('body', plan.body, 2 * Math.max(0, ...(plan.body ?? []).map(({y}) => y)));
  at.solid('tail', plan.tail);
  plan.fins.forEach((fin, i) => { at.edgeOn(`fin-${String(i)}`, fin, places.thickness); });
  at.solid('wing', plan.wing);
  // where the body runs on beneath
  const edge = Math.max(0, ...(plan.body ?? []).map(({y}) => y));
  for (const [key, from, to] of [['wing', wingAt, wingAt + chord], ['tail', places.tailAt, Math.min(places.tailAt + places.tailChord, places.bodyLength)]] as const) {
    if (to > from && edge > 3 * u) [edge, -edge].forEach((y, i) => { at.line(`under-${key}-${String(i)}`, {x: from, y}, {x: to, y}, 'mark'); });
  }
  plan.lines.forEach((line, i) => { at.groove(`${line.kind}-${String(i)}`, line); });
  at.line('centre', {x: -10 * u, y: 0}, {x: extent.length + 10 * u, y: 0}, 'dash');

  at.dimension('span', {x: wingAt + tipBack, y: halfSpan}, {x: wingAt + tipBack, y: -halfSpan}, (wingAt + tipBack) / u + 20, figures.span, 6);
  at.dimension('tail-span', {x: places.tailAt + places.tailChord, y: -places.halfTail}, {x: places.tailAt + places.tailChord, y: places.halfTail}, (extent.length - places.tailAt - places.tailChord) / u + 20, figures.tailSpan, 6);
  const upper = -halfSpan;
  places.creases.forEach((crease, i) => {
    if (crease < tipChord) at.dimension(`crease-${String(i)}`, {x: wingAt + tipBack, y: upper}, {x: wingAt + tipBack + crease, y: upper}, 12 + 21 * i, figures.creases[i]);
  });
  if (figures.tipChord !== undefined) at.dimension('tip-chord', {x: wingAt + tipBack, y: halfSpan}, {x: wingAt + tipBack + tipChord, y: halfSpan}, -14, figures.tipChord);
  if (figures.sweep !== undefined) at.dimension('sweep', {x: wingAt, y: halfSpan}, {x: wingAt + tipBack, y: halfSpan}, -(figures.tipChord === undefined ? 14 : 37), figures.sweep);
  places.joints.forEach((joint, i) => {
    if (joint > 0) at.dimension(`joint-${String(i)}`, {x: wingAt + chord, y: -joint}, {x: wingAt + chord, y: 0}, 14 + 26 * i, figures.joints[i], 6);
  });
  if (places.balance) at.disc({x: places.balance.at, y: 0});
  words.notes.forEach((line, i) => { at.text(`note-${String(i)}`, {x: 0, y: extent.halfSpan + (belowPlan({figures, words}) - 8 - noteLine * (words.notes.length - 1 - i)) * u}, line, {soft: true, sizePx: 11.5}); });
}

function drawFront(at: Place, {shapes, places, figures, words}: ThreeViewPicture): void {
  const {u} = at;
  const {front, extent} = shapes;
  at.title({x: -extent.halfFlown, y: -extent.above - 14 * u}, words.front);
  at.edgeOn('tail', front.tail, places.thickness);
  front.fins.forEach((fin, i) => { at.edgeOn(`fin-${String(i)}`, fin, places.thickness); });
  at.edgeOn('body', front.body, (front.body?.[1]?.x ?? 0) * 2);
  front.wing.forEach((panel, i) => { at.edgeOn(`wing-${String(i)}`, panel, places.thickness); });
  let clear = -Infinity;
  places.foldPivots.forEach(({at: pivot, from, to, length}, i) => {
    if (to - from < 0.01) return;
    const reach = Math.min(44, length / u * 0.75);
    at.pen.angle(`front-angle-${String(i)}`, at.on({x: pivot.x, y: -pivot.y}), -from, -to, reach, '');
    at.line(`level-${String(i)}`, {x: pivot.x, y: -pivot.y}, {x: pivot.x + (reach + 6) * u * Math.cos(from), y: -pivot.y - (reach + 6) * u * Math.sin(from)}, 'thin');
    const figure = figures.angles[i] ?? '', half = widthOf(figure) / 2 * u;
    const over = places.thickness + 7 * u;
    // over the middle of its panel, or further out on a short one, clear of the figure before it
    const middle = pivot.x + Math.cos(to) * length / 2 - Math.sin(to) * over;
    const along = length / 2 + Math.max(0, clear + half - middle) / Math.max(Math.cos(to), 0.2);
    const place = {x: pivot.x + Math.cos(to) * along - Math.sin(to) * over, y: -pivot.y - Math.sin(to) * along - Math.cos(to) * over};
    clear = place.x + half + 4 * u;
    at.text(`angle-${String(i)}`, place, figure, {anchor: 'middle', accent: true, halo: true});
  });
  const half = places.tip?.x ?? extent.halfFlown;
  const foot = extent.below;
  at.dimension('flown', {x: -half, y: foot}, {x: half, y: foot}, -16, figures.flown);
  if (places.tip && figures.rise !== undefined) at.upright('rise', {x: half, y: -places.tip.y}, {x: half, y: 0}, 14, figures.rise);
}

/** The corner that the three views leave free: the section enlarged, and the title block. */
function drawCorner(pen: Pen, corner: Box, {section, figures, words}: ThreeViewPicture): void {
  const {u} = pen;
  const rowHeight = 23 * u;
  const blockHeight = (words.rows.length + 1.35) * rowHeight;
  const right = corner.x + corner.width;
  const blockTop = corner.y + corner.height - blockHeight;
  drawSection(pen, {...corner, height: blockTop - corner.y - 20 * u}, section, words.section, figures.camber);

  const left = right - Math.min(corner.width, 380 * u);
  pen.path('block', `M${String(left)} ${String(blockTop)}H${String(right)}M${String(left)} ${String(blockTop + blockHeight)}H${String(right)}`, 'cut');
  pen.text('block-title', {x: left, y: blockTop + rowHeight * 0.95}, words.title, {sizePx: 15, weight: 650});
  words.rows.forEach(([name, value], i) => {
    const y = blockTop + (i + 1.35) * rowHeight;
    pen.line(`block-rule-${String(i)}`, {x: left, y}, {x: right, y}, 'thin');
    pen.text(`block-name-${String(i)}`, {x: left, y: y + rowHeight * 0.7}, name, {soft: true});
    pen.text(`block-value-${String(i)}`, {x: right, y: y + rowHeight * 0.7}, value, {anchor: 'end'});
  });
}

/** The folded board cut through, as large as the room allows. */
function drawSection(pen: Pen, room: Box, section: readonly Outline[], title: string, camber: string | undefined): void {
  const {u} = pen;
  const points = section.flat();
  const across = Math.max(...points.map(({x}) => x), 1e-6);
  const high = Math.max(...points.map(({y}) => y), 1e-6);
  const inset = 8 * u;
  const scale = Math.min((room.width - 2 * inset) / across, (room.height - 60 * u) / high, 6);
  if (scale < 1.15) return;
  const left = room.x + Math.max(inset, (room.width - across * scale) / 2);
  const foot = room.y + (room.height + high * scale) / 2;
  const on = ({x, y}: XY): XY => ({x: left + x * scale, y: foot - y * scale});
  pen.text('section-title', {x: room.x, y: foot - high * scale - 20 * u}, title, {sizePx: 12, weight: 600});
  section.forEach((panel, i) => { pen.polygon(`section-${String(i)}`, panel.map(on), 'cut', 'hatch'); });
  pen.line('section-chord', on({x: 0, y: 0}), on({x: across, y: 0}), 'dash');
  if (camber) pen.text('section-camber', on({x: across / 2, y: -20 * u / scale}), camber, {anchor: 'middle', soft: true});
}
