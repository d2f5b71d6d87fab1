import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  foldFromProp, foldSectionOverStack, sectionProppedBy, stackForFold, type PropWhere, type Section,
} from '../../../../src/calc/geometry/fold/index.js';
import {signedArea} from '../../../../src/calc/geometry/polygon/index.js';
import {anyFace, between, codesOf, deg, mm, numbersIn, problemsOf, turnedPanels, valueOf} from './bench.js';

const two: Section = {panels: [40 * mm, 30 * mm, 50 * mm], propped: 'rear', thickness: 5 * mm, face: 'closing'};
const wheres: readonly PropWhere[] = ['edge', 'inset', 'bench', 'plumb'];

describe('a board with several creases over one stack', () => {
  it('shares the fold equally and rests its edge as high as the stack', () => {
    const {folds, total, edgeRise} = valueOf(foldSectionOverStack(two, {height: 12 * mm, where: 'edge'}));
    expect(folds).to.have.length(2);
    expect(folds[0]).to.be.closeTo(total / 2, 1e-15);
    expect(30 * Math.sin(total / 2) + 50 * Math.sin(total)).to.be.closeTo(12, 1e-12);
    expect(edgeRise).to.be.closeTo(12 * mm, 1e-15);
  });

  it('shares it as it is told', () => {
    const {folds: [first = 0, second = 0]} = valueOf(foldSectionOverStack({...two, shares: [1, 3]}, {height: 12 * mm, where: 'edge'}));
    expect(second).to.be.closeTo(3 * first, 1e-14);
    expect(30 * Math.sin(first) + 50 * Math.sin(first + second)).to.be.closeTo(12, 1e-12);
  });

  it('gives to the other creases what a shut groove cannot take', () => {
    const stop = 2 * Math.atan(0.3 / 10);
    const rests = valueOf(foldSectionOverStack({...two, grooves: [0.3 * mm, undefined]}, {height: 12 * mm, where: 'edge'}));
    expect(rests.folds[0]).to.be.closeTo(stop, 1e-15);
    expect(rests.folds[1]).to.be.above(2 * stop);
    expect(30 * Math.sin(stop) + 50 * Math.sin(rests.total)).to.be.closeTo(12, 1e-12);
    expect(rests.stoppedByGroove).to.equal(false);
  });

  it('rises stiff about its flat edge with all grooves shut', () => {
    const rests = valueOf(foldSectionOverStack({...two, grooves: [0.3 * mm, 0.2 * mm]}, {height: 12 * mm, where: 'edge'}));
    const [first = 0, second = 0] = rests.folds, {tilt} = rests;
    expect(first + second).to.be.closeTo(2 * Math.atan(0.3 / 10) + 2 * Math.atan(0.2 / 10), 1e-15);
    expect(rests.stoppedByGroove).to.equal(true);
    expect(40 * Math.sin(tilt) + 30 * Math.sin(tilt + first) + 50 * Math.sin(tilt + first + second)).to.be.closeTo(12, 1e-12);
    expect(rests.boards[0]?.[1]?.y).to.be.closeTo(40 * mm * Math.sin(tilt), 1e-15);
  });

  it('touches whichever panel stands over the stack', () => {
    const over = (inset: number) => valueOf(foldSectionOverStack(two, {height: 5 * mm, where: 'inset', inset}));
    expect(over(49 * mm)).to.include({panel: 2, contactKind: 'stack-edge-under-panel'});
    expect(over(51 * mm)).to.include({panel: 1, contactKind: 'stack-edge-under-panel'});
    expect(over(51 * mm).alongPanel).to.be.closeTo(29 * mm, 1e-15);
    expect(over(51 * mm).total / 2).to.be.closeTo(Math.asin(5 / 29), 1e-14);
    expect(valueOf(foldSectionOverStack(two, {height: 5 * mm, where: 'bench', fromCrease: 20 * mm})).total / 2).to.be.closeTo(Math.atan(5 / 20), 1e-14);
  });

  it('is the same with front and rear changed over', () => {
    const front: Section = {...two, panels: [50 * mm, 30 * mm, 40 * mm], propped: 'front', shares: [2, 1]};
    const rear: Section = {...two, shares: [1, 2]};
    for (const where of wheres) {
      const prop = {height: 8 * mm, where, inset: 60 * mm, fromCrease: 50 * mm, width: 20 * mm};
      const a = valueOf(foldSectionOverStack(front, prop)), b = valueOf(foldSectionOverStack(rear, prop));
      expect([...a.folds].reverse()).to.deep.equal(b.folds);
      expect(a.panel).to.equal(2 - b.panel);
      expect(a.contact).to.deep.equal(b.contact);
      expect(a.boards).to.deep.equal(b.boards);
    }
  });

  it('is the fold of one panel with one crease', () => {
    for (const face of ['closing', 'opening'] as const) {
      for (const where of wheres) {
        const prop = {height: 9 * mm, where, inset: 15 * mm, fromCrease: 40 * mm, width: 20 * mm};
        const section: Section = {panels: [31 * mm, 80 * mm], propped: 'rear', thickness: 4 * mm, face};
        expect(valueOf(foldSectionOverStack(section, prop)).folds)
          .to.deep.equal([valueOf(foldFromProp({length: 80 * mm, thickness: 4 * mm, face}, prop)).angle]);
      }
    }
  });
});

const anySection: fc.Arbitrary<Section> = fc.record({
  panels: fc.array(between(20 * mm, 120 * mm), {minLength: 2, maxLength: 5}), propped: fc.constantFrom<Section['propped'][]>('rear', 'front'),
  thickness: between(2 * mm, 8 * mm), face: anyFace,
});

describe('the drawing of a board over a stack', () => {
  it('stands where turned outlines stand, ends of the panels cut off by the grooves', () => {
    fc.assert(fc.property(anySection, between(1 * mm, 9 * mm), (section, height) => {
      const rests = valueOf(foldSectionOverStack(section, {height, where: 'edge'}));
      const out = <T>(list: readonly T[]): readonly T[] => (section.propped === 'front' ? [...list].reverse() : list);
      const panels = out(section.panels);
      const turnedOnes = turnedPanels(panels, out(rests.folds), section.thickness, section.face);
      turnedOnes.forEach((outline, i) => {
        const board = rests.boards[i + 1] ?? [];
        for (const corner of section.face === 'closing' ? [0, 1] : [0, 1, 2, 3]) {
          expect(board[corner]?.x).to.be.closeTo(outline[corner]?.x ?? NaN, 1e-12);
          expect(board[corner]?.y).to.be.closeTo(outline[corner]?.y ?? NaN, 1e-12);
        }
        expect(signedArea(board)).to.be.above(0);
        expect(signedArea(board)).to.be.at.most(signedArea(outline) * (1 + 1e-12));
      });
      expect(rests.boards[0]?.[0]).to.deep.include({x: -(panels[0] ?? NaN)});
    }));
  });

  it('draws the skin left whole with its length kept, below a closing board and above an opening one', () => {
    for (const face of ['closing', 'opening'] as const) {
      const {skin} = valueOf(foldSectionOverStack({...two, face}, {height: 12 * mm, where: 'edge'}));
      const lengths = skin.slice(1).map((to, i) => Math.hypot(to.x - (skin[i]?.x ?? NaN), to.y - (skin[i]?.y ?? NaN)) / mm);
      [40, 30, 50].forEach((length, i) => { expect(lengths[i]).to.be.closeTo(length, 1e-12); });
      expect(skin[0]?.y).to.equal(face === 'closing' ? 0 : 5 * mm);
    }
  });

  it('leaves no gap where a groove just closes, and a wedge where it is wider', () => {
    const {boards: [flat, next]} = valueOf(foldSectionOverStack(two, {height: 12 * mm, where: 'edge'}));
    expect(flat?.[2]?.x).to.be.closeTo(next?.[3]?.x ?? NaN, 1e-15);
    expect(flat?.[2]?.y).to.be.closeTo(next?.[3]?.y ?? NaN, 1e-15);
    const {boards: [wide]} = valueOf(foldSectionOverStack({...two, grooves: [4 * mm, 4 * mm]}, {height: 12 * mm, where: 'edge'}));
    expect(wide?.[2]?.x).to.be.closeTo(-2 * mm, 1e-15);
  });
});

describe('the stack that a whole fold needs', () => {
  it('is there and back the same, on whichever panel and wherever the stack stands', () => {
    fc.assert(fc.property(anySection, between(0.5 * deg, 25 * deg), fc.constantFrom(...wheres), between(0.1, 0.6), (section, total, where, share) => {
      const reach = section.panels.slice(section.propped === 'rear' ? 1 : 0).slice(0, section.panels.length - 1).reduce((sum, each) => sum + each, 0);
      const place = {where, inset: share * reach, fromCrease: share * reach, width: share * reach / 3};
      const {height} = valueOf(stackForFold(section, total, place));
      const fold = valueOf(foldSectionOverStack(section, {...place, height}));
      // an edge of the stack just in a cut does not tell the fold, but the height is the same again
      if (section.face === 'closing') expect(fold.total).to.be.closeTo(total, 1e-9);
      expect(valueOf(stackForFold(section, fold.total, place)).height).to.be.closeTo(height, 1e-9);
    }), {numRuns: 300});
  });

  it('holds the corner of a cut where the stack’s edge stands in the cut', () => {
    const opening: Section = {...two, face: 'opening'}, total = 40 * deg;
    const [inner = [], outer = []] = turnedPanels(two.panels, [total / 2, total / 2], two.thickness, 'opening');
    const before = inner[1] ?? {x: NaN, y: NaN}, corner = outer[0] ?? {x: NaN, y: NaN}, edge = outer[1] ?? {x: NaN, y: NaN};
    expect(before.x).to.be.below(corner.x - 1 * mm);
    const inCut = (before.x + corner.x) / 2;
    for (const place of [{where: 'bench', fromCrease: inCut}, {where: 'plumb', width: edge.x - inCut}] as const) {
      expect(valueOf(stackForFold(opening, total, place)).height).to.be.closeTo(corner.y, 1e-15);
    }
    const rests = valueOf(foldSectionOverStack(opening, {where: 'bench', fromCrease: inCut, height: corner.y}));
    expect(rests).to.include({contactKind: 'panel-root-on-stack-top', panel: 2});
    expect(rests.total).to.be.closeTo(total, 1e-12);
  });

  it('is refused when the grooves do not let the board fold so far, and off the board', () => {
    expect(codesOf(stackForFold({...two, grooves: [0.3 * mm, 0.3 * mm]}, 20 * deg, {where: 'edge'}))).to.deep.equal(['fold-past-groove']);
    expect(codesOf(stackForFold(two, 20 * deg, {where: 'bench', fromCrease: 80 * mm}))).to.deep.equal(['prop-beyond-edge']);
  });
});

describe('a section that cannot be', () => {
  const prop = {height: 10 * mm, where: 'edge'} as const;

  it('is refused without a crease, with shares that do not fit, or with lengths that cannot be', () => {
    expect(codesOf(foldSectionOverStack({...two, panels: [100 * mm]}, prop))).to.deep.equal(['crease-missing']);
    for (const shares of [[1], [1, -1], [0, 0], [1, NaN], [1, 1, 1]]) {
      expect(codesOf(foldSectionOverStack({...two, shares}, prop))).to.deep.equal(['shares-unusable']);
    }
    const [problem] = problemsOf(foldSectionOverStack({...two, panels: [40 * mm, -1, 50 * mm]}, prop));
    expect(problem).to.deep.equal({code: 'length-not-positive', args: {name: 'panel 2'}});
    expect(codesOf(foldSectionOverStack({...two, grooves: [0, 1 * mm]}, prop))).to.deep.equal(['length-not-positive']);
  });

  it('says why a stack on the bench does not carry it', () => {
    const at = (height: number, fromCrease: number) => codesOf(foldSectionOverStack(two, {height, where: 'bench', fromCrease}));
    expect(at(10 * mm, 90 * mm)).to.deep.equal(['prop-beyond-edge']);
    expect(at(100 * mm, 60 * mm)).to.deep.equal(['prop-too-tall']);
    expect(at(10 * mm, 0)).to.deep.equal(['prop-past-crease']);
  });

  it('never gives anything but finite numbers, and never throws, whatever the numbers', () => {
    const wild = fc.oneof(fc.double(), between(-0.1, 0.5), fc.constantFrom(0, 1e-12, 1e6, Number.MAX_VALUE));
    const section: fc.Arbitrary<Section> = fc.record({
      panels: fc.array(fc.oneof({arbitrary: between(0.01, 0.2), weight: 6}, {arbitrary: wild, weight: 1}), {maxLength: 4}),
      propped: fc.constantFrom<Section['propped'][]>('rear', 'front'), thickness: fc.oneof(between(1e-3, 1e-2), wild), face: anyFace,
      grooves: fc.array(fc.oneof(between(1e-4, 1e-2), fc.constant(undefined)), {maxLength: 4}),
    });
    const where = fc.constantFrom(...wheres);
    fc.assert(fc.property(section, where, fc.record({height: wild, inset: wild, fromCrease: wild, width: wild}), (board, at, numbers) => {
      const stack = {where: at, ...numbers};
      const outcomes = [
        foldSectionOverStack(board, stack), stackForFold(board, numbers.inset, stack),
        sectionProppedBy(board, {height: numbers.height, nearFace: numbers.fromCrease, width: numbers.width}),
      ];
      for (const outcome of outcomes) {
        if (outcome.ok) for (const number of numbersIn(outcome.value)) expect(number).to.satisfy(Number.isFinite);
        else expect(outcome.problems).to.not.have.length(0);
      }
    }), {numRuns: 1000});
  });
});
