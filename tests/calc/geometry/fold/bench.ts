import fc from 'fast-check';
import type {FoldFace, Panel} from '../../../../src/calc/geometry/fold/index.js';
import {turned, type Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import type {Outcome, Problem} from '../../../../src/calc/problem.js';

export const mm = 1e-3, deg = Math.PI / 180;

export function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(`refused: ${outcome.problems.map(({code}) => code).join(', ')}`);
}

/** The reasons of a refusal; none when there was a value. */
export const problemsOf = (outcome: Outcome<unknown>): readonly Problem[] => (outcome.ok ? [] : outcome.problems);
export const codesOf = (outcome: Outcome<unknown>): string[] => problemsOf(outcome).map(({code}) => code);

/** Every number anywhere in a value. */
export function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

export const rectangle = (x: number, y: number, length: number, height: number): Polygon =>
  [{x, y}, {x: x + length, y}, {x: x + length, y: y + height}, {x, y: y + height}];

/**
 * The propped panels of a flat board after folding, by turning real outlines: each fold turns all that lies outside its
 * crease about the outer face of the skin left whole. Written apart from the code under test.
 *
 * @param panels from the flat one outwards
 */
export function turnedPanels(panels: readonly number[], folds: readonly number[], thickness: number, face: FoldFace): Polygon[] {
  const [, ...propped] = panels;
  let outlines: {x: number; outline: Polygon}[] = [], x = 0;
  for (const length of propped) {
    outlines.push({x, outline: rectangle(x, 0, length, thickness)});
    x += length;
  }
  for (const [crease, fold] of [...folds.entries()].reverse()) {
    const pivot = {x: outlines[crease]?.x ?? 0, y: face === 'closing' ? 0 : thickness};
    outlines = outlines.map((panel, i) => (i < crease ? panel : {...panel, outline: turned(panel.outline, fold, pivot)}));
  }
  return outlines.map(({outline}) => outline);
}

/** Whether a convex outline reaches into a stack whose near face stands at x and whose far face is far away. */
function reachesInto(outline: Polygon, x: number, height: number): boolean {
  return outline.some((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const crossing = (from.x - x) * (to.x - x) < 0 ? from.y + (x - from.x) / (to.x - from.x) * (to.y - from.y) : Infinity;
    return crossing < height || (from.x > x && from.y < height);
  });
}

/**
 * Whether a board that hangs upright and is let down first meets a stack at `angle`: clear of it at every angle from upright
 * down to there, and in it just below. With `angle` 0, never.
 */
export function firstMeets(
  boardAt: (angle: number) => readonly Polygon[], x: number, height: number, angle: number,
): {readonly clearAbove: boolean; readonly meetsBelow: boolean} {
  const hair = 1e-7;
  const meets = (at: number): boolean => boardAt(at).some((outline) => reachesInto(outline, x, height));
  const above = Array.from({length: 300}, (_, i) => angle + hair + (Math.PI / 2 - angle - hair) * i / 299);
  return {clearAbove: !above.some(meets), meetsBelow: angle === 0 || meets(angle - hair)};
}

export const standsInTheWay = (boardAt: (angle: number) => readonly Polygon[], x: number, height: number): boolean =>
  boardAt(Math.PI / 2).some((outline) => reachesInto(outline, x, height));

export const anyFace = fc.constantFrom<FoldFace[]>('closing', 'opening');

export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({min, max, noNaN: true});

export const anyPanel: fc.Arbitrary<Panel> = fc.record({length: between(30 * mm, 400 * mm), thickness: between(2 * mm, 10 * mm), face: anyFace});
