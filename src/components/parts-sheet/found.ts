import type {GliderDesign} from '../../calc/design/design.js';
import {refused, type Outcome} from '../../calc/problem.js';
import {cutSheets, glidersFromBoard, type CutSheets} from '../../calc/sheet/from-parts.js';
import {longestWing} from '../../calc/sheet/longest-wing.js';
import type {LaidOut} from './laid-out.js';

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
  /** The longest wing for them, m, and whether it is as long as the sheet. */
  readonly span?: number | undefined;
  readonly wholeSheet?: boolean | undefined;
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
    wanted, kits, spare, sheets, spanNow: wing.span, weighed: board.sheetMass !== undefined,
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

/** Whether two answers are one and the same, so that nothing need be drawn again. */
export const sameFound = (a: Found | undefined, b: Found): boolean =>
  a !== undefined && (Object.keys(b) as (keyof Found)[]).every((key) => a[key] === b[key]);
