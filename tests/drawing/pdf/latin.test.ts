import {expect} from '@open-wc/testing';
import {inLatin} from '../../../src/drawing/pdf/latin.js';

describe('the letters of a PDF’s standard fonts', () => {
  it('leave what they hold as it is', () => {
    for (const text of ['Halfpenny, 660 × 120 mm', 'Größe ½ “actual” – €', 'señor Ångström']) expect(inLatin(text)).to.deep.equal({text, missing: []});
  });

  it('stand in for what they lack, and tell what they cannot', () => {
    expect(inLatin('660\u00a0mm −3° ≈ 8\u202f%')).to.deep.equal({text: '660 mm –3° ~ 8 %', missing: []});
    expect(inLatin('Łódź, Çeşme, Žižkov')).to.deep.equal({text: 'Lódz, Çesme, Žižkov', missing: []});
    expect(inLatin('e\u0301')).to.deep.equal({text: 'é', missing: []});
    expect(inLatin('Ζω 風 🛩')).to.deep.equal({text: '?? ? ?', missing: ['Ζ', 'ω', '風', '🛩']});
  });
});
