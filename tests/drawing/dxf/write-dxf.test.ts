import {expect} from '@open-wc/testing';
import {DxfParser} from 'dxf-parser';
import type {IDxf, IEntity, ILineEntity, ILwpolylineEntity, ITextEntity} from 'dxf-parser';
import {writeDxf} from '../../../src/drawing/dxf/write-dxf.js';
import {layeredSheets} from '../../../src/drawing/layers.js';
import {defaultDesign} from '../../../src/calc/design/design.js';
import {jobOf, tapered} from '../template-jobs.js';

function read(text: string): IDxf {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not read');
  return dxf;
}

const isLine = (entity: IEntity): entity is ILineEntity => entity.type === 'LINE';
const isPolyline = (entity: IEntity): entity is ILwpolylineEntity => entity.type === 'LWPOLYLINE';
const isText = (entity: IEntity): entity is ITextEntity => entity.type === 'TEXT';
const on = <E extends IEntity>(dxf: IDxf, layer: string, is: (entity: IEntity) => entity is E): readonly E[] => dxf.entities.filter(is).filter((entity) => entity.layer === layer);

describe('a DXF file of a sheet', () => {
  it('is in millimetres and has a layer for each thing to do on each face', () => {
    const {board, sheets} = jobOf();
    const dxf = read(writeDxf(layeredSheets(board, sheets)));
    expect(dxf.header['$INSUNITS']).to.equal(4);
    expect(Object.keys(dxf.tables.layer.layers)).to.include.members(['CUT', 'CREASE-A', 'CREASE-B', 'MARK-A', 'MARK-B', 'NAMES', 'BOARD']);
    expect(new Set(dxf.entities.map(({layer}) => layer))).to.deep.equal(new Set(['CUT', 'CREASE-A', 'CREASE-B', 'MARK-A', 'MARK-B', 'NAMES', 'BOARD']));
  });

  it('holds every outline as a closed polyline and every line with its ends, to a millionth of a millimetre', () => {
    const {board, sheets: [sheet]} = jobOf({}, tapered);
    if (!sheet) throw new Error('no sheet');
    const dxf = read(writeDxf(layeredSheets(board, [sheet])));
    const near = (a: {x: number; y: number} | undefined, b: {x: number; y: number} | undefined): void => {
      expect(a?.x).to.be.closeTo(b?.x ?? NaN, 1e-6);
      expect(a?.y).to.be.closeTo(b?.y ?? NaN, 1e-6);
    };
    const outlines = on(dxf, 'CUT', isPolyline);
    expect(outlines).to.have.length(sheet.pieces.length);
    outlines.forEach((polyline, i) => {
      const outline = sheet.pieces[i]?.outline ?? [];
      expect(polyline.shape).to.equal(true);
      expect(polyline.vertices).to.have.length(outline.length);
      polyline.vertices.forEach((vertex, k) => { near(vertex, outline[k]); });
    });
    for (const face of ['A', 'B'] as const) {
      for (const [layer, kinds] of [[`CREASE-${face}`, ['crease', 'joint']], [`MARK-${face}`, ['mark']]] as const) {
        const wanted = sheet.pieces.flatMap(({lines}) => lines.filter((line) => line.face === face && (kinds as readonly string[]).includes(line.kind)));
        const lines = on(dxf, layer, isLine);
        expect(lines, layer).to.have.length(wanted.length).above(0);
        lines.forEach(({vertices: [from, to]}, i) => { near(from, wanted[i]?.from); near(to, wanted[i]?.to); });
      }
    }
    expect(on(dxf, 'BOARD', isPolyline)[0]?.vertices.map(({x, y}) => [x, y])).to.deep.equal([[0, 0], [700, 0], [700, 500], [0, 500]]);
  });

  it('names the pieces inside their outlines, letters beyond ASCII written as the format has them', () => {
    const {board, sheets} = jobOf();
    const named = sheets.map((sheet) => ({...sheet, pieces: sheet.pieces.map((piece) => ({...piece, name: 'Flügel', size: '660\u00a0× 120'}))}));
    const text = writeDxf(layeredSheets(board, named));
    expect(text).to.match(/^[\x20-\x7e\r\n]*$/);
    expect(text).to.contain('Fl\\U+00FCgel').and.to.contain('660 \\U+00D7 120');
    const texts = on(read(text), 'NAMES', isText);
    for (const [i, {outline, number}] of (named[0]?.pieces ?? []).entries()) {
      const title = texts.find((each) => each.text.startsWith(`${String(number)} `));
      if (!title) throw new Error(`piece ${String(i)} has no name`);
      const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
      const {x, y} = title.startPoint;
      expect(x > Math.min(...xs) && x < Math.max(...xs) && y > Math.min(...ys) && y < Math.max(...ys), title.text).to.equal(true);
    }
  });

  it('lays several boards side by side', () => {
    const {board, sheets} = jobOf({}, defaultDesign, 3);
    const boards = on(read(writeDxf(layeredSheets(board, sheets))), 'BOARD', isPolyline);
    expect(boards.map(({vertices: [corner]}) => corner?.x)).to.deep.equal([0, 720]);
  });
});
