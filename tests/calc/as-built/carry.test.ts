import {expect} from '@open-wc/testing';
import {asBuilt} from '../../../src/calc/as-built/as-built.js';
import {leftAsMeasured} from '../../../src/calc/as-built/carry.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {createDesignStore} from '../../../src/calc/design/store.js';

const deg = Math.PI / 180;
const built = withValues(defaultDesign, {'arrangement.tailIncidence': -1.5 * deg, 'built.tailFront': 0.0004, 'built.tailRear': 0.0021});
const tail = (design: typeof built): number => asBuilt(design).design.arrangement.tailIncidence;

describe('slips changed after the edges over them were measured', () => {
  it('turn the measured tail as far as the planned one, step by step or at once', () => {
    const before = tail(built);
    const store = createDesignStore(built);
    for (const angle of [-1.5, -1, -2.25]) store.request([{path: 'arrangement.tailIncidence', value: angle * deg}]);
    expect(tail(store.current().design)).to.be.closeTo(before - 0.75 * deg, 1e-12);
    expect(store.current().design.built.tailFront).to.equal(0.0004);
  });

  it('leave a measurement that is made in the same breath, and planes that were not measured', () => {
    const store = createDesignStore(built);
    store.request([{path: 'arrangement.tailIncidence', value: 0}, {path: 'built.tailRear', value: 0.001}]);
    expect(store.current().design.built.tailRear).to.equal(0.001);
    const plain = createDesignStore();
    plain.request([{path: 'arrangement.tailIncidence', value: 0.01}]);
    expect(plain.current().design.built).to.equal(defaultDesign.built);
  });

  it('stay as they were measured where only the plan is asked for', () => {
    const held = leftAsMeasured(built, ['arrangement.tailIncidence']);
    expect(held).to.deep.equal({'built.tailRear': 0.0021});
    expect(leftAsMeasured(built, ['arrangement.tailIncidence', 'built.tailRear'])).to.deep.equal({});
    expect(leftAsMeasured(built, ['arrangement.wingIncidence', 'wing.span'])).to.deep.equal({});
    const before = tail(built), store = createDesignStore(built);
    store.request([{path: 'arrangement.tailIncidence', value: -3 * deg}, {path: 'built.tailRear', value: held['built.tailRear']}]);
    expect(tail(store.current().design)).to.equal(before);
  });

  it('forget how the old height was written', () => {
    const store = createDesignStore(built);
    store.request([{path: 'built.tailRear', value: 0.002, text: '2mm'}]);
    expect(store.current().texts['built.tailRear']).to.equal('2mm');
    store.request([{path: 'arrangement.tailIncidence', value: -2 * deg}]);
    expect(store.current().texts['built.tailRear']).to.equal(undefined);
  });
});
