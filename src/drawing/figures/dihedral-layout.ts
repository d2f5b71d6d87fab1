import {widthOf} from '../lettering.js';
import type {XY} from '../pen.js';
import type {View} from '../view.js';

type Outline = readonly XY[];

/** One joint on the bench, half the wing seen from the front: millimetres, x from the middle of the wing, y upwards from the bench. */
export interface BenchSketch {
  /** The board, panel by panel. */
  readonly panels: readonly Outline[];
  /** Where the joint is. */
  readonly joint: number;
  /** The lower face of the propped panel, from its inner to its outer end. */
  readonly start: XY;
  readonly end: XY;
  /** From level to the propped panel, radians. */
  readonly lean: number;
  readonly block: {readonly near: number; readonly far: number; readonly height: number};
  readonly contact: XY;
  readonly touches: boolean;
  /** Joints further in that are not folded yet. */
  readonly waiting: readonly number[];
  readonly words: {readonly title: string; readonly angle: string; readonly panel: string; readonly height: string; readonly at: string; readonly contact: string};
}

/** The whole wing from the front as it flies, millimetres, from the middle of its lower face. */
export interface FlownSketch {
  readonly panels: readonly Outline[];
  readonly halfSpan: number;
  /** The outer end of the right half, lower face. */
  readonly tip: XY;
  readonly equivalent: number;
  readonly words: {readonly title: string; readonly span: string; readonly rise: string; readonly equivalent: string};
}

export interface DihedralPicture {
  readonly thickness: number;
  /** What every bench sketch shows, from left to right. */
  readonly from: number;
  readonly to: number;
  /** The board goes on to the left of what is shown. */
  readonly broken: boolean;
  /** In the order of work. */
  readonly sketches: readonly BenchSketch[];
  readonly flown: FlownSketch;
  readonly words: {readonly middle: string};
}

export interface DihedralLayout {
  readonly view: View;
  /** The bench of each sketch, millimetres down the figure. */
  readonly benches: readonly number[];
  readonly flown: {readonly middle: XY; readonly scale: number};
}

/** Room in pixels that the lettering needs, the same at any scale. */
export const room = {title: 24, above: 38, bench: 9, below: 56, between: 14, flownTitle: 18, flownAbove: 10, flownBelow: 36, highest: 340, twoTitles: 560} as const;

const highest = (outlines: readonly Outline[]): number => Math.max(0, ...outlines.flat().map(({y}) => y));

/** Bench sketches one under the other at one scale, then the wing as it flies, to a scale of its own. */
export function layOutDihedral({from, to, sketches, flown}: DihedralPicture, widthPx: number): DihedralLayout {
  const heights = [...sketches.map(({words}) => words.height), flown.words.rise];
  const pads = {left: widthPx < 460 ? 6 : 16, right: 28 + Math.max(...heights.map((words) => widthOf(words)))};
  const tops = sketches.map(({panels, block}) => Math.max(highest(panels), block.height));
  const inner = Math.max(widthPx - pads.left - pads.right, 40);
  const u = Math.max((to - from) / inner, ...tops.map((top) => top / room.highest));
  const titled = sketches.length > 1 ? room.title : 0;
  let y = 0;
  const benches = tops.map((top) => {
    const bench = y + (titled + room.above) * u + top;
    y = bench + (room.bench + room.below + room.between) * u;
    return bench;
  });
  const width = widthPx * u;
  const x = from - pads.left * u - (inner * u - (to - from)) / 2;
  // as much room to the left as the height of the tips needs on the right
  const scale = Math.min(width - 2 * pads.right * u, 620 * u) / (2 * flown.halfSpan);
  const titles = flown.words.equivalent && widthPx < room.twoTitles ? 2 : 1;
  const middle = {x: x + width / 2, y: y + (titles * room.flownTitle + room.flownAbove) * u + Math.max(highest(flown.panels), flown.halfSpan * Math.tan(flown.equivalent)) * scale};
  return {
    benches, flown: {middle, scale},
    view: {mmPerPx: u, box: {x, y: 0, width, height: middle.y + room.flownBelow * u}},
  };
}
