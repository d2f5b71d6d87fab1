import type {GliderDesign} from '../design/design.js';

/** The widest spot that anything on one half of the wing needs, from the centre line. */
const halfTaken = ({joints, stations}: GliderDesign['wing']): number => Math.max(0, ...[...joints, ...stations].map(({at}) => at));

/** Lengths of wings in whole steps of so many metres. */
export const spanOf = (steps: number, step: number): number => Math.round(steps * step * 1e9) / 1e9;

/** As many steps as go into a length. */
export const stepsIn = (length: number, step: number): number => Math.floor(length / step + 1e-6);

/** The shortest wing that keeps its joints and stations, in steps. */
export const leastSteps = (wing: GliderDesign['wing'], step: number): number => Math.floor(2 * halfTaken(wing) / step) + 1;
