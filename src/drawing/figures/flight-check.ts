import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';

/** A sink known to a range at a speed, in the reader's unit. */
export interface SinkAt {
  readonly speed: number;
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

/** Sink over speed, both in the reader's unit of speed. */
export interface FlightPlot {
  /** From fast to slow. */
  readonly polar: readonly SinkAt[];
  readonly stall: number;
  readonly best: SinkAt;
  /** The plane as built, with its range of speeds. */
  readonly here: (SinkAt & {readonly slow: number; readonly fast: number}) | undefined;
  readonly words: {
    readonly speed: string;
    readonly sink: string;
    readonly stall: string;
    readonly stallSpeed: string;
    readonly best: string;
    readonly bestRatio: string;
    readonly throwAt: string;
    readonly throwSpeed: string;
    readonly tick: (value: number) => string;
  };
}

const pads = {left: 34, right: 12, top: 44, bottom: 24} as const;

/** A step of 1, 2 or 5 times a power of ten that divides a length into at most so many. */
export function tickStep(length: number, most: number): number {
  const rough = length / Math.max(most, 1);
  const unit = 10 ** Math.floor(Math.log10(rough));
  return unit * ([1, 2, 5, 10].find((n) => n * unit >= rough - 1e-9 * unit) ?? 10);
}

/** The fastest and the steepest that are drawn: what lies in a dive is cut off. */
export function reachOf({polar, stall, best, here}: Pick<FlightPlot, 'polar' | 'stall' | 'best' | 'here'>): {readonly speed: number; readonly sink: number} {
  const fastest = Math.max(...polar.map(({speed}) => speed));
  const speed = Math.min(Math.max(1.7 * stall, 1.4 * best.speed, 1.15 * (here?.fast ?? 0)), Math.max(fastest, here?.fast ?? 0));
  const seen = polar.filter((at) => at.speed <= speed).map(({usual}) => usual);
  return {speed, sink: 1.12 * Math.max(1.9 * best.usual, here?.most ?? 0, ...seen)};
}

/** Speed to the right and sink downwards, as a plane goes; one pixel is one unit of the drawing. */
export function drawFlightPlot(pen: Pen, widthPx: number, data: FlightPlot): View {
  const height = Math.round(Math.min(Math.max(widthPx * 0.62, 250), 400));
  const view: View = {box: {x: 0, y: 0, width: widthPx, height}, mmPerPx: 1};
  pen.begin(view);
  const reach = reachOf(data);
  const right = widthPx - pads.right, foot = height - pads.bottom;
  const on = (speed: number, sink: number): XY => ({
    x: pads.left + (right - pads.left) * speed / reach.speed, y: pads.top + (foot - pads.top) * sink / reach.sink,
  });
  const {polar, stall, best, here, words} = data;

  const seen = cutAt(polar, reach.speed);
  const clipped = (at: SinkAt, end: 'least' | 'usual' | 'most'): XY => on(at.speed, Math.min(at[end], reach.sink));
  pen.polygon('band', [...seen.map((at) => clipped(at, 'least')), ...[...seen].reverse().map((at) => clipped(at, 'most'))], 'none', 'board');
  axes(pen, data, reach, on, right, foot);

  const origin = on(0, 0), slope = best.usual / best.speed;
  const end = Math.min(reach.speed, reach.sink / slope);
  pen.line('tangent', origin, on(end, slope * end), 'mark');
  pen.polyline('polar', seen.map((at) => clipped(at, 'usual')), 'cut');
  const touch = on(best.speed, best.usual);
  pen.circle('best', touch, 3.5, 'cut', 'paper');

  const wall = on(stall, 0).x;
  pen.line('stall', {x: wall, y: pads.top}, {x: wall, y: foot}, 'dash');
  pen.text('stall-words', {x: wall - 7, y: foot - 24}, words.stall, {anchor: 'end', soft: true, halo: true});
  pen.text('stall-speed', {x: wall - 7, y: foot - 8}, words.stallSpeed, {anchor: 'end', soft: true, halo: true});

  // under the tangent and left of where the curve begins there is always room
  const bar = here && on(here.slow, 0).x < wall ? on(0, here.usual).y : 0;
  const under = Math.max(on(stall, slope * stall).y, bar) + 20;
  pen.text('best-words', {x: wall - 7, y: under}, words.best, {anchor: 'end', soft: true, halo: true});
  pen.text('best-ratio', {x: wall - 7, y: under + 16}, words.bestRatio, {anchor: 'end', soft: true, halo: true});
  if (here) plane(pen, here, [words.throwAt, words.throwSpeed], on, widthPx - 7);
  pen.finish();
  return view;
}

function axes(pen: Pen, {words}: FlightPlot, reach: {speed: number; sink: number}, on: (speed: number, sink: number) => XY, right: number, foot: number): void {
  const {x: left, y: top} = on(0, 0);
  pen.path('axes', `M${String(right)} ${String(top)}H${String(left)}V${String(foot)}`, 'fine');
  const across = tickStep(reach.speed, Math.min((right - left) / 48, 10)), down = tickStep(reach.sink, (foot - top) / 36);
  for (let i = 1; i * across <= reach.speed; i++) {
    const {x} = on(i * across, 0);
    pen.line(`across-${String(i)}`, {x, y: top - 5}, {x, y: top}, 'fine');
    pen.text(`across-figure-${String(i)}`, {x, y: top - 9}, words.tick(i * across), {anchor: 'middle', soft: true});
  }
  for (let i = 1; i * down <= reach.sink; i++) {
    const {y} = on(0, i * down);
    pen.line(`down-${String(i)}`, {x: left - 5, y}, {x: left, y}, 'fine');
    pen.text(`down-figure-${String(i)}`, {x: left - 8, y: y + 4.5}, words.tick(i * down), {anchor: 'end', soft: true});
  }
  pen.text('across-words', {x: right, y: 14}, words.speed, {anchor: 'end', soft: true});
  pen.text('down-words', {x: 2, y: foot + 18}, words.sink, {soft: true});
}

/** The plane as built: a dot with how far it may be out either way, and the speed to throw at. */
function plane(pen: Pen, here: SinkAt & {readonly slow: number; readonly fast: number}, words: readonly [string, string], on: (speed: number, sink: number) => XY, edge: number): void {
  const at = on(here.speed, here.usual), top = on(0, 0).y;
  const [slow, fast, least, most] = [on(here.slow, here.usual), on(here.fast, here.usual), on(here.speed, here.least), on(here.speed, here.most)];
  pen.line('throw', {x: at.x, y: top}, least, 'thin');
  pen.path('unsure', `M${String(slow.x)} ${String(at.y)}H${String(fast.x)}M${String(slow.x)} ${String(at.y - 4)}v8M${String(fast.x)} ${String(at.y - 4)}v8`
    + `M${String(at.x)} ${String(least.y)}V${String(most.y)}M${String(at.x - 4)} ${String(least.y)}h8M${String(at.x - 4)} ${String(most.y)}h8`, 'fine');
  pen.circle('here', at, 5, 'cut', 'line');
  // a little smaller before it turns back over the curve
  const needed = Math.max(...words.map((line) => line.length)) * 7.6, room = edge - at.x;
  const sizePx = Math.max(Math.min(12.5, 12.5 * room / needed), 11);
  const leftwards = needed * sizePx / 12.5 > room;
  words.forEach((line, i) => {
    pen.text(`throw-words-${String(i)}`, {x: at.x + (leftwards ? -7 : 7), y: top + 17 + 16 * i}, line, {anchor: leftwards ? 'end' : 'start', sizePx, weight: 600, halo: true});
  });
}

/** The polar up to a speed, its last point where it crosses it. */
function cutAt(polar: readonly SinkAt[], speed: number): readonly SinkAt[] {
  const inside = polar.findIndex((at) => at.speed <= speed);
  const a = polar[inside - 1], b = polar[inside];
  if (!a || !b) return polar.slice(Math.max(inside, 0));
  const share = (speed - b.speed) / (a.speed - b.speed);
  const between = (end: 'least' | 'usual' | 'most'): number => b[end] + share * (a[end] - b[end]);
  return [{speed, least: between('least'), usual: between('usual'), most: between('most')}, ...polar.slice(inside)];
}
