import {isNumberRow, rowOf} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import type {SystemOfUnits} from '../../calc/units/kinds.js';

/** What a ruler shows: a handle moves from mark to mark, in metres. */
export const rulerStep = (system: SystemOfUnits): number => (system === 'inch' ? 0.0254 / 16 : 1e-3);

export const toStep = (value: number, step: number): number => Number((Math.round(value / step) * step).toPrecision(12));

export const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** The change that a handle asks for: the nearest mark of the ruler that the dimension allows, and nothing absurdly small. */
export function dragged(path: DimensionPath, value: number, step: number): Change {
  const row = rowOf(path);
  const {hard: [least, most], sensible: [usual]} = isNumberRow(row) ? row : {hard: [-Infinity, Infinity], sensible: [0]};
  return {path, value: within(toStep(value, step), usual > 0 ? Math.max(least, usual / 4) : least, most)};
}
