import type {Unit} from './kinds.js';
import type {Scanner} from './scan.js';

/** A number as its digits with a dot; or, where its marks may group thousands, its digits without them in `grouped`. */
export interface Amount { readonly sign: '' | '-'; readonly digits: string; readonly grouped?: string }

const fraction = /([+-]?)\s*(?:(\d+)(?:\s+|-\s*))?(\d+)\s*\/\s*(\d+)/y;
const numberWith = (mark: string, between: string): RegExp =>
  new RegExp(`([+-]?)\\s*(${mark}?\\d+(?:${between}\\d+)*)(e[+-]?\\d{1,4})?`, 'y');
/** With the spaces and marks that people put between thousands, so that they can be refused in so many words. */
const alone = numberWith('[.,]', '(?:[.,]|\\s(?=\\d{3}(?!\\d)))');
/** In a list a space parts items, and so does a comma where it is no decimal mark. */
const listed = {'.': numberWith('\\.', '\\.'), ',': numberWith('[.,]', '[.,]')} as const;

/** Takes a number: `22 7/8`, `1/2`, `57.5`, `1e3`; nothing is taken where there is none or where it makes no sense. */
export function scanAmount(scan: Scanner, decimal: '.' | ',', inList: boolean): Amount | undefined {
  const parts = scan.take(fraction);
  if (parts) {
    const [over, under] = [Number(parts[3]), Number(parts[4])];
    if (under === 0 || (parts[2] !== undefined && over >= under)) return undefined;
    return {sign: signOf(parts), digits: String(Number(parts[2] ?? 0) + over / under)};
  }
  const found = scan.take(inList ? listed[decimal] : alone);
  if (!found) return undefined;
  const [, , number = '', exponent = ''] = found;
  const other = decimal === '.' ? ',' : '.';
  const marks = number.replace(/\d/g, '');
  if (marks === '' || marks === decimal || (marks === other && !/^[1-9]\d{0,2}\D\d{3}$/.test(number))) {
    return {sign: signOf(found), digits: number.replace(',', '.') + exponent};
  }
  // of two kinds of marks the last is the decimal one, whatever the reader's own is
  const last = marks.at(-1), mixed = new Set(marks.replace(/\s/g, ' ')).size > 1;
  const grouping = mixed ? last === '.' ? ',' : '.' : marks.startsWith(decimal) ? decimal : other;
  return {sign: '', digits: '', grouped: found[0].replace(/\s/g, '').replaceAll(grouping, '').replace(other, decimal)};
}

const signOf = (found: RegExpExecArray): '' | '-' => found[1] === '-' ? '-' : '';

/**
 * Digits of a unit as an SI number. A decimal unit only moves the point, so that 1.1 mm, 0.11 cm and 0.0011 m are one
 * and the same number.
 */
export function toSI(digits: string, {factor, power, offset}: Unit): number {
  if (factor !== 1 || offset !== 0) return Number(digits) * factor / Number(`1e${String(-power)}`) + offset;
  const [mantissa = '', exponent = '0'] = digits.split('e');
  return Number(`${mantissa}e${String(Number(exponent) + power)}`);
}
