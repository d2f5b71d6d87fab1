import {good, refused, type Outcome, type Problem} from '../../problem.js';
import type {Point, Polygon} from '../polygon/point.js';
import {grooveStop} from './groove.js';
import {leastRoot} from './least-root.js';
import {foldProblems, lengthProblems, numbered, problem, refusal, rightAngle, rounding} from './lengths.js';
import {boardsOf, freeEdge, placeAlong, placeOver, poseOf, skinOf, type LowerPlace, type Standing} from './section-pose.js';
import {creaseProblems, shareFold, sum} from './share-fold.js';
import type {ContactKind, FoldFace, Prop, PropPlacing, StandingStack} from './stack.js';

/** A board with one or more creases; lists run from leading to trailing edge, lengths in metres. */
export interface Section {
  readonly panels: readonly number[];
  /** The side whose free edge is propped: the panel at the other end lies flat. */
  readonly propped: 'rear' | 'front';
  readonly thickness: number;
  readonly face: FoldFace;
  /** Width of the V groove at each crease: a closing fold stops where it is shut. */
  readonly grooves?: readonly (number | undefined)[];
  /** How much of the whole fold each crease takes, in any unit; equal when left out. */
  readonly shares?: readonly number[];
}

/**
 * A section at rest on the bench: metres and radians. Bench coordinates: the bench is y = 0, the crease beside the flat
 * panel lies above x = 0 before the board is tilted, and the propped side rises towards +x, whichever side it is.
 */
export interface SectionOnBench {
  /** The fold at each crease, from leading to trailing edge. */
  readonly folds: readonly number[];
  readonly total: number;
  readonly contact: Point;
  readonly contactKind: ContactKind;
  /** The panel touched: its place in `panels`. */
  readonly panel: number;
  /** From the crease beside the flat panel to the contact, along the lower faces. */
  readonly alongPanel: number;
  /** All grooves are shut and the stack is taller still: the board rises stiff, with its crease off the bench. */
  readonly stoppedByGroove: boolean;
  /** How far the flat panel then leans up about its own edge; else 0. */
  readonly tilt: number;
  /** Height of the lower corner of the free edge, and its distance from x = 0. */
  readonly edgeRise: number;
  readonly edgeFromCrease: number;
  /** The outer face of the skin left whole, from the flat edge to the propped one. */
  readonly skin: readonly Point[];
  /** The cross-section of each panel, from the flat one outwards. */
  readonly boards: readonly Polygon[];
}

/**
 * The folds that one stack gives a board with any number of creases, one end lying flat.
 *
 * The folds stand in their shares until a groove is shut; then the other creases take the rest; with all shut, the board
 * tilts about its flat edge. The place of the stack is told as for one panel, with distances along the lower faces from
 * the free edge, whichever panel they end on, and bench distances from the crease beside the flat panel. The place of the
 * lower faces that stands over the stack's near upper edge must be as high as the stack: solved for the slope of the last
 * panel, least root. Own derivation; `foldFromProp` gives the closed forms for one crease.
 *
 * Refused: `prop-too-tall` {height, most}, `prop-inset-too-far` {inset, most}, `prop-past-crease` (it would stand under the
 * crease, or fold the board past a right angle), `prop-beyond-edge` {fromCrease, most} (the board does not reach it),
 * `crease-missing`, `shares-unusable`, and lengths that cannot be.
 */
export function foldSectionOverStack(section: Section, prop: Prop): Outcome<SectionOnBench> {
  const {height, where, fromCrease = 0} = prop;
  const problems = sectionProblems(section, prop, height);
  if (problems.length) return refused(...problems);
  const bench = benchOf(section);
  if (where === 'bench') {
    const rests = letDown(bench, height, fromCrease);
    if (!rests.ok) return rests;
    const {contactKind, edgeRise: most} = rests.value;
    return contactKind === 'none' ? refusal('prop-beyond-edge', {fromCrease, most: bench.reach})
      : contactKind === 'panel-edge-against-stack-face' ? refusal('prop-too-tall', {height, most}) : rests;
  }
  const place = (slope: number): LowerPlace => touched(poseAt(bench, slope).pose, prop);
  const {at, most} = leastRoot((slope) => place(slope).y, height, rightAngle);
  if (at === undefined) return refusal('prop-too-tall', {height, most});
  return place(at).along < 0 ? refusal('prop-past-crease', {most: bench.reach}) : good(atRest(bench, at, place(at)));
}

/**
 * The stack that a wanted whole fold needs: the exact inverse of `foldSectionOverStack`. In the `plumb` case a stack also
 * has a steeper fold, beyond the tallest that fits; that one is answered here, not there.
 *
 * Refused as there, and `fold-out-of-range` {angle, most}, `fold-past-groove` {angle, most}.
 */
export function stackForFold(section: Section, total: number, prop: PropPlacing): Outcome<{readonly height: number}> {
  const problems = [...sectionProblems(section, prop), ...foldProblems(total)];
  if (problems.length) return refused(...problems);
  const bench = benchOf(section), {most} = bench, {fromCrease = 0} = prop;
  if (total > most * (1 + rounding)) return refusal('fold-past-groove', {angle: total, most});
  const {pose} = poseAt(bench, Math.min(total, most));
  const edge = freeEdge(pose).x, {along, y} = touched(pose, prop);
  if (prop.where === 'bench' && fromCrease > edge * (1 + rounding)) return refusal('prop-beyond-edge', {fromCrease, most: edge});
  return along < 0 ? refusal('prop-past-crease', {most: edge}) : good({height: y});
}

/** How far the free edge hangs out beyond the stack's far face, in metres; less than 0, it does not. */
export interface Overhang {
  readonly overhang: number;
}

/**
 * What happens when a board is let down on a stack that stands where it stands.
 *
 * The board climbs ever steeper away from the crease, so a flat top meets it with its near upper edge alone, never with its
 * far one. Coming down, the free edge moves in a bow about the crease (one panel: a circle of radius √(L² + d²) about the
 * pivot). A near upper edge inside that bow carries the board; one just on it carries the free edge itself, as far out as
 * it will go. One outside is missed: the free edge slips past the top and comes to lean on the near face, far flatter than
 * meant (closing, one panel: cos f = x / L), and a stack wholly beyond is not touched. Own derivation.
 *
 * Refused: `prop-past-crease` {fromCrease}, `crease-missing`, `shares-unusable`, and lengths that cannot be.
 */
export function sectionProppedBy(section: Section, {height, nearFace, width}: StandingStack): Outcome<SectionOnBench & Overhang> {
  const problems = [...sectionProblems(section, {where: 'bench', fromCrease: nearFace}, height), ...lengthProblems({width})];
  if (problems.length) return refused(...problems);
  const rests = letDown(benchOf(section), height, nearFace);
  return rests.ok ? good({...rests.value, overhang: rests.value.edgeFromCrease - nearFace - width}) : rests;
}

/** A section turned so that its flat panel comes first. */
interface Bench extends Omit<Section, 'grooves' | 'shares'> {
  readonly shares: readonly number[] | undefined;
  readonly grooves: readonly (number | undefined)[];
  readonly stops: readonly (number | undefined)[];
  /** Height of the pivots over the lower faces: the outer face of the skin left whole. */
  readonly d: number;
  /** The whole fold at which every groove is shut, or a right angle. */
  readonly most: number;
  /** All propped panels together. */
  readonly reach: number;
}

function benchOf(section: Section): Bench {
  const {propped, thickness, face} = section;
  const outwards = <T>(list: readonly T[]): readonly T[] => (propped === 'front' ? [...list].reverse() : list);
  const panels = outwards(section.panels), shares = section.shares && outwards(section.shares);
  const grooves = outwards(section.panels.slice(1).map((_, i) => section.grooves?.[i]));
  const stops = grooves.map((groove) => (face === 'closing' && groove ? grooveStop(thickness, groove) : undefined));
  return {
    ...section, panels, grooves, stops, shares, d: face === 'opening' ? thickness : 0,
    most: sum(shareFold(rightAngle, stops.length, shares, stops)), reach: sum(panels.slice(1)),
  };
}

/** The board with its last panel at a slope to the bench: folded as far as the grooves allow, tilted for the rest. */
function poseAt({panels, d, shares, stops, most}: Bench, slope: number): {readonly folds: number[]; readonly tilt: number; readonly pose: Standing[]} {
  const folds = shareFold(Math.min(slope, most), stops.length, shares, stops), tilt = Math.max(0, slope - most);
  return {folds, tilt, pose: poseOf(panels, d, folds, tilt)};
}

/** The place of the lower faces that stands over the stack's near upper edge. */
function touched(pose: readonly Standing[], {where, inset = 0, fromCrease = 0, width = 0}: PropPlacing): LowerPlace {
  switch (where) {
    case 'edge': return freeEdge(pose);
    case 'inset': return placeAlong(pose, freeEdge(pose).along - inset);
    case 'bench': return placeOver(pose, fromCrease);
    case 'plumb': return placeOver(pose, freeEdge(pose).x - width, -Infinity);
  }
}

/** The board comes down from a right angle until what lies beyond the stack's near face meets its top, or the free edge that face. */
function letDown(bench: Bench, height: number, x: number): Outcome<SectionOnBench> {
  const {reach} = bench;
  const short = (pose: readonly Standing[]): number => x - freeEdge(pose).x;
  // a board that ends short of the stack is clear of any height, the more so the shorter, so that the search finds where it is not
  const clearance = (slope: number): number => {
    const {pose} = poseAt(bench, slope), gap = short(pose);
    return gap > 0 ? height + 2 * reach + gap : placeOver(pose, x).y;
  };
  const {at = rightAngle} = leastRoot((turn) => -clearance(rightAngle - turn), -height, rightAngle);
  if (at === 0) return refusal('prop-past-crease', {fromCrease: x});
  const slope = height > 0 ? rightAngle - at : 0, {pose} = poseAt(bench, slope);
  const place = placeOver(pose, x), rests = atRest(bench, slope, place);
  if (short(pose) > 0) return good({...rests, contactKind: 'none'});
  return good(place.y < height - rounding * reach ? {...rests, contactKind: 'panel-edge-against-stack-face'} : rests);
}

/** The board at rest on a place of its lower faces. */
function atRest(bench: Bench, slope: number, {x, y, panel, along, root}: LowerPlace): SectionOnBench {
  const {folds, tilt, pose} = poseAt(bench, slope);
  const {propped, panels, reach, d, thickness, grooves} = bench;
  const front = propped === 'front', edge = freeEdge(pose);
  return {
    folds: front ? [...folds].reverse() : folds, total: sum(folds), contact: {x, y}, alongPanel: along,
    contactKind: root ? 'panel-root-on-stack-top' : along < reach * (1 - rounding) ? 'stack-edge-under-panel' : 'panel-edge-on-stack-top',
    panel: front ? panels.length - 1 - panel : panel,
    stoppedByGroove: tilt > rounding, tilt, edgeRise: edge.y, edgeFromCrease: edge.x,
    skin: skinOf(pose, d), boards: boardsOf(pose, thickness, folds, d > 0 ? 'square' : grooves),
  };
}

/** What is wrong with a section, and with a stack and its place. */
function sectionProblems(
  {panels, propped, thickness, grooves = [], shares}: Section, {where, inset = 0, fromCrease = NaN, width = NaN}: PropPlacing, height = 0,
): Problem[] {
  const problems = [
    ...lengthProblems({...numbered('panel', panels), ...numbered('groove', grooves.filter((groove) => groove !== undefined)), thickness}),
    ...lengthProblems({height}, 0), ...creaseProblems(panels.length - 1, shares),
  ];
  if (problems.length) return problems;
  const reach = sum(propped === 'front' ? panels.slice(0, -1) : panels.slice(1));
  switch (where) {
    case 'edge': return [];
    case 'inset': return inset >= reach ? [problem('prop-inset-too-far', {inset, most: reach})] : lengthProblems({inset}, 0);
    case 'bench': return fromCrease <= 0 ? [problem('prop-past-crease', {fromCrease})] : lengthProblems({fromCrease});
    case 'plumb': return width >= reach ? [problem('prop-past-crease', {width, most: reach})] : lengthProblems({width});
  }
}
