import type {Box, CutNode} from './job.js';
import {across, near, type Parting} from './parting.js';

/** A parting with the bounds of its boxes as they lie. */
type Bounded = {readonly bounds: Box} & ({readonly which: number} | {readonly along: boolean; readonly strips: readonly Bounded[]});

/**
 * The cuts that part boxes on a piece of board, each taking a gap: whatever lies outside them is cut off first, the largest offcut before the others, or
 * those along one way before those along the other.
 */
export function planOf(parting: Parting, boxes: readonly Box[], hand: Box, gap: number, first?: 'along' | 'across'): CutNode {
  return cutFrom(bounded(parting, boxes), hand, gap, first);
}

function bounded(parting: Parting, boxes: readonly Box[]): Bounded {
  if ('which' in parting) return {which: parting.which, bounds: boxes[parting.which] ?? {x: 0, y: 0, length: 0, width: 0}};
  const strips = parting.strips.map((strip) => bounded(strip, boxes));
  const all = strips.map(({bounds}) => bounds);
  const x = Math.min(...all.map((box) => box.x)), y = Math.min(...all.map((box) => box.y));
  const right = Math.max(...all.map((box) => box.x + box.length)), high = Math.max(...all.map((box) => box.y + box.width));
  return {along: parting.along, strips, bounds: {x, y, length: right - x, width: high - y}};
}

function cutFrom(parting: Bounded, hand: Box, gap: number, before?: 'along' | 'across'): CutNode {
  const {bounds} = parting;
  const [offcut] = [true, false].flatMap((along) => {
    const {start, size, span} = across(along);
    const ahead = start(bounds) - start(hand), after = size(hand) - size(bounds) - ahead;
    return [{along, first: true, size: ahead, area: ahead * span(hand)}, {along, first: false, size: after, area: after * span(hand)}];
  }).filter(({size}) => size > near).sort((a, b) => Number(isBefore(b.along, before)) - Number(isBefore(a.along, before)) || b.area - a.area);
  if (offcut) {
    const {along, first, size} = offcut;
    const whole = across(along).size(hand);
    const rest = strip(hand, along, first ? 0 : whole - size + gap, Math.max(0, size - gap));
    const kept = cutFrom(parting, strip(hand, along, first ? size : 0, whole - size), gap, before);
    const strips = kept.strips.length > 0 && kept.along === along ? kept.strips : [kept];
    const off: CutNode = {box: rest, along, strips: []};
    return {box: hand, along, strips: first ? [off, ...strips] : [...strips, off]};
  }
  if ('which' in parting) return {box: hand, along: false, strips: [], cutout: parting.which};
  const {along} = parting;
  const {start, size} = across(along);
  let from = 0;
  return {box: hand, along, strips: parting.strips.map((each) => {
    const end = start(each.bounds) + size(each.bounds) - start(hand);
    const node = cutFrom(each, strip(hand, along, from, end - from), gap, before);
    from = end + gap;
    return node;
  })};
}

const isBefore = (along: boolean, before: 'along' | 'across' | undefined): boolean => before !== undefined && along === (before === 'along');

const strip = (hand: Box, along: boolean, from: number, size: number): Box =>
  (along ? {...hand, y: hand.y + from, width: size} : {...hand, x: hand.x + from, length: size});

/** Every piece of board that is cut, each before what is cut from it. */
export const cutNodes = (node: CutNode): readonly CutNode[] => (node.strips.length > 0 ? [node, ...node.strips.flatMap(cutNodes)] : []);

/** All pieces of board that are not cut any further. */
export const uncut = (node: CutNode): readonly CutNode[] => (node.strips.length > 0 ? node.strips.flatMap(uncut) : [node]);

/** Whether nothing is cut from a piece of board. */
const isOffcut = ({strips, cutout}: CutNode): boolean => strips.length === 0 && cutout === undefined;

/** The same cuts but for those that only part one offcut from another; cutouts from a number on are offcuts too. */
export function withoutCuts(node: CutNode, from: number): CutNode {
  if (node.strips.length === 0) return {box: node.box, along: node.along, strips: [], ...node.cutout !== undefined && node.cutout < from ? {cutout: node.cutout} : {}};
  const strips: CutNode[] = [];
  for (const each of node.strips.map((strip) => withoutCuts(strip, from))) {
    const before = strips.at(-1);
    if (before && isOffcut(before) && isOffcut(each)) strips[strips.length - 1] = {...before, box: around(before.box, each.box)};
    else strips.push(each);
  }
  const [only] = strips;
  return only && strips.length === 1 ? {...only, box: node.box} : {...node, strips};
}

/** The bounds of both. */
export const around = (a: Box, b: Box): Box => {
  const x = Math.min(a.x, b.x), y = Math.min(a.y, b.y);
  return {x, y, length: Math.max(a.x + a.length, b.x + b.length) - x, width: Math.max(a.y + a.width, b.y + b.width) - y};
};
