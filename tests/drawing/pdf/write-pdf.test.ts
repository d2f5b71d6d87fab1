import {expect} from '@open-wc/testing';
import type {TemplateJob} from '../../../src/drawing/pdf/job.js';
import {writeTemplates} from '../../../src/drawing/pdf/write-pdf.js';
import {jobOf, papers, planOf, tapered} from '../template-jobs.js';
import {pointsPerMm, readPdf, sizeOf, type PdfFile, type PdfPage, type PdfPath} from './read-pdf.js';

const write = async (job: TemplateJob): Promise<PdfFile> => readPdf((await writeTemplates(job, planOf(job))).pdf);

/** Paths whose bounds are so large, to a thousandth of a millimetre. */
const ofSize = ({paths}: PdfPage, width: number, height: number): readonly PdfPath[] => paths.filter((path) => {
  const [w, h] = sizeOf(path);
  return Math.abs(w - width) < 1e-3 && Math.abs(h - height) < 1e-3;
});

const {a4, letter, a3, tabloid} = papers;

describe('a PDF of templates', () => {
  for (const [name, paper] of Object.entries({a4, letter, a3, tabloid})) {
    it(`has pages of ${name}, each with both boxes at their size in points`, async () => {
      const job = jobOf({paper});
      const {pages} = await write(job);
      expect(pages.length).to.be.above(1);
      expect(pages.length).to.equal(planOf(job).pages.length);
      for (const page of pages) {
        expect(page.width).to.be.closeTo(paper.width * pointsPerMm, 1e-6);
        expect(page.height).to.be.closeTo(paper.height * pointsPerMm, 1e-6);
        const [metric, ...more] = ofSize(page, 100, 50), [inch] = ofSize(page, 101.6, 50.8);
        expect(more).to.have.length(0);
        // 4 × 2 in are 288 × 144 points exactly
        const [width, height] = inch ? sizeOf(inch) : [];
        expect((width ?? 0) * pointsPerMm).to.be.closeTo(288, 1e-6);
        expect((height ?? 0) * pointsPerMm).to.be.closeTo(144, 1e-6);
        const [corner] = metric?.points ?? [];
        expect(corner?.x).to.be.closeTo(10 * pointsPerMm, 1e-6);
        expect(corner?.y).to.be.closeTo(10 * pointsPerMm, 1e-6);
      }
    });
  }

  it('tells the printer not to scale it, and brings no font but Helvetica', async () => {
    const {catalog, fonts} = await write(jobOf());
    expect(catalog).to.match(/\/ViewerPreferences\s*<<\s*\/PrintScaling \/None/);
    expect(new Set(fonts)).to.deep.equal(new Set(['Helvetica', 'Helvetica-Bold']));
  });

  it('says on every page what it belongs to and which page it is', async () => {
    const job = jobOf();
    const plan = planOf(job);
    const {pages} = await write(job);
    pages.forEach(({texts}, i) => {
      expect(texts).to.include('Teal No. 3').and.to.include('Wing 660 × 120 mm').and.to.include('Sheet 1');
      expect(texts.some((text) => text.endsWith(`page ${String(i + 1)} of ${String(plan.pages.length)}`)), texts.join(' | ')).to.equal(true);
    });
  });

  it('shows every part at its own size, wherever its pages are cut', async () => {
    const job = jobOf({}, tapered);
    const {pages} = await write(job);
    const sizes = new Set(pages.flatMap(({paths}) => paths.map((path) => sizeOf(path).map((side) => side.toFixed(2)).join(' × '))));
    for (const {outline} of job.sheets[0]?.pieces ?? []) {
      const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
      const sides = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].map((side) => side.toFixed(2));
      expect(sizes.has(sides.join(' × ')) || sizes.has(sides.reverse().join(' × ')), sides.join(' × ')).to.equal(true);
    }
  });

  it('prints a registration mark in the same place of the board on both pages that share it', async () => {
    const job = jobOf({overlap: 12});
    const plan = planOf(job);
    const {pages} = await write(job);
    const marks = pages.map((page) => ofSize(page, 4.4, 4.4).map(({points}) => ({
      x: points.reduce((sum, {x}) => sum + x, 0) / points.length / pointsPerMm, y: points.reduce((sum, {y}) => sum + y, 0) / points.length / pointsPerMm,
    })));
    let met = 0;
    plan.pages.forEach(({tile, corner}, i) => {
      // from the lower left corner of a page, its window begins so far up and in
      const board = (k: number) => (marks[k] ?? []).map(({x, y}) => ({
        x: x - plan.window.x + (plan.pages[k]?.corner.x ?? 0), y: y - (plan.page.height - plan.window.y - plan.window.height) + (plan.pages[k]?.corner.y ?? 0),
      }));
      const neighbour = plan.pages.findIndex((other) => other.tile.column === tile.column + 1 && other.tile.row === tile.row);
      if (neighbour < 0) return;
      const line = corner.x + plan.window.width - 6;
      const [mine, theirs] = [board(i), board(neighbour)].map((all) => all.filter(({x}) => Math.abs(x - line) < 0.5).map(({y}) => y.toFixed(3)).sort());
      expect(mine).to.have.length.above(0);
      expect(mine).to.deep.equal(theirs);
      met++;
    });
    expect(met).to.be.above(0);
  });

  it('is one page as big as the board where that is wanted', async () => {
    const {pages} = await write(jobOf({paper: undefined}));
    const [page] = pages;
    if (!page || pages.length !== 1) throw new Error('not one page');
    expect(page.width / pointsPerMm).to.be.closeTo(724, 1e-6);
    expect(ofSize(page, 700, 500), 'the board').to.have.length(1);
    expect(ofSize(page, 100, 50)).to.have.length(1);
  });

  it('draws everything larger or smaller for a printer that is off, each way by its own factor', async () => {
    const {pages} = await write(jobOf({correction: {across: 100 / 99.2, up: 50 / 50.3}}));
    for (const page of pages) {
      expect(page.width).to.be.closeTo(a4.width * pointsPerMm, 1e-6);
      expect(ofSize(page, 100 * 100 / 99.2, 50 * 50 / 50.3)).to.have.length(1);
      expect(ofSize(page, 100, 50)).to.have.length(0);
    }
  });

  it('writes a stand-in for letters that its fonts lack, and says which', async () => {
    const job = jobOf();
    const {missing, pdf} = await writeTemplates({...job, words: {...job.words, title: 'Łódź Ζέ−1'}}, planOf(job));
    const {pages: [page]} = await readPdf(pdf);
    expect(page?.texts).to.include('Lódz ??–1');
    expect(missing).to.equal('Ζέ');
  });

  it('lets the page do its own work between two pages, and stops when told to', async () => {
    const job = jobOf();
    const stop = new AbortController();
    const told: number[] = [];
    let tasks = 0;
    const ticking = setInterval(() => { tasks++; }, 0);
    const failed = await writeTemplates(job, planOf(job), {
      signal: stop.signal, onPage: (page) => { told.push(page); if (page === 3) stop.abort(); },
    }).then(() => 'written', (error: unknown) => (error as Error).name);
    clearInterval(ticking);
    expect(failed).to.equal('AbortError');
    expect(told).to.deep.equal([1, 2, 3]);
    expect(tasks).to.be.at.least(2);
  });

  it('leaves nothing behind in the page', async () => {
    const before = document.body.childElementCount;
    await write(jobOf());
    expect(document.body.childElementCount).to.equal(before);
  });
});
