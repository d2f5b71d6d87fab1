import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {callsOf, type Call} from '../../../src/calc/flight/calls.js';
import {flightCheck} from '../../../src/calc/flight/flight-check.js';
import {usualRanges} from '../../../src/calc/flight/usual-ranges.js';
import type {Advice} from '../../../src/calc/trim-advice/advice.js';
import {changed} from '../../../src/calc/trim-advice/levers.js';
import {isStep} from '../../../src/calc/trim-advice/thread.js';
import {sights, type Past, type Sight} from '../../../src/calc/trim-advice/seen.js';
import {flight, trim, valueOf} from '../flight/planes.js';
import {lessonGlider} from './lesson-glider.js';
import {advised, anyFlyer, flyer, marginOf} from './flyers.js';

/** One throw, what was told after it, and the plane that was thrown. */
interface Told {
  readonly what: Sight;
  readonly design: GliderDesign;
  readonly advice: Advice;
}

/** Does each time what is told first, or throws the plane again as it is where `does` says so; to the end, or until it is told to stop. */
function played(begun: GliderDesign, whats: readonly Sight[], does: readonly boolean[] = [], beyondStop = false): readonly Told[] {
  let design = begun, history: readonly Past[] = [];
  const told: Told[] = [];
  for (const [i, what] of whats.entries()) {
    const advice = advised(design, {what}, history);
    told.push({what, design, advice});
    if (advice.next === 'stop' && !beyondStop) break;
    const first = advice.next === 'change' && does[i] !== false ? advice.first : undefined;
    history = [...history, {seen: {what}, ...(first && {changed: first.change.id, cause: first.cause.id}), right: advice.study.right.speed}];
    design = changed(design, first?.change.values ?? {});
  }
  return told;
}

/** All that somebody is told, but the reason. */
const toldWhat = ({advice: {next, first}}: Told): string => (next === 'change' ? JSON.stringify([first?.cause.id, {...first?.change, before: 0, after: 0, values: 0}]) : next);

const ten = (what: Sight): readonly Sight[] => Array.from({length: 10}, () => what);
/** Too fast for any hand, and so heavy in the nose that its balance is asked back. */
const dart = withValues(defaultDesign, {'ballast.masses': [{mass: 0.056, at: 0.015}], 'arrangement.tailIncidence': -3 * Math.PI / 180});
const steady = flyer({span: 0.7, chord: 0.12, stack: 0.01, bent: 12, tailChord: 0.078, tailAt: 0.54, margin: 0.22, speed: 1.3});
const planes = [lessonGlider, dart, steady];
const bad = sights.filter((what) => what !== 'good');

describe('what the numbers of a plane ask for', () => {
  it('is one rule for whoever remedies it: a range left on one side asks for the other', () => {
    const calls = (design: GliderDesign): readonly Call[] => [...callsOf(flight(design))];
    expect(calls(lessonGlider)).to.deep.equal([]);
    expect(calls(dart)).to.deep.equal(['slower', 'back']);
    const standing = (design: GliderDesign, id: string) => valueOf(flightCheck(design)).measures.find((one) => one.id === id)?.standing;
    expect([standing(dart, 'speed'), standing(dart, 'staticMargin')]).to.deep.equal(['above', 'above']);
    const slow = withValues(lessonGlider, {'arrangement.tailIncidence': -4.1 * Math.PI / 180}), fast = withValues(lessonGlider, {'arrangement.tailIncidence': -1.2 * Math.PI / 180});
    expect([standing(slow, 'stallMargin'), calls(slow)]).to.deep.equal(['below', ['faster']]);
    expect([standing(fast, 'speed'), calls(fast)]).to.deep.equal(['above', ['slower']]);
    expect(calls(withValues(lessonGlider, {'balance.marginLow': 0.25}))).to.deep.equal(['forward']);
    for (const [degrees, code, call] of [[3, 'trim-dives', 'slower'], [-9, 'trim-stalls', 'faster']] as const) {
      const held = flight(withValues(lessonGlider, {'arrangement.tailIncidence': degrees * Math.PI / 180}));
      expect([held.trim.ok ? '' : held.trim.problems[0]?.code, [...callsOf(held)]]).to.deep.equal([code, [call]]);
    }
  });
});

describe('a thread of throws', () => {
  it('never takes a usual plane out of its usual ranges, whatever is seen', () => {
    fc.assert(fc.property(anyFlyer, fc.array(fc.constantFrom(...sights), {minLength: 10, maxLength: 10}), fc.array(fc.boolean(), {minLength: 10, maxLength: 10}), (drawn, whats, does) => {
      const begun = flyer(drawn), asked = callsOf(flight(begun));
      for (const {design, what} of played(begun, whats, does, true)) {
        const [least, most] = [design.balance.marginLow, design.balance.marginHigh];
        expect(marginOf(design), what).to.be.within(least - 1e-9, most + 1e-9);
        const {glide: {speed}, stallMargin} = trim(design);
        if (!asked.has('slower')) {
          expect(speed, what).to.be.at.most(Math.max(usualRanges.speed.to, usualRanges.stallMargin.from * flight(design).stall) + 1e-6);
          expect(stallMargin, what).to.be.at.most(usualRanges.stallMargin.to + 1e-6);
        }
        if (!asked.has('faster')) expect(stallMargin, what).to.be.at.least(usualRanges.stallMargin.from - 1e-6);
      }
    }), {numRuns: 15});
  });

  it('offers no step over the edge to a plane that is near it, not even to the nearest half gram or sheet of paper', () => {
    const near = fc.tuple(anyFlyer, fc.double({min: 0.31, max: 0.349, noNaN: true}), fc.double({min: 1.42, max: 1.48, noNaN: true}));
    fc.assert(fc.property(near, ([drawn, margin, speed]) => {
      const begun = flyer({...drawn, margin, speed});
      fc.pre(callsOf(flight(begun)).size === 0);
      for (const what of ['swoops', 'zooms', 'drops', 'dives'] as const) for (const change of advised(begun, {what}).causes.flatMap(({changes}) => changes)) {
        if ('after' in change) expect([...callsOf(flight(changed(begun, change.values)))], `${what} ${change.id}`).to.deep.equal([]);
      }
    }), {numRuns: 25});
  });

  it('never goes against what the flight check asks of the plane, however far it is out', () => {
    for (const begun of planes) for (const what of bad) for (const {design, advice} of played(begun, ten(what))) {
      const {first} = advice, calls = callsOf(flight(design));
      if (!first || !('after' in first.change)) continue;
      const {before, after} = first.change;
      if (calls.has('slower')) expect(after.speed, what).to.be.lessThan(before.speed ?? NaN);
      if (calls.has('faster')) expect(after.speed, what).to.be.greaterThan(before.speed ?? NaN);
      if (calls.has('back')) expect(after.margin, what).to.be.at.most(before.margin + 1e-9);
    }
  });

  it('ends when step upon step changes nothing, and has the plane measured before that', () => {
    for (const begun of planes) for (const what of bad) {
      const told = played(begun, ten(what)), last = told.at(-1)?.advice;
      expect([last?.next, last?.because], what).to.deep.equal(['stop', 'no-fit']);
      expect(told.length, what).to.be.within(3, 6);
      expect(last?.causes).to.deep.equal([]);
      expect(last?.first).to.equal(undefined);
      expect(told.filter(({advice: {first}}) => first?.change.id === 'measure'), what).to.have.length(1);
      // and stays ended
      expect(played(begun, ten(what), [], true).slice(told.length).every(({advice: {next}}) => next === 'stop'), what).to.equal(true);
    }
  });

  it('says the same twice in a row only where nothing was done about it, and says so', () => {
    fc.assert(fc.property(fc.constantFrom(...planes), fc.array(fc.constantFrom(...sights), {minLength: 10, maxLength: 10}), fc.array(fc.boolean(), {minLength: 10, maxLength: 10}), (begun, whats, does) => {
      const told = played(begun, whats, does);
      for (const [i, one] of told.entries()) {
        const before = told[i - 1];
        if (!before || toldWhat(one) !== toldWhat(before) || one.advice.next === 'stop') continue;
        if (does[i - 1] !== false) expect(one.advice.next === 'change' ? one.advice.because : one.what, 'the same step').not.to.equal(before.advice.next === 'change' ? before.advice.because : before.what);
        else expect(one.advice.because).to.be.oneOf(['confirmed', 'no-fit', 'first-good', 'differs', 'lost', 'hand']);
      }
    }), {numRuns: 40});
  });

  it('does a check once only, for as long as it does the same', () => {
    for (const begun of planes) for (const what of bad) {
      const checks = played(begun, ten(what)).flatMap(({advice: {first}}) => (first && !isStep(first.change.id) ? [`${first.change.id} ${first.change.id === 'secure' ? first.change.what : ''}`] : []));
      expect(new Set(checks).size, what).to.equal(checks.length);
    }
  });

  it('goes on after measuring: with one step by the same numbers, with more where they are others', () => {
    const [, , third, fourth, fifth] = played(lessonGlider, ten('dives'));
    expect([third?.advice.first?.change.id, third?.advice.because, third?.advice.vain]).to.deep.equal(['measure', 'no-fit', 2]);
    expect([isStep(fourth?.advice.first?.change.id), fourth?.advice.because, fifth?.advice.next]).to.deep.equal([true, 'measured', 'stop']);
    // weighed and balanced anew, it is another plane than was thought
    const before: readonly Past[] = [
      {seen: {what: 'dives'}, changed: 'slip-more', cause: 'nose-heavy', right: 5}, {seen: {what: 'dives'}, changed: 'throw', cause: 'thrown-down', right: 5},
      {seen: {what: 'dives'}, changed: 'measure', cause: 'nose-heavy', right: 5},
    ];
    const {vain, first} = advised(lessonGlider, {what: 'dives'}, before);
    expect([vain, isStep(first?.change.id)]).to.deep.equal([0, true]);
  });

  it('takes a step back only after one that went too far, about half as large, until none is small enough', () => {
    for (const begun of [lessonGlider, steady]) {
      const told = played(begun, ['dives', 'swoops', 'dives', 'swoops', 'dives', 'swoops']);
      expect(told.at(-1)?.advice.because).to.equal('either-way');
      const steps = told.flatMap(({advice: {first}}) => (first && 'after' in first.change ? [Math.log((first.change.after.speed ?? NaN) / (first.change.before.speed ?? NaN))] : []));
      expect(steps.length).to.equal(told.length - 1);
      for (const [i, step] of steps.entries()) {
        const before = steps[i - 1];
        if (before !== undefined) expect(step / before).to.be.within(-0.7, -0.3);
      }
      expect(told.slice(1, -1).map(({advice: {because}}) => because).every((because) => because === 'overshot')).to.equal(true);
    }
    // a throw is no step that can be halved, and neither is measuring
    const past = (what: Sight, changed: 'throw' | 'measure'): Past => ({seen: {what}, changed});
    for (const [what, before] of [['dives', past('swoops', 'throw')], ['right', past('left', 'throw')], ['swoops', past('dives', 'measure')]] as const) {
      expect(advised(lessonGlider, {what}, [before]).because).to.be.oneOf(['hand', 'other']);
    }
  });

  it('looks to the hand where only the throw was different, and stops where the same plane flies now so and now otherwise', () => {
    const told = played(lessonGlider, ['left', 'right', 'left', 'right']).map(({advice: {next, because}}) => `${next} ${because}`);
    expect(told).to.deep.equal(['change first', 'again hand', 'again differs', 'stop unsteady']);
  });

  it('stops after many steps, whatever is seen', () => {
    const steps = (['dives', 'left', 'dives', 'right', 'wags', 'rolls', 'dives', 'left'] as const).map((what): Past => ({seen: {what}, changed: 'slip-more'}));
    expect(advised(lessonGlider, {what: 'drops'}, steps)).to.deep.include({next: 'stop', because: 'many'});
    expect(advised(lessonGlider, {what: 'drops'}, steps.slice(1)).next).to.equal('change');
    expect(advised(lessonGlider, {what: 'good'}, steps).next).to.equal('again');
  });
});
