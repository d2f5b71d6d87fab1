// What packers from npm make of the same instances.
import guillotine from 'guillotine-packer';
// what Node finds under the bare name has no exports
import {MaxRectsPacker, PACKING_LOGIC} from 'maxrects-packer/dist/maxrects-packer.mjs';

const rectangles = ({items}) => items.flatMap(({w, h, n}) => Array.from({length: n}, () => ({width: w, height: h})));

function sheetsOfMaxRects(items, width, height, logic) {
  const packer = new MaxRectsPacker(width, height, 0, {smart: false, pot: false, square: false, allowRotation: true, logic});
  packer.addArray(items.map((item) => ({...item})));
  return packer.bins.some(({rects}) => rects.some(({oversized}) => oversized)) ? Infinity : packer.bins.length;
}

const sheetsOfGuillotine = (items, width, height) =>
  guillotine.packer({binWidth: width, binHeight: height, items: items.map((item, name) => ({name, ...item}))}, {kerfSize: 0, allowRotation: true}).length;

const packers = {
  free: {'maxrects-packer': (...of) => Math.min(sheetsOfMaxRects(...of, PACKING_LOGIC.MAX_AREA), sheetsOfMaxRects(...of, PACKING_LOGIC.MAX_EDGE))},
  straight: {'guillotine-packer': sheetsOfGuillotine},
};

/** Sheets that a packer needs; of a strip, the least length in whole units in which it gets everything on one sheet. */
export function packed({instance, cuts, strip, uneven, across}) {
  if (uneven) return undefined;
  const items = rectangles(instance);
  const [[name, sheets]] = Object.entries(packers[cuts]);
  if (!strip) return {name, value: sheets(items, instance.stock.width, instance.stock.height)};
  const area = items.reduce((sum, {width, height}) => sum + width * height, 0);
  const endToEnd = items.reduce((sum, {width, height}) => sum + Math.max(width, height), 0);
  let length = Math.ceil(area / across);
  while (attempted(() => sheets(items, across, length)) > 1 && length < endToEnd) length++;
  return {name, value: length};
}

/** A packer throws when a part is too long for the sheet. */
function attempted(sheets) {
  try { return sheets(); } catch { return Infinity; }
}
