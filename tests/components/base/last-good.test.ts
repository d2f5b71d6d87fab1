import {expect, fixture, html, nextFrame} from '@open-wc/testing';
import type {GliderBalancePoint} from '../../../src/components/balance-point/define.js';
import '../../../src/components/balance-point/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/flight-check/define.js';
import {until} from '../../until.js';

const plain = (element: Element | null | undefined): string => (element?.shadowRoot?.querySelector('section')?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');
const fetched = (glider: object): string => `data:application/json,${encodeURIComponent(JSON.stringify({glider: 1, ...glider}))}`;

describe('the last answer that fitted', () => {
  it('is never that of the plane an element had before its design came', async () => {
    // the file is on its way while the element already stands on the page
    const page = await fixture(html`<div><glider-balance-point design="sent"></glider-balance-point><glider-design id="sent" src=${fetched({name: 'Sent', body: {layers: '0'}})}></glider-design></div>`);
    const element = page.querySelector('glider-balance-point');
    await until(() => element?.state.design.name === 'Sent', 'the design has come');
    await element?.updateComplete;
    expect(plain(element)).to.contain('The answer appears here once');
    expect(plain(element)).not.to.contain('last answer that fitted');
    expect(element?.shadowRoot?.querySelector('.buttons button')).to.equal(null);
  });

  it('is forgotten with the design it was about', async () => {
    const page = await fixture(html`<div><glider-design id="good"></glider-design><glider-design id="bad" body-layers="0"></glider-design><glider-balance-point design="good"></glider-balance-point></div>`);
    const element = page.querySelector<GliderBalancePoint>('glider-balance-point');
    if (!element) throw new Error('no element');
    const answer = (): Element | null | undefined => element.shadowRoot?.querySelector('[part=answer]');
    expect(answer()).not.to.equal(null);
    element.design = 'bad';
    await element.updateComplete;
    await nextFrame();
    expect(answer()).to.equal(null);
  });

  it('is not what an element said while it was still waiting', async () => {
    const page = await fixture(html`<div><glider-design id="tiny" wing-span="5mm"></glider-design><glider-flight-check design="tiny"></glider-flight-check></div>`);
    const element = page.querySelector('glider-flight-check');
    await until(() => plain(element).includes('The answer appears here once'), 'it says what stands in the way');
    expect(plain(element)).not.to.contain('being worked out');
  });
});
