import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderFlightCheck} from '../../../src/components/flight-check/define.js';
import {callsOf} from '../../../src/calc/flight/calls.js';
import type {FlightCheck} from '../../../src/calc/flight/flight-check.js';
import '../../../src/components/flight-check/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const node = (element: GliderFlightCheck, selector: string): Element => there(element.shadowRoot?.querySelector(selector));
const text = (element: GliderFlightCheck, selector: string): string => tidy(element.shadowRoot?.querySelector(selector)?.textContent);
const field = (element: GliderFlightCheck, path: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(`[id="field-${path}"]`));
const measure = (element: GliderFlightCheck, id: string): string => text(element, `[data-measure=${id}]`);

function checkOf(element: GliderFlightCheck): FlightCheck {
  const {result} = element;
  if (!result.ok || result.value === 'waiting') throw new Error('no check');
  return result.value;
}

async function type(element: GliderFlightCheck, path: string, written: string): Promise<void> {
  const input = field(element, path);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

async function drawn(element: GliderFlightCheck): Promise<SVGSVGElement> {
  await until(() => element.shadowRoot?.querySelector('.sheet > svg text'));
  return there(element.shadowRoot?.querySelector<SVGSVGElement>('.sheet > svg'));
}

async function openAll(element: GliderFlightCheck): Promise<void> {
  for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
  await until(() => element.shadowRoot?.querySelector('.working table'));
}

/** The default glider with the weight at its nose that steadies it, and its tail set to hold the nose up. */
const steady = () => fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" masses="31g@10mm" tail-incidence="-2.5deg"></glider-flight-check>`);

const clean = (element: GliderFlightCheck): void => { expect(element.shadowRoot?.textContent).not.to.match(/NaN|Infinity|undefined|\[object/); };

describe('<glider-flight-check>', () => {
  it('says at once that it is working the flight out, and then how the plane flies', async () => {
    const element = document.createElement('glider-flight-check');
    element.setAttribute('masses', '31g@10mm');
    element.setAttribute('tail-incidence', '-2deg');
    element.setAttribute('units', 'metric');
    expect(element.result.ok && element.result.value).to.equal('waiting');
    document.body.append(element);
    await element.updateComplete;
    const {trim} = checkOf(element);
    if (!trim.ok) throw new Error('no trim');
    const {angle, speed} = trim.value.glide, spot = element.state.design.launch.height / Math.tan(angle);
    expect(text(element, '[part=answer]')).to.contain(
      `It will fly: throw it at about ${speed.toFixed(1)} m/s, ${(angle * 180 / Math.PI).toFixed(0)}° below level, aimed at the ground ${spot.toFixed(0)} m ahead, and it glides`);
    clean(element);
    element.remove();
  });

  it('gives the default, tail-heavy without its weight, a remedy and no speed', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric"></glider-flight-check>`);
    const {plane, first} = checkOf(element);
    const answer = text(element, '[part=answer]');
    expect(answer).to.contain(`balances ${String(Math.round(-plane.margin * plane.aero.shape.wing.meanAerodynamicChord * 1000))} mm behind its neutral point`);
    expect(answer).to.contain(`Balance it first: it balances ${String(Math.round(plane.balance * 1000))} mm behind`);
    expect(answer).to.contain(`put ${String((first?.weights?.on?.mass ?? NaN) * 1000)} g 15 mm behind the nose.`).and.to.contain('will not steady itself').and.not.to.contain('It will fly');
    expect(element.shadowRoot?.querySelector('.sheet')).to.equal(null);
    expect(element.shadowRoot?.querySelector('[data-measure=speed]')).to.equal(null);
    expect(measure(element, 'balance')).to.contain('Further back than wanted').and.to.contain('add weight to the nose');
    clean(element);
  });

  it('flies once the weight that it asks for is fitted', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" tail-incidence="-2.5deg"></glider-flight-check>`);
    const asked = /put (\d+) g 15 mm behind the nose/.exec(text(element, '[part=answer]'))?.[1] ?? '';
    await type(element, 'ballast.masses', `${asked} g @ 15 mm`);
    expect(checkOf(element).flight.ok).to.equal(true);
    expect(text(element, '[part=answer]')).not.to.match(/not steady itself|Balance it first/);
  });

  it('tells by how much the tail’s rear edge has to come up where a steady plane would dive, and then it does not', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" masses="36g@10mm"></glider-flight-check>`);
    const answer = text(element, '[part=answer]');
    expect(answer).to.contain('it would dive: raise the tail’s rear edge about');
    const rise = Number(/about ([\d.]+) mm/.exec(answer)?.[1]);
    await type(element, 'arrangement.tailIncidence', String(-Math.asin(rise / 78) * 180 / Math.PI));
    const {trim, flight} = checkOf(element);
    expect(trim.ok && flight.ok && Math.abs(trim.value.glide.speed / flight.value.advised.speed - 1)).to.be.below(0.05);
    // what it advises it does not complain of afterwards
    expect(measure(element, 'stallMargin')).to.contain('Usual.');
  });

  it('says beside a weight that no hand could throw it, and the last answer stays', async () => {
    const element = await steady();
    const before = text(element, '[part=answer]');
    await type(element, 'ballast.masses', '9 kg @ 10 mm');
    await until(() => field(element, 'ballast.masses').closest('[part~=field]')?.textContent.includes('no hand does that'));
    expect(text(element, '[part=answer]')).to.equal(before);
    expect(element.result.ok).to.equal(false);
    clean(element);
  });

  it('asks for a slower setting of the tail where the plane flies too fast for a hand', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" masses="30g@10mm"></glider-flight-check>`);
    expect(text(element, '[part=answer]')).to.match(/It will fly, but at about [\d.]+ m\/s, faster than it has to: raise the tail’s rear edge about [\d.]+ mm/).and.to.match(/Then it glides about .* As it is it sinks [\d.]+ to/);
    expect(measure(element, 'speed')).to.contain('More than usual').and.to.contain('raise the tail’s rear edge');
  });

  it('asks for a faster setting where the plane flies close to its stall, as the advice after a throw does', async () => {
    const element = await steady(), {flight} = checkOf(element);
    expect([...callsOf(there(flight.ok ? flight.value : undefined))]).to.deep.equal(['faster']);
    expect(text(element, '[part=answer]')).to.match(/It will fly, but at about [\d.]+ m\/s, close to its stall: lower the tail’s rear edge about [\d.]+ mm/);
    expect(measure(element, 'stallMargin')).to.contain('Less than usual');
    await type(element, 'arrangement.tailIncidence', '-2');
    expect(text(element, '[part=answer]')).to.match(/It will fly: throw it/);
  });

  it('does not ask a heavy plane for a slower tail that would bring it too close to its stall', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" mass="200g" balance="45mm" tail-incidence="-2deg"></glider-flight-check>`);
    expect(text(element, '[part=answer]')).to.contain('close to its stall: lower the tail’s rear edge').and.not.to.contain('raise the tail');
    expect(measure(element, 'speed')).to.contain('More than usual').and.to.contain('make the plane lighter').and.not.to.contain('raise the tail');
  });

  it('puts the balance before the tail where it is out of its target, and says how it flies then', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" masses="25g@15mm" tail-incidence="-4deg"></glider-flight-check>`);
    const {trim, first} = checkOf(element);
    expect(trim.ok ? undefined : trim.problems[0]?.code).to.equal('trim-stalls');
    const answer = text(element, '[part=answer]');
    expect(answer).to.match(/^Balance it first: .* too far back; put [\d.]+ g more 15 mm behind the nose, \d+ g in all\.As it is it would rear up and stall\./);
    expect(answer.indexOf('rear edge')).to.satisfy((at: number) => at < 0 || at > answer.indexOf('Balanced like that'));
    expect(first?.then?.ok).to.equal(true);
    await type(element, 'ballast.masses', '60g@15mm');
    expect(text(element, '[part=answer]')).to.match(/^Balance it first: .* too far forward; take \d+ g off the 60 g fitted 15 mm behind the nose/);
  });

  it('tells the other way where it would stall', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check units="metric" masses="31g@10mm" tail-incidence="-6deg"></glider-flight-check>`);
    expect(text(element, '[part=answer]')).to.contain('rear up and stall: lower the tail’s rear edge about');
    expect(element.shadowRoot?.querySelector('.sheet')).not.to.equal(null);
    clean(element);
  });

  it('shows every number over a ruler, with its range, its standing and what it means', async () => {
    const element = await steady();
    const {measures} = checkOf(element);
    const shown = [...element.shadowRoot?.querySelectorAll<HTMLElement>('[data-measure]') ?? []];
    expect(shown.map(({dataset}) => dataset['measure'])).to.deep.equal(measures.map(({id}) => id));
    for (const one of shown) {
      expect(one.querySelector('.ruler line'), one.dataset['measure']).not.to.equal(null);
      expect(tidy(one.textContent)).to.match(/\((usually|wanted) .+\)/);
    }
    expect(measure(element, 'sink')).to.match(/about 0\.\d to 1\.\d m\/s/);
    expect(measure(element, 'glideRatio')).to.contain('common practice');
    expect(measure(element, 'tailVolume')).to.contain('0.66').and.to.contain('More than usual').and.not.to.contain('common practice').and.not.to.contain('about 0.66');
  });

  it('tells a number inside its range from one outside by the form of its pointer', async () => {
    const element = await steady();
    const pointer = (id: string): readonly (string | null | undefined)[] => {
      const path = node(element, `[data-measure=${id}] .ruler path`);
      return [path.getAttribute('fill'), path.getAttribute('d')];
    };
    expect(pointer('mass')[0]).to.equal('var(--_ink)');
    expect(pointer('tailVolume')[0]).to.equal('var(--_paper)');
    const upright = pointer('tailVolume')[1];
    await type(element, 'tail.span', '500');
    expect(pointer('tailVolume')[1]).not.to.equal(upright);
  });

  it('draws speed and sink with the plane and its throw, named for those who do not see it', async () => {
    const element = await steady();
    const svg = await drawn(element);
    const words = [...svg.querySelectorAll('text')].map(({textContent}) => tidy(textContent));
    expect(words).to.include('throw at').and.to.include('stalls below').and.to.include('flying speed, m/s');
    expect(svg.outerHTML).not.to.match(/NaN|Infinity|undefined/);
    expect(tidy(svg.getAttribute('aria-label'))).to.match(/stalls below about \d\.\d m\/s.*As built it flies at about/);
  });

  it('says whether the wing will hold, as it is and peeled', async () => {
    const element = await steady();
    const {strength, otherwise} = checkOf(element);
    expect(strength.ok && strength.value.holds).to.equal('yes');
    expect(otherwise.ok && otherwise.value.holds).to.equal('perhaps');
    expect(text(element, '[part=strength]')).to.contain('The wing will hold').and.to.contain('peeled off it might fold at the middle');
  });

  it('works it all out in the open', async () => {
    const element = await steady();
    await openAll(element);
    expect(element.shadowRoot?.querySelectorAll('.working math').length).to.be.greaterThan(20);
    const working = text(element, '.working');
    expect(working).to.contain('Stengel').and.to.contain('Drela').and.to.contain('handbook formulas');
    const bending = [...element.shadowRoot?.querySelectorAll('[data-table=bending] tbody tr') ?? []].map((row) => [...row.querySelectorAll('td')].map((cell) => Number(cell.textContent)));
    expect(bending).to.have.length(4);
    // section, trim, phugoid and spiral, each with this plane's own number
    const {trim, motion, plane} = checkOf(element), spoken = [...element.shadowRoot?.querySelectorAll('.working .equation') ?? []].map((one) => tidy(one.getAttribute('aria-label')));
    if (!trim.ok || !motion.ok) throw new Error('no glide');
    const ends = (start: string): string => there(spoken.find((one) => one.startsWith(start))).split(', ').at(-1) ?? '';
    const value = (start: string): number => Number(/[-\d.]+/.exec(ends(start).replace('−', '-'))?.[0]);
    expect(value('angle without lift')).to.be.closeTo(plane.aero.rootSection.zeroLiftAngle * 180 / Math.PI, 0.05);
    expect(value('section’s moment')).to.be.closeTo(plane.aero.rootSection.quarterChordMoment, 5e-4);
    expect(value('angle of attack')).to.be.closeTo(trim.value.glide.setting.attack * 180 / Math.PI, 0.05);
    expect(value('Lanchester’s period')).to.be.closeTo(motion.value.lanchester, 0.05);
    expect(value('spiral criterion')).to.be.closeTo(motion.value.spiralCriterion, 5e-5);
    // the lift that is shown is the sum that is shown
    const [none = NaN, slope = NaN, attack = NaN, whole = NaN] = [...there([...element.shadowRoot?.querySelectorAll('.working .equation') ?? []]
      .find((one) => one.getAttribute('aria-label')?.startsWith('lift coefficient: lift at no angle'))).querySelectorAll('mn')].map((one) => Number(one.textContent.replace('−', '-')));
    expect(none + slope * attack).to.be.closeTo(whole, 0.01);
    // twice the speed is four times the load
    for (const [glide = NaN, fast = NaN] of bending) expect(fast).to.be.closeTo(4 * glide, 2.5);
    clean(element);
  });

  it('works the bending out with the plane’s own numbers, whatever carries it', async () => {
    const element = await steady();
    await openAll(element);
    const numbersOf = (start: string): readonly number[] => {
      const found = [...element.shadowRoot?.querySelectorAll('.working .equation') ?? []].find((one) => one.getAttribute('aria-label')?.startsWith(start));
      // the second side with numbers, and what it comes to
      return [...there(found).querySelectorAll('math:nth-last-of-type(-n+2) mn:not(msup > mn)')].map((one) => Number(/[\d.]+/.exec(tidy(one.textContent))?.[0]));
    };
    for (const [peeled, joints, parts] of [['none', [], 1], ['none', [{angle: 0.2, at: 0.19}], 3], ['above', [], 3], ['both', [], 6]] as const) {
      const value = `${peeled}, ${String(joints.length)} joints`;
      element.askFor('wing.peeled', peeled);
      element.askFor('wing.joints', joints);
      await element.updateComplete;
      const {strength} = checkOf(element);
      if (!strength.ok) throw new Error('no strength');
      expect(strength.value.weakest.at, value).to.equal(joints[0]?.at ?? 0);
      const {weakest: {takes, glide, fast, chord, bears, reserve}, onWing} = strength.value;
      const [one = NaN, wing = NaN, whole = NaN, byAir = NaN, bends = NaN] = numbersOf('bending moment in the glide');
      expect([one, wing, bends], value).to.deep.equal([1, Math.round(onWing * 1e3), Math.round(glide * 1e3)]);
      expect((one - wing / whole) * byAir, value).to.be.closeTo(bends, 2.5);
      const written = numbersOf('what the board takes'), board = written.at(-1) ?? NaN;
      expect(board, value).to.equal(Math.round(takes.usual * 1e3));
      const [strong = NaN, thick = NaN, wide = NaN] = written;
      expect([thick, wide], value).to.deep.equal([5, Math.round(chord * 1e4) / 10]);
      expect(strong * (parts === 1 ? thick : thick ** 2 / parts) * wide, value).to.be.closeTo(board, 0.02 * board);
      expect(strong, value).to.be.closeTo(bears.usual / (parts === 1 ? 1e3 : 1e6), 5e-3);
      const [above = NaN, below = NaN, times = NaN] = numbersOf('reserve');
      expect([above, below], value).to.deep.equal([board, Math.round(fast * 1e3)]);
      expect(times, value).to.be.closeTo(reserve.usual, 0.05);
      clean(element);
    }
  });

  it('keeps the last good answer, greyed, and says beside the field what is wrong', async () => {
    const element = await steady();
    const before = text(element, '[part=answer]');
    for (const [path, wrong, said] of [
      ['measured.mass', 'abc', 'cannot be read'], ['wing.span', '0', 'at least'], ['arrangement.tailAt', '200', 'in or ahead of the wing'], ['wing.creases', '300mm', 'outside the chord'],
      ['arrangement.tailIncidence', '80', 'at most'],
    ] as const) {
      const kept = field(element, path).value;
      await type(element, path, wrong);
      expect(text(element, '[part=answer]'), wrong).to.equal(before);
      expect(node(element, '[part=answer]').classList.contains('stale'), wrong).to.equal(true);
      expect(text(element, `[id="field-${path}-problem"]`), wrong).to.contain(said);
      expect(element.result.ok, wrong).to.equal(false);
      await type(element, path, kept);
      expect(element.result.ok, `${path} ${kept}`).to.equal(true);
    }
    expect(element.shadowRoot?.querySelector('.stale')).to.equal(null);
    clean(element);
  });

  it('belongs to the page’s design: what changes there changes the answer, and fields here change it for all', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design units="metric" ballast-masses="31g@10mm" arrangement-tail-incidence="-2.5deg"><glider-flight-check></glider-flight-check></glider-design></div>`);
    const element = there(host.querySelector('glider-flight-check')), design = there(host.querySelector('glider-design'));
    await element.updateComplete;
    const before = checkOf(element);
    design.request([{path: 'arrangement.tailIncidence', value: -2 * Math.PI / 180}]);
    await element.updateComplete;
    const after = checkOf(element);
    expect(after.trim.ok && before.trim.ok && after.trim.value.glide.speed > before.trim.value.glide.speed).to.equal(true);
    await type(element, 'arrangement.wingAt', '190');
    expect(design.design.arrangement.wingAt).to.equal(0.19);
  });

  it('speaks to inch readers in their units', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check lang="en-US" masses="31g@10mm" tail-incidence="-2.5deg"></glider-flight-check>`);
    expect(text(element, '[part=answer]')).to.contain('ft/s');
    expect(measure(element, 'wingLoading')).to.contain('oz/ft²');
    expect([...(await drawn(element)).querySelectorAll('text')].map(({textContent}) => textContent)).to.include('flying speed, ft/s');
  });

  it('is worked by keyboard', async () => {
    const element = await steady();
    const speed = (): number => {
      const {trim} = checkOf(element);
      return trim.ok ? trim.value.glide.speed : NaN;
    };
    const before = speed(), angle = element.state.design.arrangement.tailIncidence;
    field(element, 'arrangement.tailIncidence').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.state.design.arrangement.tailIncidence).to.be.greaterThan(angle);
    expect(speed()).to.be.greaterThan(before);
  });

  it('leaves locked dimensions alone, and leaves parts out', async () => {
    const element = await fixture<GliderFlightCheck>(html`<glider-flight-check lock="" hide="picture working"></glider-flight-check>`);
    expect(field(element, 'arrangement.wingAt').disabled).to.equal(true);
    expect(element.shadowRoot?.querySelector('[part=measures]')).to.equal(null);
    expect(element.shadowRoot?.querySelector('[part=working]')).to.equal(null);
  });

  it('is accessible, flying, unstable and in error, with everything open', async () => {
    const element = await steady();
    await drawn(element);
    await openAll(element);
    await expect(element).to.be.accessible();
    await type(element, 'measured.mass', 'abc');
    await expect(element).to.be.accessible();
    await type(element, 'measured.mass', '');
    await type(element, 'ballast.masses', '');
    expect(text(element, '[part=answer]')).to.contain('not steady itself');
    await expect(element).to.be.accessible();
  });
});
