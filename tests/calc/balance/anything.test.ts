import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {balancePlan} from '../../../src/calc/balance/balance-plan.js';
import {pieces} from '../../../src/calc/balance/pieces.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {dimensionPaths, isChoiceRow, isListRow, isNumberRow, rowOf, type DimensionPath, type DimensionValue} from '../../../src/calc/design/dimensions.js';

/** Any value that a dimension takes, however absurd: often at its limits. */
function anyValue(path: DimensionPath): fc.Arbitrary<DimensionValue> {
  const row = rowOf(path);
  const within = ([least, most]: readonly [number, number]) => fc.oneof(fc.constantFrom(least, most), fc.double({min: least, max: most, noNaN: true}));
  if (isNumberRow(row)) {
    const number = row.kind === 'count' ? fc.integer({min: row.hard[0], max: row.hard[1]}) : fc.oneof(within(row.sensible), within(row.hard));
    return row.default === undefined ? fc.option(number, {nil: undefined}) : number;
  }
  if (isChoiceRow(row)) return fc.constantFrom(...row.choices);
  if (isListRow(row)) return fc.array(fc.record(Object.fromEntries(row.list.map(({name, hard}) => [name, within(hard)]))), {maxLength: row.most});
  return fc.constant('');
}

const anyChanges = fc.uniqueArray(fc.constantFrom(...dimensionPaths), {minLength: 1, maxLength: 8})
  .chain((paths) => fc.record(Object.fromEntries(paths.map((path) => [path, anyValue(path)]))));

/** Every number in a plain value, however deep. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('the balance of any plane that the fields take', () => {
  it('is finite or refused with a reason, and never thrown', () => {
    let answered = 0;
    fc.assert(fc.property(anyChanges, fc.constantFrom(undefined, ...pieces), fc.option(fc.integer({min: 1, max: 60}), {nil: undefined}), (values, piece, count) => {
      const plan = balancePlan(withValues(defaultDesign, values), {...(piece && {piece}), ...(count !== undefined && {count})});
      if (!plan.ok) {
        expect(plan.problems.length).to.be.greaterThan(0);
        for (const {code} of plan.problems) expect(code).to.be.a('string').and.not.equal('');
        return;
      }
      answered++;
      expect(numbersIn(plan.value).filter((n) => !Number.isFinite(n))).to.deep.equal([]);
    }), {numRuns: 1500});
    expect(answered).to.be.greaterThan(100);
  });
});
