import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderFlightPath} from '../../../src/components/flight-path/define.js';
import type {ThrowStudy} from '../../../src/calc/flight/simulation/throw-study.js';
import '../../../src/components/flight-path/define.js';
import '../../../src/components/design/define.js';
import {lessonFile} from '../../calc/trim-advice/lesson-glider.js';
import {until} from '../../until.js';

const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderFlightPath, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

/** What a selector finds, which must be there. */
function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

const node = (element: GliderFlightPath, selector: string): Element => there(element.shadowRoot?.querySelector(selector));
const field = (element: GliderFlightPath, id: string): HTMLInputElement => there(element.shadowRoot?.querySelector<HTMLInputElement>(`[id="${id}"]`));

async function type(element: GliderFlightPath, path: string, written: string): Promise<void> {
  const input = field(element, `field-${path}`);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

async function crook(element: GliderFlightPath, cause: 'fin' | 'tip' | 'twist', written: string): Promise<void> {
  const input = field(element, `crooked-${cause}`);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  // what follows turns comes on first need
  await element.updateComplete;
  await until(() => studyOf(element).turn !== undefined || element.crooked === undefined);
  await element.updateComplete;
}

function studyOf(element: GliderFlightPath): ThrowStudy {
  const {result} = element;
  if (!result.ok) throw new Error(result.problems.map(({code}) => code).join());
  return result.value;
}

async function drawn(element: GliderFlightPath): Promise<SVGSVGElement> {
  await until(() => element.shadowRoot?.querySelector('svg text'));
  return there(element.shadowRoot?.querySelector('svg'));
}

const seek = async (element: GliderFlightPath, time: number): Promise<void> => {
  const slider = field(element, 'moment');
  slider.value = String(time);
  slider.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
};

const gliding = () => fixture<GliderFlightPath>(html`<glider-flight-path units="metric" masses="30g@15mm" tail-angle="-1.5°"></glider-flight-path>`);

const pick = ({left, right, top, bottom}: DOMRect): Pick<DOMRect, 'left' | 'right' | 'top' | 'bottom'> => ({left, right, top, bottom});

describe('<glider-flight-path>', () => {
  const asked = window.matchMedia.bind(window);
  /** A reader who has told the system to move less, or not to. */
  const wantsLessMotion = (less: boolean): void => {
    window.matchMedia = (query) => query.includes('reduced-motion') ? Object.assign(new EventTarget(), {matches: less, media: query}) as MediaQueryList : asked(query);
  };
  beforeEach(() => { wantsLessMotion(false); });
  after(() => { window.matchMedia = asked; });

  it('says how fast to throw, where a ball lands that is as fast, and how far the plane then glides', async () => {
    const element = await gliding();
    const {right, ball, flown} = studyOf(element);
    expect(ball).to.be.closeTo(right.speed * Math.sqrt(2 * 1.6 / 9.80665), 1e-9);
    const track = flown.find(({id}) => id === 'right')?.track;
    expect(text(element, 'answer')).to.contain(`Throw it at about ${right.speed.toFixed(1)} m/s`)
      .and.to.contain(`lands ${ball.toFixed(1)} m away`).and.to.contain(`It glides about ${(track?.last.x ?? NaN).toFixed(1)} m in ${(track?.last.time ?? NaN).toFixed(1)} s`);
    expect(text(element, 'aside')).to.contain('Stick tape on the floor').and.to.contain('times as far as it comes down');
    expect(tidy(node(element, '.caution').textContent)).to.contain('away from faces, eyes and roads');
  });

  it('lists every flight with its distance, its time and its height', async () => {
    const element = await gliding();
    const rows = [...element.shadowRoot?.querySelectorAll('.flights tbody tr') ?? []].map((row) => tidy(row.textContent));
    const {flown} = studyOf(element);
    expect(rows).to.have.length(4);
    flown.forEach(({track}, i) => { expect(rows[i]).to.contain(`${track.last.time.toFixed(1)} s`).and.to.contain(`${track.highest.height.toFixed(1)} m`); });
    expect(tidy(node(element, '.why').textContent)).to.contain('it zooms up').and.to.contain('it drops until it is fast enough');
  });

  it('compares balances instead, as the page or the reader says', async () => {
    const element = await fixture<GliderFlightPath>(html`<glider-flight-path units="metric" masses="30g@15mm" tail-angle="-1.5°" compare="balances"></glider-flight-path>`);
    expect(studyOf(element).flown.map(({id}) => id)).to.deep.equal(['nose-heavy', 'right', 'tail-heavy']);
    expect(tidy(node(element, '.flights').textContent)).to.match(/nose-heavy: \d+ g more at the nose/);
    const select = there(element.shadowRoot?.querySelector<HTMLSelectElement>('#compare'));
    let changes = 0;
    element.addEventListener('change', () => { changes++; });
    select.value = 'one';
    select.dispatchEvent(new Event('change', {bubbles: true}));
    await element.updateComplete;
    expect(studyOf(element).flown.map(({id}) => id)).to.deep.equal(['right']);
    expect(changes).to.equal(1);
  });

  it('says in plain words where it hardly goes further than it comes down, and where to aim', async () => {
    const element = await gliding();
    expect(text(element, 'answer')).to.match(/Throw it at about [\d.]+ m\/s, \d+° below level, aimed at the ground \d+ m ahead: as fast as a ball/).and.to.contain('times as far as it comes down');
    const page = await fixture(html`<div><glider-design units="metric" .file=${lessonFile}><glider-flight-path></glider-flight-path></glider-design></div>`);
    const steep = page.querySelector('glider-flight-path');
    if (!steep) throw new Error('not there');
    page.querySelector('glider-design')?.request([{path: 'arrangement.tailIncidence', value: 0}]);
    await steep.updateComplete;
    await until(() => text(steep, 'answer').includes('below level'));
    const {result} = steep;
    expect(result.ok && result.value.trim.ok && result.value.trim.value.glide.ratio.usual).to.be.within(0.5, 1.5);
    expect(text(steep, 'answer')).to.contain('It goes hardly further than it comes down').and.not.to.contain('times as far as it comes down');
  });

  it('throws as the reader types', async () => {
    const element = await gliding();
    await type(element, 'launch.speed', '9');
    await type(element, 'launch.angle', '15');
    expect(text(element, 'answer')).to.contain('Thrown at 9.0 m/s, 15° above level, it flies about').and.to.contain('high at most');
    expect(studyOf(element).flown.at(-1)?.id).to.equal('own');
    await type(element, 'launch.speed', '');
    await type(element, 'launch.angle', '');
    expect(text(element, 'answer')).to.contain('Throw it at about');
  });

  it('draws the throws to scale: as far as they fly', async () => {
    const element = await gliding();
    const svg = await drawn(element);
    const [, , width = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
    expect(width).to.be.greaterThan(1000 * Math.max(...studyOf(element).flown.map(({track}) => track.last.x)));
    expect(svg.getAttribute('aria-label')).to.contain('right').and.to.contain('too fast');
    const words = [...svg.querySelectorAll('text')].map((one) => tidy(one.textContent));
    expect(words.some((word) => word.startsWith('right '))).to.equal(true);
    expect(words).to.include('1 s');
  });

  it('letters the picture without words on words, at any width', async () => {
    for (const [width, compare, crooked] of [
      [300, 'throws', ''], [300, 'balances', ''], [700, 'throws', ''], [1100, 'balances', ''], [300, 'one', '2'], [330, 'throws', '1'], [700, 'throws', '-2'], [1100, 'one', '-4'],
    ] as const) {
      const box = await fixture<HTMLElement>(html`<div></div>`);
      box.style.inlineSize = `${String(width)}px`;
      const element = document.createElement('glider-flight-path');
      Object.assign(element, {units: 'metric', masses: '30g@15mm', tailAngle: '-1.5°', compare});
      box.append(element);
      await element.updateComplete;
      if (crooked) await crook(element, 'twist', crooked);
      const svg = await drawn(element);
      const plates = [...svg.querySelectorAll('text')].map((one) => ({words: tidy(one.textContent), ...pick(one.getBoundingClientRect())}));
      expect(plates.length).to.be.greaterThan(5);
      const frame = svg.getBoundingClientRect();
      plates.forEach((a, i) => {
        expect(a.left, a.words).to.be.greaterThan(frame.left - 4);
        expect(a.right, a.words).to.be.lessThan(frame.right + 4);
        for (const b of plates.slice(i + 1)) {
          const over = Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 4;
          expect(over, `${a.words} on ${b.words} at ${String(width)}`).to.equal(false);
        }
      });
      box.remove();
    }
  });

  it('turns as crooked as it is said to be: in words, in the table and from above, to one scale', async () => {
    const element = await gliding();
    const svg = await drawn(element);
    expect(svg.textContent).not.to.contain('Seen from above');
    await crook(element, 'fin', '8');
    const {turn, flown} = studyOf(element);
    if (!turn?.ok) throw new Error('it turns');
    expect(flown.at(-1)?.id).to.equal('crooked');
    expect(text(element, 'answer')).to.contain('Crooked like that it turns right').and.to.contain(`lands ${turn.value.last.y.toFixed(1)} m to the right`);
    expect(tidy(svg.textContent)).to.contain('Seen from above').and.to.contain('Seen from behind').and.to.contain(`${turn.value.last.y.toFixed(1)} m to the right`);
    expect(svg.getAttribute('aria-label')).to.contain('the turn seen from above');
    const {width: wide} = there(svg.viewBox.baseVal), end = there([...svg.querySelectorAll('circle')].at(-1));
    expect(wide).to.be.greaterThan(1000 * turn.value.last.x);
    expect(Number(end.getAttribute('cx'))).to.be.closeTo(1000 * turn.value.last.x, 1);
    await crook(element, 'fin', '-8');
    expect(text(element, 'answer')).to.contain('Crooked like that it turns left').and.to.contain('to the left');
    await crook(element, 'fin', '');
    expect(studyOf(element).turn).to.equal(undefined);
    expect(tidy(svg.textContent)).not.to.contain('Seen from above');
  });

  it('turns by a heavy tip and by a twisted wing too, and says when it hardly turns, rolls over or glides no more', async () => {
    const element = await gliding();
    await crook(element, 'tip', '0.6');
    expect(text(element, 'answer')).to.contain('turns right so little that it is');
    await crook(element, 'tip', '-3');
    expect(text(element, 'answer')).to.contain('it turns left');
    await crook(element, 'tip', '25');
    expect(text(element, 'answer')).to.match(/it does not glide any more|it rolls over to the right|it turns right/);
    await crook(element, 'tip', '0');
    await crook(element, 'twist', '-8');
    expect(text(element, 'answer')).to.match(/it rolls over to the left|it turns left/);
    await type(element, 'launch.height', '15000');
    expect(text(element, 'answer')).to.contain('it rolls over to the left: straighten it before you throw it');
  });

  it('says that it flies straight on where nobody could read how far aside it lands', async () => {
    const element = await gliding();
    await crook(element, 'twist', '0.01');
    expect(studyOf(element).turn?.ok).to.equal(true);
    expect(text(element, 'answer')).to.contain('Crooked like that it flies straight on');
    const svg = await drawn(element);
    await seek(element, 0.3);
    for (const said of [text(element, 'answer'), svg.getAttribute('aria-label'), svg.textContent, node(element, 'output').textContent]) {
      expect(tidy(said)).to.contain('straight').and.not.to.match(/\b0\.0 m to the|0\.0 m aside/);
    }
  });

  it('moves the plane in both views by the keys, and says its bank', async () => {
    const element = await gliding();
    await crook(element, 'twist', '2');
    const svg = await drawn(element);
    const slider = field(element, 'moment');
    slider.focus();
    for (let i = 0; i < 10; i++) await sendKeys({press: 'ArrowRight'});
    await element.updateComplete;
    const {turn} = studyOf(element);
    if (!turn?.ok) throw new Error('it turns');
    const {x, y, bank} = turn.value.at(0.5);
    expect(tidy(node(element, 'output').textContent)).to.contain(`banked ${(bank * 180 / Math.PI).toFixed(0)}°, ${y.toFixed(1)} m to the right`);
    // a halo in paper in either view, one below the other
    const there = [...svg.querySelectorAll('circle')].filter((one) => one.getAttribute('stroke') === 'none' && Math.abs(Number(one.getAttribute('cx')) - 1000 * x) < 1);
    expect(there).to.have.length.at.least(2);
    expect(tidy(svg.textContent)).to.contain('0.5 s:');
  });

  it('takes what is crooked from the page’s author, and what was measured from the design', async () => {
    const element = await fixture<GliderFlightPath>(html`<glider-flight-path units="metric" masses="30g@15mm" tail-angle="-1.5°" fin-edge="6 mm" twist="-1°"></glider-flight-path>`);
    await crook(element, 'tip', '0');
    expect(field(element, 'crooked-fin').value).to.equal('6');
    expect(element.crooked?.twist).to.be.closeTo(-Math.PI / 180, 1e-12);
    expect(studyOf(element).turn?.ok).to.equal(true);
    element.finEdge = 'six';
    element.twist = undefined;
    await element.updateComplete;
    expect(field(element, 'crooked-twist').value).to.equal('0');
    expect(tidy(node(element, '#crooked-fin-problem').textContent).length).to.be.greaterThan(5);

    const page = await fixture(html`<div><glider-design id="bent" units="metric" ballast-masses="30g@15mm" arrangement-tail-incidence="-1.5°" built-bow="6 mm"></glider-design>
      <glider-flight-path design="bent"></glider-flight-path></div>`);
    const measured = there(page.querySelector('glider-flight-path'));
    await until(() => measured.result.ok && measured.result.value.turn);
    await measured.updateComplete;
    expect(measured.crooked).to.equal(undefined);
    expect(text(measured, 'answer')).to.match(/Crooked like that it turns (left|right)/);
  });

  it('says beside its own fields what no plane is, and goes on with what was typed before', async () => {
    const element = await gliding();
    await crook(element, 'fin', '5');
    const before = text(element, 'answer');
    for (const written of ['400', 'a lot', '1e99']) {
      await crook(element, 'fin', written);
      expect(tidy(node(element, '#crooked-fin-problem').textContent).length).to.be.greaterThan(5);
      expect(text(element, 'answer')).to.equal(before);
    }
    await expect(element).to.be.accessible();
  });

  it('is taken to any moment by the keys, and says where the plane is then', async () => {
    const element = await gliding();
    const svg = await drawn(element);
    const before = svg.querySelectorAll('path').length;
    const slider = field(element, 'moment');
    slider.focus();
    for (let i = 0; i < 8; i++) await sendKeys({press: 'ArrowRight'});
    await element.updateComplete;
    expect(Number(slider.value)).to.be.closeTo(0.4, 1e-9);
    expect(slider.getAttribute('aria-valuetext')).to.equal('0.40\u00a0s');
    const {track} = studyOf(element).flown.find(({id}) => id === 'right') ?? {};
    expect(tidy(node(element, 'output').textContent)).to.contain(`0.40 s: ${(track?.at(0.4).height ?? NaN).toFixed(1)} m up`);
    expect(svg.querySelectorAll('path').length).to.equal(before + 4);
    await seek(element, 99);
    expect(tidy(node(element, 'output').textContent)).to.contain('landed after');
  });

  it('plays on request, and stops', async () => {
    const element = await gliding();
    const button = (): HTMLButtonElement => there(element.shadowRoot?.querySelector<HTMLButtonElement>('.moment button'));
    expect(button().textContent).to.equal('Play');
    await drawn(element);
    const moment = (): number => Number(field(element, 'moment').value);
    // the frames come from here: how many a browser draws in a time is its own affair
    const given = {ask: window.requestAnimationFrame.bind(window), drop: window.cancelAnimationFrame.bind(window)};
    let next: FrameRequestCallback | undefined;
    window.requestAnimationFrame = (frame) => { next = frame; return 1; };
    window.cancelAnimationFrame = () => { next = undefined; };
    const frame = async (at: number): Promise<void> => {
      next?.(at);
      await element.updateComplete;
    };
    try {
      button().click();
      await element.updateComplete;
      expect(button().textContent).to.equal('Pause');
      for (const at of [1000, 1020, 1300]) await frame(at);
      expect(moment(), 'as fast as it flies').to.be.closeTo(0.3, 1e-9);
      expect(button().textContent).to.equal('Pause');
      button().click();
      await frame(1400);
      expect(button().textContent).to.equal('Play');
      expect(moment()).to.be.closeTo(0.3, 1e-9);
      expect(next).to.equal(undefined);
    } finally {
      window.requestAnimationFrame = given.ask;
      window.cancelAnimationFrame = given.drop;
    }
  });

  it('moves nothing by itself where less motion is wanted', async () => {
    wantsLessMotion(true);
    const element = await gliding();
    expect(element.shadowRoot?.querySelector('.moment button')).to.equal(null);
    await seek(element, 0.5);
    expect(tidy(node(element, 'output').textContent)).to.contain('0.50 s');
  });

  it('tells a plane that does not fly what it needs first, and shows what it does', async () => {
    const element = await fixture<GliderFlightPath>(html`<glider-flight-path units="metric"></glider-flight-path>`);
    expect(text(element, 'answer')).to.match(/Balance it first: it balances \d+ mm behind the wing’s front edge, \d+ mm too far back; put \d+ g 15 mm behind the nose\./);
    expect(text(element, 'aside')).to.match(/The picture shows what it does as it is: thrown at [\d.]+ m\/s/);
    expect(studyOf(element).flown).to.have.length(1);
    expect(element.shadowRoot?.querySelector('.why')).to.equal(null);
    await type(element, 'ballast.masses', '30g@15mm');
    await type(element, 'arrangement.tailIncidence', '3');
    expect(text(element, 'answer')).to.match(/it dives: raise the rear edge of the tailplane by [\d.]+ mm/);
    await type(element, 'arrangement.tailIncidence', '-12');
    expect(text(element, 'answer')).to.match(/it stalls: lower the rear edge of the tailplane by [\d.]+ mm/);
  });

  it('puts the balance before the tail and before the throw, whether the plane glides as it is or not', async () => {
    const element = await fixture<GliderFlightPath>(html`<glider-flight-path units="metric" masses="20g@15mm" tail-angle="-1.5°"></glider-flight-path>`);
    expect(text(element, 'answer')).to.match(/^Balance it first: .* too far back; put \d+ g more 15 mm behind the nose, \d+ g in all\./).and.not.to.contain('lower the rear edge');
    await type(element, 'ballast.masses', '60g@15mm');
    await type(element, 'arrangement.tailIncidence', '-8');
    expect(studyOf(element).trim.ok).to.equal(true);
    expect(text(element, 'answer')).to.match(/^Balance it first: .* too far forward; take \d+ g off the 60 g fitted 15 mm behind the nose/).and.not.to.contain('Throw it');
  });

  it('calls no throw right, nor a heavier nose nose-heavy, while the balance is off, though the plane glides', async () => {
    const element = await gliding();
    const said = (): string => tidy([...element.shadowRoot?.querySelectorAll('[part=moment] output, .flights, .why, svg') ?? []].map((one) => `${one.textContent} ${one.getAttribute('aria-label') ?? ''}`).join(' '));
    await drawn(element);
    await seek(element, 0.5);
    expect(said()).to.match(/\bright\b/).and.to.match(/ball/);
    await type(element, 'ballast.masses', '60g@15mm');
    await type(element, 'arrangement.tailIncidence', '-8');
    expect(studyOf(element).trim.ok && studyOf(element).heavy).to.equal('nose');
    await until(() => node(element, 'svg').textContent.includes('as it is'));
    expect(tidy(node(element, '[part=moment] output').textContent)).to.match(/^as it is, 0\.50 s: /);
    expect(said()).not.to.match(/\bright\b|\bball\b/);
    const select = there(element.shadowRoot?.querySelector<HTMLSelectElement>('#compare'));
    select.value = 'balances';
    select.dispatchEvent(new Event('change', {bubbles: true}));
    await element.updateComplete;
    expect(tidy(node(element, '.flights').textContent)).to.match(/heavier nose: \d+ g more at the nose.*as it is.*lighter nose: \d+ g less/).and.not.to.match(/nose-heavy|tail-heavy/);
    expect(element.shadowRoot?.querySelector('.why')).to.equal(null);
    await type(element, 'ballast.masses', '30g@15mm');
    await type(element, 'arrangement.tailIncidence', '-1.5');
    expect(tidy(node(element, '.flights').textContent)).to.match(/nose-heavy: \d+ g more at the nose.*right.*tail-heavy/);
  });

  it('says which way to throw as the flight check does, and calls a dart a dart', async () => {
    const element = await gliding();
    const {right} = studyOf(element), {height} = element.state.design.launch;
    const spot = height / Math.tan(-right.angle);
    expect(text(element, 'answer')).to.contain(`${(-right.angle * 180 / Math.PI).toFixed(0)}° below level, aimed at the ground ${spot.toFixed(0)} m ahead`);
    expect(text(element, 'aside')).not.to.contain('dart');
    await type(element, 'arrangement.tailIncidence', '-0.2');
    expect(studyOf(element).glide.speed).to.be.greaterThan(7);
    expect(text(element, 'aside')).to.match(/more a dart than a glider: raise the tail’s rear edge about [\d.]+ mm first/);
    await type(element, 'arrangement.tailIncidence', '-2.2');
    expect(text(element, 'aside')).to.match(/close to its stall: lower the tail’s rear edge about [\d.]+ mm first/);
  });

  it('sends the reader into the wind, or home until it is calm', async () => {
    const element = await gliding();
    expect(text(element, 'answer')).not.to.contain('wind');
    await type(element, 'launch.wind', '-3');
    expect(text(element, 'answer')).to.contain('The wind comes from behind, at 3.0 m/s: turn round and throw into the wind, or better wait until it is calm.');
    await type(element, 'launch.wind', '3');
    expect(text(element, 'answer')).to.contain('A wind of 3.0 m/s carries it about: better wait until it is calm.');
    await type(element, 'launch.wind', '0.4');
    expect(text(element, 'answer')).not.to.contain('wind');
  });

  it('keeps the last answer greyed, and says beside the field what is wrong', async () => {
    const element = await gliding();
    const before = text(element, 'answer');
    for (const [path, written, said] of [['launch.speed', '-3', 'launch.speed'], ['launch.height', 'tall', 'launch.height'], ['launch.wind', '9', 'launch.wind'], ['launch.speed', '0', 'launch.speed']] as const) {
      await type(element, path, written);
      expect(node(element, '.answer').classList.contains('stale')).to.equal(true);
      expect(text(element, 'answer')).to.equal(before);
      expect(tidy(node(element, `[id="field-${said}-problem"]`).textContent).length).to.be.greaterThan(5);
      await type(element, path, {'launch.speed': '', 'launch.height': '1600', 'launch.wind': '0'}[path]);
      expect(node(element, '.answer').classList.contains('stale')).to.equal(false);
    }
  });

  it('follows the design of the page', async () => {
    const page = await fixture(html`<div><glider-design id="gull" units="metric" ballast-masses="30g@15mm" arrangement-tail-incidence="-1.5°"></glider-design>
      <glider-flight-path design="gull"></glider-flight-path></div>`);
    const element = page.querySelector('glider-flight-path');
    if (!element) throw new Error('not there');
    await element.updateComplete;
    const before = studyOf(element).right.speed;
    page.querySelector('glider-design')?.setAttribute('ballast-masses', '31g@15mm');
    await element.updateComplete;
    await until(() => studyOf(element).right.speed > before);
  });

  it('never writes what is no number', async () => {
    const element = await gliding();
    for (const [path, written] of [['launch.angle', '90'], ['launch.angle', '-90'], ['launch.speed', '40'], ['launch.speed', '0.1'], ['launch.height', '20000'], ['launch.pitch', '45'], ['launch.wind', '-5']] as const) {
      await type(element, path, written);
      await seek(element, 1);
      expect(element.shadowRoot?.textContent).to.not.match(/NaN|Infinity|undefined|\[object/);
      const svg = await drawn(element);
      expect(svg.outerHTML).to.not.match(/NaN|Infinity|undefined/);
    }
  });

  it('shows its working, with this plane’s numbers', async () => {
    const element = await gliding();
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await until(() => element.shadowRoot?.querySelector('.working math'));
    const working = tidy(node(element, '.working').textContent);
    expect(working).to.contain(`${studyOf(element).right.speed.toFixed(1)} m/s`).and.to.contain('Stengel');
  });

  it('is accessible, at rest, in motion and in error', async () => {
    const element = await gliding();
    await drawn(element);
    await seek(element, 0.5);
    await expect(element).to.be.accessible();
    for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
    await type(element, 'launch.speed', 'fast');
    await expect(element).to.be.accessible();
  });

  it('speaks the reader’s units', async () => {
    const element = await fixture<GliderFlightPath>(html`<glider-flight-path units="inch" masses="30g@15mm" tail-angle="-1.5°"></glider-flight-path>`);
    expect(text(element, 'answer')).to.match(/about [\d.]+ ft\/s/).and.to.match(/lands \d+ ft away/);
  });
});
