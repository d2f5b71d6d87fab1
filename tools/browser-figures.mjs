import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {nameOf, none} from './figures.mjs';

function count(suite, figures, name, above = []) {
  for (const test of suite?.tests ?? []) {
    figures[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed']++;
    if (!test.skipped && !test.passed) figures.names.push(name(...above, test.name));
  }
  for (const inner of suite?.suites ?? []) count(inner, figures, name, [...above, inner.name]);
}

/**
 * The figures of one run. A file that failed outside its tests, or that holds none, counts as a failure: it would
 * otherwise pass unseen.
 */
export function figuresOf(sessions, say = console.error) {
  const figures = none();
  for (const {testFile, passed, testResults, browser} of sessions) {
    const own = none();
    const file = path.relative(process.cwd(), testFile);
    const name = (...titles) => nameOf(browser.name, file, titles);
    count(testResults, own, name);
    if (own.failed === 0 && passed === false) {
      own.failed++;
      own.names.push(name('outside its tests'));
    }
    if (own.passed + own.failed + own.skipped === 0) {
      own.failed++;
      own.names.push(name('ran no test'));
      say(`${file} ran no test in ${browser.name}.`);
    }
    for (const kind of ['passed', 'failed', 'skipped']) figures[kind] += own[kind];
    figures.names.push(...own.names);
  }
  return figures;
}

/** A reporter for @web/test-runner that writes its figures, as JSON, to the file that FIGURES_FILE names. */
export const browserFigures = (file = process.env.FIGURES_FILE) => ({
  onTestRunFinished({sessions}) {
    if (file) writeFileSync(file, JSON.stringify(figuresOf([...sessions])));
  },
});
