import type {GliderElement} from './element.js';

/** How wide a circle is, in whole metres or feet; a small one to the tenth of a metre. */
export const acrossWords = (host: GliderElement, across: number): string =>
  host.write(across, 'length', host.system === 'inch' ? {unit: 'ft', digits: 0} : {unit: 'm', digits: across < 9.95 ? 1 : 0});
