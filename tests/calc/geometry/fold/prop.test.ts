import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  foldFromProp, grooveStop, placeForFold, propForFold, type Panel, type Prop, type PropWhere,
} from '../../../../src/calc/geometry/fold/index.js';
import {anyPanel, between, codesOf, deg, mm, numbersIn, problemsOf, valueOf} from './bench.js';

const closing: Panel = {length: 72 * mm, thickness: 5 * mm, face: 'closing'};
const opening: Panel = {...closing, face: 'opening'};
const angleOf = (panel: Panel, prop: Prop): number => valueOf(foldFromProp(panel, prop)).angle;

describe('the fold that a stack gives', () => {
  describe('closing', () => {
    it('is asin(h / L) with the panel’s own edge on the stack', () => {
      const fold = valueOf(foldFromProp(closing, {height: 10 * mm, where: 'edge'}));
      expect(fold.angle).to.be.closeTo(Math.asin(10 / 72), 1e-14);
      expect(fold.angle / deg).to.be.closeTo(7.98, 0.005);
      expect(fold.contactKind).to.equal('panel-edge-on-stack-top');
      expect(fold.contact.y).to.be.closeTo(10 * mm, 1e-15);
      expect(fold.contact.x).to.be.closeTo(Math.sqrt(72 ** 2 - 10 ** 2) * mm, 1e-15);
      expect(fold.alongPanel).to.equal(72 * mm);
      expect(fold.edgeRise).to.be.closeTo(10 * mm, 1e-15);
      expect(fold.stoppedByGroove).to.equal(false);
    });

    it('is asin(h / (L − e)) with the stack pushed in', () => {
      const fold = valueOf(foldFromProp(closing, {height: 10 * mm, where: 'inset', inset: 12 * mm}));
      expect(fold.angle).to.be.closeTo(Math.asin(10 / 60), 1e-14);
      expect(fold.contactKind).to.equal('stack-edge-under-panel');
      expect(fold.alongPanel).to.be.closeTo(60 * mm, 1e-15);
      expect(fold.edgeRise).to.be.closeTo(12 * mm, 1e-15);
    });

    it('is atan(h / x) with the contact measured on the bench', () => {
      const fold = valueOf(foldFromProp(closing, {height: 10 * mm, where: 'bench', fromCrease: 50 * mm}));
      expect(fold.angle).to.be.closeTo(Math.atan(10 / 50), 1e-14);
      expect(fold.contact.x).to.be.closeTo(50 * mm, 1e-15);
      expect(fold.contact.y).to.be.closeTo(10 * mm, 1e-15);
    });

    it('is 8.9° and not 6.4° for a 25 mm strip, 10 mm high, under a 90 mm panel, its outer face plumb below the edge', () => {
      const panel = {...closing, length: 90 * mm};
      const fold = valueOf(foldFromProp(panel, {height: 10 * mm, where: 'plumb', width: 25 * mm}));
      expect(fold.angle / deg).to.be.closeTo(8.9, 0.05);
      expect(angleOf(panel, {height: 10 * mm, where: 'edge'}) / deg).to.be.closeTo(6.4, 0.05);
      expect(90 * Math.sin(fold.angle) - 25 * Math.tan(fold.angle)).to.be.closeTo(10, 1e-12);
      expect(fold.edgeFromCrease - fold.contact.x).to.be.closeTo(25 * mm, 1e-15);
    });

    it('takes the flatter of the two folds that leave a stack plumb below the edge', () => {
      const prop = {where: 'plumb', width: 25 * mm} as const;
      const steep = 60 * deg, {height} = valueOf(propForFold(closing, steep, prop));
      const flat = angleOf(closing, {...prop, height});
      expect(flat).to.be.below(steep - 5 * deg);
      expect(72 * Math.sin(flat) - 25 * Math.tan(flat)).to.be.closeTo(height / mm, 1e-12);
    });
  });

  describe('opening', () => {
    const edge = (h: number): number => Math.asin((h - 5) / Math.hypot(72, 5)) + Math.atan(5 / 72);

    for (const height of [12, 10, 5, 4, 1, 0.01]) {
      it(`is asin((h − t) / √(L² + t²)) + atan(t / L) on a stack of ${String(height)} mm`, () => {
        const fold = valueOf(foldFromProp(opening, {height: height * mm, where: 'edge'}));
        expect(fold.angle).to.be.closeTo(edge(height), 1e-13);
        expect(fold.edgeRise).to.be.closeTo(height * mm, 1e-15);
      });
    }

    it('follows the same rule, from the crease to the contact, with the stack pushed in', () => {
      const s = 60;
      expect(angleOf(opening, {height: 10 * mm, where: 'inset', inset: 12 * mm}))
        .to.be.closeTo(Math.asin((10 - 5) / Math.hypot(s, 5)) + Math.atan(5 / s), 1e-13);
    });

    for (const height of [14, 10, 5, 2]) {
      it(`is asin(t / r) + atan2(h − t, x), r = √(x² + (h − t)²), on the bench with ${String(height)} mm`, () => {
        const fold = valueOf(foldFromProp(opening, {height: height * mm, where: 'bench', fromCrease: 50 * mm}));
        expect(fold.angle).to.be.closeTo(Math.asin(5 / Math.hypot(50, height - 5)) + Math.atan2(height - 5, 50), 1e-13);
        expect(fold.contact.x).to.be.closeTo(50 * mm, 1e-14);
      });
    }

    it('solves t (1 − cos f) + L sin f − w tan f = h for a stack plumb below the edge', () => {
      const f = angleOf(opening, {height: 10 * mm, where: 'plumb', width: 25 * mm});
      expect(5 * (1 - Math.cos(f)) + 72 * Math.sin(f) - 25 * Math.tan(f)).to.be.closeTo(10, 1e-12);
    });

    it('lets the corner of the cut stand on a low stack pushed into the cut', () => {
      const fold = valueOf(foldFromProp(opening, {height: 2 * mm, where: 'bench', fromCrease: 1 * mm}));
      expect(fold.contactKind).to.equal('panel-root-on-stack-top');
      expect(fold.angle).to.be.closeTo(Math.acos(1 - 2 / 5), 1e-13);
      expect(fold.alongPanel).to.equal(0);
    });

    it('gives nearly the closing fold on a thin board', () => {
      const thin: Panel = {...opening, thickness: 1e-6};
      expect(angleOf(thin, {height: 10 * mm, where: 'edge'})).to.be.closeTo(Math.asin(10 / 72), 1e-6);
    });
  });

  it('is nothing on a stack of no height, wherever it stands', () => {
    for (const panel of [closing, opening]) {
      for (const where of ['edge', 'inset', 'bench', 'plumb'] as const) {
        const {angle, edgeRise} = valueOf(foldFromProp(panel, {height: 0, where, inset: 5 * mm, fromCrease: 40 * mm, width: 20 * mm}));
        expect(angle).to.equal(0);
        expect(edgeRise).to.equal(0);
      }
    }
  });

  it('grows as a stack is pushed further in', () => {
    fc.assert(fc.property(anyPanel, between(0.05, 0.3), between(0, 0.5), between(0.01, 0.15), (panel, tall, inset, further) => {
      const at = (share: number): number => angleOf(panel, {height: tall * panel.length, where: 'inset', inset: share * panel.length});
      expect(at(inset + further)).to.be.above(at(inset));
    }));
  });

  it('stands at a right angle on the tallest stack its panel can lean on', () => {
    expect(angleOf(closing, {height: 72 * mm, where: 'edge'})).to.be.closeTo(90 * deg, 1e-7);
    expect(angleOf(opening, {height: 77 * mm, where: 'edge'})).to.be.closeTo(90 * deg, 1e-7);
  });
});

describe('a groove already cut', () => {
  const grooved: Panel = {...closing, groove: 0.5 * mm, flat: 48 * mm};

  it('stops a closing fold at 2 atan(w / 2t), and the flat panel leans up about its edge until the stack is reached', () => {
    const fold = valueOf(foldFromProp(grooved, {height: 10 * mm, where: 'edge'}));
    expect(fold.angle).to.be.closeTo(2 * Math.atan(0.5 / 10), 1e-14);
    expect(fold.stoppedByGroove).to.equal(true);
    // stiff as it is now, the board bridges from the flat panel's edge to the stack
    expect(48 * Math.sin(fold.tilt) + 72 * Math.sin(fold.tilt + fold.angle)).to.be.closeTo(10, 1e-12);
    expect(fold.contact.y).to.be.closeTo(10 * mm, 1e-15);
  });

  it('changes nothing while it is wide enough', () => {
    const wide = {...closing, groove: 2 * mm};
    expect(valueOf(foldFromProp(wide, {height: 10 * mm, where: 'edge'})))
      .to.include({angle: angleOf(closing, {height: 10 * mm, where: 'edge'}), stoppedByGroove: false, tilt: 0});
  });

  it('does not stop a fold that opens', () => {
    const prop: Prop = {height: 10 * mm, where: 'edge'};
    expect(angleOf({...opening, groove: 0.5 * mm}, prop)).to.equal(angleOf(opening, prop));
  });

  it('refuses a wanted fold beyond its stop', () => {
    const [problem] = problemsOf(propForFold(grooved, 8 * deg, {where: 'edge'}));
    expect(problem?.code).to.equal('fold-past-groove');
    expect(problem?.args?.['most']).to.be.closeTo(grooveStop(5 * mm, 0.5 * mm), 1e-15);
  });
});

describe('the stack that a fold needs', () => {
  it('is there and back the same, wherever it stands', () => {
    const place = fc.record({where: fc.constantFrom<PropWhere[]>('edge', 'inset', 'bench', 'plumb'), share: between(0.05, 0.6)});
    fc.assert(fc.property(anyPanel, between(0.2 * deg, 30 * deg), place, (panel, angle, {where, share}) => {
      const at = {where, inset: share * panel.length, fromCrease: share * panel.length, width: share * panel.length / 2};
      const stack = propForFold(panel, angle, at);
      fc.pre(stack.ok);
      const {height} = valueOf(stack);
      expect(height).to.be.above(0);
      const fold = valueOf(foldFromProp(panel, {...at, height}));
      if (where !== 'bench' || fold.alongPanel > 0) expect(fold.angle).to.be.closeTo(angle, 1e-9);
      expect(valueOf(propForFold(panel, fold.angle, at)).height).to.be.closeTo(height, 1e-12);
    }), {numRuns: 300});
  });

  it('is refused beyond the free edge and under the crease', () => {
    expect(codesOf(propForFold(closing, 20 * deg, {where: 'bench', fromCrease: 70 * mm}))).to.deep.equal(['prop-beyond-edge']);
    expect(codesOf(propForFold(closing, 80 * deg, {where: 'plumb', width: 25 * mm}))).to.deep.equal(['prop-past-crease']);
  });

  it('is refused for a fold that is none', () => {
    expect(codesOf(propForFold(closing, -0.1, {where: 'edge'}))).to.deep.equal(['fold-out-of-range']);
    expect(codesOf(propForFold(closing, 2, {where: 'edge'}))).to.deep.equal(['fold-out-of-range']);
    expect(codesOf(propForFold(closing, NaN, {where: 'edge'}))).to.deep.equal(['quantity-not-finite']);
  });
});

describe('where a block at hand must stand', () => {
  it('is h / sin f along a closing panel and h / tan f on the bench', () => {
    const {inset, fromCrease} = valueOf(placeForFold(closing, 12 * deg, 8 * mm));
    expect(72 * mm - inset).to.be.closeTo(8 * mm / Math.sin(12 * deg), 1e-15);
    expect(fromCrease).to.be.closeTo(8 * mm / Math.tan(12 * deg), 1e-15);
  });

  it('gives the fold back, told along the panel or on the bench', () => {
    fc.assert(fc.property(anyPanel, between(1 * deg, 60 * deg), between(0.05, 0.999), (panel, angle, share) => {
      const height = share * valueOf(propForFold(panel, angle, {where: 'edge'})).height;
      const place = placeForFold(panel, angle, height);
      fc.pre(place.ok);
      const {inset, fromCrease} = valueOf(place);
      expect(angleOf(panel, {height, where: 'inset', inset})).to.be.closeTo(angle, 1e-9);
      expect(angleOf(panel, {height, where: 'bench', fromCrease})).to.be.closeTo(angle, 1e-9);
    }));
  });

  it('is refused when even under the free edge the block is too tall, or so low that it would stand under the crease', () => {
    const [tall] = problemsOf(placeForFold(closing, 8 * deg, 30 * mm));
    expect(tall?.code).to.equal('prop-too-tall');
    expect(tall?.args?.['most']).to.be.closeTo(72 * mm * Math.sin(8 * deg), 1e-15);
    expect(codesOf(placeForFold(opening, 60 * deg, 0.1 * mm))).to.deep.equal(['prop-past-crease']);
    expect(codesOf(placeForFold(closing, 0, 10 * mm))).to.deep.equal(['prop-too-tall']);
  });
});

describe('a stack that cannot be', () => {
  const refusals: readonly (readonly [string, Panel, Prop, string])[] = [
    ['taller than its panel', closing, {height: 73 * mm, where: 'edge'}, 'prop-too-tall'],
    ['taller than what is left of the panel', closing, {height: 61 * mm, where: 'inset', inset: 12 * mm}, 'prop-too-tall'],
    ['taller than fits plumb below the edge', closing, {height: 40 * mm, where: 'plumb', width: 30 * mm}, 'prop-too-tall'],
    ['too tall where it stands', closing, {height: 60 * mm, where: 'bench', fromCrease: 50 * mm}, 'prop-too-tall'],
    ['out beyond the panel', closing, {height: 10 * mm, where: 'bench', fromCrease: 80 * mm}, 'prop-beyond-edge'],
    ['pushed in beyond the panel', closing, {height: 10 * mm, where: 'inset', inset: 72 * mm}, 'prop-inset-too-far'],
    ['as wide as the panel', closing, {height: 10 * mm, where: 'plumb', width: 72 * mm}, 'prop-past-crease'],
    ['under the crease', closing, {height: 10 * mm, where: 'bench', fromCrease: 0}, 'prop-past-crease'],
    ['beyond the crease', closing, {height: 10 * mm, where: 'bench', fromCrease: -5 * mm}, 'prop-past-crease'],
    ['so near a cut that the panel passes upright', opening, {height: 8 * mm, where: 'bench', fromCrease: 2 * mm}, 'prop-past-crease'],
    ['less than nothing high', closing, {height: -1 * mm, where: 'edge'}, 'length-not-positive'],
    ['pushed in by less than nothing', closing, {height: 1 * mm, where: 'inset', inset: -1 * mm}, 'length-not-positive'],
    ['without a place', closing, {height: 1 * mm, where: 'bench'}, 'quantity-not-finite'],
    ['without a width', closing, {height: 1 * mm, where: 'plumb'}, 'quantity-not-finite'],
    ['under a panel of no length', {...closing, length: 0}, {height: 1 * mm, where: 'edge'}, 'length-not-positive'],
    ['under a board of no thickness', {...closing, thickness: 0}, {height: 1 * mm, where: 'edge'}, 'length-not-positive'],
    ['of a height that is no number', closing, {height: NaN, where: 'edge'}, 'quantity-not-finite'],
    ['of a height beyond measure', closing, {height: 1e9, where: 'edge'}, 'quantity-too-big'],
  ];
  for (const [what, panel, prop, code] of refusals) {
    it(`is refused: ${what}`, () => {
      expect(codesOf(foldFromProp(panel, prop))).to.include(code);
    });
  }

  it('says how tall a stack may be', () => {
    const most = (prop: Prop, panel = closing): number => Number(problemsOf(foldFromProp(panel, prop))[0]?.args?.['most']);
    expect(most({height: 1, where: 'edge'})).to.be.closeTo(72 * mm, 1e-12);
    expect(most({height: 1, where: 'edge'}, opening)).to.be.closeTo(77 * mm, 1e-12);
    expect(most({height: 1, where: 'bench', fromCrease: 50 * mm})).to.be.closeTo(Math.sqrt(72 ** 2 - 50 ** 2) * mm, 1e-12);
    // an astroid: the longest ladder round a corner
    expect(most({height: 1, where: 'plumb', width: 30 * mm})).to.be.closeTo((72 ** (2 / 3) - 30 ** (2 / 3)) ** 1.5 * mm, 1e-12);
  });

  it('is taken just below the tallest and refused just above', () => {
    const tallest = (72 ** (2 / 3) - 30 ** (2 / 3)) ** 1.5 * mm, prop = {where: 'plumb', width: 30 * mm} as const;
    expect(foldFromProp(closing, {...prop, height: tallest * (1 - 1e-9)}).ok).to.equal(true);
    expect(foldFromProp(closing, {...prop, height: tallest * (1 + 1e-9)}).ok).to.equal(false);
  });

  it('never gives anything but finite numbers, and never throws, whatever the numbers', () => {
    const wild = fc.oneof(fc.double(), between(-0.1, 0.5), fc.constantFrom(0, 1e-12, 1e-300, 1e6, Number.MAX_VALUE));
    const prop = fc.record({
      height: wild, where: fc.constantFrom<PropWhere[]>('edge', 'inset', 'bench', 'plumb'), inset: wild, fromCrease: wild, width: wild,
    });
    const panel = fc.record({length: wild, thickness: wild, face: fc.constantFrom<Panel['face'][]>('closing', 'opening'), groove: wild});
    fc.assert(fc.property(panel, prop, wild, (board, stack, angle) => {
      for (const outcome of [foldFromProp(board, stack), propForFold(board, angle, stack), placeForFold(board, angle, stack.height)]) {
        if (outcome.ok) for (const number of numbersIn(outcome.value)) expect(number).to.satisfy(Number.isFinite);
        else expect(outcome.problems).to.not.have.length(0);
      }
    }), {numRuns: 2000});
  });
});
