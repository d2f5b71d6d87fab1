import type {ThrowNumber} from './throw-check.js';

/** What a column of a table of throws holds. */
export type ColumnId = 'id' | 'at' | 'version' | ThrowNumber | 'path' | 'surface' | 'wind' | 'counted' | 'note' | 'unread' | 'why';

/** As this package heads it, with the unit of its bare numbers. */
export interface Column {
  readonly id: ColumnId;
  readonly heading: string;
  /** Other headings that mean the same, in lower case. */
  readonly also: readonly string[];
}

const column = (id: ColumnId, heading: string, also: string): Column => ({id, heading, also: also.split('|')});

export const columns: readonly Column[] = [
  column('at', 'thrown at', 'at|date|when|datum|zeitpunkt'),
  column('version', 'version', 'glider|plane|model|design|flieger|flugzeug|modell'),
  column('distance', 'distance (m)', 'distance|far|range|length|weite|strecke|entfernung|flugweite'),
  column('time', 'time (s)', 'time|duration|seconds|flight time|zeit|dauer|flugzeit|flugdauer'),
  column('height', 'release height (m)', 'release height|height|launch height|hand|höhe|abwurfhöhe|starthöhe|wurfhöhe'),
  column('path', 'flew', 'path|straightness|straight|landed|flugbahn|flog'),
  column('surface', 'surface', 'ground|floor|boden|untergrund'),
  column('wind', 'wind', 'air|luft'),
  column('counted', 'counts', 'counted|zählt|gezählt'),
  column('note', 'note', 'notes|comment|comments|remark|notiz|bemerkung|anmerkung'),
  column('id', 'id', 'number'),
  column('unread', 'row not read', 'unread'),
  column('why', 'why not', 'reason'),
];

/** A heading as it stands in a file: which column it names, and the unit in its brackets. */
export interface Heading {
  readonly text: string;
  readonly id: ColumnId | undefined;
  readonly unit: string | undefined;
}

/** Reads a heading such as `Distance [ft]`; one that names no column here has no id. */
export function readHeading(cell: string): Heading {
  const text = cell.trim();
  const found = /^(.*?)\s*(?:[([]\s*([^)\]]*?)\s*[)\]]|,\s*(\S+))?$/su.exec(text);
  const name = (found?.[1] ?? text).toLowerCase().replace(/[\s_-]+/gu, ' ').trim();
  const id = columns.find(({heading, also}) => heading.replace(/ \(.*/, '') === name || also.includes(name))?.id;
  return {text, id, unit: (found?.[2] ?? found?.[3]) || undefined};
}
