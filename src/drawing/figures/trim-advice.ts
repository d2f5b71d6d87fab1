import type {Sight} from '../../calc/trim-advice/seen.js';
import type {Pen, XY} from '../pen.js';
import type {View} from '../view.js';

/** The sheet of one small picture, mm: a pixel each at its usual size. */
export const sightSheet = {width: 72, height: 44} as const;

interface Placed { readonly at: XY; readonly turned: number }

/** What a picture is made of: the way through the air, and the plane on it, turned by degrees clockwise. */
interface Picture {
  readonly seen: 'beside' | 'above' | 'behind';
  readonly way?: string;
  readonly planes: readonly Placed[];
}

const at = (x: number, y: number, turned: number): Placed => ({at: {x, y}, turned});

const pictures: Readonly<Record<Sight, Picture>> = {
  good: {seen: 'beside', way: 'M7 13C26 15 44 21 58 28', planes: [at(59, 28.5, 25)]},
  dives: {seen: 'beside', way: 'M7 11C17 11 25 17 30 31', planes: [at(31, 33, 66)]},
  swoops: {seen: 'beside', way: 'M7 21C15 23 18 7 24 7C30 7 28 31 35 31C42 31 42 12 48 12C53 12 53 24 58 30', planes: [at(59, 31.5, 50)]},
  zooms: {seen: 'beside', way: 'M7 26C20 28 25 5 35 5C44 5 44 19 50 31', planes: [at(51, 33, 62)]},
  drops: {seen: 'beside', way: 'M7 11C16 11 24 18 26 33', planes: [at(27, 35, 0)]},
  left: {seen: 'above', way: 'M36 41C36 24 33 13 17 10', planes: [at(15, 9.7, -170)]},
  right: {seen: 'above', way: 'M36 41C36 24 39 13 55 10', planes: [at(57, 9.7, -10)]},
  rolls: {seen: 'behind', way: 'M15 14C24 3 47 3 57 14M52.5 11.5L57 14L57.5 8.5', planes: [at(13, 30, 0), at(36, 26, 60), at(59, 28, 165)]},
  wags: {seen: 'above', way: 'M4 22C8 13 13 13 18 22C23 31 28 31 33 22C36 16 40 16 46 23', planes: [at(54, 21, -18)]},
  flutters: {seen: 'behind', planes: [at(36, 26, 0)]},
};

const deg = Math.PI / 180;

/** Points about the plane's middle, its nose to the right, turned and put where it flies. */
function placed({at: {x, y}, turned}: Placed, points: readonly (readonly [number, number])[]): readonly XY[] {
  const cos = Math.cos(turned * deg), sin = Math.sin(turned * deg);
  return points.map(([ahead, down]) => ({x: x + ahead * cos - down * sin, y: y + ahead * sin + down * cos}));
}

function planeBeside(pen: Pen, key: string, one: Placed): void {
  pen.polyline(`${key}-body`, placed(one, [[-8, -4], [-8, 0], [7, 0]]), 'cut');
  pen.polyline(`${key}-wing`, placed(one, [[-2, -1.8], [4, -2.2]]), 'cut');
}

function planeAbove(pen: Pen, key: string, one: Placed): void {
  pen.polyline(`${key}-body`, placed(one, [[-8, 0], [8, 0]]), 'cut');
  pen.polygon(`${key}-wing`, placed(one, [[0, -9], [4, -9], [4, 9], [0, 9]]), 'fine', 'paper');
  pen.polyline(`${key}-tail`, placed(one, [[-8, -4], [-8, 4]]), 'cut');
}

function planeBehind(pen: Pen, key: string, one: Placed, half = 10, tip = 3): void {
  pen.polyline(`${key}-wing`, placed(one, [[-half, -tip], [-half * 0.45, 0], [half * 0.45, 0], [half, -tip]]), 'cut');
  pen.polyline(`${key}-body`, placed(one, [[0, -5], [0, 3]]), 'cut');
}

/** What a glider did, as somebody beside it, above it or behind it sees it: the dot is where it left the hand. */
export function drawSight(pen: Pen, widthPx: number, what: Sight): View {
  const {width, height} = sightSheet;
  const view: View = {box: {x: 0, y: 0, width, height}, mmPerPx: width / Math.max(widthPx, 1)};
  const {seen, way, planes} = pictures[what];
  pen.begin(view);
  if (seen === 'beside') pen.line('ground', {x: 2, y: 41}, {x: 70, y: 41});
  if (what === 'left' || what === 'right') pen.line('straight', {x: 36, y: 41}, {x: 36, y: 3}, 'mark');
  if (what === 'wags') pen.line('straight', {x: 1, y: 22}, {x: 71, y: 22}, 'mark');
  if (way !== undefined) pen.path('way', way, 'accent');
  if (way !== undefined && what !== 'rolls' && what !== 'wags') {
    const [, x = '0', y = '0'] = /^M(\S+) (\d+)/.exec(way) ?? [];
    pen.circle('hand', {x: Number(x), y: Number(y)}, 2.6, 'none', 'accent');
  }
  if (what === 'flutters') {
    for (const [key, rise] of [['up', -9], ['down', 11]] as const) {
      pen.polyline(`shake-${key}`, [{x: 6, y: 19 + rise}, {x: 22, y: 26}, {x: 50, y: 26}, {x: 66, y: 19 + rise}], 'accent');
    }
  }
  planes.forEach((one, i) => {
    const key = `plane-${String(i)}`;
    if (seen === 'beside') planeBeside(pen, key, one);
    else if (seen === 'above') planeAbove(pen, key, one);
    else if (what === 'flutters') planeBehind(pen, key, one, 30, 7);
    else planeBehind(pen, key, one);
  });
  pen.finish();
  return view;
}
