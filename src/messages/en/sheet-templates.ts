import type {PartId} from '../../calc/parts/part.js';
import {topic} from '../topic.js';

const parts: Readonly<Record<PartId, string>> = {wing: 'Wing', body: 'Body', tailplane: 'Tailplane', fin: 'Fin'};

/** What stands on the pages of a template, and beside the buttons that make one. */
export const sheetTemplateWords = topic('sheet-templates', {
  intro: 'Every part at true size: to print, tape together and prick through onto the board, or to cut by machine.',
  paper: 'Paper',
  whole: 'one page as big as the board',
  overlap: 'Pages share',
  oneForAll: 'One set does for a whole class: ask for one glider, print its templates and prick every part through them.',
  which: 'Which sheets',
  all: 'all of them',
  pages: (a: {pages: number; paper: string}) => `${a.pages === 1 ? 'One page' : `${String(a.pages)} pages`} of ${a.paper}.`,
  plotter: (a: {pages: number; size: string}) => `${a.pages === 1 ? 'One page' : `${String(a.pages)} pages`} of ${a.size}, for a copy shop.`,
  printer: 'If your printer is off',
  printerHelp: 'Print one page at 100 % with nothing changed here, measure its box and write down what the ruler says. The next file makes up for it.',
  side: (side: string) => `The ${side} side measures`,
  makePdf: 'Make the PDF',
  saveSvg: 'Save as SVG',
  saveDxf: 'Save as DXF',
  loading: 'Fetching what writes the file …',
  writing: (a: {page: number; of: number}) => `Drawing page ${String(a.page)} of ${String(a.of)} …`,
  stop: 'Stop',
  stopped: 'Stopped; there is no file.',
  ready: (name: string) => `Save ${name} again`,
  readyPdf: 'Print it at 100 %, “actual size”, and measure the box on the first page before you cut.',
  readyCut: 'One unit is one millimetre. Lines of face B lie where they are seen from above, through the board.',
  stale: 'No file is made from an answer that no longer holds: mend the entry marked above first.',
  nothing: 'There is nothing to cut on this sheet.',
  leftOut: (ids: readonly PartId[]) => `What found no place is not in the file: ${ids.map((id) => parts[id].toLowerCase()).join(', ')}.`,
  letters: (letters: string) => `The file’s lettering has Latin letters only, so a question mark stands for ${letters}`,
  notLoaded: 'What writes this file could not be loaded. Try again when the page is reachable; a page with the single script needs the package’s other scripts beside it.',
  failed: 'The file could not be written.',

  nameless: 'Glider',
  fact: (a: {part: PartId; size: string; count: number}) => `${parts[a.part]}${a.count > 1 ? ` (${String(a.count)})` : ''} ${a.size}`,
  board: (a: {size: string; thickness: string}) => `Board ${a.size}, ${a.thickness} thick`,
  grain: {length: 'grain along the long edge', width: 'grain along the short edge'},
  kits: (kits: number) => `For ${String(kits)} gliders`,
  page: (a: {page: number; pages: number; code: string | undefined}) => `${a.code === undefined ? '' : `${a.code} · `}page ${String(a.page)} of ${String(a.pages)}`,
  corrected: (a: {box: string; measured: string}) => `Drawn for a printer that makes ${a.measured} of ${a.box}.`,
  measure: {
    heading: 'Measure this box before you cut',
    lines: [
      'Print at 100 %, “actual size”, not “fit to page”: the inner box is then 100 × 50 mm, the outer one 4 × 2 in.',
      'If it is still off, type what you measure where the file came from, and make it again.',
    ],
  },
  trim: (code: string) => `trim here, lay over ${code}`,
  under: (code: string) => `${code} goes over this edge`,
  boardEdge: 'edge of the board',
});
