import {existsSync, readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Every element, found by its folder: the one that holds `define` and a module named like itself. `folder` is relative to
 * the project, `extension` tells sources from compiled files.
 */
export function elementsIn(folder = 'src/components', extension = '.ts') {
  return readdirSync(`${root}/${folder}`).sort()
    .map((name) => ({tag: `glider-${name}`, name, define: `${folder}/${name}/define${extension}`, element: `${folder}/${name}/${name}${extension}`}))
    .filter(({define, element}) => existsSync(`${root}/${define}`) && existsSync(`${root}/${element}`));
}
