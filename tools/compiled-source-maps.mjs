import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

const compiled = fileURLToPath(new URL('../build/', import.meta.url));

/** A Rollup plugin that reads the source maps beside tsc's output, so that a bundle's map leads to the TypeScript. */
export const compiledSourceMaps = () => ({
  name: 'compiled-source-maps',
  async load(id) {
    if (!path.normalize(id).startsWith(compiled) || !id.endsWith('.js')) return null;   // packages have folders of that name too
    const [code, map] = await Promise.all([readFile(id, 'utf8'), readFile(`${id}.map`, 'utf8')]);
    return {code: code.replace(/\n\/\/# sourceMappingURL=.*\s*$/, '\n'), map: JSON.parse(map)};
  },
});
