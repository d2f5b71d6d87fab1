import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {withValues} from '../../../src/calc/design/design.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {angleOfEdges, angleOnSlips, shimStudy, slipsUnder, tailSettingFor, type ShimStudy, type SlipPlacing} from '../../../src/calc/flight/slips.js';
import {gliding} from './simulation/gliders.js';

const placing: SlipPlacing = {place: {width: 0.01}, overhang: 0};
const deg = Math.PI / 180;

function there<T>(outcome: {readonly ok: true; readonly value: T} | {readonly ok: false; readonly problems: readonly {readonly code: string}[]}): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const study = (...[design, surface, how]: Parameters<typeof shimStudy>): ShimStudy => there(shimStudy(design, surface, how));

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
      expect(there(angleOfEdges(0.078, front, rear))).to.be.closeTo(degrees * deg, 1e-12);
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
    expect(b.board.raised).to.equal('front');
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
    expect(angleOfEdges(0.078, 0, 0.5).ok).to.equal(false);
    expect(shimStudy(gliding, 'tail', {place: {width: 0.2}, overhang: 0}).ok).to.equal(false);
    expect(angleOnSlips(NaN, 0.003, 'rear', placing).ok).to.equal(false);
  });
});
