import {dimensionPaths, dimensions} from './dimensions.js';
import type {DimensionPath, DimensionValue, DimensionValues} from './dimensions.js';

type Head<K> = K extends `${infer H}.${string}` ? H : never;
type Under<T, H extends string> = {[K in keyof T as K extends `${H}.${infer Rest}` ? Rest : never]: T[K]};
type Nest<T> =
  {readonly [K in keyof T as K extends `${string}.${string}` ? never : K]: T[K]}
  & {readonly [H in Head<keyof T>]: Nest<Under<T, H>>};

/**
 * A glider as plain frozen data in SI units: board, wing, body, tail with fins, and how they are joined and weighted.
 * Its shape is the table of dimensions. A changed design is a new object that shares every part left alone.
 */
export type GliderDesign = Nest<DimensionValues>;

type Branch = Readonly<Record<string, unknown>>;

function grow(branch: Branch, path: readonly string[], value: unknown): Branch {
  const [head = '', ...rest] = path;
  const grown = rest.length ? grow((branch[head] ?? {}) as Branch, rest, value) : value;
  return Object.freeze({...branch, [head]: grown});
}

/** The value at a path. */
export function valueAt<P extends DimensionPath>(design: GliderDesign, path: P): DimensionValues[P] {
  let here: unknown = design;
  for (const step of path.split('.')) here = (here as Branch)[step];
  return here as DimensionValues[P];
}

/** Frozen, and without a minus sign on nothing, which no file would bring back. */
const frozen = (value: DimensionValue): DimensionValue =>
  typeof value === 'number' ? value + 0
  : typeof value === 'object' ? Object.freeze(value.map((item) => Object.freeze(Object.fromEntries(Object.entries(item).map(([k, v]) => [k, v + 0])))))
  : value;

/** Whether two values of a dimension are the same, lists item by item. */
export function sameValue(a: DimensionValue, b: DimensionValue): boolean {
  if (typeof a !== 'object' || typeof b !== 'object') return a === b;
  return a.length === b.length && a.every((item, i) => {
    const other = b[i] ?? {};
    return Object.keys(item).every((k) => item[k] === other[k]);
  });
}

/** The design with some values replaced; the same object where nothing differs. Values are not checked here. */
export function withValues(design: GliderDesign, values: Readonly<Partial<Record<DimensionPath, DimensionValue>>>): GliderDesign {
  let next: Branch = design;
  for (const [path, value] of Object.entries(values) as [DimensionPath, DimensionValue][]) {
    if (!sameValue(valueAt(design, path), value)) next = grow(next, path.split('.'), frozen(value));
  }
  return next as GliderDesign;
}

/** The glider that a page begins with: every dimension at its default. */
export const defaultDesign: GliderDesign = dimensionPaths.reduce<Branch>(
  (branch, path) => grow(branch, path.split('.'), frozen(dimensions[path].default)), {}) as GliderDesign;
