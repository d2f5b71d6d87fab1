import {leftovers} from '../leftover.js';
import type {Stepwise} from '../../stepwise.js';
import type {Job} from './job.js';
import {partingOf} from './parting.js';
import {pushedAway} from './pushed-away.js';
import {toilOf} from './ruler.js';
import {areaLeft, cutApart, cutOut, insideOf, leftoverSteps, type Sheet} from './sheet.js';

/** With more boxes on a sheet they stay where they are: there would be too many ways. */
const mostBoxes = 24;

/** So many free rectangles are tried, the largest first. */
const mostTried = 12;

/**
 * The same sheet with what lies round a free rectangle pushed towards the edges, where that leaves a larger piece over or takes fewer cuts. The first so
 * many boxes are held where they are; what cannot leave about `toBeat` over, in m², is not looked at.
 */
export function* anchored(sheet: Sheet, fixed: number, job: Job, toBeat = 0): Stepwise<Sheet> {
  const {board, length, width, laid, leftover} = sheet;
  const {margin, gap} = job;
  if (!leftover || laid.length > mostBoxes || !Number.isFinite(board.length) || job.cuts === 'straight' && !sheet.plan) return sheet;
  const bare = {board, held: sheet.held, length, width}, inside = insideOf(bare, margin);
  const spaces = yield* leftovers(laid.map((box) => ({...box, x: box.x - margin, y: box.y - margin})), {length, width, margin, gap});
  const free = spaces.map((space) => ({...space, x: space.x + margin, y: space.y + margin}))
    .sort((a, b) => b.length * b.width - a.length * a.width).slice(0, mostTried);
  const tried = [...free, ...job.cuts === 'straight' ? [leftover] : []]
    .flatMap((each) => (['x', 'y'] as const).map((first) => pushedAway(laid, each, {inside, gap, fixed, first})))
    .sort((a, b) => b.free.length * b.free.width - a.free.length * a.free.width);
  let best = sheet;
  for (const {boxes, free: kept} of tried) {
    if (stepsOf(kept.length * kept.width, sheet) < stepsOf(Math.max(toBeat, areaLeft(best)), sheet)) break;
    yield;
    const all = [...boxes, {...kept, members: []}];
    const parting = sheet.plan && partingOf(all, gap);
    if (sheet.plan && !parting) continue;
    const other = parting ? cutApart(bare, parting, all, boxes.length, job) : yield* cutOut({...bare, laid: boxes}, job);
    if (isBetter(other, best)) best = other;
  }
  return best;
}

const stepsOf = (area: number, {length, width}: Sheet): number => Math.floor(leftoverSteps * area / (length * width) + 1e-9);

/** Whether more is left over by a step, or as much with less to cut, or a little more at the same toil. */
function isBetter(sheet: Sheet, than: Sheet): boolean {
  const toil = ({laid, plan}: Sheet): number => {
    const {cuts, settings} = toilOf(laid, plan);
    return cuts + settings;
  };
  const area = areaLeft(sheet), other = areaLeft(than);
  const gained = stepsOf(area, sheet) - stepsOf(other, than) || toil(than) - toil(sheet);
  return gained > 0 || gained === 0 && area > other * (1 + 1e-9);
}
