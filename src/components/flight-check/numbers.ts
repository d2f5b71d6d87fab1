import type {FlightCheck, Measure} from '../../calc/flight/flight-check.js';
import type {MeasureId} from '../../calc/flight/usual-ranges.js';
import type {WriteOptions} from '../../calc/units/write.js';
import {commonWords} from '../../messages/en/common.js';
import {flightCheckWords} from '../../messages/en/flight-check.js';
import type {GliderElement} from '../base/element.js';

/** Numbers that follow from lengths alone, and are as sure as they. */
const exact: ReadonlySet<MeasureId> = new Set<MeasureId>(['tailVolume']);
const ofMasses: ReadonlySet<MeasureId> = new Set<MeasureId>(['mass', 'wingLoading', 'cubeLoading', 'balance', 'finVolume']);

type Options = Readonly<Partial<Record<MeasureId, WriteOptions>>>;

/** As fine as each number is worth: its decimals, or its own unit. */
const common: Options = {
  staticMargin: {digits: 0}, tailVolume: {digits: 2}, finVolume: {digits: 3}, roll: {digits: 0}, speed: {digits: 1}, stallMargin: {digits: 1}, glideRatio: {digits: 0},
  sink: {digits: 1}, cubeLoading: {digits: 1},
};
const metric: Options = {...common, mass: {digits: 0}, balance: {digits: 0}, wingLoading: {unit: 'g/dm²', digits: 1}};
const inch: Options = {...common, mass: {digits: 1}, balance: {fraction: 8}, wingLoading: {digits: 1}, speed: {digits: 0}};

/** A number of the check as this reader reads it. */
export function written(host: GliderElement, {id, kind}: Pick<Measure, 'id' | 'kind'>, value: number, bare = false): string {
  if (id === 'reynolds') return thousands(Math.round(value / 1000) * 1000);
  // one speed over another is a plain number, not a percentage
  return host.write(value, id === 'stallMargin' ? 'count' : kind, {...(host.system === 'inch' ? inch : metric)[id], bare});
}

/** Three digits at a time, with a narrow gap that does not break. */
const thousands = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, '\u202f');

const between = (host: GliderElement, measure: Pick<Measure, 'id' | 'kind'>, from: number, to: number): string => {
  const [low, high] = [written(host, measure, from), written(host, measure, to)];
  return low === high ? low : host.say(flightCheckWords).range(written(host, measure, from, true), high);
};

/** The number, as a range where it is only known to one. */
export function valueOf(host: GliderElement, measure: Measure, {plane}: FlightCheck): string {
  const {id, value} = measure;
  const said = between(host, measure, value.least, value.most);
  const sure = exact.has(id) || (ofMasses.has(id) && plane.sure !== 'about');
  return sure ? said : host.say(commonWords).about(said);
}

/** The ends of the usual range, for a ruler. */
export const endsOf = (host: GliderElement, measure: Measure): readonly [string, string] => [written(host, measure, measure.from), written(host, measure, measure.to)];

/** The usual range and where it comes from, in words. */
export const usualOf = (host: GliderElement, measure: Measure): string =>
  host.say(flightCheckWords).usual[measure.source](between(host, measure, measure.from, measure.to));
