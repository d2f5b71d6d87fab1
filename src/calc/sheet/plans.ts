import {bounds, mirrored, quarterTurned, type Point} from '../geometry/polygon/index.js';
import type {Part, PartLine} from '../parts/part.js';
import type {Layout, Leftover, Placed} from './layout.js';

/** A part where it lies on a sheet, with what is to be drawn on it. */
export interface CutPiece {
  /** Counts through all plans from 1, part by part, as the pieces stand in a cut list. */
  readonly number: number;
  readonly part: Part;
  readonly placed: Placed;
  /** Creases, joints and marks where they lie on the sheet. Face A looks up. */
  readonly lines: readonly PartLine[];
}

/** How a sheet is to be cut, and how many sheets that follow each other are cut so. */
export interface SheetPlan {
  /** The first of these sheets, from 1. */
  readonly first: number;
  readonly alike: number;
  readonly pieces: readonly CutPiece[];
  readonly leftover: Leftover | undefined;
}

const samePlace = (a: Placed, b: Placed | undefined): boolean =>
  a.id === b?.id && a.x === b.x && a.y === b.y && a.turn === b.turn && a.mirrored === b.mirrored;

/** The sheets of a layout as plans: sheets in a row with the same pieces in the same places are one plan. */
export function plansOf({sheets, placed, leftover}: Layout, parts: readonly Part[]): readonly SheetPlan[] {
  const plans: {first: number; alike: number; pieces: readonly Placed[]; leftover: Leftover | undefined}[] = [];
  for (let sheet = 0; sheet < sheets; sheet++) {
    const pieces = placed.filter((piece) => piece.sheet === sheet);
    const kept = leftover?.sheet === sheet ? leftover : undefined;
    const before = plans.at(-1);
    if (before?.pieces.length === pieces.length && pieces.every((piece, i) => samePlace(piece, before.pieces[i]))) {
      before.alike++;
      before.leftover ??= kept;   // the same cuts leave the same piece on each
    } else plans.push({first: sheet + 1, alike: 1, pieces, leftover: kept});
  }
  const inOrder = parts.flatMap((part) => plans.flatMap(({pieces}) => pieces.filter(({id}) => id === part.id)));
  const numbers = new Map(inOrder.map((piece, i) => [piece, i + 1]));
  return plans.map(({pieces, ...plan}) => ({
    ...plan,
    pieces: pieces.flatMap((piece) => {
      const part = parts.find(({id}) => id === piece.id);
      return part ? [{number: numbers.get(piece) ?? 0, part, placed: piece, lines: linesOnSheet(part, piece)}] : [];
    }).sort((a, b) => a.number - b.number),
  }));
}

/**
 * The lines of a part carried along to where a piece of it lies. A piece that may lie turned over is alike on both faces,
 * so its marks go on the face that looks up whichever that is.
 */
export function linesOnSheet({outline, lines}: Part, {x, y, turn, mirrored: over}: Placed): readonly PartLine[] {
  const lying = (points: readonly Point[]): readonly Point[] =>
    quarterTurned(over ? [...mirrored(points)].reverse() : points, turn / 90);
  const from = bounds(lying(outline));
  const carried = (point: Point): Point => {
    const [at = point] = lying([point]);
    return {x: at.x + (x - from.x), y: at.y + (y - from.y)};
  };
  return lines.map((line) => ({...line, from: carried(line.from), to: carried(line.to)}));
}
