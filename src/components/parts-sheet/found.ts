import type {GliderDesign} from '../../calc/design/design.js';
import {refused, type Outcome} from '../../calc/problem.js';
import {cutSheets, glidersFromBoard, type CutSheets} from '../../calc/sheet/from-parts.js';
import {longestWing} from '../../calc/sheet/longest-wing.js';
import {spanOf} from '../../calc/sheet/span-steps.js';
import type {LaidOut} from './laid-out.js';
import type {Shown} from './layouts.js';

/** What a maker asks of a board: sheets for so many gliders, gliders from so many sheets, or the longest wing. */
export type Wanted = 'sheets' | 'gliders' | 'span';

export const wantedOf = (text: string | null | undefined): Wanted => (text === 'gliders' || text === 'span' ? text : 'sheets');

/** What was asked, and the first placement that answers it. */
export interface First {
  readonly wanted: Wanted;
  /** Gliders wanted, and how many more are laid out in case. */
  readonly kits: number;
  readonly spare: number;
  /** Sheets at hand. */
  readonly sheets: number;
  readonly cut: CutSheets;
  /** How many gliders the sheets at hand give. */
  readonly gliders?: number | undefined;
  /** The longest wing for them, m, and what no wing on such a sheet can be longer than. */
  readonly span?: number | undefined;
  readonly longest?: number | undefined;
  /** To what the length of a wing is found, m. */
  readonly step: number;
  /** The wing as it is, m. */
  readonly spanNow: number;
  /** Of the board, kg/m², and whether that was weighed. */
  readonly arealMass: number;
  readonly weighed: boolean;
}

/** How the layout shown stands to what is asked: it answers it, or is an earlier one until there is an answer, or there is none. */
export type Standing = 'answers' | 'awaited' | 'not found';

/** What was asked, and the best layout so far. */
export interface Found extends Omit<First, 'cut'> {
  readonly cut: LaidOut;
  readonly standing: Standing;
  /** More gliders than that, or a wing longer than that in m, cannot be had, which is proved; undefined where nothing is. */
  readonly bound?: number | undefined;
  /** Of one sheet, in whatever money. */
  readonly price: number | undefined;
}

export interface Question {
  readonly wanted: Wanted;
  readonly kits: number;
  readonly spare: number;
  readonly sheets: number;
  /** To what the length of a wing is found, m. */
  readonly step: number;
}

/** Answers a question about a glider and a board at once. */
export function find(design: GliderDesign, {wanted, kits, spare, sheets, step}: Question): Outcome<First> {
  const {board, wing} = design;
  const common = {
    wanted, kits, spare, sheets, step, spanNow: wing.span, weighed: board.sheetMass !== undefined,
    arealMass: board.sheetMass === undefined ? board.arealMass : board.sheetMass / (board.length * board.width),
  };
  switch (wanted) {
    case 'sheets': {
      const cut = cutSheets(design, kits + spare);
      return cut.ok ? {ok: true, value: {...common, cut: cut.value}} : refused(...cut.problems);
    }
    case 'gliders': {
      const from = glidersFromBoard(design, sheets);
      return from.ok ? {ok: true, value: {...common, ...from.value}} : from;
    }
    case 'span': {
      const longest = longestWing(design, kits, sheets, step);
      return longest.ok ? {ok: true, value: {...common, ...longest.value}} : longest;
    }
  }
}

/** The answer that goes with the layout shown. */
export function foundFrom(first: First, {laid, standing, reached, bound}: Shown, price: number | undefined): Found {
  const {wanted, step} = first;
  const found: Found = {...first, cut: laid, standing, price, bound: wanted === 'span' && bound !== undefined ? spanOf(bound, step) : bound};
  if (reached === undefined) return found;
  if (wanted === 'gliders') return {...found, gliders: reached};
  return wanted === 'span' ? {...found, span: spanOf(reached, step)} : found;
}

/** Whether two answers are one and the same, so that nothing need be drawn again. */
export const sameFound = (a: Found | undefined, b: Found): boolean =>
  a !== undefined && (Object.keys(b) as (keyof Found)[]).every((key) => a[key] === b[key]);
