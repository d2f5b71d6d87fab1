import {fileURLToPath} from 'node:url';
import {startDevServer} from '@web/dev-server';
import {puppeteerCore} from '@web/test-runner-chrome';
import {bundledPackagesServer} from '../../tools/bundled-packages.mjs';
import {findChromium} from '../../tools/find-chromium.mjs';
import {CHROMIUM_FLAGS} from '../../tools/launchers.mjs';
import {strictPages} from '../../tools/strict-pages.mjs';
import {typescriptServer} from '../../tools/typescript-server.mjs';

/** Chromium on the pages of this project, served from the sources: for what a test outside a browser has to see of them. */
export async function openSources() {
  const server = await startDevServer({
    readCliArgs: false, readFileConfig: false, logStartMessage: false, autoExitProcess: false,
    config: {
      rootDir: fileURLToPath(new URL('../..', import.meta.url)), hostname: '127.0.0.1', port: 0, nodeResolve: true,
      plugins: [strictPages(), bundledPackagesServer(), typescriptServer()],
    },
  });
  const browser = await puppeteerCore.launch({headless: true, ...await findChromium(), args: CHROMIUM_FLAGS});
  return {
    address: `http://127.0.0.1:${server.server.address().port}`,
    page: () => browser.newPage(),
    close: async () => {
      await browser.close();
      await server.stop();
    },
  };
}
