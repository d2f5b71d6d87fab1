import {expect} from '@open-wc/testing';
import {usualAir} from '../../src/calc/aero/air.js';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';
import {crookedPlane, straight, wholeFin} from '../../src/calc/flight/simulation/crooked.js';
import {airframeOf} from '../../src/calc/flight/simulation/plane-airframe.js';
import {followTurn, type TurnTrack} from '../../src/calc/flight/simulation/turning.js';
import {balancedWith, trimmedAt, valueOf} from '../calc/flight/planes.js';

const design = trimmedAt(5.5, balancedWith(0.2, withValues(defaultDesign, {'wing.joints': [{angle: 0.2, at: 0}]})));
const airframe = airframeOf(valueOf(crookedPlane(design, straight, usualAir)).plane, design.body, usualAir);

/** A turn without any force of the air to the side, as the handbooks take it: with a twisted wing, of a plane that rolls out of a bank. */
function coordinated(twist: number): TurnTrack {
  const made = valueOf(crookedPlane(design, {...straight, twist}, usualAir)), {glide} = made;
  return followTurn(
    {...made, lateral: {...made.lateral, yv: 0, yp: 0, yr: 0}, boards: {...made.boards, side: 0}}, airframe,
    {height: 90, wind: 0, speed: glide.speed, angle: -glide.angle, attack: glide.setting.attack}, {seconds: 30, tolerance: 1e-8},
  );
}

describe('a steady turn', () => {
  // Pilot’s Handbook of Aeronautical Knowledge, FAA-H-8083-25, chapter 5 (from memory): R = V²/(11.26 tan φ) ft and ω = 1091 tan φ/V degrees a second, V in knots
  const knot = 1852 / 3600, foot = 0.3048;

  it('is as wide and as fast as pilots reckon', () => {
    for (const twist of [0.006, 0.012]) {
      const {radius, bank, last, at} = coordinated(twist);
      const sink = at(last.time - 1).height - last.height, speed = Math.sqrt(last.speed ** 2 - sink ** 2) / knot;
      expect(radius / foot).to.be.closeTo(speed ** 2 / (11.26 * Math.tan(bank)), 0.03 * radius / foot);
      expect((last.heading - at(last.time - 1).heading) * 180 / Math.PI).to.be.closeTo(1091 * Math.tan(bank) / speed, 0.03 * 1091 * Math.tan(bank) / speed);
    }
  });

  it('loads the wing by one over cos φ', () => {
    // C. D. Perkins and R. E. Hage, Airplane Performance, Stability and Control (1949), turning performance (from memory); in a glide the weight’s part square to the way
    for (const twist of [0.006, 0.02, 0.05]) {
      const {last: {speed, attack, rate, bank, angle}} = coordinated(twist);
      const {lift} = airframe.loads(speed, attack, rate);
      const load = Math.cos(angle) / Math.cos(bank);
      // the bank is about the plane’s long axis, which is not quite along its way
      expect(lift / (airframe.mass * airframe.gravity)).to.be.closeTo(load, 0.03 * load);
    }
    expect(coordinated(0.05).bank).to.be.greaterThan(0.4);
  });
});

describe('a bent rear edge', () => {
  // H. Glauert’s flap effectiveness, as tabled in Abbott and von Doenhoff, Theory of Wing Sections, figure 99 (from memory)
  it('is worth the published share of the whole', () => {
    for (const [share, worth] of [[0.1, 0.4], [0.2, 0.55], [0.3, 0.66], [0.4, 0.75], [0.5, 0.82]] as const) expect(wholeFin(1, share)).to.be.closeTo(worth, 0.01);
  });
});
