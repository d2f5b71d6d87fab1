import {expect} from '@open-wc/testing';
import {drawAsBuilt, type AsBuiltPicture} from '../../../src/drawing/figures/as-built.js';
import {drawnAt, expectReadable} from './lettering.js';

const reading = (words: string, taken = true) => ({words, taken});

const picture: AsBuiltPicture = {
  hollow: {
    boards: [[{x: 0, y: 5}, {x: 45, y: 9}, {x: 45, y: 4}, {x: 0, y: 0}], [{x: 45, y: 9}, {x: 115, y: 5}, {x: 115, y: 0}, {x: 45, y: 4}]], chord: 115, deepest: {x: 45, y: 4},
    reading: reading('4.0 mm'), title: 'Wing from the side, a ruler under it',
  },
  tips: {
    left: [{x: 0, y: 0}, {x: -180, y: 0}, {x: -307, y: 29}], right: [{x: 0, y: 0}, {x: 180, y: 0}, {x: 307, y: 26}], thickness: 5,
    readings: [reading('left 29.0 mm'), reading('right 26.0 mm')], title: 'Wing from the front, middle flat on the bench',
  },
  tail: {chord: 74, thickness: 5, front: 0.5, rear: 2.9, readings: [reading('0.5 mm'), reading('plan 2.9 mm', false)], title: 'Tail on the body, from the left'},
  plan: {
    wing: [{x: -307, y: 0}, {x: 307, y: 0}, {x: 307, y: 115}, {x: -307, y: 115}], tail: [{x: -115, y: 272}, {x: 115, y: 272}, {x: 115, y: 346}, {x: -115, y: 346}],
    body: [{x: -5, y: -60}, {x: 5, y: -60}, {x: 5, y: 350}, {x: -5, y: 350}], line: [{x: 0, y: -60}, {x: 0, y: 350}], corners: [{x: -307, y: 115}, {x: 307, y: 115}], tailPoint: {x: 0, y: 346},
    readings: [reading('left 387.0 mm'), reading('plan right 385.3 mm', false)], bow: reading('tail 4.0 mm to the right'), title: 'From above: tip to tail, and along a thread',
  },
};

describe('what is measured on a finished plane, drawn', () => {
  for (const width of [288, 328, 720, 1000]) {
    it(`is readable at ${String(width)} px`, async () => {
      expectReadable(await drawnAt(width, (pen, widthPx) => drawAsBuilt(pen, widthPx, picture)));
    });
  }

  it('stands in two columns where there is room, and in one where there is not', async () => {
    const ratio = async (width: number): Promise<number> => {
      const {viewBox: {baseVal: {width: w, height: h}}} = await drawnAt(width, (pen, widthPx) => drawAsBuilt(pen, widthPx, picture));
      return h / w;
    };
    expect(await ratio(720)).to.be.lessThan(0.6);
    expect(await ratio(328)).to.be.greaterThan(1.2);
  });

  it('draws the tail’s edges to scale, even as measured from a bench', async () => {
    const height = async (front: number, rear: number): Promise<number> => {
      const svg = await drawnAt(720, (pen, widthPx) => drawAsBuilt(pen, widthPx, {...picture, tail: {...picture.tail, front, rear}}));
      return svg.viewBox.baseVal.height;
    };
    // over a bench the edges stand high, yet the picture grows no taller than a hand's breadth above the edge needs
    expect(await height(62, 64)).to.be.lessThan(await height(0, 2) + 60);
  });

  it('moves its lines with what was measured', async () => {
    const boxOf = async (deepest: number): Promise<string | null | undefined> => {
      const svg = await drawnAt(600, (pen, widthPx) => drawAsBuilt(pen, widthPx, {...picture, hollow: {...picture.hollow, deepest: {x: 45, y: deepest}}}));
      return [...svg.querySelectorAll('circle')].map((one) => one.getAttribute('cy')).join();
    };
    expect(await boxOf(4)).to.not.equal(await boxOf(5));
  });
});
