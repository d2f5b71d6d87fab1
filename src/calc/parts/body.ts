import type {GliderDesign} from '../design/design.js';
import {signedArea, type Point} from '../geometry/polygon/index.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import type {LineLabel, Part, PartLine} from './part.js';

type Inputs = readonly [
  body: GliderDesign['body'], arrangement: GliderDesign['arrangement'], wing: GliderDesign['wing'], tail: GliderDesign['tail'],
];

/** From where the lower edge rises towards the tail; behind the wing unless the builder says otherwise. */
export const taperBegin = (body: GliderDesign['body'], arrangement: GliderDesign['arrangement'], wing: GliderDesign['wing']): number =>
  body.taperFrom ?? Math.min(arrangement.wingAt + wing.chord, body.length);

/** How high the body is at a distance behind the nose. */
export function bodyHeightAt(x: number, ...[body, arrangement, wing]: readonly [Inputs[0], Inputs[1], Inputs[2]]): number {
  const begin = taperBegin(body, arrangement, wing);
  if (body.tailHeight === undefined || x <= begin) return body.height;
  const t = Math.min((x - begin) / (body.length - begin), 1);
  return body.height + t * (body.tailHeight - body.height);
}

/**
 * One layer of the body, a strip that stands on edge: seen from the left with the nose at x = 0 and x backwards, y up
 * from the lower edge at the nose. Wing and tail sit on the straight upper edge; a tapered body rises from below.
 *
 * The places of wing and tail are marked on face A, and a mark that falls beyond the body is left out. Refused:
 * 'body-without-layers', 'taper-off-body' and 'tail-height-above-body' as the design's own clashes.
 */
export const bodyPart = memo((...[body, arrangement, wing, tail]: Inputs): Outcome<Part> => {
  const {length, height, tailHeight, layers} = body;
  const begin = taperBegin(body, arrangement, wing);
  if (layers < 1) return refused({code: 'body-without-layers', path: 'body.layers'});
  if (tailHeight !== undefined && tailHeight > height) {
    return refused({code: 'tail-height-above-body', path: 'body.tailHeight', args: {tail: tailHeight, body: height}});
  }
  if (body.taperFrom !== undefined && body.taperFrom >= length) {
    return refused({code: 'taper-off-body', path: 'body.taperFrom', args: {at: body.taperFrom, body: length}});
  }
  const lower: Point[] = tailHeight === undefined || tailHeight === height || begin >= length
    ? [{x: 0, y: 0}, {x: length, y: 0}]
    : [{x: 0, y: 0}, ...begin > 0 ? [{x: begin, y: 0}] : [], {x: length, y: height - tailHeight}];
  const outline = [...lower, {x: length, y: height}, {x: 0, y: height}];
  const mark = (x: number, label: LineLabel): PartLine[] => x > 0 && x < length
    ? [{kind: 'mark', from: {x, y: height}, to: {x, y: height - bodyHeightAt(x, body, arrangement, wing)}, face: 'A', label}] : [];
  const lines = [
    ...mark(arrangement.wingAt, 'wing-front'), ...mark(arrangement.wingAt + wing.chord, 'wing-rear'),
    ...mark(arrangement.tailAt, 'tail-front'), ...mark(arrangement.tailAt + tail.chord, 'tail-rear'),
  ];
  return good({id: 'body', count: layers, outline, lines, mayTurn: true, mayMirror: true, area: signedArea(outline)});
});
