import {columns, type ColumnId} from './columns.js';
import {guardCell} from './formula-guard.js';
import type {FlightLog} from './log.js';
import {writeMoment} from './moment.js';

const noCells: Readonly<Record<ColumnId, string>> = {
  at: '', version: '', distance: '', time: '', height: '', path: '', surface: '', wind: '', counted: '', note: '', id: '', unread: '', why: '',
};

/**
 * A log as the cells of a table, headings first, numbers in full in m and s with the reader's decimal mark. No cell runs as a formula. Rows
 * that could not be read stand at the end, letter by letter, with `why` each was not.
 */
export function writeTable(log: FlightLog, {decimal, why}: {readonly decimal: '.' | ','; readonly why: (row: FlightLog['unread'][number]) => string}): string[][] {
  const names = new Map(log.versions.map(({id, name}) => [id, name]));
  const number = (value: number | undefined): string => (value === undefined ? '' : String(value).replace('.', decimal));
  const rows: Readonly<Record<ColumnId, string>>[] = [
    ...log.throws.map(({id, at, version, distance, time, height, path, surface, wind, out, note}) => ({
      ...noCells, id, at: writeMoment(at), version: names.get(version) ?? '', distance: number(distance), time: number(time), height: number(height),
      path, surface, wind, counted: out ? 'no' : 'yes', note,
    })),
    ...log.unread.map((row) => ({...noCells, unread: row.text, why: why(row)})),
  ];
  const used = log.unread.length > 0 ? columns : columns.filter(({id}) => id !== 'unread' && id !== 'why');
  return [used.map(({heading}) => heading), ...rows.map((row) => used.map(({id}) => guardCell(row[id])))];
}
