import type {LineLabel, PartId} from '../../calc/parts/part.js';
import {topic} from '../topic.js';

const few = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

const counted = (n: number, one: string, many: string): string => `${few[n] ?? String(n)} ${n === 1 ? one : many}`;
const sheets = (n: number): string => counted(n, 'sheet', 'sheets');
const gliders = (n: number): string => counted(n, 'glider', 'gliders');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Joined as one says it: "150, 270 and 540 mm". */
const series = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;

const parts: Readonly<Record<PartId, string>> = {wing: 'Wing', body: 'Body', tailplane: 'Tailplane', fin: 'Fin'};
const inSentence = (ids: readonly PartId[]): string => series(ids.map((id) => `the ${parts[id].toLowerCase()}`));

/** Which sheets a piece is left over from. */
type LeftFrom = 'one' | 'each' | 'last';

const left = (piece: string | undefined, from: LeftFrom): string => piece === undefined
  ? '; no piece worth keeping is left over' : `; a piece of **${piece}** is left over${{one: '', each: ' from each', last: ' from the last'}[from]}`;

const markNames: Readonly<Partial<Record<LineLabel, string>>> = {
  'wing-front': 'front of the wing', 'wing-rear': 'rear of the wing', 'tail-front': 'front of the tail', 'tail-rear': 'rear of the tail',
};

export const sheetWords = topic('sheet', {
  heading: 'Parts on the sheet: do they all fit?',
  parts,
  fits: (a: {sheets: number; kits: number; old: number; sheet: string; leftover: string | undefined; from: LeftFrom}) => {
    const old = counted(a.old, 'piece left over from before', 'pieces left over from before');
    const all = a.sheets === 0 ? `**${old}**` : `**${sheets(a.sheets)}** of ${a.sheet}${a.old > 0 ? ` and **${old}**` : ''}`;
    const end = `${all}${left(a.leftover, a.from)}.`;
    if (a.kits > 1) return `**${capital(gliders(a.kits))}** take ${end}`;
    return a.sheets + a.old === 1 ? `Everything fits on ${end}` : `The parts take ${end}`;
  },
  spares: (a: {wanted: number; spare: number}) => `That is ${gliders(a.wanted)} and ${few[a.spare] ?? String(a.spare)} to spare.`,
  cost: (a: {sheet: string; all: string; each: string | undefined}) => `At ${a.sheet} a sheet the board costs ${a.all}${a.each === undefined ? '' : `, ${a.each} a glider`}.`,
  runOut: (a: {part: PartId; count: number}) => `The boards at hand do not do for ${counted(a.count, 'piece', 'pieces')} of this part: ${parts[a.part].toLowerCase()}.`,
  boardsRunOut: (a: {sheets: number; sheet: string; kits: number}) =>
    `${capital(sheets(a.sheets))} of ${a.sheet} ${a.sheets === 1 ? 'is' : 'are'} **not enough for ${gliders(a.kits)}**${a.kits > 1 ? ': take more boards, or ask how many gliders they give' : ''}.`,
  lengthOf: (a: {part: string; nth: number; of: number}) => `${a.part} ${a.nth}/${a.of}`,
  oldPiece: (title: string) => `${title} (left over from before)`,
  doesNotFit: (a: {missing: readonly PartId[]; sheets: number; sheet: string}) =>
    `**${capital(inSentence(a.missing))} ${a.missing.length > 1 ? 'do' : 'does'} not fit** a sheet of ${a.sheet}; ${
      a.sheets === 0 ? 'nothing else is left to place' : `everything else goes on **${sheets(a.sheets)}**`}.`,
  tooBig: (a: {part: PartId; size: string; room: string; tooLong: boolean; needs: string; most: string}) =>
    `The ${parts[a.part].toLowerCase()} is ${a.size} and the sheet has room for ${a.room}: take a board at least ${a.needs} ${a.tooLong ? 'long' : 'wide'}, or make it ${
      a.tooLong ? 'no longer' : 'no wider'} than ${a.most}.`,
  tooLongForGrain: (a: {part: PartId; size: string; room: string; along: string}) =>
    `The ${parts[a.part].toLowerCase()} is ${a.size}, and along the grain the sheet of ${a.room} has only ${a.along}: take a board that is longer along its grain, or one without a grain.`,
  tooBigForMargin: (a: {part: PartId; size: string; room: string; margin: string}) =>
    `The ${parts[a.part].toLowerCase()} is ${a.size}, and an unused edge of ${a.margin} leaves ${a.room}: with clean factory edges it would fit.`,
  noOutline: (part: PartId) => `The ${parts[part].toLowerCase()} has no outline that could be cut.`,
  gives: (a: {sheets: number; gliders: number; used: number; capped: boolean; sheet: string; leftover: string | undefined; from: LeftFrom}) =>
    `**${capital(sheets(a.sheets))}** of ${a.sheet} ${a.sheets === 1 ? 'gives' : 'give'} **${gliders(a.gliders)}**${
      a.used < a.sheets ? `, from ${sheets(a.used)}${a.capped ? '; more than that are not laid out here' : '; the rest stays whole'}` : left(a.leftover, a.from)}.`,
  givesNone: (a: {sheets: number; needed: number; sheet: string}) =>
    `${capital(sheets(a.sheets))} of ${a.sheet} ${a.sheets === 1 ? 'is' : 'are'} **not enough for one glider**: it takes **${sheets(a.needed)}**.`,
  longest: (a: {sheets: number; kits: number; span: string; whole: boolean; sheet: string}) =>
    `On **${sheets(a.sheets)}** of ${a.sheet} the wing ${a.kits > 1 ? `of each of ${gliders(a.kits)} ` : ''}can be **${a.span}** long${a.whole ? ', as long as the sheet itself' : ''}.`,
  noWing: (a: {sheets: number; kits: number; sheet: string}) =>
    `On ${sheets(a.sheets)} of ${a.sheet} there is **room for no wing** with these joints beside the other parts${a.kits > 1 ? ` of ${gliders(a.kits)}` : ''}.`,
  asideLonger: (now: string) => `Now it is ${now}. The picture shows it with the longer wing, everything else as it is.`,
  asideShorter: (now: string) => `Now it is ${now}, which is too long. The picture shows it with the shorter wing, everything else as it is.`,
  justSo: 'That is what it is now.',
  noMore: 'With every part square to the edges of the board, no more can fit; that is proved.',
  noMoreThan: (n: number) => `With every part square to the edges of the board, more than ${few[n] ?? String(n)} cannot fit; that is proved.`,
  noLonger: 'With every part square to the edges of the board, it can be no longer; that is proved.',
  noLongerThan: (span: string) => `With every part square to the edges of the board, it can be no longer than ${span}; that is proved.`,
  byHand: 'Laid out by hand it may yet gain a little.',
  asNow: (now: string) => `The picture shows it as it is now, with a wing of ${now}.`,
  fewest: 'It cannot be done on fewer.',
  maybeFewer: (least: number) => `${capital(few[least] ?? String(least))} might do for all that is proved, but no layout tried gets by with fewer.`,
  allAlike: (perSheet: number) => `Every sheet is cut alike and gives ${gliders(perSheet)}.`,
  alikeInstead: (a: {perSheet: number; sheets: number}) => `With every sheet cut alike, ${gliders(a.perSheet)} from each, it takes ${few[a.sheets] ?? String(a.sheets)}.`,
  use: (a: {used: string; waste: string; mass: string; about: boolean}) =>
    `The parts cover ${a.used} of the board, ${a.waste} is offcuts and what is left over; they weigh ${a.about ? 'about ' : ''}${a.mass} before any glue.`,
  board: 'Board at hand',
  ownSize: 'another size',
  systems: {metric: 'Sold in millimetres', inch: 'Sold in inches'},
  wanted: 'You want to know',
  questions: {sheets: 'sheets it takes', gliders: 'gliders it gives', span: 'the longest wing'},
  kits: 'How many gliders',
  sheetsAtHand: 'Sheets at hand',
  useSpan: (span: string) => `Make the wing ${span}`,
  picture: 'The parts on the board, seen from above.',
  piece: (a: {number: number; part: string}) => `${String(a.number)} ${a.part.toLowerCase()}`,
  pictureSheet: (title: string, pieces: readonly string[]) => `${title}: ${pieces.join(', ')}.`,
  sheetTitle: (a: {first: number; alike: number; only: boolean}) =>
    a.only ? 'As it lies on the bench, face A up' : a.alike === 1 ? `Sheet ${String(a.first)}, face A up` : `Sheets ${String(a.first)} to ${String(a.first + a.alike - 1)}, cut alike`,
  leftOver: (piece: string) => `${piece} left over`,
  legend: {cut: 'cut through', above: 'groove on the face that looks up', below: 'groove on the face below', mark: 'pencil mark', grain: 'grain of the board', held: 'held here'},
  wingHere: 'wing',
  tailHere: 'tail',
  list: 'Cut list',
  places: 'Where each piece lies',
  columns: {piece: 'Piece', part: 'Part', pieces: 'Pieces', size: 'Size', sheet: 'Sheet', across: 'From left', up: 'From below'},
  sheetNumbers: (first: number, alike: number) => (alike === 1 ? String(first) : `${String(first)}–${String(first + alike - 1)}`),
  show: (a: {number: number; part: string}) => `Hold ${String(a.number)}, ${a.part}, where it is`,
  grain: 'Every part lies lengthwise along the grain of the board.',
  howToRead: 'Measure from the corner marked 0 to the nearest corner of each piece. Face A looks up as drawn; face B lies on the bench.',
  note: {
    pieces: (n: number) => `${capital(counted(n, 'piece', 'pieces'))} alike.`,
    flies: 'Face A flies as the top.',
    crease: (a: {at: readonly string[]; face: string}) => `${a.at.length > 1 ? 'Creases' : 'Crease'} ${series(a.at)} behind the front edge, groove on face ${a.face}.`,
    joint: (a: {at: readonly string[]; face: string}) => `${a.at.length > 1 ? 'Dihedral joints' : 'Dihedral joint'} ${series(a.at)} from the middle on each side, groove on face ${a.face}.`,
    jointMiddle: (face: string) => `Dihedral joint in the middle, groove on face ${face}.`,
    centre: (faces: readonly string[]) => `Centre line on ${faces.length > 1 ? 'both faces' : `face ${faces[0] ?? 'A'}`}.`,
    tip: (a: {chord: string; back: string | undefined}) => `${a.chord} at the tip${a.back === undefined ? '' : `, its front edge ${a.back} back`}.`,
    taper: (a: {from: string; height: string}) => `From ${a.from} behind the nose the lower edge rises, to a height of ${a.height} at the end.`,
    marks: (marks: readonly {readonly label: LineLabel; readonly at: string}[]) =>
      `Marks on face A, from the nose: ${series(marks.map(({label, at}) => `${markNames[label] ?? label} ${at}`))}.`,
    fins: (inset: string) => `Inner faces of the fins ${inset} from each end.`,
    finTop: (chord: string) => `${chord} at the top.`,
  },
  corners: 'Corners of the slanting pieces, from the corner marked 0: from the left, from below',
  because: {
    area: (least: number) => `No layout can do with less board than the parts have area. With the knife’s room counted in, at least ${sheets(least)}, however the parts lie.`,
    bound: (least: number) => `Counting for every part the share of a sheet’s length times the share of its width that it takes up for certain, measured so that no sheet holds more than one whole: at least ${sheets(least)} (S. P. Fekete, J. Schepers, 2004; J. Carlier, F. Clautiaux, A. Moukrim, 2007).`,
    search: 'Then a search goes on from there: it fills sheets again and again in other orders, and takes what is better: everything placed, the fewest sheets, the largest piece left over, the fewest cuts and ruler settings, in this order.',
    placing: 'At first each part is placed by its upright bounds, lying or a quarter turned, into the free rectangle that suits it best; two slanting pieces may first be laid head to tail. That is tried in many orders and the layout with the fewest sheets, then with the largest piece left over, is kept.',
    source: 'Keeping every largest free rectangle: J. Jylänki, A Thousand Ways to Pack the Bin (2010). Bound: area, worked out for this element.',
    more: 'The search then tries one glider more, or a longer wing, in growing strides as long as it finds room, and comes back to the next step again and again. It leaves out whatever the board is too small for by the two bounds: the area, and the shares of length and width.',
    longest: 'Tried at one length after another, halving the doubt each time, down to one step of the ruler.',
  },
  spoken: (a: {parts: string; board: string; ratio: string; least: number}) =>
    `the number of sheets is at least the area of the parts over the area of a sheet: ${a.parts} over ${a.board} is ${a.ratio}, so at least ${sheets(a.least)}`,
  symbols: {parts: 'parts', sheet: 'sheet'},
  caution: 'Cut on a mat, along a metal ruler with a finger guard, in several light passes, the blade away from the hand that holds it. The rules of your room and of whoever supervises it come first.',
});
