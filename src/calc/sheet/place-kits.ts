import {good, type Outcome} from '../problem.js';
import type {Layout, PartToPlace, Placed, SheetStock} from './layout.js';
import {lowerBoundSheets} from './lower-bound.js';
import {placeParts} from './place-parts.js';
import {remember} from './remember.js';

/** Sheets that are all cut to one plan, as far as the number of gliders goes into it. */
export interface AlikeSheets {
  /** Gliders that one sheet gives by itself. */
  readonly perSheet: number;
  readonly sheets: number;
}

export interface KitsLayout {
  readonly layout: Layout;
  /** What it would take with every sheet cut alike; undefined where a sheet does not give a whole glider. */
  readonly alike: AlikeSheets | undefined;
}

const times = (parts: readonly PartToPlace[], kits: number): readonly PartToPlace[] =>
  parts.map((part) => ({...part, count: part.count * kits}));

/** The parts of so many gliders, all placed together. */
const together = remember((parts: readonly PartToPlace[], stock: SheetStock, kits: number) => placeParts(times(parts, kits), stock), 64);

/** Whether everything for so many gliders finds room on so many sheets. */
function fitsOn(sheets: number, parts: readonly PartToPlace[], stock: SheetStock, kits: number): boolean {
  if (lowerBoundSheets(times(parts, kits), stock) > sheets) return false;
  const layout = together(parts, stock, kits);
  return layout.ok && layout.value.unplaced.length === 0 && layout.value.sheets <= sheets;
}

/** The most gliders, up to `most`, that a number of sheets gives when all their parts are placed together; found by halving. */
export function mostKits(sheets: number, parts: readonly PartToPlace[], stock: SheetStock, most: number): number {
  let fit = 0, least = 1, tooMany = most + 1;
  while (least < tooMany) {
    const kits = Math.min(fit > 0 ? fit * 2 : 1, Math.floor((least + tooMany) / 2));
    if (fitsOn(sheets, parts, stock, kits)) { fit = kits; least = kits + 1; } else tooMany = kits;
  }
  return fit;
}

/**
 * Places the parts of so many gliders: all together, or as many sheets as possible cut alike and the rest by itself,
 * whichever takes fewer sheets. Where both take as many, sheets cut alike are quicker to mark and win.
 *
 * What does not fit at all, and what is refused, as {@link placeParts}.
 */
export function placeKits(parts: readonly PartToPlace[], stock: SheetStock, kits: number): Outcome<KitsLayout> {
  const joint = together(parts, stock, kits);
  if (!joint.ok) return joint;
  if (kits === 1 || joint.value.unplaced.length > 0) return good({layout: joint.value, alike: undefined});
  const perSheet = mostKits(1, parts, stock, kits);
  if (perSheet === 0) return good({layout: joint.value, alike: undefined});
  const full = Math.floor(kits / perSheet), over = kits - full * perSheet;
  const whole = together(parts, stock, perSheet);
  const rest = over > 0 ? together(parts, stock, over) : undefined;
  if (!whole.ok || rest?.ok === false) return good({layout: joint.value, alike: undefined});
  const layout = oneAfterAnother([...Array<Layout>(full).fill(whole.value), ...rest ? [rest.value] : []]);
  return good({
    layout: layout.sheets <= joint.value.sheets ? layout : joint.value,
    alike: {perSheet, sheets: layout.sheets},
  });
}

/** Several layouts as one: their sheets follow each other, the copies of each part are counted on. */
function oneAfterAnother(layouts: readonly Layout[]): Layout {
  const copies = new Map<string, number>();
  let sheets = 0;
  const placed = layouts.flatMap((layout) => {
    const from = sheets;
    sheets += layout.sheets;
    return layout.placed.map((piece): Placed => {
      const copy = copies.get(piece.id) ?? 0;
      copies.set(piece.id, copy + 1);
      return {...piece, copy, sheet: from + piece.sheet};
    });
  });
  const leftover = layouts.at(-1)?.leftover;
  const sum = (of: (layout: Layout) => number): number => layouts.reduce((total, layout) => total + of(layout), 0);
  return {
    sheets, placed, unplaced: [],
    usedArea: sum(({usedArea}) => usedArea), wasteArea: sum(({wasteArea}) => wasteArea),
    leftover: leftover && {...leftover, sheet: sheets - 1},
  };
}
