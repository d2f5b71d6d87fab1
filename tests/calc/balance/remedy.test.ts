import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {coins, massOf, washers} from '../../../shared/ballast.js';
import {pieceOf, wholePieces} from '../../../src/calc/balance/pieces.js';
import type {PlaneBalance} from '../../../src/calc/balance/plane-balance.js';
import {planeBalance} from '../../../src/calc/balance/plane-balance.js';
import {remedyOf, withMass, type Remedy} from '../../../src/calc/balance/remedy.js';
import {slideWing} from '../../../src/calc/balance/slide-wing.js';
import {takingOff} from '../../../src/calc/balance/take-off.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import {balanced, tailHeavyGlider} from './gliders.js';

const g = 1e-3, mm = 1e-3;
const codes = (outcome: ReturnType<typeof remedyOf> | ReturnType<typeof slideWing> | ReturnType<typeof wholePieces>) =>
  outcome.ok ? [] : outcome.problems.map(({code}) => code);

function remedied(design: GliderDesign): {plane: PlaneBalance; remedy: Remedy} {
  const plane = balanced(design);
  const remedy = remedyOf(plane, design);
  if (!remedy.ok || !remedy.value) throw new Error(`no remedy: ${codes(remedy).join()} ${plane.heavy}`);
  return {plane, remedy: remedy.value};
}

/** The design with one more weight, as if the reader had fitted it: worked out anew from all its masses. */
const fitted = (design: GliderDesign, mass: number, at: number): PlaneBalance =>
  balanced(withValues(design, {'ballast.masses': [...design.ballast.masses, {mass, at}]}));

describe('adding weight', () => {
  it('in the recommended mass lands on the middle of the target, the least on its edge', () => {
    fc.assert(fc.property(tailHeavyGlider, (design) => {
      const {remedy} = remedied(design);
      expect(remedy.end).to.equal('nose');
      const {middle, least, place} = remedy;
      const after = fitted(design, middle.mass, place);
      expect(after.heavy).to.equal('neither');
      expect(after.at).to.be.closeTo(after.target.middle, 1e-9);
      expect(middle.after.behindWing).to.be.closeTo(after.behindWing, 1e-9);
      expect(middle.after.mass).to.be.closeTo(after.mass, 1e-12);
      expect(middle.after.margin).to.be.closeTo((design.balance.marginLow + design.balance.marginHigh) / 2, 1e-9);
      expect(fitted(design, least.mass, place).at).to.be.closeTo(after.target.to, 1e-9);
      expect(least.mass).to.be.lessThan(middle.mass);
    }), {numRuns: 100});
  });

  it('moves the balance by so much for each gram', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 12 * g, at: 0.6}]});
    const {plane, remedy} = remedied(design);
    const moved = (fitted(design, 0.01 * g, remedy.place).at - plane.at) / (0.01 * g);
    expect(remedy.perMass).to.be.closeTo(moved, Math.abs(moved) * 1e-3);
    expect(remedy.perMass).to.be.lessThan(0);
  });

  it('goes to the tail of a nose-heavy plane', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 60 * g, at: 0.01}]});
    const {plane, remedy} = remedied(design);
    expect([plane.heavy, remedy.end, remedy.placeMoved]).to.deep.equal(['nose', 'tail', 'of-no-use']);
    expect(remedy.place).to.be.greaterThan(0.5);
    expect(fitted(design, remedy.middle.mass, remedy.place).at).to.be.closeTo(plane.target.middle, 1e-9);
  });

  it('is not asked of a plane that balances well', () => {
    const {remedy} = remedied(withValues(defaultDesign, {'ballast.masses': [{mass: 12 * g, at: 0.6}]}));
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 12 * g, at: 0.6}, {mass: remedy.middle.mass, at: remedy.place}]});
    const outcome = remedyOf(balanced(design), design);
    expect(outcome.ok && outcome.value).to.equal(undefined);
  });

  it('is refused beside the target, and for a plane that balances beyond its own ends', () => {
    const near = withValues(defaultDesign, {'measured.mass': 80 * g, 'measured.balance': 110 * mm, 'ballast.at': 0.18});
    expect(codes(remedyOf(balanced(near), near))).to.deep.equal(['weight-too-much']);
    const beyond = withValues(near, {'measured.balance': 0.6});
    expect(codes(remedyOf(balanced(beyond), beyond))).to.deep.equal(['balance-beyond-plane']);
  });

  it('is never less than nothing, at no place where it would make things worse, and refused where no end of the body is of use', () => {
    const found = {nose: 0, tail: 0, refused: 0};
    // wings at the very front, at the very rear, and gliders with hardly a tail
    for (let wingAt = 0; wingAt <= 0.2; wingAt += 0.002) {
      for (const values of [{'wing.span': 1, 'wing.chord': 0.16, 'wing.sweep': -0.04, 'tail.span': 0.15, 'tail.chord': 0.04, 'body.length': 0.4, 'arrangement.tailAt': 0.37}, {'body.length': 0.4, 'arrangement.tailAt': 0.38, 'measured.mass': 60 * g, 'measured.balance': -wingAt + 0.002}]) {
        const design = withValues(defaultDesign, {...values, 'arrangement.wingAt': wingAt}), plane = balanced(design), remedy = remedyOf(plane, design);
        if (!remedy.ok) {
          expect(codes(remedy)[0]).to.be.oneOf(['no-room-for-weight', 'weight-too-much']);
          found.refused++;
          continue;
        }
        if (!remedy.value) continue;
        const {end, least, middle, place} = remedy.value;
        found[end]++;
        expect(least.mass).to.be.greaterThan(0);
        expect(middle.mass).to.be.within(least.mass, plane.mass);
        expect(place).to.be.within(0, design.body.length);
        expect(balanced(withValues(design, {'ballast.masses': [{mass: middle.mass, at: place}]})).heavy).to.equal('neither');
      }
    }
    for (const count of Object.values(found)) expect(count).to.be.greaterThan(10);
  });

  it('says how large a ball of clay that is', () => {
    const {remedy} = remedied(withValues(defaultDesign, {'ballast.masses': [{mass: 12 * g, at: 0.6}]}));
    expect(Math.PI / 6 * remedy.clayBall ** 3 * 2000).to.be.closeTo(remedy.middle.mass, 1e-12);
  });
});

describe('whole coins and washers', () => {
  const piece = fc.constantFrom(...coins, ...washers);

  it('land on the target wherever they are put', () => {
    let landed = 0;
    fc.assert(fc.property(tailHeavyGlider, piece, (design, kind) => {
      const {plane, remedy} = remedied(design);
      const whole = wholePieces(plane, remedy, kind);
      if (!whole.ok) return;
      landed++;
      const {mass, place, count, exact} = whole.value;
      expect(mass).to.be.closeTo(count * massOf(kind), 1e-15);
      expect(Number.isInteger(count) && count >= 1).to.equal(true);
      // all of each piece is on the body
      expect(place - kind.diameter / 2).to.be.at.least(-1e-12);
      expect(place + kind.diameter / 2).to.be.at.most(plane.wingAt + 1e-12);
      const after = fitted(design, mass, place);
      expect(after.heavy).to.equal('neither');
      if (exact) expect(after.at).to.be.closeTo(after.target.middle, 1e-9);
    }), {numRuns: 200});
    expect(landed).to.be.greaterThan(100);
  });

  it('lie where a builder sticks them, as long as any number of them does it there', () => {
    let far = 0, near = 0;
    fc.assert(fc.property(tailHeavyGlider, piece, (design, kind) => {
      const {plane, remedy} = remedied(design);
      const whole = wholePieces(plane, remedy, kind);
      if (!whole.ok) return;
      const {from, to, middle} = plane.target, off = Math.abs(whole.value.place - remedy.place);
      const reachable = (at: number): boolean => at >= kind.diameter / 2 && at <= plane.wingAt - kind.diameter / 2;
      const handy = Array.from({length: 51}, (_, i) => remedy.place + (i - 25) * mm).filter(reachable);
      if (handy.length === 0) return;
      const landings = Array.from({length: 60}, (_, i) => handy.map((at) => withMass(plane, (i + 1) * massOf(kind), at).after.at)).flat();
      if (off > 25.001 * mm) {
        far++;
        // none comes well inside
        for (const at of landings) expect(at < from + 0.1 * (to - from) || at > to - 0.1 * (to - from)).to.equal(true);
      } else if (handy.length === 51) {
        near++;
        // none comes nearer to the middle, but for what a millimetre of place does
        const best = Math.min(...landings.map((at) => Math.abs(at - middle)));
        expect(Math.abs(whole.value.after.at - middle)).to.be.at.most(best + 1e-9);
      }
    }), {numRuns: 200});
    expect(Math.min(far, near)).to.be.greaterThan(3);
  });

  it('rather come a little beside the middle than lie far from the nose', () => {
    // 14 g asked for 15 mm behind the nose: two coins of 7 g there, where three would come out even only 83 mm behind it
    const design = withValues(defaultDesign, {'measured.mass': 80 * g, 'measured.balance': 80 * mm});
    const {plane, remedy} = remedied(design), kind = pieceOf('gbp-0.02');
    if (!kind) throw new Error('no such coin');
    const whole = wholePieces(plane, remedy, kind), three = wholePieces(plane, remedy, kind, 3);
    if (!whole.ok || !three.ok) throw new Error('none');
    expect([whole.value.count, whole.value.exact]).to.deep.equal([2, false]);
    expect(whole.value.place).to.be.closeTo(remedy.place, 5 * mm);
    expect(whole.value.after.at).to.be.closeTo(plane.target.middle, 2 * mm);
    expect([three.value.exact, Math.round(three.value.place / mm)]).to.deep.equal([true, 83]);
  });

  it('keep nearest to the usual place of all numbers that come out even', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 6 * g, at: 0.6}]});
    const {plane, remedy} = remedied(design);
    const kind = pieceOf('eur-0.05');
    if (!kind) throw new Error('no such coin');
    const whole = wholePieces(plane, remedy, kind);
    expect(whole.ok && whole.value.exact).to.equal(true);
    if (!whole.ok) return;
    for (const count of [whole.value.count - 1, whole.value.count + 1].filter((n) => n > 0)) {
      const other = wholePieces(plane, remedy, kind, count);
      if (other.ok && other.value.exact) {
        expect(Math.abs(other.value.place - remedy.place)).to.be.at.least(Math.abs(whole.value.place - remedy.place));
      }
    }
  });

  it('in a number of the reader’s own find their place, or say that they cannot', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 6 * g, at: 0.6}]});
    const {plane, remedy} = remedied(design);
    const cent = pieceOf('eur-0.01'), euros = pieceOf('eur-2');
    if (!cent || !euros) throw new Error('no such coin');
    expect(codes(wholePieces(plane, remedy, cent, 1))).to.deep.equal(['pieces-too-light']);
    expect(codes(wholePieces(plane, remedy, euros, 60))).to.deep.equal(['pieces-too-heavy']);
    const few = wholePieces(plane, remedy, euros, Math.ceil(remedy.middle.mass / massOf(euros)));
    expect(few.ok && fitted(design, few.value.mass, few.value.place).heavy).to.equal('neither');
  });
});

describe('sliding the wing', () => {
  it('lands on the middle of the target, which moves with the wing', () => {
    let slid = 0;
    fc.assert(fc.property(tailHeavyGlider, (drawn) => {
      // the body is cut already: its taper stays where it is
      const design = withValues(drawn, {'body.taperFrom': 0.35});
      const plane = balanced(design);
      if (plane.heavy !== 'tail') return;
      const slide = slideWing(plane, design);
      // refused only where it stays too heavy behind wherever the wing is
      for (let wingAt = 0.02; !slide.ok && wingAt < 0.4; wingAt += 0.02) {
        const there = planeBalance(withValues(design, {'arrangement.wingAt': wingAt}));
        if (there.ok) expect(there.value.at).to.be.greaterThan(there.value.target.middle);
      }
      if (!slide.ok) return;
      slid++;
      const moved = balanced(withValues(design, {'arrangement.wingAt': slide.value.wingAt}));
      expect(moved.at).to.be.closeTo(moved.target.middle, 1e-8);
      expect(moved.behindWing).to.be.closeTo(slide.value.after.behindWing, 1e-8);
      expect(slide.value.by).to.be.greaterThan(0);
    }), {numRuns: 100});
    expect(slid).to.be.greaterThan(50);
  });

  it('is found far back, where the handbook, out by what it is at the first place, sees none', () => {
    const design = withValues(defaultDesign, {
      'wing.span': 450 * mm, 'wing.chord': 84 * mm, 'wing.tipChord': 107 * mm, 'wing.creases': [], 'wing.joints': [], 'wing.weighed': 35.5 * g,
      'body.length': 693 * mm, 'body.tailHeight': 10 * mm, 'body.taperFrom': 350 * mm, 'body.layers': 1, 'board.sheetMass': 80 * g,
      'tail.span': 300 * mm, 'tail.chord': 80 * mm, 'tail.fins.count': 1, 'arrangement.wingAt': 120 * mm, 'arrangement.tailAt': 453 * mm,
      'ballast.masses': [{mass: 5.5 * g, at: 0}],
    });
    const slide = slideWing(balanced(design), design);
    if (!slide.ok) throw new Error(codes(slide).join());
    expect(slide.value.wingAt).to.be.greaterThan(0.3);
    const moved = balanced(withValues(design, {'arrangement.wingAt': slide.value.wingAt}));
    expect(moved.at).to.be.closeTo(moved.target.middle, 1e-8);
  });

  it('is not what dividing by the rest of the mass would say', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 36 * g, at: 0.015}]});
    const plane = balanced(design);
    const slide = slideWing(plane, design);
    if (!slide.ok) throw new Error(codes(slide).join());
    const divided = (plane.at - plane.target.middle) / (1 - plane.masses.onWing / plane.mass);
    expect(Math.abs(slide.value.by - divided)).to.be.greaterThan(1 * mm);
  });

  it('is refused where the wing would leave the body', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 100 * g, at: 0.6}]});
    expect(codes(slideWing(balanced(design), design))).to.deep.equal(['slide-off-body']);
  });
});

describe('taking something off', () => {
  it('names a fitted weight at the heavy end, and lands on the target', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 60 * g, at: 0.01}]});
    const [first] = takingOff(balanced(design), design);
    if (!first) throw new Error('nothing');
    expect(first.from).to.equal('weight');
    const after = balanced(withValues(design, {'ballast.masses': [{mass: 60 * g - first.mass, at: 0.01}]}));
    expect(after.at).to.be.closeTo(after.target.middle, 1e-9);
    expect(first.after.behindWing).to.be.closeTo(after.behindWing, 1e-9);
  });

  it('offers nothing where there is not enough to take', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 80 * g, at: 0.6}], 'tail.weighed': 12 * g});
    for (const {mass, of} of takingOff(balanced(design), design)) expect(mass).to.be.at.most(of);
    const measured = withValues(defaultDesign, {'measured.mass': 80 * g, 'measured.balance': 110 * mm});
    expect(takingOff(balanced(measured), measured)).to.deep.equal([]);
  });
});

describe('a plane whose balance cannot be told', () => {
  const problems = (values: Parameters<typeof withValues>[1]) => {
    const plane = planeBalance(withValues(defaultDesign, values));
    return plane.ok ? [] : plane.problems.map(({code}) => code);
  };

  it('gives its reason', () => {
    expect(problems({'arrangement.tailAt': 0.05})).to.deep.equal(['tail-in-wing']);
    expect(problems({'wing.creases': [{at: 0.2}]})).to.deep.equal(['crease-outside-chord']);
    expect(problems({'board.arealMass': 0, 'glue.bead': 0, 'glue.bands': 0, 'glue.tape': 0})).to.deep.equal(['plane-without-mass']);
  });
});
