import {expect} from '@open-wc/testing';
import type {CauseId} from '../../src/calc/trim-advice/causes.js';
import type {ChangeId, Sight} from '../../src/calc/trim-advice/seen.js';
import {changed} from '../../src/calc/trim-advice/levers.js';
import {advised, flyer} from '../calc/trim-advice/flyers.js';

/** Common practice, no source: what people who fly hand-launched gliders tell each other. */
describe('trimming by common practice', () => {
  const plane = flyer({span: 0.7, chord: 0.12, stack: 0.01, bent: 12, tailChord: 0.078, tailAt: 0.54, margin: 0.22, speed: 1.3});
  const likeliest = (what: Sight): CauseId | undefined => advised(plane, {what}).causes[0]?.id;
  const mends = (what: Sight, cause: CauseId): readonly ChangeId[] => advised(plane, {what}).causes.find(({id}) => id === cause)?.changes.map(({id}) => id) ?? [];

  it('always noses down: nose-heavy. Take weight off the nose, move weight back, or add slips so that the tailplane’s front edge sits lower', () => {
    expect(likeliest('dives')).to.equal('nose-heavy');
    expect([...mends('dives', 'nose-heavy')].sort()).to.deep.equal(['nose-off', 'slip-more', 'weight-back']);
    const slip = advised(plane, {what: 'dives'}).causes.flatMap(({changes}) => changes).find(({id}) => id === 'slip-more');
    // the incidence is positive with the front edge up
    expect(changed(plane, slip?.values ?? {}).arrangement.tailIncidence).to.be.lessThan(plane.arrangement.tailIncidence);
  });

  it('always noses up: tail-heavy, and the reverse', () => {
    expect(likeliest('swoops')).to.equal('tail-heavy');
    expect([...mends('swoops', 'tail-heavy')].sort()).to.deep.equal(['nose-on', 'slip-less', 'weight-forward']);
  });

  it('thrown too fast it zooms and then dives, too slow it drops', () => {
    expect(likeliest('zooms')).to.equal('thrown-fast');
    expect(likeliest('drops')).to.equal('thrown-slow');
  });

  it('best in little or no wind', () => {
    expect(mends('swoops', 'windy')).to.deep.equal(['calm']);
  });
});
