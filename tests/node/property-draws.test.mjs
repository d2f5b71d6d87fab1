import assert from 'node:assert/strict';
import {describe, it} from 'node:test';
import {patienceFor, propertyDraws, propertyDrawsServer} from '../../tools/property-draws.mjs';

describe('what property tests draw', () => {
  it('is the same each time unless asked otherwise', () => {
    assert.deepEqual(propertyDraws({}), propertyDraws({}));
    assert.deepEqual(propertyDraws({SEED: '-12', RUNS: '1000'}), {seed: -12, numRuns: 1000});
    const seeds = new Set(Array.from({length: 8}, () => propertyDraws({SEED: 'random'}).seed));
    assert.ok(seeds.size > 1);
    for (const seed of seeds) assert.equal(propertyDraws({SEED: String(seed)}).seed, seed);
  });

  it('is refused where it cannot be meant', () => {
    for (const SEED of ['now', '1.5', '4294967296', '0x10']) assert.throws(() => propertyDraws({SEED}), /SEED is/);
    for (const RUNS of ['0', '-3', 'many']) assert.throws(() => propertyDraws({RUNS}), /RUNS is/);
  });

  it('takes longer with more runs, never less', () => {
    assert.deepEqual(['1', '100', '1000'].map((RUNS) => patienceFor(propertyDraws({RUNS}))), [1, 1, 10]);
  });

  it('reaches every test that imports fast-check, while its own module gets the package', () => {
    const {resolveImport, serve} = propertyDrawsServer({seed: 7, numRuns: 3});
    const resolved = (source, path) => resolveImport({source, context: {path}});
    const served = resolved('fast-check', '/tests/some.test.ts');
    assert.equal(resolved('fast-check', served), undefined);
    assert.equal(resolved('lit', '/tests/some.test.ts'), undefined);
    assert.match(serve({path: served}).body, /configureGlobal\(\{"seed":7,"numRuns":3\}\)/);
    assert.equal(serve({path: '/tests/some.test.ts'}), undefined);
  });
});
