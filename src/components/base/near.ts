import type {GliderElement} from './element.js';

/** A place that is only good to a range, the same wherever it is said: to whole millimetres or eighths of an inch. */
export const near = (host: GliderElement, value: number, bare = false): string =>
  host.write(value, 'length', host.system === 'inch' ? {fraction: 8, bare} : {digits: 0, bare});
