import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {mkdirSync, symlinkSync} from 'node:fs';
import path from 'node:path';
import {describe, it} from 'node:test';
import {consumer, elements, root} from './packed.mjs';

const {folder} = consumer();
mkdirSync(path.join(folder, 'node_modules/@lit-labs'));
symlinkSync(path.join(root, 'node_modules/@lit-labs/ssr'), path.join(folder, 'node_modules/@lit-labs/ssr'), 'junction');

/** What a server would send for some markup. */
function rendered(markup) {
  const program = `
    import {render} from '@lit-labs/ssr';
    import {collectResult} from '@lit-labs/ssr/lib/render-result.js';
    import {html, unsafeStatic} from 'lit/static-html.js';
    await import('glider-elements');
    console.log(await collectResult(render(html\`\${unsafeStatic(${JSON.stringify(markup)})}\`)));`;
  return execFileSync(process.execPath, ['--input-type=module', '-e', program], {cwd: folder, encoding: 'utf8'});
}

/** The words of a rendered page, without styles and comments. */
const words = (page) => page.replace(/<style>[^]*?<\/style>|<!--[^]*?-->|<[^>]*>/g, ' ').replace(/\s+/g, ' ').trim();

/** What an element must say at least: a number, unless its stage is fetched when a page first needs it. */
const says = {'as-built': /worked out as soon as/, 'trim-advice': /worked out as soon as/, 'dimensions': /Wing span/, 'flight-check': /How it flies is being worked out/};

/** What an element must be told before it shows anything. */
const attributes = {value: ' name="wing.span"', dimensions: ' show="wing.span"'};

describe('on a server', () => {
  for (const {tag, name} of elements.filter(({name}) => name !== 'design')) {
    it(`${tag} writes what it has to say into the page`, () => {
      const page = rendered(`<${tag}${attributes[name] ?? ''}></${tag}>`);
      assert.match(page, /<template shadowroot/);
      assert.match(words(page), says[name] ?? /\d/);
      assert.doesNotMatch(words(page), /\b(NaN|Infinity|undefined|null)\b|\[object/);
    });
  }

  it('glider-design leaves what it encloses as it is', () => {
    assert.match(words(rendered('<glider-design wing-span="640 mm"><p>The wing.</p></glider-design>')), /^The wing\.$/);
  });
});
