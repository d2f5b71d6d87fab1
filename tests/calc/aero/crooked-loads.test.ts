import {expect} from '@open-wc/testing';
import {crookedLoads, type CrookedLoads} from '../../../src/calc/aero/crooked-loads.js';
import {planeAero, type PlaneAero} from '../../../src/calc/aero/plane-aero.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {valueOf} from '../flight/planes.js';

const aeroOf = ({wing, tail, arrangement, board}: GliderDesign): PlaneAero => valueOf(planeAero(wing, tail, arrangement, board));
const loadsOf = (design: GliderDesign): CrookedLoads => valueOf(crookedLoads(aeroOf(design)));

describe('crooked boards in the lattice', () => {
  it('are turned fins as in a sideslip: pushed left behind, nose to the right', () => {
    const {fin} = loadsOf(defaultDesign), {sideslip} = aeroOf(defaultDesign).side;
    expect(fin.bare.force).to.be.within(1.05 * sideslip.bare.force, 0.75 * sideslip.bare.force);
    expect(fin.bare.yaw).to.be.greaterThan(0.9 * sideslip.bare.yaw);
    // without dihedral only the fins feel the wind from the side
    const flat = withValues(defaultDesign, {'wing.joints': []}), alone = aeroOf(flat).side.sideslip.bare;
    for (const part of ['force', 'roll', 'yaw'] as const) expect(loadsOf(flat).fin.bare[part], part).to.be.closeTo(alone[part], 1e-9);
  });

  it('do nothing where there is no fin', () => {
    const {fin} = loadsOf(withValues(defaultDesign, {'tail.fins.count': 0}));
    expect([fin.bare.force, fin.bare.roll, fin.bare.yaw].every((part) => Math.abs(part) < 1e-12)).to.equal(true);
  });

  it('lift the left half of a twisted wing and hold it back: it rolls right and yaws left, more so the more it lifts', () => {
    const flat = withValues(defaultDesign, {'wing.joints': []}), aero = aeroOf(flat), {twist} = loadsOf(flat);
    expect(twist.bare.roll).to.be.within(0.2, 0.6);
    // what ailerons do, from handbooks, between −0.2 and −0.4 with the suction held; a board loses most of it
    expect((twist.perCause[0]?.yaw ?? NaN) / ((aero.lift[0] ?? NaN) * twist.bare.roll)).to.be.within(-0.55, -0.15);
  });

  it('roll as the same lattice says of a wing that rolls, which meets the air at an angle that grows outwards', () => {
    // strip by strip the constant angle of ½ counts less outside and more inside than p y/V with 1 at the tip
    const flat = withValues(defaultDesign, {'wing.joints': []}), {side} = aeroOf(flat);
    expect(loadsOf(flat).twist.bare.roll / -side.rolling.bare.roll).to.be.within(0.6, 0.9);
  });
});
