import {defaultReporter} from '@web/test-runner';
import {browserFigures} from './tools/browser-figures.mjs';
import {bundledPackagesServer} from './tools/bundled-packages.mjs';
import {launcherFor} from './tools/launchers.mjs';
import {patienceFor, propertyDraws, propertyDrawsServer} from './tools/property-draws.mjs';
import {strictPages} from './tools/strict-pages.mjs';
import {typescriptServer} from './tools/typescript-server.mjs';
import {workerSources} from './tools/worker-sources.mjs';

const browsers = (process.env.BROWSERS ?? 'chromium').split(',');

const draws = propertyDraws();
const patience = patienceFor(draws);

const isLitDevMode = (arg) => typeof arg === 'string' && arg.includes('lit.dev/msg/dev-mode');

export default {
  files: ['tests/**/*.test.ts'],
  nodeResolve: true,
  // these only end what hangs: axe alone, or a search for layouts, takes many seconds on a small machine with much else to do
  testFramework: {config: {timeout: 120_000 * patience}},
  testsStartTimeout: 120_000,
  testsFinishTimeout: 900_000 * patience,
  testRunnerHtml: (framework) => `<!DOCTYPE html>
<html lang="en">
  <head><meta charset="utf-8"><title>Tests</title><link rel="icon" href="data:,"></head>
  <body><script type="module" src="${framework}"></script></body>
</html>`,
  middleware: [workerSources],
  plugins: [strictPages(), propertyDrawsServer(draws), bundledPackagesServer(), typescriptServer()],
  browsers: await Promise.all(browsers.map(launcherFor)),
  concurrentBrowsers: browsers.length,
  reporters: [defaultReporter(), browserFigures()],
  filterBrowserLogs: ({args}) => !args.some(isLitDevMode),
  coverageConfig: {include: ['src/**/*.ts'], reporters: ['text', 'lcovonly']},
};
