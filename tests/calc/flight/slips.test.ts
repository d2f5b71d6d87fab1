import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {angleOfEdges} from '../../../src/calc/as-built/edges.js';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {angleOnSlips, setAt, shimStudy, slipsUnder, tailSettingFor, type ShimStudy, type SlipPlacing} from '../../../src/calc/flight/slips.js';
import {gliding} from './simulation/gliders.js';

const placing: SlipPlacing = {place: {width: 0.01}, overhang: 0};
const deg = Math.PI / 180;
/** A little heavier in the nose, so that a millimetre more under the tail is borne. */
const steady = withValues(gliding, {'ballast.masses': [{mass: 0.033, at: 0.015}]});

function there<T>(outcome: {readonly ok: true; readonly value: T} | {readonly ok: false; readonly problems: readonly {readonly code: string}[]}): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const speedAt = (design: GliderDesign, angle: number): number => there(there(flightOf(setAt(design, 'tail', angle))).trim).glide.speed;

const study = (...of: Parameters<typeof shimStudy>): ShimStudy => there(shimStudy(...of));

describe('slips under tail and wing', () => {
  it('touch with the upper edge nearest to the pivot: c sin d − w tan d = h', () => {
    const angle = there(angleOnSlips(0.078, 0.003, 'rear', placing));
    expect(angle).to.be.lessThan(0);
    expect(0.078 * Math.sin(-angle) - 0.01 * Math.tan(-angle)).to.be.closeTo(0.003, 1e-12);
    expect(there(angleOnSlips(0.078, 0.003, 'front', placing))).to.be.closeTo(-angle, 1e-15);
    expect(there(angleOnSlips(0.078, 0.003, 'rear', {place: {fromPivot: 0.06}, overhang: 0}))).to.be.closeTo(-Math.atan(3 / 60), 1e-15);
    expect(there(angleOnSlips(0.078, 0, 'rear', placing))).to.equal(0);
  });

  it('turn the board about the step that its other edge overhangs', () => {
    const angle = there(angleOnSlips(0.078, 0.003, 'rear', {place: {width: 0.01}, overhang: 0.018}));
    expect(0.06 * Math.sin(-angle) - 0.01 * Math.tan(-angle)).to.be.closeTo(0.003, 1e-12);
  });

  it('follow from an angle as the angle follows from them', () => {
    fc.assert(fc.property(fc.double({min: -8, max: 8, noNaN: true}), fc.double({min: 2e-3, max: 2e-2, noNaN: true}), (degrees, width) => {
      const how: SlipPlacing = {place: {width}, overhang: 0};
      const {height, raised, rise} = there(slipsUnder(withValues(gliding, {'arrangement.tailIncidence': degrees * deg}), 'tail', how));
      if (raised === undefined) return;
      expect(there(angleOnSlips(0.078, height, raised, how))).to.be.closeTo(degrees * deg, 1e-9);
      const [front, rear] = raised === 'front' ? [rise, 0] : [0, rise];
      expect(there(angleOfEdges(0.078, front, rear, 'built.tailRear'))).to.be.closeTo(degrees * deg, 1e-12);
    }));
  });

  it('are built of whole sheets to within half a sheet of paper', () => {
    const {height, stack, stackAngle, angle} = there(slipsUnder(withValues(gliding, {'arrangement.tailIncidence': -5 * deg}), 'tail', placing));
    expect(Math.abs(stack.height - height)).to.be.at.most(0.5e-4 + 1e-12);
    expect(Math.abs(stackAngle - angle)).to.be.lessThan(0.06 * deg);
  });

  it('under the rear edge of the tail make the plane slower, under its front edge faster', () => {
    const speed = (tail: number): number => {
      const {trim} = study(withValues(gliding, {'arrangement.tailIncidence': tail * deg}), 'tail', placing);
      return there(trim).glide.speed;
    };
    expect(speed(-1.4)).to.be.lessThan(speed(-1.2));
    expect(speed(-0.6)).to.be.greaterThan(speed(-1.2));
  });

  it('count by their difference: wing and tail turned alike fly nearly alike', () => {
    const both = withValues(gliding, {'arrangement.tailIncidence': gliding.arrangement.tailIncidence + deg, 'arrangement.wingIncidence': deg});
    const a = study(gliding, 'tail', placing), b = study(both, 'wing', placing);
    expect(b.difference).to.be.closeTo(a.difference, 1e-12);
    expect(there(b.trim).glide.speed).to.be.closeTo(there(a.trim).glide.speed, 0.02 * there(a.trim).glide.speed);
    expect(b.now.raised).to.equal('front');
  });

  it('fly with whole pieces as the plane at the angle that these give', () => {
    const {planned, slips} = study(withValues(gliding, {'arrangement.tailIncidence': -1.26 * deg}), 'tail', placing);
    expect(slips?.angle).to.equal(planned.stackAngle);
    expect(slips?.angle).to.not.equal(planned.angle);
    expect(slips && there(slips.trim).glide.speed).to.equal(speedAt(gliding, slips?.angle ?? NaN));
  });

  it('are no matter where the edges were measured: these count, and what brings them to the plan', () => {
    fc.assert(fc.property(fc.integer({min: -30, max: 60}), fc.integer({min: -40, max: 20}), fc.integer({min: -10, max: 10}), (tenths, degrees, front) => {
      const rear = front + tenths;
      const built = withValues(gliding, {'arrangement.tailIncidence': degrees / 10 * deg, 'built.tailFront': front / 1e4, 'built.tailRear': rear / 1e4});
      const {measured, now, planned, tail, trim, slips} = study(built, 'tail', placing);
      const angle = there(angleOfEdges(0.078, front / 1e4, rear / 1e4, 'built.tailRear'));
      expect(measured).to.equal(true);
      expect([now.angle, tail]).to.deep.equal([angle, angle]);
      expect(planned.angle).to.equal(built.arrangement.tailIncidence);
      if (trim.ok) expect(trim.value.glide.speed).to.be.closeTo(speedAt(gliding, angle), 1e-9);
      // with what is laid under or taken out it stands as planned, to half a sheet of paper
      expect(Math.abs((slips?.angle ?? now.angle) - planned.angle)).to.be.lessThan(0.05 * deg);
      if (slips?.trim.ok) expect(slips.trim.value.glide.speed).to.be.closeTo(speedAt(gliding, slips.angle), 1e-9);
    }));
  });

  it('come out under one edge before they come under the other, and add to what lies there', () => {
    const slipsFor = (planned: number, rear: number): unknown => {
      const {slips} = study(withValues(gliding, {'arrangement.tailIncidence': planned * deg, 'built.tailFront': 0, 'built.tailRear': rear / 1e3}), 'tail', placing);
      return slips && `${slips.how} ${slips.edge}`;
    };
    expect(slipsFor(-3, 2)).to.equal('more rear');
    expect(slipsFor(-1, 3)).to.equal('less rear');
    expect(slipsFor(0, 2)).to.equal('less rear');
    expect(slipsFor(1, -2)).to.equal('less front');
    expect(slipsFor(2, -1)).to.equal('more front');
    expect(slipsFor(-1, -2)).to.equal('in-all rear');
    expect(slipsFor(-Math.asin(2 / 78) / deg, 2)).to.equal(undefined);
  });

  it('a little higher raise their edge by more than themselves, and fly as a plane set so', () => {
    const {now, planned: {stack, stackAngle}, step, trim} = study(steady, 'tail', placing);
    const more = there(angleOnSlips(0.078, stack.height + 1e-3, 'rear', placing));
    expect(step?.rise).to.be.closeTo(0.078 * (Math.sin(-more) - Math.sin(-stackAngle)), 1e-12);
    expect(step?.rise).to.be.greaterThan(1e-3);
    expect(step && there(step.more).glide.speed).to.equal(speedAt(steady, more));
    expect(speedAt(steady, more)).to.be.lessThan(there(trim).glide.speed);
    expect(study(steady, 'tail', placing, 1.2 * now.height).step?.less).to.equal(undefined);
  });

  it('are told apart from a balance that lies outside its target', () => {
    expect(study(steady, 'tail', placing).first).to.equal(undefined);
    const behind = study(defaultDesign, 'tail', placing).first, ahead = study(withValues(gliding, {'ballast.masses': [{mass: 0.06, at: 0.015}]}), 'tail', placing).first;
    expect([behind?.heavy, ahead?.heavy]).to.deep.equal(['tail', 'nose']);
    for (const one of [behind, ahead]) expect(one?.outside).to.be.greaterThan(0.01);
  });

  it('are found for a wanted speed, which the plane then flies at', () => {
    const {tailIncidence} = there(tailSettingFor(gliding, 7.5));
    const flight = there(flightOf(withValues(gliding, {'arrangement.tailIncidence': tailIncidence})));
    expect(there(flight.trim).glide.speed).to.be.closeTo(7.5, 0.01);
    const tooSlow = tailSettingFor(gliding, 1);
    expect(tooSlow.ok ? undefined : tooSlow.problems[0]?.code).to.equal('speed-below-stall');
  });

  it('refuse what cannot lie there', () => {
    expect(angleOnSlips(0.078, 0.2, 'rear', placing).ok).to.equal(false);
    expect(angleOnSlips(0.078, 0.003, 'rear', {place: {width: 0.2}, overhang: 0}).ok).to.equal(false);
    expect(angleOnSlips(0.078, 0.003, 'rear', {place: {width: 0.01}, overhang: 0.2}).ok).to.equal(false);
    expect(shimStudy(gliding, 'tail', {place: {width: 0.2}, overhang: 0}).ok).to.equal(false);
    expect(angleOnSlips(NaN, 0.003, 'rear', placing).ok).to.equal(false);
  });
});
