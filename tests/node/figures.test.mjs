import assert from 'node:assert/strict';
import {describe, it} from 'node:test';
import {figuresOf} from '../../tools/browser-figures.mjs';
import {closingLine, sum} from '../../tools/figures.mjs';

const session = (tests, passed = tests.every((test) => test.passed || test.skipped)) =>
  ({testFile: 'tests/some.test.ts', browser: {name: 'Chrome'}, passed, testResults: {tests: [], suites: [{tests, suites: []}]}});
const silent = () => undefined;

describe('the figures of a run', () => {
  it('count every test of every file', () => {
    const sessions = [session([{passed: true}, {passed: false}]), session([{passed: true}, {skipped: true}])];
    assert.deepEqual(figuresOf(sessions, silent), {passed: 2, failed: 1, skipped: 1});
  });

  it('count a file that broke before its tests, and one without tests, as failures', () => {
    const said = [];
    const broken = {testFile: 'tests/broken.test.ts', browser: {name: 'Chrome'}, passed: false};
    assert.deepEqual(figuresOf([broken, session([])], (line) => said.push(line)), {passed: 0, failed: 2, skipped: 0});
    assert.deepEqual(said, ['tests/some.test.ts ran no test in Chrome.']);
  });

  it('add up to one closing line', () => {
    assert.equal(closingLine(sum([{passed: 2, failed: 1, skipped: 0}, {passed: 3, failed: 0, skipped: 0}])), '5 passed, 1 failed');
    assert.equal(closingLine(sum([{passed: 2, failed: 0, skipped: 4}])), '2 passed, 0 failed, 4 skipped');
  });
});
