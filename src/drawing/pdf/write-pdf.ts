import {jsPDF} from 'jspdf';
import {svg2pdf} from 'svg2pdf.js';
import {printInk} from '../ink.js';
import {Pen} from '../pen.js';
import type {Box} from '../view.js';
import {drawBlock} from './draw-block.js';
import {drawBoard, mmPerPx} from './draw-board.js';
import {drawTrim} from './draw-trim.js';
import {makeReady} from './for-pdf.js';
import {inBatches} from './in-batches.js';
import type {TemplateJob} from './job.js';
import {inLatin} from './latin.js';
import type {TemplatePage, TemplatePlan} from './plan.js';

export interface TemplateFile {
  readonly pdf: Blob;
  readonly pages: number;
  /** Letters that the file's fonts lack, each once; a question mark stands for them. */
  readonly missing: string;
}

export interface Writing {
  /** Told before each page. */
  readonly onPage?: (page: number, of: number) => void;
  readonly signal?: AbortSignal;
}

const svgNamespace = 'http://www.w3.org/2000/svg';

/** Writes the pages of templates as a PDF whose readers are told not to scale it. Rejects when it is aborted. */
export async function writeTemplates(job: TemplateJob, plan: TemplatePlan, {onPage, signal}: Writing = {}): Promise<TemplateFile> {
  const {paper: {width, height}, pages} = plan;
  const orientation = width > height ? 'landscape' : 'portrait';
  const doc = new jsPDF({unit: 'mm', format: [width, height], orientation, putOnlyUsedFonts: true, compress: true});
  doc.viewerPreferences({PrintScaling: 'None'});
  doc.setProperties({title: inLatin(job.words.title).text});
  const missing = new Set<string>();
  for (const page of pages) {
    onPage?.(page.number, pages.length);
    signal?.throwIfAborted();
    if (page.number > 1) doc.addPage([width, height], orientation);
    for (const letter of await writePage(doc, job, plan, page)) missing.add(letter);
  }
  return {pdf: doc.output('blob'), pages: pages.length, missing: [...missing].join('')};
}

/** Lets the web page that asked for the file do its own work in between. */
const nextTask = (): Promise<void> => new Promise((resolve) => { setTimeout(resolve); });

async function writePage(doc: jsPDF, job: TemplateJob, plan: TemplatePlan, page: TemplatePage): Promise<readonly string[]> {
  const {window, page: {width, height}} = plan;
  const whole = {x: 0, y: 0, width, height};
  const {across, up} = job.correction;
  const missing: string[] = [];
  const put = async ({x, y, width: w, height: h}: Box, draw: (pen: Pen) => void): Promise<void> => {
    await nextTask();
    const svg = document.createElementNS(svgNamespace, 'svg');
    // a printer may be off by more along the paper than across it
    svg.setAttribute('preserveAspectRatio', 'none');
    draw(new Pen(svg, printInk));
    missing.push(...makeReady(svg));
    for (const batch of inBatches(svg)) {
      await nextTask();
      await svg2pdf(batch, doc, {x: x * across, y: y * up, width: w * across, height: h * up});
    }
  };
  await put(window, (pen) => { drawBoard(pen, plan, page, job.words); });
  await put(whole, (pen) => {
    pen.begin({box: whole, mmPerPx});
    drawTrim(pen, plan, page, job.words);
    drawBlock(pen, plan, page, job);
    pen.finish();
  });
  return missing;
}
