import assert from 'node:assert/strict';
import {describe, it} from 'node:test';
import {ESLint} from 'eslint';
import ts from 'typescript-eslint';

const eslint = new ESLint({overrideConfig: [ts.configs.disableTypeChecked]});

/** The rules that one module of the project would break. */
async function broken(filePath, code) {
  const [{messages}] = await eslint.lintText(code, {filePath});
  return messages.filter(({ruleId}) => /restricted/.test(ruleId ?? 'fatal')).map(({ruleId}) => ruleId.replace('@typescript-eslint/', ''));
}

describe('the layers', () => {
  it('keep calc free of pages, drawing, words and packages', async () => {
    for (const from of ['lit', '@svgdotjs/svg.js', '../drawing/pen.js', '../../components/base/element.js', '../messages/topic.js']) {
      assert.deepEqual(await broken('src/calc/some.ts', `export {it} from '${from}';\n`), ['no-restricted-imports'], from);
    }
    assert.deepEqual(await broken('src/calc/some.ts', "export {it} from '../../shared/materials.js';\n"), []);
  });

  it('keep calc free of a clock, chance and the page', async () => {
    assert.deepEqual(await broken('src/calc/some.ts', 'export const it = Math.random();\n'), ['no-restricted-properties']);
    assert.deepEqual(await broken('src/calc/some.ts', 'export const it = Date.now();\n'), ['no-restricted-globals']);
    assert.deepEqual(await broken('src/calc/some.ts', 'export const it = document.title;\n'), ['no-restricted-globals']);
  });

  it('let drawing use calc, and no element', async () => {
    assert.deepEqual(await broken('src/drawing/some.ts', "export {it} from '../components/base/element.js';\n"), ['no-restricted-imports']);
    assert.deepEqual(await broken('src/drawing/some.ts', "export {it} from '../calc/memo.js';\n"), []);
  });

  it('keep messages and shared leaves, which may name types of calc', async () => {
    for (const room of ['src/messages/en', 'shared']) {
      assert.deepEqual(await broken(`${room}/some.ts`, "import {it} from '../../calc/memo.js';\nexport default it;\n"), ['no-restricted-imports'], room);
      assert.deepEqual(await broken(`${room}/some.ts`, "export type {It} from '../../calc/memo.js';\n"), [], room);
    }
  });
});
