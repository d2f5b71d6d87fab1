import {through, type XY} from '../pen.js';

/** A fleck of grain, and the gap to the next one on its line, in lines' distances. */
const fleck = 7, gap = 2.5;

/** Fine broken lines between the upper left and the lower right corner of a board, the way that its grain runs. */
export function grainOf(from: XY, to: XY, grain: 'length' | 'width', apart: number): string {
  const [start, end, first, last] = grain === 'length' ? [from.x, to.x, from.y, to.y] : [from.y, to.y, from.x, to.x];
  const at = (along: number, across: number): XY => (grain === 'length' ? {x: along, y: across} : {x: across, y: along});
  const inset = Math.min(apart / 2, (end - start) / 4);
  const lines = Math.max(1, Math.round((last - first) / apart) - 1);
  return Array.from({length: lines}, (_, i) => {
    const across = first + (last - first) * (i + 1) / (lines + 1);
    const period = (fleck + gap) * apart;
    let path = '';
    // each line begins elsewhere, so that the flecks make no columns
    for (let along = start + inset - (i * 0.382 % 1) * period; along < end - inset; along += period) {
      const a = Math.max(along, start + inset), b = Math.min(along + fleck * apart, end - inset);
      if (b > a) path += through([at(a, across), at(b, across)]);
    }
    return path;
  }).join('');
}
