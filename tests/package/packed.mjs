import {execFileSync} from 'node:child_process';
import {existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {elementsIn} from '../../tools/elements.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));
export const elements = elementsIn();

/** Every address under which the package may be imported as a module. */
export const entries = ['glider-elements', ...['', '/flight', '/flight-log', '/sheet'].map((room) => `glider-elements/calc${room}`),
  ...elements.flatMap(({tag}) => [`glider-elements/elements/${tag}`, `glider-elements/elements/${tag}/class`])];

/**
 * Somebody else's project in a folder of its own, with the packed package unpacked in it and nothing but the packages
 * that it declares. They are linked, not fetched, so that no network is needed.
 */
export function consumer() {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'consumer-'));
  process.once('exit', () => { rmSync(folder, {recursive: true, force: true}); });
  const tarball = process.env.TARBALL;
  if (!tarball || !existsSync(tarball)) throw new Error('Run these tests by npm run test:package, which packs the package first.');

  const home = path.join(folder, 'node_modules/glider-elements');
  mkdirSync(home, {recursive: true});
  execFileSync('tar', ['-xzf', tarball, '-C', home, '--strip-components=1']);
  for (const name of Object.keys(JSON.parse(readFileSync(path.join(home, 'package.json'), 'utf8')).dependencies)) {
    const link = path.join(folder, 'node_modules', name);
    mkdirSync(path.dirname(link), {recursive: true});
    symlinkSync(path.join(root, 'node_modules', name), link, 'junction');
  }
  writeFileSync(path.join(folder, 'package.json'), JSON.stringify({private: true, type: 'module'}));
  return {folder, home, tarball};
}
