import {expect} from '@open-wc/testing';
import {wingDihedral} from '../../../src/calc/bench/dihedral.js';
import {wingFold} from '../../../src/calc/bench/wing-fold.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';
import {threeViewPicture} from '../../../src/components/drawing/three-view.js';
import {layOutThreeView} from '../../../src/drawing/figures/three-view-layout.js';
import type {ViewName} from '../../../src/drawing/figures/three-view-layout.js';
import {drawThreeView} from '../../../src/drawing/figures/three-view.js';
import type {ThreeViewFigures, ThreeViewPicture} from '../../../src/drawing/figures/three-view.js';
import {wingSection} from '../../../src/drawing/figures/wing-section.js';
import {drawnAt, expectReadable} from './lettering.js';

const deg = Math.PI / 180;
type Values = Partial<Record<DimensionPath, DimensionValue>>;

const figuresOf = ({wing, tail, arrangement, body}: GliderDesign, unit: (m: number) => string): ThreeViewFigures => ({
  span: unit(wing.span), chord: unit(wing.chord), tailSpan: unit(tail.span), tailChord: unit(tail.chord),
  ...(wing.tipChord !== undefined && {tipChord: unit(wing.tipChord)}), ...(wing.sweep !== 0 && {sweep: unit(wing.sweep)}),
  creases: wing.creases.map(({at}) => unit(at)), joints: wing.joints.map(({at}) => unit(at)),
  wingAt: unit(arrangement.wingAt), tailAt: unit(arrangement.tailAt), bodyLength: unit(body.length), bodyHeight: unit(body.height),
  ...(tail.fins.count > 0 && {finHeight: unit(tail.fins.height)}),
  flown: unit(wing.span), rise: unit(0.03), angles: wing.joints.map(({angle}) => `${(angle / deg).toFixed(1)}°`), camber: 'camber 3.3 %',
});

const millimetres = (m: number): string => String(Math.round(m * 1000));

function picture(values: Values, show: readonly ViewName[] = ['side', 'plan', 'front'], unit = millimetres): ThreeViewPicture {
  const design = withValues(defaultDesign, values);
  const dihedral = wingDihedral(design.wing, design.board);
  const fold = wingFold(design.wing, design.board);
  if (!dihedral.ok || !fold.ok) throw new Error('no wing');
  return threeViewPicture({design, dihedral: dihedral.value, folds: fold.value.folds, balance: undefined}, show, figuresOf(design, unit), {
    side: 'From the left', plan: 'From above, the wing flat as cut', front: 'From the front, as it flies', section: 'Section in the middle of the wing, enlarged',
    notes: ['Lengths in mm.', 'Double line: groove on top.', 'Dashed line: groove underneath.'], title: 'Halfpenny', rows: [['Span, flat', '660 mm'], ['Length', '620 mm'], ['Wing area', '7.9 dm²']],
  });
}

const swept: Values = {
  'wing.tipChord': 0.08, 'wing.sweep': 0.05, 'wing.joints': [{angle: 5 * deg, at: 0.1}, {angle: 9 * deg, at: 0.22}],
  'body.tailHeight': 0.015, 'tail.fins.count': 1, 'tail.sweep': 0.02, 'tail.tipChord': 0.05, 'tail.fins.tipChord': 0.04,
};

describe('the drawing in three views', () => {
  const gliders: Readonly<Record<string, Values>> = {'as it comes': {}, 'swept and tapered': swept, 'a plain V': {'wing.joints': [{angle: 6 * deg, at: 0}]}};
  for (const [name, values] of Object.entries(gliders)) {
    for (const width of [320, 520, 800, 1150]) {
      it(`keeps its lettering apart and in sight: ${name}, ${String(width)} px wide`, async () => {
        const drawn = picture(values);
        const svg = await drawnAt(width, (pen, widthPx) => drawThreeView(pen, widthPx, drawn));
        expectReadable(svg);
        expect(svg.outerHTML).to.not.match(/NaN|Infinity|undefined/);
      });
    }
  }

  it('keeps apart what inches write longer', async () => {
    const inches = (m: number): string => `${String(Math.floor(m / 0.0254))} 15/16`;
    for (const width of [320, 1000]) {
      for (const values of [{}, swept]) {
        const drawn = picture(values, ['side', 'plan', 'front'], inches);
        expectReadable(await drawnAt(width, (pen, widthPx) => drawThreeView(pen, widthPx, drawn)));
      }
    }
  });

  for (const show of [['plan'], ['side'], ['front'], ['side', 'front'], ['plan', 'front']] as const satisfies readonly (readonly ViewName[])[]) {
    it(`can be shown in part: ${show.join(' and ')}`, async () => {
      for (const width of [320, 1000]) {
        const drawn = picture({}, show);
        const svg = await drawnAt(width, (pen, widthPx) => drawThreeView(pen, widthPx, drawn));
        expectReadable(svg);
        const {origins} = layOutThreeView(drawn, width);
        expect(Object.keys(origins).sort()).to.deep.equal([...show].sort());
      }
    });
  }

  it('draws every view to one scale, side above plan, nose over nose', () => {
    for (const width of [320, 700, 1100]) {
      const {origins, view} = layOutThreeView(picture({}), width);
      expect(origins.side?.x).to.equal(origins.plan?.x);
      expect(view.box.width / view.mmPerPx).to.be.closeTo(width, 1e-6);
      if (width >= 760) expect(origins.front?.y).to.equal(origins.side?.y);
    }
  });

  it('shows the wing as the parts are cut, and each groove on its own face', () => {
    const {shapes: {plan}} = picture({});
    const across = (plan.wing ?? []).map(({y}) => y);
    expect(Math.max(...across) - Math.min(...across)).to.be.closeTo(660, 1e-9);
    expect(plan.lines.filter(({kind}) => kind === 'joint').every(({seen}) => seen)).to.equal(true);
    expect(plan.lines.filter(({kind}) => kind === 'crease').some(({seen}) => seen)).to.equal(false);
    const opening = picture({'wing.foldFace': 'opening', 'wing.jointFace': 'opening'}).shapes.plan.lines;
    expect(opening.filter(({kind}) => kind === 'joint').some(({seen}) => seen)).to.equal(false);
    expect(opening.filter(({kind}) => kind === 'crease').every(({seen}) => seen)).to.equal(true);
  });

  it('raises the tips by as much in the side view as in the front view', () => {
    const {shapes: {side, front}} = picture({});
    const top = Math.min(...side.wing.raised.flat().map(({y}) => y));
    expect(top).to.be.closeTo(-140 * Math.sin(12 * deg), 1e-9);
    const tip = Math.min(...front.wing.flat().map(({y}) => y));
    expect(tip).to.be.closeTo(top - 5 * Math.cos(12 * deg), 1e-9);
  });

  it('leaves out what a clash keeps from being cut', () => {
    const design = withValues(defaultDesign, {'body.tailHeight': 0.2});
    const drawn = threeViewPicture({design, dihedral: undefined, folds: [], balance: undefined}, ['side'], figuresOf(design, millimetres), {
      side: '', plan: '', front: '', section: '', notes: [], title: '', rows: []});
    expect(drawn.shapes.side.body).to.equal(undefined);
    expect(drawn.shapes.side.tail).to.not.equal(undefined);
  });
});

describe('the section of a wing', () => {
  const corners = (panels: readonly (readonly {readonly x: number; readonly y: number}[])[]) => panels.flat();

  it('lies on its two lower edges and arches between them', () => {
    for (const face of ['closing', 'opening'] as const) {
      const section = wingSection(120, [48], [8 * deg], 5, face);
      const lowest = Math.min(...corners(section).map(({y}) => y));
      expect(lowest).to.be.closeTo(0, 1e-9);
      expect(corners(section).filter(({y}) => Math.abs(y) < 1e-9)).to.have.length.at.least(2);
      expect(Math.max(...corners(section).map(({y}) => y))).to.be.above(8);
    }
  });

  it('has the camber of the folded skin: the corner of the upper face stands over the line between its ends', () => {
    const section = wingSection(120, [48], [8 * deg], 5, 'closing');
    const [first, last] = [section[0], section.at(-1)];
    // on its back on the bench, so the first two corners of each panel are those of the upper face
    const [front, crest, rear] = [first?.[0], first?.[1], last?.[1]];
    if (!front || !crest || !rear) throw new Error('no section');
    const chord = Math.hypot(rear.x - front.x, rear.y - front.y);
    const height = ((rear.x - front.x) * (crest.y - front.y) - (rear.y - front.y) * (crest.x - front.x)) / chord;
    expect(height / chord).to.be.closeTo(48 * 72 * Math.sin(8 * deg) / (48 ** 2 + 72 ** 2 + 2 * 48 * 72 * Math.cos(8 * deg)), 1e-9);
  });
});
