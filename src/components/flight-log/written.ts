import type {MeasureId} from '../../calc/flight-log/measures.js';
import type {ThrowNumber} from '../../calc/flight-log/throw-check.js';
import type {Problem} from '../../calc/problem.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';

/** Throws are measured in metres or feet, whatever planes are measured in. */
export const farUnit = (host: GliderElement): 'm' | 'ft' => (host.system === 'inch' ? 'ft' : 'm');

const far = (host: GliderElement, value: number, digits: number): string => host.write(value, 'length', {unit: farUnit(host), digits});

/** One number of a throw as it is written down: to the centimetre and the hundredth of a second. */
export const writeNumber = (host: GliderElement, name: ThrowNumber, value: number): string =>
  (name === 'time' ? host.write(value, 'time', {digits: 2}) : far(host, value, 2));

/** A measure as one compares by it; `fine` for differences and scatters. */
export function writeMeasure(host: GliderElement, id: MeasureId, value: number, fine = false): string {
  switch (id) {
    case 'distance': return far(host, value, fine ? 2 : 1);
    case 'time': return host.write(value, 'time', {digits: fine ? 2 : 1});
    case 'ratio': return host.write(value, 'count', {digits: fine ? 2 : 1});
    case 'sink': return host.write(value, 'speed', {digits: 2});
    case 'speed': return host.write(value, 'speed', {digits: fine ? 2 : 1});
  }
}

/** What is wrong with a throw, its lengths in the unit that throws are measured in. */
export function explainThrow(host: GliderElement, problem: Problem): string {
  if (problem.code !== 'throw-number-out-of-range') return explain(host, problem);
  const {path, args = {}} = problem;
  const limit = (value: string | number | undefined): string => (typeof value !== 'number' ? '' : path === 'time' ? host.write(value, 'time') : far(host, value, value < 1 ? 2 : 0));
  return explain(host, {...problem, args: {least: limit(args['least']), most: limit(args['most'])}});
}
