// npm test [-- --browsers=chromium,firefox,webkit] [--only=browsers] [files and folders…]: browser tests (*.test.ts) and Node tests (*.test.mjs),
// one closing line. SEED and RUNS: see property-draws.mjs.
import {readdirSync, statSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {parseArgs} from 'node:util';
import {ending, failure, sum} from './figures.mjs';
import {missing} from './launchers.mjs';
import {propertyDraws} from './property-draws.mjs';
import {browserTests, nodeTests} from './run-tests.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const {values: {browsers, only}, positionals: named} = parseArgs({
  allowPositionals: true, options: {browsers: {type: 'string', default: 'chromium'}, only: {type: 'string'}},
});

// a folder is all the tests in it
const files = named.flatMap((name) => (statSync(name, {throwIfNoEntry: false})?.isDirectory()
  ? readdirSync(name, {recursive: true}).filter((file) => /\.test\.(ts|mjs)$/.test(file)).map((file) => `${name.replace(/\/+$/, '')}/${file}`) : name));
const inBrowsers = files.filter((file) => file.endsWith('.ts'));
const inNode = named.length ? files.filter((file) => file.endsWith('.mjs'))
  : readdirSync(`${root}/tests/node`).filter((file) => file.endsWith('.test.mjs')).map((file) => `tests/node/${file}`);

// one seed for all engines, to be known whatever happens to their runs
const draws = propertyDraws();
process.env.SEED = String(draws.seed);
const said = `Property tests: SEED=${draws.seed}, RUNS=${draws.numRuns}`;
console.log(said);

const results = [];
if (inNode.length && only !== 'browsers') results.push(nodeTests(inNode));
if (inBrowsers.length || !named.length) {
  for (const browser of browsers.split(',')) {
    const why = missing(browser);
    if (!why) results.push(browserTests(browser, inBrowsers));
    else if (process.env.CI) results.push(failure(why));
    if (why) console.error(`${why} Its tests did not run.`);
  }
}

const total = sum(results);
console.log(`\n${said}\n${ending(total)}`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
