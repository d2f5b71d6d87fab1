import {openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction, type StoreNames} from 'idb';
import {readLogObject} from '../../calc/flight-log/file.js';
import {emptyLog, logLists, withRows, type FlightLog, type LogChanges, type Throw, type UnreadRow, type Version} from '../../calc/flight-log/log.js';
import {newId} from './new-id.js';

export const databaseName = 'glider-flight-log';

/**
 * The version of the store. 1 kept each log whole, as the JSON of a file, which two tabs wrote over one another; 2 keeps every row by itself.
 */
export const databaseVersion = 2;

/** A row with the name of its log: together they are its key. */
type Kept<R> = R & {readonly log: string};

interface Rows extends DBSchema {
  versions: {key: [string, string]; value: Kept<Version>; indexes: {log: string}};
  throws: {key: [string, string]; value: Kept<Throw>; indexes: {log: string}};
  unread: {key: [string, string]; value: Kept<UnreadRow>; indexes: {log: string}};
}

type Database = IDBPDatabase<Rows>;
type Upgrade = IDBPTransaction<Rows, StoreNames<Rows>[], 'versionchange'>;

/** What happens to an open store from outside. */
export interface StoreEvents {
  /** A tab with a later version of this package wants the store: it has been closed here. */
  readonly taken: () => void;
  /** The browser itself closed it. */
  readonly lost: () => void;
}

/** Opens the store, first bringing it up to date. Rejects where the browser keeps nothing, or keeps a store of a later version (`VersionError`). */
export const openLogs = ({taken, lost}: StoreEvents): Promise<Database> => openDB<Rows>(databaseName, databaseVersion, {
  upgrade(database, from, _to, transaction) {
    for (const list of logLists) {
      const rows = database.createObjectStore(list, {keyPath: ['log', 'id']});
      rows.createIndex('log', 'log');
    }
    if (from === 1) fromVersion1(database, transaction).catch(() => { transaction.abort(); });
  },
  blocking(_from, _wanted, event) {
    (event.target as IDBDatabase).close();
    taken();
  },
  terminated: lost,
});

/** `logs` held `{name, log}`, with the object of a log file as `log`; one that cannot be read stays as a row that could not be. */
async function fromVersion1(database: Database, transaction: Upgrade): Promise<void> {
  const old = (transaction as unknown as IDBPTransaction<unknown, string[], 'versionchange'>).objectStore('logs');
  for (const {name, log} of await old.getAll() as readonly {readonly name: string; readonly log: unknown}[]) {
    const read = readLogObject(log, {newId, now: Date.now()});
    const {versions, throws, unread} = read.ok ? read.value
      : {...emptyLog, unread: [{id: newId(), text: JSON.stringify(log), problem: read.problems[0] ?? {code: 'log-not-a-log'}, at: Date.now()}]};
    for (const row of versions) void transaction.objectStore('versions').put({...row, log: name});
    for (const row of throws) void transaction.objectStore('throws').put({...row, log: name});
    for (const row of unread) void transaction.objectStore('unread').put({...row, log: name});
  }
  (database as unknown as IDBPDatabase).deleteObjectStore('logs');
}

/** Everything kept under a name. */
export async function readLog(database: Database, name: string): Promise<FlightLog> {
  const transaction = database.transaction(logLists);
  const [versions, throws, unread] = await Promise.all([
    transaction.objectStore('versions').index('log').getAll(name),
    transaction.objectStore('throws').index('log').getAll(name),
    transaction.objectStore('unread').index('log').getAll(name),
  ]);
  const bare = <R extends {readonly log: string}>({log: _, ...row}: R): Omit<R, 'log'> => Object.freeze(row);
  return withRows(emptyLog, {versions: versions.map(bare), throws: throws.map(bare), unread: unread.map(bare)});
}

/** Writes changes, all or none; rejects as the browser does (`QuotaExceededError` where it is full). */
export async function writeChanges(database: Database, name: string, {put, gone}: LogChanges): Promise<void> {
  const transaction = database.transaction(logLists, 'readwrite');
  const writes: Promise<unknown>[] = [];
  for (const list of logLists) {
    const rows = transaction.objectStore(list);
    for (const id of gone[list]) writes.push(rows.delete([name, id]));
  }
  for (const row of put.versions) writes.push(transaction.objectStore('versions').put({...row, log: name}));
  for (const row of put.throws) writes.push(transaction.objectStore('throws').put({...row, log: name}));
  for (const row of put.unread) writes.push(transaction.objectStore('unread').put({...row, log: name}));
  await Promise.all([...writes, transaction.done]);
}

export type {Database};
