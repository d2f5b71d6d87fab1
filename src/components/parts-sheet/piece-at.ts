import {pointInPolygon} from '../../calc/geometry/polygon/index.js';
import {sizeOf, type SheetPicture, type SheetsLayout} from '../../drawing/figures/sheet-layout.js';

/** The number of the piece under a point of the figure, in pixels from its upper left corner; the last drawn lies on top. */
export function pieceAt({sheets}: SheetPicture, {view, corners}: SheetsLayout, x: number, y: number): number | undefined {
  const at = {x: view.box.x + x * view.mmPerPx, y: view.box.y + y * view.mmPerPx};
  for (const [i, {pieces}] of sheets.entries()) {
    const corner = corners[i];
    const piece = corner && [...pieces].reverse().find(({outline}) => pointInPolygon({x: at.x - corner.x, y: corner.y - at.y}, outline) !== 'outside');
    if (piece) return piece.number;
  }
  return undefined;
}

/** The sheet under a point of the figure, and where on it the point is, in m from its corner; the nearest sheet for a point beside them all. */
export function sheetAt(picture: SheetPicture, {view, corners}: SheetsLayout, x: number, y: number): {readonly sheet: number; readonly x: number; readonly y: number} | undefined {
  const at = {x: view.box.x + x * view.mmPerPx, y: view.box.y + y * view.mmPerPx};
  const [nearest] = picture.sheets.flatMap((each, sheet) => {
    const corner = corners[sheet];
    if (!corner) return [];
    const {length, width} = sizeOf(each, picture);
    const on = {x: at.x - corner.x, y: corner.y - at.y};
    const off = Math.hypot(Math.max(0, -on.x, on.x - length), Math.max(0, -on.y, on.y - width));
    return [{sheet, on, off}];
  }).sort((a, b) => a.off - b.off);
  return nearest && {sheet: nearest.sheet, x: nearest.on.x / 1000, y: nearest.on.y / 1000};
}
