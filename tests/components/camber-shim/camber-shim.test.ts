import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderCamberShim} from '../../../src/components/camber-shim/define.js';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const text = (element: GliderCamberShim, part: string): string =>
  (element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

function field(element: GliderCamberShim, path: string): HTMLInputElement {
  const input = element.shadowRoot?.querySelector<HTMLInputElement>(`[id="field-${path}"]`);
  if (!input) throw new Error(`no field for ${path}`);
  return input;
}

async function type(element: GliderCamberShim, path: string, written: string): Promise<void> {
  const input = field(element, path);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

describe('<glider-camber-shim>', () => {
  it('goes back to what is usual where an attribute is taken away', async () => {
    const usual = await fixture<GliderCamberShim>(html`<glider-camber-shim stack="10 mm"></glider-camber-shim>`);
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="90 mm" stack="10 mm"></glider-camber-shim>`);
    expect(text(element, 'answer')).not.to.equal(text(usual, 'answer'));
    element.removeAttribute('chord');
    await element.updateComplete;
    expect(text(element, 'answer')).to.equal(text(usual, 'answer'));
    expect(field(element, 'wing.chord').value).to.equal(field(usual, 'wing.chord').value);
  });

  it('answers from its own attributes: 10 mm under a 70 mm panel fold it by arcsin(1/7)', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm" stack="10 mm"></glider-camber-shim>`);
    const {result} = element;
    if (!result.ok) throw new Error('no answer');
    expect(result.value.total).to.be.closeTo(Math.asin(1 / 7), 1e-12);
    expect(text(element, 'answer')).to.contain('2 layers of board, 10 mm').and.to.contain('8.2°');
  });

  it('warns of blade and glue without its working, its picture and its fields, and not of a wing that is not cut', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim lang="en" chord="115 mm" crease="45 mm" stack="10 mm" hide="working picture question"></glider-camber-shim>`);
    const caution = (): string => element.shadowRoot?.querySelector('.caution')?.textContent ?? '';
    expect(caution()).to.match(/Hot glue burns.*cut away from your fingers.*supervises/);
    element.crease = '';
    await element.updateComplete;
    expect(element.result.ok).to.equal(true);
    expect(caution()).to.equal('');
  });

  it('goes back from a wanted camber to a stack that gives it', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm" from="camber" camber="4.5 %"></glider-camber-shim>`);
    const {result} = element;
    if (!result.ok) throw new Error('no answer');
    const there = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm"></glider-camber-shim>`);
    there.askFor('wing.stack', result.value.stack);
    expect(there.result.ok && there.result.value.section.camber).to.be.closeTo(0.045, 1e-9);
  });

  it('folds more when the same stack is pushed further in', async () => {
    const folds: number[] = [];
    for (const inset of ['0 mm', '10 mm', '25 mm']) {
      const element = await fixture<GliderCamberShim>(html`<glider-camber-shim place="inset" inset=${inset}></glider-camber-shim>`);
      if (element.result.ok) folds.push(element.result.value.total);
    }
    expect(folds).to.have.length(3);
    expect(folds[0]).to.be.below(folds[1] ?? 0);
    expect(folds[1]).to.be.below(folds[2] ?? 0);
  });

  it('keeps the last good answer, greyed and uncopied, and says beside the field what is wrong', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm"></glider-camber-shim>`);
    const before = text(element, 'answer');
    for (const [written, said] of [['abc', 'cannot be read'], ['-3', 'at least'], ['1e9 mm', 'at most'], ['', 'Nothing is written'], ['500', 'too tall']] as const) {
      await type(element, 'wing.stack', written);
      expect(text(element, 'answer'), written).to.equal(before);
      expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale'), written).to.equal(true);
      expect(element.shadowRoot?.querySelector('[id="field-wing.stack-problem"]')?.textContent, written).to.contain(said);
      expect(field(element, 'wing.stack').value, written).to.equal(written);
      expect(element.result.ok, written).to.equal(false);
    }
    await type(element, 'wing.stack', '15');
    expect(element.shadowRoot?.querySelector('.stale')).to.equal(null);
  });

  it('says it when the crease leaves the chord', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm"></glider-camber-shim>`);
    await type(element, 'wing.chord', '40');
    expect(element.shadowRoot?.querySelector('[id="field-wing.creases.0.at-problem"]')?.textContent).to.contain('outside the chord');
  });

  it('reads and writes inches, and a decimal comma where the language has one', async () => {
    const inch = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="4 1/4 in" crease="1 5/8 in" units="inch"></glider-camber-shim>`);
    expect(field(inch, 'wing.chord').value.replaceAll('\u00a0', ' ')).to.equal('4 1/4');
    const german = await fixture<GliderCamberShim>(html`<glider-camber-shim lang="de" chord="115 mm"></glider-camber-shim>`);
    await type(german, 'wing.stack', '7,5');
    expect(german.state.design.wing.stack).to.equal(0.0075);
  });

  it('steps by keyboard and tells the page of it', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim></glider-camber-shim>`);
    let changes = 0;
    element.addEventListener('change', () => { changes++; });
    field(element, 'wing.stack').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.state.design.wing.stack).to.be.closeTo(0.011, 1e-12);
    expect(changes).to.equal(1);
  });

  it('lets no entry become markup', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim></glider-camber-shim>`);
    await type(element, 'wing.stack', '<img src=x onerror=alert(1)>');
    expect(element.shadowRoot?.querySelector('img')).to.equal(null);
    expect(element.shadowRoot?.textContent).to.contain('<img');
  });

  it('asks the page’s design when it belongs to one, and warns once of attributes it does not use', async () => {
    const warnings: string[] = [];
    const {warn} = console;
    console.warn = (...said: unknown[]) => { warnings.push(said.join(' ')); };
    try {
      const host = await fixture<HTMLElement>(html`<div><glider-design wing-chord="100 mm" wing-creases="40mm"><glider-camber-shim chord="115 mm"></glider-camber-shim></glider-design></div>`);
      const element = host.querySelector('glider-camber-shim');
      const design = host.querySelector('glider-design');
      if (!element || !design) throw new Error('no element');
      await element.updateComplete;
      await type(element, 'wing.stack', '12');
      expect(design.design.wing).to.deep.include({chord: 0.1, stack: 0.012});
      element.chord = '130 mm';
      await element.updateComplete;
      expect(warnings.filter((w) => w.includes('glider-camber-shim'))).to.have.length(1);
    } finally { console.warn = warn; }
  });

  it('is accessible, at rest and in error, with its working open', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim></glider-camber-shim>`);
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await expect(element).to.be.accessible();
    await type(element, 'wing.stack', 'abc');
    await expect(element).to.be.accessible();
  });

  it('draws the bench to scale once it is seen', async () => {
    const element = await fixture<GliderCamberShim>(html`<glider-camber-shim chord="115 mm" crease="45 mm"></glider-camber-shim>`);
    const svg = element.shadowRoot?.querySelector('svg');
    await until(() => svg?.querySelector('text'));
    const words = [...svg?.querySelectorAll('text') ?? []].map((t) => t.textContent);
    expect(words).to.include('8.2°');
    expect(svg?.outerHTML).to.not.match(/NaN|Infinity|undefined/);
  });
});
