import {pointInPolygon} from '../../calc/geometry/polygon/index.js';
import type {SheetPicture, SheetsLayout} from '../../drawing/figures/sheet-layout.js';

/** The number of the piece under a point of the figure, in pixels from its upper left corner. */
export function pieceAt({sheets}: SheetPicture, {view, corners}: SheetsLayout, x: number, y: number): number | undefined {
  const at = {x: view.box.x + x * view.mmPerPx, y: view.box.y + y * view.mmPerPx};
  for (const [i, {pieces}] of sheets.entries()) {
    const corner = corners[i];
    const piece = corner && pieces.find(({outline}) => pointInPolygon({x: at.x - corner.x, y: corner.y - at.y}, outline) !== 'outside');
    if (piece) return piece.number;
  }
  return undefined;
}
