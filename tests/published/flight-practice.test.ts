import {expect} from '@open-wc/testing';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';
import type {GliderDesign} from '../../src/calc/design/design.js';
import {angleFromEdges} from '../../src/calc/geometry/fold/index.js';
import {flightOf} from '../../src/calc/flight/flight.js';
import {flyingPlane, type FlyingPlane} from '../../src/calc/flight/flying-plane.js';

const inch = 0.0254;

/** Common practice, no source: a club's plane that is known to fly. Twin fins at the ends of its tailplane. */
const clubPlane = withValues(defaultDesign, {
  'wing.span': 30 * inch, 'wing.chord': 4 * inch, 'wing.joints': [], 'wing.creases': [{at: 2 * inch}],
  'tail.span': 9 * inch, 'tail.chord': 2.5 * inch, 'tail.fins.count': 2, 'tail.fins.height': 2.5 * inch, 'tail.fins.chord': 2.5 * inch,
  'body.length': 24 * inch, 'arrangement.wingAt': 5 * inch, 'arrangement.tailAt': 20 * inch,
  'measured.mass': 0.085, 'measured.balance': 1.5 * inch,
});

function plane(design: GliderDesign): FlyingPlane {
  const outcome = flyingPlane(design);
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

/** The tailplane's rear edge raised over its front edge. */
function raised(design: GliderDesign, rise: number): GliderDesign {
  const angle = angleFromEdges(design.tail.chord, 0, rise);
  if (!angle.ok) throw new Error(angle.problems.map(({code}) => code).join());
  return withValues(design, {'arrangement.tailIncidence': -angle.value});
}

describe('a club’s plane that is known to fly', () => {
  it('has its neutral point behind 2 inches, and a static margin above 5 % there', () => {
    expect(plane(clubPlane).neutralPoint).to.be.greaterThan(2 * inch);
    expect(plane(withValues(clubPlane, {'measured.balance': 2 * inch})).margin).to.be.greaterThan(0.05);
  });

  for (const mass of [0.065, 0.085, 0.11]) {
    it(`glides between 3.5 and 7 m/s at ${String(1000 * mass)} g with at most three slips of board under its tail`, () => {
      // three slips of board are 15 mm; half a millimetre of card is the smallest step
      const rises = Array.from({length: 31}, (_, i) => i * 0.5e-3);
      const speeds = rises.flatMap((rise) => {
        const flight = flightOf(raised(withValues(clubPlane, {'measured.mass': mass}), rise));
        return flight.ok && flight.value.trim.ok ? [{rise, speed: flight.value.trim.value.glide.speed}] : [];
      });
      console.log(`${String(1000 * mass)} g: ${speeds.map((each) => `${(1000 * each.rise).toFixed(1)} mm ${each.speed.toFixed(2)} m/s`).join(', ')}`);
      expect(speeds.some(({speed}) => speed >= 3.5 && speed <= 7)).to.equal(true);
    });
  }
});
