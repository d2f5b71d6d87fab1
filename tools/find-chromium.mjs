import {existsSync} from 'node:fs';
import path from 'node:path';
import {runs} from './browser-runs.mjs';
import {packagedChromium} from './packaged-chromium.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge-stable', 'microsoft-edge'];

/** Where a browser may be installed, the likeliest place first. */
export function installedPlaces(env, platform) {
  if (platform === 'darwin') {
    return ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  }
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);
    return ['Google/Chrome/Application/chrome.exe', 'Microsoft/Edge/Application/msedge.exe'].flatMap((file) => roots.map((root) => path.join(root, file)));
  }
  const folders = (env.PATH ?? '').split(path.delimiter).filter(Boolean);
  return NAMES.flatMap((name) => folders.map((folder) => path.join(folder, name)));
}

/**
 * The Chromium that runs the tests: the one that CHROME_PATH names (an error if it does not run), else an installed one,
 * else the one inside @sparticuz/chromium. Gives what a launcher wants: `executablePath`, and `env` if it needs its own.
 */
export async function findChromium({env = process.env, platform = process.platform, starts = runs, exists = existsSync, packaged = packagedChromium} = {}) {
  const asked = env.CHROME_PATH;
  if (asked) {
    if (!starts(asked)) throw new Error(`CHROME_PATH is ${asked}, which does not run.`);
    return {executablePath: asked};
  }
  const installed = installedPlaces(env, platform).find((file) => exists(file) && starts(file));
  if (installed) return {executablePath: installed};
  const carried = await packaged();
  if (carried) return carried;
  throw new Error('No Chromium found. Install one (Debian: apt-get install chromium), or set CHROME_PATH.');
}
