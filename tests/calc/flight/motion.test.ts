import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {usualAir} from '../../../src/calc/aero/air.js';
import {tailEfficiency} from '../../../src/calc/aero/plane-aero.js';
import {amountsOf, planeLoads} from '../../../src/calc/aero/plane-loads.js';
import {totalSide} from '../../../src/calc/aero/side-loads.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {carriedAir, coefficientsOf} from '../../../src/calc/flight/derivatives.js';
import {characteristicPolynomial, eigenvalues} from '../../../src/calc/flight/eigenvalues.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {glideAt} from '../../../src/calc/flight/glide.js';
import {inertiaOf} from '../../../src/calc/flight/inertia.js';
import {longitudinalMatrix} from '../../../src/calc/flight/motion-equations.js';
import {motionOf, type Motion} from '../../../src/calc/flight/motion.js';
import {notFinite} from '../aero/finite.js';
import {likelyShape} from '../aero/gliders.js';
import {balancedWith, codesOf, planeOf, trim, trimmedAt, valueOf} from './planes.js';

const steady = trimmedAt(5.5);
const motion = (design: typeof steady): Motion => valueOf(motionOf(design));

describe('eigenvalues', () => {
  it('are those that a matrix was made of', () => {
    const entry = fc.double({min: -5, max: 5, noNaN: true});
    // lower triangular: the diagonal is what comes out, whatever stands beside it
    fc.assert(fc.property(fc.uniqueArray(fc.integer({min: -60, max: 60}), {minLength: 4, maxLength: 4}), fc.array(entry, {minLength: 6, maxLength: 6}), (diagonal, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]) => {
      const [p = 0, q = 0, r = 0, s = 0] = diagonal;
      const found = eigenvalues([[p, 0, 0, 0], [a, q, 0, 0], [b, c, r, 0], [d, e, f, s]]).map(({re}) => re).sort((x, y) => x - y);
      [...diagonal].sort((x, y) => x - y).forEach((wanted, i) => { expect(found[i]).to.be.closeTo(wanted, 1e-6 * (1 + Math.abs(wanted))); });
    }));
  });

  it('swing where a matrix turns', () => {
    expect(eigenvalues([[0, -3], [3, 0]]).map(({re, im}) => [Math.round(re * 1e9), Math.abs(im)])).to.deep.equal([[0, 3], [0, 3]]);
    expect(characteristicPolynomial([[2, 1], [1, 2]])).to.deep.equal([-4, 3]);
  });

  it('are finite for a matrix of nothing', () => {
    expect(notFinite(eigenvalues([[0, 0, 0, 0], [0, 0, 0, 0], [0, 0, 0, 0], [0, 0, 0, 0]]))).to.deep.equal([]);
  });
});

describe('the equations of motion in a steep glide', () => {
  it('are those of a point that keeps its angle of attack', () => {
    // V' = −D/m − g sin γ, γ' = (L/m − g cos γ)/V about a steady glide, lift and drag as V²: two equations by hand
    const speed = 5, gravity = 9.8, path = -0.4;
    const drag = -gravity * Math.sin(path), lift = gravity * Math.cos(path);
    const byHand = eigenvalues([[-2 * drag / speed, -gravity * Math.cos(path)], [2 * lift / speed ** 2, gravity * Math.sin(path) / speed]]);
    const whole = eigenvalues(longitudinalMatrix(
      {xu: -2 * drag / speed, xw: 0, zu: -2 * lift / speed, zw: -3, zwDot: 0, zq: 0, mu: 0, mw: -1e6, mwDot: 0, mq: -50}, {speed, pathAngle: path, gravity},
    ));
    expect(whole[2]?.re).to.be.closeTo(byHand[0]?.re ?? NaN, 1e-3);
    expect(Math.abs(whole[2]?.im ?? NaN)).to.be.closeTo(Math.abs(byHand[0]?.im ?? NaN), 1e-3);
  });
});

describe('inertia', () => {
  const bare = withValues(defaultDesign, {'ballast.masses': [], 'glue.bead': 0, 'glue.bands': 0, 'glue.tape': 0, 'wing.joints': [], 'board.arealMass': 0.5});

  it('is that of boards and bars by hand', () => {
    const plane = planeOf(bare), {roll, pitch, yaw} = inertiaOf(plane, bare.body);
    const of = (id: string) => plane.masses.parts.filter((item) => item.id === id).reduce((sum, {mass}) => sum + mass, 0);
    const wing = of('wing'), body = of('body'), tail = of('tailplane'), fins = of('fins');
    const {wing: w, tail: t, arrangement} = bare, balance = plane.balance + plane.wingAt;
    const at = (x: number) => (x - balance) ** 2;
    const flat = wing * (w.chord ** 2 / 12 + at(arrangement.wingAt + w.chord / 2)) + body * (bare.body.length ** 2 / 12 + at(bare.body.length / 2))
      + tail * (t.chord ** 2 / 12 + at(arrangement.tailAt + t.chord / 2)) + fins * (t.fins.chord ** 2 / 12 + at(arrangement.tailAt + t.chord - t.fins.chord / 2));
    // seen from the side, heights of some millimetres add little
    expect(pitch).to.be.closeTo(flat, 0.02 * flat);
    const across = wing * w.span ** 2 / 12 + tail * t.span ** 2 / 12 + fins * (t.span / 2) ** 2;
    expect(yaw).to.be.closeTo(flat + across, 0.005 * (flat + across));
    expect(roll).to.be.closeTo(across, 0.05 * across);
  });

  it('grows with a weight by its distance squared', () => {
    const weighted = withValues(bare, {'ballast.masses': [{mass: 0.02, at: 0}]});
    const before = planeOf(bare), after = planeOf(weighted);
    const added = inertiaOf(after, bare.body).yaw - inertiaOf(before, bare.body).yaw;
    // two bodies joined: their reduced mass times the distance between their centres squared
    const reduced = before.mass * 0.02 / (before.mass + 0.02);
    expect(added).to.be.closeTo(reduced * (before.balance + before.wingAt) ** 2, 1e-9);
  });

  it('is scaled when the whole plane was weighed', () => {
    const {yaw} = inertiaOf(planeOf(bare), bare.body);
    const heavy = withValues(bare, {'measured.mass': 2 * planeOf(bare).mass});
    expect(inertiaOf(planeOf(heavy), bare.body).yaw).to.be.closeTo(2 * yaw, 1e-9);
  });

  it('has air that moves along: as much as a round rod of it about each board', () => {
    const plane = planeOf(bare), {up} = carriedAir(plane, 0, usualAir.density);
    const {wing, tail} = bare, rod = (chord: number, span: number) => Math.PI / 4 * usualAir.density * chord ** 2 * span;
    // the lattice stops a quarter of a strip short of a free tip
    expect(up).to.be.closeTo(rod(wing.chord, wing.span) + rod(tail.chord, tail.span), 0.03 * up);
  });
});

describe('motion after a disturbance', () => {
  it('nods quickly and dies out; the phugoid is slow and can be timed', () => {
    const {nod, phugoid} = motion(steady);
    expect(nod.every(({half}) => half !== undefined && half < 0.3)).to.equal(true);
    const [slow] = phugoid;
    expect(slow?.period).to.be.within(1.5, 8);
  });

  it('has a phugoid slower than Lanchester’s by about the root of manoeuvre margin over static margin', () => {
    // B. Etkin’s short approximation with C_mq: a light plane’s damping in pitch counts as much as its static margin
    const design = trimmedAt(5.5), plane = planeOf(design), {lanchester, phugoid: [slow], coefficients} = motion(design);
    const {wing} = plane.aero.shape;
    const relative = 2 * plane.mass / (usualAir.density * wing.area * wing.meanAerodynamicChord);
    const manoeuvre = plane.margin - coefficients.pitching.moment / (2 * relative);
    const frequency = Math.hypot(slow?.root.re ?? NaN, slow?.root.im ?? NaN);
    expect(2 * Math.PI / frequency / lanchester).to.be.closeTo(Math.sqrt(manoeuvre / plane.margin), 0.1 * Math.sqrt(manoeuvre / plane.margin));
  });

  it('tightens a turn without dihedral and rolls out of it with plenty', () => {
    const bank = (angle: number) => motion(trimmedAt(5.5, balancedWith(0.2, withValues(defaultDesign, {'wing.joints': [{angle, at: 0}]}))));
    expect(bank(0).turn).to.equal('tightens');
    expect(bank(0.3).turn).not.to.equal('tightens');
    expect(bank(0.3).spiralCriterion).to.be.greaterThan(bank(0).spiralCriterion);
    expect(bank(0).spiralRule).to.be.closeTo(0, 1e-9);
    expect(bank(0.3).spiralRule).to.be.greaterThan(5);
  });

  it('has a spiral criterion whose sign is that of the spiral’s root', () => {
    let tried = 0;
    fc.assert(fc.property(likelyShape, fc.double({min: 0.1, max: 0.4, noNaN: true}), (shape, margin) => {
      const design = balancedWith(margin, shape);
      const flight = valueOf(flightOf(design));
      const flown = motionOf(withValues(design, {'arrangement.tailIncidence': flight.best.setting.tailIncidence}));
      if (!flown.ok) return;
      const {spiral, roll, spiralCriterion, wag} = flown.value;
      // where roll and spiral have become one swing, no root is the spiral’s
      if (!spiral || spiral === roll || !wag) return;
      tried++;
      if (Math.abs(spiral.root.re) > 1e-6) expect(Math.sign(spiralCriterion)).to.equal(-Math.sign(spiral.root.re));
    }), {numRuns: 40});
    expect(tried).to.be.greaterThan(20);
  });

  it('wags less with taller fins', () => {
    const halfLife = (height: number) => motion(trimmedAt(5.5, balancedWith(0.2, withValues(defaultDesign, {'tail.fins.height': height})))).wag?.half ?? Infinity;
    expect(halfLife(0.1)).to.be.lessThan(halfLife(0.03));
  });

  it('has derivatives about the balance point that agree with the plane’s static margin', () => {
    const plane = planeOf(steady), {coefficients} = motion(steady);
    expect(-coefficients.momentSlope / coefficients.liftSlope).to.be.closeTo(plane.margin, 1e-9);
    expect(coefficients.pitching.moment).to.be.lessThan(-5);
    expect(coefficients.lag.moment / coefficients.pitching.moment).to.be.within(0.2, 0.6);
  });

  it('has derivatives about the balance point that are those of a lattice laid out about it', () => {
    const plane = planeOf(steady), {glide} = trim(steady), inertia = inertiaOf(plane, steady.body);
    const {aero} = plane, {wing} = aero.shape, {z} = inertia;
    // without body and friction, which the lattice has not
    const bare = {...plane, parasite: {...plane.parasite, boards: [], body: {...plane.parasite.body, noseSide: 0, noseLift: 0}}};
    const moved = coefficientsOf(bare, glide, inertia, usualAir);
    const surfaces = aero.shape.surfaces.map((surface) => ({...surface, ribs: surface.ribs.map((rib) => ({...rib, z: rib.z - z}))}));
    const section = aero.rootSection;
    const many = Array.from({length: 40}, () => ({zeroLiftAngle: section.zeroLiftAngle, quarterChordMoment: section.quarterChordMoment, idealLift: 0}));
    const laid = valueOf(planeLoads({
      surfaces, sections: many, perFold: many, area: wing.area, span: wing.span, chord: wing.meanAerodynamicChord, x: plane.balance, tailEfficiency: tailEfficiency.usual,
    }));
    const amounts = amountsOf(glide.setting);
    for (const [name, ours] of [['sideslip', moved.sideslip], ['rolling', moved.rolling], ['yawing', moved.yawing]] as const) {
      const theirs = totalSide(laid.side[name], amounts);
      for (const part of ['force', 'roll', 'yaw'] as const) expect(ours[part], `${name} ${part}`).to.be.closeTo(theirs[part], 1e-9);
    }
    expect(moved.pitching.lift).to.be.closeTo(laid.pitching.lift, 1e-9);
    expect(moved.pitching.moment).to.be.closeTo(laid.pitching.moment, 1e-9);
  });

  it('drags more with a larger angle as the glide itself does', () => {
    const plane = planeOf(steady), {glide} = trim(steady), {dragSlope} = motion(steady).coefficients;
    const of = (attack: number) => { const {induced, suction} = glideAt(plane, {...glide.setting, attack}, usualAir).dragOf; return induced + suction; };
    const step = 1e-4, {attack} = glide.setting;
    expect(dragSlope).to.be.closeTo((of(attack + step) - of(attack - step)) / (2 * step), 1e-6);
  });

  it('is refused where there is no glide', () => {
    expect(codesOf(motionOf(withValues(defaultDesign, {'ballast.masses': []})))).to.deep.equal(['flight-unstable']);
    expect(codesOf(motionOf(withValues(balancedWith(0.2), {'arrangement.tailIncidence': 0.1})))).to.deep.equal(['trim-dives']);
    expect(trim(steady).glide.speed).to.be.closeTo(5.5, 0.01);
  });
});
