import {expect, fixture, html, waitUntil} from '@open-wc/testing';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/drawing/define.js';

const svgOf = (element: Element): SVGSVGElement => {
  const svg = element.shadowRoot?.querySelector<SVGSVGElement>('.sheet > svg');
  if (!svg) throw new Error('no figure');
  return svg;
};
const isDrawn = (element: Element): boolean => svgOf(element).childElementCount > 1;

describe('a figure', () => {
  it('is drawn without being seen, once another of the page was: a print wants all', async () => {
    const page = await fixture(html`<div><glider-camber-shim></glider-camber-shim><div style="block-size: 20000px"></div><glider-drawing></glider-drawing></div>`);
    const [first, last] = [page.querySelector('glider-camber-shim'), page.querySelector('glider-drawing')];
    if (!first || !last) throw new Error('no elements');
    await waitUntil(() => isDrawn(first), 'the figure in sight');
    await waitUntil(() => isDrawn(last), 'the figure out of sight', {timeout: 8000});
  });

  it('has its room kept free before it comes', async () => {
    const far = await fixture(html`<div><div style="block-size: 20000px"></div><glider-drawing></glider-drawing></div>`);
    const drawing = far.querySelector('glider-drawing');
    if (!drawing) throw new Error('no element');
    await waitUntil(() => svgOf(drawing).style.blockSize !== '' || isDrawn(drawing));
    const kept = svgOf(drawing).getBoundingClientRect().height;
    drawing.scrollIntoView();
    await waitUntil(() => isDrawn(drawing), 'the figure in sight');
    expect(svgOf(drawing).style.blockSize).to.equal('');
    expect(kept).to.be.within(0.7 * svgOf(drawing).getBoundingClientRect().height, 1.3 * svgOf(drawing).getBoundingClientRect().height);
  });
});
