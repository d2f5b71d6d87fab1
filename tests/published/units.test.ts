import {expect} from '@open-wc/testing';
import {units} from '../../src/calc/units/kinds.js';
import type {QuantityKind} from '../../src/calc/units/kinds.js';
import {readQuantity} from '../../src/calc/units/read.js';

function si(text: string, kind: QuantityKind): number {
  const read = readQuantity(text, kind);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
}

describe('published: units', () => {
  describe('international yard and pound agreement, 1 July 1959: exact', () => {
    // 1 yd = 0.9144 m and 1 lb = 0.453 592 37 kg, as encyclopedias recount it (the announcement itself was not looked up); 36 in = 3 ft = 1 yd, 16 oz = 1 lb
    it('a yard of 36 inches or 3 feet', () => {
      expect(si('36 in', 'length')).to.equal(0.9144);
      expect(si('3 ft', 'length')).to.equal(0.9144);
      expect(si('1 in', 'length')).to.equal(0.0254);
    });
    it('a pound of 16 ounces', () => {
      expect(si('1 lb', 'mass')).to.equal(0.45359237);
      expect(si('16 oz', 'mass')).to.equal(0.45359237);
      expect(si('1 oz', 'mass')).to.equal(0.028349523125);
    });
  });

  describe('16 CFR 500.19(a), table of SI metric and inch/pound conversion factors (read)', () => {
    const exact: readonly (readonly [string, QuantityKind, number])[] = [
      ['1 in', 'length', 0.0254], ['1 ft', 'length', 0.3048], ['1 in²', 'area', 6.4516e-4], ['1 ft²', 'area', 0.09290304],
    ];
    for (const [text, kind, value] of exact) it(`${text}, marked "exactly" there`, () => { expect(si(text, kind)).to.equal(value); });

    // 1 oz = 28.3495 g and 1 lb = 453.592 g are given there to six digits
    it('1 oz is 28.3495 g', () => { expect(si('1 oz', 'mass') * 1000).to.be.closeTo(28.3495, 0.0001); });
    it('1 lb is 453.592 g', () => { expect(si('1 lb', 'mass') * 1000).to.be.closeTo(453.592, 0.0005); });
    // 1 ft³ = 0.028 316 8 m³: a pound or an ounce in it
    it('1 lb/ft³ is a pound in 0.028 316 8 m³', () => { expect(0.453592 / si('1 lb/ft³', 'density')).to.be.closeTo(0.0283168, 5e-8); });
    it('1 oz/ft³ is an ounce in 0.028 316 8 m³', () => { expect(0.0283495 / si('1 oz/ft³', 'density')).to.be.closeTo(0.0283168, 5e-8); });
    // 1 m² = 10.7639 ft², 1 dm² = 0.107 639 ft², 1 cm² = 0.155 000 in²
    it('1 m² is 10.7639 ft²', () => { expect(1 / si('1 ft²', 'area')).to.be.closeTo(10.7639, 0.00005); });
    it('1 dm² is 0.107 639 ft²', () => { expect(si('1 dm²', 'area') / si('1 ft²', 'area')).to.be.closeTo(0.107639, 5e-7); });
    it('1 cm² is 0.155 000 in²', () => { expect(si('1 cm²', 'area') / si('1 in²', 'area')).to.be.closeTo(0.155, 5e-7); });
  });

  describe('worked out by hand from the exact definitions', () => {
    it('1 oz/ft² is 3.051517 g/dm²', () => { expect(si('1 oz/ft²', 'areal-mass') / si('1 g/dm²', 'areal-mass')).to.be.closeTo(3.051517, 1e-6); });
    it('1 oz/ft³ is 1.001154 kg/m³', () => { expect(si('1 oz/ft³', 'cube-loading')).to.be.closeTo(1.001154, 1e-6); });
  });

  describe('NIST SP 811, appendix B.8, conversion factors to seven digits (from memory, printed source not looked up)', () => {
    const factors: readonly (readonly [symbol: string, factor: number])[] = [
      ['ft/s', 3.048e-1], ['mph', 4.4704e-1], ['km/h', 2.777778e-1], ['°', 1.745329e-2],
      ['oz/ft²', 3.051517e-1], ['lb/ft³', 1.601846e1], ['oz', 2.834952e-2], ['lb', 4.535924e-1], ['g/cm³', 1e3],
    ];
    for (const [symbol, factor] of factors) {
      it(`1 ${symbol} is ${String(factor)} in SI`, () => {
        expect(units[symbol]?.si).to.be.closeTo(factor, 5e-7 * 10 ** Math.floor(Math.log10(factor)));
      });
    }
  });

  it('SI prefixes and per cent: exact by definition', () => {
    const powers = {'mm': 1e-3, 'cm': 1e-2, 'm': 1, 'g': 1e-3, 'kg': 1, '%': 1e-2, 'g/m²': 1e-3, 'g/dm²': 1e-1, 'cm²': 1e-4, 'dm²': 1e-2, 'g/cm³': 1e3};
    for (const [symbol, power] of Object.entries(powers)) expect(units[symbol]?.si, symbol).to.equal(power);
  });
});
