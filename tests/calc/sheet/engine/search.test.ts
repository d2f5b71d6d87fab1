import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import type {Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import {mostPieces, SheetSearch, type Job} from '../../../../src/calc/sheet/engine/index.js';
import {anyOutline, lShape, rectangle, taperedPanel} from '../../geometry/polygon/outlines.js';
import {board, expectSound, foundIn, job, part, plate, stepClock} from './found-check.js';

const fresh = ({sheets}: {readonly sheets: readonly {readonly board: {readonly leftover?: boolean}}[]}): number =>
  sheets.filter((sheet) => !sheet.board.leftover).length;

describe('a search for the best layout', () => {
  it('places one part in the corner, and says that no fewer sheets will do', () => {
    const what = job([plate('fin', 0.1, 0.06)], [board(0.7, 0.5)]);
    const found = foundIn(20, what);
    expectSound(found, what);
    expect(found.sheets).to.have.lengthOf(1);
    expect(found.sheets[0]?.cutouts[0]).to.include({x: 0, y: 0});
    expect(found).to.include({least: 1, fewest: true});
  });

  it('has the first layout of one glider ready within a few steps', () => {
    const glider = [
      part('wing', taperedPanel, {count: 2}), plate('body', 0.5, 0.06, {count: 3}), plate('tail', 0.25, 0.07), plate('fin', 0.08, 0.06, {count: 2}),
    ];
    for (const cuts of ['straight', 'free'] as const) {
      const search = new SheetSearch(job(glider, [board(0.7, 0.5)], {cuts, gap: 0.001}), {now: stepClock()});
      search.work(20);
      expect(search.found?.sheets, cuts).to.have.lengthOf(1);
    }
  });

  it('only ever replaces a layout by a better one', () => {
    const what = job(Array.from({length: 24}, (_, i) => plate(`p${i}`, 0.05 + 0.01 * (i * 7 % 19), 0.04 + 0.01 * (i * 5 % 11))), [board(0.5, 0.4)]);
    const search = new SheetSearch(what, {now: stepClock()});
    let before = Infinity, seen = 0;
    for (let n = 0; n < 300; n++) {
      const shown = search.found;
      search.work(1);
      if (!search.found || search.found === shown) continue;
      expectSound(search.found, what);
      seen++;
      expect(search.found.sheets.length).to.be.at.most(before);
      before = search.found.sheets.length;
    }
    expect(seen).to.be.at.least(2);
  });

  it('goes the same way every time, and another way with another seed', () => {
    const parts = Array.from({length: 30}, (_, i) => plate(`p${i}`, 0.05 + 0.013 * (i * 7 % 17), 0.04 + 0.011 * (i * 5 % 13)));
    const what = job(parts, [board(0.4, 0.3)], {gap: 0.001});
    expect(foundIn(400, what, 5)).to.deep.equal(foundIn(400, what, 5));
    expect(foundIn(400, what, 5)).to.not.deep.equal(foundIn(400, what, 6));
  });

  it('stops at the time it is given, and ends by itself when there is nothing to gain', () => {
    let now = 0;
    const search = new SheetSearch(job([plate('a', 0.3, 0.2, {count: 30})], [board(0.7, 0.5)]), {now: () => now});
    let steps = 0;
    const step = (): boolean => { now += 1; return search.work(0); };
    while (step()) if (++steps > 500_000) throw new Error('never ends');
    expect(search.done).to.equal(true);
    expect(search.found?.fewest).to.equal(true);
    expect(search.work(1000)).to.equal(false);
  });

  it('has room for a part exactly as long as the sheet, in figures that do not come out even', () => {
    for (const length of [0.7, 30 * 0.0254, 0.1 + 0.2]) {
      const what = job([part('wing', rectangle(0.1, 0.1, length, 0.12), {count: 2, mayTurn: false})], [board(length, 0.25)], {gap: 0.001});
      const found = foundIn(20, what);
      expectSound(found, what);
      expect(found.sheets).to.have.lengthOf(1);
    }
  });

  it('keeps the knife’s gap between parts and not at the edge', () => {
    const parts = [plate('half', 0.3, 0.249, {count: 2, mayTurn: false})];
    for (const cuts of ['straight', 'free'] as const) {
      expect(foundIn(50, job(parts, [board(0.3, 0.5)], {gap: 0.002, cuts})).sheets).to.have.lengthOf(1);
      expect(foundIn(50, job(parts, [board(0.3, 0.5)], {gap: 0.00201, cuts})).sheets).to.have.lengthOf(2);
    }
  });

  it('cuts a pinwheel from one sheet along outlines, but not with straight cuts', () => {
    const parts = [plate('vane', 0.3, 0.2, {count: 4}), plate('hub', 0.1, 0.1)];
    const free = job(parts, [board(0.5, 0.5)], {cuts: 'free'});
    const found = foundIn(500, free);
    expectSound(found, free);
    expect(found.sheets).to.have.lengthOf(1);
    const straight = job(parts, [board(0.5, 0.5)]);
    const cut = foundIn(500, straight);
    expectSound(cut, straight);
    expect(cut.sheets).to.have.lengthOf(2);
  });

  it('nests tapered panels head to tail where their bounds would not fit, parted by one straight cut', () => {
    for (const cuts of ['straight', 'free'] as const) {
      const what = job([part('panel', taperedPanel, {count: 2})], [board(0.3, 0.225)], {gap: 0.001, cuts});
      const found = foundIn(50, what);
      expectSound(found, what);
      expect(found.sheets, cuts).to.have.lengthOf(1);
    }
    const several = job([part('panel', taperedPanel, {count: 4}), plate('body', 0.5, 0.06)], [board(0.7, 0.5)], {gap: 0.001});
    expectSound(foundIn(100, several), several);
    // one may not be turned against the other
    expect(foundIn(50, job([part('panel', taperedPanel, {count: 2, mayTurn: false})], [board(0.3, 0.225)])).sheets).to.have.lengthOf(2);
    expect(foundIn(50, job([part('panel', taperedPanel, {count: 2, mayTurn: false, mayTurnHalf: true})], [board(0.3, 0.225)])).sheets).to.have.lengthOf(1);
  });

  it('fills the notch of a part, but only where outlines may be cut', () => {
    const parts = [part('l', lShape), plate('filler', 0.098, 0.198)];
    const free = job(parts, [board(0.3, 0.2)], {gap: 0.002, cuts: 'free'});
    const found = foundIn(50, free);
    expectSound(found, free);
    expect(found.sheets).to.have.lengthOf(1);
  });

  it('lays outlines into each other where no two of them fit an upright rectangle better', () => {
    const triangle: Polygon = [{x: 0, y: 0}, {x: 0.2, y: 0}, {x: 0.1, y: 0.17}];
    const what = job([part('triangle', triangle, {count: 5})], [board(0.62, 0.172)], {gap: 0.002, cuts: 'free'});
    const found = foundIn(2000, what);
    expectSound(found, what);
    expect(found.sheets).to.have.lengthOf(1);
  });

  it('uses pieces left over before it begins a board', () => {
    const parts = [plate('fin', 0.1, 0.1, {count: 4}), plate('wing', 0.6, 0.15)];
    const what = job(parts, [board(0.7, 0.5), {id: 'scrap', length: 0.2, width: 0.2, count: 1, leftover: true}, {id: 'strip', length: 0.65, width: 0.16, count: 1, leftover: true}]);
    const found = foundIn(300, what);
    expectSound(found, what);
    expect(fresh(found)).to.equal(0);
    expect(found).to.include({least: 0, fewest: true});
  });

  it('takes the smaller of several boards where that will do', () => {
    const what = job([plate('tail', 0.25, 0.2)], [board(1, 0.7), {id: 'small', length: 0.3, width: 0.2}]);
    const found = foundIn(200, what);
    expectSound(found, what);
    expect(found.sheets.map((sheet) => sheet.board.id)).to.deep.equal(['small']);
  });

  it('places what it can when the boards run out', () => {
    const what = job([plate('plate', 0.3, 0.2, {count: 5})], [board(0.3, 0.4, {count: 2})]);
    const found = foundIn(200, what);
    expectSound(found, what);
    expect(found.sheets).to.have.lengthOf(2);
    expect(found.unplaced).to.deep.equal([{id: 'plate', copy: 4, problem: {code: 'sheets-run-out', args: {id: 'plate', sheets: 2}}}]);
  });

  it('uses as little of a roll as it can', () => {
    const what = job([plate('a', 0.3, 0.2, {count: 3}), plate('b', 0.2, 0.1, {count: 3})], [board(Infinity, 0.4)]);
    const found = foundIn(500, what);
    expectSound(found, what);
    expect(found.sheets[0]?.length).to.be.closeTo(0.6, 1e-9);
  });

  it('leaves the largest piece over that it can', () => {
    // one strip across the end, each of the others with a card at its end beside it: all else is one rectangle
    const what = job([plate('strip', 0.5, 0.1, {count: 3}), plate('card', 0.1, 0.1, {count: 2})], [board(0.7, 0.5)]);
    const found = foundIn(2000, what);
    expectSound(found, what);
    const {leftover} = found.sheets[0] ?? {};
    expect((leftover?.length ?? 0) * (leftover?.width ?? 0)).to.be.closeTo(0.6 * 0.3, 1e-9);
  });

  it('leaves a larger piece over in a corner than any strip across the board would be', () => {
    const kit = [plate('wing', 0.66, 0.12, {mayTurn: false}), plate('body', 0.62, 0.032, {count: 2}), plate('tail', 0.24, 0.078), plate('fin', 0.07, 0.07, {count: 2})];
    const what = job(kit, [board(0.7, 0.5)], {gap: 0.001, cuts: 'free'});
    const found = foundIn(3000, what);
    expectSound(found, what);
    const {length = 0, width = 0} = found.sheets[0]?.leftover ?? {};
    // beside the fins, above all else: wider than what the tail would leave of a strip
    expect(length * width).to.be.above(0.18);
    expect(Math.max(length / 0.7, width / 0.5)).to.be.below(1);
  });

  it('lets parts stand at the edge of the board where that leaves a larger piece over', () => {
    // the wing leaves 80 mm of the length, the tailplane takes 74 of them: it may stand anywhere between, and belongs at the edge
    const kit = [plate('wing', 0.62, 0.115, {mayTurn: false}), plate('body', 0.54, 0.032, {count: 2}), plate('tail', 0.23, 0.074), plate('fin', 0.066, 0.058, {count: 2})];
    for (const {cuts, margin} of [{cuts: 'straight', margin: 0}, {cuts: 'straight', margin: 0.004}, {cuts: 'free', margin: 0}] as const) {
      const what = job(kit, [board(0.7 + 2 * margin, 0.5 + 2 * margin)], {gap: 0.001, cuts, margin});
      const found = foundIn(3000, what);
      expectSound(found, what);
      const {length = 0, width = 0} = found.sheets[0]?.leftover ?? {};
      expect(length, `${cuts} ${String(margin)}`).to.be.closeTo(0.625, 1e-6);
      expect(width, `${cuts} ${String(margin)}`).to.be.above(0.317 - 1e-6);
    }
  });

  it('lays out any number of gliders', () => {
    const kits = fc.record({kits: fc.integer({min: 1, max: 40}), wing: fc.integer({min: 30, max: 69}), cuts: fc.constantFrom<Job['cuts']>('straight', 'free')});
    fc.assert(fc.property(kits, ({kits: n, wing, cuts}) => {
      const kit = [
        plate('wing', wing / 100, 0.12, {count: n, mayTurn: false}), plate('body', 0.62, 0.032, {count: 2 * n}),
        part('panel', taperedPanel, {count: n}), plate('fin', 0.07, 0.05, {count: 2 * n}),
      ];
      const what = job(kit, [board(0.7, 0.5)], {gap: 0.001, cuts});
      const found = foundIn(60, what);
      expectSound(found, what);
      expect(found.unplaced).to.deep.equal([]);
      expect(found.sheets.length).to.be.at.most(1.5 * found.least + 1);
    }), {numRuns: 25});
  });

  it('cuts sheets for many gliders alike, as far as they go', () => {
    const kit = [plate('wing', 0.6, 0.15, {count: 30}), plate('body', 0.5, 0.05, {count: 60}), plate('fin', 0.08, 0.06, {count: 60})];
    const what = job(kit, [board(0.7, 0.5)], {gap: 0.001});
    const found = foundIn(3000, what);
    expectSound(found, what);
    const looks = new Set(found.sheets.map(({cutouts}) => JSON.stringify(cutouts.map(({x, y, length}) => [x, y, length].map((each) => each.toFixed(4))))));
    expect(looks.size).to.be.below(found.sheets.length / 2);
  });
});

describe('what a search makes of bad input', () => {
  const good = plate('fin', 0.1, 0.1);

  it('names every part that cannot be placed and lays out the rest', () => {
    const bowTie: Polygon = [{x: 0, y: 0}, {x: 0.1, y: 0.1}, {x: 0.1, y: 0}, {x: 0, y: 0.1}, {x: -0.1, y: 0.3}];
    const what = job([
      plate('wing', 0.9, 0.1, {count: 2}), good, part('line', [{x: 0, y: 0}, {x: 0.1, y: 0}]), part('knot', bowTie),
      part('ghost', [{x: 0, y: 0}, {x: NaN, y: 0}, {x: 0, y: 1}]), plate('none', 0.1, 0.1, {count: 0}), plate('many', 0.01, 0.01, {count: 10_000}),
      part('lace', Array.from({length: 20_000}, (_, i) => ({x: 0.1 * Math.cos(i / 3183), y: 0.1 * Math.sin(i / 3183)}))),
      plate('half', 0.1, 0.1, {count: 0.5}),
    ], [board(0.7, 0.5)]);
    const found = foundIn(20, what);
    expectSound({...found, unplaced: found.unplaced.filter(({id}) => id !== 'many')}, {...what, parts: what.parts.filter(({id}) => id !== 'many')});
    expect(found.sheets.flatMap(({cutouts}) => cutouts.flatMap(({pieces}) => pieces.map(({id}) => id)))).to.deep.equal(['fin']);
    expect([...new Set(found.unplaced.map(({id, problem}) => `${id} ${problem.code}`))]).to.deep.equal([
      'wing part-too-big', 'line outline-empty', 'knot outline-crosses-itself', 'ghost outline-empty', 'many too-many-parts', 'lace outline-too-fine',
    ]);
    expect(found.problems.map(({code}) => code)).to.deep.equal(['part-count-not-whole']);
  });

  it('works without the boards that make no sense, and says which', () => {
    const boards = [
      board(0, 0.5, {id: 'flat'}), board(0.7, NaN, {id: 'nan'}), board(0.7, Infinity, {id: 'plane'}), board(-1, 1, {id: 'minus'}),
      board(0.7, 0.5, {id: 'half', count: 0.5}), board(0.015, 0.5, {id: 'thin'}), board(0.7, 0.5),
    ];
    const what = job([good], boards, {margin: 0.01});
    const found = foundIn(20, what);
    expect(found.sheets.map((sheet) => sheet.board.id)).to.deep.equal(['board']);
    expect(found.problems.map(({code}) => code)).to.deep.equal(
      ['board-not-positive', 'board-not-positive', 'board-not-positive', 'board-not-positive', 'board-count-not-whole', 'margin-too-wide']);
  });

  it('says so when there is no board, no part, or a gap or margin that is none', () => {
    expect(foundIn(5, job([good], [])).unplaced.map(({problem}) => problem.code)).to.deep.equal(['no-board']);
    expect(foundIn(5, job([good], [board(1, 1, {count: 0})])).sheets).to.deep.equal([]);
    expect(foundIn(5, job([], [board(1, 1)]))).to.deep.include({sheets: [], unplaced: [], least: 0});
    for (const wrong of [NaN, -0.001, Infinity]) {
      expect(foundIn(5, job([good], [board(1, 1)], {gap: wrong})).problems.map(({code}) => code)).to.deep.equal(['gap-negative']);
      expect(foundIn(5, job([good], [board(1, 1)], {margin: wrong})).problems.map(({code}) => code)).to.deep.equal(['margin-negative']);
    }
  });

  it('copes with a gap larger than the parts', () => {
    const what = job([plate('chip', 0.01, 0.01, {count: 9})], [board(0.2, 0.2)], {gap: 0.05});
    const found = foundIn(50, what);
    expectSound(found, what);
    expect(found.sheets).to.have.lengthOf(1);
  });

  it('lays out as many of ten thousand different parts as it takes, and names every other', () => {
    const parts = Array.from({length: 10_000}, (_, i) => plate(`p${i}`, 0.01 + 0.0001 * (i % 97), 0.02));
    const found = foundIn(20, job(parts, [board(0.7, 0.5)]));
    expect(found.sheets.flatMap(({cutouts}) => cutouts)).to.have.lengthOf(mostPieces);
    expect(found.unplaced.map(({id}) => id)).to.deep.equal(parts.slice(mostPieces).map(({id}) => id));
    expect(found.unplaced[0]?.problem).to.deep.equal({code: 'too-many-parts', args: {id: `p${mostPieces}`, count: 1, most: mostPieces}});
  });

  it('takes small steps even with as many different parts as it takes', () => {
    const parts = Array.from({length: mostPieces}, (_, i) => plate(`p${i}`, 0.01 + 0.0001 * (i * 37 % 997), 0.01 + 0.0001 * (i * 53 % 499)));
    const search = new SheetSearch(job(parts, [board(0.7, 0.5)]), {now: stepClock()});
    let steps = 0;
    while (!search.found) { search.work(1); steps++; }
    // the first layout of so many pieces takes long enough to be interrupted many times
    expect(steps).to.be.above(50);
    expect(search.found.sheets.length).to.be.at.least(search.found.least);
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
const anyBoard = fc.record({length: size(1), width: size(0.7), count: fc.integer({min: 0, max: 3}), leftover: fc.boolean()});
const anyJob = fc.record({
  parts: fc.array(anyPart, {maxLength: 6}).map((parts) => parts.map((each, i) => ({...each, id: `part ${i}`}))),
  boards: fc.array(anyBoard, {maxLength: 2}).map((boards) => [...boards.map((each, i) => ({...each, id: `board ${i}`})), board(1, 0.7)]),
  margin: fc.constantFrom(0, 0.004),
  gap: fc.constantFrom(0, 0.001, 0.004),
  cuts: fc.constantFrom<Job['cuts']>('straight', 'free'),
});

describe('any parts on any boards', () => {
  it('never overlap, leave the board, come too near, turn or turn over against orders, or get lost', () => {
    fc.assert(fc.property(anyJob, fc.integer({min: 1, max: 60}), (what, steps) => {
      expectSound(foundIn(steps, what), what);
    }), {numRuns: 120});
  });

  it('are placed while there is board, all that fit', () => {
    fc.assert(fc.property(anyJob, (what) => {
      expect(foundIn(20, what).unplaced.every(({problem}) => problem.code === 'part-too-big')).to.equal(true);
    }), {numRuns: 60});
  });
});
