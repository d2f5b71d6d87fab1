import {spawnSync} from 'node:child_process';
import {mkdtempSync, readFileSync, rmSync} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {failure, sum} from './figures.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Runs one test runner and gives its figures, which it writes to a file. A runner that gives none, ran nothing, or
 * ends badly in spite of its figures counts as one failure.
 */
function counted(name, start) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'figures-'));
  const file = path.join(folder, 'figures.json');
  try {
    const {status} = start(file);
    const figures = JSON.parse(readFileSync(file, 'utf8'));
    let wrong;
    if (figures.passed + figures.failed === 0) wrong = `${name} ran no test.`;
    else if (status === 0 || figures.failed > 0) return figures;
    else wrong = `${name} ended with ${status}, though no test failed.`;
    console.error(wrong);
    return sum([figures, failure(wrong)]);
  } catch {
    console.error(`${name} did not run.`);
    return failure(`${name} did not run.`);
  } finally {
    rmSync(folder, {recursive: true, force: true});
  }
}

const node = (args, env) => spawnSync(process.execPath, args, {cwd: root, stdio: 'inherit', env: {...process.env, ...env}});

/** Runs browser tests in one engine; without files, all of them. */
export const browserTests = (browser, files = []) => counted(`The run in ${browser}`, (file) =>
  node(['node_modules/@web/test-runner/dist/bin.js', ...files], {BROWSERS: browser, FIGURES_FILE: file}));

/** Runs test files in Node. */
export const nodeTests = (files) => counted('The run in Node', (file) =>
  node(['--test', '--test-reporter=spec', '--test-reporter-destination=stdout',
    '--test-reporter=./tools/node-figures.mjs', `--test-reporter-destination=${file}`, ...files]));
