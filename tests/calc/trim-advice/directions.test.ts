import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {gravity} from '../../../src/calc/aero/air.js';
import {withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {motionOf} from '../../../src/calc/flight/motion.js';
import {throwStudy} from '../../../src/calc/flight/simulation/throw-study.js';
import {turnTrack, turnSensitivities, type Crooked, type TurnTrack} from '../../../src/calc/flight/simulation/turning.js';
import {changed} from '../../../src/calc/trim-advice/levers.js';
import {adviceFor} from '../../../src/calc/trim-advice/advice.js';
import {tailRemedy} from '../../../src/calc/trim-advice/no-glide.js';
import {finOf} from '../../../src/calc/trim-advice/straightening.js';
import type {Change} from '../../../src/calc/trim-advice/change.js';
import {flight, trim, valueOf} from '../flight/planes.js';
import {advised, anyFlyer, changesFor, flown, flyer, marginOf, rightThrow, risen, slipping, wantedMargins} from './flyers.js';

const after = (design: GliderDesign, {values}: Change): GliderDesign => changed(design, values ?? {});
const runs = {numRuns: 50, endOnFailure: true};

describe('every piece of advice, applied, moves the simulated flight the right way', () => {
  it('noses down: less weight in front, weight further back or more slip under the tail makes it dive less', () => {
    fc.assert(fc.property(anyFlyer, fc.double({min: 0.004, max: 0.012, noNaN: true}), (drawn, more) => {
      const healthy = flyer(drawn), thrown = rightThrow(healthy);
      const heavy = withValues(healthy, {'ballast.masses': [{mass: 0.02 + more, at: 0.015}]});
      const dive = flown(heavy, thrown);
      const changes = changesFor(heavy, {what: 'dives'}, 'nose-heavy');
      expect(changes.map(({id}) => id)).to.include('nose-off').and.to.include('weight-back').and.to.include('slip-more');
      for (const change of changes) {
        const mended = after(heavy, change);
        const track = flown(mended, thrown);
        expect(track.at(dive.last.time).height, change.id).to.be.greaterThan(dive.last.height + 0.01);
        expect(track.last.x, change.id).to.be.greaterThan(dive.last.x);
        expect(marginOf(mended), change.id).to.be.at.least(wantedMargins[0]);
      }
    }), runs);
  });

  it('noses up: more weight in front, weight further forward or less slip makes it rise less over its glide', () => {
    fc.assert(fc.property(anyFlyer, fc.double({min: 0.8, max: 1.5, noNaN: true}), (drawn, millimetres) => {
      const healthy = flyer(drawn), thrown = rightThrow(healthy);
      const light = changed(healthy, {'arrangement.tailIncidence': Math.asin(Math.sin(healthy.arrangement.tailIncidence) - millimetres / 1e3 / healthy.tail.chord)});
      const swoop = risen(flown(light, thrown), thrown);
      expect(swoop).to.be.greaterThan(0.02);
      // one that would only stall is held up until its tail is set
      if (!flight(light).trim.ok) {
        const slips = tailRemedy(light, flight(light));
        expect(adviceFor(light, {what: 'swoops'}, []).ok).to.equal(false);
        if (slips?.id !== 'slip-less') throw new Error('no remedy');
        // thrown as it should be then, it goes straight on, which it did not before
        const mended = after(light, slips), gently = rightThrow(mended);
        expect(risen(flown(mended, gently), gently)).to.be.lessThan(1e-3);
        expect(risen(flown(mended, gently), gently)).to.be.lessThan(risen(flown(light, gently), gently));
        return;
      }
      const changes = changesFor(light, {what: 'swoops'}, 'tail-heavy');
      expect(changes.map(({id}) => id)).to.include('nose-on').and.to.include('weight-forward').and.to.include('slip-less');
      for (const change of changes) expect(risen(flown(after(light, change), thrown), thrown), change.id).to.be.lessThan(swoop);
    }), runs);
  });

  it('a fast or steep throw put right no longer zooms, a slow one no longer drops', () => {
    const thrownAs = (design: GliderDesign) => valueOf(throwStudy(design, 'one')).flown[0];
    fc.assert(fc.property(anyFlyer, fc.constantFrom('thrown-fast', 'thrown-up', 'thrown-slow'), fc.double({min: 0, max: 1, noNaN: true}), (drawn, cause, share) => {
      const healthy = flyer(drawn), right = rightThrow(healthy), {speed, angle, height} = right;
      const design = withValues(healthy, cause === 'thrown-fast' ? {'launch.speed': (1.2 + 0.5 * share) * speed}
        : cause === 'thrown-up' ? {'launch.angle': angle + 0.15 + 0.4 * share} : {'launch.speed': (0.6 + 0.25 * share) * speed});
      const [change] = changesFor(design, {what: cause === 'thrown-slow' ? 'drops' : 'zooms'}, cause);
      if (!change) throw new Error('nothing advised');
      const [bad, good] = [design, after(design, change)].map((each) => thrownAs(each)?.track);
      if (!bad || !good) throw new Error('not thrown');
      expect(good.highest.height - height).to.be.lessThan(1e-3);
      if (cause === 'thrown-slow') expect(good.last.x).to.be.greaterThan(bad.last.x);
      else expect(risen(good, right)).to.be.lessThan(risen(bad, right) - 0.05);
    }), runs);
  });

  it('bent fins, weight at a tip or an untwisted wing turn it less', () => {
    fc.assert(fc.property(anyFlyer, fc.constantFrom('fin', 'tipMass', 'twist'), fc.boolean(), fc.double({min: 20, max: 60, noNaN: true}), (drawn, fault, toRight, degrees) => {
      const design = flyer(drawn);
      const {per: {[fault]: effect}, speed} = valueOf(turnSensitivities(design));
      const size = degrees * Math.PI / 180 / (effect.heading + gravity * effect.bank / speed) * (toRight ? 1 : -1);
      fc.pre(Math.abs(size) < {fin: 0.3, tipMass: 0.02, twist: 0.1}[fault] && Math.abs(size * effect.bank) < 0.6);
      const crooked: Crooked = {fin: 0, tipMass: 0, twist: 0, [fault]: size};
      const bent = valueOf(turnTrack(design, crooked));
      const {last: {y}} = bent, up = banked(bent) > 0 ? 'left' : 'right';
      expect([y > 0, up === 'left'], 'path and bank').to.deep.equal([toRight, toRight]);
      const {causes} = advised(design, {what: y > 0 ? 'right' : 'left'});
      const changes = causes.flatMap((cause) => cause.changes).filter(({id}) => id === 'fin' || id === 'tip' || id === 'untwist');
      expect(changes.map(({id}) => id)).to.have.members(['fin', 'tip', 'untwist']);
      for (const change of changes) {
        const straighter = valueOf(turnTrack(design, mended(crooked, change, up)));
        for (const measure of [banked, turnedSoon]) expect(Math.abs(measure(straighter)), change.id).to.be.lessThan(Math.abs(measure(bent)));
      }
    }), {...runs, examples: [[slipping, 'tipMass', true, 18], [slipping, 'tipMass', false, 18], [slipping, 'fin', true, 20], [slipping, 'twist', true, 20]]});
  });

  it('more dihedral rolls a bank out sooner, and taller fins stop a wag sooner', () => {
    const given = new Set<string | undefined>();
    fc.assert(fc.property(anyFlyer, (drawn) => {
      const design = flyer(drawn);
      const [more] = changesFor(design, {what: 'rolls'}, 'little-dihedral'), [taller] = changesFor(design, {what: 'wags'}, 'small-fin');
      if (more?.id === 'dihedral') {
        const [before, then] = [design, after(design, more)].map((each) => valueOf(turnTrack(each, {tipMass: 0.002})));
        if (!before || !then) throw new Error('not flown');
        const time = Math.min(before.last.time, then.last.time);
        expect(Math.abs(then.at(time).bank)).to.be.lessThan(Math.abs(before.at(time).bank));
      }
      if (taller?.id === 'fin-larger') {
        const [before, then] = [design, after(design, taller)].map((each) => valueOf(motionOf(each)).wag?.root.re ?? NaN);
        expect(then).to.be.lessThan(before ?? NaN);
      }
      given.add(more?.id).add(taller?.id);
    }), {numRuns: 30});
    // neither where it would make more of it than is usual
    expect([...given]).to.include('dihedral').and.to.include('fin-larger');
  });
});

/** The mean of tan(bank) from hand to ground, which is what bends a path; at one moment a wag may hide it. */
function banked({at, last}: TurnTrack): number {
  const parts = 24;
  return Array.from({length: parts}, (_, i) => Math.tan(at(last.time * (i + 0.5) / parts).bank)).reduce((sum, each) => sum + each) / parts;
}

/** Which way a plane goes over the ground when it lands, and would a second later, banked as it was: seen from outside, whatever its nose does. */
function turnedSoon(track: TurnTrack): number {
  const {at, last} = track, before = at(last.time - 0.02);
  return Math.atan2(last.y - before.y, last.x - before.x) + gravity * banked(track) / last.speed;
}

/** What is left of crookedness after a change, right turns positive; a weight without a side goes to the tip that comes up. */
function mended({fin, tipMass, twist}: Crooked, change: Change, up: 'left' | 'right'): Crooked {
  const sign = (side: 'left' | 'right'): number => (side === 'right' ? 1 : -1);
  if (change.id === 'fin') return {tipMass, twist, fin: fin + finOf(change)};
  if (change.id === 'tip') return {fin, twist, tipMass: tipMass + sign(change.side ?? up) * change.mass};
  if (change.id === 'untwist' && change.side) return {fin, tipMass, twist: twist + sign(change.side) * change.angle};
  throw new Error(`${change.id} straightens nothing`);
}

describe('the model agrees with itself', () => {
  it('tells the speed after each change as the changed design has it', () => {
    const design = flyer({span: 0.66, chord: 0.12, stack: 0.01, bent: 12, tailChord: 0.078, tailAt: 0.54, margin: 0.22, speed: 1.3});
    for (const what of ['dives', 'swoops'] as const) {
      for (const change of advised(design, {what}).causes.flatMap(({changes}) => changes)) {
        if ('after' in change) expect(change.after.speed, change.id).to.be.closeTo(trim(after(design, change)).glide.speed, 1e-12);
      }
    }
  });
});
