import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import {tailCall} from '../../../src/calc/flight/calls.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import type {ShimStudy} from '../../../src/calc/flight/slips.js';
import type {GliderTailShim} from '../../../src/components/tail-shim/define.js';
import '../../../src/components/as-built/define.js';
import '../../../src/components/tail-shim/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderTailShim, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

/** What a selector finds, which must be there. */
function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const field = (element: GliderTailShim, id: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(`[id="${id}"]`));

async function type(element: GliderTailShim, id: string, written: string): Promise<void> {
  const input = field(element, id);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

async function choose(element: GliderTailShim, id: string, value: string): Promise<void> {
  const one = there(element.shadowRoot?.querySelector<HTMLSelectElement>(`[id="${id}"]`));
  one.value = value;
  one.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

function studyOf(element: GliderTailShim): ShimStudy {
  const {result} = element;
  if (!result.ok) throw new Error(result.problems.map(({code}) => code).join());
  return result.value;
}

const angle = (element: GliderTailShim): number => element.state.design.arrangement.tailIncidence * 180 / Math.PI;
const gliding = () => fixture<GliderTailShim>(html`<glider-tail-shim units="metric" masses="31g@15mm" tail-angle="-1.2°"></glider-tail-shim>`);

describe('<glider-tail-shim>', () => {
  it('says which stack makes the angle, and how fast the plane then flies', async () => {
    const element = await gliding();
    const {planned: {stack}, trim} = studyOf(element);
    if (!trim.ok) throw new Error('does not glide');
    expect(text(element, 'answer')).to.contain('under the rear edge of the tailplane').and.to.contain('1.2° down')
      .and.to.contain(`flies at about ${trim.value.glide.speed.toFixed(1)} m/s`);
    expect(text(element, 'answer')).to.contain(`${element.stackWords(stack)} (${(1e3 * stack.height).toFixed(1)} mm)`);
    expect(text(element, 'aside')).to.contain('what counts is the difference, 1.2°').and.to.contain('Another 1 mm of slips under the rear edge of the tailplane raises that edge by 1.1 mm');
    expect(tidy(element.shadowRoot?.querySelector('.caution')?.textContent)).to.contain('away from faces, eyes and roads');
  });

  it('says which speed to ask for where the plane flies faster than it has to, and what that gives is content', async () => {
    const element = await fixture<GliderTailShim>(html`<glider-tail-shim lang="en" units="metric" masses="34g@15mm" tail-angle="0°"></glider-tail-shim>`);
    await until(() => element.result.ok);
    const {call} = studyOf(element);
    if (!call) throw new Error('it asks for nothing');
    const speed = `${call.to.toFixed(1)} m/s`;
    expect(text(element, 'aside')).to.contain(`That is faster than it has to fly: with the tail’s rear edge about ${(1e3 * call.rise).toFixed(1)} mm higher it flies at about ${speed}.`);
    await type(element, 'speed-wanted', speed);
    there([...element.shadowRoot?.querySelectorAll('button') ?? []].find(({textContent}) => textContent === 'Set the tail for it')).click();
    await until(() => text(element, 'answer').includes('under the rear edge of the tailplane'));
    expect(studyOf(element).call).to.equal(undefined);
    expect(text(element, 'aside')).not.to.contain('faster than it has to');
  });

  it('sends nobody back who laid the slips that were advised, and makes a plan of them', async () => {
    const page = await fixture(html`<div><glider-design id="tern" units="metric" ballast-masses="34g@15mm" built-tail-front="0 mm"></glider-design>
      <glider-tail-shim design="tern"></glider-tail-shim><glider-as-built design="tern"></glider-as-built></div>`);
    const element = there(page.querySelector('glider-tail-shim')), built = there(page.querySelector('glider-as-built'));
    await until(() => element.result.ok && built.result.ok);
    const {design} = element.state, flight = flightOf(design), call = flight.ok ? tailCall(flight.value) : undefined;
    if (!call) throw new Error('the plan asks for nothing');
    const answers = (): string => `${text(element, 'answer')} ${tidy(built.shadowRoot?.textContent)}`;
    await type(element, 'field-built.tailRear', `${(1e3 * call.rise).toFixed(1)} mm`);
    await until(() => answers().includes('better than planned'));
    expect(answers()).to.match(/As planned it flies at about .* m\/s, faster than it has to: leave the slips and change the plan\./).and.to.contain('The edges of the tail are better so than planned');
    expect(answers()).not.to.match(/For the plan take|too far off|Further out of true/);
    const button = there([...element.shadowRoot?.querySelectorAll('button') ?? []].find(({textContent}) => textContent === 'Make this the plan'));
    const before = studyOf(element).now.angle;
    button.click();
    await until(() => answers().includes('That is as planned'));
    expect(element.state.design.arrangement.tailIncidence).to.be.closeTo(before, 1e-9);
    expect(element.state.design.built.tailRear).to.be.closeTo(call.rise, 5.1e-5);
    expect(answers()).to.contain('true enough').and.not.to.contain('better than planned');
    // the other way it is out of true
    await type(element, 'field-built.tailRear', '0 mm');
    await until(() => /Further out of true than it bears: the edges of the tail/.test(answers()));
    expect(text(element, 'answer')).to.contain('For the plan put');
  });

  it('sets the angle from a stack', async () => {
    const element = await gliding();
    for (const [id, value] of [['stack-cards', '4'], ['stack-papers', '0']] as const) await choose(element, id, value);
    const raised = -angle(element) * Math.PI / 180;
    expect(78 * Math.sin(raised) - 10 * Math.tan(raised)).to.be.closeTo(2, 1e-9);
    await choose(element, 'edge', 'front');
    expect(angle(element)).to.be.closeTo(raised * 180 / Math.PI, 1e-9);
    for (const id of ['stack-cards', 'stack-papers']) await choose(element, id, '0');
    expect(angle(element)).to.equal(0);
    expect(text(element, 'answer')).to.contain('Without slips the tailplane lies flat on the body');
  });

  it('says of another millimetre the speed that it then says with it', async () => {
    const element = await gliding();
    const [, more = '', less = ''] = /raises that edge by [\d.]+ mm, and the plane flies at (about [\d.]+ m\/s); with 1 mm less it flies at (about [\d.]+ m\/s)\./.exec(text(element, 'aside')) ?? [];
    // two cards are a millimetre
    const {cards} = studyOf(element).planned.stack;
    await choose(element, 'stack-cards', String(cards + 2));
    expect(text(element, 'answer')).to.contain(`flies at ${more}`);
    await choose(element, 'stack-cards', String(cards - 2));
    expect(text(element, 'answer')).to.contain(`flies at ${less}`);
  });

  it('counts the edges as measured before the plan, and leaves them as they were typed', async () => {
    const element = await gliding();
    await type(element, 'field-built.tailRear', '2');
    expect(tidy(element.shadowRoot?.querySelector('[id="field-built.tailFront-problem"]')?.textContent)).to.contain('Measure this one too');
    await type(element, 'field-built.tailFront', '2.5');
    const {now, trim} = studyOf(element);
    expect(now.angle).to.be.closeTo(Math.asin(0.5 / 78), 1e-12);
    expect(angle(element)).to.be.closeTo(-1.2, 1e-9);
    const speed = trim.ok ? `So the plane flies at about ${trim.value.glide.speed.toFixed(1)} m/s` : 'So the plane only dives';
    expect(text(element, 'answer')).to.contain(`As measured, the front edge of the tailplane points 0.4° up. ${speed}`);
    expect(text(element, 'aside')).to.contain('the tail at 0.4°');
    await choose(element, 'stack-cards', '5');
    expect(field(element, 'field-built.tailRear').value).to.equal('2');
    expect(studyOf(element).now.angle).to.equal(now.angle);
    expect(text(element, 'answer')).to.contain('As measured, the front edge of the tailplane points 0.4° up').and.to.contain('For the plan take out what lies under it and put 5 cards');
  });

  it('names each speed beside its own angle: that of the measured edges, and that of the plan', async () => {
    const page = await fixture(html`<div><glider-design id="halfpenny-shim" src="/demo/halfpenny.json" units="metric"></glider-design><glider-tail-shim design="halfpenny-shim"></glider-tail-shim></div>`);
    const element = there(page.querySelector('glider-tail-shim'));
    await until(() => element.state.design.name === 'Halfpenny' && text(element, 'answer').includes('flies'));
    expect(text(element, 'answer')).to.contain('6 cards and 3 sheets of paper (3.3 mm)').and.to.contain('points 3° down. The plane then flies at about 5.5 m/s');
    await type(element, 'field-built.tailFront', '0');
    await type(element, 'field-built.tailRear', '2');
    expect(text(element, 'answer')).to.contain('points 1.5° down. So the plane flies at about 7.0 m/s')
      .and.to.contain('For the plan put 3 cards and 1 sheet of paper (1.6 mm) more under its rear edge: its front edge then points 3° down, and the plane flies at about 5.5 m/s.');
    expect(text(element, 'aside')).to.contain('the tail at −1.5°').and.to.contain('the difference, 1.5°');
    await until(() => element.shadowRoot?.querySelector('svg text'));
    const drawn = (): string[] => [...element.shadowRoot?.querySelectorAll('svg text') ?? []].map((one) => tidy(one.textContent));
    await until(() => drawn().includes('1.5° down'));
    expect(drawn()).to.include('2.0 mm');
    expect(tidy(element.shadowRoot?.querySelector('label[for="field-arrangement.tailIncidence"]')?.textContent)).to.equal('Tail angle, as planned');
  });

  it('puts a balance that lies too far back before any slip', async () => {
    const element = await fixture<GliderTailShim>(html`<glider-tail-shim units="metric" masses="28.5g@15mm" tail-angle="-6°"></glider-tail-shim>`);
    const {first, trim} = studyOf(element);
    expect(trim.ok ? 'glides' : trim.problems[0]?.code).to.equal('trim-stalls');
    expect(text(element, 'answer')).to.match(new RegExp(`^Balance it first: .* ${(1e3 * (first?.outside ?? NaN)).toFixed(0)} mm too far back; put [\\d.]+ g more 15 mm behind the nose`))
      .and.to.contain('only stalls.').and.not.to.contain('lower the rear edge');
    expect(text(element, 'aside')).to.match(/^Balanced like that it/);
    await type(element, 'field-built.tailFront', '0');
    await type(element, 'field-built.tailRear', '1');
    expect(text(element, 'answer')).to.match(/^Balance it first/).and.to.contain('points 0.7° down').and.not.to.contain('For the plan');
    expect(text(element, 'aside')).not.to.contain('Another 1 mm');
    await type(element, 'field-ballast.masses', '60g@15mm');
    expect(text(element, 'answer')).to.match(/^Balance it first: .* \d+ mm too far forward; take [\d.]+ g off the 60 g fitted 15 mm behind the nose/);
  });

  it('keeps its button below what is wrong with the speed, on a line of its own', async () => {
    const box = await fixture<HTMLElement>(html`<div><glider-tail-shim units="metric" masses="31g@15mm" tail-angle="-1.2°"></glider-tail-shim></div>`);
    box.style.inlineSize = '328px';
    const element = there(box.querySelector('glider-tail-shim'));
    await element.updateComplete;
    await type(element, 'speed-wanted', '2');
    const button = there(element.shadowRoot?.querySelector('.fields button')).getBoundingClientRect();
    expect(button.top).to.be.at.least(there(element.shadowRoot?.querySelector('#speed-wanted-problem .problem')).getBoundingClientRect().bottom);
    expect(button.right).to.be.at.most(box.getBoundingClientRect().right);
  });

  it('says at its field, while it is typed, that a speed cannot be', async () => {
    const element = await gliding();
    const button = (): HTMLButtonElement => there(element.shadowRoot?.querySelector<HTMLButtonElement>('.fields button'));
    await type(element, 'speed-wanted', '2');
    expect(tidy(element.shadowRoot?.querySelector('#speed-wanted-problem')?.textContent)).to.contain('it stalls below');
    expect(field(element, 'speed-wanted').getAttribute('aria-invalid')).to.equal('true');
    expect(button().disabled).to.equal(true);
    await type(element, 'speed-wanted', '7');
    expect(tidy(element.shadowRoot?.querySelector('#speed-wanted-problem')?.textContent)).to.equal('');
    expect(button().disabled).to.equal(false);
  });

  it('sets the angle from a speed', async () => {
    const element = await gliding();
    await type(element, 'speed-wanted', '7');
    there(element.shadowRoot?.querySelector<HTMLButtonElement>('.fields button')).click();
    await element.updateComplete;
    const {trim} = studyOf(element);
    expect(trim.ok ? trim.value.glide.speed : NaN).to.be.closeTo(7, 0.01);
  });

  it('puts slips under the wing the same way', async () => {
    const element = await fixture<GliderTailShim>(html`<glider-tail-shim units="metric" under="wing" wing-angle="2°" masses="29g@15mm"></glider-tail-shim>`);
    expect(text(element, 'answer')).to.contain('under the front edge of the wing').and.to.contain('2° up');
    await choose(element, 'surface', 'tail');
    expect(studyOf(element).surface).to.equal('tail');
  });

  it('tells of a plane that does not glide what it needs', async () => {
    const element = await fixture<GliderTailShim>(html`<glider-tail-shim units="metric"></glider-tail-shim>`);
    expect(text(element, 'answer')).to.match(/^Balance it first: .* too far back; put \d+ g 15 mm behind the nose\./).and.to.contain('As it is it holds no speed with any slip');
    await type(element, 'field-ballast.masses', '31g@15mm');
    await type(element, 'field-arrangement.tailIncidence', '3');
    expect(text(element, 'answer')).to.match(/only dives: for a flat glide with speed to spare raise the rear edge of the tailplane by [\d.]+ mm more/);
    await type(element, 'field-arrangement.tailIncidence', '-10');
    expect(text(element, 'answer')).to.match(/only stalls: for a flat glide with speed to spare lower the rear edge of the tailplane by [\d.]+ mm/);
  });

  it('keeps the last answer greyed while an entry is wrong, and says what is wrong with it', async () => {
    const element = await gliding();
    const before = text(element, 'answer');
    await type(element, 'field-arrangement.tailIncidence', 'steep');
    expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(true);
    expect(text(element, 'answer')).to.equal(before);
    await type(element, 'field-arrangement.tailIncidence', '-1.2');
    await type(element, 'slip-width', 'wide');
    expect(field(element, 'slip-width').getAttribute('aria-invalid')).to.equal('true');
    expect(tidy(element.shadowRoot?.querySelector('#slip-width-problem')?.textContent)).to.not.equal('');
    await type(element, 'slip-width', '150');
    expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(true);
    await type(element, 'slip-width', '');
    expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale')).to.equal(false);
    expect(element.shadowRoot?.textContent).to.not.match(/NaN|Infinity|undefined/);
  });

  it('sets the design of the page, where other elements hear of it', async () => {
    const page = await fixture(html`<div><glider-design id="gull" units="metric" ballast-masses="29g@15mm"></glider-design><glider-tail-shim design="gull"></glider-tail-shim></div>`);
    const element = there(page.querySelector('glider-tail-shim'));
    await element.updateComplete;
    await choose(element, 'stack-cards', '3');
    expect(angle(element)).to.be.lessThan(-1);
  });

  it('steps its angle by the keys', async () => {
    const element = await gliding();
    field(element, 'field-arrangement.tailIncidence').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(angle(element)).to.be.closeTo(-0.5, 1e-9);
  });

  it('draws the board on its slips, touching where it says', async () => {
    const element = await gliding();
    await until(() => element.shadowRoot?.querySelector('svg text'));
    const svg = there(element.shadowRoot?.querySelector('svg'));
    expect([...svg.querySelectorAll('text')].map((one) => tidy(one.textContent))).to.include.members(['front', '1.2° down', '78 mm']);
    expect(svg.getAttribute('aria-label')).to.contain('Side view of the tailplane');
    const contact = [...svg.querySelectorAll('circle')].find((one) => Number(one.getAttribute('cx')) > 1);
    // on the lower face of the board
    expect(-Number(contact?.getAttribute('cy')) / Number(contact?.getAttribute('cx'))).to.be.closeTo(Math.tan(1.2 * Math.PI / 180), 1e-3);
  });

  it('is accessible, with everything open and something wrong', async () => {
    const element = await gliding();
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await until(() => element.shadowRoot?.querySelector('.working math'));
    expect(tidy(element.shadowRoot?.querySelector('.working')?.textContent)).to.contain('Plane trigonometry');
    await type(element, 'slip-width', 'wide');
    await expect(element).to.be.accessible();
  });
});
