import {none} from './figures.mjs';

/** A reporter for `node --test` that ends in its figures, as JSON. */
export default async function* nodeFigures(events) {
  const figures = none();
  for await (const {type, data} of events) {
    if ((type !== 'test:pass' && type !== 'test:fail') || data.details?.type === 'suite') continue;
    if (data.skip !== undefined || data.todo !== undefined) figures.skipped++;
    else figures[type === 'test:pass' ? 'passed' : 'failed']++;
  }
  yield JSON.stringify(figures);
}
