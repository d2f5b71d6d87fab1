import {expect} from '@open-wc/testing';
import {usualAir} from '../../../src/calc/aero/air.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {glideAt} from '../../../src/calc/flight/glide.js';
import {trimLine} from '../../../src/calc/flight/trim-line.js';
import {trimmedFor} from '../../../src/calc/flight/trimmed.js';
import {varieties} from '../aero/gliders.js';
import {balancedWith, planeOf, valueOf} from './planes.js';

const lifts = [0.1, 0.35, 0.6, 0.9];

describe('a plane trimmed for one lift after another', () => {
  for (const [name, design] of Object.entries(varieties)) {
    it(`glides as with that tail by itself: ${name}`, () => {
      const plane = planeOf(balancedWith(0.2, design)), line = trimLine(plane, usualAir);
      for (const lift of lifts) {
        const alone = glideAt(plane, trimmedFor(plane, lift, plane.built), usualAir), found = line.glide(lift);
        expect(found.speed).to.be.closeTo(alone.speed, 1e-9);
        expect(found.setting.tailIncidence).to.be.closeTo(alone.setting.tailIncidence, 1e-9);
        for (const end of ['least', 'usual', 'most'] as const) {
          expect(found.ratio[end]).to.be.closeTo(alone.ratio[end], 1e-9);
          expect(found.sink[end]).to.be.closeTo(alone.sink[end], 1e-9);
        }
        expect(found.dragOf.induced).to.be.closeTo(alone.dragOf.induced, 1e-12);
      }
    });
  }

  it('says the same of the usual glide alone', () => {
    const plane = planeOf(balancedWith(0.2)), line = trimLine(plane, usualAir);
    for (const lift of lifts) {
      const {angle, sink} = line.glide(lift), usual = line.usual(lift);
      expect(usual.angle).to.be.closeTo(angle, 1e-12);
      expect(usual.sink).to.be.closeTo(sink.usual, 1e-12);
    }
  });
});

describe('a change of mass', () => {
  it('solves nothing again: the same loads in the air, the same boards', () => {
    const before = valueOf(flightOf(balancedWith(0.2))).plane;
    const after = valueOf(flightOf(withValues(balancedWith(0.2), {'ballast.masses': [{mass: 0.002, at: 0.02}]}))).plane;
    expect(after.aero === before.aero).to.equal(true);
    expect(after.parasite === before.parasite).to.equal(true);
    expect(after.mass).to.be.greaterThan(before.mass);
    expect(flightOf(defaultDesign) === flightOf(defaultDesign)).to.equal(true);
  });
});
