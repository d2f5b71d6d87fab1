// Every topic that is written in English is written in each other language, and its language's index knows it.
import assert from 'node:assert/strict';
import {readdirSync, readFileSync} from 'node:fs';
import test from 'node:test';
import {fileURLToPath} from 'node:url';

const messages = fileURLToPath(new URL('../../src/messages', import.meta.url));
const english = readdirSync(`${messages}/en`).sort();
const languages = readdirSync(messages, {withFileTypes: true}).filter((entry) => entry.isDirectory() && entry.name !== 'en').map(({name}) => name);

test('a topic’s file is called as the topic is', () => {
  for (const file of english) assert.ok(readFileSync(`${messages}/en/${file}`, 'utf8').includes(`('${file.slice(0, -3)}', {`), file);
});

test('there are other languages than English', () => { assert.ok(languages.length > 0); });

for (const language of languages) {
  test(`${language} has every topic`, () => {
    assert.deepEqual(readdirSync(`${messages}/${language}`).filter((file) => file !== 'index.ts').sort(), english);
    const index = readFileSync(`${messages}/${language}/index.ts`, 'utf8');
    assert.deepEqual([...index.matchAll(/'\.\/([a-z-]+)\.js'/g)].map(([, name]) => `${name}.ts`).sort(), english);
  });
}
