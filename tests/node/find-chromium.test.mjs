import assert from 'node:assert/strict';
import {describe, it} from 'node:test';
import {findChromium, installedPlaces} from '../../tools/find-chromium.mjs';

const packaged = async () => ({executablePath: '/packaged/chromium', env: {FONTCONFIG_FILE: '/packaged/fonts.conf'}});
const nothing = async () => undefined;

/** A Linux machine on which the given files exist, and all of them start but the broken ones. */
const machine = (files, {broken = [], env = {}, carried = packaged} = {}) => ({
  env: {PATH: '/usr/local/bin:/usr/bin', ...env}, platform: 'linux', packaged: carried,
  exists: (file) => files.includes(file), starts: (file) => files.includes(file) && !broken.includes(file),
});

describe('which Chromium runs the tests', () => {
  it('is the one that CHROME_PATH names, before an installed one', async () => {
    const found = await findChromium(machine(['/opt/mine', '/usr/bin/chromium'], {env: {CHROME_PATH: '/opt/mine'}}));
    assert.deepEqual(found, {executablePath: '/opt/mine'});
  });

  it('is never another one when CHROME_PATH does not run', async () => {
    await assert.rejects(findChromium(machine(['/usr/bin/chromium'], {env: {CHROME_PATH: '/opt/gone'}})), /CHROME_PATH is \/opt\/gone, which does not run/);
  });

  it('is an installed one, before the packaged one', async () => {
    assert.deepEqual(await findChromium(machine(['/usr/bin/google-chrome'])), {executablePath: '/usr/bin/google-chrome'});
    assert.deepEqual(await findChromium(machine(['/usr/bin/microsoft-edge'])), {executablePath: '/usr/bin/microsoft-edge'});
  });

  it('passes over an installed one that does not start', async () => {
    const found = await findChromium(machine(['/usr/bin/chromium', '/usr/bin/google-chrome'], {broken: ['/usr/bin/chromium']}));
    assert.deepEqual(found, {executablePath: '/usr/bin/google-chrome'});
  });

  it('is the packaged one, with its own environment, where none is installed', async () => {
    assert.deepEqual(await findChromium(machine([])), await packaged());
  });

  it('is an error that says what to do where there is none at all', async () => {
    await assert.rejects(findChromium(machine([], {carried: nothing})), /apt-get install chromium.*CHROME_PATH/);
  });

  it('is looked for where each system installs it', () => {
    assert.ok(installedPlaces({}, 'darwin').includes('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'));
    assert.ok(installedPlaces({PROGRAMFILES: 'C:/Program Files'}, 'win32').some((file) => file.endsWith('msedge.exe')));
    assert.deepEqual(installedPlaces({}, 'linux'), []);
  });
});
