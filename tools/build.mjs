// npm run build: TypeScript -> build/ -> Rollup -> dist/, the types beside the npm modules, and custom-elements.json.
import {spawnSync} from 'node:child_process';
import {cpSync, rmSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);

function step(...args) {
  const {status} = spawnSync(process.execPath, args, {stdio: 'inherit'});
  if (status !== 0) process.exit(status ?? 1);
}

for (const folder of ['build', 'dist']) rmSync(folder, {recursive: true, force: true});
step('node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json');
step('node_modules/rollup/dist/bin/rollup', '--config', 'rollup.config.mjs');
for (const room of ['src', 'shared']) {
  cpSync(`build/${room}`, `dist/npm/${room}`, {recursive: true, filter: (file) => !/\.js(\.map)?$/.test(file)});
}
step('node_modules/@custom-elements-manifest/analyzer/cem.js', 'analyze', '--config', 'tools/custom-elements-manifest.config.mjs', '--quiet');
step('tools/complete-manifest.mjs');
