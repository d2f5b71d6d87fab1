import {bounds} from '../../geometry/polygon/index.js';
import type {Placed} from '../layout.js';
import type {FoundSheet} from './job.js';

/** A tick of the pencil, and the line to draw from it. */
export interface Tick {
  /** From the corner along the edge, m: every tick is measured from there, so that errors do not add up. */
  readonly at: number;
  /** Where the line runs, from and to along the other edge, m: pieces that have an edge on it. */
  readonly spans: readonly {readonly from: number; readonly to: number}[];
  readonly pieces: readonly Placed[];
}

/** What to tick off along the edges of a sheet, all from one corner, in the order of the pencil. */
export interface MarkingOut {
  /** Along x, to be ticked along both edges that run that way. */
  readonly x: readonly Tick[];
  /** Along y, likewise. */
  readonly y: readonly Tick[];
  /** Whether x is the longer way. */
  readonly longAlongX: boolean;
  /** From corner to corner, m: both must be the same, or the sheet is not square. */
  readonly diagonal: number;
}

/** Ticks nearer than this are one, m. */
const one = 1e-6;

/** The marking-out list of a sheet: the upright bounds of every piece; edges of the sheet itself need no tick. */
export function markingOut({cutouts, length, width}: FoundSheet): MarkingOut {
  const placed = cutouts.flatMap(({pieces}) => pieces).map((piece) => ({piece, box: bounds(piece.outline)}));
  return {
    x: ticksFrom(placed.flatMap(({piece, box}) => [box.x, box.x + box.length].map((at) => ({at, from: box.y, to: box.y + box.width, piece}))), length),
    y: ticksFrom(placed.flatMap(({piece, box}) => [box.y, box.y + box.width].map((at) => ({at, from: box.x, to: box.x + box.length, piece}))), width),
    longAlongX: length >= width,
    diagonal: Math.hypot(length, width),
  };
}

interface Edge {
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly piece: Placed;
}

function ticksFrom(edges: readonly Edge[], end: number): Tick[] {
  const ticks: {at: number; edges: Edge[]}[] = [];
  for (const edge of [...edges].sort((a, b) => a.at - b.at)) {
    if (edge.at < one || edge.at > end - one) continue;
    const last = ticks.at(-1);
    if (last && edge.at - last.at < one) last.edges.push(edge);
    else ticks.push({at: edge.at, edges: [edge]});
  }
  return ticks.map(({at, edges: on}) => ({at, spans: joined(on), pieces: [...new Set(on.map(({piece}) => piece))]}));
}

/** Spans that touch or overlap as one. */
function joined(edges: readonly Edge[]): {from: number; to: number}[] {
  const spans: {from: number; to: number}[] = [];
  for (const {from, to} of [...edges].sort((a, b) => a.from - b.from)) {
    const last = spans.at(-1);
    if (last && from <= last.to + one) last.to = Math.max(last.to, to);
    else spans.push({from, to});
  }
  return spans;
}
