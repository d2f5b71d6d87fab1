import type {PartToPlace, SheetStock} from './layout.js';
import {shapeOf, usable} from './shape.js';

/**
 * A number of sheets that no layout can do with fewer than, by area alone; 0 when nothing can be placed. A layout on
 * exactly so many sheets is proved to be on as few as can be.
 *
 * Pieces that keep a gap g stay apart when each is fattened by g/2 all round, and lie in the sheet fattened likewise.
 * A fattened piece of area A has at least the area (√A + √π g/2)², as a disc would (Brunn–Minkowski inequality).
 */
export function lowerBoundSheets(parts: readonly PartToPlace[], stock: SheetStock): number {
  const sheet = usable(stock);
  const r = stock.gap / 2;
  let needed = 0;
  for (const part of parts) {
    const shape = shapeOf(part, sheet);
    if ('area' in shape) needed += part.count * (Math.sqrt(shape.area) + Math.sqrt(Math.PI) * r) ** 2;
  }
  const room = sheet.length * sheet.width + 2 * (sheet.length + sheet.width) * r + Math.PI * r * r;
  return Math.ceil(needed / room - 1e-9) || 0;
}
