import {expect} from '@open-wc/testing';
import {aimOf} from '../../../src/calc/flight/simulation/aim.js';

const degree = Math.PI / 180;

describe('where a hand aims', () => {
  it('is at the ground where the line of a throw downwards meets it', () => {
    // 1.6 m down on 8 m along: a slope of one in five
    const {way, angle, ground} = aimOf({angle: -Math.atan(0.2), height: 1.6});
    expect(way).to.equal('down');
    expect(angle).to.be.closeTo(Math.atan(0.2), 1e-12);
    expect(ground).to.be.closeTo(8, 1e-9);
  });

  it('is at nothing where that is further away than anyone points, nor for a throw that is level or upwards', () => {
    expect(aimOf({angle: -degree, height: 1.6})).to.deep.equal({way: 'down', angle: degree});
    expect(aimOf({angle: -0.3 * degree, height: 1.6})).to.deep.equal({way: 'level', angle: 0});
    expect(aimOf({angle: 20 * degree, height: 1.6})).to.deep.equal({way: 'up', angle: 20 * degree});
  });
});
