import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderBalancePoint} from '../../../src/components/balance-point/define.js';
import {balancePlan} from '../../../src/calc/balance/balance-plan.js';
import {withValues} from '../../../src/calc/design/design.js';
import {planeBalance} from '../../../src/calc/balance/plane-balance.js';
import '../../../src/components/balance-point/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/value/define.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderBalancePoint, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

/** What a selector finds, which must be there. */
function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const node = (element: GliderBalancePoint, selector: string): Element => there(element.shadowRoot?.querySelector(selector));
const select = (element: GliderBalancePoint, id: string): HTMLSelectElement => there(element.shadowRoot?.querySelector<HTMLSelectElement>(`#${id}`));
const field = (element: GliderBalancePoint, path: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(`[id="field-${path}"]`));

async function type(element: GliderBalancePoint, path: string, written: string): Promise<void> {
  const input = field(element, path);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

async function choose(element: GliderBalancePoint, id: string, value: string): Promise<void> {
  const one = select(element, id);
  one.value = value;
  one.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

async function press(element: GliderBalancePoint, label: string): Promise<void> {
  const button = [...element.shadowRoot?.querySelectorAll('button') ?? []].find((one) => tidy(one.textContent) === label);
  if (!button) throw new Error(`no button ${label}`);
  button.click();
  await element.updateComplete;
}

function planOf(element: GliderBalancePoint) {
  const {result} = element;
  if (!result.ok) throw new Error(result.problems.map(({code}) => code).join());
  return result.value;
}

/** Opens everything that can be opened, and waits for the working. */
async function openAll(element: GliderBalancePoint): Promise<void> {
  for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
  await until(() => element.shadowRoot?.querySelector('.working table'));
}

async function drawn(element: GliderBalancePoint): Promise<SVGSVGElement> {
  await until(() => element.shadowRoot?.querySelector('svg text'));
  return there(element.shadowRoot?.querySelector('svg'));
}

/** A plane measured whole, whose numbers can be followed by hand. */
const measured = () => fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" pieces="eur-5c m10 clay" mass="80 g" balance="80 mm" weight-at="20 mm"></glider-balance-point>`);

describe('<glider-balance-point>', () => {
  it('says from a measured plane where whole coins bring it to the middle of its target', async () => {
    const element = await measured();
    const {plane, whole, advice} = planOf(element);
    expect(plane.mass).to.be.closeTo(0.08, 1e-12);
    expect(plane.behindWing).to.be.closeTo(0.08, 1e-12);
    if (!whole?.ok || !advice) throw new Error('no coins');
    const {count, place} = whole.value;
    // moments about the nose, by hand
    const after = (80 * (200 + 80) + count * 3.92 * place * 1000) / (80 + count * 3.92) - 200;
    expect(after).to.be.closeTo((plane.target.middle - plane.wingAt) * 1000, 1e-6);
    expect(text(element, 'answer')).to.contain('It balances 80 mm behind').and.to.contain(`${String(count)} five-cent coins (${String(Math.round(count * 3.92))} g)`);
    expect(text(element, 'answer')).to.contain('in the middle of');
    expect(text(element, 'aside')).to.contain('wing cube loading');
  });

  it('estimates from the parts alone, and says "about"', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric"></glider-balance-point>`);
    const {plane} = planOf(element);
    expect(plane.sure).to.equal('about');
    expect(text(element, 'answer')).to.contain(`about ${String(Math.round(plane.behindWing * 1000))} mm`);
  });

  it('offers the weights at hand, each landing within the target, and as many of them as the reader says', async () => {
    const element = await measured();
    const options = [...select(element, 'pieces').options].map(({value}) => value);
    expect(options).to.deep.equal(['eur-0.05', 'washer-m10', 'clay']);
    await choose(element, 'pieces', 'washer-m10');
    expect(text(element, 'answer')).to.contain('M10 washers');
    await choose(element, 'count', '5');
    const {whole, plane} = planOf(element);
    if (!whole?.ok) throw new Error('five do not do it');
    expect(whole.value.count).to.equal(5);
    expect(whole.value.after.at).to.be.within(plane.target.from - 1e-9, plane.target.to + 1e-9);
    await choose(element, 'count', '1');
    expect(element.shadowRoot?.textContent).to.contain('too light');
    await choose(element, 'pieces', 'clay');
    expect(text(element, 'answer')).to.contain('of clay, a ball');
    expect(element.shadowRoot?.querySelector('#count')).to.equal(null);
  });

  it('fits the weight, and then balances within the target with nothing to add', async () => {
    const element = await measured();
    const then = planOf(element).advice?.after.at ?? NaN;
    let changes = 0;
    element.addEventListener('change', () => { changes++; });
    await press(element, 'Fit this weight');
    expect(changes).to.equal(1);
    expect(element.state.design.ballast.masses).to.have.length(1);
    expect(planOf(element).plane.at).to.be.closeTo(then, 1e-12);
    expect(text(element, 'answer')).to.contain('nothing to add');
    await press(element, 'Take all weights off');
    expect(element.state.design.ballast.masses).to.deep.equal([]);
  });

  it('balances at the same round number as a sentence on the page says', async () => {
    for (const [units, number] of [['metric', /about (\d+ mm)/], ['inch', /about ([\d /]+ in)/]] as const) {
      const page = await fixture(html`<div lang="en"><glider-design id=${`knot-${units}`} units=${units} wing-span="620 mm" wing-chord="115 mm"></glider-design>
        <glider-value design=${`knot-${units}`} name="balance.point"></glider-value><glider-balance-point design=${`knot-${units}`}></glider-balance-point></div>`);
      const element = there(page.querySelector<GliderBalancePoint>('glider-balance-point')), said = (): string => tidy(page.querySelector('glider-value')?.shadowRoot?.textContent);
      await until(() => number.test(said()));
      expect(text(element, 'answer')).to.contain(`It balances ${number.exec(said())?.[0] ?? ''} behind`);
    }
  });

  it('leaves whoever pressed a button by key at the new answer', async () => {
    const element = await measured();
    there([...element.shadowRoot?.querySelectorAll('button') ?? []].find(({textContent}) => textContent.trim() === 'Fit this weight')).focus();
    await sendKeys({press: 'Enter'});
    await until(() => text(element, 'answer').includes('nothing to add'));
    await until(() => element.shadowRoot?.activeElement?.getAttribute('part') === 'answer');
  });

  it('slides the wing instead, and then balances in the middle of the target as it is then', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" masses="18g@15mm"></glider-balance-point>`);
    await press(element, 'Slide the wing there');
    const {plane} = planOf(element);
    expect(plane.heavy).to.equal('neither');
    expect(plane.at).to.be.closeTo(plane.target.middle, 1e-6);
  });

  it('stands on the flight model, shows the handbook beside it, and says where the two are unusually far apart', async () => {
    const usual = await fixture<GliderBalancePoint>(html`<glider-balance-point></glider-balance-point>`);
    expect(text(usual, 'aside')).not.to.contain('flight model');
    const details = there(usual.shadowRoot?.querySelector<HTMLDetailsElement>('details[part=working]'));
    details.open = true;
    await until(() => text(usual, 'working').includes('vortex lattice'));
    const far = await fixture<GliderBalancePoint>(html`<glider-balance-point tail-span="800 mm" tail-chord="140 mm"></glider-balance-point>`);
    expect(text(far, 'aside')).to.match(/the flight model and the handbook differ by 10 % of the mean chord, more than usual/);
  });

  it('takes weight off a nose that has too much, and adds none at the tail', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" masses="60g@10mm" pieces="eur-20c"></glider-balance-point>`);
    const {plane, lightened: {off: [taken]}, advice} = planOf(element);
    expect([plane.heavy, advice]).to.deep.equal(['nose', undefined]);
    const left = Math.round((taken?.left ?? NaN) * 1e3);
    expect(text(element, 'answer')).to.contain(`take ${String(60 - left)} g off the 60 g fitted 10 mm behind the nose, or fasten one of ${String(left)} g there instead`).and.not.to.contain('end of the body');
    expect(text(element, 'aside')).to.contain('nose is too heavy');
    const svg = await drawn(element);
    await element.updateComplete;
    expect([...svg.querySelectorAll('text')].map(({textContent}) => tidy(textContent))).to.include(`60 g → ${String(left)} g`);
    expect(element.shadowRoot?.querySelector('.ways')?.textContent).not.to.match(/take \d+ g off the weight fitted 10 mm/);
    await press(element, 'Take that off');
    expect(element.state.design.ballast.masses).to.deep.equal([{mass: left / 1e3, at: 0.01}]);
    expect(text(element, 'answer')).to.contain('nothing to add');
  });

  it('takes off what is fitted at the heavy end before it adds anything at the other', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" masses="9g@500mm" pieces="grams" weight-at="14 mm"></glider-balance-point>`);
    expect(text(element, 'answer')).to.match(/take off the 9 g fitted \d+ mm ahead of the end of the body, then put \d+ g 14 mm behind the nose, and it balances at/);
    await press(element, 'Change the weights so');
    expect(element.state.design.ballast.masses.map(({at}) => at)).to.deep.equal([0.014]);
    expect(text(element, 'answer')).to.contain('nothing to add');
  });

  it('puts weight on the body only, wherever the place for it was said to be', async () => {
    for (const [at, where] of [['-25 mm', '0 mm behind the nose'], ['700 mm', 'ahead of the end of the body']] as const) {
      const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" mass="80 g" balance=${at.startsWith('-') ? '80 mm' : '10 mm'} pieces="gbp-2p grams" weight-at=${at}></glider-balance-point>`);
      const {whole, design: {body: {length}}} = planOf(element);
      if (!whole?.ok) throw new Error('no coins');
      const {place, piece: {diameter}} = whole.value;
      expect([place - diameter / 2 > -1e-9, place + diameter / 2 < length + 1e-9], at).to.deep.equal([true, true]);
      await choose(element, 'pieces', 'grams');
      expect(text(element, 'answer'), at).to.contain(where.startsWith('0') ? where : 'g 0 mm ahead of the end of the body');
      expect(text(element, 'aside'), at).to.match(/lies (ahead of|behind) the body, so it is put at its/);
      await press(element, 'Fit this weight');
      for (const {at: fitted} of element.state.design.ballast.masses) expect(fitted, at).to.be.within(0, length);
    }
  });

  it('says where weight of any mass would do what the coins do elsewhere, and rounds up what just reaches the target', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" pieces="gbp-2p" weight-at="14 mm"></glider-balance-point>`);
    const {weights, whole, remedy, design, plane} = planOf(element);
    const on = weights.ok ? weights.value?.on : undefined;
    if (!whole?.ok || !on || !remedy.ok || !remedy.value) throw new Error('no coins');
    expect(Math.abs(whole.value.place - on.at)).to.be.greaterThan(1e-3);
    expect(text(element, 'answer')).to.contain(`(it does what ${String(on.mass * 1e3)} g would do 14 mm behind the nose)`);
    const least = Number(/(\d+) g 14 mm behind the nose just reaches/.exec(tidy(element.shadowRoot?.querySelector('.ways')?.textContent))?.[1]);
    expect(least).to.be.at.least(remedy.value.least.mass * 1e3);
    const fitted = balancePlan(withValues(design, {'ballast.masses': [{mass: least / 1e3, at: 0.014}]}), {});
    expect(fitted.ok && fitted.value.plane.heavy).to.equal('neither');
    expect(plane.heavy).to.equal('tail');
    // the same grams for clay, also where some lie there already
    await type(element, 'ballast.masses', '25g@14mm');
    const more = planOf(element).weights;
    expect(tidy(element.shadowRoot?.querySelector('.ways')?.textContent)).to.contain(`just where you like: ${String((more.ok && more.value?.on?.mass || NaN) * 1e3)} g, a ball`);
  });

  it('puts coins at the nose although they come out even only far behind it, and says no more of them than is so', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" pieces="gbp-2p" mass="80 g" balance="80 mm"></glider-balance-point>`);
    expect(text(element, 'answer')).to.match(/put 2 two-pence coins \(14 g\) 1\d(\.\d)? mm behind the nose, and it balances at \d+ mm, inside \d+ to \d+ mm/).and.not.to.contain('it does what');
    expect(tidy(element.shadowRoot?.querySelector('.ways')?.textContent)).not.to.contain('come out even only');
    // as far from there as a nose is handy, they do only about what the grams do that every other element names
    const bare = await fixture<GliderBalancePoint>(html`<glider-balance-point lang="en-GB" units="metric" pieces="gbp-2p" span="620 mm" chord="115 mm"></glider-balance-point>`);
    expect(text(bare, 'answer')).to.match(/put 5 two-pence coins \(36 g\) 40 mm behind the nose \(it does about what 32 g would do 15 mm behind the nose\), and it balances at 42 mm, inside/);
    await choose(element, 'count', '3');
    expect(text(element, 'answer')).to.match(/put 3 two-pence coins \(21 g\) 83\.5 mm behind the nose \(it does what 15 g would do 15 mm behind the nose\)/);
    expect(tidy(element.shadowRoot?.querySelector('.ways')?.textContent)).to.contain('come out even only');
  });

  it('reports a balance point behind the tail as a problem, and still says where it should be', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" mass="80 g" balance="600 mm"></glider-balance-point>`);
    expect(text(element, 'answer')).to.contain('it should balance at');
    expect(text(element, 'problem')).to.contain('beyond the plane itself');
    expect(element.shadowRoot?.textContent).not.to.match(/NaN|Infinity|undefined/);
    expect((await drawn(element)).outerHTML).not.to.match(/NaN|Infinity|undefined/);
  });

  it('keeps the last good answer, greyed, and says beside the field what is wrong', async () => {
    const element = await measured();
    const before = text(element, 'answer');
    for (const [path, written, said] of [
      ['measured.mass', 'abc', 'cannot be read'], ['measured.mass', '-5', 'at least'], ['wing.chord', '0', 'at least'], ['wing.span', '1e9 mm', 'at most'],
      ['ballast.masses', '3 g', ''], ['ballast.masses', '9 kg @ 10 mm', 'no hand does that'], ['ballast.masses', '8 g @ -50 mm', 'would hang in the air 50 mm ahead of the nose'], ['ballast.masses', '8 g @ 700 mm', 'the body is only 620 mm long'], ['arrangement.tailAt', '200', 'in or ahead of the wing'], ['balance.marginHigh', '10', 'must not be below'],
    ] as const) {
      const kept = field(element, path).value;
      await type(element, path, written);
      expect(text(element, 'answer'), written).to.equal(before);
      expect(node(element, '.answer').classList.contains('stale'), written).to.equal(true);
      expect(tidy(node(element, `[id="field-${path}-problem"]`).textContent), written).to.contain(said).and.not.to.equal('');
      expect(field(element, path).value, written).to.equal(written);
      expect(element.result.ok, written).to.equal(false);
      await type(element, path, kept);
      expect(element.result.ok, `${path} ${kept}`).to.equal(true);
    }
    expect(element.shadowRoot?.querySelector('.stale')).to.equal(null);
  });

  it('opens the fields that hold an entry it cannot take from its attributes', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point span="abc"></glider-balance-point>`);
    expect(element.result.ok).to.equal(false);
    const field = node(element, '[id="field-wing.span-problem"]');
    expect(field.textContent).to.contain('cannot be read');
    expect(field.closest('details')?.open).to.equal(true);
  });

  it('says under the answer what belongs to no field of its own', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design><glider-balance-point></glider-balance-point></glider-design></div>`);
    const element = host.querySelector('glider-balance-point'), design = host.querySelector('glider-design');
    if (!element || !design) throw new Error('no element');
    await element.updateComplete;
    design.request([{path: 'wing.joints', value: [{angle: 0.2, at: 0.5}]}]);
    await element.updateComplete;
    expect([...element.shadowRoot?.querySelectorAll('[part=problem]') ?? []].map((p) => p.textContent).join(' ')).to.contain('beyond the tip');
  });

  it('belongs to the page’s design: what changes there changes the answer, and fields here change it for all', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design measured-mass="90 g" measured-balance="70 mm"><glider-balance-point units="metric"></glider-balance-point></glider-design></div>`);
    const element = host.querySelector('glider-balance-point'), design = host.querySelector('glider-design');
    if (!element || !design) throw new Error('no element');
    await element.updateComplete;
    const before = planOf(element).plane.target.middle;
    design.request([{path: 'tail.span', value: 0.3}]);
    await element.updateComplete;
    expect(planOf(element).plane.target.middle).to.be.greaterThan(before);
    await type(element, 'arrangement.wingAt', '160');
    expect(design.design.arrangement.wingAt).to.equal(0.16);
  });

  it('reads inches and ounces', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point lang="en-US" span="30 in" chord="4 in" nose-to-wing="5 in" nose-to-tail="20 in" body-length="24 in" tail-span="9 in" tail-chord="2.5 in" mass="3 oz" balance="1 1/2 in"></glider-balance-point>`);
    expect(text(element, 'answer')).to.contain('1 1/2 in');
    expect(field(element, 'measured.mass').value).to.equal('3');
    expect([...select(element, 'pieces').options].map(({textContent}) => textContent)).to.include('nickels');
  });

  it('is worked by keyboard', async () => {
    const element = await measured();
    field(element, 'ballast.at').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.state.design.ballast.at).to.be.closeTo(0.021, 1e-12);
  });

  it('leaves locked dimensions alone', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point lock="" mass="80 g" balance="80 mm"></glider-balance-point>`);
    expect(field(element, 'ballast.at').disabled).to.equal(true);
    expect(element.shadowRoot?.querySelectorAll('button').length).to.equal(0);
    await drawn(element);
    expect(element.shadowRoot?.querySelectorAll('.handle').length).to.equal(0);
  });

  it('lets no entry become markup', async () => {
    const element = await measured();
    await type(element, 'ballast.masses', '<img src=x onerror=alert(1)>');
    expect(element.shadowRoot?.querySelector('img')).to.equal(null);
  });

  it('draws the plane with its balance, its target and the weight, and hands to move weight and wing', async () => {
    const element = await measured();
    const svg = await drawn(element);
    await element.updateComplete;
    const words = [...svg.querySelectorAll('text')].map(({textContent}) => tidy(textContent));
    expect(words).to.include('now 80 mm').and.to.include('neutral point');
    expect(svg.outerHTML).not.to.match(/NaN|Infinity|undefined/);
    expect(tidy(svg.getAttribute('aria-label'))).to.contain('It balances 80 mm').and.to.contain('To do: put');
    expect([...element.shadowRoot?.querySelectorAll<HTMLElement>('.handle') ?? []].map(({dataset}) => dataset['key'])).to.deep.equal(['weight', 'wing']);
  });

  it('works the moments out in a table that adds up', async () => {
    const element = await fixture<GliderBalancePoint>(html`<glider-balance-point units="metric" masses="10g@20mm"></glider-balance-point>`);
    await openAll(element);
    const rows = [...element.shadowRoot?.querySelectorAll('.working table')[0]?.querySelectorAll('tbody tr') ?? []]
      .map((row) => [...row.querySelectorAll('td')].map((cell) => Number(tidy(cell.textContent).replace('−', '-').split(' ')[0])));
    const total = rows.pop() ?? [];
    expect(rows).to.have.length.greaterThan(6);
    expect(rows.reduce((sum, [mass = NaN]) => sum + mass, 0)).to.be.closeTo(total[0] ?? NaN, 0.5);
    expect(rows.reduce((sum, [,, moment = NaN]) => sum + moment, 0)).to.be.closeTo(total[2] ?? NaN, 6);
  });

  it('gives the plan of calc itself', async () => {
    const element = await measured();
    const {design} = element.state;
    const plan = planOf(element), balance = planeBalance(design);
    expect(balance.ok && plan.plane === balance.value).to.equal(true);
    expect(balancePlan(design, {}).ok).to.equal(true);
    expect(element.result.ok && element.result.value === plan).to.equal(true);
  });

  it('is accessible, at rest and in error, with everything open', async () => {
    const element = await measured();
    await drawn(element);
    await openAll(element);
    await expect(element).to.be.accessible();
    await type(element, 'measured.mass', 'abc');
    await expect(element).to.be.accessible();
  });
});
