import {expect} from '@open-wc/testing';
import {crestGrooves} from '../../../src/calc/bench/joint-groove.js';
import {wingFold} from '../../../src/calc/bench/wing-fold.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';

const fold = 12 * Math.PI / 180;

function first(values: Partial<Record<DimensionPath, DimensionValue>>): {readonly height: number; readonly width: number; readonly camber: number} {
  const {wing, board} = withValues(defaultDesign, {'wing.joints': [{angle: fold, at: 0.19}], 'board.thickness': 0.005, ...values});
  const grooves = crestGrooves(wing, board);
  const camber = wingFold(wing, board);
  const groove = grooves.ok ? grooves.value[0] : undefined;
  if (!groove || !camber.ok) throw new Error('no groove');
  return {...groove, camber: camber.value.section.camberHeight};
}

describe('the groove of a joint across a wing', () => {
  it('is as deep as the board where the wing is flat', () => {
    const {height, width} = first({'wing.creases': []});
    expect(height).to.be.closeTo(0.005, 1e-12);
    expect(width).to.be.closeTo(2 * 0.005 * Math.tan(fold / 2), 1e-12);
  });

  it('is deepest at the crest of a cambered wing: board and camber together, to within their slant', () => {
    const {height, width, camber} = first({});
    expect(height).to.be.closeTo(0.005 + camber, 1e-4);
    expect(width).to.be.closeTo(2 * height * Math.tan(fold / 2), 1e-12);
  });

  it('knows the chord at the joint of a tapered wing', () => {
    const root = first({}), outside = first({'wing.tipChord': 0.07});
    expect(outside.height).to.be.below(root.height).and.above(0.005);
  });
});
