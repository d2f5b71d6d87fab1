import {
  bounds, counterClockwise, isSimple, mirrored, movedTo, quarterTurned, signedArea, type Polygon,
} from '../geometry/polygon/index.js';
import type {Problem} from '../problem.js';
import type {PartToPlace, SheetStock} from './layout.js';

/** One way a part may lie: its outline with the corner of its bounds at the origin. */
export interface Pose {
  /** Quarter turns counter-clockwise, after mirroring. */
  readonly quarters: number;
  readonly mirrored: boolean;
  readonly outline: Polygon;
  readonly length: number;
  readonly width: number;
}

/** A part made ready for placing: all the ways it may lie, the first as given, or across where it must. */
export interface Shape {
  readonly part: PartToPlace;
  readonly poses: readonly [Pose, ...Pose[]];
  readonly area: number;
}

/** The part of a sheet that may be used, inside its margins. */
export interface Usable {
  readonly length: number;
  readonly width: number;
}

export const usable = ({length, width, margin}: SheetStock): Usable =>
  ({length: length - 2 * margin, width: width - 2 * margin});

/** Longer than it is by a billionth, a part still fits: rounding must not keep a part as long as the sheet off it. */
export const slack = ({length, width}: Usable): number => 1e-9 * Math.max(length, width);

/** Whether a rectangle, as it lies, fits the sheet. */
export const fits = (length: number, width: number, sheet: Usable): boolean =>
  length <= sheet.length + slack(sheet) && width <= sheet.width + slack(sheet);

/** The outline of a part lying in one way, with the corner of its bounds at the origin. */
export const lying = (outline: Polygon, quarters: number, turnedOver: boolean): Polygon =>
  movedTo(quarterTurned(turnedOver ? mirrored(outline) : outline, quarters), 0, 0);

/** Makes a part ready, or says why no copy of it can be placed. */
export function shapeOf(part: PartToPlace, sheet: Usable): Shape | Problem {
  const {id, mayTurn, mayTurnHalf, mayMirror} = part;
  const first = !mayTurn && part.liesAcross ? 1 : 0;
  const finite = part.outline.every(({x, y}) => Number.isFinite(x) && Number.isFinite(y));
  const area = Math.abs(signedArea(part.outline));
  if (!finite || !(area > 0)) return {code: 'outline-empty', args: {id}};
  if (!isSimple(part.outline)) return {code: 'outline-crosses-itself', args: {id}};
  const outline = counterClockwise(part.outline);
  const pose = (quarters: number, turnedOver: boolean): Pose => {
    const placed = lying(outline, quarters, turnedOver);
    const {length, width} = bounds(placed);
    return {quarters, mirrored: turnedOver, outline: placed, length, width};
  };
  const given = pose(first, false);
  const others = (mayTurn ? [0, 1, 2, 3] : mayTurnHalf ? [first, first + 2] : [first]).flatMap((quarters) =>
    (mayMirror ? [false, true] : [false])
      .filter((turnedOver) => quarters > first || turnedOver)
      .map((turnedOver) => pose(quarters, turnedOver)));
  const {length, width} = given;
  if (!fits(length, width, sheet) && !(mayTurn && fits(width, length, sheet))) {
    return {code: 'part-too-big', args: {id, length, width, sheetLength: sheet.length, sheetWidth: sheet.width}};
  }
  return {part, poses: [given, ...others], area};
}
