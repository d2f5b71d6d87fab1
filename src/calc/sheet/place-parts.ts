import {moved} from '../geometry/polygon/index.js';
import {good, refused, type Outcome} from '../problem.js';
import {membersTurned, single, type Block, type Member} from './block.js';
import {problemsOf} from './check.js';
import {fillSheets, type Filling, type Spot, type Strategy} from './fill-sheets.js';
import type {Layout, PartToPlace, Placed, SheetStock, Turn, Unplaced} from './layout.js';
import {largestLeftover} from './leftover.js';
import {nestingPairs} from './pairs.js';
import {shapeOf, usable, type Shape} from './shape.js';
import type {Space} from './free-space.js';
import {finished} from '../stepwise.js';
import {strategies} from './strategies.js';

/** Pieces times strategies tried: keeps a big job as quick as a small one is thorough. */
const effort = 400;

/**
 * Places parts on as few sheets as it finds, and among those with the largest rectangle left over on the last one.
 *
 * A first placement, the same every time for the same parts: pieces go by their bounds, straight or a quarter turned,
 * and two tapered pieces may first be nested into one. It tries the parts in several orders, into straight-cut strips
 * and into every largest free rectangle. What cannot be placed is named in the layout; the rest is placed all the same.
 *
 * Refused as a whole: 'sheet-not-positive' {length, width}, 'margin-negative' {margin}, 'gap-negative' {gap},
 * 'margin-too-wide' {margin, length, width}, 'sheet-count-not-whole' {count}, 'part-count-not-whole' {id, count},
 * 'too-many-parts' {count, most}.
 */
export function placeParts(parts: readonly PartToPlace[], stock: SheetStock): Outcome<Layout> {
  const problems = problemsOf(parts, stock);
  if (problems.length) return refused(...problems);
  const shapes = parts.map((part) => shapeOf(part, usable(stock)));
  const whole = shapes.filter((shape) => 'poses' in shape);
  const best = bestFilling(whole, stock);
  const placed = placedPieces(best, stock);
  const unplaced = parts.flatMap((part, i): Unplaced[] => {
    const shape = shapes[i];
    if (!shape) return [];
    const {id, count} = part;
    const problem = 'code' in shape ? shape : {code: 'sheets-run-out', args: {id, sheets: stock.count ?? 0}};
    const done = placed.filter((piece) => piece.shape === shape).length;
    return Array.from({length: count - done}, (_, more) => ({id, copy: done + more, problem}));
  });
  const usedArea = placed.reduce((sum, {shape}) => sum + shape.area, 0);
  const leftover = leftoverOf(best, stock);
  return good({
    sheets: best.sheets,
    placed: placed.map(({piece}) => piece),
    unplaced,
    usedArea,
    wasteArea: best.sheets * stock.length * stock.width - usedArea,
    leftover: leftover && {
      ...leftover, sheet: best.sheets - 1, x: leftover.x + stock.margin, y: leftover.y + stock.margin,
    },
  });
}

/** The best of all the ways tried: the least left out, then the fewest sheets, then the largest leftover. */
function bestFilling(shapes: readonly Shape[], stock: SheetStock): Filling {
  const sheet = usable(stock);
  const singles = shapes.flatMap((shape) => Array.from({length: shape.part.count}, () => single(shape)));
  const nested = nestedBlocks(shapes, stock);
  const tries = Math.ceil(effort / (singles.length + 1));
  let best: Filling = {spots: [], left: singles, sheets: 0};
  let bestLeft = Infinity, bestLeftover = 0;
  const attempt = (blocks: readonly Block[], strategy: Strategy) => {
    const filling = fillSheets(blocks, sheet, stock.gap, stock.count ?? Infinity, strategy);
    const left = filling.left.reduce((sum, {members}) => sum + members.reduce((area, {shape}) => area + shape.area, 0), 0);
    if (left > bestLeft || left === bestLeft && filling.sheets > best.sheets) return;
    const leftover = leftoverOf(filling, stock);
    const area = leftover ? leftover.length * leftover.width : 0;
    if (left === bestLeft && filling.sheets === best.sheets && area <= bestLeftover * (1 + 1e-9)) return;
    [best, bestLeft, bestLeftover] = [filling, left, area];
  };
  for (const strategy of strategies.slice(0, tries)) {
    attempt(singles, strategy);
    if (nested) attempt(nested, strategy);
  }
  return best;
}

/** The pieces with as many of them as possible nested in pairs, the best pairs first; undefined when none nest. */
function nestedBlocks(shapes: readonly Shape[], stock: SheetStock): Block[] | undefined {
  const pairs = finished(nestingPairs(shapes, usable(stock), stock.gap));
  if (!pairs.length) return undefined;
  const waiting = new Map(shapes.map((shape) => [shape, shape.part.count]));
  const take = (shape: Shape, count: number) => waiting.set(shape, (waiting.get(shape) ?? 0) - count);
  const blocks = pairs.flatMap(({first, second, block}) => {
    const [one, other] = [waiting.get(first) ?? 0, waiting.get(second) ?? 0];
    const count = first === second ? Math.floor(one / 2) : Math.min(one, other);
    take(first, count);
    take(second, count);
    return Array.from({length: count}, () => block);
  });
  const rest = [...waiting].flatMap(([shape, count]) => Array.from({length: count}, () => single(shape)));
  return [...blocks, ...rest];
}

interface Piece extends Member {
  readonly sheet: number;
}

/** The pieces of blocks where they lie, from the corner of the sheet inside its margins. */
const piecesOf = (spots: readonly Spot[]): Piece[] =>
  spots.flatMap(({block, turned, sheet, x, y}) =>
    (turned ? membersTurned(block) : block.members)
      .map((member) => ({...member, sheet, x: x + member.x, y: y + member.y})));

const leftoverOf = ({spots, sheets}: Filling, stock: SheetStock): Space | undefined =>
  sheets ? finished(largestLeftover(piecesOf(spots.filter(({sheet}) => sheet === sheets - 1)), stock)) : undefined;

/** Every piece sheet by sheet, from the corner of the sheet itself, its copies counted in that order. */
function placedPieces({spots}: Filling, {margin}: SheetStock): {shape: Shape; piece: Placed}[] {
  const copies = new Map<Shape, number>();
  return piecesOf(spots).sort((a, b) => a.sheet - b.sheet).map((member) => {
    const {shape, sheet, mirrored, quarters} = member;
    const copy = copies.get(shape) ?? 0;
    copies.set(shape, copy + 1);
    const x = margin + member.x, y = margin + member.y;
    const pose = shape.poses.find((each) => each.quarters === quarters && each.mirrored === mirrored) ?? shape.poses[0];
    const turn = pose.quarters * 90 as Turn;
    return {shape, piece: {id: shape.part.id, copy, sheet, x, y, turn, mirrored, outline: moved(pose.outline, x, y)}};
  });
}
