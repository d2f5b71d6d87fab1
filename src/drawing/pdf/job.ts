import type {SheetSketch} from '../figures/sheet-layout.js';

/** A sheet of paper as it is fed, upright, in millimetres. */
export interface Paper {
  readonly width: number;
  readonly height: number;
}

/** How much larger a page must be drawn so that a printer that is off prints it true: 1 for a true one. */
export interface Correction {
  readonly across: number;
  readonly up: number;
}

/** What is written on the pages, in the reader's words and units. */
export interface TemplateWords {
  readonly title: string;
  /** The plane's key numbers, a line each. */
  readonly facts: readonly string[];
  /** Which of how many pages a page is; the code says where it goes, where there are several. */
  page(a: {readonly page: number; readonly pages: number; readonly code: string | undefined}): string;
  /** That a correction is drawn in, and for what. */
  readonly corrected: string | undefined;
  readonly measure: {readonly heading: string; readonly lines: readonly string[]};
  /** Along a trim line whose page lies over the one beyond it. */
  trim(code: string): string;
  /** Along a trim line over which the page beyond it lies. */
  under(code: string): string;
  readonly boardEdge: string;
}

/** Templates to make: boards with the parts to cut from them, at true size. Millimetres. */
export interface TemplateJob {
  /** The size of every sheet that has none of its own. */
  readonly board: {readonly length: number; readonly width: number};
  readonly sheets: readonly SheetSketch[];
  /** Paper to spread each board over; without it, one page as big as the board. */
  readonly paper: Paper | undefined;
  /** By how much pages that meet show the same. */
  readonly overlap: number;
  readonly correction: Correction;
  readonly words: TemplateWords;
}
