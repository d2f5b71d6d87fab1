import {expect} from '@open-wc/testing';
import {follow, type WayOptions} from '../../../../src/calc/flight/simulation/dormand-prince.js';

const options: WayOptions = {until: 10, tolerance: 1e-9, scale: [1, 1], event: () => 1};
/** A swing of period 2π, whose answer is known: cosine and sine. */
const swing = ([x = 0, v = 0]: Float64Array, rates: Float64Array): void => { rates[0] = v; rates[1] = -x; };

describe('following a motion', () => {
  it('keeps to a swing that is known', () => {
    const {steps, ended} = follow(swing, [1, 0], options);
    const last = steps.at(-1);
    expect(ended).to.equal('time');
    expect(last?.time).to.equal(10);
    expect(last?.state[0]).to.be.closeTo(Math.cos(10), 1e-7);
    expect(last?.state[1]).to.be.closeTo(-Math.sin(10), 1e-7);
  });

  it('is of the fifth order: an error a hundred times smaller costs about two and a half times the steps', () => {
    const taken = [1e-6, 1e-8, 1e-10].map((tolerance) => follow(swing, [1, 0], {...options, tolerance}).steps.length) as [number, number, number];
    expect(taken[1] / taken[0]).to.be.within(2, 3);
    expect(taken[2] / taken[1]).to.be.within(2, 3);
  });

  it('ends exactly where its event comes', () => {
    const {steps, ended} = follow(swing, [1, 0], {...options, event: ([x = 0]) => x});
    expect(ended).to.equal('event');
    expect(steps.at(-1)?.time).to.be.closeTo(Math.PI / 2, 1e-8);
    expect(steps.at(-1)?.state[0]).to.be.closeTo(0, 1e-11);
  });

  it('gives up what cannot be followed', () => {
    expect(follow((_, rates) => { rates[0] = NaN; }, [1], {...options, scale: [1]}).ended).to.equal('given-up');
    const runaway = follow(([x = 0], rates) => { rates[0] = x * x; }, [1], {...options, scale: [1]});
    expect(runaway.ended).to.equal('given-up');
    expect(runaway.steps.every(({state}) => Number.isFinite(state[0]))).to.equal(true);
  });
});
