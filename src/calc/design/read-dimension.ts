import {refused} from '../problem.js';
import type {Outcome, Problem} from '../problem.js';
import {readList} from '../units/list.js';
import {readQuantity} from '../units/read.js';
import type {ReadOptions} from '../units/read.js';
import {isChoiceRow, isListRow, isNumberRow, rowOf} from './dimensions.js';
import type {DimensionPath, DimensionValue} from './dimensions.js';

/** A value as read, with the unit that the text used when it is a single quantity. */
export interface ReadDimension {
  readonly value: DimensionValue;
  readonly unit?: string;
}

const outside = (value: number, [least, most]: readonly [number, number]): 'dimension-too-small' | 'dimension-too-large' | undefined =>
  !(value >= least) ? 'dimension-too-small' : !(value <= most) ? 'dimension-too-large' : undefined;

/** Why a value may not stand at a path, whatever the rest of the glider is like; undefined when it may. */
export function checkValue(path: DimensionPath, value: DimensionValue): Problem | undefined {
  const row = rowOf(path);
  if (isNumberRow(row)) {
    if (value === undefined && row.default === undefined) return undefined;
    if (typeof value !== 'number' || !Number.isFinite(value)) return {code: 'quantity-not-finite', path};
    if (row.kind === 'count' && !Number.isInteger(value)) return {code: 'quantity-not-whole', path};
    const code = outside(value, row.hard);
    return code && {code, path, args: {value, least: row.hard[0], most: row.hard[1], kind: row.kind}};
  }
  if (isChoiceRow(row)) {
    return typeof value === 'string' && row.choices.includes(value) ? undefined
      : {code: 'choice-unknown', path, args: {text: typeof value === 'object' ? '' : String(value), choices: row.choices.join(', ')}};
  }
  if (isListRow(row)) {
    if (typeof value !== 'object') return {code: 'list-not-a-list', path};
    if (value.length > row.most) return {code: 'list-too-long', path, args: {most: row.most}};
    for (const item of value) {
      for (const field of row.list) {
        const entry = item[field.name];
        if (entry === undefined || !Number.isFinite(entry)) return {code: 'quantity-not-finite', path};
        const code = outside(entry, field.hard);
        if (code) return {code, path, args: {value: entry, least: field.hard[0], most: field.hard[1], kind: field.kind}};
      }
    }
    return undefined;
  }
  if (typeof value !== 'string') return {code: 'text-not-text', path};
  return value.length > row.longest ? {code: 'text-too-long', path, args: {most: row.longest}} : undefined;
}

/**
 * Reads what stands in an attribute, a file or a field for a dimension and checks it against the hard limits.
 *
 * An empty text means "not given" where a dimension can be missing, and an empty list where it is a list.
 */
export function readDimension(path: DimensionPath, text: string, options: ReadOptions = {}): Outcome<ReadDimension> {
  const row = rowOf(path);
  let read: ReadDimension;
  if (isNumberRow(row)) {
    if (text.trim() === '' && row.default === undefined) return {ok: true, value: {value: undefined}};
    const quantity = readQuantity(text, row.kind, options);
    if (!quantity.ok) return refused({...quantity.problem, path});
    read = {value: quantity.value, unit: quantity.unit};
  } else if (isListRow(row)) {
    const list = readList(text, row.list, options);
    if (!list.ok) return refused({...list.problem, path});
    read = {value: list.value};
  } else {
    read = {value: isChoiceRow(row) ? text.trim() : text};
  }
  const problem = checkValue(path, read.value);
  return problem ? refused(problem) : {ok: true, value: read};
}
