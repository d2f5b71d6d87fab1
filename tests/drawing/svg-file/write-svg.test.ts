import {expect} from '@open-wc/testing';
import {defaultDesign} from '../../../src/calc/design/design.js';
import {layeredSheets} from '../../../src/drawing/layers.js';
import {writeSvg} from '../../../src/drawing/svg-file/write-svg.js';
import {jobOf, tapered} from '../template-jobs.js';

const read = (text: string): Document => new DOMParser().parseFromString(text, 'image/svg+xml');
const numbers = (text: string | null | undefined): readonly number[] => (text?.match(/-?[\d.]+/g) ?? []).map(Number);

describe('an SVG file of a sheet', () => {
  it('is in millimetres: its size and its viewBox say the same', () => {
    const {board, sheets} = jobOf();
    const root = read(writeSvg(layeredSheets(board, sheets), 'Teal')).documentElement;
    expect(root.querySelector('parsererror')).to.equal(null);
    expect([root.getAttribute('width'), root.getAttribute('height'), root.getAttribute('viewBox')]).to.deep.equal(['702mm', '502mm', '-1 -1 702 502']);
    expect(root.querySelector('title')?.textContent).to.equal('Teal');
  });

  it('shows a square of the board as large as a page shows 96ths of an inch', async () => {
    const {board, sheets} = jobOf();
    const image = new Image();
    image.src = `data:image/svg+xml,${encodeURIComponent(writeSvg(layeredSheets(board, sheets), ''))}`;
    await image.decode();
    expect(image.naturalWidth).to.be.closeTo(702 / 25.4 * 96, 1);
    expect(image.naturalHeight).to.be.closeTo(502 / 25.4 * 96, 1);
  });

  it('has every outline in the group cut, corner by corner, and every groove and mark in the group of its face', () => {
    const {board, sheets: [sheet]} = jobOf({}, tapered);
    if (!sheet) throw new Error('no sheet');
    const root = read(writeSvg(layeredSheets(board, [sheet]), '')).documentElement;
    const drawn = (layer: string): readonly (readonly number[])[] => [...root.querySelectorAll(`#${layer} path`)].map((path) => numbers(path.getAttribute('d')));
    expect(drawn('cut')).to.deep.equal(sheet.pieces.map(({outline}) => outline.flatMap(({x, y}) => [x, 500 - y]).map((n) => Math.round(n * 1e4) / 1e4)));
    for (const [layer, kinds, face] of [['crease-A', ['crease', 'joint'], 'A'], ['crease-B', ['crease', 'joint'], 'B'], ['mark-A', ['mark'], 'A'], ['mark-B', ['mark'], 'B']] as const) {
      const lines = sheet.pieces.flatMap((piece) => piece.lines.filter((line) => line.face === face && (kinds as readonly string[]).includes(line.kind)));
      expect(lines.length, layer).to.be.above(0);
      expect(drawn(layer), layer).to.have.length(lines.length);
    }
    expect(root.querySelectorAll('#names text').length).to.be.at.least(sheet.pieces.length);
  });

  it('lays several boards side by side', () => {
    const {board, sheets} = jobOf({}, defaultDesign, 3);
    expect(sheets).to.have.length(2);
    const root = read(writeSvg(layeredSheets(board, sheets), '')).documentElement;
    expect(root.getAttribute('width')).to.equal('1422mm');
    expect([...root.querySelectorAll('#board path')].map((path) => numbers(path.getAttribute('d')).slice(0, 2))).to.deep.equal([[0, 500], [720, 500]]);
  });

  it('carries no class, style or script, whatever the glider is called', () => {
    const {board, sheets} = jobOf();
    const text = writeSvg(layeredSheets(board, sheets), '<script>alert(1)</script> & "co"');
    expect(text).not.to.match(/<script|style=|class=/);
    expect(read(text).querySelector('title')?.textContent).to.equal('<script>alert(1)</script> & "co"');
  });
});
