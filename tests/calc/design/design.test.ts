import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, valueAt, withValues} from '../../../src/calc/design/design.js';
import {attributeOf, dimensionPaths, isChoiceRow, isListRow, isNumberRow, rowOf} from '../../../src/calc/design/dimensions.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';
import {readDesignFile, writeDesignFile} from '../../../src/calc/design/file.js';
import {checkValue, readDimension} from '../../../src/calc/design/read-dimension.js';
import {clashesOf} from '../../../src/calc/design/clashes.js';
import {createDesignStore} from '../../../src/calc/design/store.js';

/** Any value that a path may hold. */
function valueFor(path: DimensionPath): fc.Arbitrary<DimensionValue> {
  const row = rowOf(path);
  if (isNumberRow(row)) {
    const [min, max] = row.hard;
    const value = row.kind === 'count' ? fc.integer({min, max}) : fc.double({min, max, noNaN: true}).map((v) => v + 0);
    return row.default === undefined ? fc.option(value, {nil: undefined}) : value;
  }
  if (isChoiceRow(row)) return fc.constantFrom(...row.choices);
  if (isListRow(row)) {
    return fc.array(fc.record(Object.fromEntries(row.list.map(({name, hard: [min, max]}) => [name, fc.double({min, max, noNaN: true}).map((v) => v + 0)]))), {maxLength: row.most});
  }
  return fc.string({maxLength: 80});
}

const changes = fc.uniqueArray(fc.constantFrom(...dimensionPaths), {minLength: 1, maxLength: 12})
  .chain((paths) => fc.tuple(...paths.map((path) => valueFor(path).map((value) => [path, value] as const))))
  .map((entries) => Object.fromEntries(entries) as Partial<Record<DimensionPath, DimensionValue>>);

describe('the table of dimensions', () => {
  it('has defaults inside the sensible range, and that inside the hard limits', () => {
    for (const path of dimensionPaths) {
      const row = rowOf(path);
      expect(checkValue(path, row.default), path).to.equal(undefined);
      if (!isNumberRow(row)) continue;
      expect(row.sensible[0], path).to.be.at.least(row.hard[0]);
      expect(row.sensible[1], path).to.be.at.most(row.hard[1]);
      if (row.default !== undefined && !['board.gap', 'board.margin'].includes(path)) expect(row.default, path).to.be.within(row.sensible[0], row.sensible[1]);
    }
  });
  it('gives every path an attribute of its own', () => {
    expect(new Set(dimensionPaths.map(attributeOf)).size).to.equal(dimensionPaths.length);
    expect(attributeOf('tail.fins.tipChord')).to.equal('tail-fins-tip-chord');
  });
  it('describes a default glider without a clash', () => { expect(clashesOf(defaultDesign)).to.deep.equal([]); });
});

describe('GliderDesign', () => {
  it('is frozen all through', () => {
    expect(Object.isFrozen(defaultDesign)).to.equal(true);
    expect(Object.isFrozen(defaultDesign.tail.fins)).to.equal(true);
    expect(Object.isFrozen(defaultDesign.wing.creases[0])).to.equal(true);
  });
  it('shares the parts that a change leaves alone', () => {
    const next = withValues(defaultDesign, {'ballast.masses': [{mass: 0.008, at: 0.02}]});
    expect(next.wing === defaultDesign.wing).to.equal(true);
    expect(next.ballast === defaultDesign.ballast).to.equal(false);
  });
  it('knows no minus nothing', () => {
    const design = withValues(defaultDesign, {'wing.sweep': -0, 'ballast.masses': [{mass: 0, at: -0}]});
    expect(Object.is(design.wing.sweep, 0)).to.equal(true);
    expect(Object.is(design.ballast.masses[0]?.at, 0)).to.equal(true);
  });
  it('is the same object where nothing differs', () => {
    fc.assert(fc.property(changes, (values) => {
      const once = withValues(defaultDesign, values);
      expect(withValues(once, values) === once).to.equal(true);
      for (const [path, value] of Object.entries(values) as [DimensionPath, DimensionValue][]) expect(valueAt(once, path)).to.deep.equal(value);
    }));
  });
});

describe('reading a dimension', () => {
  it('refuses what lies outside the hard limits and names them', () => {
    const read = readDimension('wing.span', '-300 mm');
    expect(read.ok).to.equal(false);
    if (!read.ok) expect(read.problems[0]).to.deep.include({code: 'dimension-too-small', path: 'wing.span'});
    const huge = readDimension('wing.span', '1e9 mm');
    expect(!huge.ok && huge.problems[0]?.code).to.equal('dimension-too-large');
  });
  it('takes an empty text for what a plane can do without', () => {
    expect(readDimension('wing.tipChord', ' ')).to.deep.equal({ok: true, value: {value: undefined}});
    expect(readDimension('wing.chord', '').ok).to.equal(false);
    expect(readDimension('wing.creases', '')).to.deep.equal({ok: true, value: {value: []}});
  });
  it('never throws, whatever is typed', () => {
    fc.assert(fc.property(fc.constantFrom(...dimensionPaths), fc.string(), (path, text) => { readDimension(path, text); }));
  });
});

describe('a design file', () => {
  it('reads back the same glider', () => {
    fc.assert(fc.property(changes, (values) => {
      const design = withValues(defaultDesign, values);
      const read = readDesignFile(writeDesignFile({design, texts: {}}));
      if (!read.ok) throw new Error(read.problems[0]?.code);
      expect(read.value.problems).to.deep.equal([]);
      for (const path of dimensionPaths) expect(valueAt(read.value.design, path), path).to.deep.equal(valueAt(design, path));
    }), {numRuns: 60});
  });
  it('keeps the text of a value that nobody changed', () => {
    const read = readDesignFile('{"glider": 1, "wing": {"span": "22 7/8 in"}}');
    expect(read.ok && writeDesignFile(read.value)).to.contain('22 7/8 in');
  });
  it('says that a file breaks off, wherever it was cut', () => {
    const whole = writeDesignFile({design: defaultDesign, texts: {}});
    fc.assert(fc.property(fc.integer({min: 1, max: whole.length - 3}), (at) => {
      const read = readDesignFile(whole.slice(0, at));
      expect(!read.ok && read.problems[0]?.code).to.equal('file-cut-off');
    }));
  });
  it('refuses a later version and text that is no design, each by name', () => {
    const code = (text: string): string | undefined => { const read = readDesignFile(text); return read.ok ? undefined : read.problems[0]?.code; };
    expect(code('{"glider": 2}')).to.equal('file-of-later-version');
    expect(code('{"glider": "new"}')).to.equal('file-version-unreadable');
    expect(code('[1, 2]')).to.equal('file-not-a-design');
    expect(code('hello')).to.equal('file-not-json');
  });
  it('loses only the entries it cannot read, and keeps what was written there', () => {
    const read = readDesignFile('{"glider": 1, "wing": {"span": 640, "chord": "abc", "wingspan": "1 m", "sweep": "12 mm"}, "tail": {"fins": {"count": "1"}}}');
    if (!read.ok) throw new Error('refused');
    expect(read.value.problems.map((p) => p.code)).to.have.members(['file-number-without-unit', 'quantity-not-a-number', 'file-unknown-entry']);
    expect(read.value.refused['wing.chord']?.text).to.equal('abc');
    expect(read.value.refused['wing.span']?.text).to.equal('640');
    expect(read.value.design.wing.sweep).to.equal(0.012);
    expect(read.value.design.tail.fins.count).to.equal(1);
  });
  it('never throws, whatever JSON it is given', () => {
    fc.assert(fc.property(fc.json(), (text) => { readDesignFile(text); }));
  });
});

describe('clashes', () => {
  const codes = (values: Partial<Record<DimensionPath, DimensionValue>>): readonly (readonly [string, string | undefined])[] =>
    clashesOf(withValues(defaultDesign, values)).map(({code, path}) => [code, path] as const);
  it('names the crease outside its chord, the joint beyond its tip, the tail in the wing', () => {
    expect(codes({'wing.chord': 0.04})).to.deep.include(['crease-outside-chord', 'wing.creases']);
    expect(codes({'wing.span': 0.3})).to.deep.include(['joint-outside-wing', 'wing.joints']);
    expect(codes({'arrangement.tailAt': 0.2})).to.deep.include(['tail-in-wing', 'arrangement.tailAt']);
    expect(codes({'wing.creases': [{at: 0.05}, {at: 0.04}]})).to.deep.include(['list-not-ascending', 'wing.creases']);
  });
  it('names the weight that would hang in the air beyond an end of the body', () => {
    const weighted = (...masses: readonly {mass: number; at: number}[]) => clashesOf(withValues(defaultDesign, {'ballast.masses': masses}));
    const {length} = defaultDesign.body;
    const [ahead, ...noMore] = weighted({mass: 0.01, at: -0.03}, {mass: 0.02, at: -0.04}, {mass: 0.02, at: 0.02});
    expect(noMore).to.deep.equal([]);
    expect(ahead).to.deep.include({code: 'weight-ahead-of-nose', path: 'ballast.masses'});
    expect(ahead?.args).to.deep.include({mass: 0.02, at: -0.04, beyond: 0.04});
    // the shorter the body, the further off its end
    const [behind] = clashesOf(withValues(defaultDesign, {'ballast.masses': [{mass: 0.005, at: 0.6}], 'body.length': 0.56, 'arrangement.tailAt': 0.48}));
    expect(behind).to.deep.include({code: 'weight-behind-tail', path: 'ballast.masses', also: ['body.length']});
    expect(weighted({mass: 0.005, at: 0.6})).to.deep.equal([]);
    // on the tailplane, which stands out behind the body; on the tips of a wing swept forward
    expect(clashesOf(withValues(defaultDesign, {'ballast.masses': [{mass: 0.005, at: 0.6}], 'body.length': 0.56}))).to.deep.equal([]);
    expect(clashesOf(withValues(defaultDesign, {'ballast.masses': [{mass: 0.005, at: -0.03}], 'arrangement.wingAt': 0.01, 'wing.sweep': -0.04}))).to.deep.equal([]);
    expect(weighted({mass: 0.01, at: -0.03}, {mass: 0.005, at: length + 0.05}).map(({code}) => code)).to.deep.equal(['weight-ahead-of-nose', 'weight-behind-tail']);
    expect(weighted({mass: 0, at: -1}), 'no weight').to.deep.equal([]);
    // 20 g of clay at 2 g/cm³ are a ball of 10 cm³, 13.4 mm from its middle to its skin
    for (const at of [-0.0133, length + 0.0133]) expect(weighted({mass: 0.02, at}), String(at)).to.deep.equal([]);
    for (const at of [-0.0135, length + 0.0135]) expect(weighted({mass: 0.02, at}), String(at)).to.have.length(1);
  });
});

describe('the store of a design', () => {
  it('makes one revision of several changes and tells each listener once', () => {
    const store = createDesignStore();
    let told = 0;
    store.subscribe(() => { told++; });
    store.request([{path: 'wing.span', value: 0.5}, {path: 'wing.chord', value: 0.1}]);
    expect([told, store.current().revision]).to.deep.equal([1, 2]);
    store.request([{path: 'wing.span', value: 0.5}]);
    expect(told).to.equal(1);
  });
  it('keeps what was typed and the last good value when an entry is refused', () => {
    const store = createDesignStore();
    const problems = store.request([{path: 'wing.span', value: -1, text: '-1 m'}, {path: 'wing.chord', value: 0.1}]);
    expect(problems[0]?.code).to.equal('dimension-too-small');
    expect(store.current().design.wing).to.deep.include({span: defaultDesign.wing.span, chord: 0.1});
    expect(store.current().refused['wing.span']?.text).to.equal('-1 m');
    store.request([{path: 'wing.span', value: 0.5}]);
    expect(store.current().refused).to.deep.equal({});
  });
  it('stops telling those who no longer listen', () => {
    const store = createDesignStore();
    let told = 0;
    store.subscribe(() => { told++; })();
    store.request([{path: 'wing.span', value: 0.5}]);
    expect(told).to.equal(0);
  });
});
