import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {compare} from '../../../src/calc/flight-log/comparison.js';
import {differences} from '../../../src/calc/flight-log/differences.js';
import {unfairness} from '../../../src/calc/flight-log/fairness.js';
import {changesBetween, emptyLog, withChanges, withRows} from '../../../src/calc/flight-log/log.js';
import {flownBy, measureOf, measures} from '../../../src/calc/flight-log/measures.js';
import {leastShown, throwsToSettle, throwsToShow} from '../../../src/calc/flight-log/plan.js';
import {commonScatter, spreadOf} from '../../../src/calc/flight-log/spread.js';
import {checkThrow} from '../../../src/calc/flight-log/throw-check.js';
import {studentT} from '../../../src/components/flight-log/student-t.js';
import {anyLog, logOf, throwOf} from './logs.js';

const distances = fc.array(fc.double({min: 0.05, max: 300, noNaN: true}), {maxLength: 30});

describe('comparing two versions', () => {
  it('gives numbers, or says why not, for any throws', () => {
    fc.assert(fc.property(distances, distances, (a, b) => {
      const found = compare(a, b, studentT);
      if (!found.ok) {
        expect(found.problems[0]?.code).to.be.oneOf(['too-few-throws', 'throws-all-alike']);
        return;
      }
      const {difference, interval: {from, to}, settled, freedom} = found.value;
      expect([difference, from, to, freedom].every(Number.isFinite)).to.equal(true);
      expect(from).to.be.at.most(difference);
      expect(to).to.be.at.least(difference);
      expect(settled).to.equal(from > 0 || to < 0);
      expect(freedom).to.be.within(Math.min(a.length, b.length) - 1 - 1e-6, a.length + b.length - 2 + 1e-6);
      const more = throwsToSettle(found.value, studentT);
      if (settled) expect(more).to.equal(undefined);
      else if (more) expect(more.a + more.b).to.be.at.least(1);
    }));
  });

  it('is the same the other way round', () => {
    fc.assert(fc.property(distances, distances, (a, b) => {
      const [there, back] = [compare(a, b, studentT), compare(b, a, studentT)];
      if (there.ok && back.ok) expect(there.value.interval.from).to.be.closeTo(-back.value.interval.to, 1e-9);
    }));
  });

  it('needs two throws of each, and throws that differ', () => {
    const codeOf = (a: number[], b: number[]) => { const found = compare(a, b, studentT); return found.ok ? 'none' : found.problems[0]?.code; };
    expect(codeOf([], [])).to.equal('too-few-throws');
    expect(codeOf([8], [9, 9.5])).to.equal('too-few-throws');
    expect(codeOf([8, 8], [9, 9])).to.equal('throws-all-alike');
    expect(codeOf([8, 8], [9, 9.5])).to.equal('none');
  });

  it('holds the true difference nineteen times out of twenty', () => {
    let seed = 1;
    const random = (): number => { seed = (seed * 16807) % 2147483647; return seed / 2147483647; };
    const normal = (mean: number, deviation: number): number => mean + deviation * Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    const trials = 2000;
    let held = 0;
    for (let i = 0; i < trials; i++) {
      const found = compare(Array.from({length: 6}, () => normal(8, 1)), Array.from({length: 9}, () => normal(9, 2)), studentT);
      if (found.ok && found.value.interval.from < 1 && found.value.interval.to > 1) held++;
    }
    // 95 % of 2000 with three standard deviations of a count
    expect(held / trials).to.be.within(0.935, 0.965);
  });
});

describe('planning throws', () => {
  it('takes fewer for a bigger difference, and shows it with no fewer', () => {
    fc.assert(fc.property(fc.double({min: 0.1, max: 5, noNaN: true}), fc.double({min: 0.1, max: 5, noNaN: true}), fc.double({min: 0.1, max: 5, noNaN: true}), (difference, a, b) => {
      const n = throwsToShow(difference, {a, b}, studentT) ?? Infinity;
      expect(leastShown(n, {a, b}, studentT)).to.be.at.most(difference);
      if (n > 2) expect(leastShown(n - 1, {a, b}, studentT)).to.be.above(difference);
      expect(throwsToShow(2 * difference, {a, b}, studentT) ?? Infinity).to.be.at.most(n);
    }));
  });

  it('has no number for no difference or no scatter', () => {
    for (const [difference, a] of [[0, 1], [NaN, 1], [Infinity, 1], [1, 0], [1e-9, 1]] as const) expect(throwsToShow(difference, {a, b: a}, studentT)).to.equal(undefined);
  });

  it('knows the scatter once there are throws to tell it', () => {
    expect(commonScatter([spreadOf([8]), spreadOf([9, 10])])).to.equal(undefined);
    expect(commonScatter([spreadOf([7, 8, 9]), spreadOf([19, 20, 21])])).to.be.closeTo(1, 1e-12);
  });
});

describe('throws', () => {
  it('refuses what no hand throws', () => {
    const codes = (one: Parameters<typeof checkThrow>[0]) => checkThrow(one).map(({code, path}) => `${code} ${path ?? ''}`);
    expect(codes({distance: 8, time: 2, height: 1.6})).to.deep.equal([]);
    expect(codes({})).to.deep.equal(['throw-empty distance']);
    expect(codes({distance: 0})).to.deep.equal(['throw-number-out-of-range distance']);
    expect(codes({distance: -1, time: -2, height: NaN})).to.deep.equal(['throw-number-out-of-range distance', 'throw-number-out-of-range time', 'throw-number-out-of-range height']);
    expect(codes({distance: 100, time: 1})).to.deep.equal(['throw-too-fast time']);
    expect(codes({distance: 1, time: 60})).to.deep.equal(['throw-too-slow time']);
  });

  it('gives glide ratio, sink and speed from one throw', () => {
    const one = throwOf('a', 1, 8, {time: 2, height: 1.6});
    expect(measures.map((measure) => measure.of(one))).to.deep.equal([8, 2, 5, 0.8, Math.hypot(8, 1.6) / 2]);
    expect(measures.map((measure) => measure.of(throwOf('a', 1, 8)))).to.deep.equal([8, undefined, undefined, undefined, undefined]);
  });

  it('leaves out of the averages what was left out, and keeps it', () => {
    const log = withRows(logOf([8, 9]), {throws: [throwOf('a', 20, 1, {out: true})]});
    const [a] = flownBy(log, measureOf('distance'));
    expect(a?.values).to.deep.equal([8, 9]);
    expect(a?.throws).to.have.length(3);
  });

  it('names what is unfair about a comparison', () => {
    const of = (log: ReturnType<typeof logOf>) => { const [a, b] = flownBy(log, measureOf('distance')); return a && b ? unfairness(a, b) : []; };
    expect(of(logOf([8, 9, 8, 9, 8], [9, 9, 9, 8, 9]))).to.deep.equal([]);
    expect(of(logOf([8, 9], [9, 9]))).to.deep.equal(['few']);
    const late = logOf([8, 9, 8, 9, 8]);
    expect(of(withRows(late, {throws: [1, 2, 3, 4, 5].map((i) => throwOf('b', 100 + i, 9, {surface: 'grass', wind: 'against'}))}))).to.deep.equal(['winds', 'turns']);
  });
});

describe('a log', () => {
  it('is made of another by the changes between them', () => {
    fc.assert(fc.property(anyLog, anyLog, (a, b) => { expect(withChanges(a, changesBetween(a, b))).to.deep.equal(b); }));
    expect(changesBetween(emptyLog, emptyLog).put.throws).to.deep.equal([]);
  });
});

describe('what differs between two versions', () => {
  it('is what the table of dimensions says', () => {
    const other = withValues(defaultDesign, {'wing.stack': 0.012, 'wing.creases': [{at: 0.05}], 'name': 'Other', 'board.gap': 0.002, 'launch.height': 2});
    expect(differences(defaultDesign, other).map(({path}) => path)).to.deep.equal(['wing.creases', 'wing.stack']);
    expect(differences(defaultDesign, defaultDesign)).to.deep.equal([]);
  });
});
