import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {AsBuiltStudy} from '../../../src/calc/as-built/study.js';
import {weightsForBalance} from '../../../src/calc/balance/weights-for-balance.js';
import {defaultDesign} from '../../../src/calc/design/design.js';
import type {GliderAsBuilt} from '../../../src/components/as-built/define.js';
import type {GliderElement} from '../../../src/components/base/element.js';
import '../../../src/components/as-built/define.js';
import '../../../src/components/balance-point/define.js';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/dimensions/define.js';
import '../../../src/components/flight-check/define.js';
import '../../../src/components/flight-path/define.js';
import '../../../src/components/tail-shim/define.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderElement, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const field = (element: GliderElement, id: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(`[id="${id}"]`));

async function type(element: GliderElement, id: string, written: string): Promise<void> {
  const input = field(element, id);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  input.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

async function choose(element: GliderElement, id: string, value: string): Promise<void> {
  const select = there(element.shadowRoot?.querySelector<HTMLSelectElement>(`#${id}`));
  select.value = value;
  select.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

/** What is asked under weight and balance, in its order. */
function weightFields(element: GliderElement): {readonly ids: string[]; readonly fieldset: Element} {
  const fieldset = there([...element.shadowRoot?.querySelectorAll('fieldset') ?? []].find((each) => each.querySelector('legend')?.textContent === 'Weight and balance'));
  return {fieldset, ids: [...fieldset.querySelectorAll('input, select')].map(({id}) => id)};
}

async function press(element: GliderElement, selector: string): Promise<void> {
  there(element.shadowRoot?.querySelector<HTMLElement>(selector)).click();
  await element.updateComplete;
}

function studyOf(element: GliderAsBuilt): AsBuiltStudy {
  const {result} = element;
  if (!result.ok) throw new Error(result.problems.map(({code}) => code).join());
  return result.value;
}

const gliding = () => fixture<GliderAsBuilt>(html`<glider-as-built units="metric" masses="29g@15mm" tail-angle="-1.2°"></glider-as-built>`);
const rowOf = (element: GliderAsBuilt, id: string): HTMLElement => there(element.shadowRoot?.querySelector<HTMLElement>(`tr[data-truth="${id}"]`));

describe('<glider-as-built>', () => {
  it('says what to measure first while nothing is measured', async () => {
    const slow = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric" masses="31g@15mm" tail-angle="-2.3°"></glider-as-built>`);
    expect(text(slow, 'answer')).to.contain('Begin with the edges of the tail: 1 mm higher, and it no longer glides.');
    expect(tidy(rowOf(slow, 'tail').textContent)).to.contain('1 mm higher: does not glide');
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric" masses="31g@15mm" tail-angle="-1.2°"></glider-as-built>`);
    const [first] = studyOf(element).truths;
    expect(first?.id).to.equal('tail');
    expect(text(element, 'answer')).to.contain('Nothing has been measured yet, so the plan counts. Begin with the edges of the tail: 1 mm higher, and it flies')
      .and.to.contain(`${Math.abs(first?.glide?.speed ?? NaN).toFixed(1)} m/s slower`);
    expect(there(element.shadowRoot?.querySelector<HTMLButtonElement>('.forget')).disabled).to.equal(true);
    expect(tidy(element.shadowRoot?.querySelector('.caution')?.textContent)).to.contain('away from faces, eyes and roads');
  });

  it('says what comes before any measuring: the balance, or the tail of a plane that does not glide', async () => {
    const bare = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric"></glider-as-built>`);
    expect(text(bare, 'answer')).to.match(/^Nothing has been measured yet, so the plan counts\. Balance it first: it balances .* put [\d.]+ g 15 mm behind the nose\./).and.not.to.contain('Begin with');
    const diving = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric" masses="33g@15mm" tail-angle="3°"></glider-as-built>`);
    expect(text(diving, 'answer')).to.match(/^Nothing has been measured yet, so the plan counts\. As planned it would only dive: raise the rear edge of the tailplane by [\d.]+ mm before you throw it\./);
    expect(tidy(diving.shadowRoot?.textContent)).to.contain('put right first what the answer says');
  });

  it('flies the plane as measured, beside its plan', async () => {
    const element = await gliding();
    const planned = studyOf(element).trim;
    await type(element, 'field-built.hollow', '5');
    const {trim, built} = studyOf(element);
    if (!trim.ok || !planned.ok) throw new Error('does not glide');
    const by = planned.value.glide.speed - trim.value.glide.speed;
    expect(by).to.be.greaterThan(0.1);
    expect(text(element, 'answer')).to.contain(`As measured it flies at about ${trim.value.glide.speed.toFixed(1)} m/s, ${by.toFixed(1)} m/s slower than planned.`);
    expect(text(element, 'aside')).to.contain('Reckoned with one of your measurements: hollow.');
    expect(built.counted).to.deep.equal(['built.hollow']);
    expect(tidy(rowOf(element, 'hollow').textContent)).to.contain('measured: off by 1.0 mm');
    // tenths that were typed stay to be seen
    await type(element, 'field-built.hollow', '4.3');
    expect(field(element, 'field-built.hollow').value).to.equal('4.3');
  });

  it('tells to which side it turns, and what is further out than the plane bears', async () => {
    const element = await gliding();
    await type(element, 'field-built.bow', '20');
    expect(text(element, 'answer')).to.match(/turns right, on a circle about [\d.]+ m across where it lands/);
    expect(text(element, 'aside')).to.contain('Further out of true than it bears: the body, bowed.');
    expect(rowOf(element, 'bow').querySelector('.found')?.classList.contains('bad')).to.equal(true);
    await type(element, 'field-built.bow', '-20');
    expect(text(element, 'answer')).to.contain('turns left');
    await type(element, 'field-built.bow', '0');
    expect(text(element, 'answer')).to.contain('and straight on');
    expect(text(element, 'aside')).to.contain('What was measured is true enough.');
  });

  it('says what would mend a plane that does not glide as measured', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric" masses="31g@15mm" tail-angle="-1.2°"></glider-as-built>`);
    await type(element, 'field-built.tailFront', '0');
    await type(element, 'field-built.tailRear', '6');
    expect(text(element, 'answer')).to.match(/As measured it would only stall: lower the rear edge of the tailplane by [\d.]+ mm/);
    await type(element, 'field-built.tailFront', '4');
    await type(element, 'field-built.tailRear', '0');
    expect(text(element, 'answer')).to.match(/As measured it would only dive: raise the rear edge of the tailplane by [\d.]+ mm/);
    await type(element, 'field-measured.balance', '240');
    expect(text(element, 'answer')).to.contain('would not steady itself').and.to.match(/^Balance it first: it balances \d+ mm behind the wing’s front edge, \d+ mm too far back; put \d+ g more 15 mm behind the nose/);
    expect(text(element, 'answer').split('Balanced like that')[0]).not.to.contain('rear edge');
    expect(element.shadowRoot?.textContent).to.not.match(/NaN|Infinity|undefined/);
  });

  it('lets the plan count where a measurement cannot be, and says so beside its field', async () => {
    const element = await gliding();
    await type(element, 'field-built.hollow', '70');
    expect(tidy(element.shadowRoot?.querySelector('[id="field-built.hollow-problem"]')?.textContent)).to.contain('measure again. Until then the plan counts');
    expect(text(element, 'answer')).to.contain('Nothing has been measured yet');
    expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(false);
    await type(element, 'field-built.tipLeft', '30');
    expect(tidy(element.shadowRoot?.querySelector('[id="field-built.tipRight-problem"]')?.textContent)).to.contain('Measure this one too');
    await type(element, 'field-built.hollow', 'deep');
    expect(field(element, 'field-built.hollow').getAttribute('aria-invalid')).to.equal('true');
    expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(true);
    expect(element.shadowRoot?.textContent).to.not.match(/NaN|Infinity|undefined/);
  });

  it('finds the balance on one scale and two supports, the fitted weights taken off again', async () => {
    const element = await gliding();
    const wingAt = defaultDesign.arrangement.wingAt;
    await choose(element, 'weighing-how', 'scale');
    for (const [id, value] of [['mass', '109'], ['front', '-100'], ['rear', '250'], ['reading', '40']] as const) await type(element, `weighing-${id}`, value);
    const whole = -0.1 + 0.35 * 40 / 109;
    expect(tidy(element.shadowRoot?.querySelector('.said')?.textContent)).to.contain('behind the wing’s front edge and weighs 109 g').and.to.contain('Without the 29 g of weights that were on it, it would weigh 80 g');
    await press(element, '.use');
    const {measured} = element.state.design;
    expect(measured.mass).to.be.closeTo(0.08, 1e-12);
    expect(measured.balance).to.be.closeTo((0.109 * whole - 0.029 * (0.015 - wingAt)) / 0.08, 1e-12);
    expect(studyOf(element).plane.balance).to.be.closeTo(whole, 1e-9);
    await press(element, '#weighing-fitted');
    await press(element, '.use');
    expect(element.state.design.measured.balance).to.be.closeTo(whole, 1e-12);
    await type(element, 'weighing-reading', '120');
    expect(tidy(element.shadowRoot?.querySelector('.said')?.textContent)).to.contain('One support cannot carry more');
    expect(there(element.shadowRoot?.querySelector<HTMLButtonElement>('.use')).disabled).to.equal(true);
  });

  it('takes what two fingers found first of all', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric"></glider-as-built>`);
    expect(element.shadowRoot?.querySelector('#weighing-fitted')).to.equal(null);
    await type(element, 'weighing-mass', '95');
    await type(element, 'weighing-at', '48');
    await press(element, '.use');
    expect(element.state.design.measured.mass).to.be.closeTo(0.095, 1e-12);
    expect(element.state.design.measured.balance).to.be.closeTo(0.048, 1e-12);
  });

  it('takes a mass alone, and leaves the balance to be reckoned', async () => {
    const element = await gliding();
    const use = (): HTMLButtonElement => there(element.shadowRoot?.querySelector<HTMLButtonElement>('.use'));
    expect(use().disabled).to.equal(true);
    await type(element, 'weighing-mass', '109');
    expect(tidy(element.shadowRoot?.querySelector('.said')?.textContent)).to.equal('It weighs 109 g. Without the 29 g of weights that were on it, it would weigh 80 g. “Use this” keeps that.');
    await press(element, '.use');
    expect(element.state.design.measured.mass).to.be.closeTo(0.08, 1e-12);
    expect(element.state.design.measured.balance).to.equal(undefined);
    await type(element, 'weighing-at', 'there');
    expect(use().disabled).to.equal(true);
  });

  it('asks first for the plane as it is thrown, and says of what is kept that the weights are off', async () => {
    const element = await gliding();
    const {ids, fieldset} = weightFields(element);
    expect(ids).to.deep.equal(['weighing-mass', 'weighing-how', 'weighing-at', 'weighing-fitted', 'field-measured.mass', 'field-measured.balance']);
    expect(fieldset.querySelector('details')).to.equal(null);
    expect(field(element, 'weighing-at').getBoundingClientRect().height).to.be.greaterThan(20);
    const label = (id: string): string => tidy(fieldset.querySelector(`label[for="${id}"]`)?.textContent);
    expect(label('field-measured.mass')).to.equal('Weighs without weights fitted');
    expect(label('field-measured.balance')).to.equal('Balances at, without weights fitted');
  });

  it('finds a plane as planned whose planned weight and balance were typed as they are read off the plane, in every answer of the page', async () => {
    const page = await fixture(html`<div><glider-design id="halfpenny" src="/demo/halfpenny.json" units="metric"></glider-design>
      <glider-as-built design="halfpenny"></glider-as-built><glider-balance-point design="halfpenny"></glider-balance-point><glider-flight-check design="halfpenny"></glider-flight-check>
      <glider-tail-shim design="halfpenny"></glider-tail-shim><glider-flight-path design="halfpenny"></glider-flight-path></div>`);
    const element = there(page.querySelector('glider-as-built'));
    const others = ['glider-balance-point', 'glider-flight-check', 'glider-tail-shim', 'glider-flight-path'].map((tag) => there(page.querySelector<GliderElement>(tag)));
    const settle = async (): Promise<void> => { for (const each of [element, ...others]) await each.updateComplete; };
    /** What is measured is no longer about so much, and leaves less to a range: all else stays. */
    const sentence = (each: GliderElement): string => text(each, 'answer').replace(text(each, 'aside'), '').replaceAll('about ', '').trim();
    await until(() => element.result.ok && element.state.design.name === 'Halfpenny' && others.every((each) => text(each, 'answer').length > 20));
    await settle();
    const before = others.map(sentence);
    await type(element, 'weighing-mass', '71');
    await type(element, 'weighing-at', '31');
    await press(element, '.use');
    await settle();
    expect(text(element, 'answer')).to.contain('m/s, as planned.').and.to.contain('What was measured is true enough.');
    expect(studyOf(element).plane.mass).to.be.closeTo(0.071, 1e-9);
    expect(studyOf(element).plane.balance).to.be.closeTo(0.031, 1e-9);
    expect(tidy(rowOf(element, 'balance').textContent)).to.contain('measured: 31.0 mm, true enough');
    others.forEach((each, i) => { expect(sentence(each), each.localName).to.equal(before[i]); });
  });

  it('blames a plane for no weight that was fitted to put it right, and keeps what was weighed before it', async () => {
    const page = await fixture(html`<div><glider-design id="halfpenny-3" src="/demo/halfpenny.json" units="metric"></glider-design>
      <glider-as-built design="halfpenny-3"></glider-as-built><glider-balance-point design="halfpenny-3"></glider-balance-point></div>`);
    const element = there(page.querySelector('glider-as-built')), balance = there(page.querySelector('glider-balance-point'));
    await until(() => element.state.design.name === 'Halfpenny' && element.result.ok);
    const said = (): string => tidy(element.shadowRoot?.querySelector('.said')?.textContent);
    const measured = (): readonly (number | undefined)[] => [element.state.design.measured.mass, element.state.design.measured.balance];
    await type(element, 'weighing-mass', '75');
    await type(element, 'weighing-at', '45');
    const bare = 'Without the 18 g of weights that were on it, it would weigh 57 g and balance 114 mm behind the wing’s front edge.';
    expect(said()).to.contain(`${bare} “Use this” keeps that.`);
    expect(measured()).to.deep.equal([undefined, undefined]);
    await press(element, '.use');
    expect(said()).to.contain(`${bare} That is kept.`);
    const kept = measured();
    // in the very weights that the balance point names
    await balance.updateComplete;
    const asked = /put [\d.]+ g more \d+ mm behind the nose, \d+ g in all/.exec(text(element, 'answer'))?.[0];
    expect(text(element, 'answer')).to.match(/^Balance it first: it balances \d+ mm behind the wing’s front edge, 7 mm too far back; put /);
    const weights = weightsForBalance(element.state.design), on = weights.ok ? weights.value?.on : undefined;
    expect(asked).to.contain(`put ${String((on?.mass ?? NaN) * 1000)} g more`).and.to.contain(`${String((on?.together ?? NaN) * 1000)} g in all`);
    expect(text(element, 'aside')).to.contain('Balanced like that it');
    expect(text(element, 'aside')).to.contain('Further out of true than it bears: the balance');
    await balance.updateComplete;
    there([...balance.shadowRoot?.querySelectorAll('button') ?? []].find((each) => tidy(each.textContent).startsWith('Fit'))).click();
    await element.updateComplete;
    await balance.updateComplete;
    expect(element.state.design.ballast.masses.length).to.be.greaterThan(1);
    expect(text(element, 'answer')).not.to.contain('Balance it first').and.not.to.contain('slower');
    expect(text(element, 'aside')).to.contain('What was measured is true enough');
    const range = tidy(rowOf(element, 'balance').querySelector('td.number')?.textContent);
    expect(range).to.match(/^\d+ to \d+ mm$/);
    expect(text(balance, 'answer')).to.contain(range);
    // the list is another now, what was weighed is not
    expect(said()).to.contain(`${bare} That is kept. The weights listed have changed since: weigh the plane again to check it.`);
    await press(element, '.use');
    expect(measured()).to.deep.equal(kept);
    await press(element, '.forget');
    expect(measured()).to.deep.equal([undefined, undefined]);
    expect(said()).to.equal('');
    expect(field(element, 'weighing-mass').value).to.equal('');
  });

  it('says of a millimetre or a gram what the throw says of it', async () => {
    const page = await fixture(html`<div><glider-design id="halfpenny-2" src="/demo/halfpenny.json" units="metric"></glider-design>
      <glider-as-built design="halfpenny-2"></glider-as-built><glider-flight-path design="halfpenny-2"></glider-flight-path></div>`);
    const element = there(page.querySelector('glider-as-built')), path = there(page.querySelector('glider-flight-path'));
    await until(() => element.state.design.name === 'Halfpenny' && element.result.ok && path.result.ok);
    const crook = async (name: 'finEdge' | 'tipWeight', written: string): Promise<string> => {
      Object.assign(path, {finEdge: undefined, tipWeight: undefined, [name]: written});
      await path.updateComplete;
      await until(() => text(path, 'answer').includes('Crooked'));
      await path.updateComplete;
      return text(path, 'answer');
    };
    const effect = (id: string): string => tidy(rowOf(element, id).querySelector('td')?.textContent);
    const across = /a circle about ([\d.]+ m) across/;
    const [, fin] = across.exec(effect('fin')) ?? [];
    expect(fin).to.match(/\d m/);
    expect(across.exec(await crook('finEdge', '1 mm'))?.[1]).to.equal(fin);
    expect(effect('tip-weight')).to.equal('1 g at one tip: hardly turns');
    expect(await crook('tipWeight', '1 g')).to.contain('it turns right so little that');
    expect(text(element, 'truth')).to.contain('no circle less than 50 m across').and.not.to.contain('radius');
  });

  it('stacks the rows of its card on a narrow page, the last two things on one line', async () => {
    for (const [width, lines] of [[360, 2], [800, 1]] as const) {
      const box = await fixture<HTMLElement>(html`<div><glider-as-built units="metric" masses="29g@15mm" tail-angle="-1.2°"></glider-as-built></div>`);
      box.style.inlineSize = `${String(width)}px`;
      const element = there(box.querySelector('glider-as-built'));
      await element.updateComplete;
      const rows = [...element.shadowRoot?.querySelectorAll('.truth tbody tr') ?? []];
      expect(rows.length).to.be.greaterThan(8);
      for (const row of rows) {
        const [check, off, within] = [...row.children].map((cell) => cell.getBoundingClientRect());
        if (!check || !off || !within) throw new Error('not there');
        expect(Math.min(off.bottom, within.bottom) - Math.max(off.top, within.top), tidy(row.textContent)).to.be.greaterThan(10);
        if (lines === 2) expect(off.top, tidy(row.textContent)).to.be.at.least(check.bottom - 1);
        else expect(off.top).to.be.lessThan(check.bottom - 10);
        expect(within.right).to.be.lessThan(box.getBoundingClientRect().right + 0.5);
      }
    }
  });

  it('is a card to tick, which keeps its ticks while numbers change', async () => {
    const element = await gliding();
    const box = (): HTMLInputElement => there(rowOf(element, 'balance').querySelector<HTMLInputElement>('input'));
    box().focus();
    await sendKeys({press: ' '});
    expect(box().checked).to.equal(true);
    // the order of the rows changes with the plane, the ticks go along
    await type(element, 'field-built.hollow', '6.5');
    expect(box().checked).to.equal(true);
    expect([...element.shadowRoot?.querySelectorAll<HTMLInputElement>('[part=tick]') ?? []].filter(({checked}) => checked)).to.have.length(1);
    expect(rowOf(element, 'balance').querySelector('label')?.getBoundingClientRect().height).to.be.at.least(44);
  });

  it('replaces the plan in every answer of the page, and what plans the building keeps it', async () => {
    const page = await fixture(html`<div><glider-design id="rook" units="metric" ballast-masses="29g@15mm" arrangement-tail-incidence="-1.2°"></glider-design>
      <glider-as-built design="rook"></glider-as-built><glider-flight-check design="rook"></glider-flight-check><glider-tail-shim design="rook"></glider-tail-shim>
      <glider-camber-shim design="rook"></glider-camber-shim></div>`);
    const element = there(page.querySelector('glider-as-built'));
    const others = ['glider-flight-check', 'glider-tail-shim', 'glider-camber-shim'].map((tag) => there(page.querySelector<GliderElement>(tag)));
    const settle = async (): Promise<void> => { for (const each of [element, ...others]) await each.updateComplete; };
    await settle();
    const before = others.map((each) => text(each, 'answer'));
    await type(element, 'field-built.hollow', '5.5');
    await settle();
    const after = others.map((each) => text(each, 'answer'));
    for (const i of [0, 1]) {
      expect(after[i]).not.to.equal(before[i]);
      expect(after[i]).to.contain('Reckoned with one of your measurements: hollow.');
    }
    expect(after[2]).to.equal(before[2]);
    await press(element, '.forget');
    await settle();
    expect(others.map((each) => text(each, 'answer'))).to.deep.equal(before);
  });

  it('steps a measurement by the keys', async () => {
    const element = await gliding();
    await type(element, 'field-built.hollow', '4');
    field(element, 'field-built.hollow').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.state.design.built.hollow).to.be.closeTo(0.005, 1e-12);
  });

  it('locks what its author locks', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric" lock="built.hollow measured.balance" hollow="4 mm"></glider-as-built>`);
    expect(field(element, 'field-built.hollow').disabled).to.equal(true);
    expect(field(element, 'field-built.bow').disabled).to.equal(false);
    expect(there(element.shadowRoot?.querySelector<HTMLButtonElement>('.forget')).disabled).to.equal(true);
  });

  it('never rounds what a plane bears to nothing, in inches either', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="inch" masses="29g@15mm" tail-angle="-1.2°"></glider-as-built>`);
    const within = [...element.shadowRoot?.querySelectorAll('.truth tbody td.number') ?? []].map((cell) => tidy(cell.textContent));
    expect(within).to.have.length(studyOf(element).truths.length);
    for (const each of within) expect(each).to.match(/[1-9]|hardly matters/);
  });

  it('draws what is measured', async () => {
    const element = await gliding();
    await type(element, 'field-built.hollow', '4.6');
    await until(() => element.shadowRoot?.querySelector('svg text'));
    const svg = there(element.shadowRoot?.querySelector('svg'));
    const words = [...svg.querySelectorAll('text')].map((one) => tidy(one.textContent));
    expect(words).to.include.members(['4.6 mm', 'plan left 29.1 mm', 'plan right 29.1 mm', 'Tail on the body, from the left']);
    expect(svg.getAttribute('aria-label')).to.contain('1 measured so far');
  });

  it('speaks German', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built lang="de" masses="29g@15mm" tail-angle="-1.2°" hollow="5 mm"></glider-as-built>`);
    await until(() => text(element, 'aside').includes('Gerechnet'));
    expect(text(element, 'answer')).to.match(/Wie gemessen fliegt er mit etwa \d,\d m\/s, \d,\d m\/s langsamer als geplant\./);
    expect(text(element, 'aside')).to.contain('Gerechnet mit einem gemessenen Wert: Hohlraum.');
  });

  it('is accessible, with everything open and something wrong', async () => {
    const element = await gliding();
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await until(() => element.shadowRoot?.querySelector('.working math'));
    await type(element, 'field-built.hollow', '70');
    await type(element, 'field-built.bow', '30');
    await type(element, 'weighing-mass', 'heavy');
    expect(tidy(element.shadowRoot?.querySelector('.working')?.textContent)).to.contain('Plane trigonometry and the lever');
    await expect(element).to.be.accessible();
  });
});
