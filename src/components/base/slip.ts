import type {GliderElement} from './element.js';

/** By how much an edge goes up or down: finer than a place. */
export const slipWords = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'length', host.system === 'inch' ? {fraction: 32} : {});
