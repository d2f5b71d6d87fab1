import {refused} from '../problem.js';
import type {Outcome, Problem} from '../problem.js';
import {usualUnit} from '../units/kinds.js';
import {writeList} from '../units/list.js';
import {writeExact} from '../units/write.js';
import {defaultDesign, valueAt, withValues} from './design.js';
import type {GliderDesign} from './design.js';
import {dimensionPaths, isDimensionPath, isListRow, isNumberRow, rowOf} from './dimensions.js';
import type {DimensionPath, DimensionValue} from './dimensions.js';
import {readDimension} from './read-dimension.js';
import type {DesignState, RefusedEntry} from './store.js';

/** The version that this package writes, under the key `glider`. */
export const fileVersion = 1;

/** What a design file gives: a whole glider, the texts its author wrote, and the entries that could not be taken. */
export interface ReadFile {
  readonly design: GliderDesign;
  readonly texts: DesignState['texts'];
  readonly refused: DesignState['refused'];
  readonly problems: readonly Problem[];
}

/**
 * Reads a design file: JSON such as `{"glider": 1, "wing": {"span": "640 mm", "creases": "48mm"}}`, dimensions grouped as
 * in the table, each a text with a dot and a unit. What is missing keeps its default.
 *
 * An entry that cannot be read costs only itself: it is listed in `problems` and the rest of the file still counts. Refused
 * whole: text that is not JSON (`file-not-json`, with how far it could be read), that is not an object (`file-not-a-design`), or of a later
 * version (`file-of-later-version`).
 */
export function readDesignFile(text: string): Outcome<ReadFile> {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused({code: looksCutOff(text) ? 'file-cut-off' : 'file-not-json', args: {length: text.length}});
  }
  if (typeof file !== 'object' || file === null || Array.isArray(file)) return refused({code: 'file-not-a-design'});
  const {glider = fileVersion, ...groups} = file as Record<string, unknown>;
  if (typeof glider !== 'number' || !Number.isInteger(glider) || glider < 1) return refused({code: 'file-version-unreadable'});
  if (glider > fileVersion) return refused({code: 'file-of-later-version', args: {version: glider, known: fileVersion}});

  const values: Partial<Record<DimensionPath, DimensionValue>> = {};
  const texts: Partial<Record<DimensionPath, string>> = {};
  const entries: Partial<Record<DimensionPath, RefusedEntry>> = {};
  const problems: Problem[] = [];
  walk(groups, '', (path, entry) => {
    if (!isDimensionPath(path)) {
      problems.push({code: 'file-unknown-entry', args: {entry: path}});
      return;
    }
    if (typeof entry !== 'string') {
      const problem: Problem = {code: typeof entry === 'number' ? 'file-number-without-unit' : 'file-entry-not-text', path, args: {text: String(entry)}};
      entries[path] = {text: typeof entry === 'number' ? String(entry) : '', problem};
      problems.push(problem);
      return;
    }
    const read = readDimension(path, entry);
    if (read.ok) {
      values[path] = read.value.value;
      texts[path] = entry;
    } else {
      const [problem = {code: 'file-entry-not-text', path}] = read.problems;
      entries[path] = {text: entry, problem};
      problems.push(problem);
    }
  });
  return {ok: true, value: {design: withValues(defaultDesign, values), texts, refused: entries, problems}};
}

/** A file broken off in the middle has more brackets opened than closed outside its strings. */
function looksCutOff(text: string): boolean {
  let depth = 0;
  let inString = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') depth++;
    else if (c === '}' || c === ']') depth--;
  }
  return inString || depth > 0;
}

function walk(group: object, prefix: string, entry: (path: string, value: unknown) => void): void {
  for (const [key, value] of Object.entries(group) as [string, unknown][]) {
    const path = prefix + key;
    if (typeof value === 'object' && value !== null && !Array.isArray(value) && !isDimensionPath(path)) walk(value, `${path}.`, entry);
    else entry(path, value);
  }
}

/** A dimension as it stands in files and attributes: a dot, a unit, and digits that read back the same number. */
export function writeDimension(path: DimensionPath, value: DimensionValue): string {
  const row = rowOf(path);
  if (value === undefined) return '';
  if (isNumberRow(row)) return writeExact(value as number, row.kind, usualUnit(row.kind, 'metric'));
  if (isListRow(row)) return writeList(value as readonly Readonly<Record<string, number>>[], row.list);
  return value as string;
}

/** Writes a design file that reads back the same glider; values nobody changed keep their author's text. */
export function writeDesignFile({design, texts}: Pick<DesignState, 'design' | 'texts'>): string {
  const file: Record<string, unknown> = {glider: fileVersion};
  for (const path of dimensionPaths) {
    const value = valueAt(design, path);
    if (value === undefined) continue;
    const text = texts[path] ?? writeDimension(path, value);
    const steps = path.split('.');
    const last = steps.pop() ?? path;
    const group = steps.reduce((at, step) => (at[step] ??= {}) as Record<string, unknown>, file);
    group[last] = text;
  }
  return `${JSON.stringify(file, null, 2)}\n`;
}
