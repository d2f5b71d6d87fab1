/** Something to place, with the knife's gap already added to it. Lengths are whole numbers of the grid. */
export interface Kind {
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
  readonly mayTurn: boolean;
  readonly area: number;
}

/** An empty rectangle of board, with one gap added to it as to the pieces. */
export interface Room {
  readonly length: number;
  readonly width: number;
}

/** Rooms to fill, one after another, with so many pieces of each kind. */
export interface Task {
  readonly kinds: readonly Kind[];
  readonly counts: readonly number[];
  readonly rooms: readonly Room[];
  /** Area of pieces that may be left over. */
  readonly mayLeave: number;
}

/** A piece in its place, from the corner of its room. */
export interface Spot {
  readonly kind: number;
  readonly room: number;
  readonly x: number;
  readonly y: number;
  /** In which of the ways it may lie: a rectangle 0 as given, 1 turned. */
  readonly pose: number;
}

/** How hard to try, and in what way. */
export interface Effort {
  /** How many half-filled layouts are carried along side by side. */
  readonly breadth: number;
  /** By what share the marks of a layout are blurred, so that another try goes another way. */
  readonly noise: number;
  /** Whether rooms are filled along x rather than along y. */
  readonly along: boolean;
}

/** A search that stops now and then for whoever must do something else, and gives the places found, if any will do. */
export type Filling = Generator<undefined, readonly Spot[] | undefined>;

export const areaOf = ({length, width}: Room): number => length * width;

export const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** The area of so many pieces of each kind. */
export const areaOfAll = (kinds: readonly Kind[], counts: readonly number[]): number =>
  sum(kinds.map(({area}, kind) => area * (counts[kind] ?? 0)));
