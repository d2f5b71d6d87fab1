// Every problem that the calculations can name has a sentence.
import assert from 'node:assert/strict';
import {readdirSync, readFileSync} from 'node:fs';
import test from 'node:test';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The codes written out in the sources of a folder: `code: 'a-problem'`. */
function codesIn(folder) {
  return readdirSync(`${root}/${folder}`, {recursive: true, encoding: 'utf8'}).filter((name) => name.endsWith('.ts')).flatMap((name) => {
    const text = readFileSync(`${root}/${folder}/${name}`, 'utf8');
    return [...text.matchAll(/\bcode:\s*'([a-z][a-z-]+)'/g), ...text.matchAll(/\b(?:problem|refusal)\('([a-z-]+)'/g)].map(([, code]) => code);
  });
}

test('every problem has a sentence', () => {
  const words = readFileSync(`${root}/src/messages/en/problems.ts`, 'utf8');
  const known = new Set([...words.matchAll(/^ {2}'([a-z-]+)':/gm)].map(([, code]) => code));
  const codes = [...new Set([...codesIn('src/calc'), ...codesIn('src/components')])];
  assert.ok(codes.length > 40, `only ${codes.length} codes were found`);
  assert.deepEqual(codes.filter((code) => !known.has(code)).sort(), []);
});
