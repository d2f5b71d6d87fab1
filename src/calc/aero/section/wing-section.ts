import {panelsOf, wingFold} from '../../bench/wing-fold.js';
import type {GliderDesign} from '../../design/design.js';
import {foldedSection} from '../../geometry/fold/camber.js';
import type {Point} from '../../geometry/polygon/point.js';
import {good, type Outcome} from '../../problem.js';
import {flatSection, thinSection, type ThinSection} from './thin-section.js';

type Wing = GliderDesign['wing'];
type Board = GliderDesign['board'];

/** A folded wing's section at one place along the span. */
export interface WingSection {
  readonly thin: ThinSection;
  /** What each radian that the creases are folded further, shared alike, adds to its angles and its moment. */
  readonly perFold: ThinSection;
  /** Greatest height over the chord, edges pressed from one face left out. */
  readonly camber: number;
}

/** How far the mean line's edges move when they are pressed from one face: half of what is pressed away. */
export function edgeShift({pressed}: Wing, {thickness, pressedEdge}: Board): number {
  const half = Math.max(thickness - pressedEdge, 0) / 2;
  return pressed === 'above' ? -half : pressed === 'below' ? half : 0;
}

/** Edges pressed over less than this share of the chord are left out: no hand presses so little. */
const leastPressed = 1e-3;

/**
 * The mean line of a folded board: the whole skin's line, bent at its ends where the edges are pressed from one face. Pressed lengths
 * that would meet are cut short.
 */
function meanLineOf(points: readonly Point[], {pressedFront, pressedRear}: Wing, shift: number): readonly Point[] {
  const start = points[0]?.x ?? 0, end = points.at(-1)?.x ?? 0, chord = end - start;
  if (shift === 0 || !(chord > 0)) return points;
  const reach = (length: number): number => (length > leastPressed * chord ? Math.min(length, 0.49 * chord) : 0);
  const front = start + reach(pressedFront), rear = end - reach(pressedRear);
  const bends = [front, rear].filter((x) => x > start && x < end && !points.some((p) => p.x === x));
  return [...points, ...bends.map((x) => ({x, y: heightAt(points, x)}))].sort((a, b) => a.x - b.x)
    .map(({x, y}) => ({x, y: y + shift * pressedAt(x, start, front, rear, end)}));
}

/** How much of the shift an edge has at x: all at its end, none where the board is full again. A crease on the way goes along. */
function pressedAt(x: number, start: number, front: number, rear: number, end: number): number {
  if (x < front) return (front - x) / (front - start);
  return x > rear ? (x - rear) / (end - rear) : 0;
}

function heightAt(points: readonly Point[], x: number): number {
  const i = points.findIndex((p) => p.x >= x);
  const a = points[i - 1], b = points[i];
  return a && b ? a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x) : 0;
}

const step = 1e-4;

/**
 * A wing's section where its chord is so long: the same folds in the same places behind the leading edge as at the root, so that
 * a narrower tip is folded nearer its middle. By chord, from the wing's folds on the bench. Refused with what the bench and
 * {@link thinSection} refuse.
 */
export function wingSections(wing: Wing, board: Board): Outcome<(chord: number) => Outcome<WingSection>> {
  const fold = wingFold(wing, board);
  if (!fold.ok) return fold;
  const {folds} = fold.value;
  const shift = edgeShift(wing, board);
  const known = new Map<number, Outcome<WingSection>>();
  const at = (chord: number): Outcome<WingSection> => {
    const panels = panelsOf({...wing, chord});
    const {points, camber} = foldedSection(panels, folds);
    const thin = thinSection(meanLineOf(points, wing, shift));
    if (!thin.ok) return thin;
    const more = folds.length > 0 ? thinSection(meanLineOf(foldedSection(panels, folds.map((f) => f + step / folds.length)).points, wing, shift)) : thin;
    if (!more.ok) return more;
    return good({thin: thin.value, perFold: folds.length > 0 ? slopeBetween(thin.value, more.value) : flatSection, camber});
  };
  return good((chord) => {
    let section = known.get(chord);
    if (!section) known.set(chord, section = at(chord));
    return section;
  });
}

const slopeBetween = (a: ThinSection, b: ThinSection): ThinSection => ({
  zeroLiftAngle: (b.zeroLiftAngle - a.zeroLiftAngle) / step,
  quarterChordMoment: (b.quarterChordMoment - a.quarterChordMoment) / step,
  idealAngle: (b.idealAngle - a.idealAngle) / step,
});
