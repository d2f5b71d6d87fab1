import {sheetSizes} from '../../../shared/sheet-sizes.js';
import type {Paper} from '../../drawing/pdf/job.js';

/** Paper that people have printers for. */
const atHome = ['a4', 'letter', 'a3', 'tabloid'] as const;

export type PaperId = (typeof atHome)[number] | 'whole';

/** What templates can be printed on; `whole` is one page as big as the board. */
export const papers: readonly {readonly id: PaperId; readonly name: string}[] = [
  ...atHome.map((id) => ({id, name: sizeOf(id).name})), {id: 'whole', name: ''},
];

/** A sheet of paper, upright, in mm; none for a page as big as the board. */
export function paperOf(id: PaperId): Paper | undefined {
  return id === 'whole' ? undefined : known[id];
}

function sizeOf(id: (typeof atHome)[number]): (typeof sheetSizes)[number] {
  const size = sheetSizes.find((each) => each.id === id);
  if (!size) throw new RangeError(`no paper is called ${id}`);
  return size;
}

/** The same objects each time, so that a choice can be told from another by identity. */
const known = Object.fromEntries(atHome.map((id) => [id, {width: sizeOf(id).width * 1000, height: sizeOf(id).length * 1000}])) as Readonly<Record<(typeof atHome)[number], Paper>>;
