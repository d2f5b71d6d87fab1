import {aTimeout, expect, fixture, html, nextFrame} from '@open-wc/testing';
import {html as plainHtml, render} from 'lit';
import {defaultDesign} from '../../../src/calc/design/design.js';
import type {GliderDesignElement} from '../../../src/components/design/define.js';
import {GliderDimensions} from '../../../src/components/dimensions/dimensions.js';
import type {GliderValue} from '../../../src/components/value/define.js';
import '../../../src/components/value/define.js';
import '../../../src/components/dimensions/define.js';

/** The design's class is defined only by the test that needs it late. */
const defineDesign = (): Promise<unknown> => import('../../../src/components/design/define.js');

async function shown(value: GliderValue): Promise<string> {
  await value.updateComplete;
  const slot = value.shadowRoot?.querySelector('slot');
  return (slot ? value.textContent : value.shadowRoot?.querySelector('[part=value]')?.textContent ?? '').replaceAll('\u00a0', ' ').trim();
}

const design = (id: string, span: string): GliderDesignElement => {
  const element = document.createElement('glider-design');
  element.id = id;
  element.setAttribute('wing-span', span);
  return element;
};

const settled = async (): Promise<void> => { await nextFrame(); await aTimeout(0); };

describe('an element and its design', () => {
  it('shows the author’s text until the design’s class is defined, then the number', async () => {
    const host = await fixture<HTMLElement>(html`<div><glider-value design="late" name="wing.span">30 cm</glider-value><glider-design id="late" wing-span="512 mm"></glider-design></div>`);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    expect(await shown(value)).to.contain('30 cm');
    await defineDesign();
    await settled();
    expect(await shown(value)).to.equal('512 mm');
  });

  it('is on its own again when `design` is taken away', async () => {
    await defineDesign();
    const page = await fixture(html`<div><glider-design id="taken-from" wing-span="500 mm"></glider-design><glider-value design="taken-from" name="wing.span"></glider-value></div>`);
    const value = page.querySelector('glider-value');
    await value?.updateComplete;
    expect(value?.state.design.wing.span).to.equal(0.5);
    value?.removeAttribute('design');
    await value?.updateComplete;
    expect(value?.link.status).to.equal('private');
    expect(value?.state.design.wing.span).to.equal(defaultDesign.wing.span);
  });

  it('finds a design that comes later, and says so while there is none', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<p>Span <glider-value design="coming" name="wing.span">30 cm</glider-value></p>`);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    await value.updateComplete;
    expect(value.shadowRoot?.textContent).to.contain('no design called coming');
    host.append(design('coming', '433 mm'));
    await settled();
    expect(await shown(value)).to.equal('433 mm');
    host.querySelector('glider-design')?.remove();
    await settled();
    expect(await shown(value)).to.equal('30 cm');
  });

  it('follows an id that changes', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<div><glider-value design="b" name="wing.span">?</glider-value></div>`);
    const element = design('a', '401 mm');
    host.append(element);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    expect(await shown(value)).to.equal('?');
    element.id = 'b';
    await settled();
    expect(await shown(value)).to.equal('401 mm');
    element.id = 'c';
    await settled();
    expect(await shown(value)).to.equal('?');
  });

  it('belongs to the nearest enclosing design, and to another once it is moved there', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<div>
      <glider-design wing-span="300 mm"><p><glider-value name="wing.span">?</glider-value></p></glider-design>
      <glider-design wing-span="700 mm"><p class="other"></p></glider-design></div>`);
    const value = host.querySelector('glider-value');
    if (!value) throw new Error('no element');
    expect(await shown(value)).to.equal('300 mm');
    host.querySelector('.other')?.append(value);
    await settled();
    expect(await shown(value)).to.equal('700 mm');
  });

  it('looks in its own root first, then outward through hosts', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<div><div class="host"></div></div>`);
    host.append(design('g', '610 mm'));
    const root = host.querySelector('.host')?.attachShadow({mode: 'open'});
    if (!root) throw new Error('no root');
    render(plainHtml`<glider-value design="g" name="wing.span">?</glider-value>`, root);
    const value = root.querySelector('glider-value');
    if (!value) throw new Error('no element');
    await settled();
    expect(await shown(value)).to.equal('610 mm');
    root.append(design('g', '220 mm'));
    await settled();
    expect(await shown(value)).to.equal('220 mm');
  });

  it('hears nothing more after it has left the page', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<div><glider-design id="left" wing-span="300 mm"></glider-design><glider-value design="left" name="wing.span">?</glider-value></div>`);
    const value = host.querySelector('glider-value');
    const owner = host.querySelector('glider-design');
    if (!value || !owner) throw new Error('no element');
    await value.updateComplete;
    let renderings = 0;
    value.requestUpdate = () => { renderings++; };
    value.remove();
    owner.request([{path: 'wing.span', value: 0.4}]);
    expect(renderings).to.equal(0);
  });

  it('takes two designs on one page apart, and renders once for a request of several changes', async () => {
    await defineDesign();
    const host = await fixture<HTMLElement>(html`<div>
      <glider-design id="one" wing-span="300 mm"></glider-design><glider-design id="two" wing-span="400 mm"></glider-design>
      <glider-value design="one" name="wing.span">?</glider-value><glider-value design="two" name="wing.span">?</glider-value></div>`);
    const [one, two] = host.querySelectorAll('glider-value');
    const owner = host.querySelector('glider-design');
    if (!one || !two || !owner) throw new Error('no element');
    expect([await shown(one), await shown(two)]).to.deep.equal(['300 mm', '400 mm']);
    let renderings = 0;
    const inherited = one.render.bind(one);
    one.render = () => { renderings++; return inherited(); };
    owner.request([{path: 'wing.span', value: 0.5}, {path: 'wing.chord', value: 0.1}]);
    await settled();
    expect([await shown(one), await shown(two), renderings]).to.deep.equal(['500 mm', '400 mm', 1]);
  });

  it('takes a design’s handle as a property', async () => {
    await defineDesign();
    const value = await fixture<GliderValue>(html`<glider-value name="wing.span">?</glider-value>`);
    const owner = design('unused', '345 mm');
    value.design = owner.handle;
    expect(await shown(value)).to.equal('345 mm');
  });

  it('agrees with a second copy of the classes on one page', async () => {
    await defineDesign();
    class SecondCopy extends GliderDimensions {}
    customElements.define('second-copy', SecondCopy);
    const host = await fixture<HTMLElement>(html`<div><glider-design id="shared" wing-span="300 mm"></glider-design><glider-value design="shared" name="wing.span">?</glider-value></div>`);
    const copy = new SecondCopy();
    copy.design = 'shared';
    copy.show = 'wing.span';
    host.append(copy);
    await copy.updateComplete;
    const input = copy.shadowRoot?.querySelector('input');
    const value = host.querySelector('glider-value');
    if (!input || !value) throw new Error('no field');
    input.value = '47 cm';
    input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    expect(await shown(value)).to.equal('470 mm');
  });
});

describe('a glider whose file cannot be read', () => {
  it('leaves the author’s text in a sentence, and every other element says why and that its numbers are about another plane', async () => {
    await Promise.all([defineDesign(), import('../../../src/components/camber-shim/define.js'), import('../../../src/components/drawing/define.js')]);
    const host = await fixture<HTMLElement>(html`<div lang="en"><glider-design id="broken"><script type="application/json">{"glider": 1, "wing": {"span": "40</script></glider-design>
      <glider-value design="broken" name="wing.span">30 cm</glider-value><glider-camber-shim design="broken"></glider-camber-shim><glider-drawing design="broken"></glider-drawing></div>`);
    const [value, shim, drawing, design] = ['glider-value', 'glider-camber-shim', 'glider-drawing', 'glider-design'].map((name) => host.querySelector<GliderValue>(name));
    if (!value || !shim || !drawing || !design) throw new Error('no element');
    await settled();
    expect(await shown(value)).to.equal('30 cm');
    for (const element of [shim, drawing]) {
      await element.updateComplete;
      expect([...element.shadowRoot?.querySelectorAll('[part=problem]') ?? []].map((one) => one.textContent).join()).to.match(/breaks off in the middle.*plane that every page starts with/);
    }
    (design as unknown as GliderDesignElement).file = '{"glider": 1, "wing": {"span": "41 cm"}}';
    await settled();
    expect(await shown(value)).to.equal('410 mm');
    await shim.updateComplete;
    expect(shim.shadowRoot?.querySelector('[part=problem]')).to.equal(null);
    // a later file that cannot be read leaves a glider that is the author's
    (design as unknown as GliderDesignElement).file = 'no file';
    await settled();
    expect(await shown(value)).to.equal('410 mm');
  });
});
