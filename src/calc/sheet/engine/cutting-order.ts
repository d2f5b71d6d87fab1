import {eachEdge, signedArea, type Polygon} from '../../geometry/polygon/index.js';
import type {Placed} from '../layout.js';
import {clipped, leftOf} from './clip.js';
import {hull} from './convex.js';
import {lineBetween, type Line} from './divide.js';
import type {Box, CutNode, Cutout, FoundSheet} from './job.js';
import {across, near} from './parting.js';

/**
 * A cut along the ruler, set to a distance from the left or the lower edge of the piece in hand, across the whole of it.
 * The gap that the knife takes lies beyond the line, or before it where only an offcut comes off.
 */
export interface RulerCut {
  readonly kind: 'ruler';
  /** The piece in hand, and where it lies on the sheet. */
  readonly hand: Box;
  /** Whether the cut runs along x. */
  readonly along: boolean;
  readonly setting: number;
  /** Whether the ruler is still set to that from the cut before. */
  readonly again: boolean;
  readonly line: Line;
  /** What comes off, on the side of the edge measured from, and what stays in hand. */
  readonly off: Box;
  readonly rest: Box;
}

/** A straight cut along edges of pieces, across what is in hand. */
export interface EdgeCut {
  readonly kind: 'edge';
  readonly hand: Polygon;
  readonly line: Line;
  readonly pieces: readonly Placed[];
}

/** What no straight cut can do: the rest of an outline with inward corners. */
export interface OutlineCut {
  readonly kind: 'outline';
  readonly hand: Polygon;
  readonly pieces: readonly Placed[];
}

export type CutStep = RulerCut | EdgeCut | OutlineCut;

/** How to cut a sheet, step by step; pieces of a sheet that is not cut edge to edge are each cut along their outline. Lengths in m. */
export function cuttingOrder({plan, cutouts}: FoundSheet, gap: number): readonly CutStep[] {
  const steps = plan ? stepsOf(plan, cutouts, gap) : cutouts.flatMap(({pieces}) => pieces.map((piece): CutStep =>
    ({kind: 'outline', hand: piece.outline, pieces: [piece]})));
  let set = NaN;
  return steps.map((step) => {
    if (step.kind !== 'ruler') return step;
    const again = Math.abs(step.setting - set) < near;
    set = step.setting;
    return {...step, again};
  });
}

function stepsOf({box, along, strips, cutout}: CutNode, cutouts: readonly Cutout[], gap: number): CutStep[] {
  const pieces = cutout === undefined ? [] : cutouts[cutout]?.pieces ?? [];
  if (strips.length === 0) return partSteps(cornersOf(box), pieces, gap);
  const {start, size} = across(along);
  const end = start(box) + size(box);
  const from = (at: number): Box => (along ? {...box, y: at, width: end - at} : {...box, x: at, length: end - at});
  const cuts = strips.slice(0, -1).map((strip, i): RulerCut => {
    const off = strip.box;
    const next = start(strips[i + 1]?.box ?? off);
    const edge = isOffcut(strip) ? next : start(off) + size(off);
    const line = along
      ? {from: {x: box.x, y: edge}, to: {x: box.x + box.length, y: edge}}
      : {from: {x: edge, y: box.y}, to: {x: edge, y: box.y + box.width}};
    return {kind: 'ruler', hand: from(start(off)), along, setting: edge - start(off), again: false, line, off, rest: from(Math.min(next, end))};
  });
  return [...cuts, ...strips.flatMap((strip) => stepsOf(strip, cutouts, gap))];
}

const isOffcut = ({strips, cutout}: CutNode): boolean => strips.length === 0 && cutout === undefined;

const cornersOf = ({x, y, length, width}: Box): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];

/** Two nested pieces are parted first, then each is cut along its edges. */
function partSteps(hand: Polygon, pieces: readonly Placed[], gap: number): CutStep[] {
  const [a, b] = pieces;
  if (!a) return [];
  if (!b) return edgeSteps(hand, a);
  const line = lineBetween(a.outline, b.outline, gap);
  if (!line) return [{kind: 'outline', hand, pieces}];
  const isLeft = leftOf(line.from, line.to);
  const left = clipped(hand, isLeft), right = clipped(hand, (point) => -isLeft(point));
  const aIsLeft = a.outline.every((point) => isLeft(point) > -near);
  return [
    {kind: 'edge', hand, line: acrossHand(hand, line), pieces},
    ...edgeSteps(aIsLeft ? left : right, a), ...edgeSteps(aIsLeft ? right : left, b),
  ];
}

/** Cuts along every edge of the piece that is not an edge of what is in hand already, the largest offcut first. */
function edgeSteps(hand: Polygon, piece: Placed): CutStep[] {
  const convex = hull(piece.outline);
  let best: {line: Line; kept: Polygon} | undefined;
  let least = signedArea(hand) * (1 - 1e-9);
  eachEdge(convex, (from, to) => {
    const kept = clipped(hand, leftOf(from, to));
    const area = signedArea(kept);
    if (area >= least) return;
    least = area;
    best = {line: {from, to}, kept};
  });
  if (best) return [{kind: 'edge', hand, line: acrossHand(hand, best.line), pieces: [piece]}, ...edgeSteps(best.kept, piece)];
  return signedArea(piece.outline) < signedArea(convex) * (1 - 1e-9) ? [{kind: 'outline', hand, pieces: [piece]}] : [];
}

/** As much of a line as lies across what is in hand. */
function acrossHand(hand: Polygon, {from, to}: Line): Line {
  const dx = to.x - from.x, dy = to.y - from.y;
  const isLeft = leftOf(from, to);
  const ends: {at: number; x: number; y: number}[] = [];
  eachEdge(hand, (a, b) => {
    const s = isLeft(a), t = isLeft(b);
    if (s === t || Math.min(s, t) > near || Math.max(s, t) < -near) return;
    const share = Math.min(1, Math.max(0, s / (s - t)));
    const x = a.x + share * (b.x - a.x), y = a.y + share * (b.y - a.y);
    ends.push({at: x * dx + y * dy, x, y});
  });
  ends.sort((a, b) => a.at - b.at);
  const [first, last] = [ends[0] ?? from, ends.at(-1) ?? to];
  return {from: {x: first.x, y: first.y}, to: {x: last.x, y: last.y}};
}
