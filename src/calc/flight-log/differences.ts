import {sameValue, valueAt, type GliderDesign} from '../design/design.js';
import {dimensionPaths, type DimensionPath, type DimensionValue} from '../design/dimensions.js';
import {memo} from '../memo.js';

/** One dimension in which two gliders differ. */
export interface Difference {
  readonly path: DimensionPath;
  readonly from: DimensionValue;
  readonly to: DimensionValue;
}

/** What is no part of a glider: its name, the sheet it is cut from, what is aimed at, how it is thrown. */
const noPart = /^(name$|launch\.|air\.|balance\.|board\.(length|width|margin|gap)$)/;

/** All dimensions in which two gliders differ, in the order of the table. */
export const differences = memo((a: GliderDesign, b: GliderDesign): readonly Difference[] => dimensionPaths.flatMap((path) => {
  const from = valueAt(a, path), to = valueAt(b, path);
  return noPart.test(path) || sameValue(from, to) ? [] : [{path, from, to}];
}));
