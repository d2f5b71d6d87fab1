// The parts sheet's files, from the package as it is shipped: what writes them is no part of what a page loads at first.
import assert from 'node:assert/strict';
import {cpSync, existsSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {after, before, describe, it} from 'node:test';
import {setTimeout as wait} from 'node:timers/promises';
import {pathToFileURL} from 'node:url';
import {open} from './browsers.mjs';
import {consumer} from './packed.mjs';

const {folder, home} = consumer();
const classic = path.join(home, 'dist/classic');
writeFileSync(path.join(folder, 'files.html'), `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Files</title>
<script src="node_modules/glider-elements/dist/classic/glider-elements.js" defer></script></head><body><glider-parts-sheet></glider-parts-sheet></body></html>`);
// the same page, with only the one script copied beside it
writeFileSync(path.join(folder, 'alone.html'), readFileSync(path.join(folder, 'files.html'), 'utf8').replace('node_modules/glider-elements/dist/classic/', ''));
cpSync(path.join(classic, 'glider-elements.js'), path.join(folder, 'glider-elements.js'));

const panel = "document.querySelector('glider-parts-sheet').shadowRoot.querySelector('.templates')";

/** Opens the templates and asks for one of the files; gives what the element says in the end, and what was made. */
async function asked(browser, url, which) {
  await browser.go(url);
  const until = async (expression) => {
    for (let tries = 0; tries < 200; tries++) {
      const found = await browser.evaluate(expression);
      if (found) return found;
      await wait(100);
    }
    throw new Error(`waited in vain for ${expression}`);
  };
  await until(`${panel} !== null`);
  await browser.evaluate(`(() => {
    window.made = [];
    const keep = URL.createObjectURL;
    URL.createObjectURL = (file) => { file.text().then((text) => made.push(text.slice(0, 5) + text.slice(-8))); return keep.call(URL, file); };
    document.addEventListener('click', (event) => { if (event.composedPath()[0].localName === 'a') event.preventDefault(); }, true);
    ${panel}.open = true;
  })()`);
  await until(`${panel}.querySelector('.make') !== null`);
  await browser.evaluate(`${panel}.querySelectorAll('.make button')[${which}].click()`);
  const said = await until(`${panel}.querySelector('[role=status] :is(.problem, a.file)')?.textContent`);
  const made = /^Save/.test(said) ? await until('window.made[0]') : undefined;
  return {said, made};
}

describe('files from the classic script, opened by double click', () => {
  const page = (name) => pathToFileURL(path.join(folder, name)).href;
  let browser;
  before(async () => { browser = await open.chromium(); });
  after(() => browser?.close());

  for (const [which, name, begins, ends] of [[0, 'PDF', '%PDF-', '%%EOF'], [1, 'SVG', '<?xml', '</svg>\n'], [2, 'DXF', '', 'EOF']]) {
    it(`are made: ${name}`, async () => {
      const {made} = await asked(browser, page('files.html'), which);
      assert.ok(made?.startsWith(begins) && made.trimEnd().endsWith(ends.trimEnd()), String(made));
    });
  }

  it('say what is missing where the script stands alone', async () => {
    for (const which of [0, 2]) {
      const {said, made} = await asked(browser, page('alone.html'), which);
      assert.equal(made, undefined);
      assert.match(said, /could not be loaded.*scripts beside it/);
    }
    assert.match((await asked(browser, page('alone.html'), 1)).said, /^Save/);
  });
});

describe('what a page loads at first', () => {
  it('holds no writer of files', () => {
    assert.ok(existsSync(path.join(classic, 'glider-elements-pdf.js')) && existsSync(path.join(classic, 'glider-elements-dxf.js')));
    const main = readFileSync(path.join(classic, 'glider-elements.js'), 'utf8');
    assert.doesNotMatch(main, /PrintScaling|LWPOLYLINE/);
    assert.match(readFileSync(path.join(classic, 'glider-elements-pdf.js'), 'utf8'), /PrintScaling/);
    assert.match(readFileSync(path.join(classic, 'glider-elements-dxf.js'), 'utf8'), /LWPOLYLINE/);
  });
});
