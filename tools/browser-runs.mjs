import {execFileSync} from 'node:child_process';
import {accessSync, constants} from 'node:fs';

/** Whether a browser starts at all: a wrapper without its browser, or a binary without its libraries, does not. */
export function runs(file, env = process.env) {
  try {
    accessSync(file, constants.X_OK);
    // chrome.exe --version opens a window
    if (process.platform !== 'win32') execFileSync(file, ['--version'], {env, stdio: ['ignore', 'pipe', 'ignore'], timeout: 20_000});
    return true;
  } catch {
    return false;
  }
}
