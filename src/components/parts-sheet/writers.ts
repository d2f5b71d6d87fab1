import {layeredSheets} from '../../drawing/layers.js';
import type {TemplateJob} from '../../drawing/pdf/job.js';
import type {TemplatePlan} from '../../drawing/pdf/plan.js';

/** What can be made of a sheet at true size. */
export type FileKind = 'pdf' | 'svg' | 'dxf';

/** What writes a file could not be fetched. */
export class NotLoaded extends Error {}

export interface Written {
  readonly content: Blob;
  /** Letters that the file's fonts lack. */
  readonly missing: string;
}

export interface ToWrite {
  readonly job: TemplateJob;
  /** How a PDF lies on its pages. */
  readonly plan: TemplatePlan | undefined;
  readonly signal: AbortSignal;
  readonly onPage: (page: number, of: number) => void;
}

const fetched = async <M>(load: () => Promise<M>): Promise<M> => {
  try {
    return await load();
  } catch (cause) {
    throw new NotLoaded('a writer could not be loaded', {cause});
  }
};

const whole = (text: string, type: string): Written => ({content: new Blob([text], {type}), missing: ''});

/** Writes a file of a kind; what does so is loaded when the first of its kind is asked for. Rejects with {@link NotLoaded} where it is not to be had. */
export async function writeFile(kind: FileKind, {job, plan, signal, onPage}: ToWrite): Promise<Written> {
  switch (kind) {
    case 'pdf': {
      const {writeTemplates} = await fetched(() => import('../../drawing/pdf/write-pdf.js'));
      if (!plan) throw new TypeError('a PDF needs a plan of its pages');
      const {pdf, missing} = await writeTemplates(job, plan, {signal, onPage});
      return {content: pdf, missing};
    }
    case 'svg': {
      const {writeSvg} = await fetched(() => import('../../drawing/svg-file/write-svg.js'));
      return whole(writeSvg(layeredSheets(job.board, job.sheets), job.words.title), 'image/svg+xml');
    }
    case 'dxf': {
      const {writeDxf} = await fetched(() => import('../../drawing/dxf/write-dxf.js'));
      return whole(writeDxf(layeredSheets(job.board, job.sheets)), 'image/vnd.dxf');
    }
  }
}
