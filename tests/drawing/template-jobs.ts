import {defaultDesign, withValues, type GliderDesign} from '../../src/calc/design/design.js';
import {cutSheets, type CutSheets} from '../../src/calc/sheet/from-parts.js';
import type {SheetSketch} from '../../src/drawing/figures/sheet-layout.js';
import type {Paper, TemplateJob} from '../../src/drawing/pdf/job.js';
import {planTemplates, type TemplatePlan} from '../../src/drawing/pdf/plan.js';
import {sheetTemplateWords} from '../../src/messages/en/sheet-templates.js';

export const papers = {a4: {width: 210, height: 297}, letter: {width: 215.9, height: 279.4}, a3: {width: 297, height: 420}, tabloid: {width: 279.4, height: 431.8}} as const satisfies Record<string, Paper>;

/** A wing that tapers and sweeps, with grooves on both faces, and a body that tapers. */
export const tapered: GliderDesign = withValues(defaultDesign, {'wing.tipChord': 0.08, 'wing.sweep': 0.02, 'body.tailHeight': 0.016});

export function cutOf(design: GliderDesign, kits: number): CutSheets {
  const cut = cutSheets(design, kits);
  if (!cut.ok) throw new Error('no layout');
  return cut.value;
}

/** The sheets of a layout as they are drawn, with plain words. */
export function sketchesOf({plans}: CutSheets): readonly SheetSketch[] {
  const mm = ({x, y}: {x: number; y: number}) => ({x: x * 1000, y: y * 1000});
  return plans.map(({first, pieces}) => ({
    title: `Sheet ${String(first)}`, leftover: undefined,
    pieces: pieces.map(({number, part, placed, lines}) => ({
      number, name: part.id, size: 'its size', outline: placed.outline.map(mm), places: [],
      lines: lines.map(({kind, face, from, to}) => ({kind, face, from: mm(from), to: mm(to)})),
    })),
  }));
}

/** Templates of a design on A4, unless told otherwise. */
export function jobOf(changes: Partial<TemplateJob> = {}, design: GliderDesign = tapered, kits = 1): TemplateJob {
  const cut = cutOf(design, kits);
  const {page, measure, trim, under, boardEdge} = sheetTemplateWords.en;
  return {
    board: {length: cut.stock.length * 1000, width: cut.stock.width * 1000}, sheets: sketchesOf(cut),
    paper: papers.a4, overlap: 10, correction: {across: 1, up: 1},
    words: {title: 'Teal No. 3', facts: ['Wing 660 × 120 mm', 'Board 700 × 500 mm'], corrected: undefined, page, measure, trim, under, boardEdge},
    ...changes,
  };
}

export function planOf(job: TemplateJob, most = 200): TemplatePlan {
  const plan = planTemplates(job, most);
  if (!plan.ok) throw new Error(plan.problems.map(({code}) => code).join());
  return plan.value;
}
