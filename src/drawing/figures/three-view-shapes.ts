import {flownHalf, flownWing} from './flown-wing.js';
import {sideOfWing} from './wing-side.js';
import type {SideOfWing} from './wing-side.js';
import type {WingDihedral} from '../../calc/bench/dihedral.js';
import {wingStations} from '../../calc/bench/wing-stations.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {Point} from '../../calc/geometry/polygon/point.js';
import {partsOf} from '../../calc/parts/parts.js';
import type {Part, PartId} from '../../calc/parts/parts.js';
import {finPlaces} from '../../calc/parts/tail.js';
import type {XY} from '../pen.js';

const MM = 1000;

type Outline = readonly XY[];

/** A crease or joint seen from above: its groove, or only where it runs when the groove is on the other face. */
export interface PlanLine {
  readonly from: XY;
  readonly to: XY;
  readonly seen: boolean;
  readonly face: 'A' | 'B';
  readonly kind: 'crease' | 'joint';
}

/**
 * A glider as three views, millimetres, y downwards as on a page, the nose to the left. From above: from the nose on the centre line, the wing
 * flat as cut. From the left: from the nose at the upper edge of the body. From the front: from the middle of the body's upper edge.
 * A part that cannot be cut is missing in all of them.
 */
export interface ThreeViewShapes {
  readonly plan: {readonly body?: Outline; readonly wing?: Outline; readonly tail?: Outline; readonly fins: readonly Outline[]; readonly lines: readonly PlanLine[]};
  readonly side: {readonly body?: Outline; readonly wing: SideOfWing; readonly tail?: Outline; readonly fin?: Outline};
  readonly front: {readonly body?: Outline; readonly wing: readonly Outline[]; readonly tail?: Outline; readonly fins: readonly Outline[]};
  /** How far each view reaches. */
  readonly extent: {readonly length: number; readonly halfSpan: number; readonly halfFlown: number; readonly above: number; readonly below: number};
}

const box = (x: number, y: number, width: number, height: number): Outline =>
  [{x, y}, {x: x + width, y}, {x: x + width, y: y + height}, {x, y: y + height}];

/** The outlines of every view. */
export function threeViewShapes(design: GliderDesign, dihedral: WingDihedral | undefined, folds: readonly number[]): ThreeViewShapes {
  const {wing, body, tail, arrangement, board} = design;
  const {parts} = partsOf(wing, body, tail, arrangement, board);
  const part = (id: PartId): Part | undefined => parts.find((one) => one.id === id);
  const t = board.thickness * MM;
  const wide = body.layers * t;
  const [bodyPart, wingPart, tailPart, finPart] = [part('body'), part('wing'), part('tailplane'), part('fin')];
  const backFrom = (at: number) => ({x, y}: Point): XY => ({x: (at - y) * MM, y: -x * MM});
  const onPlan = backFrom(arrangement.wingAt), onTail = backFrom(arrangement.tailAt);

  const places = finPart ? finPlaces(tail, board).map((across) => across * MM) : [];
  const tipBack = tail.fins.count === 2 ? tail.sweep + (tail.tipChord ?? tail.chord) : tail.chord;
  const finAt = (arrangement.tailAt + tipBack - tail.fins.chord) * MM;
  const finHeight = tail.fins.height * MM;
  const wingSide = sideOfWing(design, dihedral, folds);
  const flown = dihedral ? flownWing(flownHalf(dihedral, wing.jointFace, t)) : [];
  const up = (outline: Outline): Outline => outline.map(({x, y}) => ({x, y: -y}));
  const length = Math.max(body.length, arrangement.tailAt + Math.max(tail.chord, tipBack), arrangement.wingAt + wing.chord) * MM;

  return {
    plan: {
      ...bodyPart && {body: box(0, -wide / 2, body.length * MM, wide)},
      ...wingPart && {wing: wingPart.outline.map(onPlan)},
      ...tailPart && {tail: tailPart.outline.map(onTail)},
      fins: places.map((y) => box(finAt, y - t / 2, tail.fins.chord * MM, t)),
      lines: (wingPart?.lines ?? []).flatMap(({kind, from, to, face}) =>
        (kind === 'mark' ? [] : [{kind, from: onPlan(from), to: onPlan(to), face, seen: face === 'A'}])),
    },
    side: {
      ...bodyPart && {body: bodyPart.outline.map(({x, y}) => ({x: x * MM, y: (body.height - y) * MM}))},
      wing: wingPart ? wingSide : {root: [], raised: [], tip: []},
      ...tailPart && {tail: box(arrangement.tailAt * MM, -t, tail.chord * MM, t)},
      ...finPart && {fin: finPart.outline.map(({x, y}) => ({x: finAt + x * MM, y: -t - y * MM}))},
    },
    front: {
      ...bodyPart && {body: box(-wide / 2, 0, wide, body.height * MM)},
      wing: wingPart ? flown.map(up) : [],
      ...tailPart && {tail: box(-tail.span / 2 * MM, -t, tail.span * MM, t)},
      fins: places.map((x) => box(x - t / 2, -t - finHeight, t, finHeight)),
    },
    extent: {
      length, halfSpan: Math.max(wing.span, tail.span) / 2 * MM,
      halfFlown: Math.max(dihedral?.spanAsFlown ?? wing.span, tail.span) / 2 * MM,
      above: Math.max(t + (finPart ? finHeight : 0), (dihedral?.tipRise ?? 0) * MM + t + 6),
      below: body.height * MM,
    },
  };
}

/** The chord and the setting back of a wing at its tip. */
export const tipOf = (wing: GliderDesign['wing']): {readonly chord: number; readonly back: number} => wingStations(wing).at(-1) ?? {chord: wing.chord, back: 0};
