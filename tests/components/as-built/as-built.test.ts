import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {AsBuiltStudy} from '../../../src/calc/as-built/study.js';
import {defaultDesign} from '../../../src/calc/design/design.js';
import type {GliderAsBuilt} from '../../../src/components/as-built/define.js';
import type {GliderElement} from '../../../src/components/base/element.js';
import '../../../src/components/as-built/define.js';
import '../../../src/components/camber-shim/define.js';
import '../../../src/components/design/define.js';
import '../../../src/components/dimensions/define.js';
import '../../../src/components/flight-check/define.js';
import '../../../src/components/tail-shim/define.js';

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
    const element = await gliding();
    const [first] = studyOf(element).truths;
    expect(first?.id).to.equal('tail');
    expect(text(element, 'answer')).to.contain('Nothing has been measured yet, so the plan counts. Begin with the edges of the tail: 1 mm higher, and it flies')
      .and.to.contain(`${Math.abs(first?.glide?.speed ?? NaN).toFixed(1)} m/s slower`);
    expect(there(element.shadowRoot?.querySelector<HTMLButtonElement>('.forget')).disabled).to.equal(true);
    expect(tidy(element.shadowRoot?.querySelector('.caution')?.textContent)).to.contain('away from faces, eyes and roads');
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
    expect(text(element, 'answer')).to.match(/turns right, on a circle of about \d+ m radius where it lands/);
    expect(text(element, 'aside')).to.contain('Further out of true than it bears: the body, bowed.');
    expect(rowOf(element, 'bow').querySelector('.found')?.classList.contains('bad')).to.equal(true);
    await type(element, 'field-built.bow', '-20');
    expect(text(element, 'answer')).to.contain('turns left');
    await type(element, 'field-built.bow', '0');
    expect(text(element, 'answer')).to.contain('and straight on');
    expect(text(element, 'aside')).to.contain('What was measured is true enough.');
  });

  it('says what would mend a plane that does not glide as measured', async () => {
    const element = await gliding();
    await type(element, 'field-built.tailFront', '0');
    await type(element, 'field-built.tailRear', '6');
    expect(text(element, 'answer')).to.match(/As measured it would only stall: lower the rear edge of the tailplane by [\d.]+ mm/);
    await type(element, 'field-built.tailFront', '4');
    await type(element, 'field-built.tailRear', '0');
    expect(text(element, 'answer')).to.match(/As measured it would only dive: raise the rear edge of the tailplane by [\d.]+ mm/);
    await type(element, 'field-measured.balance', '240');
    expect(text(element, 'answer')).to.contain('would not steady itself');
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
    for (const [id, value] of [['mass', '109'], ['front', '-100'], ['rear', '250'], ['reading', '40']] as const) await type(element, `weighing-${id}`, value);
    const whole = -0.1 + 0.35 * 40 / 109;
    expect(tidy(element.shadowRoot?.querySelector('.said')?.textContent)).to.contain('behind the wing’s front edge and weighs 109 g').and.to.contain('Without the weights listed it would weigh 80 g');
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

  it('takes what two fingers found, too', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built units="metric"></glider-as-built>`);
    const how = there(element.shadowRoot?.querySelector<HTMLSelectElement>('#weighing-how'));
    how.value = 'fingers';
    how.dispatchEvent(new Event('change', {bubbles: true}));
    await element.updateComplete;
    expect(element.shadowRoot?.querySelector('#weighing-fitted')).to.equal(null);
    await type(element, 'weighing-mass', '95');
    await type(element, 'weighing-at', '48');
    await press(element, '.use');
    expect(element.state.design.measured.mass).to.be.closeTo(0.095, 1e-12);
    expect(element.state.design.measured.balance).to.be.closeTo(0.048, 1e-12);
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
    const svg = there(element.shadowRoot?.querySelector('svg'));
    for (let i = 0; i < 100 && !svg.querySelector('text'); i++) await new Promise((resolve) => { setTimeout(resolve, 30); });
    const words = [...svg.querySelectorAll('text')].map((one) => tidy(one.textContent));
    expect(words).to.include.members(['4.6 mm', 'plan left 29.1 mm', 'plan right 29.1 mm', 'Tail on the body, from the left']);
    expect(svg.getAttribute('aria-label')).to.contain('1 measured so far');
  });

  it('speaks German', async () => {
    const element = await fixture<GliderAsBuilt>(html`<glider-as-built lang="de" masses="29g@15mm" tail-angle="-1.2°" hollow="5 mm"></glider-as-built>`);
    for (let i = 0; i < 100 && !text(element, 'aside').includes('Gerechnet'); i++) await new Promise((resolve) => { setTimeout(resolve, 30); });
    expect(text(element, 'answer')).to.match(/Wie gemessen fliegt er mit etwa \d,\d m\/s, \d,\d m\/s langsamer als geplant\./);
    expect(text(element, 'aside')).to.contain('Gerechnet mit einem gemessenen Wert: Hohlraum.');
  });

  it('is accessible, with everything open and something wrong', async () => {
    const element = await gliding();
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    for (let i = 0; i < 100 && !element.shadowRoot?.querySelector('.working math'); i++) await new Promise((resolve) => { setTimeout(resolve, 30); });
    await type(element, 'field-built.hollow', '70');
    await type(element, 'field-built.bow', '30');
    await type(element, 'weighing-mass', 'heavy');
    expect(tidy(element.shadowRoot?.querySelector('.working')?.textContent)).to.contain('Plane trigonometry and the lever');
    await expect(element).to.be.accessible();
  });
});
