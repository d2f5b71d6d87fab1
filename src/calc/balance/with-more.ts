import type {GliderDesign} from '../design/design.js';

type Ballast = GliderDesign['ballast']['masses'];

/** So near to each other, two weights are one pile, m. */
const samePlace = 5e-4;

/** What lies at a place already. */
export const weightAt = (masses: Ballast, at: number): Ballast[number] | undefined => masses.find((one) => Math.abs(one.at - at) < samePlace);

/** A mass without the last digits that adding leaves: to a ten-thousandth of a gram. */
export const tidied = (mass: number): number => Math.round(mass * 1e7) / 1e7;

/** So much more at a place: on what lies there, or beside it; what comes to nothing is left out. */
export function withMore(masses: Ballast, mass: number, at: number): Ballast {
  const there = weightAt(masses, at);
  const sum = tidied((there?.mass ?? 0) + mass);
  const others = masses.filter((one) => one !== there);
  return sum > 0 ? [...others, {mass: sum, at: there?.at ?? at}].sort((a, b) => a.at - b.at) : others;
}
