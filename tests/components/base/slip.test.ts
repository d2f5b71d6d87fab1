import {expect, fixture, html} from '@open-wc/testing';
import '../../../src/components/as-built/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/flight-check/define.js';
import '../../../src/components/flight-path/define.js';
import '../../../src/components/tail-shim/define.js';
import '../../../src/components/trim-advice/define.js';
import {until} from '../../until.js';

const tags = ['glider-as-built', 'glider-flight-check', 'glider-flight-path', 'glider-trim-advice', 'glider-tail-shim'] as const;
const answerOf = (page: Element, tag: string): string =>
  (page.querySelector(tag)?.shadowRoot?.querySelector('[part=answer]')?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');

describe('by how much the tail’s rear edge is to go up or down', () => {
  it('is the same number wherever it is said', async () => {
    const number = /rear edge(?: of the tailplane)? (?:by )?(?:about )?([\d ./]+ (?:mm|in))\b/g;
    for (const units of ['metric', 'inch']) for (const angle of ['3°', '-6.1°']) {
      const page = await fixture(html`<div lang="en"><glider-design id="finch" units=${units} ballast-masses="33g@15mm" arrangement-tail-incidence=${angle}></glider-design>
        <glider-as-built design="finch"></glider-as-built><glider-flight-check design="finch"></glider-flight-check><glider-flight-path design="finch"></glider-flight-path>
        <glider-trim-advice design="finch"></glider-trim-advice><glider-tail-shim design="finch"></glider-tail-shim></div>`);
      await until(() => tags.every((tag) => /(raise|lower) the (tail’s )?rear edge/.test(answerOf(page, tag))));
      const said = tags.map((tag) => [...answerOf(page, tag).matchAll(number)].map(([, amount]) => amount));
      for (const one of said) expect(one, `${units} ${angle}`).to.not.be.empty;
      expect(new Set(said.flat()).size, `${units} ${angle}: ${JSON.stringify(said)}`).to.equal(1);
    }
  });

  it('is not said of a plane that cannot be: there the tail’s slips say why nothing follows', async () => {
    const page = await fixture(html`<div lang="en"><glider-design id="finch" units="metric" wing-span="200 mm"></glider-design><glider-tail-shim design="finch"></glider-tail-shim></div>`);
    await until(() => answerOf(page, 'glider-tail-shim').includes('lies beyond the tip'));
    expect(answerOf(page, 'glider-tail-shim')).to.contain('cannot be worked out yet. A joint at 190 mm lies beyond the tip');
  });
});
