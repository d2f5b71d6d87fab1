import {expect} from '@open-wc/testing';
import {measures, unitFor, units, usualUnit} from '../../../src/calc/units/kinds.js';
import type {QuantityKind} from '../../../src/calc/units/kinds.js';

const kinds: readonly QuantityKind[] =
  ['length', 'mass', 'angle', 'ratio', 'count', 'areal-mass', 'cube-loading', 'area', 'speed', 'density', 'time', 'temperature', 'altitude'];

describe('units', () => {
  it('give no spelling to two units', () => {
    const names = Object.values(units).flatMap((unit) => unit.names);
    expect(new Set(names).size).to.equal(names.length);
  });

  it('are frozen, each under its symbol', () => {
    for (const [symbol, unit] of Object.entries(units)) {
      expect(unit.symbol).to.equal(symbol);
      expect(Object.isFrozen(unit) && Object.isFrozen(unit.names)).to.equal(true);
      expect(unit.si).to.be.closeTo(unit.factor * 10 ** unit.power, 1e-15 * unit.si);
    }
    expect(Object.isFrozen(units)).to.equal(true);
  });

  it('are found by symbol or spelling for the kind that they measure', () => {
    expect(unitFor('g/m²', 'areal-mass')?.symbol).to.equal('g/m²');
    expect(unitFor('inches', 'length')?.symbol).to.equal('in');
    expect(unitFor('oz/ft³', 'cube-loading')).to.equal(unitFor('oz/ft³', 'density'));
    for (const symbol of [undefined, '', 'g', 'furlong', 'constructor']) expect(unitFor(symbol, 'length'), symbol).to.equal(undefined);
  });
});

describe('usualUnit', () => {
  it('measures what it is for', () => {
    for (const kind of kinds) {
      for (const system of ['metric', 'inch'] as const) {
        const unit = units[usualUnit(kind, system)];
        expect(unit && measures(unit, kind), `${kind} ${system}`).to.equal(true);
      }
    }
    expect(kinds.map((kind) => usualUnit(kind, 'metric'))).to.deep.equal(['mm', 'g', '°', '%', '', 'g/m²', 'kg/m³', 'dm²', 'm/s', 'kg/m³', 's', '°C', 'm']);
    expect(kinds.map((kind) => usualUnit(kind, 'inch'))).to.deep.equal(['in', 'oz', '°', '%', '', 'oz/ft²', 'oz/ft³', 'in²', 'ft/s', 'lb/ft³', 's', '°F', 'ft']);
  });
});
