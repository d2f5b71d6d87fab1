import {wingStations} from '../bench/wing-stations.js';
import type {GliderDesign} from '../design/design.js';
import {planformOf, type Planform} from '../geometry/planform/index.js';
import {memo} from '../memo.js';
import {tailStations} from '../parts/stations.js';
import {good, refused, type Outcome, type Problem} from '../problem.js';
import {flownWing, tiltedPanels, type FlownWing} from './handbook/flown-wing.js';
import type {Rib, Surface} from './lattice/surface.js';
import {raisedRibs} from './raised-ribs.js';
import {wingSections, type WingSection} from './section/wing-section.js';

/**
 * Strips and rows of panels of the right half, tailplane and fins counted together: enough for the neutral point and the lift slope to be
 * within 1 % of those with four times as many.
 */
export interface Fineness {
  readonly wing: readonly [strips: number, rows: number];
  readonly tail: readonly [strips: number, rows: number];
}
export const usualFineness: Fineness = {wing: [15, 4], tail: [9, 3]};

/** Aspect ratios between which the lattice has been tried. A fin counts with its reflection in the tailplane. */
const aspects = [0.3, 40] as const;
const steepest = 70 * Math.PI / 180;

/** A plane as the air meets it: m, x backwards from the wing's leading edge at the root, y to the right, z up. */
export interface PlaneShape {
  readonly wing: FlownWing;
  readonly tail: Planform;
  /** The wing first, in a group of its own; then tailplane and fins. */
  readonly surfaces: readonly Surface[];
  readonly sectionAt: (chord: number) => Outcome<WingSection>;
  /** From the wing's aerodynamic centre back to the tail's. */
  readonly arm: number;
}

/**
 * The lifting surfaces of a design: the wing with its dihedral, tailplane and fins, all on the body's straight upper edge.
 *
 * Refused: 'no-tail-arm' {arm} and 'tail-in-wing' {at, end} for a tail that is not behind the wing, 'aspect-out-of-range' {aspect, least, most},
 * 'sweep-too-steep' {angle, most}, and what the bench, the folds and the planforms refuse.
 */
export const planeShape = memo((
  wing: GliderDesign['wing'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'], fineness: Fineness,
): Outcome<PlaneShape> => {
  const flown = flownWing(wing, board), panels = tiltedPanels(wing, board), section = wingSections(wing, board);
  const tailplane = planformOf(tailStations(tail));
  if (!flown.ok) return flown;
  if (!panels.ok) return panels;
  if (!section.ok) return section;
  if (!tailplane.ok) return refused(...tailplane.problems.map((problem) => ({...problem, path: 'tail.span'})));
  const back = arrangement.tailAt - arrangement.wingAt;
  const arm = back + tailplane.value.quarterChordBack - flown.value.quarterChordBack;
  if (arm <= 0) return refused({code: 'no-tail-arm', path: 'arrangement.tailAt', args: {arm}});
  const wingRibs = raisedRibs(wingStations(wing), panels.value);
  const tailRibs = tailStations(tail).map(({at, chord, back: x}) => ({x: back + x, y: at, z: 0, chord}));
  const problems = [...outOfRange(flown.value, tailplane.value, tail), ...overlap(wingRibs, tailRibs, arrangement)];
  if (problems.length > 0) return refused(...problems);
  return good({
    wing: flown.value, tail: tailplane.value, sectionAt: section.value, arm,
    surfaces: surfacesOf(wingRibs, tailRibs, finRibs(tail, tailRibs), tail.fins.count, fineness),
  });
});

/** Fins stand on the tailplane, rear edges flush: two at its ends or one in the middle. */
function finRibs({fins}: GliderDesign['tail'], tailRibs: readonly Rib[]): readonly Rib[] {
  const under = fins.count === 2 ? tailRibs.at(-1) : fins.count === 1 ? tailRibs[0] : undefined;
  if (!under) return [];
  const rear = under.x + under.chord, tip = fins.tipChord ?? fins.chord;
  return [{x: rear - fins.chord, y: under.y, z: 0, chord: fins.chord}, {x: rear - tip, y: under.y, z: fins.height, chord: tip}];
}

/** Strips as wide on the fins as on the tailplane: where they meet at a corner, unequal ones would spoil the drag. */
function surfacesOf(wing: readonly Rib[], tail: readonly Rib[], fin: readonly Rib[], fins: number, fineness: Fineness): Surface[] {
  const half = tail.at(-1)?.y ?? 0, height = fin.at(-1)?.z ?? 0;
  const [strips, rows] = fineness.tail, width = (half + height) / strips;
  const surface = (ribs: readonly Rib[], count: number, freeTip: boolean): Surface => ({group: 1, ribs, strips: Math.max(1, Math.round(count)), rows, freeTip});
  return [
    {group: 0, ribs: wing, strips: fineness.wing[0], rows: fineness.wing[1], freeTip: true},
    surface(tail, half / width, fins !== 2),
    ...fin.length > 0 ? [{...surface(fin, height / width - 0.25, true), ...(fins === 1 && {inMiddle: true})}] : [],
  ];
}

function outOfRange(wing: FlownWing, tailplane: Planform, {fins}: GliderDesign['tail']): Problem[] {
  const finAspect = 2 * fins.height / ((fins.chord + (fins.tipChord ?? fins.chord)) / 2);
  const [least, most] = aspects;
  return [
    ...[
      {aspect: wing.aspectRatio, path: 'wing.span'}, {aspect: tailplane.aspectRatio, path: 'tail.span'},
      ...fins.count > 0 ? [{aspect: finAspect, path: 'tail.fins.height'}] : [],
    ].filter(({aspect}) => !(aspect >= least && aspect <= most)).map(({aspect, path}) => ({code: 'aspect-out-of-range', path, args: {aspect, least, most}})),
    ...Math.abs(wing.quarterChordSweep) > steepest
      ? [{code: 'sweep-too-steep', path: 'wing.sweep', args: {angle: wing.quarterChordSweep, most: steepest, kind: 'angle'}}] : [],
  ];
}

/** Whether the tail's front edge begins before the wing ends, anywhere along the tail. */
function overlap(wing: readonly Rib[], tail: readonly Rib[], {tailAt, wingAt}: GliderDesign['arrangement']): Problem[] {
  const half = Math.min(wing.at(-1)?.y ?? 0, tail.at(-1)?.y ?? 0);
  const places = [0, half, ...[...wing, ...tail].map(({y}) => y).filter((y) => y < half)];
  const end = (y: number): number => edgeAt(wing, y, ({x, chord}) => x + chord);
  const worst = Math.max(...places.map((y) => end(y) - edgeAt(tail, y, ({x}) => x)));
  return worst > 0 ? [{code: 'tail-in-wing', path: 'arrangement.tailAt', args: {at: tailAt, end: wingAt + end(0)}}] : [];
}

function edgeAt(ribs: readonly Rib[], y: number, edge: (rib: Rib) => number): number {
  const i = Math.max(1, ribs.findIndex((rib) => rib.y >= y));
  const a = ribs[i - 1], b = ribs[i];
  if (!a || !b) return 0;
  return b.y > a.y ? edge(a) + (edge(b) - edge(a)) * (y - a.y) / (b.y - a.y) : Math.max(edge(a), edge(b));
}
