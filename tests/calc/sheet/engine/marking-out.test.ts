import {expect} from '@open-wc/testing';
import {markingOut} from '../../../../src/calc/sheet/engine/index.js';
import {taperedPanel} from '../../geometry/polygon/outlines.js';
import {board, foundIn, job, part, plate} from './found-check.js';

describe('the marking-out list', () => {
  it('ticks every edge off from one corner, in order, and gives the diagonal', () => {
    const what = job([plate('wing', 0.6, 0.2, {mayTurn: false}), plate('tail', 0.25, 0.1, {mayTurn: false, count: 2})], [board(0.8, 0.6)], {gap: 0.002});
    const [sheet] = foundIn(100, what).sheets;
    if (!sheet) throw new Error('nothing found');
    const {x, y, longAlongX, diagonal} = markingOut(sheet);
    expect(diagonal).to.be.closeTo(1, 1e-12);
    expect(longAlongX).to.equal(true);
    const boxes = sheet.cutouts;
    for (const [ticks, edges, end] of [
      [x, boxes.flatMap((box) => [box.x, box.x + box.length]), 0.8], [y, boxes.flatMap((box) => [box.y, box.y + box.width]), 0.6],
    ] as const) {
      const wanted = [...new Set(edges.map((edge) => Math.round(edge * 1e6)))].filter((edge) => edge > 0 && edge < end * 1e6).sort((a, b) => a - b);
      expect(ticks.map(({at}) => Math.round(at * 1e6))).to.deep.equal(wanted);
    }
  });

  it('joins the lines of pieces that lie side by side, and says whose they are', () => {
    const what = job([plate('card', 0.1, 0.1, {count: 3})], [board(0.3, 0.5)]);
    const [sheet] = foundIn(50, what).sheets;
    if (!sheet) throw new Error('nothing found');
    const {x, y} = markingOut(sheet);
    const across = x.length > 0 ? [x, y] : [y, x];
    expect(across[0]?.map(({at}) => at.toFixed(3))).to.deep.equal(['0.100', '0.200']);
    expect(across[1]?.map(({spans, pieces}) => [spans.length, pieces.length])).to.deep.equal([[1, 3]]);
    expect(across[1]?.[0]?.spans[0]?.to).to.be.closeTo(0.3, 1e-9);
  });

  it('knows the longer edge, and needs no tick at the edges of the sheet', () => {
    const [sheet] = foundIn(50, job([part('panel', taperedPanel, {mayTurn: false})], [board(0.3, 0.4)])).sheets;
    if (!sheet) throw new Error('nothing found');
    const {x, y, longAlongX} = markingOut(sheet);
    expect(longAlongX).to.equal(false);
    expect(x).to.deep.equal([]);
    expect(y.map(({at}) => at)).to.deep.equal([0.14]);
  });
});
