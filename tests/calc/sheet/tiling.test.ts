import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign} from '../../../src/calc/design/design.js';
import {pointInPolygon, type Point, type Polygon} from '../../../src/calc/geometry/polygon/index.js';
import {cutSheets} from '../../../src/calc/sheet/from-parts.js';
import {mostPages, tileSheet, type PageRoom, type Tile, type Tiling, type ToTile} from '../../../src/calc/sheet/tiling.js';

const hair = 1e-9;
const triangle = (x: number, y: number, length: number, width: number, at: number): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + at * length, y: y + width}];
const rectangle = (x: number, y: number, length: number, width: number): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];

/** Rectangles and triangles strewn over a board. */
const sheets: fc.Arbitrary<ToTile> = fc.record({
  length: fc.double({min: 0.2, max: 1.2, noNaN: true}), width: fc.double({min: 0.2, max: 1, noNaN: true}),
}).chain(({length, width}) => fc.array(fc.tuple(fc.boolean(), ...Array.from({length: 5}, () => fc.double({min: 0, max: 1, noNaN: true}))), {minLength: 1, maxLength: 6})
  .map((shapes) => ({
    length, width,
    outlines: shapes.map(([slanting, x = 0, y = 0, l = 0, w = 0, at = 0]) => {
      const corner = [0.95 * x * length, 0.95 * y * width] as const;
      const size = [0.01 + l * (length - corner[0] - 0.01), 0.01 + w * (width - corner[1] - 0.01)] as const;
      return slanting ? triangle(...corner, ...size, at) : rectangle(...corner, ...size);
    }),
  })));
const rooms: fc.Arbitrary<PageRoom> = fc.record({width: fc.double({min: 0.15, max: 0.3, noNaN: true}), height: fc.double({min: 0.15, max: 0.4, noNaN: true})});
const overlaps = fc.double({min: 0, max: 0.04, noNaN: true});

function tiled(sheet: ToTile, room: PageRoom, overlap: number): Tiling {
  const tiling = tileSheet(sheet, room, overlap);
  if (!tiling.ok) throw new Error(tiling.problems.map(({code}) => code).join());
  return tiling.value;
}

const onPaper = ({turned}: Tiling, {width}: ToTile) => ({x, y}: Point): Point => (turned ? {x: width - y, y: x} : {x, y});
const shows = ({x, y}: Tile, room: PageRoom, p: Point): boolean =>
  p.x >= x - hair && p.x <= x + room.width + hair && p.y >= y - hair && p.y <= y + room.height + hair;

describe('tileSheet', () => {
  it('shows every point of every part on a page', () => {
    const shares = fc.array(fc.array(fc.integer({min: 0, max: 9}), {minLength: 4, maxLength: 4}), {minLength: 9, maxLength: 9});
    fc.assert(fc.property(sheets, rooms, overlaps, shares, (sheet, room, overlap, mixtures) => {
      const tiling = tiled(sheet, room, overlap);
      for (const outline of sheet.outlines) {
        // the corners, and any mixture of them: points on edges and inside
        for (const mixture of [...outline.map((_, n) => outline.map((__, i) => (i === n ? 1 : 0))), ...mixtures]) {
          const shared = outline.map((_, i) => mixture[i] ?? 0);
          const sum = shared.reduce((a, b) => a + b, 0);
          if (sum === 0) continue;
          const point = outline.reduce((p, {x, y}, i) => ({x: p.x + x * (shared[i] ?? 0) / sum, y: p.y + y * (shared[i] ?? 0) / sum}), {x: 0, y: 0});
          const at = onPaper(tiling, sheet)(point);
          expect(tiling.tiles.some((tile) => shows(tile, room, at)), JSON.stringify(point)).to.equal(true);
        }
      }
    }));
  });

  it('lets neighbours overlap by exactly what was asked, and no others', () => {
    fc.assert(fc.property(sheets, rooms, overlaps, (sheet, room, overlap) => {
      const {tiles} = tiled(sheet, room, overlap);
      for (const tile of tiles) {
        const at = (columns: number, rows: number): Tile | undefined => tiles.find(({column, row}) => column === tile.column + columns && row === tile.row + rows);
        const [left, right, above, below] = [at(-1, 0), at(1, 0), at(0, -1), at(0, 1)];
        expect(tile.neighbours).to.deep.equal({left: !!left, right: !!right, above: !!above, below: !!below});
        if (right) expect(tile.x + room.width - right.x).to.be.closeTo(overlap, hair);
        if (below) expect(below.y + room.height - tile.y).to.be.closeTo(overlap, hair);
      }
    }));
  });

  it('leaves out pages on which nothing is cut, and only those', () => {
    fc.assert(fc.property(sheets, rooms, overlaps, (sheet, room, overlap) => {
      const tiling = tiled(sheet, room, overlap);
      const outlines = sheet.outlines.map((outline) => outline.map(onPaper(tiling, sheet)));
      for (const {x, y, neighbours} of tiling.tiles) {
        // something lies between the trim lines: a corner of a part, or a point of the page's own within one
        const [left, right] = [x + (neighbours.left ? overlap / 2 : 0), x + room.width - (neighbours.right ? overlap / 2 : 0)];
        const [low, high] = [y + (neighbours.below ? overlap / 2 : 0), y + room.height - (neighbours.above ? overlap / 2 : 0)];
        const grid = Array.from({length: 41 * 41}, (_, i) => ({x: left + (right - left) * (i % 41) / 40, y: low + (high - low) * Math.floor(i / 41) / 40}));
        const corners = outlines.flat().filter((p) => p.x >= left - hair && p.x <= right + hair && p.y >= low - hair && p.y <= high + hair);
        const crossing = outlines.some((outline) => outline.some((to, i) => {
          const from = outline.at(i - 1) ?? to;
          return Array.from({length: 201}, (_, k) => k / 200).some((t) => {
            const p = {x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y)};
            return p.x >= left - hair && p.x <= right + hair && p.y >= low - hair && p.y <= high + hair;
          });
        }));
        expect(corners.length > 0 || crossing || grid.some((p) => outlines.some((outline) => pointInPolygon(p, outline) !== 'outside'))).to.equal(true);
      }
    }), {numRuns: 30});
    const apart = {length: 1, width: 0.3, outlines: [rectangle(0, 0, 0.1, 0.1), rectangle(0.9, 0, 0.1, 0.1)]};
    expect(tiled(apart, {width: 0.2, height: 0.28}, 0.01).tiles.map(({column}) => column)).to.deep.equal([0, 5]);
  });

  it('takes one page where one will do, and turns the board where that saves one', () => {
    const flat = {length: 0.25, width: 0.15, outlines: [rectangle(0, 0, 0.25, 0.15)]};
    expect(tiled(flat, {width: 0.26, height: 0.16}, 0.01)).to.deep.include({turned: false, columns: 1, rows: 1});
    expect(tiled(flat, {width: 0.16, height: 0.26}, 0.01)).to.deep.include({turned: true, columns: 1, rows: 1});
  });

  it('never takes more pages than a grid over the parts, and begins at their corner where that costs nothing', () => {
    fc.assert(fc.property(sheets, rooms, overlaps, (sheet, room, overlap) => {
      const {tiles, columns, rows} = tiled(sheet, room, overlap);
      expect(tiles.length).to.be.at.least(1).and.at.most(columns * rows);
    }));
    const board = {length: 0.7, width: 0.5, outlines: [rectangle(0, 0, 0.7, 0.5)]};
    const [first] = tiled(board, {width: 0.19, height: 0.219}, 0.01).tiles;
    expect(first?.x).to.be.closeTo(-0.001, hair);
    expect((first?.y ?? 0) + 0.219).to.be.closeTo(0.501, hair);
    const cut = cutSheets(defaultDesign, 1);
    if (!cut.ok) throw new Error('no layout');
    const {stock, plans} = cut.value;
    const outlines = plans.flatMap(({pieces}) => pieces.map(({placed}) => placed.outline));
    expect(tiled({...stock, outlines}, {width: 0.19, height: 0.219}, 0.01).tiles.length).to.be.below(tiled({...stock, outlines: board.outlines}, {width: 0.19, height: 0.219}, 0.01).tiles.length);
  });

  it('refuses what cannot be printed, and says the most that can', () => {
    const board = {length: 0.7, width: 0.5, outlines: [rectangle(0, 0, 0.7, 0.5)]};
    const code = (sheet: ToTile, room: PageRoom, overlap: number): string | undefined => {
      const tiling = tileSheet(sheet, room, overlap);
      return tiling.ok ? undefined : tiling.problems[0]?.code;
    };
    expect(code(board, {width: 0.19, height: 0.22}, 0.07)).to.equal('overlap-too-wide');
    expect(code(board, {width: 0.19, height: 0.22}, -0.001)).to.equal('overlap-too-wide');
    expect(code(board, {width: 0.19, height: 0.22}, NaN)).to.equal('overlap-too-wide');
    expect(code(board, {width: -1, height: 0.22}, 0.01)).to.equal('paper-too-small');
    expect(code({length: 10, width: 10, outlines: [rectangle(0, 0, 10, 10)]}, {width: 0.19, height: 0.22}, 0.01)).to.equal('too-many-pages');
    expect(code({length: NaN, width: 1, outlines: [rectangle(0, 0, NaN, 1)]}, {width: 0.19, height: 0.22}, 0.01)).to.equal('too-many-pages');
    const most = tiled({length: 3, width: 2, outlines: [rectangle(0, 0, 3, 2)]}, {width: 0.19, height: 0.22}, 0.01).tiles.length;
    expect(most).to.be.above(100).and.at.most(mostPages);
    expect(tiled({length: 0.7, width: 0.5, outlines: []}, {width: 0.19, height: 0.22}, 0.01).tiles).to.deep.equal([]);
  });
});
