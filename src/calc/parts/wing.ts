import {wingStations} from '../bench/wing-stations.js';
import type {GliderDesign} from '../design/design.js';
import {wingClashes} from '../design/clashes.js';
import {signedArea} from '../geometry/polygon/index.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {chordLine, spanwiseLines, surfaceOutline} from './outline.js';
import type {Part, PartLine} from './part.js';

/** Problems of the bench alone: the wing can be cut without them. */
const notForCutting = new Set(['block-missing']);

/**
 * The wing, one piece from tip to tip, as it comes from the sheet: seen from above as it flies, x to the right from the
 * centre line, y forward from the leading edge at the root, so that face A flies as the top.
 *
 * A camber crease that closes is grooved on the face that becomes hollow, the underside (B); one that opens is slit on
 * the top (A). Dihedral joints lift the tips, so a groove that closes is on the top and a slit that opens below. The
 * centre line is marked on both faces: one meets the body, the other is sighted along. Refused with the wing's clashes.
 */
export const wingPart = memo((wing: GliderDesign['wing']): Outcome<Part> => {
  const clashes = wingClashes(wing).filter(({code}) => !notForCutting.has(code));
  if (clashes.length > 0) return refused(...clashes);
  const stations = wingStations(wing);
  const outline = surfaceOutline(stations);
  const creaseFace = wing.foldFace === 'closing' ? 'B' : 'A';
  const jointFace = wing.jointFace === 'closing' ? 'A' : 'B';
  const [centreFrom, centreTo] = chordLine(stations, 0);
  const lines: PartLine[] = [
    ...wing.creases.flatMap(({at}) => spanwiseLines(stations, at).map(([from, to]) =>
      ({kind: 'crease', from, to, face: creaseFace, label: 'camber'}) as const)),
    ...wing.joints.flatMap(({at}) => (at === 0 ? [0] : [-at, at]).map((across) => {
      const [from, to] = chordLine(stations, across);
      return {kind: 'joint', from, to, face: jointFace, label: 'dihedral'} as const;
    })),
    ...(['A', 'B'] as const)
      .filter((face) => !wing.joints.some(({at}) => at === 0) || face !== jointFace)
      .map((face) => ({kind: 'mark', from: centreFrom, to: centreTo, face, label: 'centre'}) as const),
  ];
  return good({
    id: 'wing', count: 1, outline, lines, mayTurn: true, area: signedArea(outline),
    mayMirror: !lines.some(({kind}) => kind !== 'mark'),
  });
});
