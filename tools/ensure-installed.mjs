// Installs the dependencies where they are missing or not those of the lockfile. Node's own modules only: nothing else is there yet.
import {spawnSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

function packagesIn(lockfile) {
  try {
    return JSON.parse(readFileSync(`${root}/${lockfile}`, 'utf8')).packages;
  } catch {
    return {};
  }
}

// npm writes this second lockfile last, so an installation that was stopped half-way has none
const installed = packagesIn('node_modules/.package-lock.json');
const wanted = Object.entries(packagesIn('package-lock.json')).filter(([place, {optional}]) => place !== '' && !optional);

if (!wanted.every(([place, {version}]) => installed[place]?.version === version)) {
  console.log('Installing the dependencies (npm ci) …');
  const {status} = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {cwd: root, stdio: 'inherit', shell: process.platform === 'win32'});
  process.exitCode = status ?? 1;
}
