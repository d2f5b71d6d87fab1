// npm run bench:sheet -- <folder> [--quick]: how good layouts are on published instances, beside packers from npm.
import {createHash} from 'node:crypto';
import {existsSync, mkdirSync, readFileSync, statSync, writeFileSync} from 'node:fs';
import os from 'node:os';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {measure, worked} from '../bench/sheet/measure.mjs';
import {readSets} from '../bench/sheet/sets.mjs';
import {printed, rowsOf} from '../bench/sheet/table.mjs';
import {keyOf, quick, tasksOf} from '../bench/sheet/tasks.mjs';

const [folder, ...options] = process.argv.slice(2);
const stop = (sentence) => {
  console.error(sentence);
  process.exit(2);
};
if (!folder) stop('Usage: npm run bench:sheet -- <folder of instance files> [--quick]');
if (!existsSync(folder) || !statSync(folder).isDirectory()) stop(`There is no folder ${folder}.`);
const {sets, leftOut} = readSets(folder);
for (const sentence of leftOut) console.error(sentence);
if (sets.length === 0) stop(`No instances in ${folder}: a set is a JSON file {set, instances: [{name, stock: {width, height}, items: [{w, h, n}], known}]}.`);

const cache = fileURLToPath(new URL('../.cache/bench-sheet/', import.meta.url));
mkdirSync(cache, {recursive: true});

const {outputFiles: [{text}]} = await build({
  entryPoints: [fileURLToPath(new URL('../src/calc/sheet/engine/index.ts', import.meta.url))],
  bundle: true, format: 'esm', target: 'es2022', write: false, logLevel: 'error',
});
// what was measured with another engine counts for nothing; with this one it is gone on from
const version = createHash('sha256').update(text).digest('hex').slice(0, 12);
writeFileSync(`${cache}${version}.mjs`, text);
const {SheetSearch} = await import(`${cache}${version}.mjs`);
const kept = `${cache}${version}.json`;
const results = existsSync(kept) ? JSON.parse(readFileSync(kept, 'utf8')) : {};

const all = sets.flatMap((set) => set.instances.flatMap((instance) => tasksOf(set, instance)));
const tasks = options.includes('--quick') ? quick(all) : all;
const start = worked();
for (const [i, task] of tasks.entries()) {
  const key = keyOf(task);
  if (results[key]) continue;
  if (process.stderr.isTTY) process.stderr.write(`\r${i + 1} of ${tasks.length}: ${task.set} ${task.name}\x1b[K`);
  results[key] = measure(task, SheetSearch);
  writeFileSync(kept, JSON.stringify(results));
}
if (process.stderr.isTTY) process.stderr.write('\r\x1b[K');

const whole = tasks.map((task) => ({task, result: results[keyOf(task)]}));
const done = whole.filter(({result}) => !result.fault), faulty = whole.filter(({result}) => result.fault);
for (const {task, result} of faulty) console.error(`${task.set} ${task.name}, ${task.cuts}: ${result.fault}.`);
console.log(printed(rowsOf(done, sets)));
const first = done.map(({result}) => result.first).sort((a, b) => a - b);
const longest = Math.max(...done.map(({result}) => result.slice));
console.log(`\n${faulty.length === 0 ? 'Every layout shown was checked' : `${faulty.length} of ${whole.length} could not be measured`}; ${first.filter((ms) => ms <= 10).length} of ${first.length} first layouts within 10 ms, ${first[first.length >> 1]?.toFixed(1)} ms in the middle, ${first.at(-1)?.toFixed(0)} ms at most; longest step, asked for 20 ms, ${longest.toFixed(0)} ms.`);
console.log(`Times are what the process worked, on one core: ${os.cpus()[0]?.model.trim() ?? 'unknown processor'}, Node ${process.version}; ${((worked() - start) / 1000).toFixed(0)} s this time.`);
if (faulty.length > 0) process.exitCode = 1;
