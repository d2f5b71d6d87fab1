import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {cutSheets, glidersFromBoard} from '../../../src/calc/sheet/from-parts.js';
import {anyDesign} from './any-design.js';
import {cutOf, expectSoundCut} from './cut-check.js';

const mm = 1e-3;

describe('sheets for a glider', () => {
  it('hold every part of it', () => {
    const cut = cutOf(defaultDesign);
    expectSoundCut(cut);
    expect([cut.sheets, cut.least, cut.leftOut.length]).to.deep.equal([1, 1, 0]);
    expect(cut.plans[0]?.pieces.map(({number, part}) => `${String(number)} ${part.id}`))
      .to.deep.equal(['1 wing', '2 body', '3 body', '4 tailplane', '5 fin', '6 fin']);
    expect(cut.usedArea).to.be.closeTo((660 * 120 + 2 * 620 * 32 + 240 * 78 + 2 * 70 * 70) * mm * mm, 1e-12);
  });

  it('take a wing as long as the sheet, but not one a hair longer, and not with a margin', () => {
    expect(cutOf(withValues(defaultDesign, {'wing.span': 0.7})).leftOut).to.deep.equal([]);
    const long = cutOf(withValues(defaultDesign, {'wing.span': 0.70001}));
    expectSoundCut(long);
    expect(long.leftOut.map(({id, count, problem}) => [id, count, problem.code])).to.deep.equal([['wing', 1, 'part-too-big']]);
    expect(long.plans.flatMap(({pieces}) => pieces.map(({part}) => part.id))).to.deep.equal(['body', 'body', 'tailplane', 'fin', 'fin']);
    expect(cutOf(withValues(defaultDesign, {'wing.span': 0.7, 'board.margin': 1 * mm})).leftOut.map(({id}) => id)).to.deep.equal(['wing']);
  });

  it('are the same object while nothing that is cut changes', () => {
    const refolded = withValues(defaultDesign, {'wing.stack': 12 * mm, 'ballast.at': 0.02, 'board.sheetMass': 0.15});
    expect(cutSheets(refolded, 1) === cutSheets(defaultDesign, 1)).to.equal(true);
    const recreased = withValues(defaultDesign, {'wing.creases': [{at: 40 * mm}]});
    expect(cutSheets(recreased, 1) === cutSheets(defaultDesign, 1)).to.equal(false);
  });

  it('are refused with the clash that leaves a part without an outline, and with a margin as wide as the sheet', () => {
    const refusal = (values: Parameters<typeof withValues>[1]) => {
      const cut = cutSheets(withValues(defaultDesign, values), 1);
      return cut.ok ? [] : cut.problems.map(({code, path}) => [code, path]);
    };
    expect(refusal({'wing.creases': [{at: 0.2}]})).to.deep.equal([['crease-outside-chord', 'wing.creases']]);
    expect(refusal({'board.margin': 0.3})).to.deep.equal([['margin-too-wide', 'board.margin']]);
  });

  it('carry each line along with its piece, and leave it on its face', () => {
    for (const board of [{'board.length': 0.7, 'board.width': 0.5}, {'board.length': 0.3, 'board.width': 0.7}]) {
      const cut = cutOf(withValues(defaultDesign, {...board, 'wing.sweep': 20 * mm, 'body.tailHeight': 15 * mm}));
      for (const {part, placed, lines} of cut.plans.flatMap(({pieces}) => pieces)) {
        expect(lines.map(({face, kind}) => face + kind)).to.deep.equal(part.lines.map(({face, kind}) => face + kind));
        // a line lies at the same distances from the corners of its piece as on the part
        const corners = placed.mirrored ? [...placed.outline].reverse() : placed.outline;
        lines.forEach(({from, to}, i) => {
          part.outline.forEach((corner, k) => {
            const there = corners.at(placed.mirrored ? k - part.outline.length : k) ?? {x: NaN, y: NaN};
            for (const [end, own] of [[from, part.lines[i]?.from], [to, part.lines[i]?.to]] as const) {
              expect(Math.hypot(end.x - there.x, end.y - there.y)).to.be.closeTo(Math.hypot((own?.x ?? NaN) - corner.x, (own?.y ?? NaN) - corner.y), 1e-9);
            }
          });
        });
      }
    }
  });

  it('never overlap, leave the board, mirror a creased wing or lose a piece, whatever the glider and the board', () => {
    fc.assert(fc.property(anyDesign, fc.constantFrom(1, 1, 2, 3, 5), (design, kits) => {
      const cut = cutSheets(design, kits);
      if (!cut.ok) { expect(cut.problems.map(({code}) => code)).to.deep.equal(['margin-too-wide']); return; }
      expectSoundCut(cut.value);
      expect(cut.value.sheets).to.be.at.least(cut.value.least);
      expect(cut.value.plans.flatMap(({pieces}) => pieces).some(({part, placed}) => part.id === 'wing' && placed.mirrored)).to.equal(false);
    }), {numRuns: 80});
  });
});

describe('several gliders', () => {
  it('are cut from sheets that are all alike where that takes no more of them', () => {
    const cut = cutOf(defaultDesign, 10);
    expectSoundCut(cut);
    expect(cut.alike).to.deep.equal({perSheet: 2, sheets: 5});
    expect(cut.plans.map(({first, alike}) => [first, alike])).to.deep.equal([[1, 5]]);
  });

  it('are placed together where that saves a sheet, and say what sheets alike would take', () => {
    const cut = cutOf(defaultDesign, 40);
    expectSoundCut(cut);
    expect(cut.alike).to.deep.equal({perSheet: 2, sheets: 20});
    expect(cut.sheets).to.be.below(20);
  });

  it('leave the same piece over from each sheet cut alike', () => {
    const roomy = cutOf(withValues(defaultDesign, {'board.length': 0.7, 'board.width': 0.3}), 3);
    expectSoundCut(roomy);
    expect(roomy.plans.map(({alike}) => alike)).to.deep.equal([3]);
    expect(roomy.plans[0]?.leftover).to.equal(roomy.leftover);
    expect(roomy.leftover?.sheet).to.equal(2);
  });

  it('count the gliders that a board gives', () => {
    const from = (sheets: number, values = {}) => {
      const found = glidersFromBoard(withValues(defaultDesign, values), sheets);
      if (!found.ok) throw new Error('refused');
      return found.value;
    };
    expect(from(1).gliders).to.equal(2);
    expect(from(1).cut.kits).to.equal(2);
    expect(from(3).gliders).to.be.at.least(6);
    expect(from(40).gliders).to.equal(40);
    expect(from(1, {'board.width': 0.15}).gliders).to.equal(0);
    expect(from(1, {'board.width': 0.15}).cut.kits).to.equal(1);
    expect(from(5, {'wing.span': 0.71}).gliders).to.equal(0);
    expect(from(5, {'wing.span': 0.71}).cut.leftOut.map(({id}) => id)).to.deep.equal(['wing']);
  });

  it('counted from a board do fit it, and no more than its area allows', () => {
    fc.assert(fc.property(anyDesign, fc.constantFrom(1, 2, 4), (design, sheets) => {
      const found = glidersFromBoard(design, sheets);
      if (!found.ok) return;
      const {gliders, cut} = found.value;
      expectSoundCut(cut);
      if (gliders === 0) return;
      expect(cut.kits).to.equal(gliders);
      expect(cut.sheets).to.be.at.most(sheets);
      expect(cut.leftOut).to.deep.equal([]);
      expect(cut.usedArea).to.be.at.most(sheets * design.board.length * design.board.width);
    }), {numRuns: 30});
  });
});
