import {expect} from '@open-wc/testing';
import {airAt, usualAir, type Air} from '../../src/calc/aero/air.js';

function air(altitude: number, temperature?: number): Air {
  const at = airAt(altitude, temperature);
  if (!at.ok) throw new Error(at.problems.map(({code}) => code).join());
  return at.value;
}

describe('the standard atmosphere', () => {
  it('weighs 1.225 kg/m³ at the sea', () => {
    // ISO 2533
    expect(air(0).density).to.be.closeTo(1.225, 1e-4);
  });

  it('thins with height', () => {
    // ratio at 2000 ft: Auld and Srinivas, Aerodynamics for Students (read); 1000 m: US Standard Atmosphere 1976 (from memory)
    expect(air(2000 * 0.3048).density / air(0).density).to.be.closeTo(0.9428, 2e-4);
    expect(air(1000).density).to.be.closeTo(1.1117, 3e-4);
  });

  it('has Sutherland’s viscosity', () => {
    // US Standard Atmosphere 1976; Matthews, Aeronautical Engineer’s Data Book, table 3.5 (read)
    expect(air(0).kinematicViscosity).to.be.closeTo(1.4607e-5, 0.001 * 1.4607e-5);
    // chord Reynolds number by definition: 5 m/s, 0.15 m
    expect(5 * 0.15 / air(0).kinematicViscosity).to.be.closeTo(51346, 51);
  });

  it('is an ideal gas when it is warm', () => {
    // R = 287.053: 1.2041 kg/m³ at 20 °C
    expect(air(0, 293.15).density).to.be.closeTo(1.2041, 5e-4);
    expect(usualAir).to.deep.equal(air(0, 293.15));
  });

  it('says when there is none', () => {
    for (const [altitude, temperature] of [[20_000, undefined], [-1000, undefined], [0, 0], [0, NaN], [NaN, 290], [0, 400]] as const) {
      const at = airAt(altitude, temperature);
      expect(at.ok ? [] : at.problems.map(({code}) => code)).to.deep.equal(['air-out-of-range']);
    }
  });
});
