// Installs the dependencies where they are missing or older than the lockfile. Node's own modules only: nothing else is there yet.
import {spawnSync} from 'node:child_process';
import {statSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const changedAt = (file) => statSync(`${root}/${file}`, {throwIfNoEntry: false})?.mtimeMs ?? -Infinity;

// npm writes this file last, so an installation that was stopped half-way has none or an old one
if (changedAt('node_modules/.package-lock.json') < changedAt('package-lock.json')) {
  console.log('Installing the dependencies (npm ci) …');
  const {status} = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {cwd: root, stdio: 'inherit', shell: process.platform === 'win32'});
  process.exitCode = status ?? 1;
}
