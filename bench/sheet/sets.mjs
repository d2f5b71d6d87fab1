// Reads the sets of instances in a folder: one JSON for each, {set, instances: [{name, stock: {width, height}, items, known}]}.
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';

const isLength = (length) => typeof length === 'number' && length > 0 && length < Infinity;
const isSide = (side) => side === null || side === undefined || isLength(side);
const isPolygon = (polygon) => Array.isArray(polygon) && polygon.length > 2 && polygon.every((corner) => Array.isArray(corner) && corner.every(Number.isFinite));
const isItem = ({w, h, n = 1, polygon} = {}) => Number.isSafeInteger(n) && n > 0 && (polygon === undefined ? isLength(w) && isLength(h) : isPolygon(polygon));

/** What is wrong with an instance, if anything is. */
function fault(instance) {
  const {stock, items} = instance ?? {};
  if (!stock || !isSide(stock.width) || !isSide(stock.height) || !isLength(stock.width ?? stock.height)) return 'has no stock with a width or a height';
  if (!Array.isArray(items) || items.length === 0) return 'has no items';
  return items.every(isItem) ? undefined : 'has an item without two sides or a polygon, or without a count';
}

function parsed(text) {
  try { return JSON.parse(text); } catch { return undefined; }
}

/** The sets of a folder, and a sentence for each file and instance that was left out. */
export function readSets(folder) {
  const sets = [], leftOut = [];
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.json')).sort()) {
    const content = parsed(readFileSync(join(folder, file), 'utf8'));
    if (!Array.isArray(content?.instances) || content.instances.length === 0) {
      leftOut.push(`${file} is left out: it holds no instances.`);
      continue;
    }
    const instances = content.instances.filter((instance, i) => {
      const wrong = fault(instance);
      if (wrong) leftOut.push(`${file}: instance ${instance?.name ?? i + 1} is left out: it ${wrong}.`);
      return !wrong;
    });
    if (instances.length > 0) sets.push({name: file.replace(/\.json$/, ''), groups: content.groups ?? [], instances: instances.map((each, i) => ({name: `${i + 1}`, known: {}, ...each}))});
  }
  return {sets, leftOut};
}
