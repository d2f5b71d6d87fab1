import {expect} from '@open-wc/testing';
import type {Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import {board, expectSound, foundIn, job, part, plate} from './found-check.js';

const areaOf = (polygon: Polygon): number => polygon.reduce((sum, q, i) => {
  const p = polygon[(i + polygon.length - 1) % polygon.length] ?? q;
  return sum + (p.x * q.y - q.x * p.y) / 2;
}, 0);

describe('a part too long for the board', () => {
  const wing: Polygon = [{x: 0, y: 0}, {x: 1.2, y: 0}, {x: 1.2, y: 0.1}, {x: 0.6, y: 0.2}, {x: 0, y: 0.1}];

  it('is made of as few equal lengths as fit, where it may be', () => {
    const what = job([part('wing', wing, {maySplice: true, count: 2}), plate('fin', 0.1, 0.1)], [board(0.7, 0.5)], {gap: 0.001});
    const found = foundIn(100, what);
    expectSound(found, what);
    expect(found.spliced).to.deep.equal([{id: 'wing', into: ['wing 1/2', 'wing 2/2']}]);
    const lengths = found.sheets.flatMap(({cutouts}) => cutouts.flatMap(({pieces}) => pieces)).filter(({id}) => id.startsWith('wing'));
    expect(lengths.map(({id}) => id).sort()).to.deep.equal(['wing 1/2', 'wing 1/2', 'wing 2/2', 'wing 2/2']);
    expect(lengths.reduce((sum, {outline}) => sum + areaOf(outline), 0)).to.be.closeTo(2 * areaOf(wing), 1e-9);
  });

  it('is left out where it may not, or where no length of it would fit', () => {
    const left = (more: Parameters<typeof part>[2], width = 0.5): string[] =>
      foundIn(20, job([part('wing', wing, more)], [board(0.7, width)])).unplaced.map(({problem}) => problem.code);
    expect(left({})).to.deep.equal(['part-too-big']);
    expect(left({maySplice: true}, 0.15)).to.deep.equal(['part-too-big']);
    expect(left({maySplice: true})).to.deep.equal([]);
  });

  it('upright is cut across, too', () => {
    const upright = wing.map(({x, y}) => ({x: y, y: x})).reverse();
    const what = job([part('wing', upright, {maySplice: true, mayTurn: false})], [board(0.5, 0.7)]);
    const found = foundIn(20, what);
    expectSound(found, what);
    expect(found.spliced[0]?.into).to.have.lengthOf(2);
  });
});
