import {expect} from '@open-wc/testing';
import {compare, meanInterval, type Interval} from '../../src/calc/flight-log/comparison.js';
import {throwsToShow} from '../../src/calc/flight-log/plan.js';
import type {Outcome} from '../../src/calc/problem.js';
import {studentT} from '../../src/components/flight-log/student-t.js';

function value<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const isAbout = ({from, to}: Interval, least: number, most: number, within: number): void => {
  expect(from).to.be.closeTo(least, within);
  expect(to).to.be.closeTo(most, within);
};

describe('statistics as published', () => {
  it('the interval of a mean: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, heat flow meter data (ZARR13)', () => {
    // n, mean and standard deviation with the interval of the same page
    const interval = value(meanInterval({n: 195, mean: 9.261460, deviation: 0.2278881e-1, least: 9.196848, most: 9.327973}, studentT));
    isAbout(interval, 9.258242, 9.264679, 2e-6);
  });

  it('Welch’s comparison: statscodes.com, "Welch’s Two Sample T-tests in R", sample steps', () => {
    const x = [5.1, 2.0, 4.1, 6.2, 7.1, 8.3], y = [1.5, 6.4, 3.3, 5.8, 4.8, 7.2, 5.6, 4.5];
    const {difference, interval, freedom, standardError, settled} = value(compare(y, x, studentT));
    isAbout(interval, -1.935420, 3.093754, 2e-6);
    expect(difference / standardError).to.be.closeTo(0.51703, 5e-6);
    expect(freedom).to.be.closeTo(9.48, 5e-3);
    expect(settled).to.equal(false);
  });

  it('Welch’s comparison: r.omics.wiki, "T-test and Confidence Interval"', () => {
    const x = [6.6, 5.3, 2.2, 2.3, 7.1, 1.6, 6.1, 2.0, 2.5, 3.7], y = [6.3, 14.7, 10.3, 7.8, 3.7, 5.8, 4.5, 7.8, 11.1, 10.8];
    const {interval, freedom, difference, standardError, settled} = value(compare(y, x, studentT));
    isAbout(interval, -7.054604, -1.625396, 2e-6);
    expect(difference / standardError).to.be.closeTo(-3.4068, 5e-5);
    expect(freedom).to.be.closeTo(15.045, 5e-4);
    expect(settled).to.equal(true);
  });

  it('Welch’s comparison: the reference manual of ClickHouse, welchTTest with a confidence level', () => {
    const {interval, difference, standardError} = value(compare([18.9, 20.3, 19], [20.3, 22.1, 21.9], studentT));
    isAbout(interval, -0.026294346671631885, 4.092961013338302, 1e-7);
    expect(difference / standardError).to.be.closeTo(2.7988719532211235, 1e-9);
  });

  it('Student’s t table: 0.975 at 1, 2, 5, 10 and 30 degrees of freedom (standard table, from memory)', () => {
    for (const [freedom, t] of [[1, 12.706], [2, 4.303], [5, 2.571], [10, 2.228], [30, 2.042]] as const) {
      expect(studentT.quantile(0.975, freedom)).to.be.closeTo(t, 6e-4);
    }
  });

  it('throws of each for a difference of one scatter, shown four times out of five: 17 (J. Cohen, Statistical Power Analysis, 2nd ed. 1988, table 2.4.1, from memory)', () => {
    expect(throwsToShow(1, {a: 1, b: 1}, studentT)).to.equal(17);
    expect(throwsToShow(0.5, {a: 1, b: 1}, studentT)).to.equal(64);
    expect(throwsToShow(0.8, {a: 1, b: 1}, studentT)).to.equal(26);
  });
});
