import {mkdirSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {runs} from './browser-runs.mjs';

const folder = fileURLToPath(new URL('../node_modules/.cache/chromium', import.meta.url));

// The package's own fonts.conf knows one folder that is empty here, and without any font the renderer crashes.
const fontsConf = `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>/usr/share/fonts</dir><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>
`;

/** Runs work while the system's temporary folder is ours: that is where the package unpacks. */
async function unpackingHere(work) {
  const {TMPDIR} = process.env;
  process.env.TMPDIR = folder;
  try {
    return await work();
  } finally {
    if (TMPDIR === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = TMPDIR;
  }
}

async function unpack() {
  mkdirSync(folder, {recursive: true});
  const env = {...process.env, FONTCONFIG_FILE: path.join(folder, 'fonts.conf')};
  writeFileSync(env.FONTCONFIG_FILE, fontsConf);
  return unpackingHere(async () => {
    const entry = import.meta.resolve('@sparticuz/chromium');
    const {default: chromium} = await import(entry);
    const executablePath = await chromium.executablePath();
    if (runs(executablePath, env)) return {executablePath, env};
    // A machine without NSS, NSPR or expat: the package brings them, but unpacks them for one host only unless its inner
    // module is asked. Hence its exact version in package.json.
    const {inflate} = await import(new URL('lambdafs.js', entry).href);
    await inflate(fileURLToPath(new URL('../../bin/al2023.tar.br', entry)));
    env.LD_LIBRARY_PATH = [path.join(folder, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(path.delimiter);
    return runs(executablePath, env) ? {executablePath, env} : undefined;
  });
}

/** The Chromium inside @sparticuz/chromium (Linux on x64 only), unpacked under node_modules/.cache; undefined if it cannot run. */
export async function packagedChromium() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  for (const attempt of [1, 2]) {
    try {
      const found = await unpack();
      if (found) return found;
    } catch (error) {
      console.warn(`@sparticuz/chromium, attempt ${attempt}: ${error.message}`);
    }
    rmSync(folder, {recursive: true, force: true}); // perhaps half unpacked by a run that was stopped
  }
  return undefined;
}
