import {puppeteerCore} from '@web/test-runner-chrome';
import {findChromium} from '../../tools/find-chromium.mjs';
import {CHROMIUM_FLAGS, findFirefox} from '../../tools/launchers.mjs';
import {findWebKit, startWebKit} from '../../tools/webkit-driver.mjs';

async function driven(options) {
  const browser = await puppeteerCore.launch({headless: true, ...options});
  const page = await browser.newPage();
  return {
    go: (url) => page.goto(url),
    evaluate: (expression) => page.evaluate(expression),
    close: () => browser.close(),
  };
}

async function webkit() {
  const session = await startWebKit(findWebKit());
  return {
    go: (url) => session.call('POST', '/url', {url}),
    evaluate: (expression) => session.call('POST', '/execute/sync', {script: `return ${expression};`, args: []}),
    close: () => session.stop(),
  };
}

/** How to open a page outside the test runner, in each engine: as a reader would, by its address. */
export const open = {
  chromium: async () => driven({...await findChromium(), args: CHROMIUM_FLAGS}),
  firefox: () => driven({browser: 'firefox', executablePath: findFirefox()}),
  webkit,
};
