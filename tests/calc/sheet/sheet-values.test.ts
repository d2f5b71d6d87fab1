import {expect} from '@open-wc/testing';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {derivedValue} from '../../../src/calc/values.js';

const valueOf = async (name: string, values = {}): Promise<number | string> => {
  const outcome = (await derivedValue(name))?.of(withValues(defaultDesign, values));
  return outcome?.ok ? outcome.value : outcome?.problems[0]?.code ?? 'no such value';
};

describe('values of the sheet', () => {
  it('are worked out for one glider', async () => {
    expect(await valueOf('sheet.count')).to.equal(1);
    expect(await valueOf('sheet.count', {'board.width': 0.15})).to.be.above(1);
    const partsArea = 660 * 120 + 2 * 620 * 32 + 240 * 78 + 2 * 70 * 70;
    expect(await valueOf('sheet.partsArea')).to.be.closeTo(partsArea * 1e-6, 1e-12);
    expect(await valueOf('sheet.waste')).to.be.closeTo(1 - partsArea / (700 * 500), 1e-12);
    expect(await valueOf('sheet.leftoverLength')).to.be.at.least(await valueOf('sheet.leftoverWidth') as number);
  });

  it('are none while a part does not fit', async () => {
    expect(await valueOf('sheet.count', {'wing.span': 0.71})).to.equal('part-too-big');
    expect(await valueOf('sheet.leftoverLength', {'board.length': 0.66, 'board.width': 0.265, 'body.length': 0.65, 'tail.span': 0.64, 'tail.fins.count': 0})).to.equal('nothing-left-over');
  });
});
