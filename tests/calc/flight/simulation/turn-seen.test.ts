import {expect} from '@open-wc/testing';
import {turnSeen} from '../../../../src/calc/flight/simulation/turn-seen.js';
import type {TurnTrack} from '../../../../src/calc/flight/simulation/turning.js';

const deg = Math.PI / 180;
const track = (heading: number, bank: number, ends: TurnTrack['ends'] = 'landed'): TurnTrack => ({last: {heading: heading * deg}, bank: bank * deg, radius: -31, ends}) as TurnTrack;

describe('what is seen of a turn', () => {
  it('is a circle once it has come round a little', () => {
    expect(turnSeen(track(12, 20))).to.deep.equal({kind: 'circle', side: 'right', across: 62});
    expect(turnSeen(track(-3.1, -5))).to.deep.equal({kind: 'circle', side: 'left', across: 62});
    expect(turnSeen(track(-2.9, -5))).to.deep.equal({kind: 'hardly', side: 'left'});
  });

  it('is a roll where it lies on its side before it comes round, or could not be followed so', () => {
    expect(turnSeen(track(-2, 30))).to.deep.equal({kind: 'rolls-over', side: 'right'});
    expect(turnSeen(track(40, -76, 'tight'))).to.deep.equal({kind: 'rolls-over', side: 'left'});
    expect(turnSeen(track(40, 50, 'tight'))).to.deep.equal({kind: 'too-steep', side: 'right'});
  });
});
