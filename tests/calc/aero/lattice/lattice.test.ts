import {expect} from '@open-wc/testing';
import {layPanels} from '../../../../src/calc/aero/lattice/lay-panels.js';
import {solveLattice} from '../../../../src/calc/aero/lattice/solve.js';
import type {Surface} from '../../../../src/calc/aero/lattice/surface.js';
import {loadsOf, turnedUp, wingOf} from '../wings.js';

describe('panels', () => {
  it('cover a half wing but for a quarter of a panel at a free tip', () => {
    const {strips, count} = layPanels([wingOf({span: 4, strips: 8, rows: 3})]);
    expect(count).to.equal(24);
    expect(strips.reduce((sum, {width}) => sum + width, 0)).to.be.closeTo(2 * 8 / 8.25, 1e-12);
    const whole = layPanels([wingOf({span: 4, strips: 8, rows: 3, freeTip: false})]);
    expect(whole.strips.reduce((sum, {width}) => sum + width, 0)).to.be.closeTo(2, 1e-12);
  });

  it('begin anew at each rib, and a step in the chord has none of its own', () => {
    const stepped: Surface = {
      group: 0, strips: 8, rows: 2, freeTip: false,
      ribs: [{x: 0, y: 0, z: 0, chord: 2}, {x: 0, y: 1, z: 0, chord: 2}, {x: 0.5, y: 1, z: 0, chord: 1}, {x: 0.5, y: 2, z: 0, chord: 1}],
    };
    const {strips} = layPanels([stepped]);
    expect(strips.map(({chord}) => chord)).to.deep.equal([2, 2, 2, 2, 1, 1, 1, 1]);
  });

  it('stand square to a raised panel', () => {
    const {ny, nz} = layPanels([wingOf({span: 4, dihedral: 0.3})]);
    expect(ny[0]).to.be.closeTo(-Math.sin(0.3), 1e-12);
    expect(nz[0]).to.be.closeTo(Math.cos(0.3), 1e-12);
  });
});

describe('a lattice', () => {
  it('gives the same wing the same coefficients at any size', () => {
    const small = turnedUp(wingOf({span: 0.6, root: 0.12, tip: 0.08, sweep: 0.2}), 0.06, 0.6, 0.1);
    const large = turnedUp(wingOf({span: 6, root: 1.2, tip: 0.8, sweep: 0.2}), 6, 6, 1);
    expect(small.lift).to.be.closeTo(large.lift, 1e-9);
    expect(small.centre).to.be.closeTo(large.centre, 1e-9);
  });

  it('is nearly its own limit: lift slope and aerodynamic centre with four times as many panels', () => {
    for (const shape of [{span: 3}, {span: 6, tip: 0.4}, {span: 8, sweep: 0.5}, {span: 6, dihedral: 0.2}, {span: 1}, {span: 20, strips: 20}]) {
      const strips = shape.strips ?? 15, area = shape.span * (1 + (shape.tip ?? 1)) / 2;
      const coarse = turnedUp(wingOf({...shape, strips}), area, shape.span), fine = turnedUp(wingOf({...shape, strips: 2 * strips, rows: 8}), area, shape.span);
      expect(coarse.lift / fine.lift, JSON.stringify(shape)).to.be.within(0.99, 1.01);
      expect(Math.abs(coarse.centre - fine.centre), JSON.stringify(shape)).to.be.lessThan(0.01);
    }
  });

  it('does not mind where the ribs of an even wing are', () => {
    const ribbed = (...cuts: number[]) => turnedUp({...wingOf({span: 5.5, strips: 15}), ribs: [0, ...cuts, 2.75].map((y) => ({x: 0, y, z: 0, chord: 1}))}, 5.5, 5.5);
    const {lift, centre} = ribbed();
    for (const cuts of [[1, 1.0001], [0.02], [1.3, 1.4], [2.74], [2.7], [2, 2.72]]) {
      expect(ribbed(...cuts).lift / lift, JSON.stringify(cuts)).to.be.within(0.995, 1.005);
      expect(ribbed(...cuts).centre, JSON.stringify(cuts)).to.be.closeTo(centre, 0.001);
    }
  });

  it('carries a folded section as thin-aerofoil theory has it, on a wing so long that it has no ends', () => {
    // the zero-lift angle exactly, the moment through James’ factor: a long wing’s C_L at no angle over its slope, and its moment about the quarter chord
    const section = {zeroLiftAngle: -0.06, quarterChordMoment: -0.08, idealLift: 0};
    for (const rows of [2, 3, 4, 8]) {
      const {lift, moment} = loadsOf([wingOf({span: 400, strips: 40, rows})], 400, 400, {section});
      expect((lift[1] ?? NaN) / (lift[0] ?? NaN), String(rows)).to.be.closeTo(0.06, 1e-4);
      expect(moment[1], String(rows)).to.be.closeTo(-0.08, 0.001);
    }
  });

  it('carries any mixture of causes as their sum', () => {
    const section = {zeroLiftAngle: -0.05, quarterChordMoment: -0.06, idealLift: 0.4};
    const tail = wingOf({span: 2, root: 0.6, group: 1, x: 4, strips: 6, rows: 3});
    const bare = loadsOf([wingOf({span: 5}), tail], 5, 5), bent = loadsOf([wingOf({span: 5}), tail], 5, 5, {section});
    const twice = loadsOf([wingOf({span: 5}), tail], 5, 5, {section: {zeroLiftAngle: -0.1, quarterChordMoment: -0.12, idealLift: 0.8}});
    expect(bent.lift[0]).to.be.closeTo(bare.lift[0] ?? NaN, 1e-12);
    // the whole plane turned up is wing and tail turned up
    expect((bare.lift[2] ?? NaN) + (bare.lift[3] ?? NaN)).to.be.closeTo(bare.lift[0] ?? NaN, 1e-9);
    expect(twice.lift[1]).to.be.closeTo(2 * (bent.lift[1] ?? NaN), 1e-12);
    expect(twice.suction[1]?.[1]).to.be.closeTo(4 * (bent.suction[1]?.[1] ?? NaN), 1e-12);
  });

  it('loses as drag what a force square to a flat wing has, when all suction is lost', () => {
    // C_L sin α = C_Di + suction lost: exact for lifting lines. Strip by strip, a wide wing is found to lose up to a tenth less.
    const shares = [4, 8, 16, 32].map((span) => {
      const {lift, induced, suction} = loadsOf([wingOf({span, strips: 30})], span, span);
      return ((induced[0]?.[0] ?? NaN) + (suction[0]?.[0] ?? NaN)) / (lift[0] ?? NaN);
    });
    console.log(`drag without suction over lift times angle, aspect ratio 4, 8, 16, 32: ${shares.map((share) => share.toFixed(3)).join(', ')}`);
    expect(shares).to.deep.equal([...shares].sort((x, y) => x - y));
    expect(shares[0]).to.be.within(0.88, 1);
    expect(shares[3]).to.be.within(0.98, 1.01);
  });

  it('needs no luck with a tail in the plane of the wing’s wake, wherever its strips fall', () => {
    const downwash = (span: number) => {
      const {tailLift} = loadsOf([wingOf({span: 5}), wingOf({span, root: 0.6, group: 1, x: 3.5, strips: 6, rows: 3})], 5, 5);
      return 1 - (tailLift[0] ?? NaN) / (tailLift[3] ?? NaN);
    };
    // wider by thousandths until the strips have passed the wing’s
    const found = Array.from({length: 60}, (_, i) => downwash(1.6 + i * 0.01));
    for (const [i, each] of found.entries()) {
      if (i) expect(Math.abs(each - (found[i - 1] ?? NaN))).to.be.lessThan(0.004);
    }
  });

  it('is refused when two surfaces are one', () => {
    const solved = solveLattice([wingOf({span: 4}), wingOf({span: 4})]);
    expect(solved.ok ? [] : solved.problems.map(({code}) => code)).to.deep.equal(['equations-singular']);
  });

  it('loads a fin in the middle to the side and never else', () => {
    const fin: Surface = {group: 1, strips: 3, rows: 3, freeTip: true, inMiddle: true, ribs: [{x: 4, y: 0, z: 0, chord: 0.6}, {x: 4.2, y: 0, z: 0.6, chord: 0.4}]};
    const wings = [wingOf({span: 5}), wingOf({span: 1.6, root: 0.6, group: 1, x: 4, strips: 6, rows: 3})];
    const without = loadsOf(wings, 5, 5), loads = loadsOf([...wings, fin], 5, 5);
    expect(loads.lift[0]).to.be.closeTo(without.lift[0] ?? NaN, 1e-9);
    expect(loads.side.sideslip.bare.force).to.be.lessThan(-0.05);
    expect(loads.side.sideslip.bare.yaw).to.be.greaterThan(0.03);
    // alone, it is half of a wing as wide as it is tall twice over
    const alone = loadsOf([wingOf({span: 5}), {...fin, ribs: fin.ribs.map((rib) => ({...rib, x: rib.x + 400}))}], 5, 5).side.sideslip.bare.force;
    const upright = turnedUp({...wingOf({span: 1.2, root: 0.6, tip: 0.4, sweep: Math.atan(0.2 / 0.6), strips: 3, rows: 3}), freeTip: true}, 0.6, 1.2).lift;
    expect(-alone).to.be.lessThan(upright * 0.3 / 5);
    expect(-alone).to.be.greaterThan(upright * 0.3 / 5 * 0.5);
  });
});
