import {bounds, type Polygon} from '../../calc/geometry/polygon/index.js';
import type {GliderElement} from '../base/element.js';
import {rulerStep} from '../base/dragged.js';

/** Length by width as a reader writes it: `700 × 500 mm`. */
export const written = (host: GliderElement, length: number, width: number): string =>
  `${host.write(length, 'length', {bare: true})}\u00a0×\u00a0${host.write(width, 'length')}`;

/** The bounds of an outline, the longer side first. */
export function sizeOf(outline: Polygon): readonly [longer: number, shorter: number] {
  const {length, width} = bounds(outline);
  return [Math.max(length, width), Math.min(length, width)];
}

export const size = (host: GliderElement, outline: Polygon): string => written(host, ...sizeOf(outline));

/** The same for a column that has the unit at its head. */
export const bareSize = (host: GliderElement, outline: Polygon): string =>
  sizeOf(outline).map((side) => host.write(side, 'length', {bare: true})).join('\u00a0×\u00a0');

/** What is surely there: rounded down to a mark of the ruler. */
export function kept(host: GliderElement, {length, width}: {readonly length: number; readonly width: number}): string {
  const [longer, shorter] = [Math.max(length, width), Math.min(length, width)].map((value) => atMost(host, value));
  return written(host, longer ?? 0, shorter ?? 0);
}

export const atMost = (host: GliderElement, value: number): number => {
  const step = rulerStep(host.system);
  return Math.floor(value / step + 1e-6) * step;
};

/** What surely holds it: rounded up to a mark of the ruler. */
export const atLeast = (host: GliderElement, value: number): number => {
  const step = rulerStep(host.system);
  return Math.ceil(value / step - 1e-6) * step;
};

/** Where to put a mark on the board: to half a millimetre or a thirty-second of an inch, finer than the knife's room. */
export const place = (host: GliderElement, value: number): string => host.write(value, 'length', {bare: true, fraction: 32});
