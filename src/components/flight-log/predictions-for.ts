import type {GliderElement} from '../base/element.js';
import {later} from '../base/later.js';
import {designOf, type LogFound, type Told} from './found.js';
import type {Prediction, Predictions} from './prediction.js';
import {spreadOf} from '../../calc/flight-log/spread.js';

const loadModel = () => import('./predicting.js');

const known = new WeakMap<LogFound, {readonly given: Predictions | undefined; readonly model: unknown; readonly of: ReadonlyMap<string, Prediction>}>();

/** The height that a version was let go at, on average; else the design's own. */
export const handHeight = (host: GliderElement, told: Told | undefined): number =>
  spreadOf(told?.counted.flatMap(({height}) => height ?? []) ?? [])?.mean ?? host.state.design.launch.height;

/** What is expected of each version, by its id: as the page says, else as the flight model does where the version's glider is known. */
export function predictionsFor(host: GliderElement, found: LogFound, given: Predictions | undefined): ReadonlyMap<string, Prediction> {
  const model = found.told.some(({version, spread}) => spread && designOf(version)) ? later(host, loadModel) : undefined;
  const before = known.get(found);
  if (before?.given === given && before?.model === model && before !== undefined) return before.of;
  const of = new Map(found.told.flatMap((told): [string, Prediction][] => {
    const {version} = told;
    const design = designOf(version);
    const expected = given?.[version.name]?.[found.measure.id] ?? (design && told.spread ? model?.predicted(design, found.measure.id, handHeight(host, told)) : undefined);
    return expected && [expected.least, expected.usual, expected.most].every(Number.isFinite) ? [[version.id, expected]] : [];
  }));
  known.set(found, {given, model, of});
  return of;
}
