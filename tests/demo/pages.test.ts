import {expect} from '@open-wc/testing';
import {until} from '../until.js';

interface Axe { run(options: object): Promise<{violations: readonly {id: string; nodes: readonly {target: unknown; failureSummary?: string}[]}[]}> }

/** A page of the demo as a reader has it, in a frame of its own, once all its elements have answered. */
async function open(address: string, width: number): Promise<Window & {axe: Axe}> {
  const frame = document.createElement('iframe');
  frame.width = String(width);
  frame.height = '900';
  frame.title = 'Demo';
  frame.src = address;
  document.body.append(frame);
  await new Promise((resolve) => { frame.addEventListener('load', resolve, {once: true}); });
  const page = frame.contentWindow as (Window & {axe: Axe}) | null;
  if (!page) throw new Error('no page');
  const script = page.document.createElement('script');
  script.src = '/node_modules/axe-core/axe.min.js';
  page.document.head.append(script);
  await new Promise((resolve) => { script.addEventListener('load', resolve, {once: true}); });
  await until(() => [...page.document.querySelectorAll('*')].every((e) => !e.localName.startsWith('glider-') || page.customElements.get(e.localName) !== undefined)
    && answersOf(page).every((a) => a !== ''));
  return page;
}

const answersOf = (page: Window): readonly string[] =>
  [...page.document.querySelectorAll('glider-camber-shim, glider-dihedral-angle, glider-balance-point, glider-parts-sheet')]
    .map((e) => e.shadowRoot?.querySelector('[part=answer]')?.textContent.trim() ?? '');

async function violations(page: Window & {axe: Axe}): Promise<readonly string[]> {
  const {violations: found} = await page.axe.run({resultTypes: ['violations']});
  return found.flatMap(({id, nodes}) => nodes.map(({target, failureSummary}) => `${id} ${JSON.stringify(target)} ${failureSummary ?? ''}`));
}

describe('the demo', () => {
  afterEach(() => { document.querySelector('iframe')?.remove(); });

  for (const address of ['/demo/index.html', '/demo/alone.html']) {
    for (const width of [360, 1280]) {
      it(`${address} is accessible and no wider than the page at ${String(width)} px`, async () => {
        const page = await open(address, width);
        expect(await violations(page)).to.deep.equal([]);
        expect(page.document.documentElement.scrollWidth).to.be.at.most(width);
      });
    }
  }

  it('lets one number in the prose move the sentence, the picture, the balance and the sheet', async () => {
    const page = await open('/demo/index.html', 1000);
    await until(() => answersOf(page)[1]?.includes('45\u00a0mm behind') === true);
    const before = answersOf(page);
    const value = page.document.querySelector('glider-value[name="wing.span"]');
    const input = value?.shadowRoot?.querySelector('input');
    if (!input) throw new Error('no number to change');
    input.value = '540 mm';
    input.dispatchEvent(new page.window.Event('input', {bubbles: true, composed: true}));
    const drawn = (): string => page.document.querySelector('glider-drawing')?.shadowRoot?.querySelector('svg')?.textContent ?? '';
    await until(() => drawn().includes('540'));
    const after = answersOf(page);
    expect(after[0], 'the sheet').to.not.equal(before[0]);
    expect(after[1], 'the camber is the chord’s alone').to.equal(before[1]);
    expect(after[2], 'the blocks').to.not.equal(before[2]);
    expect(after[3], 'the balance').to.not.equal(before[3]);
  });
});
