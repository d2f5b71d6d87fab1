// npm run lint, second half: no module may, through what it imports, import itself. Types do not count: they are gone when the code runs.
import {existsSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const rooms = ['src', 'shared', 'demo', 'tools'].filter((room) => existsSync(`${root}/${room}`));
const entryPoints = rooms.flatMap((room) => readdirSync(`${root}/${room}`, {recursive: true})
  .filter((file) => /\.(ts|mjs)$/.test(file)).map((file) => `${room}/${file}`));

const {metafile: {inputs}} = await build({
  entryPoints, absWorkingDir: root, bundle: true, packages: 'external', format: 'esm', platform: 'node', target: 'es2022',
  outdir: 'nowhere', write: false, metafile: true, logLevel: 'error',
});

const done = new Set();
const cycles = [];

function walk(file, way) {
  if (way.includes(file)) cycles.push([...way.slice(way.indexOf(file)), file]);
  if (way.includes(file) || done.has(file)) return;
  for (const {path, kind, external} of inputs[file]?.imports ?? []) {
    if (kind === 'import-statement' && !external) walk(path, [...way, file]);
  }
  done.add(file);
}

for (const file of Object.keys(inputs)) walk(file, []);
for (const cycle of cycles) console.error(`Import cycle: ${cycle.join(' -> ')}`);
console.log(cycles.length === 0 ? `No import cycles among ${Object.keys(inputs).length} modules.` : '');
process.exitCode = cycles.length === 0 ? 0 : 1;
