import {changesBetween, emptyLog, isNoChange, withChanges, type FlightLog, type LogChanges} from '../../calc/flight-log/log.js';
import type * as Databases from './database.js';

/** Whether the browser keeps the log: only in memory, on its way, kept, or why it is not. */
export type KeepState = 'memory' | 'opening' | 'kept' | 'forbidden' | 'full' | 'later-version' | 'not-loaded';

export interface KeepingEvents {
  /** What is kept has changed elsewhere, or has been read for the first time. */
  readonly changed: (log: FlightLog) => void;
  readonly state: (state: KeepState) => void;
}

const isNamed = (error: unknown, ...names: readonly string[]): boolean => error instanceof DOMException && names.includes(error.name);

/**
 * Keeps one log in the browser under a name, and hears of what other tabs do to it. What could not be written stays in hand: it is on screen, and is
 * tried again with the next change.
 */
export class Keeping {
  readonly #name: string;
  readonly #events: KeepingEvents;
  #database: Promise<Databases.Database> | undefined;
  #channel: BroadcastChannel | undefined;
  #stored: FlightLog = emptyLog;
  /** Changes not yet in the store, oldest first. */
  #pending: LogChanges[] = [];
  /** One thing after another. */
  #queue: Promise<void> = Promise.resolve();
  #closed = false;

  constructor(name: string, events: KeepingEvents) {
    this.#name = name;
    this.#events = events;
    window.addEventListener('pageshow', this.#shown);
    if (typeof BroadcastChannel === 'function') {
      this.#channel = new BroadcastChannel('glider-flight-log');
      this.#channel.addEventListener('message', ({data}: MessageEvent<unknown>) => { if (data === this.#name && !this.#closed) void this.read(); });
    } else window.addEventListener('focus', this.#focused);
    this.#events.state('opening');
    void this.read();
  }

  readonly #focused = (): void => { void this.read(); };
  readonly #shown = ({persisted}: PageTransitionEvent): void => { if (persisted) void this.read(); };

  /** The log as it is: what is stored with what is not yet. */
  get #log(): FlightLog { return this.#pending.reduce(withChanges, this.#stored); }

  /** Reads what is kept, again. */
  read(): Promise<void> {
    return this.#then(async (database, {readLog}) => {
      const read = await readLog(database, this.#name);
      if (isNoChange(changesOf(this.#stored, read)) && this.#stored !== emptyLog) return;
      this.#stored = read;
      if (!this.#closed) this.#events.changed(this.#log);
    });
  }

  /** Writes what makes one log of another, with all that could not be written before. */
  write(before: FlightLog, after: FlightLog): Promise<void> {
    const changes = changesBetween(before, after);
    if (!isNoChange(changes)) this.#pending.push(changes);
    return this.flush();
  }

  flush(): Promise<void> {
    return this.#then(async (database, {writeChanges}) => {
      while (this.#pending[0]) {
        const [first] = this.#pending;
        await writeChanges(database, this.#name, first);
        this.#stored = withChanges(this.#stored, first);
        this.#pending.shift();
      }
      this.#channel?.postMessage(this.#name);
    });
  }

  close(): void {
    this.#closed = true;
    window.removeEventListener('pageshow', this.#shown);
    window.removeEventListener('focus', this.#focused);
    // what is being written is still written, and others still hear of it
    void this.#queue.then(async () => {
      this.#channel?.close();
      (await this.#database?.catch(() => undefined))?.close();
    });
  }

  /** Does something with the store once all before it is done, and says how it went. */
  #then(work: (database: Databases.Database, module: typeof Databases) => Promise<void>): Promise<void> {
    return this.#queue = this.#queue.then(async () => {
      try {
        const module = await import('./database.js').catch(() => undefined);
        if (!module) { this.#say('not-loaded'); return; }
        this.#database ??= module.openLogs({
          taken: () => { this.#database = undefined; this.#say('later-version'); },
          lost: () => { this.#database = undefined; },
        });
        await work(await this.#database, module);
        this.#say('kept');
      } catch (error) {
        this.#database = isNamed(error, 'QuotaExceededError') ? this.#database : undefined;
        this.#say(isNamed(error, 'QuotaExceededError') ? 'full' : isNamed(error, 'VersionError') ? 'later-version' : 'forbidden');
      }
    });
  }

  #say(state: KeepState): void { if (!this.#closed) this.#events.state(state); }
}

/** Rows read anew are other objects with the same contents. */
function changesOf(before: FlightLog, after: FlightLog): LogChanges {
  const same = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);
  const keep = <R extends {readonly id: string}>(old: readonly R[], rows: readonly R[]): readonly R[] => {
    const known = new Map(old.map((row) => [row.id, row]));
    return rows.map((row) => { const there = known.get(row.id); return there && same(there, row) ? there : row; });
  };
  return changesBetween(before, {versions: keep(before.versions, after.versions), throws: keep(before.throws, after.throws), unread: keep(before.unread, after.unread)});
}
