import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {planeNeutralPoint, usuallyApart} from '../../../src/calc/aero/handbook/plane-neutral-point.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {notFinite} from './finite.js';
import {aeroIn, aeroOf, anyShape, likelyShape, varieties} from './gliders.js';

const mm = 1e-3;

describe('a plane in the air', () => {
  it('has at least 160 panels over both halves', () => {
    for (const [name, design] of Object.entries(varieties)) expect(aeroIn(design).panels, name).to.be.at.least(160);
  });

  for (const [name, design] of Object.entries(varieties)) {
    it(`is nearly what it is with four times as many panels: ${name}`, () => {
      const coarse = aeroIn(design), fine = aeroIn(design, {wing: [30, 8], tail: [18, 6]});
      const chord = coarse.shape.wing.meanAerodynamicChord;
      console.log(`${name}: neutral point ${(coarse.neutralPoint / chord).toFixed(4)} and ${(fine.neutralPoint / chord).toFixed(4)} mean chords, lift slope `
        + `${(coarse.lift[0] ?? NaN).toFixed(3)} and ${(fine.lift[0] ?? NaN).toFixed(3)}`);
      expect(fine.panels / coarse.panels).to.be.within(3.5, 4.5);
      expect(Math.abs(coarse.neutralPoint - fine.neutralPoint) / chord).to.be.lessThan(0.01);
      expect((coarse.lift[0] ?? NaN) / (fine.lift[0] ?? NaN)).to.be.within(0.99, 1.01);
    });
  }

  it('is not solved again for another angle, another weight of the board or another length of body', () => {
    const design = withValues(defaultDesign, {'wing.span': 0.652});
    const {strips} = aeroIn(design);
    for (const values of [{'arrangement.tailIncidence': -0.05}, {'arrangement.wingIncidence': 0.03}, {'board.arealMass': 0.6}, {'wing.weighed': 0.03}, {'wing.peeled': 'both'}]) {
      expect(aeroIn(withValues(design, values)).strips === strips, JSON.stringify(values)).to.equal(true);
    }
    expect(aeroIn(withValues(design, {'wing.span': 0.661})).strips === strips).to.equal(false);
  });

  it('has its neutral point further back with a longer arm, a larger tail, and plates at its ends', () => {
    const back = (values: Parameters<typeof withValues>[1]) => aeroIn(withValues(defaultDesign, values)).neutralPoint;
    expect(back({'arrangement.tailAt': 560 * mm})).to.be.greaterThan(back({}) + 2 * mm);
    expect(back({'tail.span': 280 * mm})).to.be.greaterThan(back({}) + 2 * mm);
    expect(back({'tail.fins.count': 1})).to.be.lessThan(back({}) - 1 * mm);
  });

  it('turns its tail’s air down less the further back the tail is', () => {
    const downwash = (tailAt: number) => aeroIn(withValues(defaultDesign, {'arrangement.tailAt': tailAt})).downwash;
    expect(downwash(0.34)).to.be.greaterThan(downwash(0.45)).and.lessThan(0.9);
    expect(downwash(0.45)).to.be.greaterThan(downwash(0.55));
  });

  it('costs drag for any lift', () => {
    for (const [name, {induced, suction}] of Object.entries(varieties).map(([each, design]) => [each, aeroIn(design)] as const)) {
      fc.assert(fc.property(fc.array(fc.double({min: -0.2, max: 0.2, noNaN: true}), {minLength: 5, maxLength: 5}), (amounts) => {
        const form = (pairs: typeof induced) => pairs.reduce((sum, row, k) => sum + row.reduce((s, each, l) => s + each * (amounts[l] ?? 0), 0) * (amounts[k] ?? 0), 0);
        const size = amounts.reduce((sum, each) => sum + each * each, 0);
        expect(form(induced), name).to.be.at.least(-1e-3 * size);
        expect(form(suction), name).to.be.at.least(-1e-9 * size);
      }), {numRuns: 50});
    }
  });

  it('steers into the wind with its fins and rolls away from it with its dihedral', () => {
    const {side} = aeroIn(defaultDesign);
    expect(side.sideslip.bare.yaw).to.be.greaterThan(0.03);
    expect(side.sideslip.bare.roll).to.be.lessThan(-0.02);
    expect(side.rolling.bare.roll).to.be.within(-0.6, -0.3);
    expect(side.yawing.bare.yaw).to.be.lessThan(-0.03);
  });
});

describe('lattice and handbook', () => {
  it('have the neutral point of likely planes within 6.5 % of the mean chord of each other, up to a tail volume of 0.7', () => {
    const differences: number[] = [];
    fc.assert(fc.property(likelyShape, (design) => {
      const {wing, tail, arrangement, board} = design;
      const lattice = aeroIn(design), handbook = planeNeutralPoint(wing, tail, arrangement, board);
      if (!handbook.ok || handbook.value.tailVolume > 0.7) return;
      const difference = (lattice.neutralPoint - handbook.value.behindWing) / lattice.shape.wing.meanAerodynamicChord;
      differences.push(difference);
      // of 729 such planes drawn at random, the lattice's was from 5.3 % ahead to 1.2 % behind; at the corners of what is likely, 976 planes, from 6.2 % ahead to 2.2 % behind
      expect(Math.abs(difference)).to.be.lessThan(usuallyApart);
    }), {numRuns: 150});
    expect(differences.length).to.be.greaterThan(20);
    const mean = differences.reduce((sum, each) => sum + each, 0) / differences.length;
    console.log(`lattice ahead of handbook by ${(-100 * mean).toFixed(1)} % of the mean chord on average, from ${(-100 * Math.max(...differences)).toFixed(1)} to ${(-100 * Math.min(...differences)).toFixed(1)} %`);
  });
});

describe('planes that are none', () => {
  const codes = (values: Parameters<typeof withValues>[1]) => {
    const aero = aeroOf(withValues(defaultDesign, values));
    return aero.ok ? [] : aero.problems.map(({code, path}) => `${code} ${path ?? ''}`);
  };

  it('say why', () => {
    expect(codes({'tail.span': 1e-4})).to.deep.equal(['aspect-out-of-range tail.span']);
    expect(codes({'arrangement.tailAt': 20 * mm})).to.deep.equal(['no-tail-arm arrangement.tailAt']);
    expect(codes({'arrangement.wingAt': 150 * mm, 'arrangement.tailAt': 200 * mm})).to.deep.equal(['tail-in-wing arrangement.tailAt']);
    expect(codes({'arrangement.wingAt': 150 * mm, 'arrangement.tailAt': 175 * mm})).to.deep.equal(['tail-in-wing arrangement.tailAt']);
    expect(codes({'wing.span': 30 * mm, 'wing.joints': []})).to.deep.equal(['aspect-out-of-range wing.span']);
    expect(codes({'wing.span': 9, 'wing.chord': 0.1, 'wing.creases': []})).to.deep.equal(['aspect-out-of-range wing.span']);
    expect(codes({'wing.sweep': 1.9, 'arrangement.tailAt': 4})).to.deep.equal(['sweep-too-steep wing.sweep']);
    expect(codes({'tail.fins.height': 1 * mm})).to.deep.equal(['aspect-out-of-range tail.fins.height']);
  });

  it('are none where the swept wing’s tips reach the tail, but only there', () => {
    expect(codes({'wing.sweep': 0.3, 'tail.span': 0.6})).to.deep.equal(['tail-in-wing arrangement.tailAt']);
    expect(codes({'wing.sweep': 0.3, 'tail.span': 0.12})).to.deep.equal([]);
  });

  it('fly at aspect ratios from 0.3 to 40', () => {
    for (const [span, chord] of [[0.06, 0.18], [0.1, 0.18], [2.4, 0.061]] as const) {
      const design = {'wing.span': span, 'wing.chord': chord, 'wing.joints': [], 'wing.creases': [], 'tail.span': 0.05, 'tail.chord': 0.06, 'tail.fins.height': 0.03};
      expect(codes(design), String(span)).to.deep.equal([]);
      expect(notFinite(aeroIn(withValues(defaultDesign, design))), String(span)).to.deep.equal([]);
    }
  });

  it('fly with fins that all but touch: a biplane of fins', () => {
    const design = {'tail.span': 20 * mm, 'tail.chord': 20 * mm, 'tail.fins.height': 60 * mm};
    expect(codes(design)).to.deep.equal([]);
    const {side, lift} = aeroIn(withValues(defaultDesign, design));
    // two plates close together carry little more than one
    const single = aeroIn(withValues(defaultDesign, {...design, 'tail.fins.count': 1}));
    expect(side.sideslip.bare.force / single.side.sideslip.bare.force).to.be.within(0.9, 1.5);
    expect(lift[0]).to.be.closeTo(single.lift[0] ?? NaN, 0.2);
  });

  it('never give a number that is none, whatever their dimensions', () => {
    let flew = 0;
    fc.assert(fc.property(anyShape, (design) => {
      const aero = aeroOf(design);
      expect(notFinite(aero)).to.deep.equal([]);
      if (aero.ok) flew++;
    }), {numRuns: 400});
    expect(flew).to.be.greaterThan(20);
  });
});
