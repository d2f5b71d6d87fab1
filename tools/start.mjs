// npm start [-- --port=8000 --host=0.0.0.0]: serves the demo from the sources, without a build.
import net from 'node:net';
import {fileURLToPath} from 'node:url';
import {parseArgs} from 'node:util';
import {startDevServer} from '@web/dev-server';
import {bundledPackagesServer} from './bundled-packages.mjs';
import {strictPages} from './strict-pages.mjs';
import {typescriptServer} from './typescript-server.mjs';
import {workerSources} from './worker-sources.mjs';

const {values} = parseArgs({options: {
  port: {type: 'string', default: process.env.PORT || '8000'},
  host: {type: 'string', default: 'localhost'},
}});

const isFree = (port) => new Promise((resolve) => {
  const probe = net.createServer().once('error', () => { resolve(false); });
  probe.listen(port, values.host, () => { probe.close(() => { resolve(true); }); });
});

async function freePort(from) {
  for (let port = from; port < from + 100; port++) {
    if (await isFree(port)) return port;
    console.log(`Port ${port} is taken.`);
  }
  throw new Error(`No free port from ${from} on.`);
}

const wanted = Number(values.port);
if (!Number.isInteger(wanted) || wanted < 1 || wanted > 65_435) throw new Error(`--port takes a number from 1 to 65435, not ${values.port}.`);
const port = await freePort(wanted);

const toDemo = (context, next) => {
  if (context.path !== '/') return next();
  context.redirect('/demo/');
};

await startDevServer({
  readCliArgs: false, readFileConfig: false, logStartMessage: false,
  config: {
    rootDir: fileURLToPath(new URL('..', import.meta.url)),
    hostname: values.host, port, nodeResolve: true, middleware: [toDemo, workerSources], plugins: [strictPages(), bundledPackagesServer(), typescriptServer()],
  },
});
const name = ['0.0.0.0', '::'].includes(values.host) ? 'localhost' : values.host;
console.log(`The demo is at http://${name}:${port}/demo/ (Ctrl+C ends it).`);
