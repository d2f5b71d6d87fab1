import type {Problem} from '../problem.js';
import {scanAmount, toSI} from './amount.js';
import type {Amount} from './amount.js';
import {measures, unitFor, unitSpelled, usualUnit} from './kinds.js';
import type {QuantityKind, Unit} from './kinds.js';
import {scanner} from './scan.js';
import type {Scanner} from './scan.js';

export interface ReadOptions {
  /** The symbol of the unit that a bare number takes: the one shown beside a field. */
  readonly bareUnit?: string | undefined;
  /** The reader's own decimal mark; a dot unless given. */
  readonly decimal?: '.' | ',' | undefined;
}

/** A quantity in SI with the symbol of the unit that it was written in, or why there is none. */
export type ReadResult =
  | {readonly ok: true; readonly value: number; readonly unit: string}
  | {readonly ok: false; readonly problem: Problem};

/** Longer texts are no quantity. */
const longest = 64;

/**
 * Reads a quantity as people write it: `580 mm`, `22 7/8 in`, `22-7/8"`, `1½ in`, `2 ft 3 in`, `1 lb 2 oz`, `11.4°`, `25 %`.
 *
 * The number may carry a sign and an exponent; its sense and limits are checked elsewhere. The other decimal mark is taken
 * where it can mean nothing else (`57,5`), and refused where it may group thousands (`1,500`). Never throws.
 *
 * Problems: `quantity-empty`; `quantity-not-a-number` {text, kind}; `quantity-decimal-mark` {text, suggestion};
 * `quantity-no-unit` {text, suggestion}; `quantity-unknown-unit` {unit, suggestion}; `quantity-wrong-unit` {unit, expected: kind};
 * `quantity-not-whole` {text}; `quantity-too-big` {text}.
 */
export function readQuantity(text: string, kind: QuantityKind, options: ReadOptions = {}): ReadResult {
  const scan = scanner(text);
  if (scan.ended()) return {ok: false, problem: {code: 'quantity-empty'}};
  if (text.length > longest) return notANumber(text, kind);
  const read = scanQuantity(scan, kind, options);
  return scan.ended() ? read : notANumber(text, kind);
}

export const notANumber = (text: string, kind: QuantityKind): {readonly ok: false; readonly problem: Problem} =>
  ({ok: false, problem: {code: 'quantity-not-a-number', args: {text: text.trim().slice(0, longest), kind}}});

// a 2 or 3 after the letters is a power only where the kind has such units: 2ft3in is a length
const unitName = /\s*(?:(°\s?[cf](?!\p{L})|["'°%])|(\p{L}+(?:\^[23])?(?:\/\p{L}+(?:\^[23])?)?)\.?)/uy;
const powerUnitName = /\s*(?:(°\s?[cf](?!\p{L})|["'°%])|(\p{L}+(?:\^?[23])?(?:\/\p{L}+(?:\^?[23])?)?)\.?)/uy;

/** The unit that follows another within one quantity, and how many of it make one of the other. */
const joins: Readonly<Record<string, readonly [symbol: string, many: number]>> = {ft: ['in', 12], lb: ['oz', 16], min: ['s', 60]};

/** Takes one quantity; what follows it stays in the scanner. */
export function scanQuantity(scan: Scanner, kind: QuantityKind, options: ReadOptions, inList = false): ReadResult {
  const start = scan.at;
  const amount = scanAmount(scan, options.decimal ?? '.', inList);
  const text = scan.text.slice(start, scan.at);
  const refuse = (code: string, args: Readonly<Record<string, string>>) => ({ok: false, problem: {code, args}}) as const;
  const withUnit = (number: string, symbol: string): string => symbol === '' || symbol === '°' ? number + symbol : `${number} ${symbol}`;
  const suggested = options.bareUnit !== undefined && unitFor(options.bareUnit, kind) ? options.bareUnit : usualUnit(kind, 'metric');
  if (!amount) return notANumber(scan.text.slice(start), kind);

  const name = scanUnitName(scan, kind);
  if (amount.grouped !== undefined) {
    return refuse('quantity-decimal-mark', {text, suggestion: withUnit(amount.grouped, unitFor(name, kind)?.symbol ?? suggested)});
  }
  const unit = name === undefined ? unitFor(kind === 'count' ? '' : options.bareUnit, kind) : unitSpelled(name);
  if (name === undefined && (!unit || (kind === 'ratio' && text.includes('/')))) {
    return refuse('quantity-no-unit', {text, suggestion: withUnit(kind === 'ratio' ? percent(amount, text, options) : text, suggested)});
  }
  if (!unit) return refuse('quantity-unknown-unit', {unit: name ?? '', suggestion: withUnit(text, suggested)});
  if (!measures(unit, kind)) return refuse('quantity-wrong-unit', {unit: name ?? '', expected: kind});

  const {digits, symbol} = joined(scan, kind, options, unit, amount.digits, inList);
  const value = toSI(amount.sign + digits, unitFor(symbol, kind) ?? unit);
  if (!Number.isFinite(value)) return refuse('quantity-too-big', {text});
  if (kind === 'count' && !Number.isInteger(value)) return refuse('quantity-not-whole', {text});
  return {ok: true, value: value + 0, unit: symbol};   // + 0: no negative zero
}

/** What a ratio without a unit most likely means: 0.25 and 1/4 are 25 %, and 25 is too. */
const percent = ({sign, digits}: Amount, text: string, {decimal = '.'}: ReadOptions): string =>
  Math.abs(Number(digits)) < 1 && !digits.includes('e') ? sign + String(Number(`${digits}e2`)).replace('.', decimal) : text;

function scanUnitName(scan: Scanner, kind: QuantityKind): string | undefined {
  const found = scan.take(kind === 'length' || kind === 'mass' ? unitName : powerUnitName);
  return found && (found[1] ?? found[2])?.replace(/[\^\s]/g, '');
}

/** The rest of `2 ft 3 in` or `1 lb 2 oz`, if it is there: the whole is a number of the smaller unit. */
function joined(scan: Scanner, kind: QuantityKind, options: ReadOptions, unit: Unit, digits: string, inList: boolean) {
  const [symbol, many] = joins[unit.symbol] ?? [];
  const start = scan.at;
  if (symbol !== undefined && many !== undefined && scan.take(/-\s*|\s*/y)) {
    const rest = scanAmount(scan, options.decimal ?? '.', inList);
    if (rest && rest.sign === '' && rest.grouped === undefined && unitSpelled(scanUnitName(scan, kind) ?? '')?.symbol === symbol) {
      return {digits: String(Number(digits) * many + Number(rest.digits)), symbol};
    }
    scan.at = start;
  }
  return {digits, symbol: unit.symbol};
}
