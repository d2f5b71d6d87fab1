import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {units} from '../../../src/calc/units/kinds.js';
import type {QuantityKind} from '../../../src/calc/units/kinds.js';
import {readQuantity} from '../../../src/calc/units/read.js';
import type {ReadOptions} from '../../../src/calc/units/read.js';

const kinds: readonly QuantityKind[] =
  ['length', 'mass', 'angle', 'ratio', 'count', 'areal-mass', 'cube-loading', 'area', 'speed', 'density'];

/** What was read as `[SI, unit]`, or the problem as `code args…`. */
function read(text: string, kind: QuantityKind, options?: ReadOptions): readonly [number, string] | string {
  const result = readQuantity(text, kind, options);
  return result.ok ? [result.value, result.unit] : result.problem.code;
}

function problem(text: string, kind: QuantityKind, options?: ReadOptions) {
  const result = readQuantity(text, kind, options);
  return result.ok ? undefined : result.problem;
}

const inch = 0.0254;
const deg = Math.PI / 180;

describe('readQuantity', () => {
  const cases: readonly (readonly [text: string, kind: QuantityKind, value: number, unit: string])[] = [
    ['580 mm', 'length', 0.58, 'mm'], ['58cm', 'length', 0.58, 'cm'], ['0.58 m', 'length', 0.58, 'm'], ['.58m', 'length', 0.58, 'm'],
    ['22 7/8 in', 'length', 0.581025, 'in'], ['22-7/8"', 'length', 0.581025, 'in'], ['22–7⁄8”', 'length', 0.581025, 'in'],
    ['22⅞ in', 'length', 0.581025, 'in'], ['1½ in', 'length', 0.0381, 'in'], ['½in', 'length', 0.0127, 'in'], ['1 ½″', 'length', 0.0381, 'in'],
    ['9/8 in', 'length', 0.028575, 'in'], ['2 in.', 'length', 0.0508, 'in'], ['3 inches', 'length', 0.0762, 'in'],
    ['2 ft 3 in', 'length', 0.6858, 'in'], ['2ft3in', 'length', 0.6858, 'in'], ['2 ft. 3 in.', 'length', 0.6858, 'in'],
    ['2\' 3 1/2"', 'length', 0.6985, 'in'], ['2′3½″', 'length', 0.6985, 'in'], ['2’ 3½”', 'length', 0.6985, 'in'],
    ['2\'-3 1/2"', 'length', 0.6985, 'in'], ['2\' 3\'\'', 'length', 0.6858, 'in'], ['2 feet', 'length', 0.6096, 'ft'],
    ['-12 mm', 'length', -0.012, 'mm'], ['−12 mm', 'length', -0.012, 'mm'], ['– 12 mm', 'length', -0.012, 'mm'], ['+12 mm', 'length', 0.012, 'mm'],
    ['-½ in', 'length', -0.0127, 'in'], ['-2 ft 3 in', 'length', -0.6858, 'in'], ['-0 mm', 'length', 0, 'mm'],
    ['1e9 mm', 'length', 1e6, 'mm'], ['1.5E2mm', 'length', 0.15, 'mm'], ['2e-3 m', 'length', 0.002, 'm'],
    ['580\u00a0mm', 'length', 0.58, 'mm'], ['580\u202fmm', 'length', 0.58, 'mm'], ['\u200e580 mm', 'length', 0.58, 'mm'], ['  580\tmm ', 'length', 0.58, 'mm'],
    ['５８０ｍｍ', 'length', 0.58, 'mm'], ['58 ㎝', 'length', 0.58, 'cm'], ['580 MM', 'length', 0.58, 'mm'], ['2 IN', 'length', 0.0508, 'in'],
    ['58 Centimetres', 'length', 0.58, 'cm'],
    ['85 g', 'mass', 0.085, 'g'], ['0.085 kg', 'mass', 0.085, 'kg'], ['85 grams', 'mass', 0.085, 'g'],
    ['3 oz', 'mass', 0.085048569375, 'oz'], ['½ oz', 'mass', 0.0141747615625, 'oz'],
    ['1 lb 2 oz', 'mass', 0.51029141625, 'oz'], ['1lb2oz', 'mass', 0.51029141625, 'oz'], ['2 lbs', 'mass', 0.90718474, 'lb'],
    ['11.4°', 'angle', 11.4 * deg, '°'], ['11.4 deg', 'angle', 11.4 * deg, '°'], ['11.4º', 'angle', 11.4 * deg, '°'], ['0.2 rad', 'angle', 0.2, 'rad'],
    ['25 %', 'ratio', 0.25, '%'], ['25%', 'ratio', 0.25, '%'], ['57 %', 'ratio', 0.57, '%'], ['4½ %', 'ratio', 0.045, '%'], ['25 ％', 'ratio', 0.25, '%'],
    ['3', 'count', 3, ''], ['2.0', 'count', 2, ''], ['1e3', 'count', 1000, ''], ['-1', 'count', -1, ''],
    ['450 g/m²', 'areal-mass', 0.45, 'g/m²'], ['450 g/m2', 'areal-mass', 0.45, 'g/m²'], ['450g/m^2', 'areal-mass', 0.45, 'g/m²'],
    ['450 gsm', 'areal-mass', 0.45, 'g/m²'], ['4.5 g/dm²', 'areal-mass', 0.45, 'g/dm²'],
    ['12 dm²', 'area', 0.12, 'dm²'], ['100 in2', 'area', 0.064516, 'in²'], ['100 sq in', 'area', 0.064516, 'in²'], ['2 sq. ft', 'area', 0.18580608, 'ft²'],
    ['5 m/s', 'speed', 5, 'm/s'], ['10 mph', 'speed', 4.4704, 'mph'], ['16 ft/s', 'speed', 4.8768, 'ft/s'],
    ['3 kg/m³', 'cube-loading', 3, 'kg/m³'], ['950 kg/m3', 'density', 950, 'kg/m³'], ['0.95 g/cm³', 'density', 950, 'g/cm³'],
  ];
  for (const [text, kind, value, unit] of cases) {
    it(`reads "${text}"`, () => { expect(read(text, kind)).to.deep.equal([value, unit]); });
  }

  it('reads mixed and derived units to within the arithmetic', () => {
    const loading = readQuantity('1.5 oz/sq ft', 'areal-mass');
    expect(loading.ok && loading.value).to.be.closeTo(1.5 * 28.349523125e-3 / 0.09290304, 1e-15);
    const cube = readQuantity('3 oz/cu ft', 'cube-loading');
    expect(cube.ok && cube.value).to.be.closeTo(3 * 28.349523125e-3 / 0.028316846592, 1e-14);
    const speed = readQuantity('18 km/h', 'speed');
    expect(speed.ok && speed.value).to.be.closeTo(5, 1e-14);
  });

  it('reads temperatures in °C, °F and K', () => {
    // fixed points: SI Brochure, 9th edition, 2.3.1 (0 °C); 32 °F and 212 °F at 0 °C and 100 °C, NIST SP 811 (2008), appendix B.8
    expect(read('20 °C', 'temperature')).to.deep.equal([293.15, '°C']);
    expect(read('-5°C', 'temperature')).to.deep.equal([268.15, '°C']);
    expect(read('68', 'temperature', {bareUnit: '°F'})[0]).to.be.closeTo(293.15, 1e-10);
    expect(read('212 °f', 'temperature')[0]).to.be.closeTo(373.15, 1e-10);
    expect(read('293.15 K', 'temperature')).to.deep.equal([293.15, 'K']);
    expect(read('20°', 'temperature')).to.equal('quantity-wrong-unit');
    expect(read('20 °C', 'angle')).to.equal('quantity-wrong-unit');
    expect(read('1600 m', 'altitude')).to.deep.equal([1600, 'm']);
    expect(read('5000 ft', 'altitude')[0]).to.be.closeTo(1524, 1e-9);
  });

  it('reads every spelling of every unit', () => {
    for (const unit of Object.values(units)) {
      for (const name of unit.names) {
        const result = readQuantity(`3 ${name}`, unit.kind);
        expect(result.ok && result.unit, name).to.equal(unit.symbol);
        expect(result.ok && result.value, name).to.be.closeTo(3 * unit.si + unit.offset, 1e-12 * (unit.si + unit.offset));
        expect(read(`3 ${unit.symbol}`, unit.kind), unit.symbol).to.deep.equal(read(`3 ${name}`, unit.kind));
      }
    }
  });

  it('reads one length in different metric units as the identical number', () => {
    fc.assert(fc.property(fc.integer({min: -1_000_000, max: 1_000_000}), (tenths) => {
      const metres = read(`${String(tenths)}e-4 m`, 'length')[0];
      expect(read(`${String(tenths / 10)} mm`, 'length')[0]).to.equal(metres);
      expect(read(`${String(tenths / 100)} cm`, 'length')[0]).to.equal(metres);
    }));
  });

  it('adds feet and inches, pounds and ounces', () => {
    fc.assert(fc.property(fc.nat(99), fc.nat(11), fc.integer({min: 1, max: 15}), (feet, inches, sixteenths) => {
      const text = `${String(feet)} ft ${String(inches)} ${String(sixteenths)}/16 in`;
      expect(read(text, 'length')[0]).to.be.closeTo((feet * 12 + inches + sixteenths / 16) * inch, 1e-12);
    }));
  });

  describe('a bare number', () => {
    it('takes the unit shown beside the field', () => {
      expect(read('580', 'length', {bareUnit: 'mm'})).to.deep.equal([0.58, 'mm']);
      expect(read('22 7/8', 'length', {bareUnit: 'in'})).to.deep.equal([0.581025, 'in']);
      expect(read('58 cm', 'length', {bareUnit: 'mm'})).to.deep.equal([0.58, 'cm']);
      expect(read('25', 'ratio', {bareUnit: '%'})).to.deep.equal([0.25, '%']);
    });

    it('is refused elsewhere with the fix', () => {
      expect(problem('580', 'length')).to.deep.equal({code: 'quantity-no-unit', args: {text: '580', suggestion: '580 mm'}});
      expect(problem('12', 'angle')).to.deep.equal({code: 'quantity-no-unit', args: {text: '12', suggestion: '12°'}});
      expect(problem('0', 'mass')?.args).to.include({suggestion: '0 g'});
    });

    it('is refused where the unit beside the field is of another kind', () => {
      expect(problem('580', 'length', {bareUnit: 'g'})?.args).to.include({suggestion: '580 mm'});
      expect(read('580', 'length', {bareUnit: 'furlong'})).to.equal('quantity-no-unit');
    });

    it('that is a share between 0 and 1 suggests its percentage', () => {
      expect(problem('0.25', 'ratio')?.args).to.deep.equal({text: '0.25', suggestion: '25 %'});
      expect(problem('0,57', 'ratio', {decimal: ','})?.args).to.include({suggestion: '57 %'});
      expect(problem('0.125', 'ratio')?.args).to.include({suggestion: '12.5 %'});
      expect(problem('1/4', 'ratio', {bareUnit: '%'})?.args).to.include({suggestion: '25 %'});
      expect(problem('25', 'ratio')?.args).to.include({suggestion: '25 %'});
    });
  });

  describe('the decimal mark', () => {
    const german = {decimal: ','} as const;

    it('is the reader\'s own', () => {
      expect(read('57,5 cm', 'length', german)).to.deep.equal([0.575, 'cm']);
      expect(read('1,25 oz', 'mass', german)).to.deep.equal([0.03543690390625, 'oz']);
      expect(read('1,500 m', 'length', german)).to.deep.equal([1.5, 'm']);
      expect(read('1.500 m', 'length')).to.deep.equal([1.5, 'm']);
    });

    it('may be the other where that can mean nothing else', () => {
      expect(read('57,5 cm', 'length')).to.deep.equal([0.575, 'cm']);
      expect(read('57.5 cm', 'length', german)).to.deep.equal([0.575, 'cm']);
      expect(read('0,125 mm', 'length')).to.deep.equal([0.000125, 'mm']);
      expect(read('1234,567 mm', 'length')).to.deep.equal([1.234567, 'mm']);
    });

    it('is no thousands separator', () => {
      expect(problem('1,500 mm', 'length'))
        .to.deep.equal({code: 'quantity-decimal-mark', args: {text: '1,500', suggestion: '1500 mm'}});
      expect(problem('1.500 mm', 'length', german)?.args).to.include({suggestion: '1500 mm'});
      expect(problem('1,234.5 mm', 'length')?.args).to.include({suggestion: '1234.5 mm'});
      expect(problem('1.234,5 mm', 'length', german)?.args).to.include({suggestion: '1234,5 mm'});
      expect(problem('1.234,5 mm', 'length')?.args).to.include({suggestion: '1234.5 mm'});
      expect(problem('1,234.5 mm', 'length', german)?.args).to.include({suggestion: '1234,5 mm'});
      expect(problem('1 234,5 mm', 'length')?.args).to.include({suggestion: '1234.5 mm'});
      expect(problem('-1.234.567 mm', 'length')?.args).to.include({suggestion: '-1234567 mm'});
      expect(problem('1 500 mm', 'length')?.args).to.include({suggestion: '1500 mm'});
      expect(problem('1\u202f500', 'length', {bareUnit: 'in'})?.args).to.include({suggestion: '1500 in'});
      expect(read('1\'500 mm', 'length')).to.equal('quantity-not-a-number');
    });
  });

  describe('refuses', () => {
    it('nothing', () => {
      for (const text of ['', '  ', '\u00a0\t', '\u200e']) expect(problem(text, 'length')).to.deep.equal({code: 'quantity-empty'});
    });

    const nonsense = [
      'abc', 'mm', '-', '.', '--5 mm', '5 5 mm', '5 mm 5', '5 mm 3 mm', '5. mm', '5..2 mm', '1.5 1/2 in', '3 9/8 in', '1/0 in', '1/-2 in', '1/½ in',
      '8² mm', '5⁴ mm', '5₂ mm', '2 ft -3 in', '3 in 2 ft', '1 m 20 cm', 'NaN', 'NaN mm', 'Infinity mm', '-∞ mm', '0x10 mm', '1_0 mm', '5 mm; 6 mm', '5 @ 6',
      '<b>5 mm</b>', '٥ mm', '5 mm\n6', '5 g/', '5 /m', '1e99999 mm', '5 ^2', 'e5 mm', '5\u00005 mm',
    ];
    for (const text of nonsense) {
      it(`"${text}" as no length`, () => {
        expect(problem(text, 'length')).to.deep.equal({code: 'quantity-not-a-number', args: {text, kind: 'length'}});
      });
    }

    it('a unit of another kind', () => {
      expect(problem('85 g', 'length')).to.deep.equal({code: 'quantity-wrong-unit', args: {unit: 'g', expected: 'length'}});
      expect(problem('5 m²', 'length')?.args).to.deep.equal({unit: 'm2', expected: 'length'});
      expect(problem('5\'', 'angle')?.args).to.deep.equal({unit: '\'', expected: 'angle'});
      expect(read('3 mm', 'count')).to.equal('quantity-wrong-unit');
      expect(read('450 g/m²', 'density')).to.equal('quantity-wrong-unit');
    });

    it('a unit that it does not know, with one that would do', () => {
      expect(problem('580 mmm', 'length')).to.deep.equal({code: 'quantity-unknown-unit', args: {unit: 'mmm', suggestion: '580 mm'}});
      expect(problem('58 мм', 'length')?.args).to.deep.equal({unit: 'мм', suggestion: '58 mm'});
      expect(problem('3 x', 'length', {bareUnit: 'in'})?.args).to.deep.equal({unit: 'x', suggestion: '3 in'});
      expect(read('5 constructor', 'length')).to.equal('quantity-unknown-unit');
      expect(read('5 __proto__', 'length')).to.equal('quantity-not-a-number');
    });

    it('parts of what is counted', () => {
      expect(problem('2.5', 'count')).to.deep.equal({code: 'quantity-not-whole', args: {text: '2.5'}});
      expect(read('½', 'count')).to.equal('quantity-not-whole');
    });

    it('numbers without end', () => {
      expect(problem('1e400 mm', 'length')).to.deep.equal({code: 'quantity-too-big', args: {text: '1e400'}});
      expect(read('1e9999', 'count')).to.equal('quantity-too-big');
      expect(read('1e-9999 mm', 'length')).to.deep.equal([0, 'mm']);
    });

    it('very long texts, and shows their beginning', () => {
      const long = problem('9'.repeat(100_000), 'length');
      expect(long).to.deep.equal({code: 'quantity-not-a-number', args: {text: '9'.repeat(64), kind: 'length'}});
    });
  });

  it('gives a finite number or a problem for whatever is typed', () => {
    const scraps = fc.constantFrom('1', '0', '22', '7/8', '½', ' ', '-', '−', '.', ',', 'e', 'mm', 'in', 'ft', '\'', '"', '°', '%', '/', '@', ';', 'g/m', '²', 'lb', 'oz', '\u00a0', '\ud800');
    const typed = fc.oneof(fc.string({unit: 'binary'}), fc.array(scraps, {maxLength: 12}).map((all) => all.join('')));
    fc.assert(fc.property(typed, fc.constantFrom(...kinds), fc.constantFrom('.', ',' as const), fc.constantFrom(undefined, 'mm', 'in', '%'), (text, kind, decimal, bareUnit) => {
      const result = readQuantity(text, kind, {decimal: decimal === ',' ? ',' : '.', bareUnit});
      if (result.ok) {
        expect(Number.isFinite(result.value)).to.equal(true);
        expect(Object.keys(units)).to.include(result.unit);
      } else {
        expect(result.problem.code).to.match(/^quantity-/);
      }
    }), {numRuns: 2000});
  });

  it('suggests what it then reads', () => {
    const texts = ['580', '0.25', '1,500', '1 500 zz', '12 mmm', '-1.234.567', '½', '1/4', '22-7/8', '1e3'];
    for (const text of texts) {
      for (const kind of kinds) {
        for (const decimal of ['.', ','] as const) {
          const suggestion = problem(text, kind, {decimal})?.args?.['suggestion'];
          if (suggestion !== undefined && kind !== 'count') {
            expect(read(String(suggestion), kind, {decimal}), `${text} as ${kind}: ${String(suggestion)}`).to.be.an('array');
          }
        }
      }
    }
  });
});
