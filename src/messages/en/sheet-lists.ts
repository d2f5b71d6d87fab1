import {topic} from '../topic.js';

const series = (items: readonly string[]): string => (items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`);

/** The marking-out list and the cuts one by one. */
export const sheetListWords = topic('sheet-lists', {
  ticksIntro: (a: {along: string; across: string}) => `Hook the tape on the corner marked 0 and leave it there. Tick off all numbers in this order along one edge, then the same along the edge opposite, and join tick to tick. Measuring each time from 0 keeps small errors small.`
    + ` First the edges of ${a.along}, then those of ${a.across}.`,
  ticksAlong: (edge: string) => `Ticks along both edges of ${edge}`,
  columns: {tick: 'Tick at', line: 'Pencil line', pieces: 'Edge of'},
  whole: 'right across',
  span: (a: {from: string; to: string}) => `${a.from} to ${a.to}`,
  noTicks: 'No ticks are needed along these edges.',
  diagonal: (length: string) => `Check the board first: from corner to corner it must be ${length} both ways, or it is not square.`,
  slanting: (numbers: readonly string[]) => `The ticks of ${series(numbers)} box in a slanting outline; its corners stand in the working.`,

  notStraight: 'These pieces lie so that each is cut along its own outline. For an order of cuts that run from edge to edge, choose straight cuts among the fields.',
  step: (a: {nth: number; of: number}) => `Cut ${a.nth} of ${a.of}`,
  previous: 'Cut before',
  next: 'Next cut',
  first: 'First cut',
  hideCut: 'Hide the cut',
  help: 'Left and right arrow keys go through the cuts.',
  whose: {whole: 'The whole sheet in hand', piece: (size: string) => `The piece of ${size} in hand`},
  ruler: (a: {setting: string; again: boolean; along: boolean; long: string; hand: string}) =>
    `${a.hand}: ${a.again ? `ruler still at ${a.setting}` : `set the ruler to **${a.setting}**`} from its ${a.along ? 'lower' : 'left'} edge; cut the full ${a.along ? 'length' : 'width'}, ${a.long}.`,
  edge: (a: {pieces: readonly string[]; from: string; to: string; hand: string}) => `${a.hand}: lay the ruler from ${a.from} to ${a.to} and cut right across, for ${series(a.pieces)}.`,
  outline: (pieces: readonly string[]) => `Cut ${series(pieces)} along the outline; keep the blade off the inner corners until last.`,
  off: (pieces: readonly string[]) => `Off comes the strip with ${series(pieces)}.`,
  offPiece: (piece: string) => `Off comes ${piece}, done.`,
  all: 'All cuts in order',
  restOffcut: (size: string) => `What stays is ${size} of offcut.`,
  offcut: (size: string) => `Off comes ${size} of offcut.`,
  offRough: (piece: string) => `Off comes ${piece}, still to be cut to its shape.`,
  sliver: (width: string) => `Only a sliver of ${width} comes off: hold the ruler firmly and shave it away.`,
  restRough: (piece: string) => `What stays is ${piece}, still to be cut to its shape.`,
  rest: (piece: string) => `What stays is ${piece}, done.`,
  corner: (a: {across: string; up: string}) => `${a.across} | ${a.up}`,
  drawnAs: 'The picture shows the cut; numbers in pairs are from the left and from below on the piece in hand, as it lies in the picture.',
  sum: (a: {cuts: number; settings: number}) => `${a.cuts} cuts, ${a.settings} settings of the ruler.`,
});
