import {defaultReporter} from '@web/test-runner';
import {browserFigures} from './tools/browser-figures.mjs';
import {bundledPackagesServer} from './tools/bundled-packages.mjs';
import {launcherFor} from './tools/launchers.mjs';
import {strictPages} from './tools/strict-pages.mjs';
import {typescriptServer} from './tools/typescript-server.mjs';
import {workerSources} from './tools/worker-sources.mjs';

const browsers = (process.env.BROWSERS ?? 'chromium').split(',');

const isLitDevMode = (arg) => typeof arg === 'string' && arg.includes('lit.dev/msg/dev-mode');

export default {
  files: ['tests/**/*.test.ts'],
  nodeResolve: true,
  // axe alone needs more than mocha's two seconds on a small machine
  testFramework: {config: {timeout: 40_000}},
  testRunnerHtml: (framework) => `<!DOCTYPE html>
<html lang="en">
  <head><meta charset="utf-8"><title>Tests</title><link rel="icon" href="data:,"></head>
  <body><script type="module" src="${framework}"></script></body>
</html>`,
  middleware: [workerSources],
  plugins: [strictPages(), bundledPackagesServer(), typescriptServer()],
  browsers: await Promise.all(browsers.map(launcherFor)),
  concurrentBrowsers: browsers.length,
  reporters: [defaultReporter(), browserFigures()],
  filterBrowserLogs: ({args}) => !args.some(isLitDevMode),
  coverageConfig: {include: ['src/**/*.ts'], reporters: ['text', 'lcovonly']},
};
