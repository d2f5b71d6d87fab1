import type {GliderDesign} from '../design/design.js';
import {halfWing} from '../geometry/planform/station.js';
import {signedArea} from '../geometry/polygon/index.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {chordLine, surfaceOutline} from './outline.js';
import type {Part} from './part.js';
import {tailStations} from './stations.js';

/** Where the fins stand: their middle planes, across from the centre line. Two stand on the ends of the tailplane, flush. */
export const finPlaces = (tail: GliderDesign['tail'], board: GliderDesign['board']): readonly number[] =>
  tail.fins.count === 2 ? [-1, 1].map((side) => side * Math.max(tail.span / 2 - board.thickness / 2, 0))
    : tail.fins.count === 1 ? [0] : [];

/**
 * The tailplane, seen from above as it flies: x to the right from the centre line, y forward from its front edge in the
 * middle. Marked on top: the centre line and the inner faces of twin fins. Refused with a planform's own problems.
 */
export const tailplanePart = memo((tail: GliderDesign['tail'], board: GliderDesign['board']): Outcome<Part> => {
  const stations = tailStations(tail);
  const half = halfWing(stations);
  if (!half.ok) return refused(...half.problems.map((problem) => ({...problem, path: 'tail.span'})));
  const outline = surfaceOutline(stations);
  const inner = tail.span / 2 - board.thickness;
  const lines = [
    {across: 0, label: 'centre'} as const,
    ...tail.fins.count === 2 && inner > 0 ? [-inner, inner].map((across) => ({across, label: 'fin'}) as const) : [],
  ].map(({across, label}) => {
    const [from, to] = chordLine(stations, across);
    return {kind: 'mark', from, to, face: 'A', label} as const;
  });
  return good({id: 'tailplane', count: 1, outline, lines, mayTurn: true, mayMirror: true, area: signedArea(outline)});
});

/**
 * A fin, seen from the left: x backwards from its front corner at the tailplane, y up. Its rear edge is upright, so a
 * smaller chord at the top slants the front edge. Undefined where the plane has no fins.
 */
export const finPart = memo((tail: GliderDesign['tail']): Part | undefined => {
  const {count, chord, height, tipChord = chord} = tail.fins;
  if (count < 1) return undefined;
  const outline = [{x: 0, y: 0}, {x: chord, y: 0}, {x: chord, y: height}, {x: chord - tipChord, y: height}];
  return {id: 'fin', count, outline, lines: [], mayTurn: true, mayMirror: true, area: signedArea(outline)};
});
