import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {withValues} from '../../../src/calc/design/design.js';
import {adviceFor} from '../../../src/calc/trim-advice/advice.js';
import type {Change} from '../../../src/calc/trim-advice/change.js';
import {turnTrack} from '../../../src/calc/flight/simulation/turning.js';
import {changed} from '../../../src/calc/trim-advice/levers.js';
import {behindLimit} from '../../../src/calc/trim-advice/limit.js';
import {sights, type ChangeId, type Past, type Sight} from '../../../src/calc/trim-advice/seen.js';
import {codesOf, planeOf, valueOf} from '../flight/planes.js';
import {advised, anyFlyer, flyer, marginOf, rightThrow, slipping, type Drawn} from './flyers.js';

const usual: Drawn = {span: 0.7, chord: 0.12, stack: 0.01, bent: 12, tailChord: 0.078, tailAt: 0.54, margin: 0.22, speed: 1.3};
const plane = flyer(usual);
const past = (what: Sight, did?: ChangeId): Past => ({seen: {what}, ...(did && {changed: did})});
const causes = (what: Sight, history: readonly Past[] = []): readonly string[] => advised(plane, {what}, history).causes.map(({id}) => id);
const shareOf = (id: string, what: Sight, history: readonly Past[] = []): number => advised(plane, {what}, history).causes.find((cause) => cause.id === id)?.share ?? NaN;

describe('advice after a throw', () => {
  it('names causes with a change each for everything that is seen, most likely first, and none for a good glide', () => {
    for (const what of sights) {
      const {causes: found, first} = advised(plane, {what});
      if (what === 'good') {
        expect(found).to.deep.equal([]);
        expect(first).to.equal(undefined);
        continue;
      }
      expect(found.reduce((sum, {share}) => sum + share, 0), what).to.be.closeTo(1, 1e-12);
      expect(found.map(({share}) => share)).to.deep.equal(found.map(({share}) => share).sort((a, b) => b - a));
      for (const {id, changes} of found) expect(changes, `${what} ${id}`).to.have.length.greaterThan(0);
      expect(found).to.include(first?.cause);
      expect(first?.cause.changes[0]).to.equal(first?.change);
    }
  });

  it('is never a number that is none, on any plane', () => {
    const sound = (value: unknown): boolean => typeof value === 'number' ? Number.isFinite(value)
      : typeof value !== 'object' || value === null || Object.values(value).every(sound);
    fc.assert(fc.property(anyFlyer, fc.constantFrom(...sights), (drawn, what) => {
      const {causes: found} = advised(flyer(drawn), {what});
      expect(sound(found)).to.equal(true);
    }), {numRuns: 30});
  });

  it('puts the throw right first where it zooms, and goes on to the balance when that did not help', () => {
    expect(advised(plane, {what: 'zooms'}).first?.change.id).to.equal('throw');
    expect(shareOf('thrown-fast', 'zooms', [past('zooms', 'throw')])).to.be.lessThan(shareOf('thrown-fast', 'zooms'));
    const history = [past('zooms', 'throw'), past('zooms', 'throw')];
    expect(advised(plane, {what: 'zooms'}, history).first?.cause.id).to.equal('tail-heavy');
    expect(advised(plane, {what: 'zooms'}, history).causes.find(({id}) => id === 'thrown-fast')?.facts).to.deep.include({id: 'tried', times: 2});
  });

  it('believes the hand that says it threw fast', () => {
    const fast = withValues(plane, {'launch.speed': 1.5 * rightThrow(plane).speed});
    const [cause] = advised(fast, {what: 'swoops'}).causes;
    expect(cause?.id).to.equal('thrown-fast');
    expect(cause?.facts.map(({id}) => id)).to.include('hand-faster');
    expect(cause?.changes[0]?.values).to.have.keys('launch.speed', 'launch.angle', 'launch.pitch');
  });

  it('weighs what the model knows: near the stall a plane that drops is tail-heavy all the more', () => {
    const near = flyer({...usual, speed: 1.05});
    const share = (design: typeof plane): number => advised(design, {what: 'drops'}).causes.find(({id}) => id === 'tail-heavy')?.share ?? NaN;
    expect(share(near)).to.be.greaterThan(share(plane));
    expect(advised(near, {what: 'drops'}).causes.find(({id}) => id === 'tail-heavy')?.facts.map(({id}) => id)).to.include('near-stall');
  });

  it('weighs what was measured: a throw that flew as far as a slow one does was slow', () => {
    const without = shareOf('thrown-slow', 'drops');
    const close = advised(plane, {what: 'drops', distance: 3.5, time: 0.8}).causes.find(({id}) => id === 'thrown-slow');
    const far = advised(plane, {what: 'drops', distance: 30, time: 6}).causes.find(({id}) => id === 'thrown-slow');
    expect(close?.share).to.be.greaterThan(without);
    expect(close?.facts).to.deep.include({id: 'measures-fit'});
    expect(far?.share).to.be.lessThan(close?.share ?? NaN);
    expect(far?.facts).to.deep.include({id: 'measures-miss'});
  });

  it('turns left and right are mended on the other side', () => {
    for (const [what, side] of [['left', 'right'], ['right', 'left']] as const) {
      const sides = advised(plane, {what}).causes.flatMap(({changes}) => changes).flatMap((change) => ('side' in change ? [change.side] : []));
      expect(sides).to.deep.equal([side, side, side]);
    }
  });

  it('names no side for a weight at a tip where the nose swings against the bank, and names that cause last', () => {
    const long = flyer(slipping);
    const {y, bank, heading} = valueOf(turnTrack(long, {tipMass: 0.003})).last;
    expect([y > 0, bank > 0, heading > 0]).to.deep.equal([true, true, false]);
    for (const [what, side] of [['left', 'right'], ['right', 'left']] as const) {
      const {causes: found} = advised(long, {what});
      expect(found.at(-1)?.id).to.equal('heavy-tip');
      const [tip] = found.at(-1)?.changes ?? [];
      expect(tip?.id).to.equal('tip');
      expect(tip).not.to.have.property('side');
      const sides = found.flatMap(({changes}) => changes).flatMap((change) => ('side' in change ? [change.side] : []));
      expect(sides).to.deep.equal([side, side]);
    }
  });

  it('leaves a plane alone that the model sees no room to slow down, and has it measured instead', () => {
    const slow = flyer({...usual, speed: 1.1});
    expect(advised(slow, {what: 'dives'}).causes.find(({id}) => id === 'nose-heavy')?.changes).to.deep.equal([{id: 'measure'}]);
  });

  it('takes no weight off a nose without any', () => {
    const bare = withValues(plane, {'ballast.masses': [], 'measured.balance': planeOf(plane).balance, 'measured.mass': 0.07});
    const ids = advised(bare, {what: 'dives'}).causes.flatMap(({changes}) => changes.map(({id}) => id));
    expect(ids).to.include('slip-more').and.not.to.include('nose-off').and.not.to.include('weight-back');
  });

  it('gives what a scale and a stack of paper can show', () => {
    const whole = (value: number, step: number): boolean => Math.abs(value / step - Math.round(value / step)) < 1e-6;
    const all: readonly Change[] = (['dives', 'swoops', 'left'] as const).flatMap((what) => advised(plane, {what}).causes.flatMap(({changes}) => changes));
    for (const change of all) {
      if (change.id === 'nose-on' || change.id === 'nose-off') expect(whole(change.mass, 5e-4), change.id).to.equal(true);
      if (change.id === 'weight-back' || change.id === 'weight-forward') expect(whole(change.by, 1e-3), change.id).to.equal(true);
      if (change.id === 'slip-more' || change.id === 'slip-less') expect(whole(change.edge, 1e-4), change.id).to.equal(true);
      if (change.id === 'fin') expect(whole(change.bend, 5e-4), change.id).to.equal(true);
    }
    expect(all.length).to.be.greaterThan(8);
  });
});

describe('a balance behind the limit', () => {
  const behind = withValues(plane, {'ballast.masses': [{mass: 0.005, at: 0.015}]});

  it('is refused whatever was seen, with the weight that mends it', () => {
    expect(marginOf(behind)).to.be.lessThan(behind.balance.marginLow);
    for (const what of sights) expect(codesOf(adviceFor(behind, {what}, []))).to.deep.equal(['balance-behind-limit']);
    const weight = behindLimit(planeOf(behind), behind)?.weight;
    if (!weight) throw new Error('no weight does it');
    const after = changed(behind, weight.values);
    expect(marginOf(after)).to.be.at.least(behind.balance.marginLow);
    expect(marginOf(withValues(behind, {'ballast.masses': [{mass: 0.005 + weight.mass - 5e-4, at: 0.015}]}))).to.be.lessThan(behind.balance.marginLow);
    expect(adviceFor(after, {what: 'good'}, []).ok).to.equal(true);
  });

  it('is refused where the plane is stable but less than its builder wants, and where it is unstable', () => {
    const wanting = withValues(plane, {'balance.marginLow': 0.3, 'balance.marginHigh': 0.4});
    const unstable = withValues(plane, {'measured.balance': 0.2});
    expect(marginOf(wanting)).to.be.greaterThan(0);
    expect(marginOf(unstable)).to.be.lessThan(0);
    for (const design of [wanting, unstable]) expect(codesOf(adviceFor(design, {what: 'dives'}, []))).to.deep.equal(['balance-behind-limit']);
  });
});

describe('the thread', () => {
  const next = (what: Sight, ...history: readonly Past[]) => {
    const {next: then, because} = advised(plane, {what}, history);
    return `${then} ${because}`;
  };

  it('stops after two good glides in a row', () => {
    expect(next('good')).to.equal('again first-good');
    expect(next('good', past('good'))).to.equal('stop two-good');
    expect(next('good', past('dives', 'throw'))).to.equal('again first-good');
    expect(next('good', past('good', 'fin'))).to.equal('again first-good');
    expect(next('good', past('good'), past('dives'))).to.equal('again first-good');
  });

  it('throws again unchanged where the same plane flew otherwise', () => {
    expect(next('dives', past('zooms'))).to.equal('again differs');
    expect(next('dives', past('good'))).to.equal('again lost');
    expect(next('dives', past('dives'))).to.equal('change still');
    expect(next('dives', past('dives', 'nose-off'))).to.equal('change still');
  });

  it('takes half a step back after one too many', () => {
    expect(next('swoops', past('dives', 'slip-more'))).to.equal('change overshot');
    expect(next('right', past('left', 'fin'))).to.equal('change overshot');
    const slips = (history: readonly Past[]): number =>
      advised(plane, {what: 'swoops'}, history).causes.flatMap(({changes}) => changes).reduce((sum, change) => (change.id === 'slip-less' ? change.edge : sum), 0);
    const whole = slips([]), half = slips([past('dives', 'slip-more')]);
    expect(half).to.be.within(0.3 * whole, 0.7 * whole);
  });

  it('no longer blames a hand that throws the same turn twice', () => {
    expect(shareOf('thrown-banked', 'left', [past('left')])).to.be.lessThan(shareOf('thrown-banked', 'left'));
    expect(causes('left', [past('left', 'throw')]).at(-1)).to.equal('thrown-banked');
  });
});

describe('bad input', () => {
  it('refuses what nobody measured', () => {
    const codes = (distance?: number, time?: number): readonly string[] =>
      codesOf(adviceFor(plane, {what: 'dives', ...(distance !== undefined && {distance}), ...(time !== undefined && {time})}, []));
    expect(codes(-1)).to.deep.equal(['throw-number-out-of-range']);
    expect(codes(undefined, -1)).to.deep.equal(['throw-number-out-of-range']);
    expect(codes(NaN, Infinity)).to.deep.equal(['throw-number-out-of-range', 'throw-number-out-of-range']);
    expect(codes(200, 1)).to.deep.equal(['throw-too-fast']);
    expect(codes(0.1, 60)).to.deep.equal(['throw-too-slow']);
    expect(codes(5, 1)).to.deep.equal([]);
  });

  it('passes on what keeps a plane from flying', () => {
    expect(codesOf(adviceFor(withValues(plane, {'launch.wind': 15}), {what: 'dives'}, []))).to.deep.equal(['wind-above-speed']);
    expect(codesOf(adviceFor(withValues(plane, {'arrangement.tailAt': 0.1}), {what: 'dives'}, []))).to.deep.equal(['tail-in-wing']);
  });
});
