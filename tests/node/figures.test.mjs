import assert from 'node:assert/strict';
import path from 'node:path';
import {describe, it} from 'node:test';
import {figuresOf} from '../../tools/browser-figures.mjs';
import {ending, sum} from '../../tools/figures.mjs';
import nodeFigures from '../../tools/node-figures.mjs';

const session = (tests, passed = tests.every((test) => test.passed || test.skipped)) =>
  ({testFile: 'tests/some.test.ts', browser: {name: 'Chrome'}, passed, testResults: {tests: [], suites: [{name: 'a wing', tests, suites: []}]}});
const silent = () => undefined;

describe('the figures of a run', () => {
  it('count every test of every file, and name those that failed', () => {
    const sessions = [session([{passed: true}, {name: 'bends\n  once', passed: false}]), session([{passed: true}, {skipped: true}])];
    assert.deepEqual(figuresOf(sessions, silent), {passed: 2, failed: 1, skipped: 1, names: ['Chrome, tests/some.test.ts: a wing > bends once']});
  });

  it('count a file that broke before its tests, and one without tests, as failures', () => {
    const said = [];
    const broken = {testFile: 'tests/broken.test.ts', browser: {name: 'Chrome'}, passed: false};
    assert.deepEqual(figuresOf([broken, session([])], (line) => said.push(line)), {
      passed: 0, failed: 2, skipped: 0, names: ['Chrome, tests/broken.test.ts: outside its tests', 'Chrome, tests/some.test.ts: ran no test'],
    });
    assert.deepEqual(said, ['tests/some.test.ts ran no test in Chrome.']);
  });

  it('of tests in Node name file, groups and test', async () => {
    const file = path.resolve('tests/node/some.test.mjs');
    async function* events() {
      yield {type: 'test:start', data: {nesting: 0, name: 'a wing'}};
      yield {type: 'test:start', data: {nesting: 1, name: 'holds'}};
      yield {type: 'test:pass', data: {nesting: 1, name: 'holds', file, details: {}}};
      yield {type: 'test:start', data: {nesting: 1, name: 'bends'}};
      yield {type: 'test:fail', data: {nesting: 1, name: 'bends', file, details: {}}};
      yield {type: 'test:fail', data: {nesting: 0, name: 'a wing', file, details: {type: 'suite'}}};
      yield {type: 'test:start', data: {nesting: 0, name: 'a tail'}};
      yield {type: 'test:fail', data: {nesting: 0, name: 'a tail', file, details: {}}};
      yield {type: 'test:fail', data: {nesting: 0, name: file, file, details: {}}};
      yield {type: 'test:fail', data: {nesting: 0, name: 'later', file, details: {}, todo: true}};
    }
    let written = '';
    for await (const part of nodeFigures(events())) written += part;
    assert.deepEqual(JSON.parse(written), {
      passed: 1, failed: 3, skipped: 1,
      names: ['a wing > bends', 'a tail', 'outside its tests'].map((name) => `Node, tests/node/some.test.mjs: ${name}`),
    });
  });

  it('add up to the names of what failed and one closing line', () => {
    assert.equal(ending(sum([{passed: 2, failed: 1, skipped: 0, names: ['a']}, {passed: 3, failed: 1, skipped: 0, names: ['b']}])), '\nfailed: a\nfailed: b\n5 passed, 2 failed');
    assert.equal(ending(sum([{passed: 2, failed: 0, skipped: 4, names: []}])), '\n2 passed, 0 failed, 4 skipped');
  });
});
