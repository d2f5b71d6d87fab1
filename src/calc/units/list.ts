import type {Problem} from '../problem.js';
import {usualUnit} from './kinds.js';
import type {QuantityKind} from './kinds.js';
import {notANumber, scanQuantity} from './read.js';
import type {ReadOptions} from './read.js';
import {scanner} from './scan.js';
import {writeExact, writeQuantity} from './write.js';
import type {WriteOptions} from './write.js';

/** One number of each item of a list, in the order in which an item is written. */
export interface ListItemField {
  readonly name: string;
  readonly kind: QuantityKind;
}

/** The numbers of one item in SI, by name. */
export type ListItem = Readonly<Record<string, number>>;

export type ReadListResult =
  | {readonly ok: true; readonly value: readonly ListItem[]}
  | {readonly ok: false; readonly problem: Problem};

/** Longer texts are no list of dimensions. */
const longest = 4000;

/**
 * Reads a list such as `8 g @ 20 mm; 3 g @ 410 mm` or `8g@20mm 3g@410mm`: items parted by spaces, semicolons or commas,
 * the numbers of an item joined by `@` in the order of `fields`. A list without anything in it is empty.
 *
 *     list     = [ item { separator item } ] [ separator ]
 *     item     = quantity { "@" quantity }        as many as there are fields, spaces around "@" as you like
 *     quantity = as in `readQuantity`             taken as far as it goes: `2 ft 3 in` and `22 7/8 in` are one
 *     separator = spaces, or ";" or ","           where a comma is the decimal mark, one before a digit parts nothing
 *
 * `bareUnit` names the units shown beside the field in the order of the fields: `mm`, `g @ mm`.
 *
 * Problems are those of `readQuantity`, and `list-item-incomplete` {text, suggestion} for an item of too few or too many
 * numbers.
 */
export function readList(text: string, fields: readonly ListItemField[], options: ReadOptions = {}): ReadListResult {
  const [first] = fields;
  if (first && text.length > longest) return notANumber(text, first.kind);
  const scan = scanner(text);
  const bareUnits = options.bareUnit?.split('@').map((unit) => unit.trim()) ?? [];
  const items: ListItem[] = [];
  while (!scan.ended()) {
    const start = scan.at;
    const item: Record<string, number> = {};
    for (const [i, {name, kind}] of fields.entries()) {
      if (i > 0 && (!scan.take(/\s*@\s*/y) || scan.ended())) return incomplete(scan.text.slice(start, scan.at), fields, bareUnits);
      const read = scanQuantity(scan, kind, {...options, bareUnit: bareUnits[i]}, true);
      if (!read.ok) return read;
      item[name] = read.value;
    }
    if (scan.take(/\s*@/y)) return incomplete(scan.text.slice(start, scan.at), fields, bareUnits);
    if (!scan.ended() && !scan.take(/\s*[;,]\s*|\s+/y)) return notANumber(scan.text.slice(start), fields[0]?.kind ?? 'count');
    items.push(item);
  }
  return {ok: true, value: items};
}

function incomplete(text: string, fields: readonly ListItemField[], bareUnits: readonly string[]) {
  const suggestion = fields.map(({kind}, i) => `10 ${bareUnits[i] ?? usualUnit(kind, 'metric')}`.trim().replace(' °', '°')).join(' @ ');
  return {ok: false, problem: {code: 'list-item-incomplete', args: {text, suggestion}}} as const;
}

/** Writes a list for attributes, files and links, so that it reads back as the identical numbers: `8g@20mm 3g@410mm`. */
export function writeList(items: readonly ListItem[], fields: readonly ListItemField[]): string {
  return items.map((item) => fields.map(({name, kind}) =>
    writeExact(item[name] ?? NaN, kind, usualUnit(kind, 'metric')).replace(' ', '')).join('@')).join(' ');
}

/** Writes a list for reading and for fields, rounded as a reader of the system expects: `8 g @ 20 mm; 3 g @ 410 mm`. */
export function writeListForReading(
  items: readonly ListItem[], fields: readonly ListItemField[], options: Pick<WriteOptions, 'system' | 'decimal' | 'fraction' | 'bare'> = {},
): string {
  return items.map((item) => fields.map(({name, kind}) => writeQuantity(item[name] ?? NaN, kind, options)).join(' @ ')).join('; ');
}
