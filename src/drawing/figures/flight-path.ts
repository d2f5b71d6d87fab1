import {widthOf} from '../lettering.js';
import {through, type Pen, type Stroke, type XY} from '../pen.js';
import {fitView, type View} from '../view.js';
import {drawTurn, roomForTurn, type TurnPicture} from './turn.js';

/** A plane where it is, and how far its nose points up, rad. */
export interface PlaneSketch {
  readonly at: XY;
  readonly pitch: number;
  /** How much of its length is seen: 1 from its left side, 0 from behind, −1 coming back. */
  readonly side?: number;
}

/** The way of one flight, in millimetres from the foot of the hand, y down from the floor's level upwards less than nothing. */
export interface PathSketch {
  readonly key: string;
  readonly main: boolean;
  readonly style: 'main' | 'right' | 'long' | 'short' | 'dotted';
  readonly points: readonly XY[];
  /** The plane at every so many seconds, with the time in words where it is round. */
  readonly marks: (every: number) => readonly (PlaneSketch & {readonly words: string})[];
  /** s. */
  readonly length: number;
  readonly words: string;
}

/** Throws from the side, all to one scale but for the planes themselves. */
export interface FlightPathPicture {
  readonly hand: number;
  readonly paths: readonly PathSketch[];
  readonly ball: {readonly points: readonly XY[]; readonly words: string} | undefined;
  /** Where the planes are now. */
  readonly planes: readonly (PlaneSketch & {readonly key: string})[];
  readonly ruler: {readonly unit: number; readonly write: (n: number) => string; readonly symbol: string};
  readonly words: {readonly hand: string; readonly top: string | undefined};
  /** The turn of one of them from above, below the rest and to the same scale. */
  readonly plan?: TurnPicture;
}

const strokes: Readonly<Record<PathSketch['style'], Stroke>> = {main: 'cut', right: 'fine', long: 'dash', short: 'thin', dotted: 'mark'};

const rowHeight = 18;

export function drawFlightPath(pen: Pen, widthPx: number, data: FlightPathPicture): View {
  const {plan} = data;
  const all = [...data.paths.flatMap(({points}) => points), ...data.ball?.points ?? [], ...plan?.points ?? []];
  const stature = statureFor(data.hand);
  const left = Math.min(-0.45 * stature, ...all.map(({x}) => x)), right = Math.max(data.hand, ...all.map(({x}) => x));
  const top = Math.min(-data.hand - 0.25 * stature, ...data.paths.flatMap(({points}) => points.map(({y}) => y)));
  const content = {x: left, y: top, width: right - left, height: -top};
  const pads = {left: 12, right: 16, top: 26, bottom: 30};
  const across = plan ? roomForTurn(plan) : undefined;
  const fitted = fitView({...content, height: content.height + (across?.height ?? 0)}, widthPx, pads, across ? 640 : 440);
  const landings = rowsFor(data, fitted);
  const rows = Math.max(0, ...landings.map(({row}) => row + 1));
  const below = (pads.bottom + rows * rowHeight) * fitted.mmPerPx;
  const view = {...fitted, box: {...fitted.box, height: fitted.box.height + rows * rowHeight * fitted.mmPerPx + (across?.lettering ?? 0) * fitted.mmPerPx}};
  pen.begin(view);
  drawFloor(pen, view, data);
  for (const {key, x, row} of landings) {
    pen.line(`land-${key}-leader`, {x, y: 0}, {x, y: (41 + row * rowHeight) * pen.u}, 'thin');
  }
  drawThrower(pen, data.hand, stature);
  data.ball?.points.slice(0, -1).forEach((at, i) => { pen.circle(`ball-${String(i)}`, at, 1.8, 'none', 'soft'); });
  const every = intervalFor(data, pen.u);
  const small = widthPx < 480 ? 0.7 : 1;
  for (const path of [...data.paths].sort((a, b) => Number(a.main) - Number(b.main))) {
    pen.polyline(`path-${path.key}`, path.points, strokes[path.style]);
    if (!path.main && wayOf(path) / pen.u / (path.length / every) < 26) continue;
    path.marks(every).forEach((mark, i) => {
      drawPlane(pen, `mark-${path.key}-${String(i)}`, mark, small * (path.main ? 9 : 6), path.main ? 'cut' : 'fine');
      if (path.main && mark.words && mark.at.y < -12 * pen.u) pen.text(`mark-${String(i)}-words`, {x: mark.at.x, y: mark.at.y - 11 * pen.u}, mark.words, {anchor: 'middle', soft: true, sizePx: 11, halo: true});
    });
  }
  drawLandings(pen, landings);
  for (const {key, ...plane} of data.planes) {
    const main = data.paths.some((path) => path.key === key && path.main);
    pen.circle(`now-${key}-halo`, plane.at, small * (main ? 11 : 7), 'none', 'paper');
    drawPlane(pen, `now-${key}`, plane, small * (main ? 13 : 9), main ? 'accent' : 'cut');
  }
  if (plan) drawTurn(pen, view, below, every, plan);
  pen.finish();
  return view;
}

/** Someone whose hand is at that height over the shoulder, or stands on something for it. */
const statureFor = (hand: number): number => Math.min(Math.max(hand / 0.95, 1100), 1750);

/** So often that the plane's marks on the main path keep clear of each other. */
function intervalFor({paths}: FlightPathPicture, u: number): number {
  const main = paths.find((path) => path.main) ?? paths[0];
  if (!main) return 1;
  const way = wayOf(main) / u;
  return [0.25, 0.5, 1, 2, 5, 10].find((every) => way / (main.length / every) > 42) ?? 20;
}

const wayOf = ({points}: PathSketch): number =>
  points.reduce((sum, p, i) => { const q = points[i - 1]; return q ? sum + Math.hypot(p.x - q.x, p.y - q.y) : 0; }, 0);

interface Landing { readonly key: string; readonly x: number; readonly words: string; readonly main: boolean; readonly ball: boolean; readonly from: number; readonly to: number; readonly row: number }

/**
 * Each landing's words below the floor, beside their leader: in as few rows as can be without words on words or a leader through any. Where there are too many
 * for that, words stand over a leader.
 */
function rowsFor({paths, ball}: FlightPathPicture, {box, mmPerPx: u}: View): readonly Landing[] {
  const ends = [
    ...paths.map(({key, points, words, main}) => ({key, x: points.at(-1)?.x ?? 0, words, main, ball: false})),
    ...ball ? [{key: 'ball', x: ball.points.at(-1)?.x ?? 0, words: ball.words, main: false, ball: true}] : [],
  ].sort((a, b) => b.x - a.x);
  const placesOf = (end: (typeof ends)[number], rows: number): readonly Landing[] => {
    const width = widthOf(end.words, 12.5, end.main) * u;
    const places = [end.x + 5 * u, end.x - 5 * u - width].filter((from) => from > box.x && from + width < box.x + box.width);
    const inside = places.length > 0 ? places : [Math.max(box.x + box.width - width, box.x)];
    return Array.from({length: rows}, (_, row) => inside.map((from) => ({...end, row, from, to: from + width}))).flat();
  };
  const runsThrough = (leader: Landing, words: Landing): boolean => leader.row > words.row && leader.x > words.from - 3 * u && leader.x < words.to + 3 * u;
  const touch = (a: Landing, b: Landing): boolean => a.row === b.row && a.from < b.to + 8 * u && b.from < a.to + 8 * u;
  const apart = (a: Landing, b: Landing): boolean => !touch(a, b) && !runsThrough(a, b) && !runsThrough(b, a);
  const place = (rows: number, placed: readonly Landing[] = []): readonly Landing[] | undefined => {
    const end = ends[placed.length];
    if (!end) return placed;
    for (const one of placesOf(end, rows)) {
      const all = placed.every((other) => apart(one, other)) ? place(rows, [...placed, one]) : undefined;
      if (all) return all;
    }
    return undefined;
  };
  for (let rows = 1; rows <= Math.min(ends.length, 6); rows++) {
    const placed = place(rows);
    if (placed) return placed;
  }
  return ends.map((end, i) => ({...end, ...placesOf(end, 1)[0] as Landing, row: i}));
}

function drawLandings(pen: Pen, landings: readonly Landing[]): void {
  const {u} = pen;
  for (const {key, x, words, main, ball, from, row} of landings) {
    pen.circle(`land-${key}`, {x, y: 0}, 3, ball ? 'thin' : 'cut', ball ? 'soft' : main ? 'line' : 'paper');
    pen.text(`land-${key}-words`, {x: from, y: (40 + row * rowHeight) * u}, words, {weight: main ? 600 : 400, soft: ball, halo: true});
  }
}

/** The floor with a ruler on it. */
function drawFloor(pen: Pen, {box}: View, {ruler}: FlightPathPicture): void {
  const {u} = pen;
  const to = box.x + box.width;
  pen.path('floor-hatch', through([{x: box.x, y: 0}, {x: to, y: 0}, {x: to, y: 7 * u}, {x: box.x, y: 7 * u}], true), 'none', 'hatch');
  pen.line('floor', {x: box.x, y: 0}, {x: to, y: 0}, 'fine');
  const step = [1, 2, 5, 10, 20, 50, 100, 200, 500].find((n) => n * ruler.unit / u > 46) ?? 1000;
  const last = Math.floor((to - 12 * u) / (step * ruler.unit)) * step;
  let ticks = '';
  for (let n = 0; n <= last; n += step) {
    const x = n * ruler.unit;
    ticks += through([{x, y: 0}, {x, y: 9 * u}]);
    const words = n === last ? `${ruler.write(n)}\u00a0${ruler.symbol}` : ruler.write(n);
    pen.text(`ruler-${String(n)}`, {x: Math.min(x, to - widthOf(words, 11) / 2 * u), y: 20 * u}, words, {anchor: 'middle', soft: true, sizePx: 11, halo: true});
  }
  pen.path('ruler', ticks, 'fine');
}

/** Someone throwing: head, trunk, legs, and an arm to the hand at x = 0. */
function drawThrower(pen: Pen, hand: number, stature: number): void {
  const {u} = pen;
  const floor = hand > stature * 1.15 ? -(hand - stature * 0.95) : 0;
  if (floor < 0) pen.polygon('step', [{x: -0.45 * stature, y: 0}, {x: -0.45 * stature, y: floor}, {x: -0.02 * stature, y: floor}, {x: -0.02 * stature, y: 0}], 'thin', 'hatch');
  const at = (x: number, y: number): XY => ({x: x * stature, y: floor - y * stature});
  const hips = at(-0.24, 0.5), neck = at(-0.19, 0.82);
  pen.path('thrower', through([at(-0.38, 0), hips, at(-0.1, 0)]) + through([hips, neck]) + through([at(-0.4, 0.62), at(-0.2, 0.78), {x: -0.06 * stature, y: -hand + 0.01 * stature}]), 'fine');
  pen.circle('thrower-head', at(-0.18, 0.91), Math.max(0.065 * stature / u, 2), 'fine', 'paper');
}

/** A plane from its left side flying to the right, `half` pixels from its middle to its nose. */
function drawPlane(pen: Pen, key: string, {at, pitch, side = 1}: PlaneSketch, half: number, stroke: Stroke): void {
  const r = half * pen.u, cosine = Math.cos(pitch), sine = Math.sin(pitch);
  const on = (x: number, up: number): XY => ({x: at.x + side * r * (x * cosine - up * sine), y: at.y - r * (x * sine + up * cosine)});
  pen.path(key, through([on(1, 0), on(-1, 0), on(-1.1, 0.42), on(-0.75, 0)]) + through([on(0.42, 0.12), on(-0.12, 0.12)]), stroke);
}
