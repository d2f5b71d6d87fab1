import {good, refused, type Outcome} from '../problem.js';

/** Still air. SI units; temperature in kelvin. */
export interface Air {
  readonly temperature: number;
  /** Pa. */
  readonly pressure: number;
  /** kg/m³. */
  readonly density: number;
  /** m²/s. */
  readonly kinematicViscosity: number;
}

/** m/s², ISO 80000-3. */
export const gravity = 9.80665;

/** J/(kg K), dry air. ISO 2533. */
const gasConstant = 287.05287;
const seaLevel = {temperature: 288.15, pressure: 101_325};
/** K/m, up to 11 km. */
const lapse = 0.0065;
const tropopause = 11_000;

/** The temperature of the standard atmosphere in K, up to 11 km of geopotential height. */
export const standardTemperature = (altitude: number): number => seaLevel.temperature - lapse * altitude;

/**
 * Dry air at a height above the sea and a temperature: the pressure of the standard atmosphere, p = p₀ (T/T₀)^(g/R L), the
 * density of an ideal gas at the temperature given, and Sutherland's viscosity. ISO 2533; US Standard Atmosphere 1976.
 *
 * Weather moves the pressure by about 3 % and moisture takes up to 1 % off the density; neither is counted. Refused:
 * 'air-out-of-range' {altitude, temperature} below −500 m, above 11 km, or outside 150 to 350 K.
 *
 * @param altitude m
 * @param temperature K; that of the standard atmosphere when left out
 */
export function airAt(altitude: number, temperature: number = standardTemperature(altitude)): Outcome<Air> {
  if (!(altitude >= -500 && altitude <= tropopause && temperature >= 150 && temperature <= 350)) {
    return refused({code: 'air-out-of-range', args: {altitude, temperature}});
  }
  return good(standardAir(altitude, temperature));
}

function standardAir(altitude: number, temperature: number): Air {
  const pressure = seaLevel.pressure * (standardTemperature(altitude) / seaLevel.temperature) ** (gravity / (gasConstant * lapse));
  const density = pressure / (gasConstant * temperature);
  const viscosity = 1.458e-6 * temperature ** 1.5 / (temperature + 110.4);
  return Object.freeze({temperature, pressure, density, kinematicViscosity: viscosity / density});
}

/** A school hall: sea level, 20 °C. */
export const usualAir: Air = standardAir(0, 293.15);
