import {good, refused, type Outcome} from '../problem.js';
import type {DerivedValue} from '../derived-value.js';
import {cutSheets, type CutSheets} from './from-parts.js';

/** A number of one glider laid out; none while a part does not fit the sheet. */
const ofSheets = (kind: DerivedValue['kind'], pick: (cut: CutSheets) => number | undefined): DerivedValue => ({
  kind,
  of(design): Outcome<number> {
    const cut = cutSheets(design, 1);
    if (!cut.ok) return cut;
    if (cut.value.leftOut.length > 0) return refused(...cut.value.leftOut.map(({problem}) => problem));
    const value = pick(cut.value);
    return value === undefined ? refused({code: 'nothing-left-over'}) : good(value);
  },
});

/** What follows from laying the parts of one glider out on the board at hand. */
export const sheetValues: Readonly<Record<string, DerivedValue>> = {
  count: ofSheets('count', ({sheets}) => sheets),
  waste: ofSheets('ratio', ({usedArea, sheetArea}) => sheetArea > 0 ? 1 - usedArea / sheetArea : undefined),
  partsArea: ofSheets('area', ({usedArea}) => usedArea),
  leftoverLength: ofSheets('length', ({leftover}) => leftover && Math.max(leftover.length, leftover.width)),
  leftoverWidth: ofSheets('length', ({leftover}) => leftover && Math.min(leftover.length, leftover.width)),
};
