/** Throws and versions of a design: kept as plain data, read from and written to tables and files, and compared fairly. Lengths in m, times in s. */
export {changesBetween, emptyLog, withChanges, withRows, withoutRows} from './log.js';
export type {FlightLog, LogChanges, Throw, UnreadRow, Version} from './log.js';
export {checkThrow, throwLimits} from './throw-check.js';
export {flownBy, measureOf, measures} from './measures.js';
export type {Flown, Measure, MeasureId} from './measures.js';
export {commonScatter, spreadOf} from './spread.js';
export type {Spread} from './spread.js';
export {compare, meanInterval} from './comparison.js';
export type {Comparison, Interval, StudentT} from './comparison.js';
export {throwsToSettle, throwsToShow} from './plan.js';
export type {MoreThrows, Scatters} from './plan.js';
export {differences} from './differences.js';
export type {Difference} from './differences.js';
export {unfairness} from './fairness.js';
export type {Unfairness} from './fairness.js';
export {readLogFile, writeLogFile} from './file.js';
export {merged, readIn} from './read-in.js';
export type {ReadIn, ReadInOptions} from './read-in.js';
