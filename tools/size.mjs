// npm run size: what a reader downloads, minified and compressed, against its budget.
import {existsSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {gzipSync} from 'node:zlib';
import {build} from 'esbuild';
import {minify} from 'terser';
import {minifying} from './minifying.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const element = (name) => `src/components/${name}/define.ts`;
const languages = readdirSync(`${root}/src/messages`, {withFileTypes: true}).filter((entry) => entry.isDirectory() && entry.name !== 'en').map(({name}) => name);

// What is loaded on demand, by the module at its head.
const isLanguage = (file) => languages.some((name) => file.startsWith(`src/messages/${name}/`));
const isFlight = (file) => /^src\/calc\/(aero|flight)\//.test(file);
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
 * Each row: an entry, `with` others where they are counted together, its budget in kB, and what does not count: packages that it is measured `without`, and the chunks
 * loaded on demand whose first module is for `later`. A row that `needs` a kind of module is missing until there is one.
 */
const rows = [
  ...['camber-shim', 'dihedral-angle'].flatMap((name) => [
    {what: `glider-${name}, answer and figure`, entry: element(name), budget: 58, later: isAsked},
    {what: `glider-${name}, before its figure`, entry: element(name), budget: 28, later: (file) => isAsked(file) || isFigure(file)},
    {what: `glider-${name}, all it can load`, entry: element(name), later: isLanguage},
  ]),
  {what: 'glider-balance-point, answer and figure', entry: element('balance-point'), budget: 70, later: isAsked},
  {what: 'glider-parts-sheet, answer and figure', entry: element('parts-sheet'), later: (file) => isAsked(file) || isSearch(file)},
  {what: 'glider-parts-sheet, with its search', entry: element('parts-sheet'), later: isAsked},
  {what: 'glider-parts-sheet, with its templates', entry: element('parts-sheet'), later: (file) => isLanguage(file) || isWriter(file)},
  {what: 'what writes a PDF', entry: 'src/drawing/pdf/write-pdf.ts', later: () => true},
  {what: 'glider-drawing, answer and figure', entry: element('drawing'), later: isAsked},
  {what: 'glider-design', entry: element('design'), later: () => true},
  {what: 'glider-dimensions', entry: element('dimensions'), later: isAsked},
  {what: 'glider-value of a dimension', entry: element('value'), budget: 20, later: () => true},
  {what: 'glider-value of a flight figure', entry: element('value'), budget: 40, later: (file) => !isFlight(file), needs: isFlight},
  {what: 'all of calc', entry: calcRooms[0], with: calcRooms.slice(1), budget: 30, later: () => false},
  {what: 'glider-elements/calc', entry: calcRooms[0], later: () => false},
  ...['flight', 'sheet', 'flight-log'].map((room) => ({what: `glider-elements/calc/${room}`, entry: `src/calc/${room}/index.ts`, later: () => false})),
  // each topic is a chunk of its own: what a reader of the wordiest element loads, and all that a language has
  ...(languages.length ? languages : ['de']).flatMap((name) => [
    {what: `one language: ${name}, for the parts sheet`, entry: `src/messages/${name}/index.ts`, budget: 8, later: (file) => !file.endsWith('/sheet.ts')},
    {what: `one language: ${name}, all it can load`, entry: `src/messages/${name}/index.ts`, later: () => false},
  ]),
  {what: 'everything in English', entry: 'src/index.ts', budget: 170, later: (file) => isLanguage(file) || isWriter(file)},
];

/** The files that a browser would be sent for an entry, with what heads each one that is loaded on demand. */
async function chunksOf(entries, external) {
  const {outputFiles, metafile: {outputs}} = await build({
    entryPoints: entries, absWorkingDir: root, bundle: true, splitting: true, external, format: 'esm', target: 'es2022', conditions: ['production', 'browser'],
    legalComments: 'none', outdir: 'nowhere', write: false, metafile: true, logLevel: 'silent',
  });
  const size = new Map();
  for (const {path, text} of outputFiles) {
    const {code} = await minify(text, minifying);
    size.set(path.slice(path.indexOf('nowhere/')), gzipSync(code, {level: 9}).length);
  }
  return {outputs, size, first: Object.keys(outputs).filter((name) => entries.includes(outputs[name].entryPoint))};
}

/** Adds up, in bytes, what is loaded; undefined when a part that the row needs does not exist. */
async function measure({entry, with: others = [], later, without = [], needs}) {
  const {outputs, size, first} = await chunksOf([entry, ...others], without);
  const head = (name) => outputs[name].entryPoint ?? '';
  if (needs && !Object.keys(outputs).some((name) => needs(head(name)))) return undefined;
  const counted = new Set();
  const walk = (name) => {
    if (counted.has(name)) return;
    counted.add(name);
    for (const {path, kind, external} of outputs[name].imports) {
      if (!external && (kind !== 'dynamic-import' || !later(head(path)))) walk(path);
    }
  };
  first.forEach(walk);
  return [...counted].reduce((sum, name) => sum + size.get(name), 0);
}

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
let broken = 0;
for (const row of rows) {
  const name = row.what.padEnd(42);
  const bytes = existsSync(`${root}/${row.entry}`) ? await measure(row).catch(({errors}) => errors.map(({text}) => text)) : undefined;
  if (bytes === undefined) console.log(`${name} missing`);
  else if (Array.isArray(bytes)) { broken++; console.log(`${name} does not build: ${bytes.join('; ')}`); }
  else if (row.budget === undefined) console.log(`${name} ${kB(bytes).padStart(9)}`);
  else {
    const share = bytes / (row.budget * 1000);
    console.log(`${name} ${kB(bytes).padStart(9)} of ${String(row.budget).padStart(3)} kB  ${String(Math.round(share * 100)).padStart(3)} %${share > 1 ? '  over budget' : ''}`);
  }
}
process.exitCode = broken > 0 ? 1 : 0;
