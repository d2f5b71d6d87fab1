/** Sheet sizes against the standards that name them. */
import {expect} from '@open-wc/testing';
import {sheetSizes, type SheetSizeId} from '../../shared/sheet-sizes.js';

const millimetres = (id: SheetSizeId): [number, number] => {
  const size = sheetSizes.find((each) => each.id === id);
  return size ? [size.width * 1000, size.length * 1000] : [NaN, NaN];
};

function expectSize(id: SheetSizeId, [width, length]: readonly [number, number], tolerance: number): void {
  const [w, l] = millimetres(id);
  expect(w).to.be.closeTo(width, tolerance);
  expect(l).to.be.closeTo(length, tolerance);
}

describe('ISO 216 sizes (table read)', () => {
  const table = {
    a0: [841, 1189], a1: [594, 841], a2: [420, 594], a3: [297, 420], a4: [210, 297],
    b1: [707, 1000], b2: [500, 707], b3: [353, 500],
  } as const;
  for (const [id, size] of Object.entries(table)) {
    it(`${id.toUpperCase()} is ${size.join(' × ')} mm`, () => { expectSize(id as keyof typeof table, size, 1e-9); });
  }

  // The rules behind the table: A0 is a square metre, every sheet is √2 longer than wide, A(n + 1) is half of A(n), and
  // B(n) is the geometric mean of A(n) and A(n − 1); all rounded to whole millimetres
  it('follows the rules that the table is rounded from', () => {
    const side = (n: number) => 1000 * 2 ** (0.25 - n / 2);
    for (let n = 0; n <= 4; n++) expectSize(`a${n.toString()}` as SheetSizeId, [side(n + 1), side(n)], 1);
    for (let n = 1; n <= 3; n++) {
      expectSize(`b${n.toString()}` as SheetSizeId, [Math.sqrt(side(n + 1) * side(n)), Math.sqrt(side(n) * side(n - 1))], 1);
    }
  });
});

describe('sizes in inches', () => {
  // ASME Y14.1, size A, 8½ × 11 in
  it('Letter is 215.9 × 279.4 mm', () => { expectSize('letter', [215.9, 279.4], 1e-9); });

  // ASME Y14.1, size B, 11 × 17 in (from memory)
  it('Tabloid is 279.4 × 431.8 mm', () => { expectSize('tabloid', [279.4, 431.8], 1e-9); });

  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)
  it('a 20 × 30 in sheet is 508 × 762 mm', () => { expectSize('30x20in', [508, 762], 1e-9); });

  it('have the sides their names say', () => {
    for (const {id, length, width} of sheetSizes) {
      const named = /^(\d+)x(\d+)in$/.exec(id);
      if (!named) continue;
      expect(length).to.be.closeTo(Number(named[1]) * 0.0254, 1e-12);
      expect(width).to.be.closeTo(Number(named[2]) * 0.0254, 1e-12);
    }
  });
});

describe('the list of sheets', () => {
  it('names each once, longer side first', () => {
    expect(new Set(sheetSizes.map(({id}) => id)).size).to.equal(sheetSizes.length);
    for (const {length, width} of sheetSizes) expect(length).to.be.above(width);
  });
});
