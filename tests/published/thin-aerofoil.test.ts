import {expect} from '@open-wc/testing';
import {idealLift, meanLine, sectionLift, thinSection, type ThinSection} from '../../src/calc/aero/section/thin-section.js';
import type {Point} from '../../src/calc/geometry/polygon/point.js';

const deg = Math.PI / 180;

function section(line: readonly Point[]): ThinSection {
  const thin = thinSection(line);
  if (!thin.ok) throw new Error(thin.problems.map(({code}) => code).join());
  return thin.value;
}

/** NACA four-digit mean line: two parabolas that meet level at the crest (m high, p back). */
const fourDigit = (m: number, p: number) => section(meanLine((x) =>
  x < p ? m / p ** 2 * (2 * p * x - x * x) : m / (1 - p) ** 2 * (1 - 2 * p + 2 * p * x - x * x)));

/** NACA five-digit mean line, not reflexed: a cubic ahead of r and a straight line behind it. */
const fiveDigit = (k: number, r: number) => section(meanLine((x) =>
  k / 6 * (x < r ? x ** 3 - 3 * r * x * x + r * r * (3 - r) * x : r ** 3 * (1 - x))));

const polyline = (...points: readonly (readonly [number, number])[]) => section(points.map(([x, y]) => ({x, y})));

describe('thin-aerofoil theory: NACA mean lines', () => {
  // Abbott and von Doenhoff, Theory of Wing Sections (1959), appendix II; tables from memory. They were integrated approximately: loosely
  // against them, tightly against the exact integrals (in parentheses).
  for (const [p, moment, exact] of [[0.2, -0.113, -0.1108833], [0.4, -0.157, -0.1593585], [0.5, -0.187, -0.1884956], [0.7, -0.266, -0.2738477]] as const) {
    it(`has a moment of ${String(moment)} (${exact.toFixed(4)}) with 6 % of camber at ${String(p)}`, () => {
      const {quarterChordMoment} = fourDigit(0.06, p);
      expect(quarterChordMoment).to.be.closeTo(moment, 0.03 * Math.abs(moment));
      expect(quarterChordMoment).to.be.closeTo(exact, 1e-4 * Math.abs(exact));
    });
  }

  it('has the ideal angles of the 63 and 66 lines', () => {
    expect(fourDigit(0.06, 0.3).idealAngle / deg).to.be.closeTo(1.6, 0.1).and.closeTo(1.687903, 2e-4);
    expect(fourDigit(0.06, 0.6).idealAngle / deg).to.be.closeTo(-0.74, 0.1).and.closeTo(-0.7722703, 2e-4);
  });

  it('has the ideal lift of the 64 and 65 lines', () => {
    expect(idealLift(fourDigit(0.06, 0.4))).to.be.closeTo(0.76, 0.025 * 0.76).and.closeTo(0.7680736, 1e-4);
    expect(idealLift(fourDigit(0.06, 0.5))).to.be.closeTo(0.75, 0.025 * 0.75).and.closeTo(0.7539822, 1e-4);
  });

  it('has the design lift and angle of the 230 line', () => {
    const line = fiveDigit(15.957, 0.2025);
    expect(idealLift(line)).to.be.closeTo(0.3, 0.002);
    expect(line.idealAngle / deg).to.be.closeTo(1.65, 0.02);
  });

  it('turns the 2412’s lift to nothing at −2.077°', () => {
    // closed form; Kuethe and Chow; Houghton and Carpenter (from memory)
    expect(fourDigit(0.02, 0.4).zeroLiftAngle / deg).to.be.closeTo(-2.077, 0.002);
    expect(fourDigit(0.02, 0.4).quarterChordMoment).to.be.closeTo(-0.0531, 1e-4);
  });
});

describe('thin-aerofoil theory: worked examples', () => {
  it('is that of the 23012', () => {
    // Anderson, Fundamentals of Aerodynamics, section 4.8 (read). The book rounds before it quotes −0.0127; the integral gives −0.01283.
    const line = section(meanLine((x) => x < 0.2025 ? 2.6595 * (x ** 3 - 0.6075 * x * x + 0.1147 * x) : 0.02208 * (1 - x)));
    expect(line.zeroLiftAngle / deg).to.be.closeTo(-1.09, 0.01);
    expect(line.quarterChordMoment).to.be.closeTo(-0.0127, 2e-4);
    // A₀ at 4° and A₁ = 2 (α_i − α₀)
    expect(4 * deg - line.idealAngle).to.be.closeTo(0.0412, 1e-4);
    expect(2 * (line.idealAngle - line.zeroLiftAngle)).to.be.closeTo(0.0955, 1e-4);
  });

  it('is that of a flat plate', () => {
    // Anderson, example 4.4 (read): 5°, lift and moment about the trailing edge
    const plate = polyline([0, 0], [1, 0]);
    expect(sectionLift(plate, 5 * deg)).to.be.closeTo(0.5483, 1e-4);
    expect(plate.quarterChordMoment + 0.75 * sectionLift(plate, 5 * deg)).to.be.closeTo(0.4112, 1e-4);
  });

  it('is that of a parabolic arc, and near to that of the circular arc whose exact flow is known', () => {
    // α₀ = −2h: Kroo, Applied Aerodynamics; exact circular arc atan 2h: Milne-Thomson (both from memory)
    const arc = section(meanLine((x) => 4 * 0.05 * x * (1 - x)));
    expect(arc.zeroLiftAngle / deg).to.be.closeTo(-5.7296, 0.001);
    expect(arc.zeroLiftAngle / deg).to.be.closeTo(-5.7106, 0.004 * 5.7106);
  });
});

describe('thin-aerofoil theory: flaps and folded plates', () => {
  // Glauert, R & M 1095 (1927), closed form (from memory): τ = 1 − (θ − sin θ)/π, dc_m/dδ = −½ sin θ (1 − cos θ), hinge at 1 − c_f/c
  for (const [flap, effectiveness] of [[0.1, 0.3958], [0.2, 0.5498], [0.3, 0.6607]] as const) {
    it(`counts a flap of ${String(flap * 100)} % for ${String(effectiveness)} of its angle`, () => {
      expect(-polyline([0, 0], [1 - flap, 0], [1, -flap]).zeroLiftAngle).to.be.closeTo(effectiveness, 0.0005);
    });
  }

  it('has the moment of a flap of 20 %', () => {
    expect(polyline([0, 0], [0.8, 0], [1, -0.2]).quarterChordMoment).to.be.closeTo(-0.64, 0.0005);
  });

  // closed form for straight pieces, checked by quadrature to seven digits
  for (const [points, zeroLift] of [
    [[[0, 0], [0.3, 0.06], [1, 0]], -3.646069], [[[0, 0], [0.5, 0.05], [1, 0]], -3.647563], [[[0, 0], [0.3, 0.04], [1, 0]], -2.430713],
    [[[0, 0], [0.25, 0.045], [0.6, 0.045], [1, 0]], -4.225298],
  ] as const) {
    it(`has no lift at ${zeroLift.toFixed(2)}° folded through ${JSON.stringify(points)}`, () => {
      expect(polyline(...points).zeroLiftAngle / deg).to.be.closeTo(zeroLift, 1e-5);
    });
  }

  it('has the moment of three folded plates', () => {
    expect(polyline([0, 0], [0.3, 0.06], [1, 0]).quarterChordMoment).to.be.closeTo(-0.07855844, 1e-7);
    expect(polyline([0, 0], [0.25, 0.05], [1, 0]).quarterChordMoment).to.be.closeTo(-0.05773503, 1e-7);
    expect(polyline([0, 0], [0.5, 0.05], [1, 0]).quarterChordMoment).to.be.closeTo(-0.1, 1e-9);
  });
});
