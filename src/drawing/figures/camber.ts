import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';
import {fitView} from '../view.js';

/** A folded section on the bench, in millimetres, y upwards from the bench, the leading edge at the left. */
export interface CamberPicture {
  /** 1 where the propped side rises to the right, -1 where it rises to the left. */
  readonly side: 1 | -1;
  /** Each panel as the board it is. */
  readonly boards: readonly (readonly XY[])[];
  readonly stack: {readonly near: number; readonly far: number; readonly layers: readonly {readonly from: number; readonly to: number}[]};
  readonly contacts: readonly XY[];
  readonly pivot: XY;
  /** The crease beside the last panel, where the whole fold has come together; the pivot where there is one crease. */
  readonly apex: XY;
  /** The lower corner of the propped edge. */
  readonly edge: XY;
  readonly flatEnd: XY;
  /** The stack stands under the crease and no side lies flat. */
  readonly crest: boolean;
  readonly fold: number;
  readonly thickness: number;
  readonly words: {
    readonly fold: string; readonly height: string; readonly front: string; readonly rear: string; readonly crease: string; readonly stack: string;
    readonly touches: string; readonly flat: string;
  };
}

/** The wing on the bench, seen from its end: to scale, with the hatched bench, the stack and the point where they touch. */
export function drawCamber(pen: Pen, widthPx: number, data: CamberPicture): View {
  const {side, stack, pivot, edge, flatEnd, words} = data;
  const all = [...data.boards.flat(), {x: stack.near, y: 0}, {x: stack.far, y: 0}, flatEnd];
  const [left, right] = [Math.min(...all.map((p) => p.x)), Math.max(...all.map((p) => p.x))];
  const top = Math.max(...all.map((p) => p.y));
  const narrow = widthPx < 460;
  const outer = narrow ? 70 : 84, inner = narrow ? 8 : 24;
  const view = fitView({x: left, y: -top, width: right - left, height: top}, widthPx,
    {left: side > 0 ? inner : outer, right: side > 0 ? outer : inner, top: 44, bottom: 56}, 360);
  pen.begin(view);
  const {u} = pen;

  const ends = [view.box.x, view.box.x + view.box.width] as const;
  pen.polygon('bench-hatch', [{x: ends[0], y: 0}, {x: ends[1], y: 0}, {x: ends[1], y: 10 * u}, {x: ends[0], y: 10 * u}], 'none', 'hatch');
  pen.line('bench', {x: ends[0], y: 0}, {x: ends[1], y: 0}, 'thin');

  stack.layers.forEach(({from, to}, i) => {
    pen.polygon(`layer-${String(i)}`, [{x: stack.near, y: -from}, {x: stack.far, y: -from}, {x: stack.far, y: -to}, {x: stack.near, y: -to}], 'thin', 'stack');
  });
  data.boards.forEach((board, i) => { pen.polygon(`board-${String(i)}`, board.map(({x, y}) => ({x, y: -y})), 'cut', 'board'); });

  drawLengths(pen, data);
  if (data.fold > 0.004 && !data.crest) drawFold(pen, data);
  drawStack(pen, data);

  if (!data.crest) pen.line('crease-leader', {x: pivot.x, y: 3 * u}, {x: pivot.x, y: 34 * u}, 'thin');
  if (!data.crest) pen.text('crease-words', {x: pivot.x, y: 47 * u}, words.crease, {anchor: 'middle', soft: true});
  const flat = Math.abs(flatEnd.x - pivot.x);
  if (!data.crest && flat > 90 * u) pen.text('flat-words', {x: (flatEnd.x + pivot.x) / 2, y: 27 * u}, words.flat, {anchor: 'middle', soft: true});
  pen.finish();
  return view;

  function drawStack(pen: Pen, {contacts}: CamberPicture): void {
    const height = stack.layers.reduce((most, {to}) => Math.max(most, to), 0);
    if (height <= 0) return;
    // outside whatever reaches further out: the stack or the panel that overhangs it
    const out = side > 0 ? Math.max(stack.far, edge.x) : Math.min(stack.far, edge.x);
    const [low, high] = [{x: out, y: 0}, {x: out, y: -height}];
    pen.line('height-reach', {x: stack.far, y: -height}, high, 'thin');
    pen.dimension('height', side > 0 ? high : low, side > 0 ? low : high, 16, words.height, {accent: true, upright: true});
    // centred under the stack where there is room, else against the outer end of the drawing
    const middle = (stack.near + stack.far) / 2, wide = widthOf(words.stack) * u;
    const outerEnd = side > 0 ? ends[1] - 2 * u : ends[0] + 2 * u;
    const fits = Math.abs(outerEnd - middle) > wide / 2;
    const stackWordsAt = fits ? middle : outerEnd;
    contacts.forEach((contact, i) => { pen.circle(`contact-${String(i)}`, {x: contact.x, y: -contact.y}, 3, 'accent', 'paper'); });
    pen.text('stack-words', {x: stackWordsAt, y: 27 * u}, words.stack, {anchor: fits ? 'middle' : side > 0 ? 'end' : 'start', soft: true});
  }
}

/** The length of each side along the board: the flat one level, the propped one along its slope. */
function drawLengths(pen: Pen, {side, pivot, edge, flatEnd, thickness, crest, words}: CamberPicture): void {
  const over = (a: XY, b: XY): readonly [XY, XY] => {
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const n = {x: -(b.y - a.y) / length * thickness, y: (b.x - a.x) / length * thickness};
    return [{x: a.x + n.x, y: -(a.y + n.y)}, {x: b.x + n.x, y: -(b.y + n.y)}];
  };
  const foot = {x: pivot.x, y: crest ? pivot.y : 0};
  const [front, rear] = side > 0 ? [over(flatEnd, foot), over(foot, edge)] : [over(edge, foot), over(foot, flatEnd)];
  pen.dimension('front', front[0], front[1], 14, words.front);
  pen.dimension('rear', rear[0], rear[1], 14, words.rear);
}

/** The fold between the bench and the propped panel. */
function drawFold(pen: Pen, {side, apex, edge, contacts: [contact = edge], fold, words}: CamberPicture): void {
  const {u} = pen;
  // the figure stands between arc and stack
  const reach = Math.abs(contact.x - apex.x) / u;
  const radius = Math.max(Math.min(reach * 0.55, reach - 52, 190), 14);
  const flat = side > 0 ? 0 : -Math.PI;
  if (apex.y > 2 * u) pen.line('level', {x: apex.x, y: -apex.y}, {x: apex.x + side * (radius + 14) * u, y: -apex.y}, 'dash');
  pen.angle('fold', {x: apex.x, y: -apex.y}, flat, side > 0 ? -fold : -Math.PI + fold, radius, words.fold);
}
