/** What a number measures. Its SI unit: m, kg, rad, 1, 1, kg/m², kg/m³, m², m/s, kg/m³, s, K, m. */
export type QuantityKind =
  | 'length' | 'mass' | 'angle' | 'ratio' | 'count' | 'areal-mass' | 'cube-loading' | 'area' | 'speed' | 'density' | 'time' | 'temperature' | 'altitude';

export type SystemOfUnits = 'metric' | 'inch';

export interface Unit {
  /** As it is written: `g/m²`. */
  readonly symbol: string;
  readonly kind: QuantityKind;
  /** Multiply a number of this unit by it, and add `offset`, to get SI. */
  readonly si: number;
  /** What nought of this unit is in SI; only temperatures have a nought of their own. */
  readonly offset: number;
  /** `si` is exactly `factor` × 10^`power`; a factor of 1 makes converting a shift of the decimal point. */
  readonly factor: number;
  readonly power: number;
  /** Readers are shown whole multiples of 1/`parts` of the unit. */
  readonly parts: number;
  /** All accepted spellings, in lower case and with plain digits: `g/m2`. */
  readonly names: readonly string[];
}

/*
 * International yard and pound agreement of 1959: 1 yd = 0.9144 m and 1 lb = 0.453 592 37 kg, exactly; an inch is 1/36 yd,
 * an ounce 1/16 lb. Temperatures: 0 °C is 273.15 K, exactly (SI Brochure, 9th edition, 2.3.1), and 1 °F is 5/9 K with 32 °F at 0 °C.
 * Every other unit below follows from these and from the metre, kilogram, second and radian.
 */
const foot = 0.3048;
const pound = 0.45359237;
const ounce = 0.028349523125;

type Row = readonly [symbol: string, kind: QuantityKind, factor: number, power: number, parts: number, names?: string, offset?: number];

const rows: readonly Row[] = [
  ['mm', 'length', 1, -3, 2, 'millimetre millimetres millimeter millimeters'],
  ['cm', 'length', 1, -2, 20, 'centimetre centimetres centimeter centimeters'],
  ['m', 'length', 1, 0, 100, 'metre metres meter meters'],
  ['in', 'length', 254, -4, 100, '" inch inches'],
  ['ft', 'length', 3048, -4, 100, '\' foot feet'],

  ['g', 'mass', 1, -3, 1, 'gram grams gramme grammes'],
  ['kg', 'mass', 1, 0, 1000, 'kilogram kilograms'],
  ['oz', 'mass', 28349523125, -12, 10, 'ounce ounces'],
  ['lb', 'mass', 45359237, -8, 10, 'lbs pound pounds'],

  ['°', 'angle', Math.PI / 180, 0, 10, 'deg degree degrees'],
  ['rad', 'angle', 1, 0, 1000, 'radian radians'],

  ['%', 'ratio', 1, -2, 10, 'percent'],
  ['', 'count', 1, 0, 1],

  ['g/m²', 'areal-mass', 1, -3, 1, 'gsm'],
  ['g/dm²', 'areal-mass', 1, -1, 10],
  ['kg/m²', 'areal-mass', 1, 0, 1000],
  ['oz/ft²', 'areal-mass', ounce / foot ** 2, 0, 100],

  ['cm²', 'area', 1, -4, 1],
  ['dm²', 'area', 1, -2, 10],
  ['m²', 'area', 1, 0, 1000],
  ['in²', 'area', 64516, -8, 10],
  ['ft²', 'area', 9290304, -8, 100],

  ['m/s', 'speed', 1, 0, 10],
  ['km/h', 'speed', 1 / 3.6, 0, 10, 'kmh kph'],
  ['ft/s', 'speed', 3048, -4, 10, 'fps'],
  ['mph', 'speed', 44704, -5, 10, 'mi/h'],

  ['kg/m³', 'density', 1, 0, 10],
  ['g/cm³', 'density', 1, 3, 100],
  ['oz/ft³', 'density', ounce / foot ** 3, 0, 10],
  ['lb/ft³', 'density', pound / foot ** 3, 0, 10],

  ['s', 'time', 1, 0, 100, 'sec secs second seconds'],
  ['min', 'time', 60, 0, 100, 'minute minutes'],

  ['°C', 'temperature', 1, 0, 1, 'c celsius', 273.15],
  ['°F', 'temperature', 5 / 9, 0, 1, 'f fahrenheit', 273.15 - 32 * 5 / 9],
  ['K', 'temperature', 1, 0, 1, 'kelvin'],
];

/** The spelling of a symbol on any keyboard. */
const plain = (symbol: string): string => symbol.replace('²', '2').replace('³', '3');

/** Every unit by its symbol. A cube loading is a mass per volume too, so it takes the units of a density. */
export const units: Readonly<Record<string, Unit>> = Object.freeze(Object.fromEntries(
  rows.map(([symbol, kind, factor, power, parts, names, offset = 0]): [string, Unit] => [symbol, Object.freeze({
    symbol, kind, si: power < 0 ? factor / Number(`1e${String(-power)}`) : factor * Number(`1e${String(power)}`), factor, power, parts, offset,
    names: Object.freeze([plain(symbol).toLowerCase(), ...names?.split(' ') ?? []]),
  })]),
));

const spellings: ReadonlyMap<string, Unit> =
  new Map(Object.values(units).flatMap((unit) => unit.names.map((name) => [name, unit] as const)));

/** The unit that a spelling stands for, whatever it measures. */
export const unitSpelled = (spelling: string): Unit | undefined => spellings.get(plain(spelling).toLowerCase());

export const measures = (unit: Unit, kind: QuantityKind): boolean => unit.kind === (madeOf[kind] ?? kind);

/** Kinds that take the units of another: people climb in metres and feet, whatever they measure a wing in. */
const madeOf: Partial<Readonly<Record<QuantityKind, QuantityKind>>> = {'cube-loading': 'density', 'altitude': 'length'};

/** The unit of a symbol, if it measures this kind of quantity. */
export function unitFor(symbol: string | undefined, kind: QuantityKind): Unit | undefined {
  const unit = symbol === undefined ? undefined : unitSpelled(symbol);
  return unit && measures(unit, kind) ? unit : undefined;
}

const usual: Readonly<Record<QuantityKind, readonly [metric: string, inch: string]>> = {
  'length': ['mm', 'in'],
  'mass': ['g', 'oz'],
  'angle': ['°', '°'],
  'ratio': ['%', '%'],
  'count': ['', ''],
  'areal-mass': ['g/m²', 'oz/ft²'],
  'cube-loading': ['kg/m³', 'oz/ft³'],
  'area': ['dm²', 'in²'],
  'speed': ['m/s', 'ft/s'],
  'density': ['kg/m³', 'lb/ft³'],
  'time': ['s', 's'],
  'temperature': ['°C', '°F'],
  'altitude': ['m', 'ft'],
};

/** The symbol of the unit in which a reader of this system expects such a quantity. */
export const usualUnit = (kind: QuantityKind, system: SystemOfUnits): string => usual[kind][system === 'inch' ? 1 : 0];
