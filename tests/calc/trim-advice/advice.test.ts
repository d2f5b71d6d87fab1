import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {withValues} from '../../../src/calc/design/design.js';
import {cornersOf} from '../../../src/calc/as-built/as-built.js';
import {crookedAsBuilt} from '../../../src/calc/as-built/crooked.js';
import {tipDistances} from '../../../src/calc/as-built/straightness.js';
import {plannedJoints, tipOverBench} from '../../../src/calc/as-built/tips.js';
import {adviceFor} from '../../../src/calc/trim-advice/advice.js';
import type {Change} from '../../../src/calc/trim-advice/change.js';
import {turnTrack} from '../../../src/calc/flight/simulation/turning.js';
import {changed} from '../../../src/calc/trim-advice/levers.js';
import {balanceFirst} from '../../../src/calc/flight/balance-first.js';
import {measuredTurns, turnOf} from '../../../src/calc/trim-advice/measured-turns.js';
import {speaksAgainst, tailRemedy} from '../../../src/calc/trim-advice/no-glide.js';
import {sights, type ChangeId, type Past, type Sight} from '../../../src/calc/trim-advice/seen.js';
import {codesOf, flight, planeOf, valueOf} from '../flight/planes.js';
import {advised, anyFlyer, changesFor, flyer, marginOf, rightThrow, slipping, type Drawn} from './flyers.js';

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
    expect(advised(slow, {what: 'dives'}).causes.find(({id}) => id === 'nose-heavy')?.changes).to.deep.equal([{id: 'measure', what: 'trim'}]);
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
    const weights = balanceFirst(behind)?.weights;
    if (!weights) throw new Error('no weight does it');
    const after = withValues(behind, {'ballast.masses': weights.masses});
    expect(marginOf(after)).to.be.within(behind.balance.marginLow, behind.balance.marginHigh);
    // then it is free to be thrown
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

describe('a plane that would only dive or only stall', () => {
  const nose = (degrees: number) => withValues(plane, {'arrangement.tailIncidence': plane.arrangement.tailIncidence + degrees * Math.PI / 180});

  it('is refused whatever was seen and thrown before, with the slips that let it glide flat and clear of the stall', () => {
    for (const [set, code, id] of [[nose(6), 'trim-dives', 'slip-more'], [nose(-6), 'trim-stalls', 'slip-less']] as const) {
      for (const what of sights) {
        expect(codesOf(adviceFor(set, {what}, []))).to.deep.equal([code]);
        expect(codesOf(adviceFor(set, {what}, [past('good')]))).to.deep.equal([code]);
      }
      const {trim: held, advised: {speed}} = flight(set), slips = tailRemedy(set, flight(set));
      if (held.ok || !slips) throw new Error('no remedy');
      expect(slips.id).to.equal(id);
      // to a sheet of paper, as the flight check says
      expect(slips.edge).to.be.closeTo(Number(held.problems[0]?.args?.['edge']), 5.1e-5);
      const after = changed(set, slips.values);
      expect(valueOf(flight(after).trim).glide.speed).to.be.closeTo(speed, 0.1);
      expect(adviceFor(after, {what: 'good'}, []).ok).to.equal(true);
    }
    expect(tailRemedy(plane, flight(plane))).to.equal(undefined);
  });

  it('cannot have glided or reared up if it only dives, nor glided or dived if it only stalls', () => {
    expect(sights.filter((what) => speaksAgainst('trim-dives', what))).to.deep.equal(['good', 'swoops', 'zooms']);
    expect(sights.filter((what) => speaksAgainst('trim-stalls', what))).to.deep.equal(['good', 'dives']);
  });
});

describe('what was measured to be crooked', () => {
  const {left: far, right: near} = tipDistances(cornersOf(plane.wing, plane.tail, plane.arrangement, plannedJoints(plane.wing, plane.board)), 0.02);
  const even = tipOverBench(plane.wing, plane.board, plane.wing.joints);
  const faults = {
    'bowed-body': {right: {'built.bow': 0.008}, left: {'built.bow': -0.008}},
    'askew-wing': {right: {'built.leftTipToTail': far, 'built.rightTipToTail': near}, left: {'built.leftTipToTail': near, 'built.rightTipToTail': far}},
    'uneven-tips': {right: {'built.tipLeft': even - 0.02, 'built.tipRight': even + 0.02}, left: {'built.tipLeft': even + 0.02, 'built.tipRight': even - 0.02}},
  } as const;
  const opposite = {left: 'right', right: 'left'} as const;

  for (const id of ['bowed-body', 'askew-wing', 'uneven-tips'] as const) {
    it(`comes first where it turns the plane to the side that it turned to: ${id}`, () => {
      for (const fault of ['left', 'right'] as const) {
        const built = withValues(plane, faults[id][fault]), turns = turnOf(measuredTurns(built)), side = turns > 0 ? 'right' : 'left';
        for (const what of [side, 'rolls'] as const) {
          const {causes: [cause], first, unlike} = advised(built, {what});
          expect(cause?.id, what).to.equal(id);
          expect(first?.cause.id, what).to.equal(id);
          expect(cause?.facts.filter(({id: fact}) => fact.startsWith('measured-')), what).to.have.length(1);
          expect(unlike, what).to.equal(false);
        }
        expect(advised(built, {what: opposite[side]}).causes.map(({id: other}) => other)).not.to.include(id);
        expect(advised(built, {what: opposite[side]}).unlike).to.equal(Math.abs(turns) > 10 * Math.PI / 180);
        // flown crooked as it was measured, it goes to that side
        expect(Math.sign(valueOf(turnTrack(built, valueOf(crookedAsBuilt(built)))).last.y)).to.equal(Math.sign(turns));
        const mend = advised(built, {what: side}).causes[0]?.changes[0]?.values ?? {};
        expect(Math.abs(turnOf(measuredTurns(changed(built, mend))))).to.be.lessThan(1e-3);
      }
    });
  }

  it('says by how much and to which side to mend it', () => {
    const [bow] = advised(withValues(plane, faults['bowed-body'].right), {what: 'right'}).causes;
    expect(bow?.facts.map((fact) => (fact.id === 'measured-bow' ? [fact.by, fact.side] : []))).to.deep.include([0.008, 'right']);
    expect(bow?.changes).to.deep.equal([{id: 'straighten', by: 0.008, side: 'left', values: {'built.bow': 0}}]);
    const [skew] = advised(withValues(plane, faults['askew-wing'].right), {what: 'right'}).causes, to = Math.sqrt((far ** 2 + near ** 2) / 2);
    expect(skew?.facts.map((fact) => (fact.id === 'measured-skew' ? [fact.left, fact.right] : []))).to.deep.include([far, near]);
    expect(skew?.changes[0]?.values).to.deep.equal({'built.leftTipToTail': to, 'built.rightTipToTail': to});
    const tips = measuredTurns(withValues(plane, faults['uneven-tips'].right))['uneven-tips']?.change;
    expect(tips?.id === 'even-tips' && [tips.side, tips.by.toFixed(6)]).to.deep.equal(['left', '0.040000']);
  });

  it('is not blamed on the wing where the tail of a bowed body stands aside', () => {
    const bow = 0.008, length = plane.arrangement.tailAt + plane.tail.chord - plane.arrangement.wingAt - plane.wing.chord;
    const {left, right} = tipDistances(cornersOf(plane.wing, plane.tail, plane.arrangement, plannedJoints(plane.wing, plane.board)), Math.atan(bow / length));
    const both = withValues(plane, {'built.bow': bow, 'built.leftTipToTail': left, 'built.rightTipToTail': right});
    const {causes: [cause]} = advised(both, {what: 'right'});
    expect(cause?.id).to.equal('bowed-body');
    expect(advised(both, {what: 'right'}).causes.map(({id}) => id)).not.to.include('askew-wing');
    expect(Math.abs(turnOf(measuredTurns(changed(both, cause?.changes[0]?.values ?? {}))))).to.be.lessThan(0.01);
  });

  it('is left aside where two faults hold each other straight', () => {
    const length = plane.arrangement.tailAt + plane.tail.chord - plane.arrangement.wingAt - plane.wing.chord, bow = -0.008;
    const {left, right} = tipDistances(cornersOf(plane.wing, plane.tail, plane.arrangement, plannedJoints(plane.wing, plane.board)), -Math.atan(bow / length));
    const both = withValues(plane, {'built.bow': bow, 'built.leftTipToTail': left, 'built.rightTipToTail': right});
    for (const what of ['left', 'right', 'rolls'] as const) expect(advised(both, {what}).causes[0]?.blame, what).not.to.equal(undefined);
    for (const what of ['left', 'right', 'rolls'] as const) expect(advised(both, {what}).causes.map(({id}) => id)).not.to.include('bowed-body').and.not.to.include('askew-wing');
  });
});

describe('a throw as the first check', () => {
  it('comes before a change of a plane that swooped, and not only after one', () => {
    const {first, study} = advised(plane, {what: 'swoops'});
    expect([first?.cause.id, first?.change.id]).to.deep.equal(['thrown-fast', 'throw']);
    // when that did not help, the nose; and then not the throw once more
    const thrown: Past = {seen: {what: 'swoops'}, changed: 'throw', right: study.right.speed};
    const second = advised(plane, {what: 'swoops'}, [thrown]).first;
    expect(second?.cause.id).to.equal('tail-heavy');
    const heavier = changed(plane, second?.change.values ?? {});
    expect(advised(heavier, {what: 'swoops'}, [thrown, {...thrown, changed: second?.change.id ?? 'measure'}]).first?.cause.id).to.equal('tail-heavy');
  });

  it('says that a plane glides faster now wherever it asks for a faster throw than before', () => {
    const before = advised(plane, {what: 'swoops'}).study.right.speed;
    const heavier = changed(plane, changesFor(plane, {what: 'swoops'}, 'tail-heavy')[0]?.values ?? {});
    const now = advised(heavier, {what: 'swoops'}, [{seen: {what: 'swoops'}, changed: 'nose-on', right: before}]);
    expect(now.study.right.speed).to.be.greaterThan(1.1 * before);
    const told = now.causes.filter(({facts}) => facts.some(({id}) => id === 'faster-now')).map(({id}) => id);
    expect(told).to.have.members(['thrown-fast', 'thrown-up']);
    expect(now.causes.flatMap(({facts}) => facts)).to.deep.include({id: 'faster-now', speed: now.study.right.speed, before});
    expect(advised(plane, {what: 'swoops'}, [{seen: {what: 'swoops'}, right: before}]).causes.flatMap(({facts}) => facts.map(({id}) => id))).not.to.include('faster-now');
  });
});

describe('weight ahead of the nose', () => {
  const front = (at: number, more = {}) => withValues(plane, {'ballast.masses': [{mass: 0.02, at}], 'measured.balance': plane.measured.balance, ...more});
  const moved = (design: typeof plane, what: 'dives' | 'swoops') => advised(design, {what}).causes.flatMap(({changes}) => changes);

  it('is never proposed: weight goes to the tip of the nose and no further', () => {
    for (const at of [0.015, 0.004, 0.001]) {
      const forward = moved(front(at), 'swoops').flatMap((change) => (change.id === 'weight-forward' ? [change.to] : []));
      expect(forward, String(at)).to.have.length(1);
      expect(forward[0], String(at)).to.be.within(0, at);
    }
    expect(moved(front(0), 'swoops').map(({id}) => id)).to.include('nose-on').and.not.to.include('weight-forward');
    for (const change of moved(front(-0.012, {'ballast.at': -0.03}), 'swoops')) if (change.id === 'nose-on') expect(change.at).to.equal(0);
    for (const change of moved(front(-0.013), 'dives')) if (change.id === 'weight-back') expect(change.to).to.be.at.least(0);
  });

  it('is no remedy for a balance behind the limit either', () => {
    const behind = withValues(plane, {'ballast.masses': [{mass: 0.005, at: 0.015}], 'ballast.at': -0.03});
    const weights = balanceFirst(behind)?.weights;
    expect(weights?.on?.at).to.equal(0);
  });
});

describe('what was seen against what was reckoned', () => {
  it('is said once for all causes, where the likeliest would not make it fly so', () => {
    // so steady that even a light nose does not make it swoop, and so fast that a slow throw does not make it drop
    expect(advised(flyer({...usual, margin: 0.34, speed: 1.15}), {what: 'swoops'}).unlike).to.equal(true);
    expect(advised(flyer({...usual, speed: 1.7}), {what: 'drops'}).unlike).to.equal(true);
    for (const what of ['good', 'dives', 'swoops', 'zooms', 'drops', 'left', 'rolls', 'wags', 'flutters'] as const) expect(advised(plane, {what}).unlike, what).to.equal(false);
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
    expect(next('dives', past('dives'))).to.equal('change confirmed');
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
