import {expect} from '@open-wc/testing';
import {planeBalance} from '../../src/calc/balance/plane-balance.js';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';
import type {GliderDesign} from '../../src/calc/design/design.js';
import {wingCubeLoading, wingLoading} from '../../src/calc/geometry/planform/index.js';

const inch = 0.0254, foot = 12 * inch, pound = 0.45359237, ounce = pound / 16;

/** A plane of one flat wing that weighs so much. */
const plane = (span: number, chord: number, mass: number): GliderDesign => withValues(defaultDesign, {
  'wing.span': span, 'wing.chord': chord, 'wing.joints': [], 'wing.creases': [], 'measured.mass': mass, 'measured.balance': 0.04,
  'arrangement.wingAt': 0.1, 'arrangement.tailAt': 0.1 + 2 * chord, 'body.length': 0.3 + 2 * chord,
});

function balanced(design: GliderDesign) {
  const balance = planeBalance(design);
  if (!balance.ok) throw new Error(balance.problems.map(({code}) => code).join());
  return balance.value;
}

describe('wing loading and wing cube loading of a whole plane', () => {
  it('are mass over area and mass over area to the power 3/2', () => {
    // definition: F. Reynolds, Model Builder, September 1989 (from memory): 0.1 kg on 0.12 m² gives 2.4056 kg/m³
    const {cubeLoading, wingLoading: loading} = balanced(plane(1, 0.12, 0.1));
    expect(cubeLoading).to.be.closeTo(2.4056, 0.0005);
    const [cube, plain] = [wingCubeLoading(0.1, 0.12), wingLoading(0.1, 0.12)];
    expect(cube.ok && cubeLoading / cube.value).to.be.closeTo(1, 1e-12);
    expect(plain.ok && loading / plain.value).to.be.closeTo(1, 1e-12);
  });

  it('is 28.5 oz/ft² for a model of 22 lb on 1780 in²', () => {
    // a modelling discussion (read)
    const {wingLoading: loading} = balanced(plane(2.5, 1780 * inch ** 2 / 2.5, 9.9));
    expect(loading * (22 * pound / 9.9) / (ounce / foot ** 2)).to.be.closeTo(28.5, 0.1);
  });

  it('is about 3 to 5 oz/ft³ for a 30 × 4 in wing at 65 to 110 g', () => {
    // common practice, no source
    const loadings = [0.065, 0.085, 0.11].map((mass) => balanced(plane(30 * inch, 4 * inch, mass)).cubeLoading / (ounce / foot ** 3));
    console.log(`wing cube loading at 65, 85, 110 g: ${loadings.map((l) => l.toFixed(2)).join(', ')} oz/ft³`);
    for (const loading of loadings) expect(loading).to.be.within(2.9, 5.2);
  });
});
