import {expect} from '@open-wc/testing';
import {massToAdd, placeToAdd, together} from '../../src/calc/balance/adding.js';
import {centreOf} from '../../src/calc/balance/mass-item.js';

const inch = 0.0254, pound = 0.45359237;
const item = (pounds: number, inches: number) => ({mass: pounds * pound, at: inches * inch, sure: 'weighed'}) as const;

describe('balance of several masses', () => {
  it('is that of the handbook’s loaded lever', () => {
    // FAA-H-8083-1, Weight and Balance Handbook: 100 lb at 50 in, 100 lb at 90 in, 200 lb at 150 in balance 110 in from the datum (from memory)
    const {mass, at} = centreOf([item(100, 50), item(100, 90), item(200, 150)]);
    expect(mass / pound).to.be.closeTo(400, 1e-9);
    expect(at / inch).to.be.closeTo(110, 1e-9);
  });

  it('is that of a helicopter’s loading table', () => {
    // Brantly B-2B, weight and balance section of a public manual page (read): 1599 lb, 98.9 in
    const {mass, at} = centreOf([item(1109, 104.7), item(180, 72.4), item(160, 72.4), item(150, 115.8)]);
    expect(mass / pound).to.be.closeTo(1599, 1e-9);
    expect(at / inch).to.be.closeTo(98.9, 0.1);
  });
});

describe('ballast', () => {
  it('is as heavy as the mechanics’ examination says', () => {
    // examination question for aircraft mechanics (read): 4954 lb balancing at 30.5 in, least 32.0 in, ballast at 162 in: 57.16 lb
    const ballast = massToAdd({mass: 4954 * pound, at: 30.5 * inch}, 32 * inch, 162 * inch);
    expect(ballast.ok && ballast.value / pound).to.be.closeTo(57.16, 0.005);
  });

  it('goes where the balance asks for it', () => {
    // the same figures the other way round
    expect(placeToAdd({mass: 4954 * pound, at: 30.5 * inch}, 32 * inch, 57.16 * pound) / inch).to.be.closeTo(162, 0.01);
  });

  it('moves the balance by its share when it is moved', () => {
    // weight-shift proportion (read): 180 lb moved 32 in in an airplane of 2700 lb moves the balance 2.13 in
    const rest = {mass: 2520, at: 0};
    const before = together(rest, {mass: 180, at: 110}), after = together(rest, {mass: 180, at: 142});
    expect(after.at - before.at).to.be.closeTo(2.13, 0.005);
  });
});
