import {valueAt, type GliderDesign} from '../design/design.js';
import type {DimensionPath, DimensionValue} from '../design/dimensions.js';

type Values = Readonly<Partial<Record<DimensionPath, DimensionValue>>>;

const set = [
  {angle: 'arrangement.wingIncidence', chord: 'wing.chord', front: 'built.wingFront', rear: 'built.wingRear'},
  {angle: 'arrangement.tailIncidence', chord: 'tail.chord', front: 'built.tailFront', rear: 'built.tailRear'},
] as const;

/**
 * What goes along when slips are changed after the edges over them were measured: the rear edge moves as far as the planned angle does. Nothing where
 * the edges were not measured, or are measured anew in the same breath.
 */
export function carriedAlong(design: GliderDesign, values: Values): Values {
  const carried: Partial<Record<DimensionPath, DimensionValue>> = {};
  for (const {angle, chord, front, rear} of set) {
    const wanted = values[angle];
    const zf = valueAt(design, front), zr = valueAt(design, rear), c = valueAt(design, chord), planned = valueAt(design, angle);
    if (typeof wanted !== 'number' || wanted === planned || zf === undefined || zr === undefined || front in values || rear in values) continue;
    const now = Math.asin(Math.min(Math.max((zr - zf) / c, -1), 1));
    carried[rear] = zf + c * Math.sin(now - (wanted - planned));
  }
  return carried;
}

/** The measured heights over slips whose planned angle alone is to be changed: asked for along with it, they stay as they were measured. */
export function leftAsMeasured(design: GliderDesign, changed: readonly DimensionPath[]): Values {
  const over = set.filter(({angle, rear}) => changed.includes(angle) && !changed.includes(rear) && valueAt(design, rear) !== undefined);
  return Object.fromEntries(over.map(({rear}) => [rear, valueAt(design, rear)]));
}
