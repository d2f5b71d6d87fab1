import path from 'node:path';
import {nameOf, none} from './figures.mjs';

/** A reporter for `node --test` that ends in its figures, as JSON. */
export default async function* nodeFigures(events) {
  const figures = none();
  const titles = [];
  for await (const {type, data} of events) {
    if (type === 'test:start') titles.splice(data.nesting, Infinity, data.name);
    if ((type !== 'test:pass' && type !== 'test:fail') || data.details?.type === 'suite') continue;
    if (data.skip !== undefined || data.todo !== undefined) figures.skipped++;
    else figures[type === 'test:pass' ? 'passed' : 'failed']++;
    const own = path.resolve(data.name) === data.file ? 'outside its tests' : data.name;
    if (type === 'test:fail' && data.skip === undefined && data.todo === undefined) {
      figures.names.push(nameOf('Node', path.relative(process.cwd(), data.file ?? ''), [...titles.slice(0, data.nesting), own]));
    }
  }
  yield JSON.stringify(figures);
}
