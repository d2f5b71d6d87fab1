import {expect} from '@open-wc/testing';
import {launchWind} from '../../../src/calc/flight/launch-wind.js';

describe('the wind at a throw', () => {
  it('is calm, from ahead or from behind', () => {
    expect([0, 0.5, -0.2, 1, 4, -0.3, -5].map(launchWind)).to.deep.equal(['calm', 'calm', 'calm', 'ahead', 'ahead', 'behind', 'behind']);
  });
});
