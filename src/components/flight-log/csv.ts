import Papa from 'papaparse';
import {readHeading} from '../../calc/flight-log/columns.js';
import type {TableRow} from '../../calc/flight-log/read-table.js';

/** Excel takes a file for UTF-8 only where it begins with this. */
const byteOrderMark = '\uFEFF';

export interface ParsedCsv {
  readonly rows: readonly TableRow[];
  readonly delimiter: string;
}

/** After so many rows with a quotation mark that is not closed, the rest is read line by line. */
const patience = 20;

/**
 * The cells of a CSV text, each row with its own letters. A quotation mark that is not closed costs its own line, not all that follow. The mark between
 * cells is the one that makes headings of the first line, unless it is given. Never throws.
 */
export function parseCsv(text: string, delimiter?: string): ParsedCsv {
  const plain = text.startsWith(byteOrderMark) ? text.slice(1) : text;
  const mark = delimiter ?? delimiterOf(plain);
  const rows: TableRow[] = [];
  let from = 0;
  for (let restarts = 0; from < plain.length; restarts++) {
    const end = restarts < patience ? plain.length : lineEnd(plain, from);
    from += take(plain.slice(from, end), mark, rows);
  }
  return {rows, delimiter: mark};
}

/** Takes rows up to the first one that a quotation mark has run away with, and of that its first line; gives how far it came. */
function take(text: string, delimiter: string, rows: TableRow[]): number {
  let from = 0;
  Papa.parse(text, {
    delimiter,
    step({data, errors, meta}, parser) {
      const broken = errors.some(({type}) => type === 'Quotes');
      const end = broken ? lineEnd(text, from) : meta.cursor;
      rows.push({cells: broken ? [] : data, text: text.slice(from, end).replace(/[\r\n]+$/, ''), problem: broken ? {code: 'row-quotes'} : undefined});
      from = end;
      if (broken) parser.abort();
    },
  });
  return from === 0 ? text.length : from;
}

/** Where the next line begins. */
function lineEnd(text: string, from: number): number {
  const found = /\r\n|\r|\n/g;
  found.lastIndex = from;
  return found.exec(text) ? found.lastIndex : text.length;
}

function delimiterOf(text: string): string {
  const line = text.slice(0, lineEnd(text, 0));
  const known = (mark: string): number => line.split(mark).filter((cell) => readHeading(cell.replaceAll('"', '')).id !== undefined).length;
  return [',', ';', '\t', '|'].reduce((best, mark) => (known(mark) > known(best) ? mark : best));
}

/** A CSV text for a spreadsheet: every cell in quotes, semicolons between them where the decimal mark is a comma. */
export const writeCsv = (rows: readonly (readonly string[])[], decimal: '.' | ','): string =>
  `${byteOrderMark}${Papa.unparse(rows, {delimiter: decimal === ',' ? ';' : ',', newline: '\r\n', quotes: true})}\r\n`;
