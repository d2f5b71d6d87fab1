import type {GliderDesign} from '../design/design.js';
import {wingClashes} from '../design/clashes.js';
import {foldForCamber, foldedSection} from '../geometry/fold/camber.js';
import type {FoldedSection} from '../geometry/fold/camber.js';
import {foldOverCrest, stackUnderCrest} from '../geometry/fold/crest.js';
import {glueFill, grooveToClose, slotThatOpens} from '../geometry/fold/groove.js';
import {foldSectionOverStack, sectionProppedBy, stackForFold} from '../geometry/fold/propped-section.js';
import type {Section, SectionOnBench} from '../geometry/fold/propped-section.js';
import type {Prop} from '../geometry/fold/prop.js';
import {memo} from '../memo.js';
import {good, refused} from '../problem.js';
import type {Outcome} from '../problem.js';
import type {Point, Polygon} from '../geometry/polygon/point.js';

type Wing = GliderDesign['wing'];
type Board = GliderDesign['board'];

/** The wing's root section as it is folded on the bench and as it flies. Lengths in m, angles in rad. */
export interface WingFold {
  /** Panels as cut, from leading to trailing edge. */
  readonly panels: readonly number[];
  /** The fold at each crease. */
  readonly folds: readonly number[];
  readonly total: number;
  /** The skin left whole, as it flies. */
  readonly section: FoldedSection;
  /** Height of the stack that is used, or needed for the camber wanted. */
  readonly stack: number;
  readonly onBench: WingOnBench;
  /** For each crease: the V groove is at least this wide at the surface, or the slit opens so far. */
  readonly grooves: readonly number[];
  /** Cross-section of the glue that fills what is left, all creases together, m². */
  readonly glue: number;
  /** On a wing that narrows: the stack that gives the tip the same camber; missing where none can. */
  readonly stackAtTip?: number;
  /** The camber that one more millimetre of stack adds; missing where none could be stood there. */
  readonly perMillimetre?: number;
}

/** What a picture of the bench needs: y up from the bench, the propped side towards +x. */
export interface WingOnBench {
  readonly boards: readonly Polygon[];
  /** Where the stack touches: once, or under a crest twice. */
  readonly contacts: readonly Point[];
  readonly contactKind: SectionOnBench['contactKind'] | 'two-edges-under-crest';
  /** Near and far face of the stack. */
  readonly stack: readonly [near: number, far: number];
  readonly pivot: Point;
  /** The lower corner of the free edge. */
  readonly edge: Point;
  readonly stoppedByGroove: boolean;
  /** What the same stack gives with the edge resting on it, where it does not. */
  readonly foldAtEdge?: number;
}

/** What stands under the wing: its height is read only where it is known. */
const propOf = (wing: Wing): Omit<Prop, 'height'> => ({
  where: wing.propPlace, inset: wing.stackInset, fromCrease: wing.stackFromCrease, width: wing.stackWidth,
});

/** The wing's panels at the root, between leading edge, creases and trailing edge. */
export function panelsOf({chord, creases}: Wing): readonly number[] {
  const lines = [0, ...creases.map(({at}) => at), chord];
  return lines.slice(1).map((at, i) => at - (lines[i] ?? 0));
}

const sectionOf = (wing: Wing, {thickness}: Board): Section => ({
  panels: panelsOf(wing), propped: wing.propped === 'front' ? 'front' : 'rear', thickness, face: wing.foldFace,
  ...(wing.groove !== undefined && {grooves: wing.creases.map(() => wing.groove)}),
});

/**
 * How the wing's root section is folded: from the stack to the camber, or from the camber wanted to the stack.
 *
 * Refused with the wing's own clashes about creases, `crest-one-crease` where a stack stands under the crease of a wing that has several, and
 * what the geometry of a propped section refuses.
 */
export const wingFold: (wing: Wing, board: Board) => Outcome<WingFold> = memo((wing: Wing, board: Board) => {
  const clashes = wingClashes(wing).filter(({path}) => path === 'wing.creases');
  if (clashes.length) return refused(...clashes);
  if (wing.creases.length === 0) return flatWing(wing, board);
  const stack = wing.foldBy === 'stack' ? good({height: wing.stack}) : stackForCamber(wing, board);
  if (!stack.ok) return stack;
  const {height} = stack.value;
  const bench = onBench(wing, board, height);
  if (!bench.ok) return bench;
  const {folds, ...rest} = bench.value;
  const section = foldedSection(panelsOf(wing), folds);
  const more = onBench(wing, board, height + 1e-3);
  const {thickness} = board;
  return good({
    panels: panelsOf(wing), folds, total: folds.reduce((sum, f) => sum + f, 0), section, stack: height, onBench: rest,
    grooves: folds.map((f) => (wing.foldFace === 'closing' ? grooveToClose(thickness, f) : slotThatOpens(thickness, f))),
    glue: folds.reduce((sum, f) => sum + glueFill(thickness, f, wing.foldFace, wing.groove), 0),
    ...stackAtTip(wing, board, section.camber),
    ...(more.ok && {perMillimetre: foldedSection(panelsOf(wing), more.value.folds).camber - section.camber}),
  });
});

/** Creases run along the leading edge, so at a narrower tip the propped panel is shorter and the same stack folds it more. */
function stackAtTip(wing: Wing, board: Board, camber: number): {readonly stackAtTip?: number} {
  if (wing.tipChord === undefined || wing.tipChord === wing.chord) return {};
  const tip = stackForCamber({...wing, chord: wing.tipChord, camber}, board);
  return tip.ok ? {stackAtTip: tip.value.height} : {};
}

/** The camber that a stack of another height would give in the same place; undefined where it cannot stand there. */
export function camberOver(wing: Wing, board: Board, height: number): number | undefined {
  const bench = onBench(wing, board, height);
  return bench.ok ? foldedSection(panelsOf(wing), bench.value.folds).camber : undefined;
}

function stackForCamber(wing: Wing, board: Board): Outcome<{readonly height: number}> {
  const fold = foldForCamber(panelsOf(wing), wing.camber);
  if (!fold.ok) return refused(...fold.problems.map((p) => ({...p, path: 'wing.camber'})));
  if (wing.propped === 'crest') {
    const [front = 0, rear = 0] = panelsOf(wing);
    return stackUnderCrest(front, rear, fold.value, board.thickness, wing.foldFace, wing.stackWidth, wing.groove);
  }
  return stackForFold(sectionOf(wing, board), fold.value, propOf(wing));
}

type Bench = WingOnBench & {readonly folds: readonly number[]};

function onBench(wing: Wing, board: Board, height: number): Outcome<Bench> {
  if (wing.propped === 'crest') return overCrest(wing, board, height);
  const section = sectionOf(wing, board);
  const prop = propOf(wing);
  const folded = foldSectionOverStack(section, {...prop, height});
  const rests = folded.ok || prop.where !== 'bench' ? folded : sectionProppedBy(section, {height, nearFace: wing.stackFromCrease, width: wing.stackWidth});
  if (!rests.ok) return rests;
  const {folds, boards, contact, contactKind, edgeFromCrease, edgeRise, stoppedByGroove} = rests.value;
  const edge = prop.where === 'edge' ? undefined : foldSectionOverStack(section, {where: 'edge', height});
  const near = prop.where === 'bench' ? wing.stackFromCrease : contact.x;
  return good({
    folds, boards, contacts: contactKind === 'none' ? [] : [contact], contactKind, stoppedByGroove,
    stack: [near, near + wing.stackWidth], pivot: {x: 0, y: wing.foldFace === 'opening' ? board.thickness : 0}, edge: {x: edgeFromCrease, y: edgeRise},
    ...(edge?.ok && {foldAtEdge: edge.value.total}),
  });
}

function overCrest(wing: Wing, {thickness}: Board, height: number): Outcome<Bench> {
  const [front, rear, ...others] = panelsOf(wing);
  if (front === undefined || rear === undefined || others.length) return refused({code: 'crest-one-crease', path: 'wing.propped'});
  const folded = foldOverCrest(front, rear, {height, width: wing.stackWidth}, thickness, wing.foldFace, wing.groove);
  if (!folded.ok) return folded;
  const {angle, contacts, frontEdge, rearEdge, ridge, stoppedByGroove} = folded.value;
  const crest = {x: 0, y: ridge};
  return good({
    folds: [angle], contacts, contactKind: 'two-edges-under-crest', stoppedByGroove,
    boards: [roofBoard(frontEdge, crest, thickness), roofBoard(crest, rearEdge, thickness)],
    stack: [contacts[0].x, contacts[1].x], pivot: crest, edge: rearEdge,
  });
}

/** One side of a roof: the board on top of its lower face from a to b, x ascending. */
function roofBoard(a: Point, b: Point, thickness: number): Polygon {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const n = {x: -(b.y - a.y) / length * thickness, y: (b.x - a.x) / length * thickness};
  return [a, b, {x: b.x + n.x, y: b.y + n.y}, {x: a.x + n.x, y: a.y + n.y}];
}

function flatWing(wing: Wing, {thickness}: Board): Outcome<WingFold> {
  const {chord} = wing;
  return good({
    panels: [chord], folds: [], total: 0, section: foldedSection([chord], []), stack: 0, grooves: [], glue: 0,
    onBench: {
      boards: [[{x: -chord, y: 0}, {x: 0, y: 0}, {x: 0, y: thickness}, {x: -chord, y: thickness}]], contacts: [], contactKind: 'none',
      stack: [0, 0], pivot: {x: 0, y: 0}, edge: {x: 0, y: 0}, stoppedByGroove: false,
    },
  });
}
