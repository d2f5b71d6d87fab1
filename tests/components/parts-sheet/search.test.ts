import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {TemplateResult} from 'lit';
import type {GliderPartsSheet} from '../../../src/components/parts-sheet/define.js';
import '../../../src/components/parts-sheet/define.js';
import type {Found} from '../../../src/components/parts-sheet/found.js';
import {searchInSlices} from '../../../src/components/parts-sheet/search/slices.js';
import type {Job} from '../../../src/calc/sheet/engine/index.js';
import {openStrictPage} from '../../strict-page.js';
import {until} from '../../until.js';

const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
/** What there is one of: a button, a box to tick, a disclosure, the figure. */
function one(element: Element, selector: string): HTMLElement {
  const found = element.shadowRoot?.querySelector<HTMLElement>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
}
const text = (element: Element, selector: string): string => plain(element.shadowRoot?.querySelector(selector)?.textContent);
const result = (element: GliderPartsSheet): Found => {
  if (!element.result.ok) throw new Error('no answer');
  return element.result.value;
};
const sheet = (element = html`<glider-parts-sheet></glider-parts-sheet>`): Promise<GliderPartsSheet> => fixture<GliderPartsSheet>(element);

/** With the search at its end. */
async function ended(of: TemplateResult): Promise<GliderPartsSheet> {
  const element = await sheet(of);
  await until(() => /found nothing better\.|Looked for/.test(text(element, '.search')), 'the search ends', 100);
  return element;
}

/** Waits until nothing better is to be found, and lets the search look on where it rests before: how far it gets in its time is the machine's affair. */
async function searched(element: GliderPartsSheet): Promise<void> {
  await until(() => {
    if (/Looked for/.test(text(element, '.search'))) one(element, '.search button').click();
    return /the search found nothing better/i.test(text(element, '.search'));
  }, 'the search ends', 100);
}

async function drawn(element: GliderPartsSheet): Promise<SVGSVGElement> {
  const svg = one(element, 'svg') as Element as SVGSVGElement;
  svg.scrollIntoView({block: 'center'});
  await until(() => svg.querySelector('text') !== null, 'the figure is drawn');
  return svg;
}

describe('the search of <glider-parts-sheet>', () => {
  it('shows a first layout at once and then only a better one', async () => {
    const element = await sheet();
    const first = result(element).cut;
    expect(first.from).to.equal('first');
    expect(text(element, '.search')).to.contain('found at once');
    await searched(element);
    const {cut} = result(element);
    const largest = ({plans}: typeof cut): number => Math.max(0, ...plans.map(({leftover}) => (leftover ? leftover.length * leftover.width : 0)));
    expect(cut.sheets).to.equal(first.sheets);
    expect(largest(cut)).to.be.at.least(largest(first));
    expect(cut.plans.flatMap(({pieces}) => pieces)).to.have.length(6);
  });

  it('gives layouts that straight cuts can make, and says until then that the picture is of another kind', async () => {
    const element = await sheet(html`<glider-parts-sheet cuts="straight"></glider-parts-sheet>`);
    expect(text(element, '.search')).to.contain('still shows parts cut along their outlines');
    await until(() => result(element).standing === 'answers', 'it answers');
    expect(result(element).cut.plans.every((plan) => plan.sheet.plan !== undefined)).to.equal(true);
  });

  it('goes on in slices on the page where workers are refused', async () => {
    const kept = window.Worker;
    let asked = 0;
    window.Worker = function refuse() {
      asked++;
      throw new DOMException('refused', 'SecurityError');
    } as unknown as typeof Worker;
    try {
      const element = await sheet(html`<glider-parts-sheet cuts="straight"></glider-parts-sheet>`);
      await until(() => result(element).standing === 'answers', 'it answers');
      expect(asked).to.equal(1);
      expect(result(element).cut.from).to.equal('search');
    } finally {
      window.Worker = kept;
    }
  });

  it('works under the strict policy without a complaint', async () => {
    const page = await openStrictPage('parts-sheet.html');
    const element = page.document.querySelector<GliderPartsSheet>('glider-parts-sheet');
    if (!element) throw new Error('no element');
    await searched(element);
    expect(page.violations).to.deep.equal([]);
    page.close();
  });

  it('stops when told, and looks on when told', async () => {
    const element = await sheet(html`<glider-parts-sheet kits="7" cuts="straight"></glider-parts-sheet>`);
    await until(() => text(element, '.search button') === 'Stop', 'it looks');
    one(element, '.search button').click();
    await element.updateComplete;
    expect(text(element, '.search')).to.contain('Stopped at the best so far.');
    const {cut} = result(element);
    await new Promise((resolve) => { setTimeout(resolve, 700); });
    expect(result(element).cut).to.equal(cut);
    expect(text(element, '.search button')).to.equal('Look on');
    one(element, '.search button').click();
    await until(() => text(element, '.search button') === 'Stop', 'it looks again');
  });

  it('begins anew with another question, and not at all out of sight', async () => {
    const host = await fixture<HTMLElement>(html`<div><div style="block-size: 9000px"></div><glider-parts-sheet></glider-parts-sheet></div>`);
    const element = host.querySelector('glider-parts-sheet');
    if (!element) throw new Error('no element');
    scrollTo(0, 0);
    await new Promise((resolve) => { setTimeout(resolve, 800); });
    expect(text(element, '.search')).to.contain('found at once');
    element.scrollIntoView();
    await searched(element);
    element.kits = 2;
    await element.updateComplete;
    expect(text(element, '.search')).to.contain('found at once');
    scrollTo(0, 0);
  });

  it('leaves the first layout as it is where its author hides the search', async () => {
    const element = await sheet(html`<glider-parts-sheet hide="search" cuts="straight"></glider-parts-sheet>`);
    const {cut} = result(element);
    element.requestUpdate();
    await element.updateComplete;
    expect(result(element).cut).to.equal(cut);
    expect(cut.from).to.equal('first');
    expect(result(element).standing).to.equal('answers');
    expect(element.shadowRoot?.querySelector('.search, .hand, #field-cuts')).to.equal(null);
  });

  it('says that it cannot be done on fewer sheets once that is proved', async () => {
    const element = await sheet(html`<glider-parts-sheet kits="3"></glider-parts-sheet>`);
    expect(text(element, '[part=answer]')).to.contain('It cannot be done on fewer.');
  });

  it('takes boards at hand and pieces left over, those first', async () => {
    const element = await sheet(html`<glider-parts-sheet cuts="straight" pieces="700mm@300mm@1"></glider-parts-sheet>`);
    await until(() => result(element).standing === 'answers', 'it answers');
    expect(text(element, '[part=answer]')).to.match(/^Everything fits on one piece left over from before/);
    expect(result(element).cut.oldPieces).to.equal(1);
    one(element, '.boards .remove').click();
    await element.updateComplete;
    await until(() => /Everything fits on one sheet/.test(text(element, '[part=answer]')), 'it is on a sheet again');
  });

  it('glues up a part that is too long from lengths where it may', async () => {
    const element = await sheet(html`<glider-parts-sheet span="900 mm"></glider-parts-sheet>`);
    expect(text(element, '[part=answer]')).to.contain('The wing does not fit');
    const box = one(element, 'input[name=wing]');
    box.click();
    await until(() => /Everything fits/.test(text(element, '[part=answer]')), 'it fits');
    expect(text(element, '.list')).to.contain('Wing 1/2').and.to.contain('Wing 2/2');
  });

  it('reckons spares and the cost of the boards', async () => {
    const element = await sheet(html`<glider-parts-sheet kits="10" spares="10%" price="4.5" currency="€"></glider-parts-sheet>`);
    expect(result(element).cut.kits).to.equal(11);
    const {sheets} = result(element).cut;
    expect(text(element, '[part=aside]')).to.contain('That is ten gliders and one to spare.')
      .and.to.contain(`At 4.50 € a sheet the board costs ${(4.5 * sheets).toFixed(2)} €`);
    expect(plain(element.shadowRoot?.textContent)).not.to.match(/NaN|undefined|Infinity/);
  });
});

describe('the search of <glider-parts-sheet> for the most that boards give', () => {
  const drawnGliders = ({cut}: Found): number => cut.plans.reduce((sum, {alike, pieces}) => sum + alike * pieces.filter(({part}) => part.id === 'wing').length, 0);

  it('finds one more glider than was there at once, and says that more cannot fit where that is proved', async () => {
    const element = await sheet(html`<glider-parts-sheet wanted="gliders" sheets="10"></glider-parts-sheet>`);
    const first = result(element);
    expect([first.gliders, first.bound]).to.deep.equal([21, undefined]);
    await until(() => result(element).gliders === 22, 'one more');
    const found = result(element);
    expect(text(element, '[part=answer]')).to.contain('Ten sheets of 700 × 500 mm give 22 gliders');
    expect([found.cut.kits, found.cut.sheets, drawnGliders(found), found.cut.leftOut.length]).to.deep.equal([22, 10, 22, 0]);
    expect(text(element, '[part=aside]')).to.contain('no more can fit; that is proved.');
    await until(() => !/Trying|room for/.test(text(element, '.search')), 'nothing more is tried');
  });

  it('says what it tried in vain, and what is proved, as two things', async () => {
    const element = await sheet(html`<glider-parts-sheet wanted="gliders" sheet-length="900 mm" sheet-width="600 mm"></glider-parts-sheet>`);
    element.askFor('wing.tipChord', 0.07);
    await element.updateComplete;
    expect(result(element).gliders).to.equal(3);
    await until(() => /Looking for room for 4 gliders/.test(text(element, '.search')), 'it tries one more');
    expect(result(element).bound).to.equal(4);
    expect(text(element, '[part=aside]')).to.contain('more than four cannot fit; that is proved');
    // it rests now and then where the machine has much else to do
    await until(() => {
      if (text(element, '.search button') === 'Look on') one(element, '.search button').click();
      return /Looking for a better/.test(text(element, '.search'));
    }, 'it goes on to better the layout', 120);
    one(element, '.search button').click();
    await element.updateComplete;
    expect(text(element, '.search')).to.contain('Stopped at the best so far. No room was found for 4 gliders; that does not prove that there is none.');
    expect(result(element).gliders).to.equal(3);
  });

  it('counts gliders cut straight, and those round a part that is held', async () => {
    const element = await sheet(html`<glider-parts-sheet wanted="gliders" sheets="2" cuts="straight"></glider-parts-sheet>`);
    expect(result(element).standing).to.equal('awaited');
    await until(() => result(element).standing === 'answers', 'it answers');
    const found = result(element);
    expect(found.gliders).to.equal(drawnGliders(found));
    expect(found.cut.plans.every(({sheet: {plan}}) => plan !== undefined)).to.equal(true);
    expect(found.cut.sheets).to.be.at.most(2);
  });

  it('finds a longer wing than was there at once, which a button takes over', async () => {
    const element = await sheet(html`<glider-parts-sheet wanted="span" kits="2" sheets="2" sheet-length="810 mm" sheet-width="230 mm" span="400 mm" chord="130 mm" body-length="435 mm" tail-span="285 mm"></glider-parts-sheet>`);
    element.askFor('wing.tipChord', 0.08);
    await element.updateComplete;
    const {span = NaN, step} = result(element);
    expect(span).to.equal(0.739);
    await until(() => (result(element).span ?? 0) > span, 'a longer one');
    await until(() => result(element).span === 0.81, 'as long as the sheet');
    const {cut} = result(element);
    expect(step).to.equal(0.001);
    expect([cut.sheets, cut.kits, cut.leftOut.length]).to.deep.equal([2, 2, 0]);
    const wing = cut.parts.find(({id}) => id === 'wing');
    expect(Math.max(...wing?.outline.map(({x}) => x) ?? [])).to.be.closeTo(0.405, 1e-9);
    expect(text(element, '[part=answer]')).to.contain('can be 810 mm long, as long as the sheet itself');
    one(element, '.use button').click();
    await element.updateComplete;
    expect(element.state.design.wing.span).to.equal(0.81);
    expect(result(element).span).to.equal(0.81);
    expect(text(element, '[part=aside]')).to.contain('That is what it is now.');
  });

  it('takes nothing back after a stop', async () => {
    const element = await sheet(html`<glider-parts-sheet wanted="gliders" sheets="10"></glider-parts-sheet>`);
    await until(() => result(element).gliders === 22, 'one more');
    one(element, '.search button').click();
    await element.updateComplete;
    const {cut} = result(element);
    one(element, '.search button').click();
    await until(() => /Looking/.test(text(element, '.search')), 'it looks again');
    await new Promise((resolve) => { setTimeout(resolve, 1500); });
    expect(result(element).gliders).to.equal(22);
    const largest = (laid: typeof cut): number => Math.max(0, ...laid.plans.map(({leftover}) => (leftover ? leftover.length * leftover.width : 0)));
    expect(largest(result(element).cut)).to.be.at.least(largest(cut) - 0.35 / 50);
  });
});

describe('what an author writes that will not do', () => {
  const problem = (element: GliderPartsSheet, name: string): string => text(element, `[id="field-${name}-problem"]`);
  const value = (element: GliderPartsSheet, name: string): string => (one(element, `[id="field-${name}"]`) as HTMLInputElement).value;
  const shown = (element: GliderPartsSheet): string => `${plain(element.shadowRoot?.textContent)} ${[...element.shadowRoot?.querySelectorAll('input') ?? []].map((input) => input.value).join(' ')}`;

  it('is said beside its field like what a reader types, and mended there', async () => {
    for (const [name, written, said] of [
      ['at-hand', '0', 'from 1 to 99'], ['at-hand', '-1', 'from 1 to 99'], ['at-hand', 'some', 'from 1 to 99'],
      ['spares', '1000%', 'at most half as many again'], ['spares', '-10%', 'at most half as many again'],
    ] as const) {
      const element = await sheet();
      element.setAttribute(name, written);
      await until(() => problem(element, name).includes(said), `${name} ${written}`);
      expect(element.result.ok, written).to.equal(false);
      expect(value(element, name)).to.equal(written);
      expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(true);
      expect(shown(element), written).not.to.match(/NaN|undefined|Infinity/);
      const input = one(element, `[id="field-${name}"]`) as HTMLInputElement;
      expect(input.getAttribute('aria-invalid')).to.equal('true');
      expect(input.checkVisibility(), 'to be seen').to.equal(true);
      input.value = '2';
      input.dispatchEvent(new Event('input', {bubbles: true}));
      await element.updateComplete;
      expect(element.result.ok).to.equal(true);
      expect(problem(element, name)).to.equal('');
    }
  });

  it('is said under the answer where there is no question', async () => {
    for (const [name, written, said] of [
      ['at-hand', '-1', 'Sheets at hand: write a whole number from 1 to 99'], ['spares', '-10%', 'Spare gliders: write how many'],
      ['price', 'abc', 'Price of a sheet: Write a plain number'], ['splice', 'nope 7', '“nope 7” is no part'], ['pieces', 'two', 'list of boards cannot be read'],
    ] as const) {
      const element = await sheet(html`<glider-parts-sheet hide="question"></glider-parts-sheet>`);
      element.setAttribute(name, written);
      await until(() => plain(element.shadowRoot?.textContent).includes(said), `${name} ${written}`);
    }
  });

  it('is no price where it is no plain number, and a price with the decimal mark of the page’s language or the other one', async () => {
    for (const written of ['-4.5', '1e300', 'abc', '10001', 'NaN', '1,500']) {
      const element = await sheet(html`<glider-parts-sheet price=${written}></glider-parts-sheet>`);
      await until(() => problem(element, 'price').includes('plain number from 0'), written);
      expect(value(element, 'price')).to.equal(written);
      expect(one(element, '[id="field-price"]').checkVisibility(), 'to be seen').to.equal(true);
      expect(result(element).price, written).to.equal(undefined);
      expect(text(element, '[part=aside]')).not.to.match(/costs|NaN/);
    }
    for (const [lang, written, field] of [['en', '4,50', '4.5'], ['en', '4.50', '4.5'], ['de', '4,50', '4,5'], ['de', '4.5', '4,5'], ['de', '0,125', '0,125']] as const) {
      const element = await sheet(html`<glider-parts-sheet lang=${lang} price=${written}></glider-parts-sheet>`);
      await until(() => value(element, 'price') === field, `${lang} ${written}`);
      expect(result(element).price).to.equal(Number(written.replace(',', '.')));
      expect(problem(element, 'price')).to.equal('');
    }
    const element = await sheet();
    element.price = NaN;
    await element.updateComplete;
    expect(shown(element)).not.to.contain('NaN');
  });

  it('is named where no part may be glued up by such a name, and the others count', async () => {
    const element = await sheet(html`<glider-parts-sheet splice="nope body 7"></glider-parts-sheet>`);
    expect(text(element, '.splice .problem')).to.contain('“nope 7” is no part');
    expect(one(element, '.splice .problem').checkVisibility(), 'to be seen').to.equal(true);
    expect((one(element, 'input[name=body]') as HTMLInputElement).checked).to.equal(true);
    expect(element.result.ok).to.equal(true);
  });
});

describe('a search in slices', () => {
  const job: Job = {
    parts: [{id: 'wing', outline: [{x: 0, y: 0}, {x: 0.1, y: 0}, {x: 0.1, y: 0.05}, {x: 0, y: 0.05}], count: 10_000, mayTurn: true, mayMirror: true}],
    boards: [{id: 'own', length: 0.7, width: 0.5}], margin: 0, gap: 0.001, cuts: 'free',
  };

  it('says of far too many pieces that they are too many, and lets the page do its own work meanwhile', async () => {
    const codes = await new Promise<readonly string[]>((resolve) => {
      const runner = searchInSlices({what: 'layout', job}, 6, ({found, done}) => {
        if (!found && !done) return;
        runner.stop();
        resolve([...new Set(found?.unplaced.map(({problem}) => problem.code))]);
      });
    });
    expect(codes).to.deep.equal(['too-many-parts']);
  });

  it('rests and goes on', async () => {
    let reports = 0;
    const runner = searchInSlices({what: 'layout', job: {...job, parts: job.parts.map((part) => ({...part, count: 60}))}}, 2, () => { reports++; });
    runner.rest(true);
    await new Promise((resolve) => { setTimeout(resolve, 100); });
    expect(reports).to.equal(0);
    runner.rest(false);
    await until(() => reports > 0, 'it goes on');
    runner.stop();
  });
});

/** Presses a key with Shift. */
async function shifted(key: string): Promise<void> {
  let there = document.activeElement;
  while (there?.shadowRoot?.activeElement) there = there.shadowRoot.activeElement;
  // not every driver can hold a key down
  there?.dispatchEvent(new KeyboardEvent('keydown', {key, shiftKey: true, bubbles: true, composed: true, cancelable: true}));
  await Promise.resolve();
}

describe('a part in hand', () => {
  it('is explained for fingers first where those point, and for keys after that', async () => {
    const given = window.matchMedia.bind(window);
    try {
      for (const coarse of [true, false]) {
        window.matchMedia = (query) => given(query === '(pointer: coarse)' ? coarse ? 'all' : 'not all' : query);
        const element = await sheet();
        (one(element, 'details.hand') as HTMLDetailsElement).open = true;
        await until(() => text(element, '.told') !== '', 'it is explained');
        const said = text(element, '.told');
        expect(said).to.match(/^Drag a part in the picture/);
        expect(said.includes('“Turn”') && said.indexOf('“Turn”') < said.indexOf('“Hold here”') && said.indexOf('“Hold here”') < said.indexOf('arrow keys')).to.equal(coarse);
        expect(said).to.contain('Escape puts it back');
      }
    } finally {
      window.matchMedia = given;
    }
  });

  const piece = (element: GliderPartsSheet, nth: number): HTMLButtonElement => {
    const button = element.shadowRoot?.querySelectorAll<HTMLButtonElement>('button.piece')[nth - 1];
    if (!button) throw new Error('no such piece');
    return button;
  };

  it('is moved by keyboard once it was picked from the list and the list was left', async () => {
    const element = await ended(html`<glider-parts-sheet></glider-parts-sheet>`);
    one(element, 'details.hand').setAttribute('open', '');
    await until(() => element.shadowRoot?.querySelector('#field-in-hand') !== null, 'the list is there');
    const list = one(element, '#field-in-hand') as HTMLSelectElement;
    list.focus();
    list.value = '4';
    list.dispatchEvent(new Event('change'));
    await element.updateComplete;
    expect(text(element, '.told')).to.match(/^4 Tailplane lies .*Tab/);
    await sendKeys({press: 'Tab'});
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(text(element, '.told')).to.match(/^4 Tailplane moved/);
  });

  it('is moved, turned and held by keyboard; the rest lies round it; it can be let go', async () => {
    const element = await ended(html`<glider-parts-sheet></glider-parts-sheet>`);
    const {placed: before} = result(element).cut.plans.flatMap(({pieces}) => pieces).find(({number}) => number === 4) ?? {};
    piece(element, 4).focus();
    await element.updateComplete;
    expect(text(element, '.told')).to.match(/^4 Tailplane lies/);
    await sendKeys({press: 'ArrowUp'});
    await shifted('ArrowUp');
    await sendKeys({press: 'r'});
    await element.updateComplete;
    expect(text(element, '.told')).to.contain('not held yet');
    await sendKeys({press: 'Escape'});
    await element.updateComplete;
    expect(text(element, '.told')).to.match(/^4 Tailplane lies/);
    await sendKeys({press: 'r'});
    await shifted('ArrowUp');
    await sendKeys({press: 'Enter'});
    await until(() => /^4 Tailplane is held/.test(text(element, '.told')), 'it is held');
    const held = result(element).cut.plans.flatMap(({pieces}) => pieces).find(({part}) => part.id === 'tailplane')?.placed;
    expect(held?.turn).to.equal(((before?.turn ?? 0) + 90) % 360);
    expect(result(element).cut.plans.flatMap(({pieces}) => pieces)).to.have.length(6);
    expect(piece(element, 4).getAttribute('aria-pressed')).to.equal('true');
    one(element, '.hold').click();
    await element.updateComplete;
    expect(piece(element, 4).getAttribute('aria-pressed')).to.equal('false');
  });

  it('is turned end for end on board with a grain, and stays along it', async () => {
    const element = await ended(html`<glider-parts-sheet grain="length"></glider-parts-sheet>`);
    const tailplane = () => result(element).cut.plans.flatMap(({pieces}) => pieces).find(({number}) => number === 4)?.placed;
    const before = tailplane()?.turn ?? NaN;
    expect(before).to.be.oneOf([0, 180]);
    piece(element, 4).focus();
    await sendKeys({press: 'r'});
    await sendKeys({press: 'Enter'});
    await until(() => /^4 Tailplane is held/.test(text(element, '.told')), 'it is held');
    expect(tailplane()?.turn).to.equal(180 - before);
  });

  it('is refused where it would lie on another that is held, with the reason, and put back by Escape', async () => {
    const element = await ended(html`<glider-parts-sheet></glider-parts-sheet>`);
    piece(element, 5).focus();
    await sendKeys({press: 'Enter'});
    await until(() => /^5 Fin is held/.test(text(element, '.told')), 'the first is held');
    const at = result(element).cut.plans.flatMap(({pieces}) => pieces).find(({number}) => number === 5)?.placed;
    const other = result(element).cut.plans.flatMap(({pieces}) => pieces).find(({number}) => number === 6)?.placed;
    if (!at || !other) throw new Error('no fins');
    piece(element, 6).focus();
    await element.updateComplete;
    const steps = {x: Math.round((at.x - other.x) * 100), y: Math.round((at.y - other.y) * 100)};
    for (const [axis, keys] of [['x', ['ArrowLeft', 'ArrowRight']], ['y', ['ArrowDown', 'ArrowUp']]] as const) {
      for (let i = 0; i < Math.abs(steps[axis]); i++) await shifted(steps[axis] > 0 ? keys[1] : keys[0]);
    }
    await sendKeys({press: 'Enter'});
    await until(() => element.shadowRoot?.querySelector('.told .problem') !== null, 'it is refused');
    await element.updateComplete;
    expect(text(element, '.told .problem')).to.contain('too near');
    expect(text(element, '.told')).to.contain('not held yet');
    piece(element, 6).focus();
    await sendKeys({press: 'Escape'});
    await element.updateComplete;
    expect(element.shadowRoot?.querySelector('.told .problem')).to.equal(null);
  });

  it('is dragged with a pointer and held where it is dropped', async () => {
    const element = await ended(html`<glider-parts-sheet></glider-parts-sheet>`);
    const svg = await drawn(element);
    svg.scrollIntoView({block: 'center'});
    const bench = one(element, '.bench');
    bench.setPointerCapture = () => undefined;   // no pointer is really down
    const label = [...svg.querySelectorAll('text')].find(({textContent}) => textContent.startsWith('4 '))?.getBoundingClientRect() ?? new DOMRect();
    const point = (type: string, dx: number, dy: number): void => {
      svg.dispatchEvent(new PointerEvent(type, {bubbles: true, composed: true, pointerId: 1, pointerType: 'mouse', button: 0, clientX: label.x + label.width / 2 + dx, clientY: label.y + label.height / 2 + dy}));
    };
    point('pointerdown', 0, 0);
    point('pointermove', 20, -60);
    await element.updateComplete;
    expect(text(element, '.told')).to.match(/^4 Tailplane moved/);
    point('pointerup', 20, -60);
    await until(() => /^4 Tailplane is held/.test(text(element, '.told')), 'it is held');
    const {width, height} = one(element, '.grip').getBoundingClientRect();
    expect(Math.min(width, height)).to.be.at.least(43.9);
  });
});

describe('boards that run out', () => {
  it('are told from parts that are too large: the boards are not enough', async () => {
    const element = await ended(html`<glider-parts-sheet kits="12" at-hand="2"></glider-parts-sheet>`);
    expect(text(element, '[part=answer]')).to.contain('Two sheets of 700 × 500 mm are not enough for 12 gliders: take more boards');
    expect(text(element, '[part=answer]')).not.to.contain('not fit');
  });
});

describe('the lists of <glider-parts-sheet>', () => {
  it('go through the cuts one by one, each pointed out in the picture', async () => {
    const element = await ended(html`<glider-parts-sheet cuts="straight"></glider-parts-sheet>`);
    const svg = await drawn(element);
    const knives = (): number => svg.querySelectorAll('path[stroke-width][stroke="var(--_accent)"]').length;
    const before = knives();
    one(element, 'details.cutting').setAttribute('open', '');
    await until(() => element.shadowRoot?.querySelector('.next') !== null, 'the list is there');
    one(element, '.next').click();
    await element.updateComplete;
    expect(text(element, '.now')).to.match(/^Cut 1 of \d+ The whole sheet in hand: set the ruler to \d+(\.\d+)? mm from its (lower|left) edge; cut the full (length|width), \d+ mm\./);
    expect(knives()).to.equal(before + 2);
    one(element, '.next').focus();
    await sendKeys({press: 'ArrowRight'});
    await element.updateComplete;
    expect(text(element, '.now')).to.match(/^Cut 2 of/);
    expect(text(element, 'li.lit')).to.not.equal('');
    one(element, '.hide').click();
    await element.updateComplete;
    expect(knives()).to.equal(before);
  });

  it('measure a slanting cut on the piece in hand, call no part done before it, and speak of no offcut without a width', async () => {
    const element = await ended(html`<glider-parts-sheet cuts="straight"></glider-parts-sheet>`);
    // sides that slant: a tapered wing, a body cut off towards its tail
    element.ask([{path: 'wing.tipChord', value: 0.07}, {path: 'body.tailHeight', value: 0.015}]);
    await element.updateComplete;
    await until(() => /found nothing better\.|Looked for/.test(text(element, '.search')), 'the search ends');
    one(element, 'details.cutting').setAttribute('open', '');
    await until(() => element.shadowRoot?.querySelector('.all li') !== null, 'the list is there');
    const cuts = [...element.shadowRoot?.querySelectorAll('.all li') ?? []].map(({textContent}) => plain(textContent));
    const slanting = cuts.map((cut) => /^The piece of (\d+(?:\.\d+)?) × (\d+(?:\.\d+)?) mm in hand: lay the ruler from ([\d.]+) \| ([\d.]+) to ([\d.]+) \| ([\d.]+) and cut right across, for (.*)\.$/.exec(cut)).filter((found) => found !== null);
    expect(slanting.length, cuts.join('\n')).to.be.above(1);
    for (const [, length, width, ax, ay, bx, by, names = ''] of slanting) {
      expect(Math.max(Number(ax), Number(bx))).to.be.at.most(Number(length) + 0.5);
      expect(Math.max(Number(ay), Number(by))).to.be.at.most(Number(width) + 0.5);
      // on two sides of the piece, each an end of the cut
      for (const [x, y] of [[ax, ay], [bx, by]]) {
        const off = Math.min(Number(x), Number(y), Number(length) - Number(x), Number(width) - Number(y));
        expect(Math.abs(off)).to.be.at.most(0.5);
      }
      for (const name of names.split(/, | and /)) expect(cuts.some((cut) => cut.includes(`${name}, done`)), name).to.equal(false);
    }
    expect(cuts.join(' ')).to.not.match(/× 0(\.\d)? mm/);
  });

  it('tick off every edge from one corner, in order, with a diagonal to check', async () => {
    const element = await ended(html`<glider-parts-sheet></glider-parts-sheet>`);
    one(element, 'details.marking').setAttribute('open', '');
    await until(() => element.shadowRoot?.querySelector('.ticks') !== null, 'the list is there');
    expect(text(element, 'details.marking')).to.contain('must be 860 mm both ways');
    for (const table of element.shadowRoot?.querySelectorAll('.ticks') ?? []) {
      const ticks = [...table.querySelectorAll('tbody th')].map(({textContent}) => Number(textContent));
      expect(ticks.length).to.be.above(1);
      expect(ticks).to.deep.equal([...ticks].sort((a, b) => a - b));
    }
  });

  it('are accessible, with a part held and a cut pointed out', async () => {
    const element = await ended(html`<glider-parts-sheet cuts="straight" boards="900mm@600mm@1"></glider-parts-sheet>`);
    await drawn(element);
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await until(() => ['.next', '.ticks'].every((each) => element.shadowRoot?.querySelector(each)), 'the lists are there');
    one(element, '.next').click();
    element.shadowRoot?.querySelector<HTMLButtonElement>('button.piece')?.focus();
    await element.updateComplete;
    await expect(element).to.be.accessible();
  });
});
