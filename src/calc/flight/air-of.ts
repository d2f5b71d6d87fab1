import {airAt, usualAir, type Air} from '../aero/air.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';

const airIn = memo(({temperature, altitude}: GliderDesign['air']): Air => {
  if (temperature === usualAir.temperature && altitude === 0) return usualAir;
  const air = airAt(altitude, temperature);
  // the table of dimensions keeps both well within what the formulas hold for
  if (!air.ok) throw new RangeError('air beyond the table of dimensions');
  return air.value;
});

/** The air that a design is to fly in; the same object for the same values. */
export const airOf = ({air}: GliderDesign): Air => airIn(air);
