import type {PartId} from '../../calc/parts/part.js';
import {topic} from '../topic.js';

const spliced: Readonly<Record<PartId, string>> = {wing: 'Wing', body: 'Body', tailplane: 'Tailplane', fin: 'Fins'};

/** What the parts sheet asks about cutting, boards at hand, spares and money. */
export const sheetQuestionWords = topic('sheet-question', {
  cuts: 'How you cut',
  ways: {free: 'along any outline', straight: 'straight, edge to edge'},
  spares: 'Spare gliders, or %',
  atHand: 'Of these boards you have',
  asNeeded: 'as needed',
  others: 'Other boards and pieces left over',
  length: 'Length',
  width: 'Width',
  count: 'How many',
  kind: 'What it is',
  kinds: {board: 'a whole board', left: 'a piece left over'},
  add: 'Add a board or a piece',
  remove: (nth: number) => `Take away board ${nth}`,
  nth: (nth: number) => `Board ${nth}`,
  unreadBoards: 'The author’s list of boards cannot be read: it should look like “400mm@300mm@2”, length, width and how many.',
  splice: 'May be glued up from lengths',
  splicedParts: spliced,
  notSpliced: (a: {names: string; parts: string}) =>
    `The author’s “${a.names}” is no part that may be glued up from lengths: there are ${a.parts}.`,
  price: 'Price of a sheet',
  currency: 'Currency',
  numberUnread: (a: {most: string}) => `Write a plain number from 0 to ${a.most}.`,
});
