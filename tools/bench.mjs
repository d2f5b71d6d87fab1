// npm run bench: how long the flight model and its throws take in Chromium. Printed and compared by eye; no test depends on it.
import os from 'node:os';
import {fileURLToPath} from 'node:url';
import {puppeteerCore} from '@web/test-runner-chrome';
import {build} from 'esbuild';
import {findChromium} from './find-chromium.mjs';
import {CHROMIUM_FLAGS} from './launchers.mjs';

/** Milliseconds that each case may take. */
const goals = {'from nothing: another span': 4, 'after a change of mass': 0.3, 'a flight of 10 s': 5, '20 throws, drawn': 16.7};

const bundleOf = async (name) => {
  const {outputFiles: [bundle]} = await build({
    entryPoints: [fileURLToPath(new URL(`../bench/${name}.mjs`, import.meta.url))], bundle: true, format: 'iife', target: 'es2022', write: false, logLevel: 'error',
  });
  return bundle.text;
};
const browser = await puppeteerCore.launch({...await findChromium(), args: CHROMIUM_FLAGS});
try {
  const page = await browser.newPage();
  await page.addScriptTag({content: await bundleOf('flight')});
  await page.addScriptTag({content: await bundleOf('throws')});
  const {panels, first, rows} = await page.evaluate('benchFlight()');
  console.log(`${os.cpus()[0]?.model.trim() ?? 'unknown processor'}, ${os.cpus().length} cores, ${os.platform()} ${os.release()}, ${await browser.version()}; load ${os.loadavg()[0].toFixed(1)}`);
  console.log(`flight, motion and strength of a design with ${panels} panels; the very first run, code not yet compiled, ${first.toFixed(1)} ms`);
  for (const {name, middle, quickest} of [...rows, ...await page.evaluate('benchThrows()')]) {
    const goal = goals[name];
    console.log(`${name.padEnd(36)} ${middle.toFixed(2).padStart(6)} ms, quickest ${quickest.toFixed(2)} ms${goal === undefined ? '' : `, goal ${goal} ms`}`);
  }
} finally {
  await browser.close();
}
