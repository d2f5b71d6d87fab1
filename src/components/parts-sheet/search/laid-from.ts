import {bounds, type Point} from '../../../calc/geometry/polygon/index.js';
import type {Part, PartLine} from '../../../calc/parts/part.js';
import type {Found, FoundSheet} from '../../../calc/sheet/engine/job.js';
import {spliced} from '../../../calc/sheet/engine/splice.js';
import type {CutSheets, LeftOut} from '../../../calc/sheet/from-parts.js';
import type {Placed} from '../../../calc/sheet/layout.js';
import {linesOnSheet} from '../../../calc/sheet/plans.js';
import type {CutPart, LaidOut, LaidPlan} from '../laid-out.js';

/** What the search found for the same question as the first placement, as the element shows it. */
export function laidFrom(found: Found, first: CutSheets, otherBoards: boolean): LaidOut {
  const parts = first.parts.flatMap((part) => lengthsOf(part, found));
  const plans = plansFrom(found.sheets, parts);
  const last = plans.at(-1);
  const own = found.sheets.filter(({board}) => !board.leftover).length;
  const byArea = otherBoards || first.leftOut.length > 0 ? 0 : first.least;
  return {
    ...first, byArea, parts, plans, from: 'search',
    sheets: own, oldPieces: found.sheets.length - own,
    least: Math.max(byArea, found.least),
    leftOut: leftOutOf(first.parts, found),
    leftover: last?.leftover,
    usedArea: plans.reduce((sum, {pieces, alike}) => sum + alike * pieces.reduce((area, {part}) => area + part.area, 0), 0),
    sheetArea: found.sheets.reduce((sum, {length, width}) => sum + length * width, 0),
    alike: undefined, problems: found.problems,
  };
}

/** A part as it is cut: whole, or the lengths that it was spliced from. */
function lengthsOf(part: Part, {spliced: splices}: Found): readonly CutPart[] {
  const into = splices.find(({id}) => id === part.id)?.into;
  if (!into) return [part];
  const {length, width} = bounds(part.outline);
  const longest = Math.max(length, width) / into.length;
  return spliced({...part, mayTurn: true}, {length: longest, width: 0}).map(({outline}, i): CutPart => {
    const box = bounds(outline);
    const lines = part.lines.flatMap((line) => (length >= width
      ? between(line, 'x', box.x, box.x + box.length) : between(line, 'y', box.y, box.y + box.width)));
    return {...part, outline, lines, area: part.area / into.length, piece: {nth: i + 1, of: into.length}};
  });
}

/** As much of a line as lies between two places along an axis. */
function between(line: PartLine, axis: 'x' | 'y', low: number, high: number): readonly PartLine[] {
  const {from, to} = line;
  const run = to[axis] - from[axis];
  if (Math.abs(run) < 1e-9) return from[axis] > low - 1e-9 && from[axis] < high + 1e-9 ? [line] : [];
  const [enter, leave] = [(low - from[axis]) / run, (high - from[axis]) / run].sort((a, b) => a - b);
  const [first, last] = [Math.max(0, enter ?? 0), Math.min(1, leave ?? 1)];
  const at = (share: number): Point => ({x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y)});
  return last - first > 1e-6 ? [{...line, from: at(first), to: at(last)}] : [];
}

const nameOf = ({id, piece}: CutPart): string => (piece ? `${id} ${String(piece.nth)}/${String(piece.of)}` : id);

function leftOutOf(parts: readonly Part[], {unplaced}: Found): readonly LeftOut[] {
  return parts.flatMap(({id}): LeftOut[] => {
    const missing = unplaced.filter((each) => each.id === id || each.id.startsWith(`${id} `));
    return missing[0] ? [{id, count: missing.length, problem: missing[0].problem}] : [];
  });
}

const samePiece = (a: Placed, b: Placed | undefined): boolean =>
  a.id === b?.id && a.x === b.x && a.y === b.y && a.turn === b.turn && a.mirrored === b.mirrored;

const placedOn = ({cutouts}: FoundSheet): readonly Placed[] => cutouts.flatMap(({pieces}) => pieces);

/** Sheets of the same board with the same pieces in the same places, one after another, are one plan. */
function plansFrom(sheets: readonly FoundSheet[], parts: readonly CutPart[]): readonly LaidPlan[] {
  const plans: {first: number; alike: number; sheet: FoundSheet; placed: readonly Placed[]}[] = [];
  sheets.forEach((sheet, i) => {
    const placed = placedOn(sheet);
    const before = plans.at(-1);
    const same = before?.sheet.board.id === sheet.board.id && before.sheet.held === sheet.held
      && before.placed.length === placed.length && placed.every((piece, k) => samePiece(piece, before.placed[k]));
    if (before && same) before.alike++;
    else plans.push({first: i + 1, alike: 1, sheet, placed});
  });
  const numbers = new Map(parts.flatMap((part) => plans.flatMap(({placed}) => placed.filter(({id}) => id === nameOf(part)))).map((piece, i) => [piece, i + 1]));
  return plans.map(({placed, ...plan}): LaidPlan => ({
    ...plan,
    leftover: plan.sheet.leftover && {...plan.sheet.leftover, sheet: plan.first - 1},
    pieces: placed.flatMap((piece) => {
      const part = parts.find((each) => nameOf(each) === piece.id);
      return part ? [{number: numbers.get(piece) ?? 0, part, placed: piece, lines: linesOnSheet(part, piece)}] : [];
    }).sort((a, b) => a.number - b.number),
  }));
}
