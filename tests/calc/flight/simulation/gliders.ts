import {defaultDesign, withValues} from '../../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../../src/calc/design/design.js';

/** The glider of the table with a weight in its nose and a slip under the rear of its tail: it glides. */
export const gliding: GliderDesign = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -0.02});
