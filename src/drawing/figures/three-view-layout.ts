import {widthOf} from '../lettering.js';
import type {XY} from '../pen.js';
import type {Box, View} from '../view.js';
import type {ThreeViewPicture} from './three-view.js';

export type ViewName = 'side' | 'plan' | 'front';

export interface ThreeViewLayout {
  readonly view: View;
  /** Where the zero point of each shown view lies on the page, millimetres. */
  readonly origins: Readonly<Partial<Record<ViewName, XY>>>;
  /** Where the title block and the enlarged section may stand: only where all three views leave a corner free. */
  readonly corner?: Box;
}

interface Room {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
}

/** Room in pixels for the dimension lines around each view, the same at any scale. A figure that lies flat beside its line may need more. */
function roomsFor({places, figures: {bodyHeight, finHeight = '', rise = ''}}: ThreeViewPicture): Readonly<Record<ViewName, Room>> {
  const lying = {left: Math.max(42, 26 + widthOf(bodyHeight)), right: Math.max(48, 26 + widthOf(finHeight))};
  return {
    side: {...lying, above: 30, below: 84},
    plan: {...lying, above: 54 + moreCreases(places), below: 0},
    front: {left: 14, right: Math.max(48, 24 + widthOf(rise)), above: 30, below: 48},
  };
}

/** Each crease after the first has a dimension line above those before it. */
export const moreCreases = ({creases}: ThreeViewPicture['places']): number => 21 * Math.max(0, creases.length - 1);

/** From here on the front view stands beside the side view, on one level with it. */
const WIDE = 760;
const HIGHEST = 640;

/** From one line of notes to the next, in pixels. */
export const noteLine = 18;

/** Room under the view from above: for the dimensions of its lower tip, then for what its lines mean. */
export const belowPlan = ({figures, words}: Pick<ThreeViewPicture, 'figures' | 'words'>): number =>
  22 + 23 * Number(figures.tipChord !== undefined) + 23 * Number(figures.sweep !== undefined) + noteLine * words.notes.length;

/** Whether the place of the wing and its chord, side by side, leave no room for their figures: the chord then takes a row of its own. */
export const isCrowded = ({places: {wingAt, chord}, figures}: ThreeViewPicture, mmPerPx: number): boolean =>
  (widthOf(figures.wingAt) + widthOf(figures.chord)) / 2 + 6 > (wingAt + chord) / 2 / mmPerPx || widthOf(figures.chord) > chord / mmPerPx + 16;

/** Lays out the views that are shown: side above plan, the front view beside the side view or below. */
export function layOutThreeView(picture: ThreeViewPicture, widthPx: number): ThreeViewLayout {
  const {show} = picture;
  const {length, halfSpan, halfFlown, above, below} = picture.shapes.extent;
  const shows = (name: ViewName): boolean => show.includes(name);
  const beside = widthPx >= WIDE && shows('front') && show.length > 1;
  const lying = shows('side') || shows('plan');
  const {side, plan, front} = roomsFor(picture);

  const across = beside
    ? (length + 2 * halfFlown) / (widthPx - side.left - side.right - front.left - front.right)
    : Math.max(...(lying ? [length / (widthPx - side.left - side.right)] : []), ...(shows('front') ? [2 * halfFlown / (widthPx - 2 * front.right)] : []));
  const u = Math.max(across, shows('plan') ? 2 * halfSpan / HIGHEST : 0, 1e-6);
  const width = widthPx * u;

  const columnA = (beside ? length + (side.left + side.right) * u : width);
  const spare = beside ? width - (columnA + 2 * halfFlown + (front.left + front.right) * u) : 0;
  // in the middle, where the room for lettering on either side allows it
  const nose = beside ? spare / 2 + side.left * u : Math.min(Math.max((width - length) / 2, side.left * u), width - length - side.right * u);
  const middle = beside ? spare / 2 + columnA + front.left * u + halfFlown : width / 2;

  const origins: Partial<Record<ViewName, XY>> = {};
  let y = 0;
  if (shows('side')) {
    origins.side = {x: nose, y: y + side.above * u + above};
    y = origins.side.y + below + (side.below + (isCrowded(picture, u) ? 23 : 0)) * u;
  }
  const rowEnd = y;
  if (shows('plan')) {
    origins.plan = {x: nose, y: y + plan.above * u + halfSpan};
    y = origins.plan.y + halfSpan + belowPlan(picture) * u;
  }
  if (shows('front')) {
    const top = beside ? 0 : y;
    origins.front = {x: middle, y: top + front.above * u + above};
    const end = origins.front.y + below + front.below * u;
    y = Math.max(y, end);
    if (beside && shows('plan')) {
      const from = Math.max(end, rowEnd) + 8 * u;
      return {
        origins, view: {mmPerPx: u, box: {x: 0, y: 0, width, height: y}},
        corner: {x: middle - halfFlown, y: from, width: 2 * halfFlown + front.right * u - 6 * u, height: y - from - 10 * u},
      };
    }
  }
  return {origins, view: {mmPerPx: u, box: {x: 0, y: 0, width, height: y}}};
}
