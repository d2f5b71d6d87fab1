import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {readList, writeList, writeListForReading} from '../../../src/calc/units/list.js';
import type {ListItem} from '../../../src/calc/units/list.js';
import type {ReadOptions} from '../../../src/calc/units/read.js';

const masses = [{name: 'mass', kind: 'mass'}, {name: 'at', kind: 'length'}] as const;
const creases = [{name: 'at', kind: 'length'}] as const;
const joints = [{name: 'angle', kind: 'angle'}, {name: 'at', kind: 'length'}] as const;
const stations = [{name: 'chord', kind: 'length'}, {name: 'at', kind: 'length'}, {name: 'back', kind: 'length'}] as const;

function read(text: string, fields: Parameters<typeof readList>[1], options?: ReadOptions): readonly ListItem[] | string {
  const list = readList(text, fields, options);
  return list.ok ? list.value : list.problem.code;
}

describe('readList', () => {
  const two = [{mass: 0.008, at: 0.02}, {mass: 0.003, at: 0.41}];
  for (const text of ['8g@20mm 3g@410mm', '8 g @ 20 mm; 3 g @ 410 mm', '8g @20mm,3g@ 410mm', '8 g @ 20 mm 3 g @ 410 mm', ' 8\u00a0g\u00a0@\u00a020\u00a0mm;\n3\u00a0g\u00a0@\u00a0410\u00a0mm ; ', '8g@2cm, 0.003 kg @ 41 cm']) {
    it(`reads ${JSON.stringify(text)}`, () => { expect(read(text, masses)).to.deep.equal(two); });
  }

  it('reads an empty text as an empty list', () => {
    for (const text of ['', '  ', '\u00a0\n']) expect(read(text, masses)).to.deep.equal([]);
  });

  it('reads items of one, two and three numbers', () => {
    expect(read('48mm 90mm', creases)).to.deep.equal([{at: 0.048}, {at: 0.09}]);
    expect(read('12°@190mm 6 deg @ 260mm', joints)).to.deep.equal([{angle: 12 * (Math.PI / 180), at: 0.19}, {angle: 6 * (Math.PI / 180), at: 0.26}]);
    expect(read('120mm@0.2m@-5mm', stations)).to.deep.equal([{chord: 0.12, at: 0.2, back: -0.005}]);
    expect(read('8g@-20mm', masses)).to.deep.equal([{mass: 0.008, at: -0.02}]);
    expect(read('2 3', [{name: 'many', kind: 'count'}])).to.deep.equal([{many: 2}, {many: 3}]);
  });

  it('takes a quantity as far as it goes', () => {
    expect(read('22 7/8 in 30 in', creases)).to.deep.equal([{at: 0.581025}, {at: 0.762}]);
    expect(read('2 ft 3 in 4 ft', creases)).to.deep.equal([{at: 0.6858}, {at: 1.2192}]);
    expect(read('1 ft 2 ft 3 in', creases)).to.deep.equal([{at: 0.3048}, {at: 0.6858}]);
    expect(read('1\' 2\'3"', creases)).to.deep.equal([{at: 0.3048}, {at: 0.6858}]);
    expect(read('1½" ¾"', creases)).to.deep.equal([{at: 0.0381}, {at: 0.01905}]);
    expect(read('1 lb 2 oz @ 2 ft 3 in, 1 oz @ 1 in', masses)).to.deep.equal([{mass: 0.51029141625, at: 0.6858}, {mass: 0.028349523125, at: 0.0254}]);
    expect(read('48mm -90mm', creases)).to.deep.equal([{at: 0.048}, {at: -0.09}]);
    expect(read('2 in2 3 in2', [{name: 'area', kind: 'area'}])).to.deep.equal([{area: 0.00129032}, {area: 0.00193548}]);
  });

  it('gives bare numbers the units shown beside the field', () => {
    expect(read('48 90', creases, {bareUnit: 'mm'})).to.deep.equal([{at: 0.048}, {at: 0.09}]);
    expect(read('48, 100', creases, {bareUnit: 'mm'})).to.deep.equal([{at: 0.048}, {at: 0.1}]);
    expect(read('48 100', creases, {bareUnit: 'mm', decimal: ','})).to.deep.equal([{at: 0.048}, {at: 0.1}]);
    expect(read('22 7/8 30', creases, {bareUnit: 'in'})).to.deep.equal([{at: 0.581025}, {at: 0.762}]);
    expect(read('8 @ 20; 3@410', masses, {bareUnit: 'g @ mm'})).to.deep.equal(two);
    expect(read('8 @ 20', masses, {bareUnit: 'g'})).to.equal('quantity-no-unit');
    expect(read('8 @ 20', masses)).to.equal('quantity-no-unit');
  });

  it('tells the comma between items from the decimal mark', () => {
    const german = {bareUnit: 'mm', decimal: ','} as const;
    expect(read('48,90', creases, {bareUnit: 'mm'})).to.deep.equal([{at: 0.048}, {at: 0.09}]);
    expect(read('48,5 90,5', creases, german)).to.deep.equal([{at: 0.0485}, {at: 0.0905}]);
    expect(read('48,5; 90,5', creases, german)).to.deep.equal([{at: 0.0485}, {at: 0.0905}]);
    expect(read('48,5 mm, 90 mm', creases, german)).to.deep.equal([{at: 0.0485}, {at: 0.09}]);
    expect(read('48,5 mm', creases)).to.equal('quantity-no-unit');
    expect(read('1.500; 90', creases, german)).to.equal('quantity-decimal-mark');
  });

  it('says which item lacks a number', () => {
    const list = readList('8g@20mm 3g', masses);
    expect(list.ok ? undefined : list.problem).to.deep.equal({code: 'list-item-incomplete', args: {text: '3g', suggestion: '10 g @ 10 mm'}});
    const joint = readList('12°', joints, {bareUnit: '° @ cm'});
    expect(joint.ok ? undefined : joint.problem.args).to.deep.equal({text: '12°', suggestion: '10° @ 10 cm'});
    for (const text of ['8g', '8g@', '8g@20mm@3mm', '8g@20mm @', '8g 20mm']) expect(read(text, masses), text).to.equal('list-item-incomplete');
  });

  it('refuses what is no list', () => {
    for (const text of ['@', ';', ',8g@20mm', '8g@20mm;;3g@4mm', '8g@20mm3g@5mm', '48mm90mm', 'abc', '8g@x', '8g@20mm | 3g@5mm']) {
      expect(read(text, text.startsWith('48') ? creases : masses), text).to.equal('quantity-not-a-number');
    }
    expect(read('8mm@20mm', masses)).to.equal('quantity-wrong-unit');
    expect(read('8g@20mx', masses)).to.equal('quantity-unknown-unit');
    expect(read('8g@1e999mm', masses)).to.equal('quantity-too-big');
    expect(read('8g@20mm '.repeat(10_000), masses)).to.equal('quantity-not-a-number');
    expect(read('5mm', [])).to.equal('quantity-not-a-number');
  });

  it('comes to an end on hostile texts', () => {
    for (const text of ['1'.repeat(4000), `1${' '.repeat(3998)}x`, '1 '.repeat(2000), '1-'.repeat(2000), '1/'.repeat(2000), '1,'.repeat(2000), '1.'.repeat(2000), 'g'.repeat(4000)]) {
      for (const decimal of ['.', ','] as const) expect(read(text, masses, {bareUnit: 'g @ mm', decimal}), text.slice(0, 4)).to.be.a('string');
    }
  });

  it('gives finite numbers or a problem for whatever is typed', () => {
    const scraps = fc.constantFrom('1', '22', '7/8', '½', ' ', '-', '.', ',', ';', '@', ' @ ', 'mm', 'in', 'ft', '\'', '"', '°', 'g', 'lb', 'oz', 'x');
    const typed = fc.oneof(fc.string({unit: 'binary'}), fc.array(scraps, {maxLength: 20}).map((all) => all.join('')));
    fc.assert(fc.property(typed, fc.constantFrom(masses, creases, joints, stations), fc.boolean(), (text, fields, isGerman) => {
      const list = readList(text, fields, {decimal: isGerman ? ',' : '.', bareUnit: 'mm@mm'});
      if (!list.ok) return;
      for (const item of list.value) {
        expect(Object.keys(item)).to.deep.equal(fields.map(({name}) => name));
        for (const value of Object.values(item)) expect(Number.isFinite(value)).to.equal(true);
      }
    }), {numRuns: 2000});
  });
});

describe('writeList', () => {
  const two = [{mass: 0.008, at: 0.02}, {mass: 0.003, at: 0.41}];

  it('writes lists for attributes without spaces inside an item', () => {
    expect(writeList(two, masses)).to.equal('8g@20mm 3g@410mm');
    expect(writeList([{angle: 12 * (Math.PI / 180), at: 0.19}], joints)).to.equal('12°@190mm');
    expect(writeList([], masses)).to.equal('');
  });

  it('writes lists for reading in the reader\'s units', () => {
    const plain = (text: string) => text.replaceAll('\u00a0', ' ');
    expect(plain(writeListForReading(two, masses))).to.equal('8 g @ 20 mm; 3 g @ 410 mm');
    expect(plain(writeListForReading(two, masses, {system: 'inch'}))).to.equal('0.28 oz @ 13/16 in; 0.11 oz @ 16 1/8 in');
    expect(plain(writeListForReading([{mass: 0.0085, at: 0.0205}], masses, {decimal: ',', bare: true}))).to.equal('8,5 @ 20,5');
  });

  const value = fc.double({min: -10, max: 10, noNaN: true});
  const items = fc.array(fc.record({mass: value, at: value}), {maxLength: 8});

  it('reads back as the identical numbers', () => {
    fc.assert(fc.property(items, (list) => {
      expect(read(writeList(list, masses), masses)).to.deep.equal(list.map(({mass, at}) => ({mass: mass + 0, at: at + 0})));
    }));
    const shapes = fc.array(fc.record({angle: value, at: value}), {maxLength: 8});
    fc.assert(fc.property(shapes, (list) => {
      expect(read(writeList(list, joints), joints)).to.deep.equal(list.map(({angle, at}) => ({angle: angle + 0, at: at + 0})));
    }));
  });

  it('reads back within its rounding when written for reading', () => {
    fc.assert(fc.property(items, fc.boolean(), fc.boolean(), fc.boolean(), (list, isInch, isGerman, bare) => {
      const decimal = isGerman ? ',' : '.';
      const text = writeListForReading(list, masses, {system: isInch ? 'inch' : 'metric', decimal, bare});
      const back = read(text, masses, {decimal, bareUnit: isInch ? 'oz @ in' : 'g @ mm'});
      if (typeof back === 'string') throw new Error(`${text}: ${back}`);
      expect(back.length).to.equal(list.length);
      list.forEach((item, i) => {
        expect(back[i]?.['mass']).to.be.closeTo(item.mass, isInch ? 0.0015 : 0.00051);
        expect(back[i]?.['at']).to.be.closeTo(item.at, isInch ? 0.0008 : 0.000251);
      });
    }));
  });
});
