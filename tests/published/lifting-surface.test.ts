import {expect} from '@open-wc/testing';
import {farWakeDrag} from '../../src/calc/aero/lattice/far-wake.js';
import {layPanels} from '../../src/calc/aero/lattice/lay-panels.js';
import {factorise} from '../../src/calc/aero/lattice/linear.js';
import type {Surface} from '../../src/calc/aero/lattice/surface.js';
import {deltaOf, loadsOf, turnedUp, wingOf} from '../calc/aero/wings.js';

const deg = Math.PI / 180;

describe('vortex lattice: the swept wing of four panels a side', () => {
  // Bertin and Cummings, Aerodynamics for Engineers, worked example: aspect ratio 5, swept 45°, no taper; from memory
  const {lift, circulation} = turnedUp(wingOf({span: 5, sweep: 45 * deg, strips: 4, rows: 1, freeTip: false}), 5, 5);

  it('has a lift slope of 1.096 π', () => {
    expect(lift).to.be.closeTo(3.443, 0.003).and.closeTo(3.444224, 1e-5);
  });

  it('has the circulations of its first and third panels', () => {
    expect((circulation[0] ?? 0) / (4 * Math.PI * 5)).to.be.closeTo(0.0273, 1e-4).and.closeTo(0.02730227, 1e-7);
    expect((circulation[2] ?? 0) / (4 * Math.PI * 5)).to.be.closeTo(0.0286, 1e-4).and.closeTo(0.02863582, 1e-7);
  });
});

describe('vortex lattice: the Warren-12 wing', () => {
  // AGARD and NLR comparisons of lifting surfaces (Labrujère and Zandbergen 1973), from memory: 2.743 and −3.10 about the apex on a chord of 1
  const root = 1.5, tip = 0.5, span = 2 * Math.SQRT2, sweep = 53.54 * deg;
  const at = (n: number) => turnedUp(wingOf({span, root, tip, sweep, strips: 2 * n, rows: n}), 2 * Math.SQRT2, span);

  it('has its lift slope and moment within 1 % from 200 panels a side on', () => {
    const {lift, moment} = at(10);
    expect(lift).to.be.closeTo(2.743, 0.0274);
    expect(moment).to.be.closeTo(-3.10, 0.031);
  });

  it('comes within 0.3 % by extrapolation to no panel width', () => {
    const coarse = at(8), fine = at(16);
    const lift = 2 * fine.lift - coarse.lift, moment = 2 * fine.moment - coarse.moment;
    console.log(`Warren-12, extrapolated: lift slope ${lift.toFixed(4)}, moment ${moment.toFixed(4)}`);
    expect(lift).to.be.closeTo(2.743, 0.003 * 2.743);
    expect(moment).to.be.closeTo(-3.10, 0.003 * 3.10);
    // another program's even lattice extrapolates to 2.750: a cross-check
    expect(lift).to.be.closeTo(2.750, 0.001);
  });
});

describe('vortex lattice: flat square-cut wings', () => {
  // accurate lifting-surface solutions, Tuck (1993), Jordan (1973), from memory: 1.4602 at aspect ratio 1, 2.4744 at 2
  for (const [aspect, published] of [[1, 1.460227], [2, 2.474]] as const) {
    it(`has the published lift slope ${published.toFixed(3)} at aspect ratio ${String(aspect)}`, () => {
      expect(turnedUp(wingOf({span: aspect}), aspect, aspect).lift).to.be.closeTo(published, 0.005 * published);
    });
  }

  // own converged lattice, another program's: a cross-check and no published evidence
  for (const [aspect, converged] of [[4, 3.61205], [6, 4.214631]] as const) {
    it(`agrees with another lattice at aspect ratio ${String(aspect)}`, () => {
      expect(turnedUp(wingOf({span: aspect}), aspect, aspect).lift).to.be.closeTo(converged, 0.005 * converged);
    });
  }

  it('has its aerodynamic centre a little ahead of the quarter chord', () => {
    // the same cross-check: 0.2361 chords at aspect ratio 5
    expect(turnedUp(wingOf({span: 5}), 5, 5).centre).to.be.closeTo(0.236, 0.002);
  });

  it('comes near to slender wing theory when it is narrow', () => {
    // R. T. Jones, NACA Report 835 (1946): πA/2 (from memory)
    expect(turnedUp(wingOf({span: 0.3}), 0.3, 0.3).lift / (Math.PI * 0.3 / 2)).to.be.within(0.97, 1.01);
  });

  it('comes near to lifting-line theory as it gets longer, always from below', () => {
    // Prandtl’s lifting line of a square-cut wing, by Glauert’s series
    const share = (aspect: number) => turnedUp(wingOf({span: aspect, strips: 60}), aspect, aspect).lift / liftingLine(aspect, 1).slope;
    const shares = [6, 20, 60].map(share);
    expect(shares).to.deep.equal([...shares].sort((a, b) => a - b));
    expect(shares[2]).to.be.within(0.99, 1);
  });
});

/** Glauert’s series for the load of a lifting line (The Elements of Aerofoil and Airscrew Theory, chapter XI), 2π for the section. */
function liftingLine(aspect: number, taper: number, terms = 60) {
  const root = 2 / (aspect * (1 + taper));    // over the span
  const matrix = new Float64Array(terms * terms), right = new Float64Array(terms);
  for (let i = 0; i < terms; i++) {
    const theta = Math.PI / 2 * (i + 1) / terms, mu = Math.PI / 2 * root * (1 - (1 - taper) * Math.cos(theta));
    right[i] = mu * Math.sin(theta);
    for (let k = 0; k < terms; k++) {
      const n = 2 * k + 1;
      matrix[i * terms + k] = Math.sin(n * theta) * (n * mu + Math.sin(theta));
    }
  }
  const solved = factorise(matrix, terms);
  if (!solved.ok) throw new Error('no lifting line');
  const a = solved.value(right), first = a[0] ?? NaN;
  return {
    slope: Math.PI * aspect * first,
    delta: a.reduce((sum, each, k) => (k ? sum + (2 * k + 1) * (each / first) ** 2 : 0), 0),
    /** Circulation at y over the half span. */
    load: (y: number) => a.reduce((sum, each, k) => sum + each * Math.sin((2 * k + 1) * Math.acos(y)), 0),
  };
}

describe('drag of the far wake: loads of lifting lines', () => {
  /** The drag factor of a lifting line's load as the wake finds it. */
  const inWake = (aspect: number, taper: number) => {
    const {strips} = layPanels([wingOf({span: 2, strips: 200, rows: 1})]);
    return deltaOf(strips, strips.map(({y}) => liftingLine(aspect, taper).load(y)), 2);
  };

  it('has Glauert’s τ and δ for a square-cut wing with A = a₀', () => {
    // Glauert (1926), table for rectangular wings: τ = 0.17, from memory to two digits
    const {slope} = liftingLine(2 * Math.PI, 1);
    const tau = Math.PI * 2 * Math.PI * (1 / slope - 1 / (2 * Math.PI)) - 1;
    expect(tau).to.be.closeTo(0.17, 0.006);
    expect(inWake(2 * Math.PI, 1)).to.be.closeTo(liftingLine(2 * Math.PI, 1).delta, 0.001);
  });

  // another program’s converged lifting lines: a cross-check. With taper, Anderson’s figure 5.20 has the same least near 0.4 (from memory).
  for (const [aspect, taper, delta] of [[4, 1, 0.0285], [6, 1, 0.0483], [6, 0.4, 0.0088]] as const) {
    it(`costs δ = ${String(delta)} at aspect ratio ${String(aspect)} and taper ${String(taper)}`, () => {
      expect(liftingLine(aspect, taper).delta).to.be.closeTo(delta, 0.0007);
      expect(inWake(aspect, taper)).to.be.closeTo(delta, 0.001);
    });
  }

  it('costs less on a real, wide wing than on a lifting line, and comes nearer to it with length', () => {
    const share = (aspect: number) => turnedUp(wingOf({span: aspect, strips: 60, rows: 3}), aspect, aspect).delta / liftingLine(aspect, 1).delta;
    const shares = [4, 6, 10, 20, 40].map(share);
    expect(shares).to.deep.equal([...shares].sort((a, b) => a - b));
    expect(Math.min(...shares)).to.be.greaterThan(0);
    expect(Math.max(...shares)).to.be.within(0.7, 1);
  });
});

describe('drag of the far wake: wings with plates, and biplanes', () => {
  /** Span efficiency of the load with the least drag for its lift: Q Γ = λ dy. */
  function bestEfficiency(surfaces: readonly Surface[], span: number): number {
    const {strips} = layPanels(surfaces), n = strips.length;
    const drag = farWakeDrag(strips);
    const both = Float64Array.from(drag, (q, i) => q + (drag[i % n * n + Math.floor(i / n)] ?? 0));
    const solved = factorise(both, n);
    if (!solved.ok) throw new Error('no best load');
    return 1 / (1 + deltaOf(strips, solved.value(strips.map(({dy}) => dy)), span));
  }
  const plate = (from: number, to: number): Surface =>
    ({group: 0, strips: Math.round(Math.abs(to - from) * 60), rows: 1, freeTip: true, ribs: [{x: 0, y: 1, z: from, chord: 0.3}, {x: 0, y: 1, z: to, chord: 0.3}]});
  const joined = (height = 0) => ({...wingOf({span: 2, root: 0.3, strips: 60, rows: 1, freeTip: false, z: height})});

  it('has the best of an elliptic load on a plain wing', () => {
    expect(bestEfficiency([wingOf({span: 2, strips: 60, rows: 1})], 2)).to.be.closeTo(1, 0.003);
  });

  it('has 1.41 with plates of a fifth of the span, all on one side', () => {
    // Kroo, Nonplanar Wing Concepts, VKI 2005; from memory. Another program: 1.424.
    expect(bestEfficiency([joined(), plate(0, 0.4)], 2)).to.be.closeTo(1.41, 0.025).and.closeTo(1.424377, 0.01);
  });

  it('has Hoerner’s 1.38 with end plates of that height to both sides', () => {
    // Hoerner, Fluid-Dynamic Drag (1965), chapter 7: 1 + 1.9 h/b; from memory
    expect(bestEfficiency([joined(), plate(0, 0.2), plate(0, -0.2)], 2)).to.be.closeTo(1.38, 0.03);
  });

  it('has 1.36 as a biplane a fifth of the span apart', () => {
    // Kroo, as above
    const wing = (z: number) => wingOf({span: 2, root: 0.3, strips: 60, rows: 1, z});
    expect(bestEfficiency([wing(0), wing(0.4)], 2)).to.be.closeTo(1.36, 0.02);
  });

  it('turns end-plated wings up with less drag than plain ones', () => {
    const low = loadsOf([{...wingOf({span: 4, freeTip: false})}, {group: 0, strips: 6, rows: 4, freeTip: true, ribs: [{x: 0, y: 2, z: 0, chord: 1}, {x: 0, y: 2, z: 0.8, chord: 1}]}], 4, 4);
    const plain = loadsOf([wingOf({span: 4})], 4, 4);
    const factor = ({induced, lift}: typeof low) => (induced[0]?.[0] ?? NaN) / (lift[0] ?? NaN) ** 2;
    expect(low.lift[0]).to.be.greaterThan(plain.lift[0] ?? NaN);
    expect(factor(plain) / factor(low)).to.be.within(1.25, 1.44);
  });
});

describe('air behind a wing', () => {
  it('turns down behind a square-cut wing as another lattice has it', () => {
    // another program’s lattice, a cross-check: aspect ratio 5, in its plane, 2.5 chords behind the quarter chord, on the centre line: 0.473. A tail
    // narrow enough to feel one point of it:
    const {tailLift} = loadsOf([wingOf({span: 5}), wingOf({span: 0.4, root: 0.05, strips: 4, rows: 3, group: 1, x: 2.75 - 0.0125})], 5, 5);
    expect(1 - (tailLift[0] ?? NaN) / (tailLift[3] ?? NaN)).to.be.closeTo(0.473, 0.005);
  });

  it('turns down a little less far behind than behind an elliptic load of the same lift', () => {
    // Prandtl: dε/dα = 2a/πA behind an elliptic load; a square-cut wing’s load is fuller at the tips, and so its wake is weaker in the middle
    const {tailLift, lift} = loadsOf([wingOf({span: 5}), wingOf({span: 0.4, root: 0.05, strips: 4, rows: 3, group: 1, x: 50})], 5, 5);
    const far = 1 - (tailLift[0] ?? NaN) / (tailLift[3] ?? NaN);
    expect(far / (2 * (lift[0] ?? NaN) / (Math.PI * 5))).to.be.within(0.8, 1);
  });
});

describe('side derivatives', () => {
  it('rolls a wing with dihedral as another lattice and DATCOM have it', () => {
    // USAF DATCOM figure 5.1.2.1, from memory: −0.00022 per deg² at aspect ratio 6; another program’s lattice −0.731 per rad²
    const gamma = 0.05;
    const {side} = loadsOf([wingOf({span: 6, dihedral: gamma})], 6, 6);
    const perDihedral = side.sideslip.bare.roll / gamma;
    expect(perDihedral).to.be.closeTo(-0.731, 0.02 * 0.731);
    expect(perDihedral * deg * deg).to.be.closeTo(-0.00022, 0.000005);
  });

  it('stays below strip theory, which knows no neighbours', () => {
    // −(a/6)(1 + 2λ)/(1 + λ) with a = 4.2: −1.05 per rad² (Pamadi; Nelson; from memory), about 40 % too much
    const {side} = loadsOf([wingOf({span: 6, dihedral: 0.05})], 6, 6);
    expect(side.sideslip.bare.roll / 0.05 / -1.05).to.be.within(0.6, 0.8);
  });

  it('has the damping in roll of a lifting line, less what a wide wing loses', () => {
    // antisymmetric lifting line of an elliptic load: C_lp = −a₀/8 · A/(A + 4) ≈ −0.471 at aspect ratio 6 (Glauert; Etkin; from memory)
    const {side} = loadsOf([wingOf({span: 6})], 6, 6);
    expect(side.rolling.bare.roll).to.be.within(-0.471, -0.4);
  });

  it('has the classic quarter and eighth of the lift coefficient', () => {
    // elliptic load in strip theory: C_lr = C_L/4, C_np = −C_L/8 (Etkin and Reid, appendix B; from memory)
    const {side, lift} = loadsOf([wingOf({span: 6})], 6, 6);
    expect((side.yawing.perCause[0]?.roll ?? NaN) / (lift[0] ?? NaN)).to.be.closeTo(0.25, 0.03);
    expect((side.rolling.perCause[0]?.yaw ?? NaN) / (lift[0] ?? NaN)).to.be.closeTo(-0.125, 0.015);
  });
});
