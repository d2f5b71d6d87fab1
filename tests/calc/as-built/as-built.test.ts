import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {asBuilt, cornersOf} from '../../../src/calc/as-built/as-built.js';
import {foldFromHollow, hollowOf, lowerFace} from '../../../src/calc/as-built/hollow.js';
import {tipDistances} from '../../../src/calc/as-built/straightness.js';
import {jointsFromTip, plannedJoints, tipOverBench} from '../../../src/calc/as-built/tips.js';
import {wingDihedral} from '../../../src/calc/bench/dihedral.js';
import {wingFold} from '../../../src/calc/bench/wing-fold.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {readDesignFile, writeDesignFile} from '../../../src/calc/design/file.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {flyingPlane} from '../../../src/calc/flight/flying-plane.js';

const deg = Math.PI / 180;
const codes = (design: GliderDesign): string[] => asBuilt(design).problems.map(({code}) => code);
const gliding = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -1.2 * deg});

function sure<T>(outcome: {readonly ok: true; readonly value: T} | {readonly ok: false; readonly problems: readonly {readonly code: string}[]}): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

describe('the hollow under a ruler', () => {
  it('is the height of a folded triangle where the lower skin was left whole', () => {
    const wing = {...defaultDesign.wing, foldFace: 'opening', pressed: 'none'} as const;
    const [a, b, f] = [0.048, 0.072, 12 * deg];
    expect(hollowOf(wing, defaultDesign.board, f)).to.be.closeTo(a * b * Math.sin(f) / Math.sqrt(a * a + b * b + 2 * a * b * Math.cos(f)), 1e-12);
  });

  it('is that of shorter panels where a groove has closed in the lower face', () => {
    const {board} = defaultDesign, f = 12 * deg, short = board.thickness * Math.tan(f / 2);
    const [a, b] = [0.048 - short, 0.072 - short];
    expect(hollowOf(defaultDesign.wing, board, f)).to.be.closeTo(a * b * Math.sin(f) / Math.sqrt(a * a + b * b + 2 * a * b * Math.cos(f)), 1e-12);
  });

  it('gets no reading where only the edges are pressed from below, and less of one on a folded wing so pressed', () => {
    const pressed = {...defaultDesign.wing, pressed: 'below'} as const;
    expect(hollowOf(pressed, defaultDesign.board, 0)).to.be.closeTo(0, 1e-15);
    expect(hollowOf(pressed, defaultDesign.board, 12 * deg)).to.be.lessThan(hollowOf(defaultDesign.wing, defaultDesign.board, 12 * deg));
    expect(hollowOf({...pressed, pressed: 'above'}, defaultDesign.board, 0.2)).to.equal(hollowOf(defaultDesign.wing, defaultDesign.board, 0.2));
  });

  it('leads back to the fold it was measured on, for any wing', () => {
    fc.assert(fc.property(
      fc.constantFrom('closing' as const, 'opening' as const), fc.constantFrom('none' as const, 'both' as const, 'above' as const, 'below' as const),
      fc.array(fc.double({min: 0.1, max: 0.9, noNaN: true}), {minLength: 1, maxLength: 3}), fc.double({min: 0.03, max: 0.6, noNaN: true}),
      (foldFace, pressed, places, total) => {
        const at = [...places].sort((p, q) => p - q).filter((p, i, all) => i === 0 || p - (all[i - 1] ?? 0) > 0.1);
        const wing = {...defaultDesign.wing, foldFace, pressed, creases: at.map((p) => ({at: p * 0.12}))};
        const depth = hollowOf(wing, defaultDesign.board, total);
        // an edge pressed away over most of its panel hides a fold: then a smaller one reads the same
        const found = sure(foldFromHollow(wing, defaultDesign.board, depth));
        expect(found).to.be.at.most(total + 1e-9);
        expect(hollowOf(wing, defaultDesign.board, found)).to.be.closeTo(depth, 1e-9);
        if (pressed === 'none' || pressed === 'above') expect(found).to.be.closeTo(total, 1e-6);
      }), {numRuns: 300});
  });

  it('lies a board below the skin all along', () => {
    const face = lowerFace(defaultDesign.wing, defaultDesign.board, 0);
    expect(face.map(({y}) => y)).to.deep.equal(face.map(() => -0.005));
    expect(face.at(-1)?.x).to.be.closeTo(0.12, 1e-12);
  });

  it('puts the fold it tells of into the design, whatever stood on the bench', () => {
    const bench = withValues(defaultDesign, {'wing.propPlace': 'inset', 'wing.stackInset': 0.03});
    const planned = sure(wingFold(bench.wing, bench.board));
    const same = withValues(bench, {'built.hollow': hollowOf(bench.wing, bench.board, planned.total)});
    const built = sure(wingFold(asBuilt(same).design.wing, same.board));
    expect(built.total).to.be.closeTo(planned.total, 1e-9);
    expect(built.section.camber).to.be.closeTo(planned.section.camber, 1e-9);
    expect(asBuilt(same).replaced[0]).to.deep.include({path: 'wing.camber', from: ['built.hollow']});
  });

  it('is refused where no wing could have it, and the plan counts', () => {
    const deep = withValues(gliding, {'built.hollow': 0.06});
    expect(codes(deep)).to.deep.equal(['hollow-too-deep']);
    expect(asBuilt(deep).design.wing).to.equal(gliding.wing);
    expect(asBuilt(deep).counted).to.deep.equal([]);
    expect(flyingPlane(deep)).to.equal(flyingPlane(gliding));
    expect(codes(withValues(gliding, {'wing.creases': [], 'built.hollow': 0.004}))).to.deep.equal(['hollow-without-crease']);
  });
});

describe('tips over the bench', () => {
  it('are as high as the planned joints make them, and lead back to these', () => {
    fc.assert(fc.property(
      fc.array(fc.record({angle: fc.double({min: 0.02, max: 0.35, noNaN: true}), share: fc.double({min: 0.05, max: 0.9, noNaN: true})}), {minLength: 1, maxLength: 3}),
      fc.constantFrom('closing' as const, 'opening' as const), fc.double({min: 0.3, max: 1.5, noNaN: true}),
      (list, jointFace, times) => {
        const joints = [...list].sort((a, b) => a.share - b.share).map(({angle, share}) => ({angle, at: share * 0.33}));
        const wing = {...defaultDesign.wing, joints, jointFace};
        const built = joints.map(({angle, at}) => ({angle: angle * times, at}));
        if (built.reduce((sum, {angle}) => sum + angle, 0) > 1.4) return;
        const height = tipOverBench(wing, defaultDesign.board, built);
        sure(jointsFromTip(wing, defaultDesign.board, joints, height, 'built.tipLeft')).forEach(({angle}, i) => { expect(angle).to.be.closeTo(built[i]?.angle ?? NaN, 1e-8); });
      }), {numRuns: 200});
  });

  it('agree with the height that the block gives on the bench', () => {
    const dihedral = sure(wingDihedral(defaultDesign.wing, defaultDesign.board));
    expect(tipOverBench(defaultDesign.wing, defaultDesign.board, defaultDesign.wing.joints)).to.be.closeTo(dihedral.joints[0]?.rise ?? NaN, 1e-12);
    const opening = withValues(defaultDesign, {'wing.jointFace': 'opening'});
    const rise = sure(wingDihedral(opening.wing, opening.board)).joints[0]?.rise ?? NaN;
    expect(tipOverBench(opening.wing, opening.board, opening.wing.joints)).to.be.closeTo(rise, 1e-12);
  });

  it('are found for joints planned to turn by next to nothing, as for those that do not turn', () => {
    const found = [0, 5e-324, 1e-300, 1e-12].map((angle) => sure(jointsFromTip(defaultDesign.wing, defaultDesign.board, [{angle, at: 0.15}], 0.01, 'built.tipLeft'))[0]?.angle);
    for (const angle of found) expect(angle).to.be.closeTo(found[0] ?? NaN, 1e-9);
  });

  it('give the mean to the design and keep what differs', () => {
    const design = withValues(gliding, {'built.tipLeft': 0.032, 'built.tipRight': 0.026});
    const {lopsided: {joints}, design: built, counted} = asBuilt(design);
    const angle = (half: readonly {readonly angle: number}[] | undefined): number => half?.[0]?.angle ?? NaN;
    expect(angle(joints?.left)).to.be.closeTo(Math.asin(32 / 140), 1e-9);
    expect(angle(joints?.right)).to.be.closeTo(Math.asin(26 / 140), 1e-9);
    expect(angle(built.wing.joints)).to.be.closeTo((Math.asin(32 / 140) + Math.asin(26 / 140)) / 2, 1e-9);
    expect(counted).to.deep.equal(['built.tipLeft', 'built.tipRight']);
  });

  it('read the plan from blocks where those are given, and bend a wing without joints in the middle', () => {
    const blocks = withValues(gliding, {'wing.dihedralBy': 'block'});
    const planned = sure(plannedJoints(blocks.wing, blocks.board));
    expect(planned[0]?.angle).to.be.closeTo(sure(wingDihedral(blocks.wing, blocks.board)).joints[0]?.angle ?? NaN, 1e-12);
    const height = tipOverBench(blocks.wing, blocks.board, planned);
    const measured = asBuilt(withValues(blocks, {'built.tipLeft': height, 'built.tipRight': height})).design.wing;
    expect(measured.joints[0]?.angle).to.be.closeTo(planned[0]?.angle ?? NaN, 1e-8);
    const flat = asBuilt(withValues(gliding, {'wing.joints': [], 'built.tipLeft': 0.01, 'built.tipRight': 0.01})).design.wing;
    expect(flat.joints).to.have.length(1);
    expect(flat.joints[0]?.angle).to.be.closeTo(Math.asin(0.01 / 0.33), 1e-9);
  });

  it('are refused one by one where no joint reaches so high, and want both', () => {
    expect(codes(withValues(gliding, {'built.tipLeft': 0.03, 'built.tipRight': 0.15}))).to.deep.equal(['tip-too-high']);
    expect(asBuilt(withValues(gliding, {'built.tipLeft': 0.03, 'built.tipRight': 0.15})).problems[0]?.path).to.equal('built.tipRight');
    const one = asBuilt(withValues(gliding, {'built.tipLeft': 0.03}));
    expect(one.problems).to.deep.equal([{code: 'other-one-missing', path: 'built.tipRight'}]);
    expect(one.design.wing).to.equal(gliding.wing);
  });
});

describe('edges, distances and bow', () => {
  it('turns edge heights into angles, front edge up', () => {
    const design = withValues(gliding, {'built.tailFront': 0.001, 'built.tailRear': 0.003});
    expect(asBuilt(design).design.arrangement.tailIncidence).to.be.closeTo(-Math.asin(2 / 78), 1e-12);
    const wing = withValues(gliding, {'built.wingFront': 0.004, 'built.wingRear': 0.001});
    expect(asBuilt(wing).design.arrangement.wingIncidence).to.be.closeTo(Math.asin(0.003 / sure(wingFold(wing.wing, wing.board)).section.chord), 1e-12);
    expect(codes(withValues(gliding, {'built.tailFront': 0, 'built.tailRear': 0.06}))).to.deep.equal(['edges-too-far-apart']);
  });

  it('finds the skew that the distances were made from', () => {
    const corners = cornersOf(gliding.wing, gliding.tail, gliding.arrangement, {ok: true, value: gliding.wing.joints});
    fc.assert(fc.property(fc.double({min: -0.15, max: 0.15, noNaN: true}), (skew) => {
      const {left, right} = tipDistances(corners, skew);
      const {lopsided} = asBuilt(withValues(gliding, {'built.leftTipToTail': left, 'built.rightTipToTail': right}));
      expect(lopsided.skew).to.be.closeTo(skew, 1e-9);
      expect(lopsided.fins).to.be.closeTo(skew, 1e-9);
    }));
    const far = asBuilt(withValues(gliding, {'built.leftTipToTail': 0.9, 'built.rightTipToTail': 0.44}));
    expect(far.problems[0]).to.deep.include({code: 'tip-distance-unlike', path: 'built.leftTipToTail'});
    expect(far.lopsided).to.deep.equal({fins: 0});
  });

  it('does not count a bow twice that has already moved the tail between the tips', () => {
    // an evenly bowed body: its end is turned by twice what its chord is
    const s = 0.006, free = gliding.arrangement.tailAt + gliding.tail.chord - gliding.arrangement.wingAt - gliding.wing.chord;
    const alone = asBuilt(withValues(gliding, {'built.bow': s})).lopsided.fins;
    expect(alone).to.be.closeTo(2 * s / free, 1e-4);
    const {half, rise, back} = cornersOf(gliding.wing, gliding.tail, gliding.arrangement, {ok: true, value: gliding.wing.joints});
    // the tail stands s nearer to the right tip
    const both = asBuilt(withValues(gliding, {
      'built.bow': s, 'built.leftTipToTail': Math.hypot(back, half + s, rise), 'built.rightTipToTail': Math.hypot(back, half - s, rise),
    })).lopsided;
    expect(both.fins).to.be.closeTo(alone, 0.1 * alone);
    expect(codes(withValues(gliding, {'built.bow': 0.2}))).to.deep.equal(['bow-too-large']);
  });
});

describe('a glider as it was built', () => {
  it('is the design itself while nothing has been measured', () => {
    expect(asBuilt(gliding).design).to.equal(gliding);
    expect(asBuilt(gliding).counted).to.deep.equal([]);
    const weighed = withValues(gliding, {'measured.mass': 0.07});
    expect(asBuilt(weighed).design).to.equal(weighed);
    expect(asBuilt(weighed).counted).to.deep.equal(['measured.mass']);
  });

  it('keeps its parts while something else changes, so that nothing is folded again', () => {
    const one = withValues(gliding, {'built.hollow': 0.004}), other = withValues(one, {'ballast.masses': []});
    expect(asBuilt(one).design.wing).to.equal(asBuilt(other).design.wing);
    expect(Object.isFrozen(asBuilt(one).design.wing)).to.equal(true);
  });

  it('flies as it was measured: a deeper hollow slower, a tail with a higher rear edge slower, a heavier plane faster', () => {
    const speed = (values: Parameters<typeof withValues>[1]): number => sure(sure(flightOf(withValues(gliding, values))).trim).glide.speed;
    const planned = sure(wingFold(gliding.wing, gliding.board)).total, hollow = hollowOf(gliding.wing, gliding.board, planned);
    expect(speed({'built.hollow': hollow})).to.be.closeTo(speed({}), 1e-6);
    expect(speed({'built.tailFront': 0, 'built.tailRear': 0.078 * Math.sin(1.2 * deg)})).to.be.closeTo(speed({}), 1e-6);
    expect(speed({'built.tailFront': 0, 'built.tailRear': 0.0018})).to.be.lessThan(speed({'built.tailFront': 0, 'built.tailRear': 0.001}));
    expect(speed({'built.hollow': hollow + 1e-3})).to.be.lessThan(speed({'built.hollow': hollow}));
    expect(speed({'built.hollow': hollow - 1e-3})).to.be.greaterThan(speed({'built.hollow': hollow}));
    // without fitted weights, the same balance
    const loose = {'ballast.masses': [], 'measured.balance': 0.05};
    expect(speed({...loose, 'measured.mass': 0.09})).to.be.greaterThan(speed({...loose, 'measured.mass': 0.08}));
  });

  it('comes back from a file with every measurement', () => {
    const design = withValues(gliding, {
      'built.hollow': 0.0042, 'built.tipLeft': 0.031, 'built.tipRight': 0.0295, 'built.tailFront': 0.0005, 'built.tailRear': 0.0021, 'built.bow': -0.003,
      'built.leftTipToTail': 0.471, 'built.rightTipToTail': 0.469, 'built.wingFront': 0, 'built.wingRear': 0.001,
    });
    expect(sure(readDesignFile(writeDesignFile({design, texts: {}}))).design).to.deep.equal(design);
  });
});
