import {expect, fixture, html} from '@open-wc/testing';
import '../../../src/components/balance-point/define.js';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/flight-check/define.js';
import '../../../src/components/tail-shim/define.js';
import '../../../src/components/value/define.js';
import type {GliderElement} from '../../../src/components/base/element.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

async function said(page: Element, tag: string): Promise<string> {
  const element = page.querySelector<GliderElement>(tag);
  await element?.updateComplete;
  return tidy(element?.shadowRoot?.querySelector('[part=aside]')?.textContent);
}

let pages = 0;

const page = (attributes: Readonly<Record<string, string>> = {}, lang = 'en-GB'): Promise<HTMLElement> => {
  const id = `tern-${String(++pages)}`;
  const design = document.createElement('glider-design');
  for (const [name, value] of Object.entries({id, units: 'metric', 'ballast-masses': '29g@15mm', 'arrangement-tail-incidence': '-1.2°', ...attributes})) design.setAttribute(name, value);
  return fixture(html`<div lang=${lang}>${design}<glider-flight-check design=${id}></glider-flight-check><glider-balance-point design=${id}></glider-balance-point>
    <glider-tail-shim design=${id}></glider-tail-shim><glider-camber-shim design=${id}></glider-camber-shim><glider-value design=${id} name="flight.speed">6 m/s</glider-value></div>`);
};

describe('measurements on the finished plane', () => {
  it('are named by every answer that was reckoned with them, and by no other', async () => {
    const measured = await page({'built-hollow': '4.5mm', 'built-tip-left': '30mm', 'built-tip-right': '28mm', 'measured-mass': '64g', 'built-bow': '2mm'});
    expect(await said(measured, 'glider-flight-check')).to.contain('Reckoned with 4 of your measurements: hollow, tips, weight.');
    expect(await said(measured, 'glider-tail-shim')).to.contain('Reckoned with 4 of your measurements: hollow, tips, weight.');
    expect(await said(measured, 'glider-balance-point')).to.contain('Reckoned with 3 of your measurements: tips, weight.');
    expect(await said(measured, 'glider-camber-shim')).not.to.contain('Reckoned');
  });

  it('are not named while nothing was measured, nor where a measurement cannot be', async () => {
    expect(await said(await page(), 'glider-flight-check')).not.to.contain('Reckoned');
    expect(await said(await page({'built-hollow': '60mm'}), 'glider-flight-check')).not.to.contain('Reckoned');
    expect(await said(await page({'built-hollow': '60mm', 'measured-balance': '50mm'}), 'glider-flight-check')).to.contain('Reckoned with one of your measurements: balance.');
  });

  it('are named by a number in a sentence to whoever points at it', async () => {
    const measured = await page({'built-hollow': '4.5mm'});
    const value = measured.querySelector<GliderElement>('glider-value');
    await until(() => value?.shadowRoot?.querySelector('[title]'));
    expect(value?.shadowRoot?.querySelector('[part=value]')?.getAttribute('title')).to.equal('Reckoned with one of your measurements: hollow.');
  });

  it('are named in German', async () => {
    const measured = await page({'built-hollow': '4.5mm', 'measured-mass': '64g'}, 'de');
    expect(await said(measured, 'glider-flight-check')).to.contain('Gerechnet mit 2 gemessenen Werten: Hohlraum, Gewicht.');
  });

  it('leave the plan in place: what props the wing stays as it was drawn', async () => {
    const measured = await page({'built-hollow': '4.5mm'}), planned = await page();
    const answer = async (one: Element): Promise<string> => {
      const element = one.querySelector<GliderElement>('glider-camber-shim');
      await element?.updateComplete;
      return tidy(element?.shadowRoot?.querySelector('[part=answer]')?.textContent);
    };
    expect(await answer(measured)).to.equal(await answer(planned));
  });
});
