import assert from 'node:assert/strict';
import {createServer} from 'node:http';
import {readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {after, before, describe, it} from 'node:test';
import {setTimeout as wait} from 'node:timers/promises';
import {pathToFileURL} from 'node:url';
import {missing} from '../../tools/launchers.mjs';
import {STRICT_POLICY} from '../../tools/strict-pages.mjs';
import {open} from './browsers.mjs';
import {consumer, elements} from './packed.mjs';

const {folder} = consumer();
const shipped = 'node_modules/glider-elements/dist';
const TYPES = {html: 'text/html; charset=utf-8', js: 'text/javascript; charset=utf-8'};

// listens before the elements load, so that nothing they do is missed
const WATCH = `
  window.complaints = [];
  document.addEventListener('securitypolicyviolation', (event) => { complaints.push(event.effectiveDirective + ' ' + event.blockedURI); });
  addEventListener('error', (event) => { complaints.push(event.message); }, true);
  addEventListener('unhandledrejection', (event) => { complaints.push(String(event.reason)); });
  console.error = (...said) => { complaints.push(said.join(' ')); };
`;
const page = (body, script) => `<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><title>Somebody's page</title><link rel="icon" href="data:,"><script src="watch.js"></script>${script}</head>
<body>${body}</body></html>
`;

writeFileSync(path.join(folder, 'watch.js'), WATCH);
const module = (name) => `<script type="module" src="${shipped}/cdn/${name}.js"></script>`;
const classic = `<script src="${shipped}/classic/glider-elements.js" defer></script>`;
for (const {tag} of elements) {
  writeFileSync(path.join(folder, `${tag}.html`), page(`<${tag}></${tag}>`, module(tag)));
  writeFileSync(path.join(folder, `${tag}-classic.html`), page(`<${tag}></${tag}>`, classic));
}
writeFileSync(path.join(folder, 'all.html'), page(elements.map(({tag}) => `<${tag}></${tag}>`).join('\n'), module('all')));

const server = createServer(({url}, response) => {
  try {
    const body = readFileSync(path.join(folder, new URL(url, 'http://localhost').pathname));
    response.writeHead(200, {'content-type': TYPES[url.split('.').pop()] ?? 'text/plain', 'content-security-policy': STRICT_POLICY}).end(body);
  } catch {
    response.writeHead(404).end();
  }
});

const drawn = (tag) => `(() => {
  const element = document.querySelector('${tag}');
  const inside = element?.shadowRoot;
  return {defined: customElements.get('${tag}') !== undefined, text: inside?.textContent.trim() ?? '', figure: !!inside?.querySelector('svg'), complaints};
})()`;

/** Waits for the element to have come to rest: registered, and with its figure where it is one of those that draw. */
async function settled(browser, {tag, name}) {
  const speaks = !['design', 'value', 'dimensions'].includes(name);
  const draws = speaks && name !== 'flight-log';   // a log without a throw has nothing to draw
  for (let tries = 0; tries < 300; tries++) {
    const {defined, text, figure} = await browser.evaluate(drawn(tag));
    if (defined && (figure || !draws) && (text !== '' || !speaks)) break;
    await wait(100);
  }
  await wait(100); // for what is refused late
  return {...await browser.evaluate(drawn(tag)), speaks, draws};
}

describe("somebody else's page", () => {
  let address;
  before(async () => {
    await new Promise((resolve) => { server.listen(0, '127.0.0.1', resolve); });
    address = `http://127.0.0.1:${server.address().port}`;
  });
  after(() => { server.close(); });

  for (const engine of Object.keys(open)) {
    const why = missing(engine);
    describe(`in ${engine}`, {skip: why && !process.env.CI ? why : false}, () => {
      let browser;
      before(async () => {
        if (why) throw new Error(why);
        browser = await open[engine]();
      });
      after(() => browser?.close());

      for (const element of elements) {
        for (const [how, url] of [
          ['served under the strict policy', () => `${address}/${element.tag}.html`],
          ['opened by double click, from the classic script', () => pathToFileURL(path.join(folder, `${element.tag}-classic.html`)).href],
        ]) {
          it(`shows ${element.tag}, ${how}`, async () => {
            await browser.go(url());
            const {defined, text, figure, complaints, speaks, draws} = await settled(browser, element);
            assert.deepEqual(complaints, []);
            assert.ok(defined, 'it is not registered');
            if (speaks) assert.notEqual(text, '', 'it shows no words');
            if (draws) assert.ok(figure, 'it shows no figure');
          });
        }
      }

      it('shows all of them together, from the module that holds all', async () => {
        await browser.go(`${address}/all.html`);
        for (const element of elements) {
          const {defined, complaints} = await settled(browser, element);
          assert.deepEqual(complaints, []);
          assert.ok(defined, `${element.tag} is not registered`);
        }
      });
    });
  }
});
