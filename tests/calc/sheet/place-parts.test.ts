import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {polygonsOverlap, type Polygon} from '../../../src/calc/geometry/polygon/index.js';
import {lowerBoundSheets, placeParts, type PartToPlace, type SheetStock} from '../../../src/calc/sheet/index.js';
import {anyOutline, lShape, rectangle, taperedPanel} from '../geometry/polygon/outlines.js';
import {expectSound, layoutOf, part, stock} from './layout-check.js';

const codes = (parts: readonly PartToPlace[], sheet: SheetStock): string[] => {
  const outcome = placeParts(parts, sheet);
  return outcome.ok ? [] : outcome.problems.map(({code}) => code);
};

describe('placing parts on a sheet', () => {
  it('puts one part in the corner', () => {
    const parts = [part('fin', rectangle(7, -3, 0.1, 0.06))];
    const layout = layoutOf(parts, stock(0.7, 0.5));
    expectSound(layout, parts, stock(0.7, 0.5));
    expect(layout.sheets).to.equal(1);
    expect(layout.placed).to.have.lengthOf(1);
    expect(layout.placed[0]).to.deep.include({id: 'fin', copy: 0, sheet: 0, x: 0, y: 0, mirrored: false});
    expect(layout.usedArea).to.be.closeTo(0.006, 1e-12);
    expect(layout.wasteArea).to.be.closeTo(0.344, 1e-12);
  });

  it('has room for a part exactly as long as the sheet, in figures that do not come out even', () => {
    for (const length of [0.7, 30 * 0.0254, 0.1 + 0.2]) {
      const parts = [part('wing', rectangle(0.1, 0.1, length, 0.12), {count: 2, mayTurn: false})];
      const sheet = stock(length, 0.25, {gap: 0.001});
      const layout = layoutOf(parts, sheet);
      expectSound(layout, parts, sheet);
      expect(layout.unplaced).to.deep.equal([]);
      expect(layout.sheets).to.equal(1);
    }
  });

  it('keeps the knife’s gap between parts and not at the edge', () => {
    const parts = [part('half', rectangle(0, 0, 0.3, 0.249), {count: 2, mayTurn: false})];
    const exact = stock(0.3, 0.5, {gap: 0.002});
    expect(layoutOf(parts, exact).sheets).to.equal(1);
    expectSound(layoutOf(parts, exact), parts, exact);
    expect(layoutOf(parts, {...exact, gap: 0.00201}).sheets).to.equal(2);
  });

  it('keeps the margin at the edge', () => {
    const parts = [part('plate', rectangle(0, 0, 0.28, 0.18))];
    expect(layoutOf(parts, stock(0.3, 0.2, {margin: 0.01})).placed[0]).to.include({x: 0.01, y: 0.01});
    expect(layoutOf(parts, stock(0.3, 0.2, {margin: 0.0101})).unplaced[0]?.problem.code).to.equal('part-too-big');
  });

  it('turns a part only if it may', () => {
    const tall = rectangle(0, 0, 0.1, 0.4);
    const sheet = stock(0.5, 0.2);
    const turned = layoutOf([part('body', tall)], sheet);
    expect(turned.placed[0]?.turn).to.be.oneOf([90, 270]);
    expectSound(turned, [part('body', tall)], sheet);
    const fixed = layoutOf([part('body', tall, {mayTurn: false})], sheet);
    expect(fixed.placed).to.deep.equal([]);
    expect(fixed.sheets).to.equal(0);
    expect(fixed.unplaced).to.deep.equal([{
      id: 'body', copy: 0,
      problem: {code: 'part-too-big', args: {id: 'body', length: 0.1, width: 0.4, sheetLength: 0.5, sheetWidth: 0.2}},
    }]);
  });

  it('names what does not fit and places the rest', () => {
    const bowTie: Polygon = [{x: 0, y: 0}, {x: 0.1, y: 0.1}, {x: 0.1, y: 0}, {x: 0, y: 0.1}, {x: -0.1, y: 0.3}];
    const parts = [
      part('wing', rectangle(0, 0, 0.9, 0.1), {count: 2}),
      part('tail', rectangle(0, 0, 0.25, 0.07)),
      part('line', [{x: 0, y: 0}, {x: 0.1, y: 0}]),
      part('knot', bowTie),
      part('ghost', [{x: 0, y: 0}, {x: NaN, y: 0}, {x: 0, y: 1}]),
      part('none', rectangle(0, 0, 0.1, 0.1), {count: 0}),
    ];
    const layout = layoutOf(parts, stock(0.7, 0.5));
    expectSound({...layout, leftover: undefined}, parts, stock(0.7, 0.5));
    expect(layout.placed.map(({id}) => id)).to.deep.equal(['tail']);
    expect(layout.unplaced.map(({id, copy, problem}) => [id, copy, problem.code])).to.deep.equal([
      ['wing', 0, 'part-too-big'], ['wing', 1, 'part-too-big'], ['line', 0, 'outline-empty'],
      ['knot', 0, 'outline-crosses-itself'], ['ghost', 0, 'outline-empty'],
    ]);
  });

  it('places what it can when the sheets run out', () => {
    const parts = [part('plate', rectangle(0, 0, 0.3, 0.2), {count: 5})];
    const sheet = stock(0.3, 0.4, {count: 2});
    const layout = layoutOf(parts, sheet);
    expectSound(layout, parts, sheet);
    expect(layout.sheets).to.equal(2);
    expect(layout.unplaced).to.deep.equal(
      [{id: 'plate', copy: 4, problem: {code: 'sheets-run-out', args: {id: 'plate', sheets: 2}}}],
    );
    const none = layoutOf(parts, {...sheet, count: 0});
    expect(none.sheets).to.equal(0);
    expect(none.unplaced).to.have.lengthOf(5);
    expect(none.wasteArea).to.equal(0);
  });

  it('takes an outline given clockwise', () => {
    const parts = [part('tail', [...taperedPanel].reverse())];
    const [piece] = layoutOf(parts, stock(0.5, 0.5)).placed;
    expect(piece?.outline).to.have.lengthOf(4);
    const [a, b, c] = piece?.outline ?? [];
    const turn = a && b && c ? (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) : NaN;
    expect(turn).to.be.above(0);
  });

  it('nests two tapered panels head to tail where their bounds would not fit', () => {
    const parts = [part('panel', taperedPanel, {count: 2})];
    const sheet = stock(0.3, 0.225, {gap: 0.001});
    const layout = layoutOf(parts, sheet);
    expectSound(layout, parts, sheet);
    expect(layout.sheets).to.equal(1);
    const [a, b] = layout.placed;
    expect(Math.abs((a?.turn ?? 0) - (b?.turn ?? 0))).to.equal(180);
    expect(a && b && polygonsOverlap(a.outline, b.outline)).to.equal(false);
    // the two may not be nested when neither may turn
    expect(layoutOf([part('panel', taperedPanel, {count: 2, mayTurn: false})], sheet).sheets).to.equal(2);
  });

  it('places the two of a nested pair apart when there is room for only one', () => {
    const parts = [part('panel', taperedPanel, {count: 2})];
    const sheet = stock(0.3, 0.15, {count: 1});
    const layout = layoutOf(parts, sheet);
    expectSound(layout, parts, sheet);
    expect(layout.placed).to.have.lengthOf(1);
  });

  it('turns a part over only if it may', () => {
    const wedge: Polygon = [{x: 0, y: 0}, {x: 0.3, y: 0}, {x: 0.3, y: 0.2}];
    const sheet = stock(0.3, 0.21);
    const handed = [part('left', wedge, {mayTurn: false}), part('right', wedge, {mayTurn: false})];
    expect(layoutOf(handed, sheet).sheets).to.equal(2);
    const plain = [part('left', wedge, {mayTurn: false}), part('right', [...wedge].map(({x, y}) => ({x, y: -y})).reverse(), {
      mayTurn: false, mayMirror: true,
    })];
    const layout = layoutOf(plain, sheet);
    expectSound(layout, plain, sheet);
    expect(layout.sheets).to.equal(1);
    expect(layout.placed.find(({id}) => id === 'right')?.mirrored).to.equal(true);
  });

  it('fills the notch of a part with a smaller one', () => {
    const parts = [part('l', lShape), part('filler', rectangle(0, 0, 0.098, 0.198))];
    const sheet = stock(0.3, 0.2, {gap: 0.002});
    const layout = layoutOf(parts, sheet);
    expectSound(layout, parts, sheet);
    expect(layout.sheets).to.equal(1);
    expect(layoutOf(parts, {...sheet, gap: 0.003}).sheets).to.equal(2);
  });

  it('reports the largest rectangle left over, and none too narrow to keep', () => {
    const parts = [part('wing', rectangle(0, 0, 0.7, 0.1), {mayTurn: false})];
    const {leftover} = layoutOf(parts, stock(0.7, 0.5, {gap: 0.002}));
    expect(leftover?.sheet).to.equal(0);
    expect(leftover?.length).to.be.closeTo(0.7, 1e-9);
    expect(leftover?.width).to.be.closeTo(0.398, 1e-9);
    expect(leftover?.y).to.be.closeTo(0.102, 1e-9);
    expect(layoutOf(parts, stock(0.7, 0.12)).leftover).to.equal(undefined);
    expect(layoutOf([], stock(0.7, 0.5)).leftover).to.equal(undefined);
  });

  it('is the same every time', () => {
    const parts = [part('panel', taperedPanel, {count: 4}), part('tail', lShape, {count: 3})];
    expect(layoutOf(parts, stock(0.7, 0.5))).to.deep.equal(layoutOf(parts, stock(0.7, 0.5)));
  });

  it('refuses stock and counts that make no sense', () => {
    const parts = [part('fin', rectangle(0, 0, 0.1, 0.1))];
    expect(codes(parts, stock(0, 0.5))).to.deep.equal(['sheet-not-positive']);
    expect(codes(parts, stock(-1, 0.5))).to.deep.equal(['sheet-not-positive']);
    expect(codes(parts, stock(NaN, 0.5))).to.deep.equal(['sheet-not-positive']);
    expect(codes(parts, stock(0.5, Infinity))).to.deep.equal(['sheet-not-positive']);
    expect(codes(parts, stock(0.5, 0.5, {margin: -0.01}))).to.deep.equal(['margin-negative']);
    expect(codes(parts, stock(0.5, 0.5, {gap: NaN}))).to.deep.equal(['gap-negative']);
    expect(codes(parts, stock(0.5, 0.3, {margin: 0.15}))).to.deep.equal(['margin-too-wide']);
    expect(codes(parts, stock(0.5, 0.5, {count: 1.5}))).to.deep.equal(['sheet-count-not-whole']);
    expect(codes([part('fin', lShape, {count: -1})], stock(0.5, 0.5))).to.deep.equal(['part-count-not-whole']);
    expect(codes([part('fin', lShape, {count: 2.5})], stock(0.5, 0.5))).to.deep.equal(['part-count-not-whole']);
    expect(codes([part('fin', lShape, {count: 10000})], stock(0.5, 0.5))).to.deep.equal(['too-many-parts']);
  });

  it('copes with as many parts as it takes', () => {
    const parts = [part('chip', rectangle(0, 0, 0.031, 0.017), {count: 600}), part('panel', taperedPanel, {count: 400})];
    const sheet = stock(0.7, 0.5, {gap: 0.001});
    const layout = layoutOf(parts, sheet);
    expect(layout.placed).to.have.lengthOf(1000);
    expect(layout.sheets).to.be.at.least(lowerBoundSheets(parts, sheet));
  });
});

const size = (max: number) => fc.double({min: 0.01, max, noNaN: true});
const anyPart = fc.record({
  outline: fc.oneof(
    fc.tuple(size(0.5), size(0.3)).map(([length, width]) => rectangle(0, 0, length, width)),
    fc.tuple(size(0.4), size(0.2), size(0.2)).map(([length, root, tip]): Polygon =>
      [{x: 0, y: 0}, {x: length, y: 0}, {x: length, y: tip}, {x: 0, y: root}]),
    anyOutline,
  ),
  count: fc.integer({min: 0, max: 4}),
  mayTurn: fc.boolean(),
  mayTurnHalf: fc.boolean(),
  liesAcross: fc.boolean(),
  mayMirror: fc.boolean(),
});
const anyParts = fc.array(anyPart, {maxLength: 6})
  .map((parts) => parts.map((each, i) => ({...each, id: `part ${i.toString()}`})));
const anyStock = fc.record({
  length: fc.double({min: 0.3, max: 1, noNaN: true}),
  width: fc.double({min: 0.2, max: 0.7, noNaN: true}),
  margin: fc.constantFrom(0, 0.005),
  gap: fc.constantFrom(0, 0.001, 0.004),
  count: fc.constantFrom(1, 2, Infinity),
});

describe('any parts on any stock', () => {
  it('never overlap, leave the sheet, come too near, turn or turn over against orders, or get lost', () => {
    fc.assert(fc.property(anyParts, anyStock, (parts, sheet) => {
      expectSound(layoutOf(parts, sheet), parts, sheet);
    }), {numRuns: 150});
  });

  it('never need fewer sheets than the bound, nor leave out what fits while sheets last', () => {
    fc.assert(fc.property(anyParts, anyStock, (parts, limited) => {
      const sheet = {...limited, count: Infinity};
      const layout = layoutOf(parts, sheet);
      expect(layout.sheets).to.be.at.least(lowerBoundSheets(parts, sheet));
      expect(layout.unplaced.every(({problem}) => problem.code === 'part-too-big')).to.equal(true);
    }), {numRuns: 100});
  });
});

describe('the least number of sheets', () => {
  it('is proved by area', () => {
    const parts = [part('plate', rectangle(0, 0, 0.3, 0.2), {count: 5})];
    expect(lowerBoundSheets(parts, stock(0.3, 0.4))).to.equal(3);
    expect(lowerBoundSheets(parts, stock(0.6, 0.5))).to.equal(1);
    expect(lowerBoundSheets([], stock(0.6, 0.5))).to.equal(0);
    expect(lowerBoundSheets([part('wing', rectangle(0, 0, 9, 0.2))], stock(0.6, 0.5))).to.equal(0);
  });

  it('counts the board that the knife’s gap takes', () => {
    const discs = [part('disc', Array.from({length: 60}, (_, i) => ({
      x: 0.05 * Math.cos(i * Math.PI / 30), y: 0.05 * Math.sin(i * Math.PI / 30),
    })), {count: 40})];
    expect(lowerBoundSheets(discs, stock(0.6, 0.55))).to.equal(1);
    expect(lowerBoundSheets(discs, stock(0.6, 0.55, {gap: 0.03}))).to.equal(2);
  });
});
