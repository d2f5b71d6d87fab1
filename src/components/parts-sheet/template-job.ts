import type {Paper, TemplateJob} from '../../drawing/pdf/job.js';
import {sheetTemplateWords} from '../../messages/en/sheet-templates.js';
import type {GliderElement} from '../base/element.js';
import type {LaidOut} from './laid-out.js';
import {sheetPicture} from './picture.js';
import {size, written} from './sizes.js';

/** What a reader chose for a template. */
export interface TemplateChoice {
  readonly paper: Paper | undefined;
  /** m. */
  readonly overlap: number;
  /** What the printer makes of a length that should be 1. */
  readonly printed: {readonly across: number; readonly up: number};
  /** One of the plans, or all of them. */
  readonly plan: number | undefined;
}

/** The box that a reader of each system measures, m. */
export const measuredBox = {metric: {across: 0.1, up: 0.05}, inch: {across: 4 * 0.0254, up: 2 * 0.0254}} as const;

/** The name on the pages and of the files. */
export const titleOf = (host: GliderElement): string => host.state.design.name.trim() || host.say(sheetTemplateWords).nameless;

/** The templates of some sheets, in the reader's words and units. */
export function templateJob(host: GliderElement, cut: LaidOut, {paper, overlap, printed, plan}: TemplateChoice): TemplateJob {
  const words = host.say(sheetTemplateWords);
  const {length, width} = cut.stock, {board} = host.state.design;
  const {sheets} = sheetPicture(host, cut);
  const pieces = cut.plans.flatMap((each) => each.pieces.map(({part}) => ({part, alike: each.alike})));
  const box = measuredBox[host.system];
  const exact = {fraction: 64, ...host.system === 'metric' ? {digits: 1} : {}};
  const sides = (across: number, up: number, options = {}): string =>
    `${host.write(across, 'length', {bare: true, ...options})}\u00a0×\u00a0${host.write(up, 'length', options)}`;
  return {
    board: {length: length * 1000, width: width * 1000},
    sheets: plan === undefined ? sheets : sheets.slice(plan, plan + 1),
    paper, overlap: overlap * 1000,
    correction: {across: 1 / printed.across, up: 1 / printed.up},
    words: {
      title: titleOf(host),
      facts: [
        ...cut.kits > 1 ? [words.kits(cut.kits)] : [],
        ...cut.parts.flatMap((part) => {
          const count = pieces.reduce((sum, piece) => sum + (piece.part === part ? piece.alike : 0), 0);
          return count === 0 ? [] : [words.fact({part: part.id, size: size(host, part.outline), count})];
        }),
        [words.board({size: written(host, length, width), thickness: host.write(board.thickness, 'length')}), ...board.grain === 'none' ? [] : [words.grain[board.grain]]].join(', '),
      ],
      corrected: printed.across === 1 && printed.up === 1 ? undefined
        : words.corrected({box: sides(box.across, box.up), measured: sides(box.across * printed.across, box.up * printed.up, exact)}),
      page: words.page, measure: words.measure, trim: words.trim, under: words.under, boardEdge: words.boardEdge,
    },
  };
}
