import type {JobPart} from '../../../../src/calc/sheet/engine/index.js';
import type {Random} from '../../../../src/calc/sheet/engine/random.js';
import {plate} from './found-check.js';

/** A sheet of whole centimetres sliced at random into so many pieces by cuts that take a gap, so that one sheet is known to do. */
export function sliced(length: number, width: number, pieces: number, gap: number, random: Random): {length: number; width: number}[] {
  const cut = [{length, width}];
  for (let tries = 0; cut.length < pieces && tries < 1000; tries++) {
    const i = Math.floor(random() * cut.length);
    const piece = cut[i];
    if (!piece) continue;
    const along = random() < piece.width / (piece.length + piece.width);
    const size = (along ? piece.width : piece.length) - gap;
    const at = Math.round(100 * size * (0.2 + 0.6 * random())) / 100;
    if (at < 0.02 || size - at < 0.02) continue;
    cut.splice(i, 1, along ? {...piece, width: at} : {...piece, length: at}, along ? {...piece, width: size - at} : {...piece, length: size - at});
  }
  return cut;
}

/** The pieces as parts, every other one turned. */
export const parts = (pieces: readonly {length: number; width: number}[]): JobPart[] =>
  pieces.map(({length, width}, i) => (i % 2 ? plate(`p${i}`, length, width) : plate(`p${i}`, width, length)));
