import {expect, fixture, html} from '@open-wc/testing';
import {deleteDB, openDB} from 'idb';
import type {GliderFlightLog} from '../../../src/components/flight-log/define.js';
import {databaseName} from '../../../src/components/flight-log/database.js';
import {emptyLog, withRows} from '../../../src/calc/flight-log/log.js';
import {writeLogFile} from '../../../src/calc/flight-log/file.js';
import {logOf, throwOf} from '../../calc/flight-log/logs.js';
import {openStrictPage} from '../../strict-page.js';
import {log, openAll, press, there, tidy, whole} from './log-in-use.js';
import {until} from '../../until.js';
import '../../../src/components/flight-log/define.js';

const kept = (name: string) => fixture<GliderFlightLog>(html`<glider-flight-log units="metric" keep=${name}></glider-flight-log>`);
const state = (element: GliderFlightLog): string => tidy(element.shadowRoot?.querySelector('.state')?.textContent);
const isKept = (element: GliderFlightLog) => until(() => state(element).includes('Kept in this browser'));
const distances = (element: GliderFlightLog) => element.log.throws.map(({distance}) => distance);

/** Puts something else in the place of a function of the browser's, as a browser without it would. */
function instead<T extends object, K extends keyof T>(of: T, name: K, other: T[K]): () => void {
  const before = Object.getOwnPropertyDescriptor(of, name);
  Object.defineProperty(of, name, {value: other, configurable: true, writable: true});
  return () => { if (before) Object.defineProperty(of, name, before); else Reflect.deleteProperty(of, name); };
}

describe('<glider-flight-log keep>', () => {
  beforeEach(async () => {
    for (const element of document.querySelectorAll('glider-flight-log')) element.remove();
    await new Promise((resolve) => { setTimeout(resolve, 50); });
    await deleteDB(databaseName);
  });

  it('keeps nothing unless its author says so', async () => {
    const element = await fixture<GliderFlightLog>(html`<glider-flight-log units="metric"></glider-flight-log>`);
    await log(element, '8.4');
    expect(state(element)).to.contain('as long as this page');
    expect((await indexedDB.databases()).map(({name}) => name)).not.to.include(databaseName);
  });

  it('has the log again after a reload, each under its own name', async () => {
    const first = await kept('hall');
    await log(first, '8.4', '2.1');
    await log(first, '9.1');
    await isKept(first);
    first.remove();
    const again = await kept('hall');
    await until(() => again.log.throws.length === 2);
    expect(again.log).to.deep.equal(first.log);
    const other = await kept('field');
    await isKept(other);
    expect(other.log.throws).to.have.length(0);
  });

  it('keeps what was thrown before the store was open', async () => {
    const element = await fixture<GliderFlightLog>(html`<glider-flight-log units="metric"></glider-flight-log>`);
    await log(element, '8.4');
    element.keep = 'late';
    await log(element, '9.1');
    await isKept(element);
    element.remove();
    const again = await kept('late');
    await until(() => again.log.throws.length === 2);
    expect(distances(again)).to.deep.equal([8.4, 9.1]);
  });

  it('shows the same in two tabs, and neither writes over the other', async () => {
    const one = await kept('shared'), other = await kept('shared');
    await log(one, '8.4');
    await until(() => other.log.throws.length === 1);
    await Promise.all([log(one, '9.1'), log(other, '9.2')]);
    await until(() => one.log.throws.length === 3 && other.log.throws.length === 3);
    expect(distances(one)).to.have.members([8.4, 9.1, 9.2]);
    expect(one.log.throws).to.deep.equal(other.log.throws);
    await press(other, 'Correct: throw 1 of A');
    await press(other, 'Delete');
    await until(() => one.log.throws.length === 2);
    expect(distances(one)).not.to.include(8.4);
  });

  it('says that a full store is full, keeps all on screen, and writes it once there is room', async () => {
    const element = await kept('full');
    await log(element, '8.4');
    await isKept(element);
    const restore = instead(IDBObjectStore.prototype, 'put', () => { throw new DOMException('no room', 'QuotaExceededError'); });
    try {
      await log(element, '9.1');
      await until(() => state(element).includes('no room left'));
      expect(distances(element)).to.deep.equal([8.4, 9.1]);
      await openAll(element);
      expect(whole(element)).to.contain('Save for a spreadsheet');
      await expect(element).shadowDom.to.be.accessible();
    } finally { restore(); }
    await press(element, 'Try again to keep it');
    await isKept(element);
    element.remove();
    const again = await kept('full');
    await until(() => again.log.throws.length === 2);
  });

  it('says that the browser forbids keeping, and goes on in memory', async () => {
    let refused = 0;
    const restore = instead(IDBFactory.prototype, 'open', () => {
      refused++;
      throw new DOMException('not here', 'SecurityError');
    });
    try {
      const element = await kept('forbidden');
      await until(() => state(element).includes('does not let the page keep'));
      await log(element, '8.4');
      // reading, writing what there was, writing the throw: tried only after this, it would make the store that the next test makes itself
      await until(() => refused === 3);
      expect(distances(element)).to.deep.equal([8.4]);
    } finally { restore(); }
  });

  it('brings a store of version 1 up to date, with every row of it', async () => {
    const old = await openDB(databaseName, 1, {upgrade(database) { database.createObjectStore('logs', {keyPath: 'name'}); }});
    const before = withRows(logOf([8, 9], [10]), {unread: [{id: 'u', text: 'A;weit', problem: {code: 'row-quotes'}, at: 5}]});
    await old.put('logs', {name: 'old', log: JSON.parse(writeLogFile(before)) as unknown});
    await old.put('logs', {name: 'broken', log: {flightLog: 'x', throws: 3}});
    old.close();
    const element = await kept('old');
    await until(() => element.log.throws.length === 3);
    expect(element.log.throws.map(({id, distance}) => ({id, distance}))).to.deep.equal(before.throws.map(({id, distance}) => ({id, distance})));
    expect(element.log.unread.map(({text}) => text)).to.deep.equal(['A;weit']);
    const broken = await kept('broken');
    await until(() => broken.log.unread.length === 1);
    expect(broken.log.unread[0]?.text).to.equal('{"flightLog":"x","throws":3}');
    const now = await openDB(databaseName);
    expect([...now.objectStoreNames]).to.deep.equal(['throws', 'unread', 'versions']);
    now.close();
  });

  it('leaves a store of a later version alone, and says so', async () => {
    const later = await openDB(databaseName, 99);
    later.close();
    const element = await kept('later');
    await until(() => state(element).includes('later version'));
    await log(element, '8.4');
    expect(distances(element)).to.deep.equal([8.4]);
    const still = await openDB(databaseName);
    expect(still.version).to.equal(99);
    still.close();
  });

  it('gives way to a tab that brings the store up to date', async () => {
    const element = await kept('giving');
    await log(element, '8.4');
    await isKept(element);
    const newer = await openDB(databaseName, 98);
    await until(() => state(element).includes('later version'));
    newer.close();
  });

  it('keeps ten thousand throws and has them again', async () => {
    const element = await kept('many');
    await isKept(element);
    element.log = withRows(emptyLog, {versions: [{id: 'a', name: 'A', at: 0}], throws: Array.from({length: 10_000}, (_, i) => throwOf('a', i + 1, 8 + i / 10_000))});
    await element.updateComplete;
    await isKept(element);
    element.remove();
    const again = await kept('many');
    await until(() => again.log.throws.length === 10_000);
    expect(there(again.log.throws.at(-1)).distance).to.be.closeTo(8.9999, 1e-9);
  });

  // here, since files of tests may run side by side, and all of them share one store
  it('works under a strict policy, its store and its files too', async () => {
    const page = await openStrictPage('flight-log.html');
    const element = there(page.document.querySelector('glider-flight-log'));
    await until(() => element.shadowRoot?.querySelector('#field-distance') !== null);
    for (const distance of ['8', '9', '8.5']) await log(element, distance);
    await openAll(element);
    await until(() => state(element).includes('Kept in this browser'));
    await press(element, 'Save for a spreadsheet (CSV)');
    await press(element, 'Delete the whole log');
    await until(() => element.shadowRoot?.querySelector('a.file') !== null);
    expect(page.violations).to.deep.equal([]);
    page.close();
  });
});
