import {expect} from '@open-wc/testing';
import {defaultDesign, withValues, type GliderDesign} from '../../../src/calc/design/design.js';
import {callsOf, finestSlip, tailCall} from '../../../src/calc/flight/calls.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {balancedWith, flight, trimmedAt} from './planes.js';

/** With the tail's rear edge so much higher. */
const raised = (design: GliderDesign, rise: number): GliderDesign =>
  withValues(design, {'arrangement.tailIncidence': Math.asin(Math.sin(design.arrangement.tailIncidence) - rise / design.tail.chord)});

describe('a plane that weighs more and more', () => {
  it('is told of a setting of its tail that it flies with, until it is too heavy to be thrown at all', () => {
    const heard: string[] = [];
    for (let mass = 0.1; mass < 0.6; mass += 0.02) {
      for (const margin of [0.2, 0.28]) {
        const design = withValues(defaultDesign, {'measured.mass': mass, 'measured.balance': balancedWith(margin).measured.balance}), found = flightOf(design);
        heard.push(found.ok ? 'flies' : found.problems.map(({code}) => code).join());
        if (!found.ok) continue;
        const set = flight(withValues(design, {'arrangement.tailIncidence': found.value.advised.setting.tailIncidence}));
        expect(set.trim.ok, `${String(mass)} ${String(margin)}`).to.equal(true);
        expect(tailCall(set)).to.equal(undefined);
      }
    }
    expect(heard.join(' ')).to.match(/^(flies ){30,}(too-heavy-to-throw ?)+$/);
  });
});

describe('what a glide that asks for another speed wants of the tail', () => {
  it('is a setting that asks for none any more', () => {
    const asking = [5, 5.3, 7.2, 8, 9].map((speed) => trimmedAt(speed));
    for (const design of asking) {
      const found = flight(design), call = tailCall(found);
      expect(call && [...callsOf(found)]).to.deep.equal([call?.speed]);
      expect(Math.sign(call?.rise ?? NaN)).to.equal(call?.speed === 'slower' ? 1 : -1);
      const after = flight(raised(design, call?.rise ?? NaN));
      expect([...callsOf(after)]).to.deep.equal([]);
      expect(tailCall(after)).to.equal(undefined);
    }
  });

  it('is nothing for a plane that asks for none, even if it could glide flatter', () => {
    for (const speed of [5.5, 6, 6.9]) expect(tailCall(flight(trimmedAt(speed))), String(speed)).to.equal(undefined);
  });

  it('is nothing that would bring a heavy plane too close to its stall, however fast it flies', () => {
    const heavy = balancedWith(0.2, undefined, 0.2), {advised} = flight(trimmedAt(9, heavy));
    expect(advised.speed).to.be.greaterThan(7);
    for (const share of [1, 1.005, 1.02]) {
      const found = flight(trimmedAt(share * advised.speed, heavy));
      expect(Math.abs(tailCall(found)?.rise ?? Infinity), String(share)).to.be.greaterThan(finestSlip);
      expect(tailCall(found)?.speed).to.be.oneOf([undefined, 'slower']);
    }
    expect(tailCall(flight(trimmedAt(0.92 * advised.speed, heavy)))?.speed).not.to.equal('slower');
  });
});
