import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {wingFold} from '../bench/wing-fold.js';
import {good, type Outcome} from '../problem.js';
import type {Air} from './air.js';
import {bodyAero, bodyDrag, squareEnds, type BodyAero} from './body-aero.js';
import type {PlaneShape} from './plane-shape.js';
import type {Range} from './range.js';
import {boardDrag, usualBoardDrag, type BoardSection} from './section/board-drag.js';

/** What rubs and pushes against the air without lifting. */
export interface Parasite {
  readonly boards: readonly {readonly board: BoardSection; readonly area: number}[];
  readonly body: BodyAero;
  /** The wing's area, on which the coefficients are. */
  readonly area: number;
}

/** The boards of a plane with their edges and folds, and its body. Refused with what the folds on the bench refuse. */
export const parasiteOf = memo((
  shape: PlaneShape, wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'],
  arrangement: GliderDesign['arrangement'], board: GliderDesign['board'],
): Outcome<Parasite> => {
  const fold = wingFold(wing, board);
  if (!fold.ok) return fold;
  const {area, meanChord} = shape.wing;
  const edge = (pressed: boolean): number => pressed ? Math.min(board.pressedEdge, board.thickness) : board.thickness;
  const wingPressed = wing.pressed !== 'none', tailPressed = tail.pressed !== 'none';
  const wingBoard: BoardSection = {
    chord: meanChord, folds: fold.value.folds, firstCrease: Math.min((wing.creases[0]?.at ?? meanChord) / meanChord, 1),
    frontEdge: edge(wingPressed && wing.pressedFront > 0), rearEdge: edge(wingPressed && wing.pressedRear > 0), square: !(wingPressed && wing.pressedFront > 0),
  };
  const plain = (chord: number): BoardSection =>
    ({chord, folds: [], firstCrease: 1, frontEdge: edge(tailPressed), rearEdge: edge(tailPressed), square: !tailPressed});
  const {fins} = tail, finChord = (fins.chord + (fins.tipChord ?? fins.chord)) / 2;
  return good({
    area, body: bodyAero(body, board, arrangement, wing),
    boards: [
      {board: wingBoard, area}, {board: plain(shape.tail.meanChord), area: shape.tail.area},
      ...fins.count > 0 ? [{board: plain(finChord), area: fins.count * fins.height * finChord}] : [],
    ],
  });
});

/** Drag coefficient on the wing's area at a speed, whatever the lift: boards as `boardDrag`, body as {@link bodyDrag}. */
export function parasiteDrag({boards, body, area}: Parasite, speed: number, {kinematicViscosity}: Air): Range {
  const friction = bodyDrag(body, speed, kinematicViscosity, 0), {frontal} = body;
  let least = friction + frontal * squareEnds.least, usual = friction + frontal * squareEnds.usual, most = friction + frontal * squareEnds.most;
  for (const each of boards) {
    const drag = boardDrag(each.board, speed * each.board.chord / kinematicViscosity);
    least += drag.least * each.area;
    usual += drag.usual * each.area;
    most += drag.most * each.area;
  }
  return {least: least / area, usual: usual / area, most: most / area};
}

/** The usual figure of that range by itself: what looks through many speeds needs no more. */
export function usualParasiteDrag({boards, body, area}: Parasite, speed: number, {kinematicViscosity}: Air): number {
  let drag = bodyDrag(body, speed, kinematicViscosity, squareEnds.usual);
  for (const each of boards) drag += usualBoardDrag(each.board, speed * each.board.chord / kinematicViscosity) * each.area;
  return drag / area;
}
