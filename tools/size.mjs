// npm run size: what a reader downloads, minified and compressed, against its budget: the very bundle of pages without a build step, chunk by chunk.
import {spawnSync} from 'node:child_process';
import {existsSync, readdirSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {gzipSync} from 'node:zlib';
import {rollup} from 'rollup';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);
const {status} = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {stdio: 'inherit'});
if (status !== 0) process.exit(status ?? 1);
const {cdn} = await import('../rollup.config.mjs');   // finds the elements in what was compiled

const element = (name) => `src/components/${name}/define.ts`;
const languages = readdirSync('src/messages', {withFileTypes: true}).filter((entry) => entry.isDirectory() && entry.name !== 'en').map(({name}) => name);

// What is loaded on demand, by the module at its head.
const isLanguage = (file) => languages.some((name) => file.startsWith(`src/messages/${name}/`));
const isFlight = (file) => file === 'src/calc/flight/flight-values.ts';
const isMotion = (file) => file === 'src/calc/flight/motion-values.ts';
const isFigure = (file) => file.startsWith('src/drawing/') || /^src\/components\/(base\/figure-drawing|[\w-]+\/picture)\.ts$/.test(file);
const isAsked = (file) => isLanguage(file) || /^src\/messages\/(american|en\/(problems|dimension-notes))\.ts$/.test(file) || /^src\/components\/([\w-]+\/(working|templates|lists)|base\/reckoned-with)\.ts$/.test(file);
const isSearch = (file) => /^src\/components\/parts-sheet\/search\//.test(file);
const isWriter = (file) => /^src\/drawing\/(pdf|dxf|svg-file|qr)\b/.test(file);

/** What programs may import of the calculations. */
const calcRooms = ['', 'flight/', 'sheet/', 'flight-log/'].map((room) => `src/calc/${room}index.ts`);

/**
 * What a calculator loads in three steps: its answer; its figure, once that is seen; and what only some readers ask for: the
 * working, the words of what is wrong, the notes on dimensions, with which measurements it was reckoned, another language.
 *
 * Each row: the module at the head of what is loaded, `with` others where they are counted together, its budget in kB, and what does not count: the chunks
 * loaded on demand whose first module is for `later`. A row that `needs` a kind of module is missing until there is one. A chunk that elements share
 * counts whole, as it is sent. Rooms of calc are bundled by those who import them, so each is a bundle of its `own`.
 */
const rows = [
  ...['camber-shim', 'dihedral-angle'].flatMap((name) => [
    {what: `glider-${name}, answer and figure`, entry: element(name), budget: 58, later: isAsked},
    {what: `glider-${name}, before its figure`, entry: element(name), budget: 28, later: (file) => isAsked(file) || isFigure(file)},
    {what: `glider-${name}, all it can load`, entry: element(name), later: isLanguage},
  ]),
  {what: 'glider-balance-point, answer and figure', entry: element('balance-point'), budget: 70, later: isAsked},
  {what: 'glider-parts-sheet, answer and figure', entry: element('parts-sheet'), later: (file) => isAsked(file) || isSearch(file) || isWriter(file)},
  {what: 'glider-parts-sheet, with its search', entry: element('parts-sheet'), later: (file) => isAsked(file) || isWriter(file)},
  {what: 'glider-parts-sheet, with its templates', entry: element('parts-sheet'), later: (file) => isLanguage(file) || isWriter(file)},
  {what: 'what writes a PDF', entry: 'src/drawing/pdf/write-pdf.ts', later: () => true},
  {what: 'glider-drawing, answer and figure', entry: element('drawing'), later: isAsked},
  {what: 'glider-design', entry: element('design'), later: () => true},
  {what: 'glider-dimensions', entry: element('dimensions'), later: isAsked},
  {what: 'glider-value of a dimension', entry: element('value'), budget: 20, later: () => true},
  {what: 'glider-value of a flight figure', entry: element('value'), budget: 40, later: (file) => !isFlight(file), needs: isFlight},
  {what: 'glider-value of how a plane swings', entry: element('value'), later: (file) => !isFlight(file) && !isMotion(file), needs: isMotion},
  {what: 'all of calc', entry: calcRooms[0], with: calcRooms.slice(1), budget: 30, own: true, later: () => false},
  ...Object.entries({'': 30, '/flight': 50, '/sheet': 28, '/flight-log': 10}).map(([room, budget]) =>
    ({what: `glider-elements/calc${room}`, entry: `src/calc${room}/index.ts`, budget, own: true, later: () => false})),
  // each topic is a chunk of its own: what a reader of the wordiest element loads, and all that a language has
  ...(languages.length ? languages : ['de']).flatMap((name) => [
    {what: `one language: ${name}, for the parts sheet`, entry: `src/messages/${name}/index.ts`, budget: 8, later: (file) => !file.endsWith('/sheet.ts')},
    {what: `one language: ${name}, all it can load`, entry: `src/messages/${name}/index.ts`, later: () => false},
  ]),
  {what: 'everything in English', entry: 'src/index.ts', budget: 170, later: (file) => isLanguage(file) || isWriter(file)},
];

const compiled = (source) => `build/${source.replace(/\.ts$/, '.js')}`;
const sourceOf = (id) => path.relative(path.join(root, 'build'), id).replaceAll(path.sep, '/').replace(/\.js$/, '.ts');

/** The files that a browser would be sent, by name: bytes, what heads each, what each loads. */
async function chunksOf(input) {
  const bundle = await rollup({...cdn, input});
  const {output} = await bundle.generate({...cdn.output, sourcemap: false});
  await bundle.close();
  return new Map(output.filter(({type}) => type === 'chunk').map(({fileName, code, facadeModuleId, imports, dynamicImports}) =>
    [fileName, {bytes: gzipSync(code, {level: 9}).length, head: facadeModuleId ? sourceOf(facadeModuleId) : '', imports, dynamicImports}]));
}

const published = await chunksOf(cdn.input);

/** Adds up, in bytes, what is loaded; undefined when a part that the row needs does not exist. */
async function measure({entry, with: others = [], own = false, later, needs}) {
  const heads = [entry, ...others];
  const chunks = own ? await chunksOf(heads.map(compiled)) : published;
  const first = [...chunks.keys()].filter((name) => heads.includes(chunks.get(name).head));
  if (first.length < heads.length) throw new Error(`${heads.join(', ')} head${heads.length > 1 ? '' : 's'} no file of the bundle`);
  const counted = new Set();
  let needed = !needs;
  const walk = (name) => {
    if (counted.has(name)) return;
    counted.add(name);
    const {imports, dynamicImports} = chunks.get(name);
    imports.forEach(walk);
    for (const other of dynamicImports) {
      const {head} = chunks.get(other);
      if (needs?.(head)) needed = true;
      if (!later(head)) walk(other);
    }
  };
  first.forEach(walk);
  return needed ? [...counted].reduce((sum, name) => sum + chunks.get(name).bytes, 0) : undefined;
}

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
let broken = 0;
for (const row of rows) {
  const name = row.what.padEnd(42);
  const bytes = existsSync(row.entry) ? await measure(row).catch(({message}) => [message]) : undefined;
  if (bytes === undefined) console.log(`${name} missing`);
  else if (Array.isArray(bytes)) { broken++; console.log(`${name} does not build: ${bytes.join('; ')}`); }
  else if (row.budget === undefined) console.log(`${name} ${kB(bytes).padStart(9)}`);
  else {
    const share = bytes / (row.budget * 1000);
    console.log(`${name} ${kB(bytes).padStart(9)} of ${String(row.budget).padStart(3)} kB  ${String(Math.round(share * 100)).padStart(3)} %${share > 1 ? '  over budget' : ''}`);
  }
}
process.exitCode = broken > 0 ? 1 : 0;
