import type {DerivedValue} from './derived-value.js';

type Load = () => Promise<Readonly<Record<string, DerivedValue>>>;

/** Derived values by group, loaded on first need so that a sentence carries only what it reads; looked through in turn, what needs most last. */
const groups: Readonly<Record<string, readonly Load[]>> = {
  balance: [async () => (await import('./balance/values.js')).balanceValues],
  dihedral: [async () => (await import('./bench/dihedral-values.js')).dihedralValues],
  flight: [async () => (await import('./flight/flight-values.js')).flightValues, async () => (await import('./flight/motion-values.js')).motionValues],
  mass: [async () => (await import('./balance/values.js')).massValues],
  sheet: [async () => (await import('./sheet/sheet-values.js')).sheetValues],
  tail: [async () => (await import('./balance/values.js')).tailValues],
  wing: [async () => (await import('./bench/wing-values.js')).wingValues],
};

/** The derived value of a name such as `wing.area`; undefined where there is none. */
export async function derivedValue(name: string): Promise<DerivedValue | undefined> {
  const dot = name.indexOf('.');
  for (const load of groups[name.slice(0, dot)] ?? []) {
    const found = (await load())[name.slice(dot + 1)];
    if (found) return found;
  }
  return undefined;
}
