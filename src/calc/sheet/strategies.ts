import type {Block} from './block.js';
import {cutAcross, cutAlong, keepLargest} from './free-space.js';
import type {Rule, Strategy} from './fill-sheets.js';

type Order = Strategy['order'];

const longest = ({length, width}: Block) => Math.max(length, width);
const shortest = ({length, width}: Block) => Math.min(length, width);

const byLongSide: Order = (a, b) => longest(b) - longest(a) || shortest(b) - shortest(a);
const byShortSide: Order = (a, b) => shortest(b) - shortest(a) || longest(b) - longest(a);
const byArea: Order = (a, b) => b.length * b.width - a.length * a.width || longest(b) - longest(a);
const byWidth: Order = (a, b) => b.width - a.width || b.length - a.length;
const byLength: Order = (a, b) => b.length - a.length || b.width - a.width;

const shortSideFit: Rule = (space, length, width) => Math.min(space.length - length, space.width - width);
const longSideFit: Rule = (space, length, width) => Math.max(space.length - length, space.width - width);
const areaFit: Rule = (space, length, width) => space.length * space.width - length * width;
const lowest: Rule = (space, _length, width) => space.y + width + 1e-6 * space.x;
const leftmost: Rule = (space, length) => space.x + length + 1e-6 * space.y;

const orders = [byLongSide, byArea, byShortSide, byWidth, byLength];

/** Ways to fill sheets, every rule with every order, the more promising rules first. */
export const strategies: readonly Strategy[] = [
  {rule: shortSideFit, cut: keepLargest},
  {rule: lowest, cut: keepLargest},
  {rule: leftmost, cut: keepLargest},
  {rule: shortSideFit, cut: cutAlong},
  {rule: shortSideFit, cut: cutAcross},
  {rule: longSideFit, cut: keepLargest},
  {rule: areaFit, cut: keepLargest},
  {rule: areaFit, cut: cutAlong},
  {rule: areaFit, cut: cutAcross},
].flatMap(({rule, cut}) => orders.map((order) => ({order, rule, cut})));
