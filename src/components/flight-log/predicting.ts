import type {GliderDesign} from '../../calc/design/design.js';
import type {Range} from '../../calc/aero/range.js';
import {flightOf} from '../../calc/flight/flight.js';
import type {MeasureId} from '../../calc/flight-log/measures.js';

const inOrder = (a: number, usual: number, b: number): Range => ({least: Math.min(a, b), usual, most: Math.max(a, b)});

/**
 * What the flight model expects of a glider let go at its gliding speed from a height, m, in still air; undefined where it has no glide, or none that
 * ends anywhere.
 */
export function predicted(design: GliderDesign, id: MeasureId, height: number): Range | undefined {
  const flight = flightOf(design);
  if (!flight.ok || !flight.value.trim.ok) return undefined;
  const {glide: {ratio, sink}, speed} = flight.value.trim.value;
  const range = {
    distance: (): Range => inOrder(ratio.least * height, ratio.usual * height, ratio.most * height),
    time: (): Range => inOrder(height / sink.most, height / sink.usual, height / sink.least),
    ratio: (): Range => ratio, sink: (): Range => sink, speed: (): Range => speed,
  }[id]();
  return Object.values(range).every(Number.isFinite) ? range : undefined;
}
