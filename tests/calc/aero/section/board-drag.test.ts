import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {boardDrag, liftLimit, type BoardSection} from '../../../../src/calc/aero/section/board-drag.js';
import {notFinite} from '../finite.js';

const plate: BoardSection = {chord: 0.1, frontEdge: 0.005, rearEdge: 0.005, square: true, folds: [], firstCrease: 1};

describe('drag of a thin board', () => {
  it('is friction, front edge, base and creases, by hand', () => {
    // Re 5·10⁴: turbulent 0.455/4.699^2.58 = 0.00840 a side; edges 5 % of the chord: 0.5 · 0.05; base 0.135/∛(0.0168/0.05) · 0.05
    const friction = 2 * 0.455 / Math.log10(5e4) ** 2.58;
    const base = 0.135 / Math.cbrt(friction / 0.05) * 0.05;
    expect(friction).to.be.closeTo(0.0168, 0.0001);
    expect(base).to.be.closeTo(0.0097, 0.0001);
    expect(boardDrag(plate, 5e4).usual).to.be.closeTo(friction + 0.025 + base, 1e-12);
    expect(boardDrag({...plate, folds: [0.2, 0.1]}, 5e4).usual).to.be.closeTo(friction + 0.025 + base + 0.1 * 0.05, 1e-12);
  });

  it('is laminar on both sides of a thin-edged board at its least, and up to the crease as usual', () => {
    const thin: BoardSection = {...plate, frontEdge: 0, rearEdge: 0, square: false};
    expect(boardDrag(thin, 5e4).least).to.be.closeTo(2 * 1.328 / Math.sqrt(5e4), 1e-12);
    expect(boardDrag(thin, 5e4).usual).to.be.closeTo(2 * 1.328 / Math.sqrt(5e4), 1e-12);
    expect(boardDrag({...thin, firstCrease: 0.3}, 5e4).usual).to.be.greaterThan(boardDrag(thin, 5e4).usual);
  });

  it('is a range, and falls with speed where thin edges leave it to the friction', () => {
    const any = fc.record({
      chord: fc.double({min: 0.03, max: 0.3, noNaN: true}), frontEdge: fc.double({min: 0, max: 0.01, noNaN: true}), rearEdge: fc.double({min: 0, max: 0.01, noNaN: true}),
      square: fc.boolean(), folds: fc.array(fc.double({min: 0, max: 0.5, noNaN: true}), {maxLength: 3}), firstCrease: fc.double({min: 0.05, max: 1, noNaN: true}),
    });
    fc.assert(fc.property(any, fc.double({min: 1e4, max: 2e5, noNaN: true}), (board, reynolds) => {
      const {least, usual, most} = boardDrag(board, reynolds);
      expect(notFinite({least, usual, most})).to.deep.equal([]);
      expect(least).to.be.at.most(usual + 1e-12);
      expect(usual).to.be.at.most(most + 1e-12);
      const thin = {...board, rearEdge: 0.01 * board.chord};
      expect(boardDrag(thin, 1.5 * reynolds).least).to.be.lessThan(boardDrag(thin, reynolds).least);
    }));
  });
});

describe('the usable lift', () => {
  it('grows with camber and is less sure on a folded board', () => {
    expect(liftLimit(0.05).usual).to.be.closeTo(0.95, 1e-12);
    const spread = (camber: number) => { const {least, most} = liftLimit(camber); return most - least; };
    expect(spread(0.05)).to.be.greaterThan(spread(0));
    expect(liftLimit(-0.1)).to.deep.equal(liftLimit(0));
  });
});
