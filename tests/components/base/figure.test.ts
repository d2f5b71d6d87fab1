import {expect, fixture, html} from '@open-wc/testing';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/drawing/define.js';
import {until} from '../../until.js';

const svgOf = (element: Element): SVGSVGElement => {
  const svg = element.shadowRoot?.querySelector<SVGSVGElement>('.sheet > svg');
  if (!svg) throw new Error('no figure');
  return svg;
};
const isDrawn = (element: Element): boolean => svgOf(element).childElementCount > 1;
const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in window) requestIdleCallback(work, {timeout: 5000}); else setTimeout(work, 500);
};

describe('a figure', () => {
  // a page stays scrolled from test to test where the browser draws nothing between them
  beforeEach(() => { scrollTo(0, 0); });

  // first, since nothing out of sight is drawn on a page that has shown no figure yet
  it('has its room kept free before it comes', async () => {
    const far = await fixture(html`<div><div style="block-size: 20000px"></div><glider-drawing></glider-drawing></div>`);
    const drawing = far.querySelector('glider-drawing');
    if (!drawing) throw new Error('no element');
    await until(() => svgOf(drawing).style.blockSize !== '', 'room is kept');
    expect(isDrawn(drawing)).to.equal(false);
    const kept = svgOf(drawing).getBoundingClientRect().height;
    drawing.scrollIntoView();
    await until(() => isDrawn(drawing), 'the figure in sight');
    expect(svgOf(drawing).style.blockSize).to.equal('');
    expect(kept).to.be.within(0.7 * svgOf(drawing).getBoundingClientRect().height, 1.3 * svgOf(drawing).getBoundingClientRect().height);
  });

  it('is drawn without being seen, once another of the page was: a print wants all', async () => {
    const page = await fixture(html`<div><glider-camber-shim></glider-camber-shim><div style="block-size: 20000px"></div><glider-drawing></glider-drawing></div>`);
    const [first, last] = [page.querySelector('glider-camber-shim'), page.querySelector('glider-drawing')];
    if (!first || !last) throw new Error('no elements');
    await until(() => isDrawn(first), 'the figure in sight');
    await until(() => isDrawn(last), 'the figure out of sight');
  });

  it('is drawn without being seen where it comes after all others of the page were', async () => {
    const page = await fixture<HTMLElement>(html`<div><glider-camber-shim></glider-camber-shim><div style="block-size: 20000px"></div></div>`);
    const first = page.querySelector('glider-camber-shim');
    if (!first) throw new Error('no element');
    await until(() => isDrawn(first), 'the figure in sight');
    await new Promise<void>((idle) => { whenIdle(() => { whenIdle(idle); }); });   // nothing is left to draw ahead
    const late = document.createElement('glider-drawing');
    page.append(late);
    await late.updateComplete;
    expect(svgOf(late).getBoundingClientRect().top).to.be.above(10_000);
    await until(() => isDrawn(late), 'the figure that came late');
  });

  it('is drawn where its element is moved before it was seen', async () => {
    const page = await fixture<HTMLElement>(html`<div><p></p><div style="block-size: 20000px"></div><glider-drawing></glider-drawing></div>`);
    const [drawing, place] = [page.querySelector('glider-drawing'), page.querySelector('p')];
    if (!drawing || !place) throw new Error('no elements');
    place.append(drawing);
    await until(() => isDrawn(drawing), 'the figure of the element that was moved');
  });
});
