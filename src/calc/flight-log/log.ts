import type {Problem} from '../problem.js';

/** One throw as it was written down: lengths in m, time in s. What was not measured is left out. */
export interface Throw {
  readonly id: string;
  /** Of the version thrown. */
  readonly version: string;
  /** From under the hand to where it first touched. */
  readonly distance?: number | undefined;
  /** From letting go to touching. */
  readonly time?: number | undefined;
  /** Of the hand at letting go, over where it landed. */
  readonly height?: number | undefined;
  /** How it flew, over what and in which air: one of the words offered, or the writer's own. */
  readonly path: string;
  readonly surface: string;
  readonly wind: string;
  readonly note: string;
  /** Kept and shown, but left out of the averages: it hit a wall, the hand slipped. */
  readonly out: boolean;
  /** When it was written down, ms since 1970. */
  readonly at: number;
}

/** One state of a glider, thrown without a change. */
export interface Version {
  readonly id: string;
  readonly name: string;
  /** The glider as it was then, as a design file. */
  readonly design?: string | undefined;
  readonly at: number;
}

/** A row that could not be read: every letter of it, and why. */
export interface UnreadRow {
  readonly id: string;
  readonly text: string;
  readonly problem: Problem;
  /** The names of the columns it came under, and what parted its cells; a row of a JSON file has none. */
  readonly columns?: readonly string[] | undefined;
  readonly delimiter?: string | undefined;
  readonly at: number;
}

/** A flight log: plain frozen lists, oldest first. */
export interface FlightLog {
  readonly versions: readonly Version[];
  readonly throws: readonly Throw[];
  readonly unread: readonly UnreadRow[];
}

export const emptyLog: FlightLog = Object.freeze({versions: Object.freeze([]), throws: Object.freeze([]), unread: Object.freeze([])});

type Row = Version | Throw | UnreadRow;
type Lists = {readonly [L in keyof FlightLog]?: FlightLog[L]};
export type LogList = keyof FlightLog;
export const logLists = ['versions', 'throws', 'unread'] as const satisfies readonly LogList[];

const inOrder = (a: Row, b: Row): number => a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Rows put over those of the same id, in order of time; the list itself where nothing is put. */
function put<R extends Row>(rows: readonly R[], more: readonly R[] = []): readonly R[] {
  if (more.length === 0) return rows;
  const last = rows.at(-1);
  const known = new Set(rows.map(({id}) => id));
  const after = more.every((row, i) => !known.has(row.id) && inOrder(more[i - 1] ?? last ?? row, row) <= 0 && (i > 0 || !last || inOrder(last, row) < 0));
  if (after && new Set(more.map(({id}) => id)).size === more.length) return Object.freeze([...rows, ...more]);
  return Object.freeze([...new Map([...rows, ...more].map((row) => [row.id, row])).values()].sort(inOrder));
}

/** The log with rows added, or put in the place of those with the same id. */
export const withRows = (log: FlightLog, {versions, throws, unread}: Lists): FlightLog =>
  Object.freeze({versions: put(log.versions, versions), throws: put(log.throws, throws), unread: put(log.unread, unread)});

/** The log without the rows of some ids. */
export function withoutRows(log: FlightLog, ids: ReadonlySet<string>): FlightLog {
  const left = <R extends Row>(rows: readonly R[]): readonly R[] => (rows.some(({id}) => ids.has(id)) ? Object.freeze(rows.filter(({id}) => !ids.has(id))) : rows);
  return Object.freeze({versions: left(log.versions), throws: left(log.throws), unread: left(log.unread)});
}

/** What has to be written and taken away to make one log of another. */
export interface LogChanges {
  readonly put: Required<Lists>;
  readonly gone: {readonly [L in LogList]: readonly string[]};
}

const changed = <R extends Row>(before: readonly R[], after: readonly R[]): {put: readonly R[]; gone: readonly string[]} => {
  if (before === after) return {put: [], gone: []};
  const old = new Map(before.map((row) => [row.id, row]));
  const now = new Set(after.map(({id}) => id));
  return {put: after.filter((row) => old.get(row.id) !== row), gone: before.map(({id}) => id).filter((id) => !now.has(id))};
};

export function changesBetween(before: FlightLog, after: FlightLog): LogChanges {
  const versions = changed(before.versions, after.versions);
  const throws = changed(before.throws, after.throws);
  const unread = changed(before.unread, after.unread);
  return {
    put: {versions: versions.put, throws: throws.put, unread: unread.put},
    gone: {versions: versions.gone, throws: throws.gone, unread: unread.gone},
  };
}

export const withChanges = (log: FlightLog, {put: rows, gone}: LogChanges): FlightLog =>
  withRows(withoutRows(log, new Set([...gone.versions, ...gone.throws, ...gone.unread])), rows);

export const isNoChange = ({put: rows, gone}: LogChanges): boolean =>
  logLists.every((list) => rows[list].length === 0 && gone[list].length === 0);
