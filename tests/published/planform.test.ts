/** Planforms, loadings and tail volume against textbooks and definitions. A value not read at its source says so. */
import {expect} from '@open-wc/testing';
import {
  planformOf, tailVolume, wingCubeLoading, wingLoading, type Planform, type Station,
} from '../../src/calc/geometry/planform/index.js';
import type {Outcome} from '../../src/calc/problem.js';

const valueOf = (outcome: Outcome<number>): number => outcome.ok ? outcome.value : NaN;

function planform(...rows: readonly (readonly [at: number, chord: number, back: number])[]): Planform {
  const outcome = planformOf(rows.map(([at, chord, back]): Station => ({at, chord, back})));
  if (!outcome.ok) throw new Error('refused');
  return outcome.value;
}

const pound = 0.45359237, ounce = pound / 16, inch = 0.0254, foot = 0.3048;

// Raymer, Aircraft Design: A Conceptual Approach: c̄ = ⅔ c_r (1 + λ + λ²) / (1 + λ), ȳ = (b/6) (1 + 2λ) / (1 + λ)
// (from memory; the same formulas were read where others quote them)
describe('mean aerodynamic chord of a straight-tapered wing (Raymer, from memory)', () => {
  it('is 0.77778 of the root chord at a taper of one half', () => {
    const wing = planform([0, 1, 0], [3, 0.5, 0]);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.77778, 1e-4);
    expect(wing.meanAerodynamicChord).to.be.closeTo(7 / 9, 1e-12);
  });

  for (const taper of [0.2, 0.35, 0.6, 0.8, 1]) {
    it(`follows the handbook's formulas at a taper of ${taper.toString()}`, () => {
      const root = 0.15, span = 0.8, tipBack = 0.05;
      const wing = planform([0, root, 0], [span / 2, taper * root, tipBack]);
      const at = span / 6 * (1 + 2 * taper) / (1 + taper);
      expect(wing.meanAerodynamicChord).to.be.closeTo(2 / 3 * root * (1 + taper + taper ** 2) / (1 + taper), 1e-12);
      expect(wing.meanAerodynamicChordAt).to.be.closeTo(at, 1e-12);
      expect(wing.meanAerodynamicChordBack).to.be.closeTo(at * tipBack / (span / 2), 1e-12);
      expect(wing.aspectRatio).to.be.closeTo(2 * span / (root * (1 + taper)), 1e-12);
    });
  }
});

// The standard integral (2/S) ∫ c² dy of an ellipse: 8 / (3π) of the root chord (closed form)
describe('mean aerodynamic chord of an elliptical wing', () => {
  it('comes to 0.84883 of the root chord with many stations', () => {
    const n = 4000;
    const rows = Array.from({length: n}, (_, i) => {
      // even steps of angle crowd the stations towards the tip; the last stays short of it, where the chord is nothing
      const angle = i / n * Math.PI / 2;
      return [Math.sin(angle), Math.cos(angle), (1 - Math.cos(angle)) / 2] as const;
    });
    const wing = planform(...rows);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.84883, 1e-4);
    expect(wing.meanAerodynamicChord).to.be.closeTo(8 / (3 * Math.PI), 1e-6);
    expect(wing.areaCentreBack).to.be.closeTo(0.5, 1e-9);
  });
});

// (2/S) ∫ c² dy, (2/S) ∫ c x dy worked by hand over each panel (closed form; the wings are worked examples of our own)
describe('wings of two panels, worked by hand', () => {
  it('has the area and mean aerodynamic chord of a straight inner and a tapered outer panel', () => {
    const wing = planform([0, 0.16, 0], [0.2, 0.16, 0], [0.4, 0.08, 0.04]);
    expect(wing.area).to.be.closeTo(0.112, 2e-5);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.14476, 2e-5);
    expect(wing.meanAerodynamicChordBack).to.be.closeTo(0.00762, 2e-5);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.1447619, 1e-7);
    expect(wing.meanAerodynamicChordBack).to.be.closeTo(0.007619048, 1e-9);
  });

  it('has the mean aerodynamic chord of a double taper', () => {
    const wing = planform([0, 0.18, 0], [0.25, 0.15, 0.01], [0.45, 0.09, 0.035]);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.14966, 2e-5);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.1496552, 1e-7);
  });
});

describe('loadings', () => {
  // A discussion among modellers: 22 lb on 1780 in² is "aprox 28.5 oz/sq ft"
  it('gives 28.5 oz/ft² to 22 lb on 1780 in²', () => {
    const loading = valueOf(wingLoading(22 * pound, 1780 * inch ** 2)) / (ounce / foot ** 2);
    expect(loading).to.be.closeTo(28.5, 0.1);
    expect(loading).to.be.closeTo(28.4764, 5e-5);
  });

  // W / S^1.5: F. Reynolds, Model Builder, September 1989 (definition, from memory)
  it('gives a wing cube loading of 2.4056 kg/m³ to 100 g on 12 dm²', () => {
    const loading = valueOf(wingCubeLoading(0.1, 0.12));
    expect(loading).to.be.closeTo(2.4056, 5e-4);
    expect(loading).to.be.closeTo(2.405626, 5e-7);
  });

  // Common practice, no source; class lists put slow flyers and thermal gliders under 4 oz/ft³ (edges vary by author)
  it('puts a 30 × 4 in wing at 65 to 110 g between about 3 and 5 oz/ft³, about the upper edge of the slow class', () => {
    const wing = planform([0, 4 * inch, 0], [15 * inch, 4 * inch, 0]);
    const loading = (mass: number) => valueOf(wingCubeLoading(mass, wing.area)) / (ounce / foot ** 3);
    expect(loading(0.065)).to.be.closeTo(3, 0.15);
    expect(loading(0.11)).to.be.closeTo(5, 0.15);
    expect(loading(0.065)).to.be.below(4);
    expect(loading(0.11)).to.be.above(4);
  });
});

describe('tail volume', () => {
  // Definition V_h = l_h S_h / (c̄ S) (from memory); common lecture notes give 0.30 to 0.60 for a tailplane
  it('is 0.5429 for 2 dm² at 380 mm behind 10 dm² of 140 mm mean chord', () => {
    const volume = tailVolume({tailArea: 0.02, arm: 0.38, wingArea: 0.1, wingLength: 0.14});
    expect(volume).to.be.closeTo(0.5429, 5e-4);
    expect(volume).to.be.closeTo(0.5428571, 5e-8);
    expect(volume).to.be.within(0.3, 0.6);
  });
});
