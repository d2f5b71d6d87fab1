import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import type {Point, Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import {cuttingOrder, type Box, type CutStep, type FoundSheet, type Line} from '../../../../src/calc/sheet/engine/index.js';
import {lShape, taperedPanel} from '../../geometry/polygon/outlines.js';
import {board, foundIn, job, part, plate} from './found-check.js';

const near = 1e-7;
const same = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < near && Math.abs(a.y - b.y) < near && Math.abs(a.length - b.length) < near && Math.abs(a.width - b.width) < near;

const areaOf = (polygon: Polygon): number => polygon.reduce((sum, q, i) => {
  const p = polygon[(i + polygon.length - 1) % polygon.length] ?? q;
  return sum + (p.x * q.y - q.x * p.y) / 2;
}, 0);

const side = ({from, to}: Line, {x, y}: Point): number =>
  ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / Math.hypot(to.x - from.x, to.y - from.y);

/** Both halves of a convex piece of board that a line cuts through. */
const halves = (hand: Polygon, line: Line): Polygon[] => [1, -1].map((sign) => hand.flatMap((to, i) => {
  const from = hand[(i + hand.length - 1) % hand.length] ?? to;
  const a = sign * side(line, from), b = sign * side(line, to);
  const crossing = a < 0 !== b < 0 ? [{x: from.x + a / (a - b) * (to.x - from.x), y: from.y + a / (a - b) * (to.y - from.y)}] : [];
  return b < 0 ? crossing : [...crossing, to];
}));

const sameOutline = (a: Polygon, b: Polygon): boolean =>
  Math.abs(areaOf(a) - areaOf(b)) < near && a.every((p) => b.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < near) || Math.abs(areaOf(a)) < near);

/** Takes a sheet apart as the steps say, checking that each cut runs edge to edge of a piece that is in hand by then. */
function cutUp(sheet: FoundSheet, steps: readonly CutStep[], gap: number): void {
  let boxes: Box[] = [{x: 0, y: 0, length: sheet.length, width: sheet.width}];
  const parts: Polygon[] = [];
  let setBefore = NaN;
  for (const step of steps) {
    if (step.kind === 'ruler') {
      const {hand, along, setting, line, off, rest, again} = step;
      expect(boxes.some((each) => same(each, hand)), 'the piece is in hand').to.equal(true);
      boxes = boxes.filter((each) => !same(each, hand));
      const size = along ? hand.width : hand.length;
      expect(setting).to.be.above(0);
      expect(setting).to.be.below(size + near);
      expect(again).to.equal(Math.abs(setting - setBefore) < near);
      setBefore = setting;
      const [low, end] = along ? [hand.y, off.y + off.width] : [hand.x, off.x + off.length];
      const begin = along ? rest.y : rest.x;
      const pieces = along
        ? [{...hand, width: end - low}, {...hand, y: begin, width: hand.y + hand.width - begin}]
        : [{...hand, length: end - low}, {...hand, x: begin, length: hand.x + hand.length - begin}];
      expect([off, rest].every((each, i) => same(each, pieces[i] ?? hand)), 'what comes off and what stays').to.equal(true);
      expect(low + setting, 'the knife on the line').to.be.within(end - near, begin + near);
      // at an edge of the board the knife may run half beside it
      const atEdge = Math.min(...pieces.map((piece) => (along ? piece.width : piece.length))) < near;
      expect(begin - end, 'the gap of the knife').to.be.within(atEdge ? 0 : gap - near, gap + near);
      const at = along ? hand.y + setting : hand.x + setting;
      const ends = along
        ? [{x: hand.x, y: at}, {x: hand.x + hand.length, y: at}] : [{x: at, y: hand.y}, {x: at, y: hand.y + hand.width}];
      [line.from, line.to].forEach((end, i) => {
        expect(Math.hypot(end.x - (ends[i]?.x ?? NaN), end.y - (ends[i]?.y ?? NaN)), 'edge to edge').to.be.below(near);
      });
      boxes.push(...pieces);
      continue;
    }
    const started = parts.findIndex((each) => sameOutline(each, step.hand));
    const box = boxes.find((each) => sameOutline(cornersOf(each), step.hand));
    expect(started >= 0 || box !== undefined, 'the part is in hand').to.equal(true);
    if (started >= 0) parts.splice(started, 1); else boxes = boxes.filter((each) => each !== box);
    if (step.kind === 'outline') {
      parts.push(...step.pieces.map(({outline}) => outline));
      continue;
    }
    for (const end of [step.line.from, step.line.to]) {
      const fromEdge = Math.min(...step.hand.map((q, i) => {
        const p = step.hand[(i + step.hand.length - 1) % step.hand.length] ?? q;
        return Math.hypot(q.x - p.x, q.y - p.y) < near ? Infinity : Math.abs(side({from: p, to: q}, end));
      }));
      expect(fromEdge, 'edge to edge').to.be.below(near);
    }
    for (const {outline} of step.pieces) {
      const sides = outline.map((point) => side(step.line, point));
      expect(Math.min(...sides) > -near || Math.max(...sides) < near, 'no part is cut through').to.equal(true);
    }
    parts.push(...halves(step.hand, step.line));
  }
  for (const {pieces} of sheet.cutouts) {
    for (const {id, outline} of pieces) {
      const done = parts.some((each) => sameOutline(outline, each)) || boxes.some((each) => sameOutline(outline, cornersOf(each)));
      expect(done, `${id} is cut out`).to.equal(true);
    }
  }
}

const cornersOf = ({x, y, length, width}: Box): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];

const size = fc.integer({min: 8, max: 90}).map((each) => each / 200);
const anyPlates = fc.array(fc.record({length: size, width: size, count: fc.integer({min: 1, max: 4}), mayTurn: fc.boolean()}), {minLength: 1, maxLength: 8})
  .map((plates) => plates.map(({length, width, ...more}, i) => plate(`p${i}`, length, width, more)));

describe('the cutting order', () => {
  it('takes any sheet apart into its pieces, cut by cut, edge to edge', () => {
    fc.assert(fc.property(anyPlates, fc.constantFrom(0, 0.001, 0.01), fc.constantFrom(0, 0.006), fc.integer({min: 1, max: 80}), (parts, gap, margin, steps) => {
      const found = foundIn(steps, job(parts, [board(0.7, 0.5)], {gap, margin}));
      let rulerCuts = 0;
      for (const sheet of found.sheets) {
        const order = cuttingOrder(sheet, gap);
        cutUp(sheet, order, gap);
        rulerCuts += order.filter(({kind}) => kind === 'ruler').length;
      }
      // sheets that are alike are cut alike, and count once
      expect(found.cuts).to.be.at.most(rulerCuts);
    }), {numRuns: 100});
  });

  it('parts nested panels by one slanting cut and cuts each along its edges', () => {
    const what = job([part('panel', taperedPanel, {count: 4}), plate('body', 0.5, 0.06)], [board(0.7, 0.5)], {gap: 0.001});
    const found = foundIn(100, what);
    const [sheet] = found.sheets;
    if (!sheet) throw new Error('nothing found');
    expect(sheet.cutouts.some(({pieces}) => pieces.length === 2)).to.equal(true);
    const order = cuttingOrder(sheet, 0.001);
    cutUp(sheet, order, 0.001);
    expect(order.some(({kind}) => kind === 'outline')).to.equal(false);
    expect(order.filter(({kind, ...step}) => kind === 'edge' && 'pieces' in step && step.pieces.length === 2)).to.have.length.at.least(1);
  });

  it('leaves only inward corners to be cut along the outline', () => {
    const [sheet] = foundIn(20, job([part('l', lShape)], [board(0.7, 0.5)])).sheets;
    if (!sheet) throw new Error('nothing found');
    const order = cuttingOrder(sheet, 0);
    cutUp(sheet, order, 0);
    expect(order.map(({kind}) => kind)).to.deep.equal(['ruler', 'ruler', 'edge', 'outline']);
  });

  it('keeps the ruler set for strips of one size', () => {
    const [sheet] = foundIn(50, job([plate('strip', 0.7, 0.05, {count: 4, mayTurn: false})], [board(0.7, 0.5)], {gap: 0.001})).sheets;
    if (!sheet) throw new Error('nothing found');
    const order = cuttingOrder(sheet, 0.001);
    expect(order.map((step) => step.kind === 'ruler' && `${step.setting.toFixed(6)} ${step.again}`))
      .to.deep.equal(['0.050000 false', '0.050000 true', '0.050000 true', '0.050000 true']);
  });

  it('cuts the largest offcut off first', () => {
    const [sheet] = foundIn(20, job([plate('fin', 0.1, 0.06, {mayTurn: false})], [board(0.7, 0.5)])).sheets;
    if (!sheet) throw new Error('nothing found');
    expect(sheet.leftover).to.deep.include({x: 0, y: 0.06, length: 0.7});
    const [first] = cuttingOrder(sheet, 0);
    expect(first).to.deep.include({kind: 'ruler', along: true, setting: 0.06, line: {from: {x: 0, y: 0.06}, to: {x: 0.7, y: 0.06}}});
  });

  it('follows each outline on a sheet that is not cut edge to edge', () => {
    const [sheet] = foundIn(20, job([part('l', lShape, {count: 2})], [board(0.7, 0.5)], {cuts: 'free'})).sheets;
    if (!sheet) throw new Error('nothing found');
    expect(cuttingOrder(sheet, 0).map(({kind}) => kind)).to.deep.equal(['outline', 'outline']);
  });
});
