import type {CutPiece} from '../../calc/sheet/plans.js';
import type {LineLabel} from '../../calc/parts/part.js';
import type {PieceSketch, PlaceSketch, SheetPicture, SheetSize, SheetSketch} from '../../drawing/figures/sheet-layout.js';
import type {XY} from '../../drawing/pen.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import {ownBoard, type CutPart, type LaidOut, type LaidPlan} from './laid-out.js';
import {kept, size} from './sizes.js';

export const mm = ({x, y}: XY): XY => ({x: x * 1000, y: y * 1000});

/** What a piece is called: a length of a spliced part says which it is. */
export function pieceName(host: GliderElement, {id, piece}: CutPart): string {
  const words = host.say(sheetWords);
  return piece ? words.lengthOf({part: words.parts[id], ...piece}) : words.parts[id];
}

/** What the figure shows beside the layout: pieces held, and one that is in hand on some sheet. */
export interface Handled {
  readonly isHeld: (piece: CutPiece, plan: LaidPlan) => boolean;
  readonly inHand: {readonly piece: CutPiece; readonly plan: LaidPlan} | undefined;
}

const untouched: Handled = {isHeld: () => false, inHand: undefined};

/** The figure of all sheets, in millimetres, lettered in the reader's words and units. */
export function sheetPicture(host: GliderElement, laid: LaidOut, {isHeld, inHand}: Handled = untouched): SheetPicture {
  const words = host.say(sheetWords);
  const {length, width, margin} = laid.stock;
  const sizes = new Map<string, SheetSize>();
  return {
    ...sizeInWords(host, length, width), margin: margin * 1000, lit: undefined, grain: host.state.design.board.grain,
    sheets: laid.plans.map((plan): SheetSketch => {
      const others = plan.pieces.filter(({number}) => number !== inHand?.piece.number);
      const pieces = [...others, ...inHand?.plan === plan ? [inHand.piece] : []];
      const {leftover, sheet: {board}} = plan;
      if (board.id !== ownBoard && !sizes.has(board.id)) sizes.set(board.id, sizeInWords(host, board.length, board.width));
      return {
        title: sheetTitle(host, plan, laid), size: sizes.get(board.id),
        pieces: pieces.map((piece) => pieceSketch(host, piece, piece !== inHand?.piece && isHeld(piece, plan))),
        // what was left over may lie under the part in hand
        leftover: leftover && inHand === undefined ? {
          x: leftover.x * 1000, y: leftover.y * 1000, length: leftover.length * 1000, width: leftover.width * 1000,
          words: [words.leftOver(kept(host, leftover)), kept(host, leftover)],
        } : undefined,
      };
    }),
    words: {length: host.write(length, 'length'), width: host.write(width, 'length'), legend: words.legend},
  };
}

const sizeInWords = (host: GliderElement, length: number, width: number): SheetSize =>
  ({length: length * 1000, width: width * 1000, words: {length: host.write(length, 'length'), width: host.write(width, 'length')}});

export const sheetTitle = (host: GliderElement, {first, alike, sheet: {board}}: LaidPlan, {plans}: LaidOut): string => {
  const words = host.say(sheetWords);
  const title = words.sheetTitle({first, alike, only: plans.length === 1 && alike === 1});
  return board.leftover ? words.oldPiece(title) : title;
};

function pieceSketch(host: GliderElement, {number, part, placed, lines}: CutPiece, held: boolean): PieceSketch {
  const words = host.say(sheetWords);
  const between = (front: LineLabel, rear: LineLabel, said: string): readonly PlaceSketch[] => {
    const [a, b] = [front, rear].map((label) => lines.find((line) => line.label === label));
    return a && b ? [{words: said, at: mm({x: (a.from.x + a.to.x + b.from.x + b.to.x) / 4, y: (a.from.y + a.to.y + b.from.y + b.to.y) / 4})}] : [];
  };
  return {
    number, name: pieceName(host, part), size: size(host, part.outline), held,
    outline: placed.outline.map(mm),
    lines: lines.map(({kind, face, from, to}) => ({kind, face, from: mm(from), to: mm(to)})),
    places: [...between('wing-front', 'wing-rear', words.wingHere), ...between('tail-front', 'tail-rear', words.tailHere)],
  };
}

/** The picture in words: what lies on which sheet. */
export function pictureInWords(host: GliderElement, laid: LaidOut): string {
  const words = host.say(sheetWords);
  return [words.picture, ...laid.plans.map((plan) =>
    words.pictureSheet(sheetTitle(host, plan, laid), plan.pieces.map(({number, part}) => words.piece({number, part: pieceName(host, part)}))))].join(' ');
}
