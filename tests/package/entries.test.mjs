import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {describe, it} from 'node:test';
import {consumer, elements, entries} from './packed.mjs';

const {folder} = consumer();

/** What an entry exports and which elements it registers, in a Node that has nothing of a browser but a registry. */
function imported(entry) {
  const program = `
    const tags = [];
    globalThis.customElements = {get: () => undefined, define: (tag) => { tags.push(tag); }};
    const module = await import('${entry}');
    console.log(JSON.stringify({tags, names: Object.keys(module), classes: Object.values(module).filter((it) => /^class /.test(it)).map(({name}) => name)}));`;
  return JSON.parse(execFileSync(process.execPath, ['--input-type=module', '-e', program], {cwd: folder, encoding: 'utf8', stdio: 'pipe'}));
}

describe('the packed package in plain Node', () => {
  for (const entry of entries) {
    it(`imports ${entry} where there is no page`, () => {
      execFileSync(process.execPath, ['--input-type=module', '-e', `await import('${entry}')`], {cwd: folder, stdio: 'pipe'});
    });
  }

  it('registers every element by its main entry', () => {
    assert.deepEqual(imported('glider-elements').tags.sort(), elements.map(({tag}) => tag));
  });

  for (const {tag} of elements) {
    it(`registers ${tag}, and nothing else, by its own entry`, () => {
      assert.deepEqual(imported(`glider-elements/elements/${tag}`).tags, [tag]);
    });

    it(`gives the class of ${tag} without registering it`, () => {
      const {tags, classes} = imported(`glider-elements/elements/${tag}/class`);
      assert.deepEqual(tags, []);
      assert.equal(classes.length, 1);
    });
  }

  for (const [room, name] of [['', 'wingFold'], ['/flight', 'flightOf'], ['/flight-log', 'compare'], ['/sheet', 'SheetSearch']]) {
    it(`gives the calculations of glider-elements/calc${room} without an element`, () => {
      const {tags, names} = imported(`glider-elements/calc${room}`);
      assert.deepEqual(tags, []);
      assert.ok(names.includes(name));
    });
  }

  it('keeps to itself what is no entry', () => {
    assert.throws(() => imported('glider-elements/elements/glider-base'), /ERR_PACKAGE_PATH_NOT_EXPORTED|ERR_MODULE_NOT_FOUND/);
    assert.throws(() => imported('glider-elements/dist/npm/src/version.js'), /ERR_PACKAGE_PATH_NOT_EXPORTED/);
  });
});
