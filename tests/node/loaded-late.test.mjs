// No element brings the flight model along: what needs it is loaded when it is needed, and the page answers before.
import assert from 'node:assert/strict';
import {readdirSync} from 'node:fs';
import test from 'node:test';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const elements = readdirSync(`${root}/src/components`).filter((name) => name !== 'base');
const model = 'src/calc/flight/flight.ts';

/** The modules that are there at once with a module, and the way to each. */
function atOnce(start, inputs) {
  const ways = new Map([[start, [start]]]);
  for (const [file, way] of ways) {
    for (const {path, kind, external} of inputs[file]?.imports ?? []) {
      if (kind === 'import-statement' && !external && !ways.has(path)) ways.set(path, [...way, path]);
    }
  }
  return ways;
}

test('no element brings the flight model along', async () => {
  const {metafile: {inputs}} = await build({
    entryPoints: elements.map((name) => `src/components/${name}/define.ts`), absWorkingDir: root, bundle: true, splitting: true, packages: 'external', format: 'esm', target: 'es2022',
    outdir: 'nowhere', write: false, metafile: true, logLevel: 'error',
  });
  assert.ok(inputs[model], 'nothing loads it at all');
  for (const name of elements) {
    const way = atOnce(`src/components/${name}/define.ts`, inputs).get(model);
    assert.equal(way, undefined, `${name}: ${way?.join(' -> ')}`);
  }
});
