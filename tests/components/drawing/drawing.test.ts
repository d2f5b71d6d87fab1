import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderDrawing} from '../../../src/components/drawing/define.js';
import '../../../src/components/drawing/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const plain = (words: string | null | undefined): string => (words ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

function field(element: GliderDrawing, path: string): HTMLInputElement {
  const input = element.shadowRoot?.querySelector<HTMLInputElement>(`[id="field-${path}"]`);
  if (!input) throw new Error(`no field for ${path}`);
  return input;
}

async function type(element: GliderDrawing, path: string, written: string): Promise<void> {
  const input = field(element, path);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

const handles = (element: GliderDrawing): readonly HTMLElement[] => [...element.shadowRoot?.querySelectorAll<HTMLElement>('.handle') ?? []];

async function drawn(element: GliderDrawing): Promise<SVGSVGElement> {
  await until(() => handles(element).length > 0);
  const svg = element.shadowRoot?.querySelector('svg');
  if (!svg) throw new Error('no picture');
  return svg;
}

const words = (svg: SVGSVGElement): readonly string[] => [...svg.querySelectorAll('text')].map((t) => plain(t.textContent));

async function drag(element: GliderDrawing, key: string, dx: number, dy: number): Promise<void> {
  const handle = handles(element).find(({dataset}) => dataset['key'] === key);
  if (!handle) throw new Error(`no handle ${key}`);
  handle.setPointerCapture = () => undefined;
  const {left, top, width, height} = handle.getBoundingClientRect();
  const at = {clientX: left + width / 2, clientY: top + height / 2, button: 0, pointerId: 1, bubbles: true};
  handle.dispatchEvent(new PointerEvent('pointerdown', at));
  handle.dispatchEvent(new PointerEvent('pointermove', {...at, clientX: at.clientX + dx, clientY: at.clientY + dy}));
  handle.dispatchEvent(new PointerEvent('pointerup', at));
  await element.updateComplete;
}

/** Lays an element out by its rules for print, in engines that cannot be told to. */
function asPrinted(element: GliderDrawing): void {
  const root = element.shadowRoot;
  if (!root) throw new Error('not drawn');
  const sheet = new CSSStyleSheet();
  const printed = root.adoptedStyleSheets.flatMap(({cssRules}) => [...cssRules]).filter((rule): rule is CSSMediaRule => rule instanceof CSSMediaRule && rule.conditionText === 'print');
  sheet.replaceSync(printed.flatMap(({cssRules}) => [...cssRules]).map(({cssText}) => cssText).join('\n'));
  root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
}

describe('<glider-drawing>', () => {
  it('fits one printed page with its heading, and shows no handles there', async () => {
    const box = await fixture(html`<div style="inline-size: 190mm"><glider-drawing lang="en" units="metric"></glider-drawing></div>`);
    const element = box.querySelector<GliderDrawing>('glider-drawing');
    if (!element) throw new Error('no drawing');
    const svg = await drawn(element);
    const page = 259 * 96 / 25.4;
    expect(svg.getBoundingClientRect().height, 'else the test shows nothing').to.be.greaterThan(page);
    asPrinted(element);
    expect(element.getBoundingClientRect().height).to.be.lessThan(page);
    const {left, right} = svg.getBoundingClientRect();
    expect(right - left).to.be.closeTo(190 * 96 / 25.4, 1);
    expect(handles(element).every((handle) => handle.getClientRects().length === 0)).to.equal(true);
  });

  it('draws the page’s glider and follows it', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design name="Halfpenny" wing-span="700 mm" wing-joints="10° @ 210 mm"><glider-drawing></glider-drawing></glider-design></div>`);
    const element = host.querySelector('glider-drawing');
    const design = host.querySelector('glider-design');
    if (!element || !design) throw new Error('no element');
    const svg = await drawn(element);
    expect(words(svg)).to.include('700').and.to.include('210').and.to.include('10°');
    expect(svg.getAttribute('role')).to.equal('img');
    expect(plain(svg.getAttribute('aria-label'))).to.contain('from the left, from above and from the front: span 700 mm');
    design.request([{path: 'wing.span', value: 0.5}]);
    await element.updateComplete;
    expect(words(svg)).to.include('500').and.not.to.include('700');
    expect(svg.outerHTML).to.not.match(/NaN|Infinity|undefined/);
  });

  it('shows the views it is asked for, and their fields only', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing show="front"></glider-drawing>`);
    const svg = await drawn(element);
    expect(words(svg)).to.include('From the front, as it flies (mm)').and.not.to.include('From the left (mm)');
    expect(element.shadowRoot?.querySelector('[id="field-arrangement.wingAt"]')).to.equal(null);
    element.show = 'plan nonsense';
    await element.updateComplete;
    expect(words(svg)).to.include('From above, the wing flat as cut').and.to.include('Lengths in mm.').and.not.to.include('From the front, as it flies (mm)');
  });

  it('has a field for the path of every handle', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing></glider-drawing>`);
    element.ask([{path: 'wing.tipChord', value: 0.09}, {path: 'tail.tipChord', value: 0.06}]);
    await element.updateComplete;
    await drawn(element);
    expect(handles(element)).to.have.length.at.least(10);
    for (const {dataset} of handles(element)) {
      const path = (dataset['key'] ?? '').replace(/^(plan|side)-/, '').replace(/^front-.*/, 'wing.joints');
      expect(element.shadowRoot?.querySelectorAll(`[id="field-${path}"]`), path).to.have.length(1);
    }
  });

  it('follows a pointer by as much as it moves on the scale it took hold at', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-drawing show="plan"></glider-drawing></div>`);
    const element = host.querySelector('glider-drawing');
    if (!element) throw new Error('no element');
    const svg = await drawn(element);
    const mmPerPx = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
    await drag(element, 'plan-wing.span', 0, -20);
    expect(element.state.design.wing.span).to.be.closeTo(0.66 + 2 * 20 * mmPerPx / 1000, 1.5e-3);
    await drag(element, 'plan-arrangement.wingAt', 12, 0);
    expect(element.state.design.arrangement.wingAt).to.be.above(0.155);
    await drag(element, 'plan-wing.chord', -1000, 0);
    expect(element.state.design.wing.chord).to.be.closeTo(0.015, 1e-9);
  });

  it('turns the tip up and moves its joint in the front view', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing show="front"></glider-drawing>`);
    await drawn(element);
    await drag(element, 'front-angle-0', 0, -25);
    expect(element.state.design.wing.joints[0]?.angle).to.be.above(13 * Math.PI / 180);
    await drag(element, 'front-joint-0', -20, 0);
    expect(element.state.design.wing.joints[0]?.at).to.be.below(0.185);
  });

  it('has no handle for what its author locked', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing show="plan" lock="wing.span wing.chord"></glider-drawing>`);
    await drawn(element);
    const keys = handles(element).map(({dataset}) => dataset['key']);
    expect(keys).to.include('plan-wing.sweep').and.not.to.include('plan-wing.span').and.not.to.include('plan-wing.chord');
    expect(field(element, 'wing.span').disabled).to.equal(true);
  });

  it('keeps the last good picture, greyed, and says what is wrong', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing></glider-drawing>`);
    const svg = await drawn(element);
    for (const [path, written, said] of [['wing.span', 'abc', 'cannot be read'], ['wing.span', '100', 'beyond the tip'], ['wing.chord', '30', 'outside the chord']] as const) {
      await type(element, path, written);
      expect(svg.closest('.stale'), written).to.not.equal(null);
      expect(words(svg), written).to.include('660');
      expect(plain(element.shadowRoot?.querySelector('[part=card]')?.textContent), written).to.contain(said);
      expect(element.result.ok, written).to.equal(false);
      await type(element, path, path === 'wing.span' ? '660' : '120');
    }
    expect(element.shadowRoot?.querySelector('.stale')).to.equal(null);
  });

  it('marks where the plane balances and where it should', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing></glider-drawing>`);
    const svg = await drawn(element);
    await element.updateComplete;
    expect(plain(element.shadowRoot?.querySelector('table')?.textContent)).to.contain('Should balance at');
    expect(svg.querySelectorAll('circle')).to.have.length.at.least(2);
  });

  it('steps a dimension by keyboard', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing></glider-drawing>`);
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    field(element, 'wing.span').focus();
    await sendKeys({press: 'ArrowDown'});
    await element.updateComplete;
    expect(element.state.design.wing.span).to.be.closeTo(0.659, 1e-12);
  });

  it('is accessible, at rest and in error, with its dimensions open', async () => {
    const element = await fixture<GliderDrawing>(html`<glider-drawing></glider-drawing>`);
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await drawn(element);
    await expect(element).to.be.accessible();
    await type(element, 'wing.span', 'abc');
    await expect(element).to.be.accessible();
  });
});
