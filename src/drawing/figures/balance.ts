import {widthOf} from '../lettering.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';
import {fitView} from '../view.js';

/** A weight on the body: fitted already, or about to be. */
export interface WeightSketch {
  readonly at: number;
  readonly radius: number;
  readonly words: string;
}

/** A plane from its left side, nose to the left: millimetres from the nose and down from the upper edge of the body. */
export interface BalancePicture {
  readonly body: readonly XY[];
  readonly height: number;
  readonly length: number;
  /** The root of the wing lying on the body. */
  readonly wing: readonly XY[];
  /** The half of the wing that rises behind it, and its end. */
  readonly tip: readonly (readonly XY[])[];
  readonly tailplane: readonly XY[];
  readonly fin: readonly XY[];
  readonly wingAt: number;
  readonly now: number;
  readonly then: number | undefined;
  readonly target: {readonly from: number; readonly to: number};
  readonly neutral: number;
  readonly fitted: readonly WeightSketch[];
  readonly added: WeightSketch | undefined;
  readonly words: {readonly now: string; readonly then: string; readonly here: string; readonly hereShort: string; readonly neutral: string};
}

/** Heights under the body, in pixels: the band of the target, then one row for each distance from the wing's front edge. */
const rows = {band: 6, bandEnd: 20, first: 41, second: 64, last: 18} as const;

/** A stretch of a row of lettering that is taken, in millimetres. */
type Taken = readonly [from: number, to: number];
const free = (taken: readonly Taken[], from: number, to: number): boolean => taken.every(([a, b]) => to <= a || from >= b);

/** The plane to scale with its balance as it is and as it will be, the target below it, and the weight at its place. */
export function drawBalance(pen: Pen, widthPx: number, data: BalancePicture): View {
  const {length, height, added, words} = data;
  const near = (x: number): boolean => x > -0.3 * length && x < 1.3 * length;
  const outlines = [data.body, data.wing, ...data.tip, data.tailplane, data.fin];
  const weights = [...data.fitted, ...added ? [added] : []].filter(({at}) => near(at));
  const across = [...outlines.flat().map(({x}) => x), ...weights.flatMap(({at, radius}) => [at - radius, at + radius]), ...[data.now, data.then ?? data.now].filter(near)];
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const top = Math.min(...outlines.flat().map(({y}) => y));
  const bottom = (data.then === undefined ? rows.first : rows.second) + rows.last;
  const view = fitView({x: left, y: top, width: right - left, height: height - top}, widthPx, {left: 14, right: 14, top: 30, bottom}, 380);
  pen.begin(view);
  const {u} = pen;

  data.tip.forEach((outline, i) => { pen.polygon(`tip-${String(i)}`, outline, 'thin', 'board'); });
  if (data.fin.length > 0) pen.polygon('fin', data.fin, 'cut', 'board');
  pen.polygon('body', data.body, 'cut', 'board');
  pen.polygon('wing', data.wing, 'cut', 'paper');
  pen.polygon('tailplane', data.tailplane, 'cut', 'paper');
  neutralMark(pen, data, top);

  const {from, to} = data.target;
  const [band, bandEnd] = [height + rows.band * u, height + rows.bandEnd * u];
  pen.polygon('target', [{x: from, y: band}, {x: to, y: band}, {x: to, y: bandEnd}, {x: from, y: bandEnd}], 'cut', 'hatch');

  const places = [
    ...data.then === undefined ? [] : [{key: 'then', x: data.then, words: words.then, accent: true}],
    ...near(data.now) ? [{key: 'now', x: data.now, words: words.now, accent: false}] : [],
  ].sort((a, b) => Math.abs(a.x - data.wingAt) - Math.abs(b.x - data.wingAt));
  // the shorter distance is nearer to the body, so that no line of it crosses the other's lettering
  places.forEach((place, i) => { fromWing(pen, view, data, place, i === 0 ? rows.first : rows.second, places.slice(i + 1).map(({x}) => x)); });
  drawWeights(pen, data, weights, nameTarget(pen, view, data, places.map(({x}) => x)));

  if (near(data.now)) pen.balanceDisc('now-disc', {x: data.now, y: height / 2}, 8);
  if (data.then !== undefined) openDisc(pen, {x: data.then, y: height / 2});
  pen.finish();
  return view;
}

/** The distance of a place from the wing's front edge, in a row below the body; its figure stands in the line, or beside it where that is too short, clear of the lines that pass on to the next row. */
function fromWing(pen: Pen, view: View, {wingAt, height}: BalancePicture, place: {readonly key: string; readonly x: number; readonly words: string; readonly accent: boolean}, row: number, passing: readonly number[]): void {
  const {u} = pen;
  const {key, x, words, accent} = place;
  const [a, b] = x < wingAt ? [x, wingAt] : [wingAt, x];
  const y = height + row * u;
  const stop = (at: number): string => `M${String(at)} ${String(height + 3 * u)}V${String(y + 5 * u)}M${String(at - 3.5 * u)} ${String(y + 3.5 * u)}L${String(at + 3.5 * u)} ${String(y - 3.5 * u)}`;
  const width = widthOf(words) * u;
  const inside = b - a > width + 16 * u;
  const gap = inside ? width / 2 + 4 * u : 0;
  const middle = (a + b) / 2;
  const line = inside ? `M${String(a)} ${String(y)}H${String(middle - gap)}M${String(middle + gap)} ${String(y)}H${String(b)}` : `M${String(a)} ${String(y)}H${String(b)}`;
  pen.path(`${key}-lines`, stop(a) + stop(b) + line, accent ? 'accent' : 'thin');
  const leftwards = a - width - 8 * u > view.box.x;
  const start = passing.reduce((from, line) => (line > from - 3 * u && line < from + width ? line + 8 * u : from), b + 8 * u);
  const at = inside ? {x: middle, anchor: 'middle'} as const : leftwards ? {x: a - 8 * u, anchor: 'end'} as const : {x: start, anchor: 'start'} as const;
  pen.text(`${key}-figure`, {x: at.x, y: y + 4.5 * u}, words, {anchor: at.anchor, accent, halo: true});
}

/** Says what the band is: in full where that crosses no line and no weight's figure, otherwise in short. Gives the room that is taken beside the band. */
function nameTarget(pen: Pen, view: View, {target, height, words, wingAt, added}: BalancePicture, places: readonly number[]): readonly Taken[] {
  const {u} = pen;
  const lines = [wingAt, ...places];
  const taken: Taken[] = [[target.from - 4 * u, target.to + 4 * u], ...lines.map((x): Taken => [x - 3 * u, x + 3 * u]), ...added ? [roomFor(added, u)] : []];
  const starts = [target.to, ...taken.map(([, to]) => to - 3 * u)].filter((x) => x >= target.to).map((x) => x + 7 * u).sort((a, b) => a - b);
  for (const said of [words.here, words.hereShort]) {
    const width = widthOf(said) * u;
    const start = starts.find((x) => x + width < view.box.x + view.box.width && free(taken, x, x + width));
    if (start === undefined) continue;
    if (start - target.to > 10 * u) pen.line('here-leader', {x: target.to, y: height + 13 * u}, {x: start - 3 * u, y: height + 13 * u}, 'thin');
    pen.text('here', {x: start, y: height + 17.5 * u}, said, {soft: true, halo: true});
    return [...taken, [target.to, start + width]];
  }
  return taken;
}

/** Where the figure of a weight stands below it, not further out than its own edge at the nose. */
function roomFor({at, radius, words}: WeightSketch, u: number): Taken {
  const half = widthOf(words) * u / 2;
  const middle = Math.max(at, half - Math.max(radius, 4.5 * u) + Math.min(at, 0));
  return [middle - half, middle + half];
}

/** A balance point that is not there yet: the disc's outline and its cross, without the dark quarters. */
function openDisc(pen: Pen, at: XY): void {
  const r = 8 * pen.u;
  pen.circle('then-disc', at, 8, 'accent', 'paper');
  pen.path('then-cross', `M${String(at.x - r)} ${String(at.y)}H${String(at.x + r)}M${String(at.x)} ${String(at.y - r)}V${String(at.y + r)}`, 'accent');
}

function neutralMark(pen: Pen, {neutral, height, words}: BalancePicture, top: number): void {
  const {u} = pen;
  pen.line('neutral-line', {x: neutral, y: top - 12 * u}, {x: neutral, y: height}, 'mark');
  pen.text('neutral-words', {x: neutral, y: top - 16 * u}, words.neutral, {anchor: 'middle', soft: true, halo: true});
}

/** Weights at half the height of the body, each with its mass below where there is room for it; the new one first. */
function drawWeights(pen: Pen, {height, added}: BalancePicture, weights: readonly WeightSketch[], besideTarget: readonly Taken[]): void {
  const {u} = pen;
  const taken = besideTarget.slice();
  [...weights].reverse().forEach((weight) => {
    const isNew = weight === added;
    const key = isNew ? 'added' : `fitted-${String(weights.indexOf(weight))}`;
    pen.circle(key, {x: weight.at, y: height / 2}, Math.max(weight.radius / u, 4.5), isNew ? 'accent' : 'cut', isNew ? 'stack' : 'soft');
    const [from, to] = roomFor(weight, u);
    if (!isNew && !free(taken, from, to)) return;
    taken.push([from, to]);
    pen.text(`${key}-words`, {x: (from + to) / 2, y: height + 17 * u}, weight.words, {anchor: 'middle', accent: isNew, weight: isNew ? 600 : 400, halo: true});
  });
}
