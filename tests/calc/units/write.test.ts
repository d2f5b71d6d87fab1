import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {units, usualUnit} from '../../../src/calc/units/kinds.js';
import type {QuantityKind, Unit} from '../../../src/calc/units/kinds.js';
import {readQuantity} from '../../../src/calc/units/read.js';
import {writeAtLeast, writeExact, writeQuantity} from '../../../src/calc/units/write.js';
import type {WriteOptions} from '../../../src/calc/units/write.js';

const inch = 0.0254;
const kinds: readonly QuantityKind[] =
  ['length', 'mass', 'angle', 'ratio', 'count', 'areal-mass', 'cube-loading', 'area', 'speed', 'density'];
const everyUnit = Object.values(units);

/** With plain spaces, to be readable here. */
const write = (...args: Parameters<typeof writeQuantity>): string => writeQuantity(...args).replaceAll('\u00a0', ' ');
const atLeast = (...args: Parameters<typeof writeAtLeast>): string => writeAtLeast(...args).replaceAll('\u00a0', ' ');

function readBack(text: string, kind: QuantityKind, decimal: '.' | ',' = '.', bareUnit?: string): number {
  const read = readQuantity(text, kind, {decimal, bareUnit});
  if (!read.ok) throw new Error(`${text}: ${read.problem.code}`);
  return read.value;
}

describe('writeQuantity', () => {
  const cases: readonly (readonly [value: number, kind: QuantityKind, options: WriteOptions, text: string])[] = [
    [0.1, 'length', {}, '100 mm'], [0.10272, 'length', {}, '102.5 mm'], [0.10276, 'length', {}, '103 mm'], [0, 'length', {}, '0 mm'],
    [0.0001, 'length', {}, '0 mm'], [-0.0001, 'length', {}, '0 mm'], [-0.0123, 'length', {}, '−12.5 mm'],
    [0.575, 'length', {unit: 'cm'}, '57.5 cm'], [0.5755, 'length', {unit: 'cm'}, '57.55 cm'], [12.345, 'length', {unit: 'm'}, '12.35 m'],
    [0.575, 'length', {unit: 'cm', decimal: ','}, '57,5 cm'], [0.1, 'length', {digits: 1}, '100.0 mm'], [0.1, 'length', {unit: 'nonsense'}, '100 mm'],
    [0.1, 'length', {unit: 'g'}, '100 mm'], [0.1, 'length', {bare: true}, '100'],
    [22.875 * inch, 'length', {system: 'inch'}, '22 7/8 in'], [4.125 * inch, 'length', {system: 'inch'}, '4 1/8 in'],
    [0.5 * inch, 'length', {system: 'inch'}, '1/2 in'], [3 * inch, 'length', {system: 'inch'}, '3 in'], [0, 'length', {system: 'inch'}, '0 in'],
    [2.99 * inch, 'length', {system: 'inch'}, '3 in'], [-1.5 * inch, 'length', {system: 'inch'}, '−1 1/2 in'], [0.01 * inch, 'length', {system: 'inch'}, '0 in'],
    [-0.01 * inch, 'length', {system: 'inch'}, '0 in'], [1.3 * inch, 'length', {system: 'inch', fraction: 32}, '1 5/16 in'],
    [1.28 * inch, 'length', {system: 'inch', fraction: 32}, '1 9/32 in'], [1.3 * inch, 'length', {system: 'inch', fraction: 0}, '1.3 in'],
    [1.3 * inch, 'length', {system: 'inch', digits: 2}, '1.30 in'], [1.3 * inch, 'length', {system: 'inch', fraction: NaN}, '1.3 in'],
    [4.125 * inch, 'length', {system: 'inch', bare: true}, '4 1/8'],
    [27.5 * inch, 'length', {system: 'inch', ft: true}, '2 ft 3 1/2 in'], [24 * inch, 'length', {system: 'inch', ft: true}, '2 ft'],
    [24.25 * inch, 'length', {system: 'inch', ft: true}, '2 ft 1/4 in'], [11.99 * inch, 'length', {system: 'inch', ft: true}, '1 ft'],
    [-27 * inch, 'length', {system: 'inch', ft: true}, '−2 ft 3 in'], [3 * inch, 'length', {system: 'inch', ft: true}, '3 in'], [0, 'length', {system: 'inch', ft: true}, '0 in'],
    [27 * inch, 'length', {system: 'inch', ft: true, bare: true}, '27'],
    [0.00964, 'mass', {}, '9.6 g'], [0.00996, 'mass', {}, '10 g'], [0.0854, 'mass', {}, '85 g'], [0.0004, 'mass', {}, '0.4 g'],
    [0.0854, 'mass', {system: 'inch'}, '3.01 oz'], [0.0854, 'mass', {unit: 'kg'}, '0.0854 kg'],
    [0.2, 'angle', {}, '11.5°'], [Math.PI / 15, 'angle', {system: 'inch'}, '12°'], [0.2, 'angle', {unit: 'rad'}, '0.2 rad'],
    [0.25, 'ratio', {}, '25 %'], [0.0512, 'ratio', {decimal: ','}, '5,1 %'], [0.29, 'ratio', {}, '29 %'],
    [3, 'count', {}, '3'], [1e6, 'count', {}, '1000000'],
    [0.45, 'areal-mass', {}, '450 g/m²'], [3.4, 'cube-loading', {}, '3.4 kg/m³'], [3.4, 'cube-loading', {system: 'inch'}, '3.4 oz/ft³'],
    [0.0812, 'area', {}, '8.1 dm²'], [5.04, 'speed', {}, '5 m/s'], [5.04, 'speed', {unit: 'mph'}, '11.3 mph'], [950, 'density', {unit: 'g/cm³'}, '0.95 g/cm³'],
  ];
  for (const [value, kind, options, text] of cases) {
    it(`writes ${String(value)} ${kind} ${JSON.stringify(options)} as ${text}`, () => { expect(write(value, kind, options)).to.equal(text); });
  }

  it('keeps number, fraction and unit on one line', () => {
    expect(writeQuantity(4.125 * inch, 'length', {system: 'inch'})).to.equal('4\u00a01/8\u00a0in');
    expect(writeQuantity(27 * inch, 'length', {system: 'inch', ft: true})).to.equal('2\u00a0ft\u00a03\u00a0in');
    expect(writeQuantity(0.25, 'ratio')).to.equal('25\u00a0%');
  });

  it('writes a dash for what is no finite number', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      for (const kind of kinds) {
        expect(write(value, kind)).to.equal('—');
        expect(atLeast(value, kind)).to.equal('—');
        expect(writeExact(value, kind, usualUnit(kind, 'metric'))).to.equal('—');
      }
    }
    expect(write(Number.MAX_VALUE, 'length')).to.equal('—');   // not finite in millimetres
  });

  it('reads back to within half a step of the unit, whatever the reader\'s system, mark and fraction', () => {
    const sixteenths = [2, 4, 8, 16, 32, 64];
    fc.assert(fc.property(
      fc.constantFrom(...everyUnit), fc.double({min: -1e5, max: 1e5, noNaN: true}), fc.constantFrom('.', ','), fc.constantFrom(...sixteenths), fc.boolean(), fc.boolean(),
      (unit, number, decimal, fraction, ft, bare) => {
        const mark = decimal === ',' ? ',' : '.';
        const value = unit.kind === 'count' ? Math.round(number) : number * unit.si;
        const text = writeQuantity(value, unit.kind, {unit: unit.symbol, decimal: mark, fraction, ft, bare});
        const step = unit.symbol === 'in' ? 1 / fraction : unit.kind === 'mass' && Math.abs(value / unit.si) < 10 ? 0.1 / unit.parts : 1 / unit.parts;
        const missed = Math.abs(readBack(text, unit.kind, mark, unit.symbol) - value) / unit.si;
        expect(missed, text).to.be.at.most(step / 2 + 1e-9);
      },
    ), {numRuns: 1000});
  });

  it('reads back to within half a decimal where decimals are asked for', () => {
    fc.assert(fc.property(fc.constantFrom(...everyUnit), fc.double({min: -1e5, max: 1e5, noNaN: true}), fc.nat(6), (unit: Unit, number, digits) => {
      if (unit.kind === 'count') return;
      const text = writeQuantity(number * unit.si, unit.kind, {unit: unit.symbol, digits});
      expect(text.split('.')[1]?.match(/^\d+/)?.[0].length ?? 0).to.equal(digits);
      expect(Math.abs(readBack(text, unit.kind) / unit.si - number)).to.be.at.most(0.5 * 10 ** -digits + 1e-9);
    }));
  });

  it('never throws and never shows what is no number', () => {
    fc.assert(fc.property(fc.double(), fc.constantFrom(...kinds), fc.double(), fc.double(), fc.boolean(), fc.constantFrom('in', '', '°', 'mm', '%'), (value, kind, digits, fraction, ft, unit) => {
      for (const options of [{}, {digits}, {fraction, ft, unit}, {system: 'inch', ft}] as const) {
        expect(writeQuantity(value, kind, options) + writeAtLeast(value, kind, options)).not.to.match(/NaN|Infinity|undefined/);
      }
    }), {numRuns: 3000});
    expect(write(0.1, 'length', {digits: NaN})).to.equal('100 mm');
    expect(atLeast(0.1, 'length', {digits: NaN})).to.equal('100 mm');
  });
});

describe('writeAtLeast', () => {
  it('rounds up to the next useful step', () => {
    expect(atLeast(0.0021, 'length')).to.equal('2.5 mm');
    expect(atLeast(0.00251, 'length')).to.equal('3 mm');
    expect(atLeast(1.01 / 16 * inch, 'length', {system: 'inch'})).to.equal('1/8 in');
    expect(atLeast(0.0851, 'mass')).to.equal('86 g');
  });

  it('never rounds to nothing', () => {
    expect(atLeast(1e-5, 'length')).to.equal('0.5 mm');
    expect(atLeast(1e-9, 'length')).to.equal('0.5 mm');
    expect(atLeast(1e-5, 'length', {system: 'inch'})).to.equal('1/16 in');
    expect(atLeast(1e-12, 'length', {digits: 2})).to.equal('0.01 mm');
    expect(atLeast(0, 'length')).to.equal('0 mm');
  });

  it('leaves a step alone that arithmetic has only just passed', () => {
    expect(atLeast(0.1 + 0.2, 'length')).to.equal('300 mm');
    expect(atLeast(0.005 * (1 + 1e-12), 'length')).to.equal('5 mm');
    expect(atLeast(3 * inch * (1 + 1e-12), 'length', {system: 'inch'})).to.equal('3 in');
  });

  it('rounds in size where the value is negative', () => { expect(atLeast(-0.0021, 'length')).to.equal('−2.5 mm'); });

  it('is at least the value and less than a step above', () => {
    fc.assert(fc.property(fc.double({min: 1e-7, max: 2, noNaN: true}), fc.boolean(), (value, isInch) => {
      const step = isInch ? inch / 16 : 0.0005;
      const read = readBack(writeAtLeast(value, 'length', {system: isInch ? 'inch' : 'metric'}), 'length');
      expect(read).to.be.greaterThan(0);
      expect(read).to.be.at.least(value - 1e-6 * step);
      expect(read).to.be.at.most(value + step * (1 + 1e-6));
    }));
  });
});

describe('writeExact', () => {
  const cases: readonly (readonly [value: number, kind: QuantityKind, unit: string, text: string])[] = [
    [0.58, 'length', 'mm', '580 mm'], [0.0011, 'length', 'mm', '1.1 mm'], [0.581025, 'length', 'in', '22.875 in'], [-0.0125, 'length', 'mm', '-12.5 mm'],
    [0.57, 'ratio', '%', '57 %'], [11.4 * (Math.PI / 180), 'angle', '°', '11.4°'], [0.45, 'areal-mass', 'g/m²', '450 g/m²'], [3, 'count', '', '3'], [0, 'mass', 'g', '0 g'],
    [-0, 'mass', 'g', '0 g'], [0.1 + 0.2, 'length', 'mm', '300.00000000000004 mm'], [1e-9, 'length', 'mm', '0.000001 mm'], [1e30, 'length', 'm', '1e30 m'],
    [0.085, 'mass', 'nonsense', '85 g'], [0.085, 'mass', 'mm', '85 g'], [950, 'density', 'g/cm³', '0.95 g/cm³'],
  ];
  for (const [value, kind, unit, text] of cases) {
    it(`writes ${String(value)} as ${text}`, () => { expect(writeExact(value, kind, unit)).to.equal(text); });
  }

  it('reads back as the identical number, for every number and unit', () => {
    fc.assert(fc.property(fc.double({noNaN: true, noDefaultInfinity: true}), fc.constantFrom(...everyUnit), (value, unit) => {
      const whole = unit.kind === 'count' ? Math.round(value) : value;
      const text = writeExact(whole, unit.kind, unit.symbol);
      expect(readBack(text, unit.kind) === whole, text).to.equal(true);
      expect(text.length).to.be.at.most(40);
    }), {numRuns: 2000});
  });

  it('reads back as the identical number, for numbers of the size of a glider', () => {
    fc.assert(fc.property(fc.double({min: -2, max: 2, noNaN: true}), fc.constantFrom(...kinds), fc.constantFrom(...everyUnit), (value, kind, unit) => {
      const number = kind === 'count' ? Math.round(value) : value;
      expect(readBack(writeExact(number, kind, unit.symbol), kind)).to.equal(number + 0);
    }), {numRuns: 2000});
  });

  it('keeps the unit that a number was typed in, and its digits if they are few', () => {
    fc.assert(fc.property(fc.constantFrom(...everyUnit), fc.integer({min: -1e9, max: 1e9}), fc.nat(4), (unit, digits, places) => {
      const number = unit.kind === 'count' ? digits : digits / 10 ** places;
      const text = `${String(number)} ${unit.symbol}`.trim();
      expect(writeExact(readBack(text, unit.kind), unit.kind, unit.symbol)).to.equal(unit.symbol === '°' ? text.replace(' ', '') : text);
    }), {numRuns: 1000});
    fc.assert(fc.property(fc.constantFrom(...everyUnit), fc.double({min: 1e-3, max: 1e3, noNaN: true}), (unit, number) => {
      if (unit.kind === 'count') return;
      expect(writeExact(readBack(`${String(number)} ${unit.symbol}`, unit.kind), unit.kind, unit.symbol).endsWith(unit.symbol)).to.equal(true);
    }), {numRuns: 1000});
  });
});
