import type {MeasureId} from '../../calc/flight-log/measures.js';

/** What a model expects of a version, SI, and how far it may be out. */
export interface Prediction {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

/** Predictions by the name of a version and by measure, where a page has a model of its own. */
export type Predictions = Readonly<Record<string, Readonly<Partial<Record<MeasureId, Prediction>>>>>;
