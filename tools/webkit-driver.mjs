import {spawn} from 'node:child_process';
import {existsSync, readdirSync} from 'node:fs';
import net from 'node:net';
import {setTimeout as wait} from 'node:timers/promises';

const DRIVER = '/usr/bin/WebKitWebDriver';
const LIBRARIES = ['/usr/lib/x86_64-linux-gnu', '/usr/lib/aarch64-linux-gnu', '/usr/libexec'];

/** WebKitGTK's driver and its MiniBrowser, newest first, as Debian installs them; undefined where there is none. */
export function findWebKit() {
  if (!existsSync(DRIVER)) return undefined;
  const binary = LIBRARIES.filter((folder) => existsSync(folder))
    .flatMap((folder) => readdirSync(folder).filter((name) => /^webkit(2)?gtk-/.test(name)).sort().reverse().map((name) => `${folder}/${name}/MiniBrowser`))
    .find((file) => existsSync(file));
  return binary && {driver: DRIVER, binary};
}

const freePort = () => new Promise((resolve, reject) => {
  const server = net.createServer().once('error', reject).listen(0, '127.0.0.1', () => {
    const {port} = server.address();
    server.close(() => { resolve(port); });
  });
});

async function send(method, address, body) {
  const answer = await fetch(address, {method, ...(body ? {body: JSON.stringify(body), headers: {'content-type': 'application/json'}} : {})});
  const {value} = await answer.json();
  if (value?.error) throw new Error(`WebDriver: ${value.error}: ${value.message}`);
  return value;
}

async function answering(base, tries = 100) {
  for (;;) {
    try {
      return await send('GET', `${base}/status`);
    } catch (error) {
      if (--tries === 0) throw error;
      await wait(100);
    }
  }
}

/** Starts WebKit behind its driver, on a screen of its own where there is none, and gives one WebDriver session. */
export async function startWebKit({driver, binary}) {
  const port = await freePort();
  const base = `http://127.0.0.1:${port}`;
  const command = [driver, `--port=${port}`];
  if (!process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) command.unshift('xvfb-run', '-a', '-s', '-screen 0 1280x1024x24');
  const child = spawn(command[0], command.slice(1), {stdio: 'ignore', detached: true});

  const kill = () => {
    try {
      process.kill(-child.pid);
    } catch { /* gone already */ }
  };
  process.once('exit', kill);
  for (const signal of ['SIGTERM', 'SIGHUP']) process.once(signal, () => process.exit(143)); // so that 'exit' comes

  await answering(base);
  const {sessionId} = await send('POST', `${base}/session`, {capabilities: {alwaysMatch: {'webkitgtk:browserOptions': {binary, args: ['--automation']}}}});
  const call = (method, path, body) => send(method, `${base}/session/${sessionId}${path}`, body);
  return {
    call,
    async stop() {
      await call('DELETE', '').catch(() => undefined);
      kill();
      process.removeListener('exit', kill);
    },
  };
}
