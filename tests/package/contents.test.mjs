import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {existsSync, readdirSync, readFileSync, statSync} from 'node:fs';
import path from 'node:path';
import {describe, it} from 'node:test';
import {consumer, elements, root} from './packed.mjs';

const {home, tarball} = consumer();
const files = readdirSync(home, {recursive: true}).filter((file) => statSync(path.join(home, file)).isFile());
const manifest = JSON.parse(readFileSync(path.join(home, 'custom-elements.json'), 'utf8'));
const declared = new Map(manifest.modules.flatMap(({path: module, declarations = []}) =>
  declarations.filter(({tagName}) => tagName).map((declaration) => [declaration.tagName, {...declaration, module}])));

const tool = (name, ...args) => {
  const {status, stdout, stderr} = spawnSync(process.execPath, [path.join(root, 'node_modules', name), ...args], {cwd: root, encoding: 'utf8'});
  return {status, said: stdout + stderr};
};

describe('what is in the packed package', () => {
  it('is what a page or a project needs, and no more', () => {
    const tops = new Set(files.map((file) => file.split(path.sep)[0]));
    assert.deepEqual([...tops].sort(), ['LICENSE', 'README.md', 'custom-elements.json', 'dist', 'package.json'].sort());
  });

  it('knows nothing of the machine on which it was built', () => {
    for (const file of files) assert.ok(!readFileSync(path.join(home, file), 'utf8').includes(root), `${file} names ${root}`);
  });

  it('has every element for pages without a build step, and all of them in one classic script', () => {
    for (const {tag} of elements) assert.ok(existsSync(path.join(home, `dist/cdn/${tag}.js`)), tag);
    assert.ok(existsSync(path.join(home, 'dist/cdn/all.js')));
    assert.doesNotMatch(readFileSync(path.join(home, 'dist/classic/glider-elements.js'), 'utf8'), /\bimport\(|^import |^export /m);
  });

  it('passes publint and the check of types for every resolution', () => {
    const lint = tool('publint/src/cli.js', '--strict', tarball);
    assert.equal(lint.status, 0, lint.said);
    const types = tool('@arethetypeswrong/cli/dist/index.js', tarball, '--profile', 'esm-only');
    assert.equal(types.status, 0, types.said);
  });
});

describe('custom-elements.json', () => {
  it('names every element, the module that holds it and what it is for', () => {
    assert.deepEqual([...declared.keys()].sort(), elements.map(({tag}) => tag));
    for (const [tag, {module, summary, description}] of declared) {
      assert.ok(existsSync(path.join(home, module)), `${tag}: ${module}`);
      assert.ok(summary ?? description, tag);
    }
  });

  it('gives every attribute, event and part a name and a description, and every property a type', () => {
    for (const [tag, {attributes = [], events = [], cssParts = [], members = []}] of declared) {
      assert.ok(attributes.length > 0, tag);
      for (const {name, description} of [...events, ...cssParts]) assert.ok(name && description, `${tag}: ${name}`);
      for (const {name, type, kind} of [...attributes, ...members]) assert.ok(name && (kind === 'method' || type?.text), `${tag}: ${name} has no type`);
    }
  });

  it('lists nothing private', () => {
    for (const [tag, {members = []}] of declared) assert.deepEqual(members.filter(({name}) => /^[#_]/.test(name)), [], tag);
  });
});
