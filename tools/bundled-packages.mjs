import {existsSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Packages that are no plain modules, or bring some that are not: each is made into one, for the page and for the bundles. The last is for tests. */
const names = ['jspdf', 'svg2pdf.js', 'dxf-writer', 'jstat', 'papaparse', '@svgdotjs/svg.js', 'dxf-parser'];

/**
 * Of svg.js only the class of an <svg> and what that needs: the pen gives nodes their attributes and asks for no more. With its animation, its ready-made
 * shapes and gradients, which its main module fits to every node, it would be more than twice as large. Versions
 * that come as one file come whole.
 */
const svgClass = './node_modules/@svgdotjs/svg.js/src/elements/Svg.js';
const parts = existsSync(`${root}${svgClass}`) ? {'@svgdotjs/svg.js': `export {default as Svg} from '${svgClass}';`} : {};
const served = '/bundled-packages/';

// jspdf offers to print web pages by these; it loads them only when asked to, and nobody here asks
const unused = ['canvg', 'dompurify', 'html2canvas'];

const withoutUnused = {
  name: 'without-unused',
  setup({onResolve, onLoad}) {
    onResolve({filter: new RegExp(`^(${unused.join('|')})$`)}, ({path}) => ({path, namespace: 'unused'}));
    onLoad({filter: /./, namespace: 'unused'}, () => ({contents: 'export default undefined;'}));
  },
};

const bundles = new Map();

/** The text of a package as one module, which imports the other bundled packages by their names. */
function bundleOf(name) {
  if (!bundles.has(name)) {
    bundles.set(name, build({
      ...name in parts ? {stdin: {contents: parts[name], resolveDir: root}} : {entryPoints: [name]}, absWorkingDir: root,
      bundle: true, format: 'esm', target: 'es2022', conditions: ['production', 'browser'], external: names.filter((other) => other !== name),
      minify: true, plugins: [withoutUnused], write: false, logLevel: 'silent', legalComments: 'none',
    }).then(({outputFiles: [file]}) => file.text));
  }
  return bundles.get(name);
}

/** For Rollup. */
export const bundledPackages = () => ({
  name: 'bundled-packages',
  resolveId: (source) => (names.includes(source) ? `\0bundled:${source}` : null),
  load: (id) => (id.startsWith('\0bundled:') ? bundleOf(id.slice('\0bundled:'.length)) : null),
});

/** For @web/dev-server and @web/test-runner. */
export const bundledPackagesServer = () => ({
  name: 'bundled-packages',
  resolveImport: ({source}) => (names.includes(source) ? `${served}${source}.module` : undefined),
  serve: async ({path}) => (path.startsWith(served) ? {body: await bundleOf(path.slice(served.length, -'.module'.length)), type: 'js'} : undefined),
});
