import type {DerivedValue} from './derived-value.js';

/** Derived values by group, each loaded on first need so that a sentence carries only what it reads. */
const groups: Readonly<Record<string, () => Promise<Readonly<Record<string, DerivedValue>>>>> = {
  balance: async () => (await import('./balance/values.js')).balanceValues,
  dihedral: async () => (await import('./bench/dihedral-values.js')).dihedralValues,
  flight: async () => (await import('./flight/flight-values.js')).flightValues,
  mass: async () => (await import('./balance/values.js')).massValues,
  sheet: async () => (await import('./sheet/sheet-values.js')).sheetValues,
  tail: async () => (await import('./balance/values.js')).tailValues,
  wing: async () => (await import('./bench/wing-values.js')).wingValues,
};

/** The derived value of a name such as `wing.area`; undefined where there is none. */
export async function derivedValue(name: string): Promise<DerivedValue | undefined> {
  const dot = name.indexOf('.');
  const group = groups[name.slice(0, dot)];
  return (await group?.())?.[name.slice(dot + 1)];
}
