import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {thinSection} from '../../../../src/calc/aero/section/thin-section.js';
import {wingSections, type WingSection} from '../../../../src/calc/aero/section/wing-section.js';
import {defaultDesign, withValues} from '../../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../../src/calc/design/design.js';
import {notFinite} from '../finite.js';

const deg = Math.PI / 180, mm = 1e-3;

function sectionOf({wing, board}: GliderDesign, chord = wing.chord): WingSection {
  const sections = wingSections(wing, board);
  if (!sections.ok) throw new Error(sections.problems.map(({code}) => code).join());
  const at = sections.value(chord);
  if (!at.ok) throw new Error(at.problems.map(({code}) => code).join());
  return at.value;
}

describe('the section of a folded wing', () => {
  it('is a flat plate without creases', () => {
    const {thin, perFold, camber} = sectionOf(withValues(defaultDesign, {'wing.creases': []}));
    expect({...thin, camber}).to.deep.equal({zeroLiftAngle: 0, quarterChordMoment: 0, idealAngle: 0, camber: 0});
    expect(perFold.zeroLiftAngle).to.equal(0);
  });

  it('has its lift turned up and its nose turned down by more camber', () => {
    const low = sectionOf(withValues(defaultDesign, {'wing.foldBy': 'camber', 'wing.camber': 0.02})).thin;
    const high = sectionOf(withValues(defaultDesign, {'wing.foldBy': 'camber', 'wing.camber': 0.06})).thin;
    expect(high.zeroLiftAngle).to.be.lessThan(low.zeroLiftAngle).and.lessThan(-0.02);
    expect(high.quarterChordMoment).to.be.lessThan(low.quarterChordMoment);
  });

  it('changes with each further degree of fold as it says', () => {
    const flat = withValues(defaultDesign, {'wing.foldBy': 'camber', 'wing.camber': 0.03});
    const {thin, perFold} = sectionOf(flat);
    const more = sectionOf(withValues(flat, {'wing.camber': 0.0301})), camberPerFold = 0.4 * 0.6;
    // a fold f of two panels a and b makes nearly a b f of camber
    expect((more.thin.zeroLiftAngle - thin.zeroLiftAngle) / (0.0001 / camberPerFold)).to.be.closeTo(perFold.zeroLiftAngle, 0.02 * Math.abs(perFold.zeroLiftAngle));
  });

  it('is folded nearer its middle where the chord is shorter', () => {
    const wing = withValues(defaultDesign, {'wing.tipChord': 80 * mm});
    expect(sectionOf(wing, 80 * mm).thin.idealAngle).to.be.lessThan(sectionOf(wing, 120 * mm).thin.idealAngle);
  });
});

describe('edges pressed thin', () => {
  const flat = withValues(defaultDesign, {'wing.creases': [], 'wing.pressedFront': 12 * mm, 'wing.pressedRear': 24 * mm, 'board.pressedEdge': 1 * mm});
  const pressed = (how: string) => sectionOf(withValues(flat, {'wing.pressed': how})).thin;

  it('move nothing when pressed from both faces', () => {
    expect(pressed('both')).to.deep.equal(pressed('none'));
  });

  it('act as a flap at each end when pressed from one', () => {
    // 2 mm down over 24 mm of a chord of 120 mm, and 2 mm down over 12 mm at the front: two flaps, by hand
    const byHand = thinSection([{x: 0, y: -2}, {x: 12, y: 0}, {x: 96, y: 0}, {x: 120, y: -2}]);
    if (!byHand.ok) throw new Error('no section');
    expect(pressed('above').zeroLiftAngle).to.be.closeTo(byHand.value.zeroLiftAngle, 1e-12);
    expect(pressed('above').quarterChordMoment).to.be.closeTo(byHand.value.quarterChordMoment, 1e-12);
    // Glauert: a flap of a fifth counts for 0.55 of its angle
    expect(pressed('above').zeroLiftAngle / deg).to.be.closeTo(-0.5498 * Math.atan(2 / 24) / deg, 0.2);
  });

  it('are mirrored when pressed from the other face', () => {
    expect(pressed('below').zeroLiftAngle).to.be.closeTo(-pressed('above').zeroLiftAngle, 1e-12);
    expect(pressed('below').quarterChordMoment).to.be.closeTo(-pressed('above').quarterChordMoment, 1e-12);
  });

  it('shift the zero-lift angle by degrees, as much as a fold does', () => {
    const bent = sectionOf(withValues(defaultDesign, {'wing.pressed': 'above', 'wing.pressedRear': 20 * mm})).thin;
    expect((sectionOf(defaultDesign).thin.zeroLiftAngle - bent.zeroLiftAngle) / deg).to.be.within(1, 5);
  });

  it('never give a number that is none', () => {
    fc.assert(fc.property(fc.record({
      'wing.pressed': fc.constantFrom('none', 'both', 'above', 'below'),
      'wing.pressedFront': fc.double({min: 0, max: 0.3, noNaN: true}), 'wing.pressedRear': fc.double({min: 0, max: 0.3, noNaN: true}),
      'wing.creases': fc.constantFrom([], [{at: 0.008}], [{at: 0.048}], [{at: 0.02}, {at: 0.108}]), 'board.pressedEdge': fc.double({min: 1e-4, max: 0.02, noNaN: true}),
    }), (values) => {
      const design = withValues(defaultDesign, {...values, 'wing.stack': 0.004});
      const sections = wingSections(design.wing, design.board);
      if (sections.ok) expect(notFinite(sections.value(design.wing.chord))).to.deep.equal([]);
    }));
  });
});

describe('a mean line', () => {
  it('is refused when it doubles back or has no length', () => {
    const codes = (points: readonly (readonly [number, number])[]) => {
      const thin = thinSection(points.map(([x, y]) => ({x, y})));
      return thin.ok ? [] : thin.problems.map(({code}) => code);
    };
    expect(codes([[0, 0], [0.6, 0.1], [0.5, 0.2], [1, 0]])).to.deep.equal(['mean-line-doubles-back']);
    expect(codes([[0, 0]])).to.deep.equal(['mean-line-doubles-back']);
    expect(codes([])).to.deep.equal(['mean-line-doubles-back']);
    expect(codes([[0, 0], [NaN, 0], [1, 0]])).to.deep.equal(['mean-line-doubles-back']);
  });
});
