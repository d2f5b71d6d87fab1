import {expect} from '@open-wc/testing';
import {wingDihedral} from '../../../src/calc/bench/dihedral.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';
import {dihedralPicture} from '../../../src/components/dihedral-angle/sketches.js';
import {drawDihedral} from '../../../src/drawing/figures/dihedral.js';
import {layOutDihedral} from '../../../src/drawing/figures/dihedral-layout.js';
import type {DihedralPicture} from '../../../src/drawing/figures/dihedral-layout.js';
import {drawnAt, expectReadable} from './lettering.js';

const deg = Math.PI / 180;

function picture(values: Partial<Record<DimensionPath, DimensionValue>>, unit: (mm: number) => string = (mm) => `${String(Math.round(mm * 2) / 2)} mm`): DihedralPicture {
  const {wing, board} = withValues(defaultDesign, values);
  const found = wingDihedral(wing, board);
  if (!found.ok) throw new Error(found.problems.map(({code}) => code).join());
  const length = (m: number): string => unit(m * 1000);
  return dihedralPicture(found.value, wing, board.thickness, {
    middle: 'middle of the wing',
    joint: (joint, order) => ({
      title: `${String(order + 1)}. Joint ${length(joint.at)} from the middle`, angle: `${(joint.lean / deg).toFixed(1)}°`, panel: length(joint.panel),
      height: length(joint.block), at: length(joint.at), contact: length(joint.place.fromJoint),
    }),
    flown: {
      title: 'As it flies, from the front', span: length(found.value.spanAsFlown), rise: length(found.value.tipRise),
      equivalent: found.value.panels.length > 1 ? 'dashed: the plain V it acts like, 8.5°' : '',
    },
  });
}

const wings: Readonly<Record<string, Partial<Record<DimensionPath, DimensionValue>>>> = {
  'one tip joint': {},
  'a slight one': {'wing.joints': [{angle: 3 * deg, at: 0.2}]},
  'a steep one': {'wing.joints': [{angle: 70 * deg, at: 0.12}]},
  'two joints': {'wing.joints': [{angle: 5 * deg, at: 0.09}, {angle: 9 * deg, at: 0.22}]},
  'a V, one half flat': {'wing.joints': [{angle: 6 * deg, at: 0}]},
  'a V, both tips propped': {'wing.joints': [{angle: 6 * deg, at: 0}], 'wing.vPropped': 'both', 'wing.jointFace': 'opening', 'wing.jointPlace': 'inset', 'wing.blockInset': 0.05},
  'a block near the joint': {'wing.dihedralBy': 'place', 'wing.blocks': [{height: 0.006}]},
  'a block that is missed': {'wing.dihedralBy': 'block', 'wing.blocks': [{height: 0.05}], 'wing.jointPlace': 'bench', 'wing.blockFromJoint': 0.138},
};

describe('the figure of dihedral on the bench', () => {
  for (const [name, values] of Object.entries(wings)) {
    for (const width of [320, 560, 1000]) {
      it(`keeps its lettering apart and in sight: ${name}, ${String(width)} px wide`, async () => {
        const drawn = picture(values);
        const svg = await drawnAt(width, (pen, widthPx) => drawDihedral(pen, widthPx, drawn));
        expectReadable(svg);
        expect(svg.outerHTML).to.not.match(/NaN|Infinity|undefined/);
      });
    }
  }

  it('keeps apart what inches write longer', async () => {
    const inches = (mm: number): string => `${String(Math.floor(mm / 25.4))} 11/16 in`;
    for (const width of [320, 1000]) {
      const drawn = picture(wings['two joints'] ?? {}, inches);
      expectReadable(await drawnAt(width, (pen, widthPx) => drawDihedral(pen, widthPx, drawn)));
    }
  });

  it('joins the panels without a gap where the groove closes, and gapes below where a slit opens', () => {
    const [closed] = picture({'wing.joints': [{angle: 12 * deg, at: 0.19}]}).sketches;
    const [flat, propped] = closed?.panels ?? [];
    expect(flat?.[1]).to.deep.equal(propped?.[0]);
    expect(flat?.[2]?.x).to.be.closeTo(propped?.[3]?.x ?? NaN, 1e-9);
    expect(flat?.[2]?.x).to.be.closeTo(190 - 5 * Math.tan(6 * deg), 1e-9);
    const [open] = picture({'wing.joints': [{angle: 12 * deg, at: 0.19}], 'wing.jointFace': 'opening'}).sketches;
    const [lying, raised] = open?.panels ?? [];
    const [low, high] = [lying?.[1], raised?.[0]];
    if (!low || !high) throw new Error('no panels');
    expect(Math.hypot(high.x - low.x, high.y - low.y)).to.be.closeTo(2 * 5 * Math.sin(6 * deg), 1e-9);
  });

  it('touches the block with the panel: the contact lies on its lower face', () => {
    for (const values of Object.values(wings)) {
      for (const {start, end, contact} of picture(values).sketches) {
        const off = ((contact.x - start.x) * (end.y - start.y) - (contact.y - start.y) * (end.x - start.x)) / Math.hypot(end.x - start.x, end.y - start.y);
        expect(off).to.be.closeTo(0, 1e-6);
      }
    }
  });

  it('stays within its box, whatever the width', () => {
    for (const values of Object.values(wings)) {
      for (const width of [280, 700, 1200]) {
        const drawn = picture(values);
        const {view: {box}, benches} = layOutDihedral(drawn, width);
        drawn.sketches.forEach(({panels}, i) => {
          for (const {x, y} of panels.flat()) {
            expect(x).to.be.within(box.x, box.x + box.width);
            expect((benches[i] ?? NaN) - y).to.be.within(0, box.height);
          }
        });
      }
    }
  });
});
