import {expect} from '@open-wc/testing';
import {boardDrag, liftLimit} from '../../src/calc/aero/section/board-drag.js';
import {laminarFriction, mixedFriction, turbulentFriction} from '../../src/calc/aero/section/friction.js';
import {turnedUp, wingOf} from '../calc/aero/wings.js';

const deg = Math.PI / 180;

describe('skin friction', () => {
  it('is Blasius’ on a laminar plate', () => {
    // 1.328/√Re, one side, at 5·10⁴; both sides at 3.1·10⁶: Anderson, Fundamentals of Aerodynamics, example 4.7 (read)
    expect(laminarFriction(5e4)).to.be.closeTo(0.005939, 0.001 * 0.005939);
    expect(2 * laminarFriction(3.1e6)).to.be.closeTo(0.001508, 0.000002);
  });

  it('is Prandtl and Schlichting’s on a turbulent plate', () => {
    // Schlichting, Boundary-Layer Theory; from memory: 0.00447 at 10⁶
    expect(turbulentFriction(1e6)).to.be.closeTo(0.00447, 0.00001);
  });

  it('is Anderson’s with transition on the way', () => {
    // example 4.9 (read): transition at 5·10⁵, turbulent law 0.074/Re^⅕, both sides 0.00632
    expect(2 * mixedFriction(3.1e6, 5e5, (reynolds) => 0.074 / reynolds ** 0.2)).to.be.closeTo(0.00632, 0.00001);
  });

  it('comes to Schlichting’s 1700/Re with transition at 5·10⁵', () => {
    // 0.00277 at 10⁶; from memory. His 1700 is rounded from the law itself.
    expect(mixedFriction(1e6, 5e5)).to.be.closeTo(0.00277, 0.0001);
  });
});

// Pelletier and Mueller, J. Aircraft 37 (2000), flat plates 2 % thick with shaped edges at Re 1.4·10⁵, read from their diagrams at second hand: bands
describe('measured flat plates, as bands', () => {
  it('rub the air with 0.015 ± 0.004, within the range that the model gives for thin edges', () => {
    const {least, most} = boardDrag({chord: 0.2, frontEdge: 0.001, rearEdge: 0.0005, square: false, folds: [], firstCrease: 1}, 1.4e5);
    expect(0.015).to.be.within(least, most);
    expect(least).to.be.greaterThan(0.015 - 0.004 - 0.0045);
    expect(most).to.be.lessThan(0.015 + 0.004 + 0.0015);
  });

  it('carry 0.25 ± 0.04 at 10° and aspect ratio 1', () => {
    expect(turnedUp(wingOf({span: 1}), 1, 1).lift * 10 * deg).to.be.closeTo(0.25, 0.04);
  });

  it('carry a little more than attached flow at 6° and aspect ratio 2: the vortices of the side edges, which the lattice has not', () => {
    const attached = turnedUp(wingOf({span: 2}), 2, 2).lift * 6 * deg;
    expect(0.30 - attached).to.be.within(0, 0.04 + 0.03);
  });

  it('carry 0.75 ± 0.08 at most, which is the band of the usable lift', () => {
    const {least, usual, most} = liftLimit(0);
    expect([least, usual, most]).to.deep.equal([0.75 - 0.08, 0.75, 0.75 + 0.08]);
  });
});
