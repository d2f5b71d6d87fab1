import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {valueAt, defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {bounds} from '../../../src/calc/geometry/polygon/index.js';
import {partsOf} from '../../../src/calc/parts/parts.js';
import {cutSheets} from '../../../src/calc/sheet/from-parts.js';
import {longestWing} from '../../../src/calc/sheet/longest-wing.js';
import {anyDesign} from '../sheet/any-design.js';
import {expectSoundCut} from '../sheet/cut-check.js';

const partsIn = (grain: string) => {
  const {wing, body, tail, arrangement, board} = withValues(defaultDesign, {'board.grain': grain});
  return partsOf(wing, body, tail, arrangement, board).parts;
};

describe('the grain of a board', () => {
  it('is none unless somebody says so, and then parts lie as they like', () => {
    expect(valueAt(defaultDesign, 'board.grain')).to.equal('none');
    for (const part of partsIn('none')) expect(part).to.include({mayTurn: true}).and.not.have.any.keys('mayTurnHalf', 'liesAcross');
  });

  it('leaves a part only which end comes first, but for one as wide as long', () => {
    const ways = (grain: string) => partsIn(grain).map(({id, mayTurn, mayTurnHalf, liesAcross}) => ({id, mayTurn, mayTurnHalf, liesAcross}));
    const long = (liesAcross: boolean) => ['wing', 'body', 'tailplane'].map((id) => ({id, mayTurn: false, mayTurnHalf: true, liesAcross}));
    const fin = {id: 'fin', mayTurn: true, mayTurnHalf: undefined, liesAcross: undefined};
    expect(ways('length')).to.deep.equal([...long(false), fin]);
    expect(ways('width')).to.deep.equal([...long(true), fin]);
  });

  it('runs along every part laid on any board', () => {
    fc.assert(fc.property(anyDesign, fc.integer({min: 1, max: 4}), (design, kits) => {
      const cut = cutSheets(design, kits);
      if (!cut.ok) return;
      expectSoundCut(cut.value);
      const {grain} = design.board;
      for (const {pieces} of cut.value.plans) {
        for (const {placed} of pieces) {
          const {length, width} = bounds(placed.outline);
          const along = grain === 'width' ? width : length, across = grain === 'width' ? length : width;
          if (grain !== 'none') expect(along, placed.id).to.be.at.least(across * (1 - 1e-5));
        }
      }
    }));
  });

  it('may leave no room for what fits the other way round, and for no longer wing than runs along it', () => {
    const across = withValues(defaultDesign, {'board.grain': 'width'});
    const cut = cutSheets(across, 1);
    if (!cut.ok) throw new Error('refused');
    // 660 mm of wing and 620 mm of body on 500 mm
    expect(cut.value.leftOut.map(({id, problem}) => `${id}: ${problem.code}`)).to.deep.equal(['wing: part-too-big', 'body: part-too-big']);
    const short = withValues(across, {'body.length': 0.48, 'wing.span': 0.45, 'arrangement.wingAt': 0.1, 'arrangement.tailAt': 0.4});
    const wing = longestWing(short, 1, 1, 1e-3);
    if (!wing.ok) throw new Error('refused');
    expect(wing.value.longest).to.equal(0.5);
    expect(wing.value.span).to.equal(0.5);
    expect(longestWing(withValues(short, {'board.grain': 'none'}), 1, 1, 1e-3)).to.have.nested.property('value.longest', 0.7);
  });
});
