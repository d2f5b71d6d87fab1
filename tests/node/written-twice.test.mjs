import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {describe, it} from 'node:test';
import {elementsIn} from '../../tools/elements.mjs';

const read = (file) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');

describe('what is written in two places', () => {
  it('is one version', () => {
    const [, version] = /version = '([^']+)'/.exec(read('src/version.ts'));
    assert.equal(version, JSON.parse(read('package.json')).version);
  });

  it('is every element: its folder, and its line in the index', () => {
    const registered = [...read('src/index.ts').matchAll(/'\.\/components\/([^/]+)\/define\.js'/g)].map(([, name]) => name);
    assert.deepEqual(registered.sort(), elementsIn().map(({name}) => name));
  });
});
