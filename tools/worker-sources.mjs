import {existsSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * For @web/dev-server and @web/test-runner: a worker is started by the address that its module has once it is compiled, so from the sources
 * `…/search-worker.js` is its `.ts` file. Imports need no such help.
 */
export function workerSources(context, next) {
  const source = context.path.replace(/\.js$/, '.ts');
  if (source !== context.path && /^\/src\//.test(source) && !existsSync(`${root}${context.path}`) && existsSync(`${root}${source}`)) context.path = source;
  return next();
}
