import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';
import {layOutDihedral, room} from './dihedral-layout.js';
import type {BenchSketch, DihedralPicture} from './dihedral-layout.js';
import {uprightDimension} from './upright-dimension.js';

/** Each joint on the bench with its block, in the order of work, and below them the wing as it flies. */
export function drawDihedral(pen: Pen, widthPx: number, picture: DihedralPicture): View {
  const layout = layOutDihedral(picture, widthPx);
  pen.begin(layout.view);
  picture.sketches.forEach((sketch, i) => { drawBench(pen, layout.view, `joint-${String(i)}`, layout.benches[i] ?? 0, sketch, picture); });
  drawFlown(pen, layout.view, layout.flown.middle, layout.flown.scale, picture);
  pen.finish();
  return layout.view;
}

function drawBench(pen: Pen, view: View, key: string, bench: number, sketch: BenchSketch, picture: DihedralPicture): void {
  const {u} = pen;
  const {box} = view;
  const {block, contact, joint, start, end, lean, words} = sketch;
  const on = ({x, y}: XY): XY => ({x, y: bench - y});
  const right = box.x + box.width;
  const {thickness} = picture;

  pen.polygon(`${key}-hatch`, [{x: box.x, y: bench}, {x: right, y: bench}, {x: right, y: bench + room.bench * u}, {x: box.x, y: bench + room.bench * u}], 'none', 'hatch');
  pen.line(`${key}-bench`, {x: box.x, y: bench}, {x: right, y: bench}, 'thin');
  if (picture.sketches.length > 1) {
    const top = Math.max(block.height, ...sketch.panels.flat().map(({y}) => y));
    pen.text(`${key}-title`, {x: box.x + 2 * u, y: bench - top - (room.above + 6) * u}, words.title, {sizePx: 13, weight: 600});
  }
  const centre = Math.max(0, picture.from);
  pen.path(`${key}-centre`, `M${String(centre)} ${String(bench - thickness - 24 * u)}V${String(bench + (room.bench + 50) * u)}`, 'dash');
  pen.text(`${key}-middle`, {x: centre + 5 * u, y: bench + (room.bench + 48) * u}, picture.words.middle, {soft: true, sizePx: 11.5});

  if (block.height > 0) {
    pen.polygon(`${key}-block`, [{x: block.near, y: bench}, {x: block.far, y: bench}, {x: block.far, y: bench - block.height}, {x: block.near, y: bench - block.height}], 'cut', 'stack');
    uprightDimension(pen, `${key}-height`, {x: block.far, y: bench - block.height}, {x: block.far, y: bench}, 14, words.height);
  }
  sketch.panels.forEach((panel, i) => { pen.polygon(`${key}-panel-${String(i)}`, panel.map(on), 'cut', 'board'); });
  sketch.waiting.forEach((x, i) => { pen.line(`${key}-waiting-${String(i)}`, {x, y: bench}, {x, y: bench - thickness}, 'thin'); });
  if (picture.broken) drawBreak(pen, `${key}-break`, {x: picture.from, y: bench - thickness / 2}, thickness);

  // the figure of the propped panel stands over its upper face
  const up = {x: -Math.sin(lean) * thickness, y: Math.cos(lean) * thickness};
  const over = (p: XY): XY => on({x: p.x + up.x, y: p.y + up.y});
  pen.dimension(`${key}-length`, over(start), over(end), 15, words.panel);

  if (lean > 0.004) drawAngle(pen, view, key, bench, sketch, thickness);
  if (sketch.touches) pen.circle(`${key}-contact`, on(contact), 3.2, 'accent', 'paper');

  // below the bench: where the joint is, then where the block stands
  const gapPx = room.bench + 3;
  const line = -(room.bench + 14);
  if (joint > 1e-6) pen.dimension(`${key}-at`, {x: centre, y: bench}, {x: joint, y: bench}, line, words.at, {gapPx});
  if (block.height > 0 && contact.x > joint) {
    const fits = (contact.x - joint) / u > widthOf(words.contact) + 8;
    pen.dimension(`${key}-place`, {x: joint, y: bench}, {x: contact.x, y: bench}, line, fits ? words.contact : '', {gapPx});
if (!fits) pen.text(`${key}-place-beside`, {x: contact.x + 8 * u, y: bench - (line - 4.5) * u}, words.contact);
  }
}

/** The arc from the bench to the panel; its figure stands inside where there is room before the block, beside the joint where there is not. */
function drawAngle(pen: Pen, {box}: View, key: string, bench: number, sketch: BenchSketch, thickness: number): void {
  const {u} = pen;
  const {start, end, contact, joint, lean, block} = sketch;
  const words = sketch.words.angle;
  const foot = {x: joint, y: bench};
  const length = Math.hypot(end.x - start.x, end.y - start.y) / u;
  const before = block.height > 0 ? (contact.x - joint) / u : length;
  const inside = Math.min(length * 0.5, 140, before - widthOf(words) - 16);
  if (inside > 40 && inside * Math.sin(lean) > 21) { pen.angle(`${key}-lean`, foot, 0, -lean, inside, words); return; }
  pen.angle(`${key}-lean`, foot, 0, -lean, Math.min(length * 0.6, 170, Math.max(before - 8, 12)), '');
  const x = Math.max(foot.x - 15 * u, box.x + (widthOf(words) + 4) * u);
  pen.text(`${key}-lean-beside`, {x, y: bench - start.y - thickness - 8 * u}, words, {anchor: 'end', accent: true, halo: true});
}

/** Two slanting strokes where the board goes on. */
function drawBreak(pen: Pen, key: string, at: XY, thickness: number): void {
  const {u} = pen;
  const reach = thickness / 2 + 4 * u;
  const slant = (x: number): readonly [XY, XY] => [{x: x - 3 * u, y: at.y + reach}, {x: x + 3 * u, y: at.y - reach}];
  const [a, b] = slant(at.x + 5 * u);
  const [c, d] = slant(at.x + 10 * u);
  pen.polygon(`${key}-gap`, [a, b, d, c], 'none', 'paper');
  pen.line(`${key}-left`, a, b, 'thin');
  pen.line(`${key}-right`, c, d, 'thin');
}

function drawFlown(pen: Pen, {box}: View, middle: XY, scale: number, {flown, thickness}: DihedralPicture): void {
  const {u} = pen;
  const on = ({x, y}: XY): XY => ({x: middle.x + x * scale, y: middle.y - y * scale});
  const {halfSpan, tip, equivalent, words} = flown;
  const top = Math.max(halfSpan * Math.tan(equivalent), ...flown.panels.flat().map(({y}) => y)) * scale;
  const two = words.equivalent !== '' && box.width / u < room.twoTitles;
  const title = middle.y - top - (room.flownAbove + (two ? room.flownTitle : 0)) * u;
  pen.text('flown-title', {x: box.x + 2 * u, y: title}, words.title, {sizePx: 13, weight: 600});
  if (words.equivalent) {
    pen.text('flown-equivalent', {x: two ? box.x + 2 * u : box.x + box.width - 2 * u, y: two ? title + room.flownTitle * u : title}, words.equivalent, {anchor: two ? 'start' : 'end', soft: true});
  }
  if (words.equivalent && equivalent > 0.004) {
    const v = {x: halfSpan, y: halfSpan * Math.tan(equivalent)};
    pen.path('flown-v', [{x: -v.x, y: v.y}, {x: 0, y: 0}, v].map(on).map(({x, y}, i) => `${i ? 'L' : 'M'}${String(x)} ${String(y)}`).join(''), 'dash');
  }
  flown.panels.forEach((panel, i) => { pen.polygon(`flown-${String(i)}`, panel.map(on), thickness * scale > 4 * u ? 'cut' : 'fine', 'board'); });
  pen.dimension('flown-span', {x: middle.x - halfSpan * scale, y: middle.y}, {x: middle.x + halfSpan * scale, y: middle.y}, -16, words.span);
  if (tip.y * scale > 2 * u) uprightDimension(pen, 'flown-rise', on(tip), on({x: tip.x, y: 0}), 14, words.rise);
}
