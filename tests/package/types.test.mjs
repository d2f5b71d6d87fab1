import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {describe, it} from 'node:test';
import {consumer, elements, entries, root} from './packed.mjs';

const {folder} = consumer();

/** A program that compiles only while every entry and every element has a type of its own, which `any` is not. */
const program = `
type Sure<T> = 0 extends 1 & T ? never : true;
${entries.map((entry, i) => `import * as entry${i} from '${entry}';
export const sure${i}: Sure<(typeof entry${i})[keyof typeof entry${i}]> = true;`).join('\n')}

${elements.map(({tag}, i) => `const element${i} = document.createElement('${tag}');
export const made${i}: Sure<typeof element${i}> = true;
export const node${i}: HTMLElement = element${i};
// @ts-expect-error -- it is no plain bag of properties
element${i}.noSuchProperty = 1;`).join('\n')}
`;

function compile(name, text, options) {
  writeFileSync(path.join(folder, `${name}.ts`), text);
  writeFileSync(path.join(folder, 'tsconfig.json'), JSON.stringify({
    compilerOptions: {strict: true, noEmit: true, target: 'es2022', lib: ['es2022', 'dom', 'dom.iterable'], types: [], skipLibCheck: false, ...options},
    files: [`${name}.ts`],
  }));
  const {status, stdout, stderr} = spawnSync(process.execPath, [path.join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], {encoding: 'utf8'});
  return {ok: status === 0, said: stdout + stderr};
}

describe('the types of the packed package', () => {
  for (const [name, options] of Object.entries({
    Node: {module: 'nodenext'},
    bundlers: {module: 'esnext', moduleResolution: 'bundler'},
  })) {
    it(`are found as ${name} resolve them, and are never any`, () => {
      const {ok, said} = compile('program', program, options);
      assert.ok(ok, said);
    });
  }

  it('would be missed: the same program without them does not compile', () => {
    const {ok, said} = compile('without', program.replaceAll("'glider-elements", "'glider-elements-without-types"), {module: 'nodenext'});
    assert.equal(ok, false);
    assert.match(said, /TS2307/);
  });
});
