import {existsSync} from 'node:fs';
import {chromeLauncher, puppeteerCore} from '@web/test-runner-chrome';
import {findChromium} from './find-chromium.mjs';
import {findWebKit} from './webkit-driver.mjs';
import {webkitLauncher} from './webkit-launcher.mjs';

export const CHROMIUM_FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage'];

export const findFirefox = () =>
  [process.env.FIREFOX_PATH, '/usr/bin/firefox-esr', '/usr/bin/firefox', '/Applications/Firefox.app/Contents/MacOS/firefox'].find((file) => file && existsSync(file));

const launchers = {
  // launchOptions.browser stays unset: 'chrome' switches coverage off
  chromium: async () => chromeLauncher({launchOptions: {...await findChromium(), args: CHROMIUM_FLAGS}}),
  firefox: () => chromeLauncher({puppeteer: puppeteerCore, concurrency: 1, launchOptions: {browser: 'firefox', executablePath: findFirefox()}}),
  webkit: () => webkitLauncher(findWebKit()),
};

const advice = {
  firefox: () => findFirefox() ? undefined : 'Firefox is not installed (Debian: apt-get install firefox-esr).',
  webkit: () => findWebKit() ? undefined : 'WebKit is not installed (Debian: apt-get install webkit2gtk-driver xvfb xauth).',
};

/** Why an engine cannot run here, or undefined when it can. Chromium is always found, or finding it is an error. */
export const missing = (name) => advice[name]?.();

export function launcherFor(name) {
  if (!(name in launchers)) throw new Error(`BROWSERS may name ${Object.keys(launchers).join(', ')}; ${name} is none of them.`);
  const why = missing(name);
  if (why) throw new Error(why);
  return launchers[name]();
}
