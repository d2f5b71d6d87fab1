import type {CutSheets} from '../../calc/sheet/from-parts.js';
import type {CutPiece, SheetPlan} from '../../calc/sheet/plans.js';
import type {LineLabel} from '../../calc/parts/part.js';
import type {PieceSketch, PlaceSketch, SheetPicture} from '../../drawing/figures/sheet-layout.js';
import type {XY} from '../../drawing/pen.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import {kept, size} from './sizes.js';

const mm = ({x, y}: XY): XY => ({x: x * 1000, y: y * 1000});

/** The figure of all sheets, in millimetres, lettered in the reader's words and units. */
export function sheetPicture(host: GliderElement, cut: CutSheets): SheetPicture {
  const words = host.say(sheetWords);
  const {length, width, margin} = cut.stock;
  return {
    length: length * 1000, width: width * 1000, margin: margin * 1000, lit: undefined,
    sheets: cut.plans.map((plan) => ({
      title: titleOf(host, plan, cut),
      pieces: plan.pieces.map((piece) => pieceSketch(host, piece)),
      leftover: plan.leftover && {
        x: plan.leftover.x * 1000, y: plan.leftover.y * 1000, length: plan.leftover.length * 1000, width: plan.leftover.width * 1000,
        words: [words.leftOver(kept(host, plan.leftover)), kept(host, plan.leftover)],
      },
    })),
    words: {length: host.write(length, 'length'), width: host.write(width, 'length'), legend: words.legend},
  };
}

export const titleOf = (host: GliderElement, {first, alike}: SheetPlan, {sheets}: CutSheets): string =>
  host.say(sheetWords).sheetTitle({first, alike, only: sheets === 1});

function pieceSketch(host: GliderElement, {number, part, placed, lines}: CutPiece): PieceSketch {
  const words = host.say(sheetWords);
  const between = (front: LineLabel, rear: LineLabel, said: string): readonly PlaceSketch[] => {
    const [a, b] = [front, rear].map((label) => lines.find((line) => line.label === label));
    return a && b ? [{words: said, at: mm({x: (a.from.x + a.to.x + b.from.x + b.to.x) / 4, y: (a.from.y + a.to.y + b.from.y + b.to.y) / 4})}] : [];
  };
  return {
    number, name: words.parts[part.id], size: size(host, part.outline),
    outline: placed.outline.map(mm),
    lines: lines.map(({kind, face, from, to}) => ({kind, face, from: mm(from), to: mm(to)})),
    places: [...between('wing-front', 'wing-rear', words.wingHere), ...between('tail-front', 'tail-rear', words.tailHere)],
  };
}

/** The picture in words: what lies on which sheet. */
export function pictureInWords(host: GliderElement, cut: CutSheets): string {
  const words = host.say(sheetWords);
  return [words.picture, ...cut.plans.map((plan) =>
    words.pictureSheet(titleOf(host, plan, cut), plan.pieces.map(({number, part}) => words.piece({number, part: words.parts[part.id]}))))].join(' ');
}
