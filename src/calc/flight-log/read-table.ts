import {refused, type Outcome, type Problem} from '../problem.js';
import {readQuantity} from '../units/read.js';
import {readHeading, type ColumnId, type Heading} from './columns.js';
import {unguardCell} from './formula-guard.js';
import type {Throw, UnreadRow} from './log.js';
import {readMoment} from './moment.js';
import {checkThrow, throwLimits, throwNumbers, type ThrowNumber} from './throw-check.js';

/** One row of a table as a parser gives it: its cells, and the very text of it. */
export interface TableRow {
  readonly cells: readonly string[];
  readonly text: string;
  /** Why the parser itself could make no cells of it. */
  readonly problem?: Problem | undefined;
}

export interface TableOptions {
  readonly delimiter: string;
  /** Names a row that brings no name of its own. */
  readonly newId: () => string;
  /** When the table is read, ms since 1970: for rows that do not say when they were thrown. */
  readonly now: number;
}

/** A throw with the name of its version, which the log may know under another id. */
export interface ReadThrow extends Throw { readonly versionName: string }

export interface ReadTable {
  readonly throws: readonly ReadThrow[];
  readonly unread: readonly UnreadRow[];
}

/** A note longer than this is no note. */
const longest = 2000;

/**
 * Reads a table of throws whose first row names the columns. A row that cannot be read costs only itself: it is kept letter by letter, with why.
 * Refused: `table-empty`; `table-without-heading` where neither a distance nor a time is named.
 */
export function readTable(rows: readonly TableRow[], options: TableOptions): Outcome<ReadTable> {
  const filled = rows.filter(({cells, problem}) => problem !== undefined || cells.some((cell) => cell.trim() !== ''));
  const [first, ...rest] = filled;
  if (!first) return refused({code: 'table-empty'});
  const headings = first.cells.map(readHeading);
  if (!headings.some(({id}) => id === 'distance' || id === 'time')) return refused({code: 'table-without-heading'});
  return {ok: true, value: readRows(rest, headings, options)};
}

/** Reads rows under headings that are known; `headings` as {@link readHeading} gives them. */
export function readRows(rows: readonly TableRow[], headings: readonly Heading[], options: TableOptions): ReadTable {
  const decimal = decimalOf(rows, headings);
  const throws: ReadThrow[] = [];
  const unread: UnreadRow[] = [];
  const used = new Set<string>();
  rows.forEach((row, i) => {
    const at = options.now + i;
    const read = readRow(row, headings, decimal, at);
    const keep = (text: string, problem: Problem): void => {
      unread.push({id: options.newId(), text, problem, columns: headings.map(({text: heading}) => heading), delimiter: options.delimiter, at});
    };
    if (read.ok) {
      const id = read.value.id === '' || used.has(read.value.id) ? options.newId() : read.value.id;
      used.add(id);
      throws.push({...read.value, id});
    } else if (read.again !== undefined) keep(read.again, {code: 'row-unread-before'});
    else keep(row.text, read.problem);
  });
  return {throws, unread};
}

type ReadRow =
  | {readonly ok: true; readonly value: ReadThrow}
  | {readonly ok: false; readonly problem: Problem; readonly again?: undefined}
  | {readonly ok: false; readonly again: string};

function readRow({cells, problem}: TableRow, headings: readonly Heading[], decimal: '.' | ',', now: number): ReadRow {
  if (problem) return {ok: false, problem};
  if (cells.slice(headings.length).some((cell) => cell.trim() !== '')) {
    return {ok: false, problem: {code: 'row-too-long', args: {count: cells.length, most: headings.length}}};
  }
  const text = (id: ColumnId): string => {
    const i = headings.findIndex((heading) => heading.id === id);
    return unguardCell(cells[i] ?? '').trim();
  };
  const again = unguardCell(cells[headings.findIndex(({id}) => id === 'unread')] ?? '');
  if (again.trim() !== '') return {ok: false, again};

  const numbers: Partial<Record<ThrowNumber, number>> = {};
  for (const name of throwNumbers) {
    const written = text(name);
    if (written === '') continue;
    const {kind} = throwLimits[name];
    const unit = headings.find(({id}) => id === name)?.unit ?? (kind === 'time' ? 's' : 'm');
    const read = readQuantity(written, kind, {bareUnit: unit, decimal});
    if (!read.ok) return {ok: false, problem: {...read.problem, path: name}};
    numbers[name] = read.value;
  }
  const [wrong] = checkThrow(numbers);
  if (wrong) return {ok: false, problem: wrong};

  const at = readMoment(text('at'));
  // what stands under headings unknown here is not thrown away, nor is a date of another kind
  const besides = headings.flatMap(({id, text: heading}, i) => {
    const cell = unguardCell(cells[i] ?? '').trim();
    return cell === '' || (id !== undefined && (id !== 'at' || at !== undefined)) ? [] : `${heading || '?'}: ${cell}`;
  });
  const note = [text('note'), ...besides].filter(Boolean).join('; ');
  const words = {path: text('path'), surface: text('surface'), wind: text('wind'), note};
  if (Object.values(words).some(({length}) => length > longest)) return {ok: false, problem: {code: 'text-too-long', args: {most: longest}}};
  return {ok: true, value: {
    id: text('id').slice(0, longest), version: '', versionName: text('version'), ...numbers, ...words, out: /^(no|n|nein|0|false|falsch)$/i.test(text('counted')), at: at ?? now,
  }};
}

/** The decimal mark of a table: a comma where its numbers have commas and no dots. */
function decimalOf(rows: readonly TableRow[], headings: readonly Heading[]): '.' | ',' {
  let comma = false;
  for (const {cells} of rows) {
    for (const [i, {id}] of headings.entries()) {
      if (id !== 'distance' && id !== 'time' && id !== 'height') continue;
      const cell = cells[i] ?? '';
      // where a number has both, the first groups its thousands
      if (/\d\.\d+(?![\d.,])/.test(cell)) return '.';
      comma ||= /\d,\d/.test(cell);
    }
  }
  return comma ? ',' : '.';
}
