import {expect} from '@open-wc/testing';
import {good, refused} from '../../src/calc/problem.js';

describe('outcomes', () => {
  it('carry a value or the reasons for having none', () => {
    expect(good(3)).to.deep.equal({ok: true, value: 3});
    const noChord = {code: 'below-limit', path: 'wing.chord'};
    expect(refused(noChord)).to.deep.equal({ok: false, problems: [noChord]});
  });
});
