import {panelsOf} from '../bench/wing-fold.js';
import type {GliderDesign} from '../design/design.js';
import {foldedSection} from '../geometry/fold/camber.js';
import {grooveToClose} from '../geometry/fold/groove.js';
import {leastRoot} from '../geometry/fold/least-root.js';
import type {Point} from '../geometry/polygon/point.js';
import {good, refused, type Outcome} from '../problem.js';

type Wing = GliderDesign['wing'];
type Board = GliderDesign['board'];

/** No wing is folded further than a right angle in all. */
const rightAngle = Math.PI / 2;

/** Each crease takes as much of the fold as any other, as on the bench. */
const shared = (total: number, {creases}: Wing): number[] => creases.map(() => total / creases.length);

/**
 * The lower face of the folded board as it flies, from front edge to rear edge, in the frame of the whole skin's chord: m.
 *
 * A groove that closes leaves the upper skin whole, so the lower face lies a board's thickness below and each panel ends t tan(f/2) short of its
 * crease, or half the width of a wider groove; a slit that opens leaves the lower skin whole. Edges pressed from below, or from both
 * faces, rise by what is pressed away. Own derivation.
 */
export function lowerFace(wing: Wing, board: Board, total: number): Point[] {
  const folds = shared(total, wing), panels = panelsOf(wing);
  const {points} = foldedSection(panels, folds);
  const {thickness} = board, below = wing.foldFace === 'closing' ? thickness : 0;
  const short = folds.map((f) => below === 0 ? 0 : Math.max(grooveToClose(thickness, f), wing.groove ?? 0) / 2);
  const pressed = Math.max(thickness - board.pressedEdge, 0) * {none: 0, above: 0, both: 0.5, below: 1}[wing.pressed];
  const last = panels.length - 1;
  return panels.flatMap((length, i) => {
    const a = points[i], b = points[i + 1];
    if (!a || !b) return [];
    const u = {x: (b.x - a.x) / length, y: (b.y - a.y) / length};
    const at = (along: number, up = 0): Point => ({x: a.x + along * u.x - (up - below) * u.y, y: a.y + along * u.y + (up - below) * u.x});
    const reach = (edge: number): number => pressed > 0 ? Math.min(edge, 0.49 * length) : 0;
    const front = i === 0 ? reach(wing.pressedFront) : 0, rear = i === last ? reach(wing.pressedRear) : 0;
    return [
      ...front > 0 ? [at(0, pressed), at(front)] : [at(i === 0 ? 0 : short[i - 1] ?? 0)],
      ...rear > 0 ? [at(length - rear), at(length, pressed)] : [at(length - (i === last ? 0 : short[i] ?? 0))],
    ];
  });
}

/** How far a face stands off a straightedge laid under it, at the deepest place: m. The straightedge bridges the face's lower hull. */
export function depthOverRuler(face: readonly Point[]): number {
  const hull: Point[] = [];
  const rises = (a: Point, b: Point, p: Point): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  for (const p of [...face].sort((a, b) => a.x - b.x)) {
    for (;;) {
      const b = hull.at(-1), a = hull.at(-2);
      if (!a || !b || rises(a, b, p) > 0) break;
      hull.pop();
    }
    hull.push(p);
  }
  let deepest = 0;
  hull.slice(1).forEach((b, i) => {
    const a = hull[i] ?? b, length = Math.hypot(b.x - a.x, b.y - a.y);
    for (const p of face) if (p.x > a.x && p.x < b.x) deepest = Math.max(deepest, rises(a, b, p) / length);
  });
  return deepest;
}

/** What a ruler under the middle of a wing reads that is folded so far in all: m. */
export const hollowOf = (wing: Wing, board: Board, total: number): number => depthOverRuler(lowerFace(wing, board, total));

/**
 * The whole fold in rad that a ruler's reading tells of: the exact inverse of {@link hollowOf}, least root.
 *
 * Refused: 'hollow-too-deep' {most}, and 'hollow-without-crease' for a flat wing.
 */
export function foldFromHollow(wing: Wing, board: Board, hollow: number): Outcome<number> {
  if (wing.creases.length === 0) return hollow > 0 ? refused({code: 'hollow-without-crease', path: 'built.hollow'}) : good(0);
  const {at, most} = leastRoot((total) => hollowOf(wing, board, total), hollow, rightAngle);
  return at === undefined ? refused({code: 'hollow-too-deep', path: 'built.hollow', args: {most}}) : good(at);
}

/** The wing folded so far in all, however it was propped: what it flies with is given, not what stood on the bench. */
export function foldedSoFar(wing: Wing, total: number): Wing {
  const {camber} = foldedSection(panelsOf(wing), shared(total, wing));
  return {...wing, foldBy: 'camber', camber, propped: 'rear', propPlace: 'edge', groove: undefined};
}
