import {expect} from '@open-wc/testing';
import {planeNeutralPoint} from '../../src/calc/aero/handbook/plane-neutral-point.js';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';
import {tailVolume} from '../../src/calc/geometry/planform/index.js';

describe('tail volume', () => {
  it('is tail area times arm over wing area times mean chord', () => {
    // by definition; Drela, Basic Aircraft Design Rules (2006), recommends 0.30 to 0.60 (read)
    expect(tailVolume({tailArea: 0.02, arm: 0.38, wingArea: 0.1, wingLength: 0.14})).to.be.closeTo(0.5429, 0.0005);
  });

  it('is that of a whole glider laid out with those areas and that arm', () => {
    // wing 0.1 m² with a chord of 0.14 m, tail 0.02 m², 0.38 m from quarter chord to quarter chord
    const chord = 0.14, tailChord = 0.08, wingAt = 0.1;
    const {wing, tail, arrangement, board} = withValues(defaultDesign, {
      'wing.chord': chord, 'wing.span': 0.1 / chord, 'wing.joints': [], 'tail.chord': tailChord, 'tail.span': 0.02 / tailChord,
      'arrangement.wingAt': wingAt, 'arrangement.tailAt': wingAt + chord / 4 + 0.38 - tailChord / 4,
    });
    const point = planeNeutralPoint(wing, tail, arrangement, board);
    expect(point.ok && point.value.tailVolume).to.be.closeTo(0.5429, 0.0005);
  });
});
