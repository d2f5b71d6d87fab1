import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import type {Box} from '../../../../src/calc/sheet/engine/job.js';
import {pushedAway} from '../../../../src/calc/sheet/engine/pushed-away.js';

const box = (x: number, y: number, length: number, width: number): Box => ({x, y, length, width});
const inside = box(0, 0, 10, 10);

const apart = (a: Box, b: Box): number =>
  Math.max(a.x - b.x - b.length, b.x - a.x - a.length, a.y - b.y - b.width, b.y - a.y - a.width);

describe('boxes pushed away from what is to be left over', () => {
  it('go to the edge one behind the other, and no further than what is held lets them', () => {
    const boxes = [box(8, 0, 1, 2), box(6, 0, 1, 2), box(5, 0, 0.5, 2)];
    const free = box(0, 0, 4, 10);
    const loose = pushedAway(boxes, free, {inside, gap: 0.5, fixed: 0, first: 'x'});
    expect(loose.boxes.map(({x}) => x)).to.deep.equal([9, 7.5, 6.5]);
    expect(loose.free).to.deep.equal(box(0, 0, 6, 10));
    const held = pushedAway(boxes, free, {inside, gap: 0.5, fixed: 1, first: 'x'});
    expect(held.boxes.map(({x}) => x)).to.deep.equal([8, 6.5, 5.5]);
    expect(held.free.length).to.equal(5);
  });

  it('stay where they are if they are in nobody’s way', () => {
    const boxes = [box(6, 0, 1, 2), box(7, 7, 1, 1)];
    const {boxes: pushed, free} = pushedAway(boxes, box(0, 0, 5, 5), {inside, gap: 0, fixed: 0, first: 'x'});
    expect(pushed[0]).to.deep.equal(box(9, 0, 1, 2));
    expect(free).to.deep.equal(box(0, 0, 9, 7 + 2));
    expect(pushed[1]).to.deep.equal(box(7, 9, 1, 1));
  });

  it('move as one where they are laid into each other', () => {
    const {boxes} = pushedAway([box(5, 0, 2, 2), box(6, 1, 2, 2)], box(0, 0, 4, 10), {inside, gap: 0, fixed: 0, first: 'x'});
    expect(boxes).to.deep.equal([box(7, 0, 2, 2), box(8, 1, 2, 2)]);
  });

  it('keep on the board and a gap from each other and from what is left, which never shrinks', () => {
    const cells = fc.uniqueArray(fc.integer({min: 0, max: 24}), {minLength: 2, maxLength: 12});
    fc.assert(fc.property(cells, fc.integer({min: 0, max: 3}), fc.constantFrom('x' as const, 'y' as const), fc.array(fc.double({min: 0, max: 1, noNaN: true}), {minLength: 50, maxLength: 50}), (taken, fixed, first, rolls) => {
      const gap = 0.25;
      const [free = box(0, 0, 1, 1), ...boxes] = taken.map((cell, i): Box => {
        const length = 0.5 + (rolls[2 * i] ?? 0), width = 0.5 + (rolls[2 * i + 1] ?? 0);
        return box(2 * (cell % 5), 2 * Math.floor(cell / 5), length, width);
      });
      const pushed = pushedAway(boxes, free, {inside, gap, fixed, first});
      const {x, y, length, width} = pushed.free;
      expect(x <= free.x && y <= free.y && x + length >= free.x + free.length - 1e-9 && y + width >= free.y + free.width - 1e-9).to.equal(true);
      const all = [...pushed.boxes, pushed.free];
      all.forEach((a, i) => {
        expect(Math.min(a.x, a.y)).to.be.at.least(-1e-7);
        expect(Math.max(a.x + a.length, a.y + a.width)).to.be.at.most(10 + 1e-7);
        for (const b of all.slice(i + 1)) expect(apart(a, b)).to.be.at.least(gap - 1e-7);
      });
      boxes.slice(0, fixed).forEach((each, i) => { expect(pushed.boxes[i]).to.deep.equal(each); });
    }));
  });
});
