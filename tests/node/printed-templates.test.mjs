// Templates as a printer gets them: made by the element on a page under the strict policy, turned into pixels, measured.
/* global document, customElements, Event, btoa -- of the page on which a function is evaluated */
import assert from 'node:assert/strict';
import {execFileSync, spawnSync} from 'node:child_process';
import {mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {after, before, describe, it} from 'node:test';
import {openSources} from './source-pages.mjs';

/** 254 pixels an inch are 10 a millimetre. */
const DPI = 254;

/** Darker than this is ink. */
const INK = 140;

const why = spawnSync('pdftoppm', ['-v']).error ? 'pdftoppm is not installed (Debian: apt-get install poppler-utils).' : undefined;

/** A grey image, one byte for each pixel (netpbm's PGM). */
function readPgm(file) {
  const bytes = readFileSync(file);
  const [head, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  return {width: Number(width), height: Number(height), pixels: bytes.subarray(head.length)};
}

/** The pages of a PDF, as a printer at 254 dots an inch would see them. */
function printed(pdf) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'printed-'));
  try {
    writeFileSync(path.join(folder, 'file.pdf'), pdf);
    execFileSync('pdftoppm', ['-r', String(DPI), '-gray', path.join(folder, 'file.pdf'), path.join(folder, 'page')]);
    return readdirSync(folder).filter((name) => name.endsWith('.pgm')).sort().map((name) => readPgm(path.join(folder, name)));
  } finally {
    rmSync(folder, {recursive: true, force: true});
  }
}

/** Where straight lines lie across a strip: the middle of the ink of neighbouring rows or columns that are dark for at least `long` pixels on end. */
function lines(count, length, at, long) {
  const found = [];
  let sum = 0, weight = 0;
  for (let i = 0; i <= count; i++) {
    let run = 0, longest = 0, ink = 0;
    for (let k = 0; i < count && k < length; k++) {
      const dark = 255 - at(i, k);
      run = dark > 255 - INK ? run + 1 : 0;
      if (run > longest) longest = run;
      ink += dark;
    }
    if (longest >= long) { sum += i * ink; weight += ink; }
    else if (weight > 0) { found.push(sum / weight); sum = 0; weight = 0; }
  }
  return found;
}

/** The lines of the boxes at the foot of a page, in pixels from its left and from its top. */
function boxLines({width, height, pixels}) {
  const top = height - 640;
  const at = (x, y) => pixels[y * width + x];
  return {
    upright: lines(width, 640, (x, k) => at(x, top + k), 480),
    level: lines(640, width, (i, x) => at(x, top + i), 900).map((y) => y + top),
  };
}

const address = '/tests/pages/strict/parts-sheet.html';

/** Makes the element on the page write a PDF. */
const writeOn = async (page, fields) => Buffer.from(await page.evaluate(async (chosen) => {
  const element = document.querySelector('glider-parts-sheet');
  const wait = async (found) => {
    for (let tries = 0; tries < 600; tries++) {
      if (found()) return found();
      await new Promise((resolve) => { setTimeout(resolve, 50); });
    }
    throw new Error(`waited in vain; the page says: ${element.shadowRoot.querySelector('.templates').textContent}`);
  };
  await customElements.whenDefined('glider-parts-sheet');
  await element.updateComplete;
  element.shadowRoot.querySelector('.templates').open = true;
  await wait(() => element.shadowRoot.querySelector('#field-paper'));
  for (const [name, value] of Object.entries(chosen)) {
    const field = element.shadowRoot.querySelector(`#field-${name}`);
    field.value = value;
    field.dispatchEvent(new Event(field.localName === 'select' ? 'change' : 'input', {bubbles: true, composed: true}));
    await element.updateComplete;
  }
  const kept = [];
  const keep = URL.createObjectURL;
  URL.createObjectURL = (blob) => { kept.push(blob); return keep.call(URL, blob); };
  element.shadowRoot.addEventListener('click', (event) => { if (event.target.matches('a.file')) event.preventDefault(); });
  element.shadowRoot.querySelector('.make button').click();
  await wait(() => element.shadowRoot.querySelector('a.file'));
  URL.createObjectURL = keep;
  const bytes = new Uint8Array(await kept[0].arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}, fields), 'base64');

describe('printed templates', {skip: why && !process.env.CI ? why : false}, () => {
  let sources;
  before(async () => {
    if (why) throw new Error(why);
    sources = await openSources();
  });
  after(() => sources?.close());

  async function pagesOf(fields) {
    const page = await sources.page();
    const complaints = [];
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => { if (/Content Security Policy/i.test(message.text())) complaints.push(message.text()); });
    await page.goto(sources.address + address);
    const pages = printed(await writeOn(page, fields));
    assert.deepEqual(complaints, []);
    await page.close();
    return pages;
  }

  for (const [paper, width, height] of [['a4', 2100, 2970], ['letter', 2159, 2794]]) {
    it(`measures 100 × 50 mm and 4 × 2 in on every page of ${paper}`, async () => {
      const pages = await pagesOf({paper});
      assert.ok(pages.length > 3, `only ${pages.length} pages`);
      for (const [i, page] of pages.entries()) {
        assert.ok(Math.abs(page.width - width) <= 1 && Math.abs(page.height - height) <= 1, `page ${i + 1} is ${page.width} × ${page.height}`);
        const {upright, level} = boxLines(page);
        assert.equal(upright.length, 3, `page ${i + 1}: uprights at ${upright}`);
        assert.equal(level.length, 3, `page ${i + 1}: levels at ${level}`);
        const [left, right, outer] = upright, [over, top, bottom] = level;
        for (const [name, is, wanted] of [['100 mm', right - left, 1000], ['4 in', outer - left, 1016], ['50 mm', bottom - top, 500], ['2 in', bottom - over, 508]]) {
          assert.ok(Math.abs(is - wanted) <= 1, `page ${i + 1}: ${name} is ${is} pixels long, not ${wanted}`);
        }
      }
    });
  }

  it('measures what a printer that is off would put right', async () => {
    const [page] = await pagesOf({'paper': 'a4', 'printed-across': '98.4', 'printed-up': '50.6'});
    const {upright: [left, right], level: [, top, bottom]} = boxLines(page);
    assert.ok(Math.abs((right - left) * 0.984 - 1000) <= 1, `across: ${right - left}`);
    assert.ok(Math.abs((bottom - top) * 50.6 / 50 - 500) <= 1, `up: ${bottom - top}`);
  });

  it('measures the board itself on one page', async () => {
    const [page, ...more] = await pagesOf({paper: 'whole'});
    assert.equal(more.length, 0);
    const {width, height, pixels} = page;
    assert.ok(Math.abs(width - 7240) <= 1, `the page is ${width} pixels wide`);
    const upright = lines(width, height, (x, y) => pixels[y * width + x], 4000);
    const level = lines(height, width, (y, x) => pixels[y * width + x], 6500);
    assert.ok(Math.abs(upright.at(-1) - upright[0] - 7000) <= 1, `uprights at ${upright}`);
    assert.ok(Math.abs(level.at(-1) - level[0] - 5000) <= 1, `levels at ${level}`);
  });
});

describe('the page printed as it is', () => {
  it('shows the sheet, marked as not to scale, and nothing that makes files', async () => {
    const sources = await openSources();
    try {
      const page = await sources.page();
      await page.goto(sources.address + address);
      const shown = () => page.evaluate(async () => {
        await customElements.whenDefined('glider-parts-sheet');
        const element = document.querySelector('glider-parts-sheet');
        await element.updateComplete;
        for (let tries = 0; tries < 600 && !element.shadowRoot.querySelector('svg text'); tries++) await new Promise((resolve) => { setTimeout(resolve, 50); });
        const seen = (selector) => element.shadowRoot.querySelector(selector).getBoundingClientRect().height > 0;
        return {mark: seen('.not-to-scale'), sheet: seen('svg text'), files: seen('.templates'), said: element.shadowRoot.querySelector('.not-to-scale').textContent};
      });
      const {said, ...onScreen} = await shown();
      assert.deepEqual(onScreen, {mark: false, sheet: true, files: true});
      await page.emulateMediaType('print');
      const {said: again, ...onPaper} = await shown();
      assert.deepEqual(onPaper, {mark: true, sheet: true, files: false});
      assert.match(again, /^Not to scale/);
      assert.equal(again, said);
    } finally {
      await sources.close();
    }
  });
});
