import {expect, fixture, html} from '@open-wc/testing';
import {sendKeys} from '@web/test-runner-commands';
import type {GliderDihedralAngle} from '../../../src/components/dihedral-angle/define.js';
import '../../../src/components/dihedral-angle/define.js';
import '../../../src/components/design/define.js';
import {until} from '../../until.js';

const plain = (words: string | null | undefined): string => (words ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const text = (element: GliderDihedralAngle, part: string): string => plain(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);

function field(element: GliderDihedralAngle, path: string): HTMLInputElement | HTMLSelectElement {
  const input = element.shadowRoot?.querySelector<HTMLInputElement | HTMLSelectElement>(`[id="field-${path}"]`);
  if (!input) throw new Error(`no field for ${path}`);
  return input;
}

async function type(element: GliderDihedralAngle, path: string, written: string): Promise<void> {
  const input = field(element, path);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  await element.updateComplete;
}

async function choose(element: GliderDihedralAngle, path: string, choice: string): Promise<void> {
  const select = field(element, path);
  select.value = choice;
  select.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

async function openWorking(element: GliderDihedralAngle): Promise<void> {
  for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
  await until(() => element.shadowRoot?.querySelector('table'));
  await element.updateComplete;
}

const firstJoint = ({result}: GliderDihedralAngle) => {
  const joint = result.ok ? result.value.dihedral.joints[0] : undefined;
  if (!joint) throw new Error('no answer');
  return joint;
};

describe('<glider-dihedral-angle>', () => {
  it('warns of blade and glue without its working, its picture and its fields, and not of a wing without a joint', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle lang="en" units="metric" hide="working picture question"></glider-dihedral-angle>`);
    const caution = (): string => element.shadowRoot?.querySelector('.caution')?.textContent ?? '';
    expect(caution()).to.match(/Hot glue burns.*cut away from your fingers.*supervises/);
    element.joints = '';
    await element.updateComplete;
    expect(element.result.ok).to.equal(true);
    expect(caution()).to.equal('');
  });

  it('answers from its own attributes: a 190 mm panel at 12° needs a block of 190 sin 12°', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm"></glider-dihedral-angle>`);
    expect(firstJoint(element).block).to.be.closeTo(0.19 * Math.sin(Math.PI / 15), 1e-12);
    expect(text(element, 'answer')).to.contain('a block 39.5 mm high under its end: the tip panel rises 12°.');
  });

  it('goes back from a block at hand to the angle', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="0° @ 130 mm" by="block" blocks="38 mm"></glider-dihedral-angle>`);
    expect(firstJoint(element).angle).to.be.closeTo(Math.asin(0.2), 1e-12);
    expect(text(element, 'answer')).to.contain('rises 11.5°');
  });

  it('finds where a block at hand must stand', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm" by="place" blocks="20 mm"></glider-dihedral-angle>`);
    expect(firstJoint(element).place.fromJoint).to.be.closeTo(0.02 / Math.tan(Math.PI / 15), 1e-12);
    expect(text(element, 'answer')).to.contain('94 mm from the joint');
  });

  it('tells one half of a V flat on the bench from both tips propped', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="5° @ 0 mm"></glider-dihedral-angle>`);
    expect(text(element, 'answer')).to.contain('Lay one half flat').and.to.contain('55.5 mm').and.to.contain('a fold of 10° in all');
    await choose(element, 'wing.vPropped', 'both');
    expect(text(element, 'answer')).to.contain('Prop both halves alike').and.to.contain('28 mm');
  });

  it('leaves the wing as it is when a reader starts from something else', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="4° @ 60 mm; 9° @ 200 mm"></glider-dihedral-angle>`);
    const angles = (): readonly number[] => (element.result.ok ? element.result.value.dihedral.joints.map(({angle}) => Math.round(angle * 1e9) / 1e9) : []);
    const before = angles();
    await choose(element, 'wing.dihedralBy', 'block');
    expect(angles()).to.deep.equal(before);
    await type(element, 'wing.blocks.1.height', '30');
    const steeper = angles();
    expect(steeper[1]).to.be.above(before[1] ?? NaN);
    await choose(element, 'wing.dihedralBy', 'angle');
    expect(angles()).to.deep.equal(steeper);
  });

  it('adds a joint on each side and takes one away', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="9° @ 200 mm"></glider-dihedral-angle>`);
    const [add, remove] = element.shadowRoot?.querySelectorAll('button') ?? [];
    add?.click();
    await element.updateComplete;
    expect(element.state.design.wing.joints).to.have.length(2);
    expect(text(element, 'answer')).to.contain('Work from the tips inwards');
    remove?.click();
    remove?.click();
    await element.updateComplete;
    expect(text(element, 'answer')).to.equal('This wing is flat: it has no dihedral joint yet.');
  });

  it('props nothing where nothing is to rise', async () => {
    for (const joints of ['0° @ 130 mm', '0° @ 0 mm']) {
      const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints=${joints}></glider-dihedral-angle>`);
      expect(text(element, 'answer'), joints).to.contain('nothing is propped there').and.not.to.match(/block|groove|slit/i);
    }
  });

  it('says where a cambered skin must be slit, and not on a flat wing', async () => {
    const cambered = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle creases="48 mm"></glider-dihedral-angle>`);
    expect(text(cambered, 'aside')).to.contain('wider at the crest of the camber (see the working), where the hinge skin has to be slit');
    await openWorking(cambered);
    expect(text(cambered, 'working')).to.match(/Groove at the crest, at least\s*2 mm/);
    const flat = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle creases=""></glider-dihedral-angle>`);
    expect(text(flat, 'aside')).to.contain('The groove must be').and.not.to.contain('slit');
  });

  it('shows a block that is pushed out too far, and says so', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="0° @ 130 mm" by="block" blocks="60 mm" place="bench" from-joint="188 mm"></glider-dihedral-angle>`);
    expect(text(element, 'answer')).to.contain('too far out');
    await type(element, 'wing.blockFromJoint', '200');
    expect(text(element, 'answer')).to.contain('clear');
  });

  it('keeps the last good answer, greyed, and says beside the field what is wrong', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm"></glider-dihedral-angle>`);
    const before = text(element, 'answer');
    for (const [path, written, said] of [
      ['wing.joints.0.angle', 'abc', 'cannot be read'], ['wing.joints.0.angle', '-3', 'at least'], ['wing.joints.0.angle', '', 'Nothing is written'],
      ['wing.joints.0.at', '1e9 mm', 'at most'], ['wing.joints.0.at', '400', 'beyond the tip'],
    ] as const) {
      await type(element, path, written);
      expect(text(element, 'answer'), written).to.equal(before);
      expect(element.shadowRoot?.querySelector('.answer')?.classList.contains('stale'), written).to.equal(true);
      expect(plain(element.shadowRoot?.querySelector(`[id="field-${path}-problem"]`)?.textContent), written).to.contain(said);
      expect(field(element, path).value, written).to.equal(written);
      await type(element, path, path.endsWith('at') ? '130' : '12');
    }
    expect(element.shadowRoot?.querySelector('.stale')).to.equal(null);
  });

  it('names a clash beside the number it is about, not beside its neighbour', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm"></glider-dihedral-angle>`);
    await type(element, 'wing.joints.0.at', '400');
    expect(plain(element.shadowRoot?.querySelector('[id="field-wing.joints.0.at-problem"]')?.textContent)).to.contain('beyond the tip');
    expect(plain(element.shadowRoot?.querySelector('[id="field-wing.joints.0.angle-problem"]')?.textContent)).to.equal('');
  });

  it('steps by keyboard and tells the page of it', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle joints="12° @ 130 mm"></glider-dihedral-angle>`);
    let changes = 0;
    element.addEventListener('change', () => { changes++; });
    field(element, 'wing.joints.0.angle').focus();
    await sendKeys({press: 'ArrowUp'});
    await element.updateComplete;
    expect(element.state.design.wing.joints[0]?.angle).to.be.closeTo(12.5 * Math.PI / 180, 1e-12);
    expect(changes).to.equal(1);
  });

  it('asks the page’s design when it belongs to one', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design wing-span="700 mm" wing-joints="8° @ 150 mm"><glider-dihedral-angle></glider-dihedral-angle></glider-design></div>`);
    const element = host.querySelector('glider-dihedral-angle');
    const design = host.querySelector('glider-design');
    if (!element || !design) throw new Error('no element');
    await element.updateComplete;
    expect(firstJoint(element).block).to.be.closeTo(0.2 * Math.sin(8 * Math.PI / 180), 1e-12);
    await type(element, 'wing.span', '720');
    expect(design.design.wing.span).to.equal(0.72);
  });

  it('lets a reader change nothing that its author locked', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle lock=""></glider-dihedral-angle>`);
    expect([...element.shadowRoot?.querySelectorAll('input, select') ?? []].every((input) => (input as HTMLInputElement).disabled)).to.equal(true);
    expect(element.shadowRoot?.querySelector('button')).to.equal(null);
  });

  it('writes a working without gaps for every cut and every place', async () => {
    for (const face of ['closing', 'opening']) {
      for (const place of ['edge', 'inset', 'bench', 'plumb']) {
        for (const joints of ['12° @ 150 mm', '5° @ 0 mm', '4° @ 60 mm; 9° @ 200 mm']) {
          const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle face=${face} place=${place} joints=${joints}></glider-dihedral-angle>`);
          await openWorking(element);
          const working = text(element, 'working');
          expect(working, `${face} ${place} ${joints}`).to.contain('sin').and.not.to.match(/NaN|Infinity|undefined|—/);
        }
      }
    }
  });

  it('is accessible, at rest and in error, with its working open', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle joints="4° @ 60 mm; 9° @ 200 mm"></glider-dihedral-angle>`);
    await openWorking(element);
    await expect(element).to.be.accessible();
    await type(element, 'wing.joints.0.angle', 'abc');
    await expect(element).to.be.accessible();
  });

  it('draws the bench once it is seen, with a handle for each joint and two for each block', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm"></glider-dihedral-angle>`);
    const svg = element.shadowRoot?.querySelector('svg');
    await until(() => element.shadowRoot?.querySelector('.handle'));
    const words = [...svg?.querySelectorAll('text') ?? []].map((t) => plain(t.textContent));
    expect(words).to.include('190 mm').and.to.include('39.5 mm').and.to.include('12°');
    expect(svg?.outerHTML).to.not.match(/NaN|Infinity|undefined/);
    expect([...element.shadowRoot?.querySelectorAll<HTMLElement>('.handle') ?? []].map(({dataset}) => dataset['key'])).to.deep.equal(['joint-0', 'place-0', 'block-0']);
  });

  it('follows a pointer that takes the top of the block', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle span="640 mm" joints="12° @ 130 mm"></glider-dihedral-angle>`);
    await until(() => element.shadowRoot?.querySelector('.handle'));
    const handle = element.shadowRoot?.querySelector<HTMLElement>('[data-key="block-0"]');
    if (!handle) throw new Error('no handle');
    handle.setPointerCapture = () => undefined;
    const {left, top, width, height} = handle.getBoundingClientRect();
    const at = {clientX: left + width / 2, clientY: top + height / 2, button: 0, pointerId: 1, bubbles: true};
    handle.dispatchEvent(new PointerEvent('pointerdown', at));
    handle.dispatchEvent(new PointerEvent('pointermove', {...at, clientY: at.clientY - 20}));
    handle.dispatchEvent(new PointerEvent('pointerup', at));
    await element.updateComplete;
    expect(element.state.design.wing.dihedralBy).to.equal('block');
    expect(element.state.design.wing.blocks[0]?.height).to.be.above(0.045);
    expect(firstJoint(element).angle).to.be.above(12.5 * Math.PI / 180);
  });
});
