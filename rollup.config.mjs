import {readFileSync} from 'node:fs';
import {nodeResolve} from '@rollup/plugin-node-resolve';
import terser from '@rollup/plugin-terser';
import {bundledPackages} from './tools/bundled-packages.mjs';
import {compiledSourceMaps} from './tools/compiled-source-maps.mjs';
import {elementsIn} from './tools/elements.mjs';
import {minifying} from './tools/minifying.mjs';
import {withScriptsBeside} from './tools/scripts-beside.mjs';

const {dependencies} = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));
const isDependency = (id) => Object.keys(dependencies).some((name) => id === name || id.startsWith(`${name}/`));

// tsc's output, see tools/build.mjs
const elements = elementsIn('build/src/components', '.js');
const all = 'build/src/index.js';

// started by its address, which nothing imports
const worker = 'build/src/components/parts-sheet/search/search-worker.js';

const onwarn = ({message}) => { throw new Error(message); };
const smallest = [bundledPackages(), nodeResolve({exportConditions: ['production', 'browser']}), compiledSourceMaps(), terser(minifying)];

/** For bundlers and Node: one module per source file, bare imports, readable code. */
const npm = {
  input: [all, ...['', 'flight/', 'flight-log/', 'sheet/'].map((room) => `build/src/calc/${room}index.js`), worker, ...elements.flatMap(({define, element}) => [define, element])],
  external: isDependency, onwarn,
  plugins: [compiledSourceMaps()],
  output: {dir: 'dist/npm', format: 'es', sourcemap: true, preserveModules: true, preserveModulesRoot: 'build'},
};

/** For pages without a build step: one self-contained entry per element, and what they share in chunks. */
export const cdn = {
  // beside the chunk that starts it
  input: {all, ...Object.fromEntries(elements.map(({tag, define}) => [tag, define])), 'chunks/search-worker': worker},
  onwarn, plugins: smallest,
  output: {dir: 'dist/cdn', format: 'es', sourcemap: true, entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js'},
};

/** For pages opened by double click, from which browsers refuse modules: everything in one script, but for the writers of files. */
const classic = withScriptsBeside({
  input: all,
  onwarn, plugins: smallest,
  output: {file: 'dist/classic/glider-elements.js', format: 'iife', name: 'gliderElements', sourcemap: true, inlineDynamicImports: true},
}, {
  pdf: 'build/src/drawing/pdf/write-pdf.js', dxf: 'build/src/drawing/dxf/write-dxf.js', search: 'build/src/components/parts-sheet/search/search.js',
});

export default [npm, cdn, ...classic];
