import {expect} from '@open-wc/testing';
import {downwashGradient} from '../../src/calc/aero/handbook/downwash.js';
import {endPlatedAspectRatio} from '../../src/calc/aero/handbook/end-plates.js';
import {liftSlope} from '../../src/calc/aero/handbook/lift-slope.js';
import {neutralPoint, wholeSlope} from '../../src/calc/aero/handbook/neutral-point.js';
import {planeNeutralPoint} from '../../src/calc/aero/handbook/plane-neutral-point.js';
import {planeBalance} from '../../src/calc/balance/plane-balance.js';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';

const inch = 0.0254;

describe('lift slope of a finite wing', () => {
  // Helmbold (1942), 2πA/(2 + √(A² + 4)); from memory
  for (const [aspectRatio, expected] of [[2, 2.6026], [4, 3.8832], [6, 4.5287]] as const) {
    it(`is ${String(expected)} per radian at an aspect ratio of ${String(aspectRatio)}`, () => {
      expect(liftSlope(aspectRatio)).to.be.closeTo(expected, 0.0005);
    });
  }

  it('is that of Stengel’s paper aeroplane', () => {
    // Stengel, Flight Dynamics (Princeton 2004), example 1.3-1, course file PaperPlane.m (read): aspect ratio 0.86
    expect(liftSlope(0.86)).to.be.closeTo(1.2936, 0.0005);
  });

  it('comes near to slender wing theory', () => {
    // R. T. Jones, NACA Report 835 (1946), πA/2 for A → 0; from memory
    expect(liftSlope(0.5) / (Math.PI * 0.5 / 2)).to.be.within(0.95, 1.01);
  });

  it('stays within a tenth of converged lifting surfaces, on the high side', () => {
    // own lifting-surface results for flat square-cut wings, a cross-check and no published evidence
    for (const [aspectRatio, converged] of [[4, 3.612], [6, 4.2146]] as const) {
      expect(liftSlope(aspectRatio) / converged).to.be.within(1, 1.1);
    }
  });
});

describe('downwash behind a wing', () => {
  it('is what the DATCOM formula gives', () => {
    // USAF DATCOM 4.4.1 / Roskam; from memory: aspect ratio 6, no taper, tail level with the wing and half a span behind it
    expect(downwashGradient({aspectRatio: 6, taper: 1, quarterChordSweep: 0, armOverSpan: 0.5})).to.be.closeTo(0.3606, 0.0005);
  });

  it('stays below the far wake of an elliptic wing', () => {
    // dε/dα = 2a/πA = 0.5 at aspect ratio 6 with a = 4.7124 (Prandtl; from memory)
    expect(downwashGradient({aspectRatio: 6, taper: 1, quarterChordSweep: 0, armOverSpan: 0.5})).to.be.lessThan(2 * 4.7124 / (Math.PI * 6));
  });

  it('is about a tenth below a vortex lattice close behind the wing', () => {
    // own lattice, a cross-check and no published evidence: aspect ratio 5, 2.5 chords behind the quarter chord: 0.473
    const gradient = downwashGradient({aspectRatio: 5, taper: 1, quarterChordSweep: 0, armOverSpan: 0.5});
    expect(gradient / 0.473).to.be.within(0.85, 1);
  });
});

describe('end plates', () => {
  it('raise the aspect ratio by 1.38 when they are a fifth of the span high', () => {
    // Hoerner, Fluid-Dynamic Drag (1965), chapter 7: 1 + 1.9 h/b; from memory
    expect(endPlatedAspectRatio(1, 0.2)).to.be.closeTo(1.38, 0.001);
  });

  it('come near to the best that winglets of that height can do', () => {
    // Kroo, Nonplanar Wing Concepts, VKI lecture series 2005: span efficiency 1.41 at height over span 0.2 (figure from memory)
    expect(endPlatedAspectRatio(1, 0.2)).to.be.closeTo(1.41, 0.05);
  });
});

describe('neutral point', () => {
  it('is that of Anderson’s example', () => {
    // Anderson, Introduction to Flight, chapter 7, worked examples; from memory. Slopes per degree.
    expect(neutralPoint({wingCentre: 0.24, tailVolume: 0.34, tailSlope: 0.1, slope: 0.08, downwash: 0.35})).to.be.closeTo(0.516, 0.001);
  });

  it('gives Anderson’s moment slope from the margin', () => {
    // same examples: dCm/dα = −0.0133 per degree = −a (h_n − h) with h − h_ac = 0.11
    const h = neutralPoint({wingCentre: 0.24, tailVolume: 0.34, tailSlope: 0.1, slope: 0.08, downwash: 0.35});
    expect(-0.08 * (h - 0.35)).to.be.closeTo(-0.0133, 0.0001);
  });

  it('is that of the open textbook’s form with a tail efficiency', () => {
    // H. Smith, Aircraft Flight Mechanics: h_n = h_0 + V̄ η (a_t/a)(1 − dε/dα); the example from memory
    expect(neutralPoint({wingCentre: 0.25, tailVolume: 0.45, tailEfficiency: 0.9, tailSlope: 3.3, slope: 4.6, downwash: 0.42})).to.be.closeTo(0.4185, 0.0005);
  });

  it('agrees with Drela’s rule given its own slopes and downwash', () => {
    // Drela, MIT 16.01 lab notes, Basic Aircraft Design Rules (2006): ¼ + (1 + 2/A)/(1 + 2/A_h) (1 − 4/(A + 2)) V_h
    for (const [aspectRatio, tailAspectRatio, tailVolume, expected] of [[8, 4, 0.45, 0.475], [6, 4, 0.4, 0.4278]] as const) {
      const slopeOf = (a: number) => 2 * Math.PI * a / (a + 2);
      expect(neutralPoint({
        wingCentre: 0.25, tailVolume, tailSlope: slopeOf(tailAspectRatio), slope: slopeOf(aspectRatio), downwash: 4 / (aspectRatio + 2),
      })).to.be.closeTo(expected, 0.0005);
    }
  });

  it('is the centre of both lifts, each weighted by its slope', () => {
    // statics: the place about which the lift that comes with a turn of the nose has no moment
    const [wingSlope, tailSlope, share, downwash, arm] = [4.5, 3.6, 0.2, 0.35, 3.1];
    const [w, t] = [wingSlope, share * tailSlope * (1 - downwash)];
    expect(neutralPoint({wingCentre: 0.25, tailVolume: share * arm, tailSlope, slope: wholeSlope(wingSlope, tailSlope, share, downwash), downwash}))
      .to.be.closeTo((w * 0.25 + t * (0.25 + arm)) / (w + t), 1e-12);
  });
});

describe('a club’s plane that is known to fly', () => {
  // common practice, no source: 30 × 4 in wing, 9 × 2.5 in tailplane, twin 2.5 in fins at its ends, 15 in from leading edge to leading edge
  const plane = withValues(defaultDesign, {
    'wing.span': 30 * inch, 'wing.chord': 4 * inch, 'wing.joints': [], 'wing.creases': [{at: 2 * inch}],
    'tail.span': 9 * inch, 'tail.chord': 2.5 * inch, 'tail.fins.count': 2, 'tail.fins.height': 2.5 * inch, 'tail.fins.chord': 2.5 * inch,
    'body.length': 24 * inch, 'arrangement.wingAt': 5 * inch, 'arrangement.tailAt': 20 * inch,
    'balance.marginLow': 0.15, 'balance.marginHigh': 0.3, 'measured.mass': 0.085, 'measured.balance': 1.5 * inch,
  });

  it('should balance between 1 and 2 inches behind the leading edge', () => {
    const balance = planeBalance(plane);
    if (!balance.ok) throw new Error(balance.problems.map(({code}) => code).join());
    const {neutralPoint, handbook, target, wingAt} = balance.value;
    const marginAt = (back: number) => (neutralPoint - back * inch) / handbook.wing.meanAerodynamicChord;
    const [from, to, middle] = [target.from, target.to, target.middle].map((at) => (at - wingAt) / inch) as [number, number, number];
    console.log(`static margin at 1 in: ${(100 * marginAt(1)).toFixed(1)} %, at 2 in: ${(100 * marginAt(2)).toFixed(1)} %; `
      + `target ${from.toFixed(2)} to ${to.toFixed(2)} in, middle ${middle.toFixed(2)} in`);
    expect(from).to.be.lessThan(2);
    expect(to).to.be.greaterThan(1);
    expect(middle).to.be.within(1, 2);
    expect(neutralPoint / inch).to.be.greaterThan(2);
    expect(marginAt(2)).to.be.greaterThan(0.05);
  });

  it('has a smaller margin without end plates on its tail, and a larger one with a longer arm', () => {
    const share = (design: typeof plane) => {
      const point = planeNeutralPoint(design.wing, design.tail, design.arrangement, design.board);
      return point.ok ? point.value.share : NaN;
    };
    expect(share(withValues(plane, {'tail.fins.count': 1}))).to.be.lessThan(share(plane) - 0.005);
    expect(share(withValues(plane, {'arrangement.tailAt': 22 * inch}))).to.be.greaterThan(share(plane) + 0.02);
  });
});
