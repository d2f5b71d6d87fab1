import {good, type Outcome} from '../../problem.js';
import {integral, halfWing, type Station} from './station.js';

/**
 * Sweep in radians of the line at a share of the chord (0 the leading edge, ¼ the quarter-chord line), positive when it
 * runs back towards the tip. With several panels, the mean of their tangents weighted by area (common practice, no
 * source). Refused as {@link halfWing} says.
 */
export function sweepOf(stations: readonly Station[], share: number): Outcome<number> {
  const half = halfWing(stations);
  if (!half.ok) return half;
  let area = 0, setBack = 0;
  for (const panel of half.value.panels) {
    const {inner, outer, width} = panel;
    if (!width) continue;
    const panelArea = integral(panel, ({chord}) => chord, () => 1);
    area += panelArea;
    setBack += panelArea * (outer.back + share * outer.chord - inner.back - share * inner.chord) / width;
  }
  return good(Math.atan(setBack / area));
}
