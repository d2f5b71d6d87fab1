import {beadMassPerLength} from '../../../shared/materials.js';
import type {GliderDesign} from '../design/design.js';
import {sectionAt} from '../geometry/planform/index.js';
import {centroid} from '../geometry/polygon/index.js';
import {memo} from '../memo.js';
import {bodyPart} from '../parts/body.js';
import type {Part} from '../parts/part.js';
import {tailStations} from '../parts/stations.js';
import {finPart, finPlaces, tailplanePart} from '../parts/tail.js';
import {wingPart} from '../parts/wing.js';
import {good, refused, type Outcome} from '../problem.js';
import {centreOf, type MassId, type MassItem} from './mass-item.js';

/** Beads of glue between two layers of a body: one near each edge. Common practice, no source. */
const beadsPerLayer = 2;

/** kg/m²: from a sheet on the scale, otherwise as given. */
export const arealMassOf = ({sheetMass, length, width, arealMass}: GliderDesign['board']): number =>
  sheetMass === undefined ? arealMass : sheetMass / (length * width);

/** What is left of the board's mass once skins have been peeled off. */
const leftAfterPeeling = (peeled: GliderDesign['wing']['peeled'], skinShare: number): number =>
  1 - skinShare * {none: 0, above: 0.5, below: 0.5, both: 1}[peeled];

/**
 * The masses of a plane before anyone has weighed it whole: board by area, glue by the length of its beads, bands and tape as given, each
 * part that has been weighed in place of its estimate. A weighed wing has its folds glued, a weighed body its layers, a weighed tail its fins.
 *
 * Bands and tape sit at the middle of the wing's root. Refused with what the parts refuse.
 */
export const estimatedMasses = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'],
  arrangement: GliderDesign['arrangement'], board: GliderDesign['board'], glue: GliderDesign['glue'],
): Outcome<readonly MassItem[]> => {
  const parts = [wingPart(wing), bodyPart(body, arrangement, wing, tail), tailplanePart(tail, board)] as const;
  const [wingCut, bodyCut, tailCut] = parts;
  if (!wingCut.ok || !bodyCut.ok || !tailCut.ok) return refused(...parts.flatMap((part) => part.ok ? [] : part.problems));
  const arealMass = arealMassOf(board);
  const bead = beadMassPerLength(glue.bead);
  const item = (id: MassId, mass: number, at: number, onWing = false): MassItem => ({id, mass, at, sure: 'about', onWing});
  const behindWing = (y: number): number => arrangement.wingAt - y;
  const wingMiddle = arrangement.wingAt + wing.chord / 2;
  return good([
    ...weighed('wing', wing.weighed, [
      item('wing', wingCut.value.area * arealMass * leftAfterPeeling(wing.peeled, board.skinShare), behindWing(centroid(wingCut.value.outline).y), true),
      ...gluedFolds(wingCut.value).map(({length, y}) => item('wing-glue', length * bead, behindWing(y), true)),
    ]),
    ...weighed('body', body.weighed, [
      item('body', body.layers * bodyCut.value.area * arealMass, centroid(bodyCut.value.outline).x),
      item('body-glue', (body.layers - 1) * beadsPerLayer * body.length * bead, body.length / 2),
    ]),
    ...weighed('tail', tail.weighed, [
      item('tailplane', tailCut.value.area * arealMass, arrangement.tailAt - centroid(tailCut.value.outline).y),
      ...finMasses(tail, arrangement, board, arealMass, bead),
      item('tail-glue', tail.chord * bead, arrangement.tailAt + tail.chord / 2),
    ]),
    item('bands', glue.bands, wingMiddle, true),
    item('tape', glue.tape, wingMiddle, true),
  ].filter(({mass}) => mass > 0));
});

/** The estimate of a part, its glue gathered into one; or the weighing in its place, balanced where the estimate is. */
function weighed(id: MassId, mass: number | undefined, estimate: readonly MassItem[]): MassItem[] {
  const onWing = id === 'wing';
  if (mass !== undefined) return [{id, mass, at: centreOf(estimate).at, sure: 'weighed', onWing}];
  const ids = [...new Set(estimate.map((item) => item.id))];
  return ids.map((each) => ({id: each, onWing, ...centreOf(estimate.filter((item) => item.id === each))}));
}

/** A bead along every crease and joint of a wing: how long, and how far forward of its front edge. */
const gluedFolds = ({lines}: Part): readonly {readonly length: number; readonly y: number}[] =>
  lines.filter(({kind}) => kind !== 'mark')
    .map(({from, to}) => ({length: Math.hypot(to.x - from.x, to.y - from.y), y: (from.y + to.y) / 2}));

/** Fins and the bead along the foot of each; their rear edges are flush with the tailplane's where they stand. */
function finMasses(
  tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'], arealMass: number, bead: number,
): MassItem[] {
  const fin = finPart(tail);
  if (!fin) return [];
  return finPlaces(tail, board).flatMap((place) => {
    const under = sectionAt(tailStations(tail), Math.abs(place));
    const rear = arrangement.tailAt + (under ? under.back + under.chord : tail.chord);
    const front = rear - tail.fins.chord;
    return [
      {id: 'fins', mass: fin.area * arealMass, at: front + centroid(fin.outline).x, sure: 'about', onWing: false},
      {id: 'tail-glue', mass: tail.fins.chord * bead, at: (front + rear) / 2, sure: 'about', onWing: false},
    ] as const;
  });
}
