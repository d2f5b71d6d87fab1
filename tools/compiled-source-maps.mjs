import {readFile} from 'node:fs/promises';

/** A Rollup plugin that reads the source maps beside tsc's output, so that a bundle's map leads to the TypeScript. */
export const compiledSourceMaps = () => ({
  name: 'compiled-source-maps',
  async load(id) {
    if (!/[\\/]build[\\/].*\.js$/.test(id)) return null;
    const [code, map] = await Promise.all([readFile(id, 'utf8'), readFile(`${id}.map`, 'utf8')]);
    return {code: code.replace(/\n\/\/# sourceMappingURL=.*\s*$/, '\n'), map: JSON.parse(map)};
  },
});
