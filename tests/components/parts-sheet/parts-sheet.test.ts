import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderPartsSheet} from '../../../src/components/parts-sheet/define.js';
import '../../../src/components/parts-sheet/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const all = (element: GliderPartsSheet, selector: string): readonly Element[] => [...element.shadowRoot?.querySelectorAll(selector) ?? []];
const text = (element: GliderPartsSheet, selector: string): string => plain(all(element, selector)[0]?.textContent);
const answer = (element: GliderPartsSheet): string => text(element, '[part=answer]');

function field(element: GliderPartsSheet, name: string): HTMLInputElement | HTMLSelectElement {
  const input = element.shadowRoot?.querySelector<HTMLInputElement>(`[id="field-${name}"]`);
  if (!input) throw new Error(`no field for ${name}`);
  return input;
}

async function type(element: GliderPartsSheet, name: string, written: string, event = 'input'): Promise<void> {
  const input = field(element, name);
  input.value = written;
  input.dispatchEvent(new Event(event, {bubbles: true, composed: event === 'input'}));
  await element.updateComplete;
}

const rows = (element: GliderPartsSheet): readonly (readonly string[])[] =>
  all(element, '.list tbody tr:not(.note)').map((row) => [...row.children].map((cell) => plain(cell.textContent)));

async function drawn(element: GliderPartsSheet): Promise<SVGSVGElement> {
  await element.updateComplete;
  const svg = element.shadowRoot?.querySelector('svg');
  if (!svg) throw new Error('no figure');
  svg.scrollIntoView();
  await until(() => svg.querySelector('text') !== null, 'the figure is drawn');
  return svg;
}

/** A line of text without the room that engines leave above and below its letters, each as much as it likes. */
function lettersOf(line: SVGTextElement): DOMRect {
  const box = line.getBoundingClientRect();
  const scale = (line.ownerSVGElement?.getBoundingClientRect().width ?? 1) / (line.ownerSVGElement?.viewBox.baseVal.width ?? 1);
  const upright = /rotate\(-?90/.test(line.getAttribute('transform') ?? '');
  const spare = Math.max(0, (upright ? box.width : box.height) - 0.8 * Number(line.getAttribute('font-size')) * scale);
  return upright ? new DOMRect(box.x + spare / 2, box.y, box.width - spare, box.height) : new DOMRect(box.x, box.y + spare / 2, box.width, box.height - spare);
}

describe('<glider-parts-sheet>', () => {
  it('answers from its own attributes, with what is left over', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet sheet-length="700 mm" sheet-width="500 mm" span="700 mm" gap="2 mm"></glider-parts-sheet>`);
    expect(answer(element)).to.match(/^Everything fits on one sheet of 700 × 500 mm; a piece of \d+ × \d+ mm is left over\./);
    const {result} = element;
    if (!result.ok) throw new Error('no answer');
    expect(result.value.cut.stock).to.deep.equal({length: 0.7, width: 0.5, margin: 0, gap: 0.002});
    const {leftover} = result.value.cut;
    expect(answer(element)).to.contain(`${String(Math.floor((leftover?.length ?? 0) * 1000 + 1e-6))} × ${String(Math.floor((leftover?.width ?? 0) * 1000 + 1e-6))} mm`);
  });

  it('comes to the page, places its parts, and renders in tasks of their own', async () => {
    const element = document.createElement('glider-parts-sheet');
    const stood: string[] = [];
    const look = (): void => { stood.push(element.shadowRoot?.querySelector('[part=card]') ? 'all' : element.shadowRoot?.querySelector('.coming') ? 'room' : 'nothing'); };
    document.body.append(element);
    while (stood.at(-1) !== 'all' && stood.length < 1000) {
      await Promise.resolve();   // whatever one task brings along
      look();
      await new Promise((resolve) => { setTimeout(resolve); });
    }
    expect([...new Set(stood)]).to.deep.equal(['nothing', 'room', 'all']);
    element.remove();
  });

  it('renders at once over what a server has rendered', async () => {
    const page = document.createElement('div');
    page.setHTMLUnsafe('<glider-parts-sheet><template shadowrootmode="open"><p>as the server had it</p></template></glider-parts-sheet>');
    document.body.append(page);
    const element = page.querySelector('glider-parts-sheet');
    if (!element) throw new Error('no element');
    const room: boolean[] = [];
    const watch = new MutationObserver(() => { room.push(element.shadowRoot?.querySelector('.coming') !== null); });
    watch.observe(element.shadowRoot ?? element, {childList: true, subtree: true});
    await element.updateComplete;
    watch.disconnect();
    expect(all(element, '[part=card]')).to.have.length(1);
    expect(new Set(room)).to.deep.equal(new Set([false]));
    page.remove();
  });

  it('keeps as much room for its picture as that will take', async () => {
    for (const kits of [1, 20]) {
      const page = await fixture<HTMLElement>(html`<div><div style="block-size: 20000px"></div><glider-parts-sheet hide="search" kits=${kits}></glider-parts-sheet></div>`);
      const element = page.querySelector('glider-parts-sheet');
      if (!element?.shadowRoot) throw new Error('no element');
      const kept: number[] = [];
      const watch = new MutationObserver((all) => {
        for (const {target} of all) if (target instanceof SVGSVGElement && target.style.blockSize !== '') kept.push(parseFloat(target.style.blockSize));
      });
      watch.observe(element.shadowRoot, {subtree: true, attributes: true, attributeFilter: ['style']});
      const svg = await drawn(element);
      watch.disconnect();
      expect(kept).to.have.length(1);
      expect(kept[0], `${String(kits)} gliders`).to.be.closeTo(svg.getBoundingClientRect().height, 2);
      page.remove();
    }
  });

  it('draws a new layout after its lists, and all at once for a print', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet hide="search"></glider-parts-sheet>`);
    const svg = await drawn(element);
    const titles = (): number => [...svg.querySelectorAll('text')].filter(({textContent}) => /^Sheets? \d/.test(textContent)).length;
    const before = titles();
    element.kits = 9;
    let rendered: (() => void) | undefined;
    const render = new Promise<void>((resolve) => { rendered = resolve; });
    const watch = new MutationObserver(() => { rendered?.(); });
    watch.observe(element.shadowRoot?.querySelector('.list') ?? element, {childList: true, subtree: true, characterData: true});
    await render;
    watch.disconnect();
    expect(titles()).to.equal(before);
    window.dispatchEvent(new Event('beforeprint'));
    expect(titles()).to.be.above(before);
    await element.updateComplete;
  });

  it('draws what was asked for last, however soon it was asked for, and is complete only then', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet hide="search"></glider-parts-sheet>`);
    const svg = await drawn(element);
    const tasks = async (n: number): Promise<void> => { for (let i = 0; i < n; i++) await new Promise((resolve) => { setTimeout(resolve); }); };
    const stands = (): string => [...svg.querySelectorAll('text')].flatMap(({textContent}) => /^\d+ (Wing|Body)/.exec(textContent)?.[0] ?? []).sort().join();
    const alone = new Map<number, string>();
    for (const kits of [4, 23, 7]) {
      element.kits = kits;
      await element.updateComplete;
      alone.set(kits, stands());
    }
    expect(new Set(alone.values()).size).to.equal(3);
    for (const [before, between] of [[23, 0], [23, 1], [23, 2], [23, 3], [4, 1], [4, 2]] as const) {
      element.kits = before;
      await tasks(between);
      element.kits = 7;
      await element.updateComplete;
      expect(stands(), `${String(before)}, ${String(between)} tasks before`).to.equal(alone.get(7));
    }
    element.kits = 23;
    await tasks(2);
    window.dispatchEvent(new Event('beforeprint'));
    expect(stands()).to.equal(alone.get(23));
    await element.updateComplete;
    expect(stands()).to.equal(alone.get(23));
  });

  it('lists every piece with its size and its corner, as the layout has them', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    const {result} = element;
    if (!result.ok) throw new Error('no answer');
    const mm = (value: number): string => String(Math.round(value * 2000) / 2);
    expect(rows(element)).to.deep.equal(result.value.cut.plans.flatMap(({pieces}) => pieces).map(({number, part, placed}) => [
      `${String(number)} ${{wing: 'Wing', body: 'Body', tailplane: 'Tailplane', fin: 'Fin'}[part.id]}`,
      {wing: '660 × 120', body: '620 × 32', tailplane: '240 × 78', fin: '70 × 70'}[part.id], mm(placed.x), mm(placed.y),
    ]));
    expect(text(element, '.note')).to.contain('Crease 48 mm behind the front edge, groove on face B.').and.to.contain('190 mm from the middle on each side, groove on face A');
  });

  it('names what does not fit and what would do, and places the rest', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet span="720 mm"></glider-parts-sheet>`);
    expect(answer(element)).to.contain('The wing does not fit a sheet of 700 × 500 mm; everything else goes on one sheet.');
    expect(text(element, '.reasons')).to.contain('720 × 120 mm').and.to.contain('at least 720 mm long').and.to.contain('no longer than 700 mm');
    expect(rows(element).map(([piece]) => piece)).to.deep.equal(['1 Body', '2 Body', '3 Tailplane', '4 Fin', '5 Fin']);
    const margin = await fixture<GliderPartsSheet>(html`<glider-parts-sheet span="700 mm" margin="3 mm"></glider-parts-sheet>`);
    expect(text(margin, '.reasons')).to.contain('with clean factory edges it would fit');
    const narrow = await fixture<GliderPartsSheet>(html`<glider-parts-sheet sheet-width="100 mm"></glider-parts-sheet>`);
    expect(text(narrow, '.reasons')).to.contain('at least 120 mm wide');
    const tiny = await fixture<GliderPartsSheet>(html`<glider-parts-sheet sheet-length="50 mm" sheet-width="40 mm"></glider-parts-sheet>`);
    expect(answer(tiny)).to.contain('do not fit');
    expect(rows(tiny)).to.deep.equal([]);
  });

  it('says how many sheets several gliders take, whether fewer could do, and what sheets alike would take', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet kits="3"></glider-parts-sheet>`);
    expect(answer(element)).to.contain('Three gliders take two sheets').and.to.contain('It cannot be done on fewer.');
    element.kits = 40;
    await element.updateComplete;
    expect(answer(element)).to.match(/^40 gliders take 19 sheets/).and.to.contain('With every sheet cut alike, two gliders from each, it takes 20.');
    expect(text(element, '.list details summary')).to.equal('Where each piece lies');
    expect(rows(element).slice(0, 4)).to.deep.equal([['Wing', '40', '660 × 120'], ['Body', '80', '620 × 32'], ['Tailplane', '40', '240 × 78'], ['Fin', '80', '70 × 70']]);
  });

  it('goes back from the board to gliders, and to the longest wing, which a button takes over', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="gliders" sheets="3"></glider-parts-sheet>`);
    expect(answer(element)).to.contain('Three sheets of 700 × 500 mm give six gliders; a piece of 700 × 47 mm is left over from each.');
    await type(element, 'wanted', 'span', 'change');
    await type(element, 'sheets', '1');
    expect(element.wanted).to.equal('span');
    expect(answer(element)).to.contain('On one sheet of 700 × 500 mm the wing can be 700 mm long, as long as the sheet itself.').and.to.contain('Now it is 660 mm.');
    all(element, '.use button')[0]?.dispatchEvent(new MouseEvent('click'));
    await element.updateComplete;
    expect(element.state.design.wing.span).to.equal(0.7);
    expect(answer(element)).to.contain('That is what it is now.');
    expect(all(element, '.use button')).to.have.length(0);
    const none = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="gliders" sheet-width="150 mm"></glider-parts-sheet>`);
    expect(answer(none)).to.contain('One sheet of 700 × 150 mm is not enough for one glider: it takes two sheets.');
    const noWing = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="span" sheet-width="150 mm"></glider-parts-sheet>`);
    expect(answer(noWing)).to.contain('room for no wing');
    const noBody = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="span" sheet-length="600 mm" span="720 mm"></glider-parts-sheet>`);
    expect(answer(noBody)).to.match(/^The body does not fit/);
    expect(text(noBody, '.reasons')).to.contain('The body is 620 × 32 mm').and.not.to.contain('wing');
    const spare = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="gliders" sheets="3" sheet-width="150 mm"></glider-parts-sheet>`);
    expect(answer(spare)).to.contain('Three sheets of 700 × 150 mm give one glider, from two sheets; the rest stays whole.');
    const capped = await fixture<GliderPartsSheet>(html`<glider-parts-sheet wanted="gliders" sheets="30"></glider-parts-sheet>`);
    expect(answer(capped)).to.match(/30 sheets of 700 × 500 mm give 40 gliders, from \d+ sheets; more than that are not laid out here/);
  });

  it('offers the boards that shops sell and takes any other', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    expect(field(element, 'board').value).to.equal('700x500');
    let changes = 0;
    element.addEventListener('change', () => { changes++; });
    await type(element, 'board', 'a1', 'change');
    expect(element.state.design.board).to.deep.include({length: 0.841, width: 0.594});
    expect(changes).to.equal(1);
    await type(element, 'board.length', '725');
    expect(field(element, 'board').value).to.equal('');
    expect(answer(element)).to.contain('725 × 594 mm');
  });

  it('keeps the last good answer, greyed, and says beside the field what is wrong', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    const before = answer(element);
    for (const [name, good, written, said] of [
      ['board.length', '700', 'abc', 'cannot be read'], ['board.length', '700', '-3', 'at least'], ['board.length', '700', '1e9 mm', 'at most'],
      ['kits', '1', '0', 'from 1 to 40'], ['kits', '1', '41', 'from 1 to 40'], ['kits', '1', '1.5', 'whole number'], ['kits', '1', 'some', 'cannot be read'],
      ['board.margin', '0', '300', 'leaves nothing'],
    ] as const) {
      await type(element, name, written);
      expect(answer(element), written).to.equal(before);
      expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale'), written).to.equal(true);
      expect(text(element, `[id="field-${name}-problem"]`), written).to.contain(said);
      expect(field(element, name).value, written).to.equal(written);
      expect(element.result.ok, written).to.equal(false);
      await type(element, name, good);
      expect(element.shadowRoot?.querySelector('.stale'), written).to.equal(null);
    }
  });

  it('says beside each of its fields what a clash is about, and under the answer what has no field here', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    await type(element, 'wing.chord', '40');
    expect(element.result.ok).to.equal(false);
    expect(plain(all(element, '[id="field-wing.chord-problem"]')[0]?.textContent ?? '')).to.contain('The crease at 48 mm lies outside the chord');
    await type(element, 'wing.chord', '120');
    expect(element.result.ok).to.equal(true);
    element.askFor('wing.creases', [{at: 0.07}, {at: 0.05}]);
    await element.updateComplete;
    expect(all(element, '.card > div > .problem').map(({textContent}) => plain(textContent)).join(' ')).to.contain('50 mm is not');
  });

  it('keeps the number and the name of a part on one line of a narrow list', async () => {
    for (const lang of ['en', 'de']) {
      const host = await fixture<HTMLElement>(html`<div style="inline-size: 250px"><glider-parts-sheet lang=${lang}></glider-parts-sheet></div>`);
      const element = host.querySelector<GliderPartsSheet>('glider-parts-sheet');
      if (!element) throw new Error('no element');
      await until(() => text(element, '.list').includes(lang === 'de' ? 'Höhenleitwerk' : 'Tailplane'), lang);
      for (const head of all(element, '.list th[scope=row]')) {
        const [number, name] = [...head.querySelectorAll('button, span > span')].map((each) => each.getBoundingClientRect());
        if (!number || !name) throw new Error('no number or no name');
        expect(name.left, plain(head.textContent)).to.be.at.least(number.right);
        expect(name.top, plain(head.textContent)).to.be.below(number.bottom);
        expect(name.bottom, plain(head.textContent)).to.be.above(number.top);
      }
    }
  });

  it('takes what is no number of gliders for a problem, not for an error', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet kits="many"></glider-parts-sheet>`);
    expect(element.result.ok).to.equal(false);
    expect(text(element, '[id="field-kits-problem"]')).to.contain('from 1 to 40');
    expect(plain(element.shadowRoot?.textContent)).not.to.match(/NaN|undefined|Infinity/);
    element.removeAttribute('kits');
    await element.updateComplete;
    expect(answer(element)).to.contain('Everything fits');
  });

  it('follows the design it belongs to, and asks it for changes', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design wing-span="500 mm"><glider-parts-sheet></glider-parts-sheet></glider-design></div>`);
    const element = host.querySelector('glider-parts-sheet');
    const design = host.querySelector('glider-design');
    if (!element || !design) throw new Error('no element');
    await element.updateComplete;
    expect(rows(element)[0]?.[1]).to.equal('500 × 120');
    design.request([{path: 'wing.span', value: 0.52}]);
    await element.updateComplete;
    expect(rows(element)[0]?.[1]).to.equal('520 × 120');
    await type(element, 'board', 'a1', 'change');
    expect(design.design.board.length).to.equal(0.841);
  });

  it('does not lay out again what is only folded or weighted another way', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    const {result} = element;
    element.askFor('wing.stack', 0.012);
    element.askFor('ballast.at', 0.02);
    await element.updateComplete;
    expect(element.result === result).to.equal(true);
  });

  it('reads and writes inches', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet units="inch" sheet-length="30 in" sheet-width="20 in"></glider-parts-sheet>`);
    expect(field(element, 'board').value).to.equal('30x20in');
    expect(answer(element)).to.contain('30 × 20 in');
    expect(rows(element)[0]?.[1]).to.equal('26 × 4 3/4');
  });

  it('is worked by keyboard: stepping the gliders, pointing out a piece', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    const svg = await drawn(element);
    field(element, 'kits').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.kits).to.equal(2);
    expect(answer(element)).to.contain('Two gliders');
    const [button] = all(element, 'button.piece') as HTMLButtonElement[];
    const strokes = (): number => [...svg.querySelectorAll('path')].filter((path) => path.getAttribute('stroke') === 'var(--_accent)').length;
    expect(strokes()).to.equal(0);
    button?.focus();
    await element.updateComplete;
    expect(strokes()).to.equal(1);
    await sendKeys({press: 'Enter'});
    await until(() => button?.getAttribute('aria-pressed') === 'true', 'the piece is held');
    button?.blur();
    await element.updateComplete;
    expect(strokes()).to.equal(1);
  });

  it('lights up the row of the piece under the pointer', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    const svg = await drawn(element);
    const label = [...svg.querySelectorAll('text')].find(({textContent}) => textContent.startsWith('4 '));
    const {left, top, width, height} = label?.getBoundingClientRect() ?? new DOMRect();
    svg.dispatchEvent(new PointerEvent('pointermove', {bubbles: true, composed: true, clientX: left + width / 2, clientY: top + height / 2}));
    await element.updateComplete;
    expect(all(element, 'tr.lit').map(({textContent}) => plain(textContent))[0]).to.match(/^4 Tailplane/);
  });

  it('letters every piece legibly and nothing over anything else, narrow and wide', async () => {
    for (const [width, sheet, taper] of [[320, '700 mm', '120 mm'], [320, '1000 mm', '80 mm'], [520, '700 mm', '90 mm'], [1000, '700 mm', '120 mm']] as const) {
      const host = await fixture<HTMLElement>(html`<div style=${`inline-size: ${String(width)}px`}><glider-design wing-tip-chord=${taper} board-length=${sheet} board-width="500 mm"><glider-parts-sheet></glider-parts-sheet></glider-design></div>`);
      const element = host.querySelector('glider-parts-sheet');
      if (!element) throw new Error('no element');
      const svg = await drawn(element);
      const frame = svg.getBoundingClientRect();
      const letters = [...svg.querySelectorAll('text')].filter(({textContent}) => textContent !== '');
      expect(letters.filter(({textContent}) => /^[1-6]( |$)/.test(textContent)).length, 'numbers').to.equal(6);
      const boxes = letters.map((letter) => ({words: letter.textContent, box: letter.getBoundingClientRect(), letters: lettersOf(letter), size: Number(letter.getAttribute('font-size')) * frame.width / svg.viewBox.baseVal.width}));
      for (const [i, {words, box, letters: inked, size}] of boxes.entries()) {
        expect(size, words).to.be.at.least(10.99);
        expect(box.left, words).to.be.at.least(frame.left - 1);
        expect(box.right, words).to.be.at.most(frame.right + 1);
        for (const other of boxes.slice(i + 1)) {
          const across = Math.min(inked.right, other.letters.right) - Math.max(inked.left, other.letters.left);
          const down = Math.min(inked.bottom, other.letters.bottom) - Math.max(inked.top, other.letters.top);
          expect(across > 1 && down > 1, `${words} over ${other.words} at ${String(width)}`).to.equal(false);
        }
      }
      host.remove();
    }
  });

  it('lays every part lengthwise along the grain of a board that has one, draws the grain and says so', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet grain="width" sheet-length="800 mm" sheet-width="700 mm"></glider-parts-sheet>`);
    const svg = await drawn(element);
    const turns = (): readonly string[] => {
      const {result} = element;
      if (!result.ok) throw new Error('no answer');
      return result.value.cut.plans.flatMap(({pieces}) => pieces.map(({placed}) => `${placed.id} ${String(placed.turn % 180)}`)).filter((each) => !each.startsWith('fin'));
    };
    expect(turns()).to.deep.equal(['wing 90', 'body 90', 'body 90', 'tailplane 90']);
    expect(svg.querySelectorAll('path[stroke="var(--_hatch)"]:not(pattern *)')).to.have.length(2);   // the sheet and the legend
    expect([...svg.querySelectorAll('text')].map(({textContent}) => textContent)).to.include('grain of the board');
    expect(text(element, '.read')).to.contain('lengthwise along the grain');
    await type(element, 'board.grain', 'length', 'change');
    expect(turns()).to.deep.equal(['wing 0', 'body 0', 'body 0', 'tailplane 0']);
    await type(element, 'board.grain', 'none', 'change');
    expect(text(element, '.read')).to.not.contain('grain');
  });

  it('says which part is too long for the grain, and how long that is', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet grain="width" hide="search"></glider-parts-sheet>`);
    expect(all(element, '.reasons .problem').map(({textContent}) => plain(textContent))).to.deep.equal([
      'The wing is 660 × 120 mm, and along the grain the sheet of 700 × 500 mm has only 500 mm: take a board that is longer along its grain, or one without a grain.',
      'The body is 620 × 32 mm, and along the grain the sheet of 700 × 500 mm has only 500 mm: take a board that is longer along its grain, or one without a grain.',
    ]);
  });

  it('hides what its author hides and locks what he locks', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet hide="list working" lock="kits board.length"></glider-parts-sheet>`);
    expect(all(element, '.list, [part=working]')).to.have.length(0);
    expect(['kits', 'board.length', 'board', 'wing.span'].map((name) => field(element, name).disabled)).to.deep.equal([true, true, true, false]);
  });

  it('lets no entry become markup', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    await type(element, 'kits', '<img src=x onerror=alert(1)>');
    expect(element.shadowRoot?.querySelector('img')).to.equal(null);
  });

  it('is accessible, at rest, with several sheets, with a part that does not fit, and in error', async () => {
    const element = await fixture<GliderPartsSheet>(html`<glider-parts-sheet></glider-parts-sheet>`);
    await drawn(element);
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await expect(element).to.be.accessible();
    await type(element, 'wing.span', '720');
    await expect(element).to.be.accessible();
    await type(element, 'kits', 'x');
    await expect(element).to.be.accessible();
    await type(element, 'kits', '12');
    await type(element, 'wing.span', '640');
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await expect(element).to.be.accessible();
  });
});
