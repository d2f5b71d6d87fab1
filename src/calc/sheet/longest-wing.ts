import {good, type Outcome} from '../problem.js';
import {cutFrom, cutSheets, type CutSheets, type ToCut} from './from-parts.js';
import {remember} from './remember.js';
import {usable} from './shape.js';
import {leastSteps, spanOf, stepsIn} from './span-steps.js';

/** The longest wing for a number of sheets, everything else as it is. Lengths in m. */
export interface LongestWing {
  /** A whole number of steps; undefined where no wing fits. */
  readonly span: number | undefined;
  /** No wing is longer in any layout: as long as the sheet itself inside its margins, along its grain if it has one. */
  readonly longest: number;
  /** That wing laid out with the other parts; without one, the present glider. */
  readonly cut: CutSheets;
}

const solve = remember((design: ToCut, kits: number, sheets: number, step: number): Outcome<LongestWing> => {
  const now = cutSheets(design, kits);
  if (!now.ok) return now;
  const cutWith = (steps: number): CutSheets | undefined =>
    cutFrom(sheets, {...design, wing: {...design.wing, span: spanOf(steps, step)}}, kits);
  const room = usable(now.value.stock);
  const {grain} = design.board;
  const longest = stepsIn(grain === 'none' ? Math.max(room.length, room.width) : room[grain], step);
  let fit = leastSteps(design.wing, step), over = longest + 1;
  let best: {steps: number; cut: CutSheets} | undefined;
  const attempt = (steps: number): boolean => {
    const cut = cutWith(steps);
    if (cut) best = {steps, cut};
    return cut !== undefined;
  };
  if (fit > longest) return good({span: undefined, longest: spanOf(longest, step), cut: now.value});
  if (!attempt(longest)) {
    over = longest;
    const present = stepsIn(design.wing.span, step);
    if (present > fit && present < over && attempt(present)) fit = present;
    else if (!attempt(fit)) over = fit;
    while (over - fit > 1) {
      const middle = Math.floor((fit + over) / 2);
      if (attempt(middle)) fit = middle; else over = middle;
    }
  }
  return good(best
    ? {span: spanOf(best.steps, step), longest: spanOf(longest, step), cut: best.cut}
    : {span: undefined, longest: spanOf(longest, step), cut: now.value});
});

/**
 * The longest wing that so many sheets have room for together with the other parts of so many gliders, to a whole number
 * of `step` metres. Found by halving between the shortest wing that keeps its joints and one as long as the sheet, so a
 * layout better than the first placement may yet find room for a little more.
 *
 * Refused as {@link cutSheets}.
 */
export const longestWing = ({wing, body, tail, arrangement, board}: ToCut, kits: number, sheets: number, step: number): Outcome<LongestWing> =>
  solve({wing, body, tail, arrangement, board}, kits, sheets, step);
