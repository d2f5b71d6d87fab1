// The search for a better layout, from the package as it is shipped: in a worker where a page may have one, else on the page, never refused aloud.
import assert from 'node:assert/strict';
import {readFileSync, writeFileSync} from 'node:fs';
import {createServer} from 'node:http';
import path from 'node:path';
import {after, before, describe, it} from 'node:test';
import {setTimeout as wait} from 'node:timers/promises';
import {pathToFileURL} from 'node:url';
import {STRICT_POLICY} from '../../tools/strict-pages.mjs';
import {open} from './browsers.mjs';
import {consumer} from './packed.mjs';

const {folder, home} = consumer();
const TYPES = {html: 'text/html; charset=utf-8', js: 'text/javascript; charset=utf-8'};
const page = (script) => `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Search</title><link rel="icon" href="data:,"><script src="watch.js"></script>${script}</head>
<body><glider-parts-sheet cuts="straight"></glider-parts-sheet></body></html>`;
writeFileSync(path.join(folder, 'watch.js'), `
  window.complaints = [];
  window.workers = 0;
  document.addEventListener('securitypolicyviolation', (event) => { complaints.push(event.effectiveDirective + ' ' + event.blockedURI); });
  addEventListener('error', (event) => { complaints.push(event.message); }, true);
  addEventListener('unhandledrejection', (event) => { complaints.push(String(event.reason)); });
  window.Worker = class extends Worker { constructor(...given) { super(...given); workers++; } };
`);
writeFileSync(path.join(folder, 'module.html'), page('<script type="module" src="node_modules/glider-elements/dist/cdn/glider-parts-sheet.js"></script>'));
writeFileSync(path.join(folder, 'classic.html'), page('<script src="node_modules/glider-elements/dist/classic/glider-elements.js" defer></script>'));
writeFileSync(path.join(folder, 'foreign.html'), page('<script type="module" src="http://localhost:PORT/node_modules/glider-elements/dist/cdn/glider-parts-sheet.js"></script>'));

let policy = STRICT_POLICY;
const server = createServer(({url}, response) => {
  try {
    const name = new URL(url, 'http://localhost').pathname;
    const body = readFileSync(path.join(folder, name));
    response.writeHead(200, {
      'content-type': TYPES[name.split('.').pop()] ?? 'text/plain', 'access-control-allow-origin': '*', ...policy && {'content-security-policy': policy},
    }).end(name === '/foreign.html' ? body.toString().replace('PORT', server.address().port) : body);
  } catch {
    response.writeHead(404).end();
  }
});

/** What came of the search: the layout that straight cuts give takes the place of the first one. */
async function found(browser) {
  const element = "document.querySelector('glider-parts-sheet')";
  for (let tries = 0; tries < 300; tries++) {
    if (await browser.evaluate(`${element}?.result?.ok === true && ${element}.result.value.standing === 'answers'`)) break;
    await wait(100);
  }
  return browser.evaluate(`({from: ${element}.result.value.cut.from, planned: ${element}.result.value.cut.plans[0].sheet.plan !== undefined, workers, complaints})`);
}

describe('the search for a better layout', () => {
  let browser, address;
  before(async () => {
    await new Promise((resolve) => { server.listen(0, resolve); });
    address = `http://127.0.0.1:${server.address().port}`;
    browser = await open.chromium();
  });
  after(async () => {
    await browser?.close();
    server.close();
  });

  it('runs in a worker under the strict policy', async () => {
    policy = STRICT_POLICY;
    await browser.go(`${address}/module.html`);
    assert.deepEqual(await found(browser), {from: 'search', planned: true, workers: 1, complaints: []});
  });

  it('runs on the page where the policy refuses workers', async () => {
    policy = `${STRICT_POLICY}; worker-src 'none'`;
    await browser.go(`${address}/module.html`);
    const {from, planned, complaints} = await found(browser);
    assert.deepEqual({from, planned}, {from: 'search', planned: true});
    // the browser says itself that it refused; nothing else is amiss
    assert.ok(complaints.every((said) => said.startsWith('worker-src')), complaints.join('; '));
  });

  it('runs in a worker that imports it where the script is another site’s', async () => {
    policy = '';
    await browser.go(`${address}/foreign.html`);
    assert.deepEqual(await found(browser), {from: 'search', planned: true, workers: 1, complaints: []});
  });

  it('runs on the page from the classic script, opened by double click', async () => {
    await browser.go(pathToFileURL(path.join(folder, 'classic.html')).href);
    assert.deepEqual(await found(browser), {from: 'search', planned: true, workers: 0, complaints: []});
  });

  it('is no part of what a page loads at first', () => {
    const main = readFileSync(path.join(home, 'dist/classic/glider-elements.js'), 'utf8');
    const search = readFileSync(path.join(home, 'dist/classic/glider-elements-search.js'), 'utf8');
    // a name of the search's own
    assert.match(search, /mayLeave/);
    assert.doesNotMatch(main, /mayLeave/);
  });
});
