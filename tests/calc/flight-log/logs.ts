import fc from 'fast-check';
import {emptyLog, withRows, type FlightLog, type Throw} from '../../../src/calc/flight-log/log.js';
import {checkThrow} from '../../../src/calc/flight-log/throw-check.js';

/** Text as it stands after trimming; spreadsheets' own signs are common in it. */
export const cellText = fc.oneof(
  fc.string({unit: 'grapheme', maxLength: 12}),
  fc.array(fc.constantFrom('=', '+', '-', '@', '\'', '"', ';', ',', '\t', '\n', '\r\n', ' ', 'a', '1', '＝', '|'), {maxLength: 12}).map((signs) => signs.join('')),
).map((text) => text.trim());

const id = fc.string({unit: fc.constantFrom('a', 'b', 'c', 'x', 'y', 'z', '0', '1', '7'), minLength: 8, maxLength: 9});
const number = (least: number, most: number) => fc.option(fc.double({min: least, max: most, noNaN: true}), {nil: undefined});

const throwBy = (versions: readonly string[]) => fc.record({
  id, version: fc.constantFrom(...versions), distance: number(0.05, 300), time: number(0.05, 300), height: number(0.1, 30),
  path: cellText, surface: cellText, wind: cellText, note: cellText, out: fc.boolean(), at: fc.integer({min: 0, max: 4e12}),
}).filter((one) => checkThrow(one).length === 0);

/** Any log whose throws are possible, each id once. */
export const anyLog: fc.Arbitrary<FlightLog> = fc.uniqueArray(fc.record({id, name: cellText.map((name) => name || 'A')}), {minLength: 1, maxLength: 3, selector: ({name}) => name})
  .chain((versions) => fc.record({
    versions: fc.constant(versions.map((version, at) => ({...version, id: `v${String(at)}${version.id}`, at}))),
    throws: fc.uniqueArray(throwBy(versions.map((version, at) => `v${String(at)}${version.id}`)), {maxLength: 8, selector: (one) => one.id}),
  }))
  .map((lists) => withRows(emptyLog, lists));

let made = 0;
export const newId = (): string => `new${String(++made)}`;

export const throwOf = (version: string, at: number, distance: number, more: Partial<Throw> = {}): Throw =>
  ({id: `${version}-${String(at)}`, version, at, distance, path: '', surface: '', wind: '', note: '', out: false, ...more});

/** Versions `a` and `b` with the distances given, thrown by turns. */
export const logOf = (a: readonly number[], b: readonly number[] = []): FlightLog => withRows(emptyLog, {
  versions: [{id: 'a', name: 'A', at: 0}, {id: 'b', name: 'B', at: 1}],
  throws: [...a.map((distance, i) => throwOf('a', 2 * i + 2, distance)), ...b.map((distance, i) => throwOf('b', 2 * i + 3, distance))],
});
