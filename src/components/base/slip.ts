import type {GliderElement} from './element.js';

/** By how much an edge goes up or down, the same wherever it is said: to a tenth of a millimetre, as the sheets of a stack add up, or to 1/64 in. */
export const slipWords = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'length', host.system === 'inch' ? {fraction: 64} : {digits: 1});
