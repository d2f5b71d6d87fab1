import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import type {HeldPiece, Job} from '../../../../src/calc/sheet/engine/index.js';
import {lShape} from '../../geometry/polygon/outlines.js';
import {board, expectSound, foundIn, job, part, plate} from './found-check.js';

const held = (id: string, x: number, y: number, more: Partial<HeldPiece> = {}): HeldPiece =>
  ({id, x, y, sheet: 1, board: 'board', turn: 0, mirrored: false, ...more});

describe('pieces held where somebody put them', () => {
  const parts = [plate('wing', 0.6, 0.15), plate('body', 0.5, 0.05, {count: 3}), plate('tail', 0.2, 0.08)];

  it('stay there, and the rest is placed around them', () => {
    for (const cuts of ['straight', 'free'] as const) {
      const what = job(parts, [board(0.7, 0.5)], {gap: 0.002, cuts, held: [held('wing', 0.05, 0.2), held('tail', 0.4, 0.41)]});
      const found = foundIn(200, what);
      expectSound(found, what);
      expect(found.problems).to.deep.equal([]);
      expect(found.sheets).to.have.lengthOf(1);
      expect(found.sheets[0]?.held).to.equal(1);
      const pieces = found.sheets[0]?.cutouts.flatMap((cutout) => cutout.pieces) ?? [];
      expect(pieces.find(({id}) => id === 'wing')).to.deep.include({x: 0.05, y: 0.2, turn: 0});
      expect(pieces.find(({id}) => id === 'tail')).to.deep.include({x: 0.4, y: 0.41, turn: 0});
    }
  });

  it('take up a sheet of their own where they lie on several', () => {
    const what = job(parts, [board(0.7, 0.5, {count: 2})], {held: [held('wing', 0, 0), held('body', 0.1, 0.1, {sheet: 4}), held('body', 0, 0.3, {sheet: 4, turn: 90})]});
    const found = foundIn(100, what);
    expect(found.problems.map(({code}) => code)).to.deep.equal(['held-off-board']);
    expect(found.sheets.map((sheet) => sheet.held)).to.deep.equal([1, 4]);
    expectSound(found, what);
  });

  it('stay wherever they lay in another layout, whichever of them they are', () => {
    const kit = [plate('wing', 0.6, 0.15), plate('body', 0.5, 0.05, {count: 3}), plate('tail', 0.2, 0.08, {count: 2}), part('l', lShape, {count: 2})];
    fc.assert(fc.property(fc.constantFrom<Job['cuts']>('straight', 'free'), fc.array(fc.boolean(), {minLength: 8, maxLength: 8}), fc.integer({min: 1, max: 80}), (cuts, which, steps) => {
      const first = foundIn(30, job(kit, [board(0.7, 0.5)], {gap: 0.002, cuts}));
      const pieces = first.sheets.flatMap(({cutouts}) => cutouts.flatMap((cutout) => cutout.pieces));
      const some = pieces.filter((_, i) => which[i]);
      const what = job(kit, [board(0.7, 0.5)], {
        gap: 0.002, cuts, held: some.map(({id, x, y, turn, mirrored, sheet}) => held(id, x, y, {turn, mirrored, sheet})),
      });
      const found = foundIn(steps, what);
      expectSound(found, what);
      expect(found.unplaced).to.deep.equal([]);
      const letGo = found.problems.map(({code}) => code);
      // nested pieces may be parted by a slanting cut only
      expect(letGo.every((code) => code === 'held-not-straight')).to.equal(true);
      const lie = found.sheets.flatMap((sheet) => sheet.cutouts.flatMap((cutout) => cutout.pieces.map(({id, x, y}) => `${sheet.held} ${id} ${x.toFixed(6)} ${y.toFixed(6)}`)));
      const kept = some.filter(({id, x, y, sheet}) => lie.includes(`${sheet} ${id} ${x.toFixed(6)} ${y.toFixed(6)}`));
      expect(kept.length).to.be.at.least(some.length - letGo.length);
    }), {numRuns: 60});
  });

  it('do not send a long piece to another sheet because the largest offcut beside them is a short one', () => {
    // beside the tailplane the board is widest, but the wing goes only below it or above it
    const kit = [plate('wing', 0.62, 0.115), plate('body', 0.54, 0.032, {count: 2}), plate('tail', 0.23, 0.074), plate('fin', 0.066, 0.058, {count: 2})];
    for (const cuts of ['straight', 'free'] as const) {
      for (const [x, y] of [[0.001, 0.117], [0, 0.117], [0.3, 0.2], [0.46, 0.3]] as const) {
        const what = job(kit, [board(0.7, 0.5)], {gap: 0.001, cuts, held: [held('tail', x, y)]});
        const found = foundIn(100, what);
        expectSound(found, what);
        expect(found.problems).to.deep.equal([]);
        expect(found.sheets, `${cuts} ${String(x)} ${String(y)}`).to.have.lengthOf(1);
      }
    }
  });

  it('leave as large a piece over as without them where they lie as they would anyway', () => {
    const kit = [plate('wing', 0.62, 0.115, {mayTurn: false}), plate('body', 0.54, 0.032, {count: 2}), plate('tail', 0.23, 0.074), plate('fin', 0.066, 0.058, {count: 2})];
    for (const cuts of ['straight', 'free'] as const) {
      const what = job(kit, [board(0.7, 0.5)], {gap: 0.001, cuts, held: [held('tail', 0.626, 0, {turn: 90})]});
      const found = foundIn(1000, what);
      expectSound(found, what);
      const pieces = found.sheets[0]?.cutouts.flatMap((cutout) => cutout.pieces) ?? [];
      expect(pieces.find(({id}) => id === 'tail')).to.deep.include({x: 0.626, y: 0, turn: 90});
      const {length = 0, width = 0} = found.sheets[0]?.leftover ?? {};
      expect(length * width, cuts).to.be.above(0.198);
    }
  });

  it('may all be held', () => {
    const what = job([plate('wing', 0.6, 0.15)], [board(0.7, 0.5)], {held: [held('wing', 0.02, 0.03)]});
    const found = foundIn(5, what);
    expectSound(found, what);
    expect(found.sheets).to.have.lengthOf(1);
    expect(found.fewest).to.equal(true);
  });

  it('let any outline be cut round them that no straight cut could part', () => {
    const vanes = [plate('vane', 0.3, 0.2, {count: 4}), plate('hub', 0.1, 0.1), plate('card', 0.09, 0.04)];
    const pinwheel = [held('vane', 0, 0), held('vane', 0.3, 0, {turn: 90}), held('vane', 0.2, 0.3), held('vane', 0, 0.2, {turn: 90})];
    const free: Job = job(vanes, [board(0.5, 0.5)], {cuts: 'free', held: pinwheel});
    const found = foundIn(100, free);
    expectSound(found, free);
    expect(found.sheets[0]?.cutouts).to.have.length.at.least(5);
    const straight = foundIn(100, {...free, cuts: 'straight'});
    expect(straight.problems.map(({code}) => code)).to.deep.equal(['held-not-straight']);
    expectSound(straight, {...free, cuts: 'straight'});
  });

  it('are let go with a reason where they cannot lie', () => {
    const problems = (...pieces: HeldPiece[]): string[] =>
      foundIn(20, job([...parts, part('l', lShape, {mayTurn: false})], [board(0.7, 0.5)], {gap: 0.002, held: pieces})).problems.map(({code}) => code);
    expect(problems(held('ghost', 0, 0))).to.deep.equal(['held-unknown']);
    expect(problems(held('wing', 0, 0, {board: 'none'}))).to.deep.equal(['held-unknown']);
    expect(problems(held('wing', 0.2, 0))).to.deep.equal(['held-off-board']);
    expect(problems(held('wing', NaN, 0))).to.deep.equal(['held-off-board']);
    expect(problems(held('l', 0, 0, {turn: 90}))).to.deep.equal(['held-cannot-lie']);
    expect(problems(held('wing', 0, 0, {mirrored: true}))).to.deep.equal(['held-cannot-lie']);
    expect(problems(held('wing', 0, 0), held('wing', 0, 0.3))).to.deep.equal(['held-cannot-lie']);
    expect(problems(held('wing', 0, 0), held('tail', 0, 0.151))).to.deep.equal(['held-too-near']);
    expect(problems(held('wing', 0, 0), held('tail', 0, 0.152))).to.deep.equal([]);
  });
});
