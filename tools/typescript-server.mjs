import {fileURLToPath} from 'node:url';
import {esbuildPlugin} from '@web/dev-server-esbuild';

/** Serves the TypeScript sources as modules, without a build; an import that ends in .js finds its .ts file. */
export const typescriptServer = () => esbuildPlugin({ts: true, target: 'es2022', tsconfig: fileURLToPath(new URL('../tsconfig.json', import.meta.url))});
