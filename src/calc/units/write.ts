import {toSI} from './amount.js';
import {unitFor, usualUnit} from './kinds.js';
import type {QuantityKind, SystemOfUnits, Unit} from './kinds.js';

export interface WriteOptions {
  /** Chooses the usual unit of the kind; `metric` unless given. */
  readonly system?: SystemOfUnits | undefined;
  /** Another unit than the usual one, by its symbol. */
  readonly unit?: string | undefined;
  readonly decimal?: '.' | ',' | undefined;
  /** Exactly so many decimals; otherwise as fine as is useful in the unit, without trailing noughts. */
  readonly digits?: number | undefined;
  /** The finest fraction of an inch, 16 for sixteenths unless given; 0 or `digits` gives decimal inches. */
  readonly fraction?: number | undefined;
  /** Leaves the unit out, for a field that shows it beside. */
  readonly bare?: boolean | undefined;
  /** Feet and inches from one foot on. */
  readonly ft?: boolean | undefined;
}

const noBreak = '\u00a0';
const dash = '—';

/**
 * Writes an SI value for reading: `102.5 mm`, `4 1/8 in`, `11.4°`, `25 %`, to the nearest step that is useful in the unit
 * (half a millimetre, a sixteenth of an inch, a gram or below ten grams a tenth). A dash for what is no finite number.
 */
export function writeQuantity(value: number, kind: QuantityKind, options: WriteOptions = {}): string {
  return write(value, kind, options, Math.round);
}

/** As {@link writeQuantity}, but rounded up in size and never to nothing: for bevels, slots and cards, "at least". */
export function writeAtLeast(value: number, kind: QuantityKind, options: WriteOptions = {}): string {
  // what lies over a step by a rounding error only is that step
  return write(value, kind, options, (steps) => steps > 0 ? Math.max(1, Math.ceil(steps - 1e-6)) : 0);
}

function write(value: number, kind: QuantityKind, options: WriteOptions, round: (steps: number) => number): string {
  const unit = unitFor(options.unit, kind) ?? unitFor(usualUnit(kind, options.system ?? 'metric'), kind);
  const scaled = unit ? (value - unit.offset) / unit.si : NaN;
  if (!unit || !Number.isFinite(scaled)) return dash;
  const text = inUnit(Math.abs(scaled), unit, options, round);
  return (scaled < 0 && /[1-9]/.test(text) ? '−' : '') + text;
}

function inUnit(size: number, unit: Unit, options: WriteOptions, round: (steps: number) => number): string {
  const {fraction = 16, digits, decimal = '.', bare = false, ft = false} = options;
  const symbol = bare ? '' : gap(unit.symbol, noBreak) + unit.symbol;
  if (unit.symbol !== 'in' || digits !== undefined || !(fraction >= 1) || size > 1e9) {
    return decimals(size, unit, digits, round).replace('.', decimal) + symbol;
  }
  const under = Math.min(Math.floor(fraction), 128);   // no ruler is finer
  const over = round(size * under);
  const feet = ft && !bare ? Math.floor(over / (12 * under)) : 0;
  const rest = over - feet * 12 * under;
  return [...feet > 0 ? [`${String(feet)}${noBreak}ft`] : [], ...rest > 0 || feet === 0 ? [mixed(rest, under) + symbol] : []].join(noBreak);
}

/** `22 7/8`, the fraction reduced. */
function mixed(over: number, under: number): string {
  const whole = Math.floor(over / under);
  const part = over - whole * under;
  const by = divisor(part, under);
  return [...whole > 0 || part === 0 ? [String(whole)] : [], ...part > 0 ? [`${String(part / by)}/${String(under / by)}`] : []].join(noBreak);
}

const divisor = (a: number, b: number): number => b === 0 ? a : divisor(b, a % b);

function decimals(size: number, unit: Unit, digits: number | undefined, round: (steps: number) => number): string {
  const places = digits === undefined || Number.isNaN(digits) ? undefined : Math.min(Math.max(Math.trunc(digits), 0), 20);
  // a tenth of a gram matters in a small part, and nobody weighs a plane to it
  const parts = places !== undefined ? 10 ** places : unit.kind === 'mass' && size < 10 ? unit.parts * 10 : unit.parts;
  const steps = round(size * parts);
  const rounded = Number.isFinite(steps) ? steps / parts : size;
  return places === undefined ? String(rounded) : rounded.toFixed(places);
}

/** Units of which every number can be written, where the usual ones skip some. */
const exact: Readonly<Record<string, string>> = {'°': 'rad', '°C': 'K'};

/**
 * The shortest text, with a dot and a unit, that reads back as the identical SI number. Inches, ounces and degrees skip
 * some numbers: those are written in millimetres, grams, radians or kelvins instead. A dash for what is no finite number.
 */
export function writeExact(value: number, kind: QuantityKind, unit: string): string {
  const metric = usualUnit(kind, 'metric');
  const decimal = unitFor(exact[metric] ?? metric, kind);
  for (const one of [unitFor(unit, kind) ?? unitFor(metric, kind), decimal]) {
    const digits = one && exactDigits(value, one);
    if (one && digits !== undefined) return digits + gap(one.symbol, ' ') + one.symbol;
  }
  return dash;
}

const gap = (symbol: string, space: string): string => symbol === '' || symbol === '°' ? '' : space;

/** The fewest digits of the unit that read as the value; a decimal unit always has them. */
function exactDigits(value: number, unit: Unit): string | undefined {
  if (!Number.isFinite(value)) return undefined;
  if (value === 0 && unit.offset === 0) return '0';
  if (unit.factor === 1 && unit.offset === 0) return pointMoved(value.toExponential(), -unit.power);
  const near = (value - unit.offset) / unit.si;
  for (let places = 0; places < 17; places++) {
    // dividing and multiplying again may miss by a few units in the last place of a number
    for (const miss of places < 14 ? [0] : [0, 1, -1, 2, -2, 3, -3, 4, -4]) {
      const text = pointMoved((near + near * miss * Number.EPSILON / 2).toExponential(places), 0);
      if (toSI(text, unit) === value) return text;
    }
  }
  return undefined;
}

/** `5.8e-1` moved by 3 is `580`; an exponent stays only where there would be rows of noughts. */
function pointMoved(exponential: string, by: number): string {
  const [mantissa = '', exponent = '0'] = exponential.split('e');
  const power = Number(exponent) + by;
  if (power < -7 || power > 15) return `${mantissa}e${String(power)}`;
  const [minus, digits] = mantissa.startsWith('-') ? ['-', mantissa.slice(1)] : ['', mantissa];
  const all = '0'.repeat(Math.max(0, -power)) + digits.replace('.', '').padEnd(power + 1, '0');
  const point = Math.max(1, power + 1);
  return minus + all.slice(0, point) + (all.length > point ? `.${all.slice(point)}` : '');
}
