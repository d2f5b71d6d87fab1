// npm run test:package: packs the package as npm would publish it, and tests what came out.
import {execFileSync} from 'node:child_process';
import {mkdtempSync, readdirSync, rmSync} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {ending, failure} from './figures.mjs';
import {nodeTests} from './run-tests.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(path.join(os.tmpdir(), 'packed-'));
let figures = failure('The package could not be packed.');
try {
  execFileSync('npm', ['pack', '--silent', '--pack-destination', folder], {cwd: root, stdio: 'inherit', shell: process.platform === 'win32'});
  process.env.TARBALL = path.join(folder, readdirSync(folder).find((file) => file.endsWith('.tgz')));
  figures = nodeTests(readdirSync(`${root}/tests/package`).filter((file) => file.endsWith('.test.mjs')).map((file) => `tests/package/${file}`));
} catch (error) {
  console.error(error.message);
} finally {
  rmSync(folder, {recursive: true, force: true});
}
console.log(ending(figures));
process.exitCode = figures.failed > 0 ? 1 : 0;
