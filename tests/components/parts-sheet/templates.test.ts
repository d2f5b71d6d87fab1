import {expect, fixture, html} from '@open-wc/testing';
import type {GliderPartsSheet} from '../../../src/components/parts-sheet/define.js';
import '../../../src/components/parts-sheet/define.js';
import '../../../src/components/design/define.js';
import {pointsPerMm, readPdf} from '../../drawing/pdf/read-pdf.js';
import {openStrictPage} from '../../strict-page.js';
import {until} from '../../until.js';

const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

/** What the element made, caught where it would have been given an address; nothing is really saved. */
class Catch {
  readonly files: Blob[] = [];
  readonly names: string[] = [];
  readonly letGo: string[] = [];
  readonly #realm: typeof globalThis;
  readonly #kept: {readonly make: typeof URL.createObjectURL; readonly letGo: typeof URL.revokeObjectURL};

  constructor(realm: typeof globalThis = window) {
    this.#realm = realm;
    const {URL: Addresses} = realm;
    this.#kept = {make: Addresses.createObjectURL.bind(Addresses), letGo: Addresses.revokeObjectURL.bind(Addresses)};
    Addresses.createObjectURL = (file: Blob) => {
      this.files.push(file);
      return this.#kept.make(file);
    };
    Addresses.revokeObjectURL = (address: string) => {
      this.letGo.push(address);
      this.#kept.letGo(address);
    };
    realm.document.addEventListener('click', this.#stay, true);
  }

  readonly #stay = (event: Event): void => {
    const [link] = event.composedPath();
    if ((link as Element).localName !== 'a') return;
    event.preventDefault();
    this.names.push((link as HTMLAnchorElement).download);
  };

  end(): void {
    this.#realm.URL.createObjectURL = this.#kept.make;
    this.#realm.URL.revokeObjectURL = this.#kept.letGo;
    this.#realm.document.removeEventListener('click', this.#stay, true);
  }
}

const root = (element: Element): ShadowRoot => {
  if (!element.shadowRoot) throw new Error('nothing rendered');
  return element.shadowRoot;
};
const panel = (element: Element): HTMLDetailsElement => {
  const details = root(element).querySelector<HTMLDetailsElement>('details.templates');
  if (!details) throw new Error('no templates');
  return details;
};

async function opened(element: GliderPartsSheet): Promise<GliderPartsSheet> {
  await element.updateComplete;
  panel(element).open = true;
  await until(() => panel(element).querySelector('button') !== null, 'the panel is there');
  await element.updateComplete;
  return element;
}

function field(element: GliderPartsSheet, name: string): HTMLInputElement | HTMLSelectElement {
  const input = root(element).querySelector<HTMLInputElement>(`[id="field-${name}"]`);
  if (!input) throw new Error(`no field for ${name}`);
  return input;
}

async function choose(element: GliderPartsSheet, name: string, value: string): Promise<void> {
  const input = field(element, name);
  input.value = value;
  input.dispatchEvent(new Event(input.localName === 'select' ? 'change' : 'input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

const buttons = (element: GliderPartsSheet): readonly HTMLButtonElement[] => [...panel(element).querySelectorAll<HTMLButtonElement>('.make button')];
const said = (element: GliderPartsSheet): string => plain(panel(element).textContent);
const link = (element: Element): HTMLAnchorElement | null => root(element).querySelector('a.file');

async function made(element: GliderPartsSheet, which: 0 | 1 | 2, {names}: Catch): Promise<void> {
  const before = names.length;
  buttons(element)[which]?.click();
  await until(() => names.length > before, 'the file is saved');
}

/** Begins the PDF, until it says that it draws a page: heard at once, since all the pages may be drawn before the clock is looked at again. */
async function drawing(element: GliderPartsSheet): Promise<void> {
  const heard = new Promise<void>((resolve) => {
    const observer = new MutationObserver(() => {
      if (!said(element).includes('Drawing page')) return;
      observer.disconnect();
      resolve();
    });
    observer.observe(panel(element), {subtree: true, childList: true, characterData: true});
  });
  buttons(element)[0]?.click();
  await heard;
}

describe('the templates of <glider-parts-sheet>', () => {
  let caught: Catch;
  beforeEach(() => { caught = new Catch(); });
  afterEach(() => { caught.end(); });

  const one = async (attributes = html`<glider-parts-sheet></glider-parts-sheet>`): Promise<GliderPartsSheet> => opened(await fixture<GliderPartsSheet>(attributes));

  it('come when asked for, with the number of pages for the paper', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    expect(plain(panel(element).textContent)).to.equal('Templates at true size');
    await opened(element);
    expect(said(element)).to.match(/\d+ pages of A4\./);
    const onA4 = Number(/(\d+) pages/.exec(said(element))?.[1]);
    await choose(element, 'paper', 'a3');
    expect(Number(/(\d+) pages of A3/.exec(said(element))?.[1])).to.be.below(onA4);
    await choose(element, 'paper', 'whole');
    expect(said(element)).to.contain('One page of 724 × 581 mm, for a copy shop.');
    expect(root(element).querySelector('#field-overlap')).to.equal(null);
  });

  it('are saved as a PDF, an SVG and a DXF file, named after the glider, and the link stays', async () => {
    const host = await fixture<HTMLElement>(html`<glider-design name="Teal No. 3"><glider-parts-sheet></glider-parts-sheet></glider-design>`);
    const element = host.querySelector('glider-parts-sheet');
    if (!element) throw new Error('no element');
    await opened(element);
    for (const [which, name, type] of [[0, 'teal-no-3-a4.pdf', 'application/pdf'], [1, 'teal-no-3-sheet.svg', 'image/svg+xml'], [2, 'teal-no-3-sheet.dxf', 'image/vnd.dxf']] as const) {
      await made(element, which, caught);
      expect(caught.names.at(-1)).to.equal(name);
      expect(caught.files.at(-1)?.type).to.equal(type);
      expect(link(element)?.download).to.equal(name);
    }
    expect(caught.files).to.have.length(3);
    expect(caught.letGo, 'the addresses of the first two').to.have.length(2);
    const {pages} = await readPdf(caught.files[0] ?? new Blob());
    expect(pages[0]?.texts).to.include('Teal No. 3').and.to.include('Wing 660 × 120 mm').and.to.include('Body (2) 620 × 32 mm');
    expect(await caught.files[1]?.text()).to.contain('width="702mm"');
    expect(await caught.files[2]?.text()).to.match(/EOF\s*$/);
    host.remove();
    expect(caught.letGo).to.have.length(3);
  });

  it('are never made from an answer that does not hold', async () => {
    const element = await one();
    await made(element, 1, caught);
    await choose(element, 'board.length', 'abc');
    expect(element.result.ok).to.equal(false);
    expect(buttons(element).every(({disabled}) => disabled)).to.equal(true);
    expect(said(element)).to.contain('mend the entry marked above first');
    expect(link(element), 'the file made before').to.equal(null);
    await choose(element, 'board.length', '700');
    expect(buttons(element).some(({disabled}) => disabled)).to.equal(false);
  });

  it('are given up when the design changes or the reader stops them', async () => {
    const element = await one();
    await drawing(element);
    element.askFor('wing.span', 0.6);
    await element.updateComplete;
    expect(said(element)).not.to.contain('Drawing page');
    await drawing(element);
    buttons(element)[3]?.click();
    await element.updateComplete;
    expect(said(element)).to.contain('Stopped; there is no file.');
    await new Promise((resolve) => { setTimeout(resolve, 300); });
    expect(caught.files).to.have.length(0);
  });

  it('are drawn larger for a printer that prints too small, and say so', async () => {
    const element = await one();
    await choose(element, 'printed-across', '98');
    await choose(element, 'printed-up', '50,5'.replace(',', '.'));
    await made(element, 0, caught);
    const {pages: [page]} = await readPdf(caught.files[0] ?? new Blob());
    expect(page?.texts.join(' ')).to.contain('Drawn for a printer that makes 98.0 × 50.5 mm of 100 × 50 mm.');
    const boxes = page?.paths.map(({points}) => Math.max(...points.map(({x}) => x)) - Math.min(...points.map(({x}) => x))) ?? [];
    expect(boxes.some((width) => Math.abs(width / pointsPerMm - 100 / 0.98) < 1e-3)).to.equal(true);
    await choose(element, 'printed-across', '50');
    expect(plain(root(element).querySelector('#field-printed-across-problem')?.textContent)).to.equal('Must be at least 90 mm.');
    expect(buttons(element)[0]?.disabled).to.equal(true);
    expect(buttons(element)[1]?.disabled, 'what is not printed needs no correction').to.equal(false);
  });

  it('say what is wrong with a paper, an overlap or a board', async () => {
    const element = await one();
    await choose(element, 'overlap', '70');
    expect(plain(root(element).querySelector('#field-overlap-problem')?.textContent)).to.equal('Must be at most 60 mm.');
    await choose(element, 'overlap', 'much');
    expect(plain(root(element).querySelector('#field-overlap-problem')?.textContent)).to.contain('cannot be read');
    expect(buttons(element)[0]?.disabled).to.equal(true);
    await choose(element, 'overlap', '20');
    expect(buttons(element)[0]?.disabled).to.equal(false);
    await choose(element, 'board.length', '6000');
    await choose(element, 'paper', 'whole');
    expect(said(element)).to.contain('No PDF has a page longer than 5080 mm');
    const tiny = await one(html`<glider-parts-sheet sheet-length="50 mm" sheet-width="40 mm"></glider-parts-sheet>`);
    expect(said(tiny)).to.contain('There is nothing to cut on this sheet.').and.to.contain('not in the file: wing, body, tailplane, fin');
    expect(buttons(tiny).every(({disabled}) => disabled)).to.equal(true);
    const missing = await one(html`<glider-parts-sheet span="720 mm"></glider-parts-sheet>`);
    expect(said(missing)).to.contain('What found no place is not in the file: wing.');
  });

  it('hold one sheet or all of them', async () => {
    const element = await one(html`<glider-parts-sheet kits="3"></glider-parts-sheet>`);
    const pages = (): number => Number(/(\d+) pages/.exec(said(element))?.[1]);
    const all = pages();
    await choose(element, 'which', '1');
    expect(pages()).to.be.below(all);
    await made(element, 1, caught);
    expect(await caught.files[0]?.text()).to.contain('width="702mm"');
    expect(said(element)).to.contain('One set does for a whole class');
    element.kits = 1;
    await element.updateComplete;
    expect(root(element).querySelector('#field-which')).to.equal(null);
    expect(link(element)).to.equal(null);
  });

  it('are for Letter and boxes in inches where a reader reads inches', async () => {
    const element = await one(html`<glider-parts-sheet units="inch"></glider-parts-sheet>`);
    expect(field(element, 'paper').value).to.equal('letter');
    expect(plain(field(element, 'overlap').value)).to.equal('3/8');
    expect(said(element)).to.contain('The 4 in side measures');
    await choose(element, 'printed-across', '3 31/32');
    await made(element, 0, caught);
    const {pages: [page]} = await readPdf(caught.files[0] ?? new Blob());
    expect(page?.texts.join(' ')).to.contain('makes 3 31/32 × 2 in of 4 × 2 in.');
  });

  it('can be left out', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet hide="templates"></glider-parts-sheet>`);
    expect(root(element).querySelector('.templates')).to.equal(null);
  });

  it('are announced, and accessible open, made and in error', async () => {
    const element = await one(html`<glider-parts-sheet kits="3"></glider-parts-sheet>`);
    for (const details of panel(element).querySelectorAll('details')) details.open = true;
    await expect(element).to.be.accessible();
    await made(element, 1, caught);
    expect(plain(panel(element).querySelector('[role=status]')?.textContent)).to.contain('One unit is one millimetre');
    await expect(element).to.be.accessible();
    await choose(element, 'overlap', 'much');
    await expect(element).to.be.accessible();
  });

  it('work on a page that forbids all it can', async () => {
    const page = await openStrictPage('parts-sheet.html');
    const realm = page.frame.contentWindow as unknown as typeof globalThis;
    const there = new Catch(realm);
    const element = page.document.querySelector('glider-parts-sheet');
    if (!element) throw new Error('no element');
    await realm.customElements.whenDefined('glider-parts-sheet');
    await opened(element);
    for (const which of [0, 1, 2] as const) await made(element, which, there);
    expect(there.names).to.deep.equal(['teal-no-3-a4.pdf', 'teal-no-3-sheet.svg', 'teal-no-3-sheet.dxf']);
    expect(page.violations).to.deep.equal([]);
    there.end();
    page.close();
  });
});
