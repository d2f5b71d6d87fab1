import {expect, fixture, html, oneEvent} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {Sight} from '../../../src/calc/trim-advice/seen.js';
import type {GliderDesignElement} from '../../../src/components/design/define.js';
import type {GliderTrimAdvice} from '../../../src/components/trim-advice/define.js';
import type {Advised} from '../../../src/components/trim-advice/told.js';
import type {TrimAdviceDetail} from '../../../src/components/trim-advice/trim-advice.js';
import '../../../src/components/design/define.js';
import '../../../src/components/trim-advice/define.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderTrimAdvice, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

/** What a selector finds, which must be there. */
function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const within = (element: GliderTrimAdvice, selector: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(selector));
const buttons = (element: GliderTrimAdvice): readonly HTMLButtonElement[] => [...element.shadowRoot?.querySelectorAll('button') ?? []];

async function press(element: GliderTrimAdvice, words: string): Promise<void> {
  there(buttons(element).find((one) => tidy(one.textContent) === words)).click();
  await element.updateComplete;
}

async function pick(element: GliderTrimAdvice, what: Sight): Promise<void> {
  within(element, `input[value=${what}]`).click();
  await element.updateComplete;
}

async function type(element: GliderTrimAdvice, id: string, written: string): Promise<void> {
  const input = within(element, `[id="${id}"]`);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

function found(element: GliderTrimAdvice): Advised {
  const {result} = element;
  if (!result.ok) throw new Error(result.problems.map(({code}) => code).join());
  return result.value;
}

const alone = () => fixture<GliderTrimAdvice>(html`<glider-trim-advice units="metric" masses="56g@15mm" tail-angle="-3°"></glider-trim-advice>`);

async function linked(): Promise<{readonly element: GliderTrimAdvice; readonly glider: GliderDesignElement}> {
  const page = await fixture(html`<div><glider-design id="jay" units="metric" ballast-masses="56g@15mm" arrangement-tail-incidence="-3°"></glider-design><glider-trim-advice design="jay"></glider-trim-advice></div>`);
  const element = there(page.querySelector('glider-trim-advice'));
  await element.updateComplete;
  return {element, glider: there(page.querySelector('glider-design'))};
}

describe('<glider-trim-advice>', () => {
  it('asks for a throw first, and warns before it', async () => {
    const element = await alone();
    expect(text(element, 'answer')).to.contain('Throw it straight ahead into still air, then say below what it did');
    expect(element.shadowRoot?.querySelectorAll('input[type=radio]')).to.have.length(10);
    expect(tidy(within(element, '.caution').textContent)).to.contain('away from faces, eyes').and.to.contain('nose weight is held fast').and.to.contain('supervision');
    expect(found(element).advice).to.equal(undefined);
    expect(buttons(element)).to.have.length(0);
  });

  it('answers a sight with what to try first in this glider’s numbers, and lists every cause in order', async () => {
    const element = await alone();
    await pick(element, 'dives');
    const advice = there(found(element).advice);
    const first = there(advice.first);
    if (first.change.id !== 'nose-off') throw new Error(first.change.id);
    const {mass} = first.change;
    expect(text(element, 'answer')).to.contain(`Try this first: take ${String(mass * 1e3)} g off the weight 15 mm behind the nose`);
    const items = [...element.shadowRoot?.querySelectorAll('.causes > li') ?? []].map((one) => tidy(one.textContent));
    expect(items).to.have.length(advice.causes.length);
    expect(items[0]).to.match(/^A heavy nose/);
    expect(items.join(' ')).to.contain('raise the rear edge of the tailplane by').and.to.contain('balance and tail').and.to.contain('the throw').and.to.contain('how it is built');
  });

  it('speaks of every sight without a gap', async () => {
    const element = await alone();
    for (const {value} of element.shadowRoot?.querySelectorAll<HTMLInputElement>('input[type=radio]') ?? []) {
      await pick(element, value as Sight);
      expect(text(element, 'answer'), value).to.match(value === 'good' ? /^Throw it again just as it is/ : /^Try this first/);
      expect(element.shadowRoot?.textContent, value).not.to.match(/NaN|Infinity|undefined|—|\*\*/);
    }
  });

  it('makes the change in the design of the page, keeps the thread, and takes it back', async () => {
    const {element, glider} = await linked();
    await pick(element, 'dives');
    const {advice} = found(element);
    const change = there(advice?.first?.change);
    const before = glider.design.ballast.masses;
    setTimeout(() => { void press(element, 'I changed it'); });
    const {detail} = await oneEvent<CustomEvent<TrimAdviceDetail>>(element, 'glider-trim-advice');
    expect(detail.thread).to.deep.equal([{seen: {what: 'dives'}, changed: change.id}]);
    await element.updateComplete;
    expect(glider.design.ballast.masses).to.deep.equal(change.values?.['ballast.masses']);
    expect(glider.design.ballast.masses).not.to.deep.equal(before);
    expect(text(element, 'answer')).to.match(/^Now throw it again .* Changed: take .* g off/);
    expect(text(element, 'thread')).to.match(/dived at once → take .* g off/);
    expect(element.shadowRoot?.querySelector('input:checked')).to.equal(null);
    await press(element, 'Take back the last');
    expect(glider.design.ballast.masses).to.deep.equal(before);
    expect(element.thread).to.deep.equal([]);
    expect(within(element, 'input:checked').value).to.equal('dives');
  });

  it('lets any other cause be mended instead, and takes a smaller step back after one too many', async () => {
    const {element, glider} = await linked();
    await pick(element, 'dives');
    const slips = there(buttons(element).find((one) => one.getAttribute('aria-label')?.startsWith('I did this: raise the rear edge') === true));
    slips.click();
    await element.updateComplete;
    expect(glider.design.arrangement.tailIncidence * 180 / Math.PI).to.be.lessThan(-3);
    await pick(element, 'swoops');
    expect(found(element).advice?.because).to.equal('overshot');
    expect(text(element, 'aside')).to.contain('half as large');
  });

  it('says when to stop: after two good glides in a row', async () => {
    const element = await alone();
    await pick(element, 'good');
    expect(text(element, 'answer')).to.contain('two in a row are not');
    await press(element, 'Next throw, nothing changed');
    expect(text(element, 'answer')).to.contain('again, just as it is');
    await pick(element, 'good');
    expect(text(element, 'answer')).to.match(/^Stop changing it/);
    expect(buttons(element).map((one) => tidy(one.textContent))).to.deep.equal(['Take back the last', 'Start over']);
    await press(element, 'Start over');
    expect(element.thread).to.deep.equal([]);
  });

  it('changes nothing where the same plane flew otherwise', async () => {
    const element = await alone();
    await pick(element, 'zooms');
    await press(element, 'Next throw, nothing changed');
    await pick(element, 'dives');
    expect(text(element, 'answer')).to.contain('Change nothing until it does the same twice');
    expect(buttons(element).some((one) => tidy(one.textContent) === 'I changed it')).to.equal(false);
  });

  it('refuses a balance behind the limit before anything else, with the weight that mends it', async () => {
    const element = await fixture<GliderTrimAdvice>(html`<glider-trim-advice units="metric" seen="swoops"></glider-trim-advice>`);
    expect(element.result.ok).to.equal(false);
    expect(tidy(element.shadowRoot?.textContent)).to.match(/It balances too far back to be trimmed: .* First fasten [\d.]+ g more/);
    expect(text(element, 'causes')).to.equal('');
    await press(element, 'I fastened it');
    expect(element.result.ok).to.equal(true);
    expect(element.state.design.ballast.masses).to.have.length(1);
    expect(text(element, 'answer')).to.match(/^Try this first/);
  });

  it('uses what was measured, and says beside a field what cannot be', async () => {
    const element = await alone();
    await pick(element, 'drops');
    await type(element, 'seen-distance', 'far');
    expect(tidy(within(element, '#seen-distance-problem').textContent)).to.not.equal('');
    await type(element, 'seen-distance', '4.5');
    await type(element, 'seen-time', '1.1');
    expect(there(found(element).advice).seen).to.deep.equal({what: 'drops', distance: 4.5, time: 1.1});
    expect(text(element, 'causes')).to.match(/Distance and time (do not )?fit/);
    await type(element, 'seen-time', '-3');
    expect(within(element, '#seen-time').getAttribute('aria-invalid')).to.equal('true');
    await type(element, 'seen-time', '0.06');
    expect(within(element, '.answer').classList.contains('stale')).to.equal(true);
    expect(tidy(element.shadowRoot?.textContent)).to.contain('faster than any hand throws');
    expect(element.shadowRoot?.textContent).not.to.match(/NaN|Infinity|undefined/);
    await type(element, 'seen-time', '1.1');
    await press(element, 'Next throw, nothing changed');
    expect(text(element, 'thread')).to.contain('dropped flat, flew 4.5 m, for 1.1 s → Nothing changed');
    expect(within(element, '#seen-distance').value).to.equal('');
  });

  it('keeps the last answer greyed while an entry is wrong', async () => {
    const element = await alone();
    await pick(element, 'swoops');
    const before = text(element, 'answer');
    await type(element, 'field-launch.wind', 'brisk');
    expect(within(element, '.answer').classList.contains('stale')).to.equal(true);
    expect(text(element, 'answer')).to.equal(before);
  });

  it('changes nothing in a design that is locked, but keeps the thread', async () => {
    const element = await fixture<GliderTrimAdvice>(html`<glider-trim-advice units="metric" masses="56g@15mm" tail-angle="-3°" lock="ballast.masses" seen="dives"></glider-trim-advice>`);
    const {design} = element.state;
    await press(element, 'I changed it');
    expect(element.state.design).to.equal(design);
    expect(element.thread).to.have.length(1);
  });

  it('is picked from by the keys', async () => {
    const element = await alone();
    within(element, 'input[value=good]').focus();
    await sendKeys({press: 'ArrowDown'});
    await element.updateComplete;
    expect(within(element, 'input:checked').value).to.equal('dives');
    expect(text(element, 'answer')).to.match(/^Try this first/);
  });

  it('gives a thumb room, and draws what each word means', async () => {
    const element = await alone();
    for (let i = 0; i < 100 && element.shadowRoot?.querySelectorAll('svg path').length === 0; i++) await new Promise((resolve) => { setTimeout(resolve, 30); });
    for (const one of element.shadowRoot?.querySelectorAll('.sight') ?? []) {
      const {width, height} = one.getBoundingClientRect();
      expect(Math.min(width, height)).to.be.at.least(44);
      expect(one.querySelectorAll('svg > :not(pattern)').length).to.be.at.least(3);
    }
    await pick(element, 'left');
    for (const one of buttons(element)) expect(one.getBoundingClientRect().height).to.be.at.least(44);
  });

  it('speaks ounces and feet', async () => {
    const element = await fixture<GliderTrimAdvice>(html`<glider-trim-advice units="inch" masses="56g@15mm" tail-angle="-3°" seen="dives"></glider-trim-advice>`);
    expect(text(element, 'answer')).to.match(/take 0\.\d\d oz off the weight [\d/]+ in behind the nose/);
    await type(element, 'seen-distance', '20');
    expect(there(found(element).advice).seen.distance).to.be.closeTo(20 * 0.3048, 1e-9);
  });

  it('speaks German', async () => {
    const element = await fixture<GliderTrimAdvice>(html`<glider-trim-advice lang="de" units="metric" masses="56g@15mm" tail-angle="-3°" seen="dives"></glider-trim-advice>`);
    await element.updateComplete;
    expect(text(element, 'answer')).to.match(/^Zuerst das versuchen: vom Ballast 15 mm hinter der Nase .* g abnehmen/);
    expect(text(element, 'causes')).to.contain('Schwerpunkt und Leitwerk');
  });

  it('is accessible, with everything open, a thread and something wrong', async () => {
    const element = await alone();
    await pick(element, 'zooms');
    await press(element, 'I changed it');
    await pick(element, 'left');
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    for (let i = 0; i < 100 && !element.shadowRoot?.querySelector('.working math'); i++) await new Promise((resolve) => { setTimeout(resolve, 30); });
    expect(tidy(within(element, '.working').textContent)).to.contain('Static margin').and.to.contain('common practice, no source');
    await type(element, 'seen-time', 'long');
    await expect(element).to.be.accessible();
  });
});
