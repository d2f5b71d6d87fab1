import {writeFileSync} from 'node:fs';

/** Adds up what a @web/test-runner session ran. */
function count(suite, figures) {
  for (const test of suite?.tests ?? []) figures[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed']++;
  for (const inner of suite?.suites ?? []) count(inner, figures);
}

/** The figures of one run: a file that never got as far as its tests counts as one failure. */
export function figuresOf(sessions) {
  const figures = {passed: 0, failed: 0, skipped: 0};
  for (const session of sessions) {
    const before = figures.failed;
    count(session.testResults, figures);
    if (session.passed === false && figures.failed === before) figures.failed++;
  }
  return figures;
}

/** A reporter for @web/test-runner that writes its figures, as JSON, to the file that WTR_FIGURES names. */
export const summaryFile = (file = process.env.WTR_FIGURES) => ({
  onTestRunFinished({sessions}) {
    if (file) writeFileSync(file, JSON.stringify(figuresOf(sessions)));
  },
});
