import {emptyLog, withRows, type FlightLog, type Throw, type Version} from './log.js';
import type {ReadTable} from './read-table.js';

/** A log with a table's rows in it, and what became of them. */
export interface ReadIn {
  readonly log: FlightLog;
  readonly added: number;
  /** Rows that stood there already, word for word. */
  readonly known: number;
  /** Throws that stood there otherwise, and now stand as they were read. */
  readonly replaced: number;
  readonly unread: number;
}

export interface ReadInOptions {
  /** The name of the version of rows that name none. */
  readonly unnamed: string;
  readonly newId: () => string;
  readonly now: number;
}

const same = (a: Throw, b: Throw): boolean =>
  (['version', 'distance', 'time', 'height', 'path', 'surface', 'wind', 'note', 'out', 'at'] as const).every((key) => a[key] === b[key]);

/** Adds a table to a log: versions are found by name or made, and a throw that is there already is not added twice. */
export function readIn(log: FlightLog, table: ReadTable, {unnamed, newId, now}: ReadInOptions): ReadIn {
  const byName = new Map(log.versions.map((version) => [version.name, version]));
  const versions: Version[] = [];
  const versionOf = (written: string): Version => {
    const name = written === '' ? unnamed : written;
    const there = byName.get(name);
    if (there) return there;
    const version: Version = Object.freeze({id: newId(), name, at: now + versions.length});
    byName.set(name, version);
    versions.push(version);
    return version;
  };
  const before = new Map(log.throws.map((one) => [one.id, one]));
  let known = 0;
  const throws = table.throws.flatMap(({versionName, ...read}): Throw[] => {
    const one: Throw = Object.freeze({...read, version: versionOf(versionName).id});
    const there = before.get(one.id);
    if (!there) return [one];
    if (!same(there, one)) return [Object.freeze({...one, id: newId()})];
    known++;
    return [];
  });
  const standing = new Set(log.unread.map(({text}) => text));
  const unread = table.unread.filter(({text}) => !standing.has(text));
  return {log: withRows(log, {versions, throws, unread}), added: throws.length, known: known + table.unread.length - unread.length, replaced: 0, unread: unread.length};
}

/** Puts one log's rows into another, versions by their ids. */
export function merged(log: FlightLog, other: FlightLog): ReadIn {
  const next = withRows(log, other);
  const before = new Map(log.throws.map((one) => [one.id, one]));
  const met = other.throws.flatMap((one) => { const there = before.get(one.id); return there ? [same(there, one)] : []; });
  const known = met.filter(Boolean).length;
  return {log: next, added: other.throws.length - met.length, known, replaced: met.length - known, unread: other.unread.length};
}

export const isEmpty = (log: FlightLog): boolean => log === emptyLog || (log.versions.length === 0 && log.throws.length === 0 && log.unread.length === 0);
