import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {none} from './figures.mjs';

function count(suite, figures) {
  for (const test of suite?.tests ?? []) figures[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed']++;
  for (const inner of suite?.suites ?? []) count(inner, figures);
}

/**
 * The figures of one run. A file that failed outside its tests, or that holds none, counts as a failure: it would
 * otherwise pass unseen.
 */
export function figuresOf(sessions, say = console.error) {
  const figures = none();
  for (const {testFile, passed, testResults, browser} of sessions) {
    const own = none();
    count(testResults, own);
    if (own.failed === 0 && passed === false) own.failed++;
    if (own.passed + own.failed + own.skipped === 0) {
      own.failed++;
      say(`${path.relative(process.cwd(), testFile)} ran no test in ${browser.name}.`);
    }
    for (const kind of Object.keys(figures)) figures[kind] += own[kind];
  }
  return figures;
}

/** A reporter for @web/test-runner that writes its figures, as JSON, to the file that FIGURES_FILE names. */
export const browserFigures = (file = process.env.FIGURES_FILE) => ({
  onTestRunFinished({sessions}) {
    if (file) writeFileSync(file, JSON.stringify(figuresOf([...sessions])));
  },
});
