import type {ReadOptions} from '../units/read.js';
import {writeExact} from '../units/write.js';
import {isNumberRow, rowOf} from './dimensions.js';
import type {DimensionPath} from './dimensions.js';
import {readDimension} from './read-dimension.js';
import type {Change} from './store.js';

/**
 * The change that a text asks for at a path, or the refusal that keeps the text.
 *
 * A text read by the rules of attributes and files stays as its author wrote it; one typed in a field is kept with a dot and the unit
 * that was used, so that a file means the same in every language.
 */
export function changeFrom(path: DimensionPath, text: string, options?: ReadOptions): Change {
  const read = readDimension(path, text, options);
  if (!read.ok) return {path, refused: {text, problem: read.problems[0] ?? {code: 'quantity-not-a-number', path, args: {text}}}};
  const {value, unit} = read.value;
  if (!options) return {path, value, text};
  const row = rowOf(path);
  return isNumberRow(row) && typeof value === 'number' && unit !== undefined
    ? {path, value, text: writeExact(value, row.kind, unit)} : {path, value};
}
