import {expect, fixture, html, oneEvent} from '@open-wc/testing';
import type {GliderDesignElement, GliderDimensions, GliderValue} from '../../../src/index.js';
import '../../../src/components/design/define.js';
import '../../../src/components/dimensions/define.js';
import '../../../src/components/value/define.js';
import {until} from '../../until.js';

const said = (element: Element): string => (element.shadowRoot?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

describe('<glider-design>', () => {
  it('takes each dimension as an attribute, and its default back when the attribute goes', async () => {
    const element = await fixture<GliderDesignElement>(html`<glider-design wing-span="22 7/8 in" tail-fins-count="1"></glider-design>`);
    expect(element.design.wing.span).to.be.closeTo(0.581025, 1e-12);
    expect(element.design.tail.fins.count).to.equal(1);
    element.removeAttribute('tail-fins-count');
    expect(element.design.tail.fins.count).to.equal(2);
  });

  it('reads an inline file, lets attributes win over it, and shows nothing', async () => {
    const element = await fixture<GliderDesignElement>(html`<glider-design wing-chord="98 mm"><script type="application/json">
      {"glider": 1, "wing": {"span": "540 mm", "chord": "130 mm"}}</script></glider-design>`);
    expect(element.design.wing).to.deep.include({span: 0.54, chord: 0.098});
    expect(element.offsetHeight).to.equal(0);
  });

  it('reads the file at its address; until then, elements keep their author’s text', async () => {
    const fetch = window.fetch.bind(window);
    let arrive: (file: Response) => void = () => undefined;
    window.fetch = () => new Promise((resolve) => { arrive = resolve; });
    try {
      const host = await fixture<HTMLElement>(html`<div><glider-design id="fetched" src="plane.json"></glider-design>
        <glider-value design="fetched" name="wing.span">70 cm</glider-value></div>`);
      const value = host.querySelector('glider-value');
      if (!value) throw new Error('no element');
      await value.updateComplete;
      expect(value.shadowRoot?.querySelector('slot') === null).to.equal(false);
      expect(said(value)).to.not.contain('no design');
      arrive(new Response('{"glider": 1, "wing": {"span": "777 mm"}}'));
      await until(() => said(value).includes('777 mm'));
    } finally { window.fetch = fetch; }
  });

  it('says beside the fields what is wrong with a file, and keeps the glider it had', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design id="broken" wing-span="500 mm"></glider-design><glider-dimensions design="broken" show="wing.span wing.chord"></glider-dimensions></div>`);
    const element = host.querySelector('glider-design');
    const fields = host.querySelector('glider-dimensions');
    if (!element || !fields) throw new Error('no element');
    for (const [file, words] of [
      ['{"glider": 1, "wing": {"span": "40', 'breaks off in the middle'],
      ['{"glider": 7}', 'version 7'],
      ['no file', 'cannot be read as JSON'],
      ['[]', 'holds no glider'],
    ] as const) {
      element.file = file;
      await fields.updateComplete;
      expect(said(fields), file).to.contain(words);
      expect(element.design.wing.span, file).to.equal(0.5);
    }
    element.file = '{"glider": 1, "wing": {"chord": "wide"}}';
    await fields.updateComplete;
    expect(said(fields)).to.contain('“wide” cannot be read');
    expect(fields.shadowRoot?.querySelector<HTMLInputElement>('[id="field-wing.chord"]')?.value).to.equal('wide');
  });

  it('says it when the file cannot be fetched', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-design id="gone" src="/no/such/file.json"></glider-design><glider-dimensions design="gone" show="wing.span"></glider-dimensions></div>`);
    const fields = host.querySelector('glider-dimensions');
    if (!fields) throw new Error('no element');
    await until(() => said(fields).includes('could not be fetched'));
  });

  it('writes a file that another design reads back as the same glider', async () => {
    const one = await fixture<GliderDesignElement>(html`<glider-design wing-joints="4°@0mm 11°@210mm" ballast-masses="8g@12mm 1/8oz@20in" name="Ember"></glider-design>`);
    const two = await fixture<GliderDesignElement>(html`<glider-design></glider-design>`);
    two.file = one.file;
    expect(two.design).to.deep.equal(one.design);
    expect(one.file).to.contain('4°@0mm 11°@210mm');
  });

  it('tells the page of a change that a reader asked for', async () => {
    const element = await fixture<GliderDesignElement>(html`<glider-design></glider-design>`);
    setTimeout(() => { element.request([{path: 'wing.span', value: 0.44}]); });
    const {detail} = await oneEvent<CustomEvent<GliderDesignElement['state']>>(element, 'glider-change');
    expect(detail.design.wing.span).to.equal(0.44);
  });
});

describe('<glider-dimensions>', () => {
  it('shows single dimensions and whole groups, locks what it is told to, and names what does not exist', async () => {
    const element = await fixture<GliderDimensions>(html`<glider-dimensions show="tail.fins wing.span wing.wings" lock="wing.span"></glider-dimensions>`);
    const ids = [...element.shadowRoot?.querySelectorAll('input') ?? []].map((i) => [i.id, i.disabled] as const);
    expect(ids).to.deep.equal([['field-tail.fins.count', false], ['field-tail.fins.height', false], ['field-tail.fins.chord', false], ['field-tail.fins.tipChord', false], ['field-wing.span', true]]);
    expect(said(element)).to.contain('no dimension called “wing.wings”');
  });
  it('keeps what is typed as it is typed, and writes it in the reader’s units once it is left', async () => {
    const element = await fixture<GliderDimensions>(html`<glider-dimensions show="wing.span"></glider-dimensions>`);
    const input = element.shadowRoot?.querySelector('input');
    if (!input) throw new Error('no field');
    input.value = '1½ ft';
    input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    await element.updateComplete;
    expect(input.value).to.equal('1½ ft');
    expect(element.state.design.wing.span).to.be.closeTo(0.4572, 1e-12);
    input.dispatchEvent(new Event('change', {bubbles: true}));
    await element.updateComplete;
    expect(input.value).to.equal('457');
  });
  it('is accessible at rest and in error', async () => {
    const element = await fixture<GliderDimensions>(html`<glider-dimensions show="wing tail"></glider-dimensions>`);
    await expect(element).to.be.accessible();
    const input = element.shadowRoot?.querySelector('input');
    if (!input) throw new Error('no field');
    input.value = 'abc';
    input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    await element.updateComplete;
    await expect(element).to.be.accessible();
  });
});

describe('<glider-value>', () => {
  it('writes a number of its glider in the sentence’s own style', async () => {
    const host = await fixture<HTMLElement>(html`<p>A wing <glider-value name="wing.span">30 cm</glider-value> long</p>`);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    await value.updateComplete;
    expect(said(value)).to.equal('660 mm');
    expect(getComputedStyle(value).display).to.equal('inline');
    expect(getComputedStyle(value).fontSize).to.equal(getComputedStyle(host).fontSize);
  });
  it('writes what follows from the glider, and says so of a name that means nothing', async () => {
    const area = await fixture<GliderValue>(html`<glider-value name="wing.area">?</glider-value>`);
    await until(() => said(area) === '7.92 dm²' || said(area) === '7.9 dm²');
    const none = await fixture<GliderValue>(html`<glider-value name="wing.colour">blue</glider-value>`);
    await until(() => said(none).includes('no value called “wing.colour”'));
    expect(none.textContent).to.equal('blue');
  });
  it('can be changed in place, keeps a bad entry and says what is wrong with it', async () => {
    const host = await fixture<HTMLElement>(html`<p><glider-design id="inplace"></glider-design><glider-value design="inplace" name="wing.span" editable>?</glider-value></p>`);
    const value = host.querySelector('glider-value');
    const design = host.querySelector('glider-design');
    const input = value?.shadowRoot?.querySelector('input');
    if (!value || !design || !input) throw new Error('no field');
    const type = async (text: string): Promise<void> => {
      input.value = text;
      input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
      input.dispatchEvent(new Event('change', {bubbles: true}));
      await value.updateComplete;
    };
    await type('58 cm');
    expect([design.design.wing.span, input.value.replaceAll('\u00a0', ' ')]).to.deep.equal([0.58, '580 mm']);
    await type('wide');
    expect([design.design.wing.span, input.value, input.getAttribute('aria-invalid')]).to.deep.equal([0.58, 'wide', 'true']);
    expect(said(value)).to.contain('cannot be read');
    await expect(value).to.be.accessible();
  });
  it('follows a language that changes around it', async () => {
    const host = await fixture<HTMLElement>(html`<p lang="en-GB"><glider-value name="wing.camber" digits="1">?</glider-value></p>`);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    await value.updateComplete;
    expect(said(value)).to.equal('4.0 %');
    host.lang = 'de';
    await until(() => said(value) === '4,0 %');
  });
});
