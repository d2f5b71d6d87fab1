import {expect} from '@open-wc/testing';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {takenBack, type Made} from '../../../src/calc/trim-advice/taken-back.js';

type Ballast = GliderDesign['ballast']['masses'];

const holding = (masses: Ballast): GliderDesign => withValues(defaultDesign, {'ballast.masses': masses});
const ballast = (was: Ballast, made: Ballast): Made => ({before: {'ballast.masses': was}, set: {'ballast.masses': made}});
const left = (now: Ballast, made: Made): unknown => takenBack(holding(now), made)?.['ballast.masses'];

describe('a change taken back', () => {
  it('is what was there before, where it still stands', () => {
    const made: Made = {before: {'arrangement.tailIncidence': -0.02, 'launch.speed': undefined}, set: {'arrangement.tailIncidence': -0.03, 'launch.speed': 5}};
    expect(takenBack(withValues(defaultDesign, made.set), made)).to.deep.equal(made.before);
  });

  it('is nothing where the same was changed since, not even in part', () => {
    const made: Made = {before: {'arrangement.tailIncidence': -0.02, 'launch.speed': undefined}, set: {'arrangement.tailIncidence': -0.03, 'launch.speed': 5}};
    expect(takenBack(withValues(defaultDesign, {...made.set, 'launch.speed': 6}), made)).to.equal(undefined);
    // what the change did not change is nobody's to give back
    expect(takenBack(defaultDesign, {before: {'launch.wind': 1}, set: {'launch.wind': 1}})).to.deep.equal({});
  });

  it('takes off what it put on, among weights that were changed elsewhere', () => {
    const on = ballast([{mass: 0.02, at: 0.015}], [{mass: 0.022, at: 0.015}]);
    expect(left([{mass: 0.025, at: 0.015}, {mass: 0.003, at: 0.4}], on)).to.deep.equal([{mass: 0.023, at: 0.015}, {mass: 0.003, at: 0.4}]);
    const anew = ballast([], [{mass: 0.002, at: 0.015}]);
    expect(left([{mass: 0.002, at: 0.015}, {mass: 0.003, at: 0.4}], anew)).to.deep.equal([{mass: 0.003, at: 0.4}]);
    expect(left([{mass: 0.001, at: 0.015}], anew)).to.equal(undefined);
    expect(left([], anew)).to.equal(undefined);
  });

  it('gives back what it took off, where the rest still lies there', () => {
    const off = ballast([{mass: 0.02, at: 0.015}], [{mass: 0.018, at: 0.015}]);
    expect(left([{mass: 0.016, at: 0.015}], off)).to.deep.equal([{mass: 0.018, at: 0.015}]);
    expect(left([{mass: 0.018, at: 0.03}], off)).to.equal(undefined);
    const whole = ballast([{mass: 0.002, at: 0.015}], []);
    expect(left([{mass: 0.003, at: 0.4}], whole)).to.deep.equal([{mass: 0.002, at: 0.015}, {mass: 0.003, at: 0.4}]);
  });

  it('moves a weight back among others, and leaves one that has gone on', () => {
    const back = ballast([{mass: 0.02, at: 0.015}], [{mass: 0.02, at: 0.02}]);
    expect(left([{mass: 0.003, at: 0.02}, {mass: 0.02, at: 0.02}], back)).to.deep.equal([{mass: 0.02, at: 0.015}, {mass: 0.003, at: 0.02}]);
    expect(left([{mass: 0.02, at: 0.025}], back)).to.equal(undefined);
  });

  it('puts no more weights on a plane than it may have', () => {
    const many = Array.from({length: 12}, (_, i) => ({mass: 0.001, at: 0.1 + i / 100}));
    expect(left(many, ballast([{mass: 0.002, at: 0.015}], []))).to.equal(undefined);
  });
});
