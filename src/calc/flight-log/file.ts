import {refused, type Outcome, type Problem} from '../problem.js';
import {readQuantity} from '../units/read.js';
import {writeExact} from '../units/write.js';
import {emptyLog, withRows, type FlightLog, type Throw, type UnreadRow, type Version} from './log.js';
import {readMoment, writeMoment} from './moment.js';
import {checkThrow, throwLimits, throwNumbers, type ThrowNumber} from './throw-check.js';

/** The version that this package writes, under the key `flightLog`. */
export const logFileVersion = 1;

const units: Readonly<Record<ThrowNumber, string>> = {distance: 'm', time: 's', height: 'm'};

/** Writes a log that reads back the same: JSON, quantities as texts with their unit, each version's glider as a design file inside. */
export function writeLogFile(log: FlightLog): string {
  return `${JSON.stringify({
    flightLog: logFileVersion,
    versions: log.versions.map(({id, name, design, at}) => ({id, name, at: writeMoment(at), ...(design !== undefined && {design})})),
    throws: log.throws.map(({id, version, at, path, surface, wind, note, out, ...numbers}) => ({
      id, version, at: writeMoment(at),
      ...Object.fromEntries(throwNumbers.flatMap((name) => {
        const value = numbers[name];
        return value === undefined ? [] : [[name, writeExact(value, throwLimits[name].kind, units[name])]];
      })),
      path, surface, wind, note, ...(out && {counts: false}),
    })),
    unread: log.unread.map(({at, ...row}) => ({...row, at: writeMoment(at)})),
  }, null, 1)}\n`;
}

type Entry = Readonly<Record<string, unknown>>;
const isEntry = (value: unknown): value is Entry => typeof value === 'object' && value !== null && !Array.isArray(value);
const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

export interface FileOptions {
  readonly newId: () => string;
  readonly now: number;
}

/**
 * Reads what {@link writeLogFile} wrote. An entry that cannot be read is kept letter by letter among the unread rows. Refused: `log-not-json`,
 * `log-not-a-log`, `file-version-unreadable`, `log-of-later-version` {version, known}.
 */
export function readLogFile(text: string, options: FileOptions): Outcome<FlightLog> {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused({code: 'log-not-json'});
  }
  return readLogObject(file, options);
}

export function readLogObject(file: unknown, {newId, now}: FileOptions): Outcome<FlightLog> {
  if (!isEntry(file) || !('flightLog' in file)) return refused({code: 'log-not-a-log'});
  const {flightLog: version} = file;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return refused({code: 'file-version-unreadable'});
  if (version > logFileVersion) return refused({code: 'log-of-later-version', args: {version, known: logFileVersion}});

  let count = 0;
  const next = (): number => now + count++;
  const unread: UnreadRow[] = [];
  const keep = (entry: unknown, problem: Problem): void => { unread.push(Object.freeze({id: newId(), text: JSON.stringify(entry), problem, at: next()})); };
  const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
  const versions = list(file['versions']).flatMap((entry) => {
    const found = versionOf(entry, next());
    if (!found) keep(entry, {code: 'entry-not-a-version'});
    return found ?? [];
  });
  const known = new Set(versions.map(({id}) => id));
  const throws = list(file['throws']).flatMap((entry) => {
    const found = readThrow(entry, next());
    if (!found.ok) keep(entry, found.problems[0] ?? {code: 'entry-not-a-throw'});
    else if (!known.has(found.value.version)) keep(entry, {code: 'entry-without-version'});
    else return found.value;
    return [];
  });
  for (const entry of list(file['unread'])) {
    const row = unreadOf(entry, next());
    if (row) unread.push(row); else keep(entry, {code: 'row-unread-before'});
  }
  return {ok: true, value: withRows(emptyLog, {versions, throws, unread})};
}

function versionOf(entry: unknown, now: number): Version | undefined {
  if (!isEntry(entry) || textOf(entry['id']) === '' || textOf(entry['name']) === '') return undefined;
  const {id, name, design} = entry;
  return Object.freeze({id: textOf(id), name: textOf(name), at: readMoment(textOf(entry['at'])) ?? now, ...(typeof design === 'string' && {design})});
}

/** Reads one throw of a file. Refused: `entry-not-a-throw`, what is wrong with a number, and as {@link checkThrow}. */
export function readThrow(entry: unknown, now: number): Outcome<Throw> {
  if (!isEntry(entry) || textOf(entry['id']) === '' || textOf(entry['version']) === '') return refused({code: 'entry-not-a-throw'});
  const numbers: Partial<Record<ThrowNumber, number>> = {};
  for (const name of throwNumbers) {
    const written = entry[name];
    if (written === undefined) continue;
    if (typeof written !== 'string') return refused({code: 'file-number-without-unit', path: name, args: {text: JSON.stringify(written)}});
    const read = readQuantity(written, throwLimits[name].kind);
    if (!read.ok) return refused({...read.problem, path: name});
    numbers[name] = read.value;
  }
  const wrong = checkThrow(numbers);
  if (wrong.length > 0) return refused(...wrong);
  return {ok: true, value: Object.freeze({
    id: textOf(entry['id']), version: textOf(entry['version']), ...numbers, at: readMoment(textOf(entry['at'])) ?? now, out: entry['counts'] === false,
    path: textOf(entry['path']), surface: textOf(entry['surface']), wind: textOf(entry['wind']), note: textOf(entry['note']),
  })};
}

function unreadOf(entry: unknown, now: number): UnreadRow | undefined {
  if (!isEntry(entry) || textOf(entry['id']) === '' || typeof entry['text'] !== 'string') return undefined;
  const {id, text, problem, columns, delimiter} = entry;
  const code = isEntry(problem) ? textOf(problem['code']) : '';
  return Object.freeze({
    id: textOf(id), text, at: readMoment(textOf(entry['at'])) ?? now,
    problem: code === '' ? {code: 'row-unread-before'} : problem as Problem & Entry,
    ...(Array.isArray(columns) && {columns: columns.map(textOf)}), ...(typeof delimiter === 'string' && {delimiter}),
  });
}
