import type {FlightCheck} from '../../calc/flight/flight-check.js';
import type {Glide} from '../../calc/flight/glide.js';
import {unitFor, usualUnit} from '../../calc/units/kinds.js';
import type {FlightPlot, SinkAt} from '../../drawing/figures/flight-check.js';
import {commonWords} from '../../messages/en/common.js';
import {flightCheckWords} from '../../messages/en/flight-check.js';
import type {GliderElement} from '../base/element.js';
import {written} from './numbers.js';

export {drawFlightPlot} from '../../drawing/figures/flight-check.js';

const drawn = new WeakMap<FlightCheck, {readonly reader: string; readonly plot: FlightPlot | undefined}>();

/** The plot in the reader's unit; the same object for the same check and reader. Nothing where there is no glide at all. */
export function flightPlot(host: GliderElement, check: FlightCheck): FlightPlot | undefined {
  const {reader} = host;
  const kept = drawn.get(check);
  if (kept?.reader === reader) return kept.plot;
  const plot = plotOf(host, check);
  drawn.set(check, {reader, plot});
  return plot;
}

function plotOf(host: GliderElement, {flight, trim, measures}: FlightCheck): FlightPlot | undefined {
  if (!flight.ok) return undefined;
  const {plot} = host.say(flightCheckWords);
  const unit = usualUnit('speed', host.system);
  const si = unitFor(unit, 'speed')?.si ?? 1;
  const at = ({speed, sink}: Pick<Glide, 'speed' | 'sink'>): SinkAt => ({speed: speed / si, least: sink.least / si, usual: sink.usual / si, most: sink.most / si});
  const {polar, best, stall} = flight.value;
  const write = (value: number): string => written(host, {id: 'speed', kind: 'speed'}, value);
  const range = measures.find(({id}) => id === 'speed')?.value, sink = measures.find(({id}) => id === 'sink')?.value;
  return {
    polar: polar.map(at), best: at(best), stall: stall / si,
    here: trim.ok && range && sink ? {...at({speed: trim.value.glide.speed, sink}), slow: range.least / si, fast: range.most / si} : undefined,
    words: {
      speed: plot.speed(unit), sink: plot.sink(unit), stall: plot.stall, stallSpeed: write(stall),
      best: plot.best, bestRatio: plot.ratio(host.write(best.ratio.usual, 'count', {digits: 0})),
      throwAt: plot.throwAt, throwSpeed: trim.ok ? host.say(commonWords).about(write(trim.value.glide.speed)) : '',
      tick: (value) => host.write(value, 'count', {digits: value % 1 === 0 ? 0 : 1}),
    },
  };
}
