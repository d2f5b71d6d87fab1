import {expect, fixture, html} from '@open-wc/testing';
import type {GliderDihedralAngle} from '../../../src/components/dihedral-angle/define.js';
import '../../../src/components/dihedral-angle/define.js';
import {until} from '../../until.js';

describe('what a calculator announces', () => {
  it('comes once after a change, and does not stay in a language that the reader has left', async () => {
    const element = await fixture<GliderDihedralAngle>(html`<glider-dihedral-angle lang="en" units="metric" joints="8° @ 130 mm"></glider-dihedral-angle>`);
    const said = (): string => element.shadowRoot?.querySelector('[aria-live=polite]')?.textContent ?? '';
    expect(said()).to.equal('');
    element.joints = '10° @ 130 mm';
    await until(() => said() !== '');
    expect(said()).to.contain('Prop each tip');
    element.lang = 'de';
    await until(() => element.shadowRoot?.querySelector('[part=answer]')?.textContent.includes('Flügel'));
    await element.updateComplete;
    expect(said()).to.equal('');
    element.joints = '12° @ 130 mm';
    await until(() => said() !== '');
    expect(said()).not.to.contain('Prop');
  });
});
