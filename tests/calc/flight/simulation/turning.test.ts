import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {gravity, usualAir} from '../../../../src/calc/aero/air.js';
import {planeBalance} from '../../../../src/calc/balance/plane-balance.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../../src/calc/design/design.js';
import {eigenvalues} from '../../../../src/calc/flight/eigenvalues.js';
import {flightOf} from '../../../../src/calc/flight/flight.js';
import type {Glide} from '../../../../src/calc/flight/glide.js';
import {motionOf} from '../../../../src/calc/flight/motion.js';
import {lateralMatrix} from '../../../../src/calc/flight/motion-equations.js';
import {crookedLimits, crookedPlane, straight, wholeFin, type Crooked} from '../../../../src/calc/flight/simulation/crooked.js';
import {airframeOf} from '../../../../src/calc/flight/simulation/plane-airframe.js';
import {fly, type Throw} from '../../../../src/calc/flight/simulation/throw.js';
import {followTurn, smallTurn, tightest, turnSensitivities, turnTrack, type TurnTrack} from '../../../../src/calc/flight/simulation/turning.js';
import {balancedWith, codesOf, trimmedAt, valueOf} from '../planes.js';
import {gliding} from './gliders.js';

const causes = ['fin', 'tipMass', 'twist'] as const satisfies readonly (keyof Crooked)[];
const unit = {fin: 0.03, tipMass: 0.001, twist: 0.01} as const;
/** With little dihedral a bank tightens, with much it rolls out. */
const withDihedral = (angle: number): GliderDesign => trimmedAt(5.5, balancedWith(0.2, withValues(defaultDesign, {'wing.joints': [{angle, at: 0}]})));
const steadyTurner = withDihedral(0.2);

const track = (design: GliderDesign, crooked: Partial<Crooked>, options?: Parameters<typeof turnTrack>[2]): TurnTrack =>
  valueOf(turnTrack(design, crooked, {wind: 0, ...options}));

const released = ({speed, angle, setting}: Glide, height: number): Throw => ({height, wind: 0, speed, angle: -angle, attack: setting.attack});

describe('a turn', () => {
  it('is none where nothing is crooked: the glide of the throw, to the centimetre', () => {
    const {last, radius, bank, ends, points} = track(gliding, {});
    const {plane, trim} = valueOf(flightOf(gliding)), {glide} = valueOf(trim);
    const thrown = valueOf(fly(airframeOf(plane, gliding.body, usualAir), released(glide, 1.6)));
    expect([radius, bank, ends]).to.deep.equal([Infinity, 0, 'landed']);
    expect(points.every(({y, heading}) => y === 0 && heading === 0)).to.equal(true);
    expect(last.x).to.be.closeTo(thrown.last.x, 1e-3);
    expect(last.time).to.be.closeTo(thrown.last.time, 1e-4);
  });

  it('is the flight of the throw’s own equations for any throw that goes straight', () => {
    const {plane, trim} = valueOf(flightOf(gliding)), {glide} = valueOf(trim), airframe = airframeOf(plane, gliding.body, usualAir);
    for (const thrown of [{...released(glide, 9), speed: 1.5 * glide.speed}, {...released(glide, 9), speed: 0.6 * glide.speed}, {height: 9, wind: 1.5, speed: 6, angle: 0.3, attack: 0.1}]) {
      const planar = valueOf(fly(airframe, thrown)), whole = track(gliding, {}, {thrown, tolerance: 1e-8});
      expect(whole.ends).to.equal('landed');
      expect(whole.last.x).to.be.closeTo(planar.last.x, 1e-4);
      expect(whole.last.time).to.be.closeTo(planar.last.time, 1e-5);
      expect(whole.highest.height).to.be.closeTo(planar.highest.height, 1e-5);
      for (const part of ['speed', 'angle', 'pitch', 'attack', 'rate', 'energy', 'taken'] as const) expect(whole.at(0.5)[part], part).to.be.closeTo(planar.at(0.5)[part], 1e-3);
    }
  });

  it('loses just the energy that drag and sideslip take', () => {
    for (const crooked of [{fin: 0.1}, {twist: -0.03}, {tipMass: 0.003}, {fin: 0.05, twist: 0.02}]) {
      const {moments: [first], last} = track(steadyTurner, crooked, {height: 30, tolerance: 1e-8});
      expect((first?.energy ?? NaN) - last.energy).to.be.closeTo(last.taken, 1e-6 * last.taken);
    }
  });

  it('takes a weight at the tip of a swept wing that reaches further back than the body', () => {
    const swept = withValues(defaultDesign, {'wing.sweep': 0.35, 'arrangement.tailAt': 0.5, 'body.length': 0.58, 'balance.marginHigh': 0.6});
    const {plane: {mass, balance}, aside} = valueOf(crookedPlane(trimmedAt(6, balancedWith(0.3, swept)), {...straight, tipMass: 0.004}, usualAir));
    expect(mass).to.be.closeTo(0.094, 1e-12);
    // moments about the wing's front edge: 90 g where they were, 4 g in the middle of the tip's chord
    expect(balance).to.be.closeTo((0.09 * (valueOf(planeBalance(balancedWith(0.3, swept))).behindWing) + 0.004 * (0.35 + 0.06)) / 0.094, 2e-3);
    expect(aside).to.be.closeTo(0.004 * 0.32 / 0.094, 5e-4);
  });

  it('goes the same way to the left as to the right', () => {
    for (const cause of causes) {
      const right = track(gliding, {[cause]: unit[cause]}), left = track(gliding, {[cause]: -unit[cause]});
      expect(left.radius).to.be.closeTo(-right.radius, 1e-9 * right.radius);
      expect(left.last.y).to.be.closeTo(-right.last.y, 1e-12);
      expect(left.last.x).to.be.closeTo(right.last.x, 1e-12);
      expect(right.radius).to.be.greaterThan(0);
      expect(right.last.y).to.be.greaterThan(0);
      expect(right.bank).to.be.greaterThan(0);
    }
  });

  it('is what the equations of small motions say, for small causes', () => {
    for (const design of [gliding, withDihedral(0), steadyTurner]) {
      for (const cause of causes) {
        const crooked = {[cause]: unit[cause] / 100};
        const small = smallTurn(valueOf(crookedPlane(design, {...straight, ...crooked}, usualAir)), 1);
        const {last} = track(design, crooked, {seconds: 1, tolerance: 1e-10, height: 20});
        expect(last.bank, cause).to.be.closeTo(small.bank, 5e-3 * Math.abs(small.bank));
        expect(last.heading, cause).to.be.closeTo(small.heading, 5e-3 * Math.abs(small.heading));
      }
    }
  });

  it('starts from the matrix whose roots are the motion’s own', () => {
    const {lateral, steady} = valueOf(crookedPlane(gliding, straight, usualAir));
    const roots = eigenvalues(lateralMatrix(lateral, steady)).map(({re, im}) => [re, Math.abs(im)]);
    const {wag, roll, spiral} = valueOf(motionOf(gliding));
    for (const mode of [wag, roll, spiral]) {
      if (!mode) throw new Error('the glider has all three');
      expect(Math.min(...roots.map(([re = 0, im = 0]) => Math.hypot(re - mode.root.re, im - Math.abs(mode.root.im))))).to.be.lessThan(1e-9);
    }
  });

  it('grows by the spiral’s root in the end', () => {
    const design = withDihedral(0.04), {spiral} = valueOf(motionOf(design));
    const plane = valueOf(crookedPlane(design, {...straight, fin: 1e-3}, usualAir));
    if (spiral?.double === undefined) throw new Error('a bank of this plane tightens');
    // differences are free of the steady part
    const [a, b, c] = [6, 7, 8].map((t) => smallTurn(plane, t).bank) as [number, number, number];
    expect(Math.log((c - b) / (b - a))).to.be.closeTo(spiral.root.re, 1e-3);
  });

  it('is steady in a plane whose bank rolls out: tan φ = V² cos γ/(g R), but for the air’s force to the side', () => {
    for (const cause of ['tipMass', 'twist'] as const) {
      const made = valueOf(crookedPlane(steadyTurner, {...straight, [cause]: unit[cause]}, usualAir));
      const airframe = airframeOf(made.plane, steadyTurner.body, usualAir);
      const flown = ({lateral, boards}: Pick<typeof made, 'lateral' | 'boards'>): TurnTrack =>
        followTurn({...made, lateral, boards}, airframe, released(made.glide, 60), {seconds: 25, tolerance: 1e-8});
      // in a glide V² cos γ: the plane’s long axis, about which it banks, points a little off its way
      const byBank = ({bank, radius, last, at}: TurnTrack): number => {
        const sink = at(last.time - 1).height - last.height;
        return Math.tan(bank) * gravity * radius / (last.speed ** 2 * Math.sqrt(1 - (sink / last.speed) ** 2));
      };
      // nothing to the side but the weight and the turn
      const pure = flown({lateral: {...made.lateral, yv: 0, yp: 0, yr: 0}, boards: {...made.boards, side: 0}}), whole = flown(made);
      expect([whole.ends, whole.tightening]).to.deep.equal(['time', false]);
      expect(byBank(pure)).to.be.closeTo(1, 0.005);
      expect(byBank(whole)).to.be.closeTo(1, 0.2);
    }
  });

  it('flies faster and sinks faster the steeper it banks', () => {
    const [little, much] = [0.5, 1.5].map((times) => track(steadyTurner, {twist: times * unit.twist}, {height: 60, seconds: 20})) as [TurnTrack, TurnTrack];
    expect(much.bank).to.be.greaterThan(little.bank);
    expect(much.last.speed).to.be.greaterThan(little.last.speed);
    expect(much.last.height).to.be.lessThan(little.last.height);
  });

  it('tightens without dihedral where it would be steady with some', () => {
    const [flat, raised] = [withDihedral(0), steadyTurner].map((design) => track(design, {tipMass: 0.001}, {height: 60, seconds: 3})) as [TurnTrack, TurnTrack];
    expect([flat.tightening, raised.tightening]).to.deep.equal([true, false]);
    expect(flat.bank).to.be.greaterThan(3 * raised.bank);
  });

  it('is followed no further than the model goes', () => {
    const {ends, last} = track(steadyTurner, {fin: 0.2}, {height: 60});
    expect(ends).to.equal('tight');
    expect(Math.abs(last.bank)).to.be.closeTo(tightest.bank, 1e-6);
  });

  it('is carried by the wind and otherwise the same', () => {
    const still = track(gliding, {fin: 0.05}), windy = track(gliding, {fin: 0.05}, {wind: 2});
    expect(windy.last.time).to.equal(still.last.time);
    expect(windy.last.x).to.be.closeTo(still.last.x - 2 * still.last.time, 1e-9);
    expect(windy.radius).to.equal(still.radius);
  });

  it('has a number for every moment of whatever is allowed', () => {
    const within = (most: number) => fc.double({min: -most, max: most, noNaN: true});
    fc.assert(fc.property(within(crookedLimits.fin), within(crookedLimits.tipMass), within(crookedLimits.twist), fc.double({min: 0.01, max: 100, noNaN: true}), (fin, tipMass, twist, height) => {
      const turned = turnTrack(gliding, {fin, tipMass, twist}, {height, seconds: 10});
      if (!turned.ok) { expect(codesOf(turned)).to.satisfy((codes: string[]) => codes.every((code) => ['trim-dives', 'trim-stalls', 'flight-unstable'].includes(code))); return; }
      expect(turned.value.points.flatMap((point) => Object.values(point) as number[]).every(Number.isFinite)).to.equal(true);
      expect(Number.isNaN(turned.value.radius)).to.equal(false);
    }), {numRuns: 60});
  });

  it('is refused for what nobody builds, and where there is no glide', () => {
    for (const crooked of [{fin: 1}, {fin: NaN}, {tipMass: Infinity}, {twist: -0.5}]) expect(codesOf(turnTrack(gliding, crooked))).to.deep.equal(['crooked-out-of-range']);
    expect(codesOf(turnTrack(withValues(gliding, {'ballast.masses': []}), {}))).to.deep.equal(['flight-unstable']);
  });
});

describe('what a little crookedness does', () => {
  it('is the turn of a little, over how little', () => {
    const {seconds, per} = valueOf(turnSensitivities(gliding));
    for (const cause of causes) {
      const {last} = track(gliding, {[cause]: unit[cause] / 50}, {tolerance: 1e-10, seconds});
      expect(last.bank * 50 / unit[cause]).to.be.closeTo(per[cause].bank, 0.01 * per[cause].bank);
    }
  });

  it('is measured when the plane lands', () => {
    const {seconds, speed} = valueOf(turnSensitivities(gliding));
    const {last} = track(gliding, {});
    expect(seconds).to.be.closeTo(last.time, 0.02);
    expect(speed).to.be.closeTo(last.speed, 0.02);
  });
});

describe('a bent rear edge', () => {
  it('does as much as the whole fin only where all of it is bent', () => {
    expect(wholeFin(0.1, 1)).to.be.closeTo(0.1, 1e-15);
    expect(wholeFin(0.1, 0)).to.be.closeTo(0, 1e-15);
    // Glauert’s flap of a fifth of the chord: 0.55
    expect(wholeFin(1, 0.2)).to.be.closeTo(0.55, 0.005);
  });
});
