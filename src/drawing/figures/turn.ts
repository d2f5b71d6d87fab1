import {widthOf} from '../lettering.js';
import {through, type Pen, type Stroke, type XY} from '../pen.js';
import type {View} from '../view.js';

/** A turning plane: where it is over the ground, in millimetres, y to the right; its heading and its bank to the right, rad. */
export interface TurnSketch {
  readonly at: XY;
  readonly heading: number;
  readonly bank: number;
}

/** The track of one flight from above, flying to the right of the page. */
export interface TurnPicture {
  readonly points: readonly XY[];
  /** The plane at every so many seconds. */
  readonly marks: (every: number) => readonly TurnSketch[];
  readonly now?: TurnSketch & {readonly words: string};
  /** From behind, at some of its moments, each with its words. */
  readonly banks: readonly {readonly bank: number; readonly words: string}[];
  readonly words: {readonly above: string; readonly behind: string; readonly aside: string};
}

/** Pixels: round the track, over it, for the row of banks, and for one of them. */
const clear = 30, title = 30, strip = 104, cell = 92;

/** What the track needs below a side view: its own width over the ground, in millimetres, and pixels for what is lettered. */
export function roomForTurn({points, banks}: TurnPicture): {readonly height: number; readonly lettering: number} {
  const across = points.map(({y}) => y);
  return {height: Math.max(0, ...across) - Math.min(0, ...across), lettering: title + 2 * clear + (banks.length > 0 ? strip : 0)};
}

/** The track from above, straight ahead dashed, below `top`, marked `every` so many seconds; and the bank from behind at some moments. */
export function drawTurn(pen: Pen, {box}: View, top: number, every: number, {points, marks, now, banks, words}: TurnPicture): void {
  const {u} = pen;
  const right = box.x + box.width;
  const over = Math.max(0, ...points.map(({y}) => -y)), under = Math.max(0, ...points.map(({y}) => y));
  const ahead = top + (title + clear) * u + over;
  const on = ({x, y}: XY): XY => ({x, y: ahead + y});
  pen.text('plan-title', {x: box.x + 12 * u, y: top + 18 * u}, words.above, {soft: true});
  pen.line('plan-ahead', {x: 0, y: ahead}, {x: right - 8 * u, y: ahead}, 'mark');
  pen.circle('plan-thrower', {x: -14 * u, y: ahead}, 4.5, 'fine', 'paper');
  pen.line('plan-arm', {x: -10 * u, y: ahead + 2 * u}, {x: 0, y: ahead}, 'fine');
  pen.polyline('plan-track', points.map(on), 'cut');
  marks(every).forEach(({at, heading}, i) => { drawFromAbove(pen, `plan-mark-${String(i)}`, on(at), heading, 8, 'fine'); });
  const end = points.at(-1);
  if (end && Math.abs(end.y) > 14 * u) pen.line('plan-aside', {x: end.x, y: ahead}, on(end), 'thin');
  if (end) {
    pen.circle('plan-land', on(end), 3, 'cut', 'line');
    const turnedRight = end.y >= 0, late = end.x > right - (widthOf(words.aside, 12.5, true) + 20) * u;
    pen.text('plan-aside-words', {x: end.x + (late ? 4 : 8) * u * (late ? -1 : 1), y: on(end).y + (turnedRight ? 18 : -10) * u}, words.aside, {anchor: late ? 'end' : 'start', weight: 600, halo: true});
  }
  if (now) {
    pen.circle('plan-now-halo', on(now.at), 11, 'none', 'paper');
    drawFromAbove(pen, 'plan-now', on(now.at), now.heading, 12, 'accent');
  }
  const floor = ahead + under + clear * u;
  if (banks.length === 0) return;
  const room = Math.min(Math.max(Math.floor((box.width / u - 12) / cell) - 1, 1), banks.length);
  // the last is the one that matters most
  const shown = Array.from({length: room}, (_, i) => banks[Math.ceil((i + 1) * banks.length / room) - 1]).filter((one) => one !== undefined);
  pen.text('plan-behind', {x: box.x + 12 * u, y: floor + 18 * u}, words.behind, {soft: true});
  const all = [...shown.map((one) => ({...one, stroke: 'cut' as const})), ...now ? [{bank: now.bank, words: now.words, stroke: 'accent' as const}] : []];
  all.forEach(({bank, words: own, stroke}, i) => {
    const at = {x: box.x + (12 + (i + 0.5) * cell) * u, y: floor + 52 * u};
    drawFromBehind(pen, `plan-bank-${String(i)}`, at, bank, 30, stroke);
    pen.text(`plan-bank-${String(i)}-words`, {x: at.x, y: floor + 92 * u}, own, {anchor: 'middle', soft: stroke === 'cut', accent: stroke === 'accent', sizePx: 11});
  });
}

/** A plane from above flying along `heading`, `half` pixels from its middle to its nose. */
function drawFromAbove(pen: Pen, key: string, at: XY, heading: number, half: number, stroke: Stroke): void {
  const r = half * pen.u, cosine = Math.cos(heading), sine = Math.sin(heading);
  const on = (x: number, right: number): XY => ({x: at.x + r * (x * cosine - right * sine), y: at.y + r * (x * sine + right * cosine)});
  pen.path(key, through([on(1, 0), on(-1, 0)]) + through([on(0.2, -0.95), on(0.2, 0.95)]) + through([on(-0.9, -0.4), on(-0.9, 0.4)]), stroke);
}

/** A plane from behind, level or banked; its wing `half` pixels to a side. */
function drawFromBehind(pen: Pen, key: string, at: XY, bank: number, half: number, stroke: Stroke): void {
  const r = half * pen.u, cosine = Math.cos(bank), sine = Math.sin(bank);
  const on = (right: number, up: number): XY => ({x: at.x + r * (right * cosine + up * sine), y: at.y + r * (right * sine - up * cosine)});
  pen.path(key, through([on(-1, 0.16), on(0, 0), on(1, 0.16)]) + through([on(0, 0), on(0, -0.18)]) + through([on(-0.34, 0.3), on(-0.34, -0.06), on(0.34, -0.06), on(0.34, 0.3)]), stroke);
}
