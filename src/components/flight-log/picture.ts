import type {ThrowsPicture} from '../../drawing/figures/flight-log.js';
import {scaleFor} from '../../drawing/figures/flight-log.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import {shownIn, type LogFound} from './found.js';
import type {Prediction} from './prediction.js';
import {farUnit, writeMeasure} from './written.js';

export {drawThrows} from '../../drawing/figures/flight-log.js';

const shortened = (name: string, most: number): string => (name.length > most ? `${name.slice(0, most - 1)}…` : name);

export function throwsPicture(host: GliderElement, found: LogFound, predictions: ReadonlyMap<string, Prediction>): ThrowsPicture {
  const words = host.say(flightLogWords);
  const {measure} = found;
  const lanes = shownIn(found).map((told) => {
    const band = predictions.get(told.version.id);
    return {
      names: [40, 16, 8, 3].map((most) => words.laneShort({name: shortened(told.version.name, most), n: told.values.length})),
      mean: told.spread && words.laneMean(writeMeasure(host, measure.id, told.spread.mean)),
      dots: told.throws.flatMap((one) => { const value = measure.of(one); return value === undefined ? [] : {value, out: one.out}; }),
      average: told.spread?.mean, interval: told.interval, band: band && {from: band.least, to: band.most},
    };
  });
  // the scale is round in the reader's own unit
  const unit = measure.id === 'distance' && farUnit(host) === 'ft' ? 0.3048 : (measure.kind === 'speed' && host.system === 'inch') ? 0.3048 : 1;
  const values = lanes.flatMap(({dots, band}) => [...dots.map(({value}) => value), ...band ? [band.from, band.to] : []]).map((value) => value / unit);
  const {from, to, step} = scaleFor(values, measure.id === 'distance' || measure.id === 'time', 6);
  const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const count = Math.round((to - from) / step);
  const ticks = Array.from({length: count + 1}, (_, i) => from + i * step);
  const suffix = measure.id === 'distance' ? `\u00a0${farUnit(host)}` : measure.kind === 'time' ? '\u00a0s' : measure.kind === 'speed' ? `\u00a0${host.system === 'inch' ? 'ft/s' : 'm/s'}` : '';
  return {
    lanes, legend: words.legend,
    scale: {
      from: from * unit, to: to * unit,
      ticks: ticks.map((at, i) => ({at: at * unit, words: at.toFixed(places).replace('.', host.decimal) + (i === count ? suffix : '')})),
    },
  };
}
