import {good, refused, type Outcome} from '../../problem.js';
import type {Point} from '../polygon/point.js';
import {leastRoot} from './least-root.js';
import {lengthProblems, numbered, problem, refusal, rightAngle} from './lengths.js';
import {creaseProblems, shareFold} from './share-fold.js';

/** A folded skin in flight: metres, in the frame whose x axis is the true chord from leading to trailing edge. */
export interface FoldedSection {
  /** The skin from the leading edge (the origin) to the trailing edge, a corner for each crease. */
  readonly points: readonly Point[];
  /** From leading to trailing edge in a straight line: shorter than the board was. */
  readonly chord: number;
  /** Greatest height over the true chord, as a share of it. */
  readonly camber: number;
  readonly camberHeight: number;
  /** How far the highest crease lies behind the leading edge, along the true chord. */
  readonly crest: number;
  /** The same along the skin, where a ruler can find it. */
  readonly crestAlongSkin: number;
}

/**
 * The folded skin as a chain of straight panels, turned so that its chord lies level.
 *
 * One fold f between a and b: camber over chord = a b sin f / (a² + b² + 2 a b cos f), the height of the triangle over
 * its longest side. Own derivation.
 *
 * @param panels lengths from leading to trailing edge, finite and more than 0
 * @param folds in rad, one fewer, finite; more than 0 turns the rear panel down
 */
export function foldedSection(panels: readonly number[], folds: readonly number[]): FoldedSection {
  let x = 0, y = 0, heading = 0;
  const chain: Point[] = [{x, y}];
  panels.forEach((panel, i) => {
    x += panel * Math.cos(heading);
    y += panel * Math.sin(heading);
    chain.push({x, y});
    heading -= folds[i] ?? 0;
  });
  const chord = Math.hypot(x, y);
  const c = chord ? x / chord : 1, s = chord ? y / chord : 0;
  const points = chain.map((p) => ({x: c * p.x + s * p.y, y: c * p.y - s * p.x}));
  let crest = points[1] ?? {x: 0, y: 0}, crestAlongSkin = panels[0] ?? 0, along = 0;
  panels.slice(0, -1).forEach((panel, i) => {
    along += panel;
    const point = points[i + 1];
    if (point && point.y > crest.y) [crest, crestAlongSkin] = [point, along];
  });
  return {points, chord, camber: chord ? crest.y / chord : 0, camberHeight: crest.y, crest: crest.x, crestAlongSkin};
}

/**
 * The whole fold in rad, shared among the creases, that gives a wanted camber (a share of the true chord): the least
 * root. With one crease, f = atan 2m + asin(m (a² + b²) / (a b √(1 + 4 m²))).
 *
 * Refused: `camber-out-of-range` {camber, most} when a right angle in all gives less, or less than none is wanted;
 * `shares-unusable`; `crease-missing` when there is nothing to fold; and lengths that cannot be.
 *
 * @param shares how much of the whole each crease takes, in any unit; equal when left out
 */
export function foldForCamber(panels: readonly number[], camber: number, shares?: readonly number[]): Outcome<number> {
  const creases = panels.length - 1;
  const problems = [...lengthProblems(numbered('panel', panels)), ...creaseProblems(creases, shares)];
  if (!Number.isFinite(camber)) problems.push(problem('quantity-not-finite', {name: 'camber'}));
  if (problems.length) return refused(...problems);
  const camberAt = (total: number): number => foldedSection(panels, shareFold(total, creases, shares)).camber;
  const {at, most} = leastRoot(camberAt, camber, rightAngle);
  return at !== undefined && camber >= 0 ? good(at) : refusal('camber-out-of-range', {camber, most: at === undefined ? most : camberAt(rightAngle)});
}
