import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {longestWing, type LongestWing} from '../../../src/calc/sheet/longest-wing.js';
import {cutOf, expectSoundCut} from './cut-check.js';

const mm = 1e-3;
const found = (design: GliderDesign, kits = 1, sheets = 1, step = mm): LongestWing => {
  const longest = longestWing(design, kits, sheets, step);
  if (!longest.ok) throw new Error(longest.problems.map(({code}) => code).join());
  return longest.value;
};

describe('the longest wing that a board takes', () => {
  it('is as long as the sheet where the other parts find room beside it', () => {
    const {span, longest, cut} = found(defaultDesign);
    expect([span, longest]).to.deep.equal([0.7, 0.7]);
    expectSoundCut(cut);
  });

  it('stays inside the margins', () => {
    expect(found(withValues(defaultDesign, {'board.margin': 3 * mm})).span).to.equal(0.694);
  });

  it('is to a whole number of steps', () => {
    const sixteenth = 25.4 * mm / 16;
    const {span} = found(defaultDesign, 1, 1, sixteenth);
    expect(span).to.be.closeTo(27.5 * 25.4 * mm, 1e-9);   // 700 mm is 27 9/16 in less 0.1 mm
  });

  it('is shorter where the other parts take room, and one step more finds none', () => {
    const design = withValues(defaultDesign, {'board.length': 0.64, 'board.width': 0.222, 'wing.span': 0.5});
    const {span = NaN, longest, cut} = found(design);
    expect(longest).to.be.above(span);
    expect(span).to.equal(0.399);   // beside the tailplane of 240 mm and the knife’s 1 mm
    expectSoundCut(cut);
    expect(cutOf(withValues(design, {'wing.span': span})).sheets).to.equal(1);
    expect(cutOf(withValues(design, {'wing.span': span + mm})).sheets).to.equal(2);
  });

  it('is none where not even the shortest wing with these joints finds room', () => {
    expect(found(withValues(defaultDesign, {'board.length': 0.63, 'board.width': 0.12})).span).to.equal(undefined);
    expect(found(withValues(defaultDesign, {'board.length': 0.3, 'board.width': 0.3})).span).to.equal(undefined);
  });

  it('always fits', () => {
    const length = (least: number, most: number) => fc.double({min: least, max: most, noNaN: true});
    fc.assert(fc.property(length(0.4, 1), length(0.2, 0.7), length(0.08, 0.16), fc.constantFrom(1, 2), (sheetLength, sheetWidth, chord, kits) => {
      const design = withValues(defaultDesign, {'board.length': sheetLength, 'board.width': sheetWidth, 'wing.chord': chord});
      const {span, cut} = found(design, kits, 1, mm);
      if (span === undefined) return;
      const own = cutOf(withValues(design, {'wing.span': span}), kits);
      expect([own.sheets, own.leftOut.length]).to.deep.equal([1, 0]);
      expect(cut.parts.find(({id}) => id === 'wing')?.outline.some(({x}) => Math.abs(x - span / 2) < 1e-9)).to.equal(true);
    }), {numRuns: 15});
  });
});
