import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import {bounds, isSimple, pointInPolygon, signedArea} from '../../../src/calc/geometry/polygon/index.js';
import {partsOf, type Part, type PartId} from '../../../src/calc/parts/parts.js';

const cut = ({wing, body, tail, arrangement, board}: GliderDesign) => partsOf(wing, body, tail, arrangement, board);
const partOf = (design: GliderDesign, id: PartId): Part => {
  const part = cut(design).parts.find((p) => p.id === id);
  if (!part) throw new Error(`no ${id}`);
  return part;
};
const mm = 1e-3;

describe('the parts to cut', () => {
  it('are the wing in one piece, the layers of the body, the tailplane and the fins', () => {
    const {parts, problems} = cut(defaultDesign);
    expect(problems).to.deep.equal([]);
    expect(parts.map(({id, count}) => [id, count])).to.deep.equal([['wing', 1], ['body', 2], ['tailplane', 1], ['fin', 2]]);
  });

  it('measure what the design says', () => {
    const {length, width} = bounds(partOf(defaultDesign, 'wing').outline);
    expect(length).to.be.closeTo(660 * mm, 1e-12);
    expect(width).to.be.closeTo(120 * mm, 1e-12);
    expect(partOf(defaultDesign, 'wing').outline).to.have.length(4);
    expect(partOf(defaultDesign, 'body').area).to.be.closeTo(620 * 32 * mm * mm, 1e-12);
    const tapered = withValues(defaultDesign, {'tail.fins.tipChord': 40 * mm, 'wing.tipChord': 80 * mm, 'wing.sweep': 25 * mm});
    expect(partOf(tapered, 'fin').area).to.be.closeTo(70 * 55 * mm * mm, 1e-12);
    expect(partOf(tapered, 'wing').area).to.be.closeTo(660 * 100 * mm * mm, 1e-12);
    expect(bounds(partOf(tapered, 'wing').outline).width).to.be.closeTo(120 * mm, 1e-12);
  });

  it('lay the front edge of the wing forward and its right half to the right', () => {
    const {outline} = partOf(withValues(defaultDesign, {'wing.sweep': 30 * mm}), 'wing');
    expect(outline).to.deep.include({x: 0, y: 0});
    expect(outline.some(({x, y}) => x === 0.33 && Math.abs(y + 30 * mm) < 1e-12)).to.equal(true);
  });

  it('groove a closing crease on the underside and a closing joint on the top', () => {
    const faces = (design: GliderDesign) => {
      const {lines} = partOf(design, 'wing');
      return [lines.find(({kind}) => kind === 'crease')?.face, lines.find(({kind}) => kind === 'joint')?.face];
    };
    expect(faces(defaultDesign)).to.deep.equal(['B', 'A']);
    expect(faces(withValues(defaultDesign, {'wing.foldFace': 'opening', 'wing.jointFace': 'opening'}))).to.deep.equal(['A', 'B']);
  });

  it('may be turned over only where no face carries a groove', () => {
    expect(partOf(defaultDesign, 'wing').mayMirror).to.equal(false);
    expect(partOf(withValues(defaultDesign, {'wing.creases': [], 'wing.joints': []}), 'wing').mayMirror).to.equal(true);
    expect(partOf(defaultDesign, 'fin').mayMirror).to.equal(true);
  });

  it('draw one joint in the middle for a V and two for tip joints', () => {
    const joints = (at: number) => partOf(withValues(defaultDesign, {'wing.joints': [{angle: 0.1, at}]}), 'wing')
      .lines.filter(({kind}) => kind === 'joint').map(({from}) => from.x);
    expect(joints(0)).to.deep.equal([0]);
    expect(joints(0.2)).to.deep.equal([-0.2, 0.2]);
  });

  it('run a crease on a swept wing behind each front edge', () => {
    const straight = partOf(defaultDesign, 'wing').lines.filter(({kind}) => kind === 'crease');
    expect(straight).to.have.length(1);
    const swept = partOf(withValues(defaultDesign, {'wing.sweep': 40 * mm}), 'wing').lines.filter(({kind}) => kind === 'crease');
    expect(swept.map(({from, to}) => [from.x, from.y, to.x, to.y].map((v) => Math.round(v * 1e6) / 1e3)))
      .to.deep.equal([[-330, -88, 0, -48], [0, -48, 330, -88]]);
  });

  it('raise the lower edge of a tapered body behind the wing, or from where its builder says', () => {
    const lower = (from: number | undefined) => partOf(withValues(defaultDesign, {'body.tailHeight': 12 * mm, 'body.taperFrom': from}), 'body')
      .outline.slice(0, 3).map(({x, y}) => [Math.round(x * 1e6) / 1e3, Math.round(y * 1e6) / 1e3]);
    expect(lower(undefined)).to.deep.equal([[0, 0], [320, 0], [620, 20]]);
    expect(lower(0.4)).to.deep.equal([[0, 0], [400, 0], [620, 20]]);
    expect(lower(0)).to.deep.equal([[0, 0], [620, 20], [620, 32]]);
  });

  it('name the part that clashes and keep the others', () => {
    const {parts, problems} = cut(withValues(defaultDesign, {'wing.creases': [{at: 0.2}]}));
    expect(parts.map(({id}) => id)).to.deep.equal(['body', 'tailplane', 'fin']);
    expect(problems.map(({code, path}) => [code, path])).to.deep.equal([['crease-outside-chord', 'wing.creases']]);
    const bodiless = cut(withValues(defaultDesign, {'body.layers': 0}));
    expect(bodiless.problems.map(({code}) => code)).to.deep.equal(['body-without-layers']);
    expect(cut(withValues(defaultDesign, {'tail.fins.count': 0})).parts.map(({id}) => id)).to.deep.equal(['wing', 'body', 'tailplane']);
  });

  it('are worked out again only where something they read has changed', () => {
    expect(cut(withValues(defaultDesign, {'ballast.at': 0.02}))).to.equal(cut(defaultDesign));
    expect(partOf(withValues(defaultDesign, {'tail.span': 0.3}), 'wing')).to.equal(partOf(defaultDesign, 'wing'));
  });

  it('have simple outlines, counter-clockwise, with every line on the board, whatever the dimensions', () => {
    const length = (least: number, most: number) => fc.double({min: least, max: most, noNaN: true});
    fc.assert(fc.property(
      length(0.3, 1.2), length(0.06, 0.2), length(0.04, 0.2), length(-0.04, 0.15), length(0.01, 0.03), length(0.01, 0.03), length(0.02, 0.3),
      (span, chord, tipChord, sweep, crease, tailHeight, taperFrom) => {
        const {parts} = cut(withValues(defaultDesign, {
          'wing.span': span, 'wing.chord': chord, 'wing.tipChord': tipChord, 'wing.sweep': sweep, 'wing.creases': [{at: crease}],
          'wing.joints': [{angle: 0.2, at: span / 3}], 'body.tailHeight': tailHeight, 'body.taperFrom': taperFrom, 'tail.sweep': sweep / 2,
          'tail.tipChord': tipChord, 'tail.fins.tipChord': tipChord,
        }));
        expect(parts).to.have.length(4);
        for (const {outline, lines, area} of parts) {
          expect(isSimple(outline)).to.equal(true);
          expect(signedArea(outline)).to.be.closeTo(area, 1e-12);
          expect(area).to.be.greaterThan(0);
          for (const {from, to} of lines) {
            expect(pointInPolygon(from, outline)).not.to.equal('outside');
            expect(pointInPolygon(to, outline)).not.to.equal('outside');
          }
        }
      }), {numRuns: 60});
  });
});
