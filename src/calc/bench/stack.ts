/** What a stack may be made of besides the board itself: measure yours, these are usual. */
export interface Packing {
  readonly card: number;
  readonly paper: number;
}

/** Cereal-box card and copying paper: common practice, no source; a pack of 500 sheets of 80 g/m² is about 50 mm high. */
export const usualPacking: Packing = {card: 0.5e-3, paper: 0.1e-3};

/** A stack that can be built: whole layers of board, then card, then paper. */
export interface Stack {
  readonly boards: number;
  readonly cards: number;
  readonly papers: number;
  readonly height: number;
}

const stackOf = (boards: number, cards: number, papers: number, board: number, packing: Packing): Stack =>
  ({boards, cards, papers, height: boards * board + cards * packing.card + papers * packing.paper});

/**
 * The stack nearest to a height: as much board as fits, card on it, paper to finish, to within half a sheet of paper. A stack one board taller
 * is taken instead where it comes as near with fewer pieces.
 */
export function nearestStack(height: number, board: number, packing: Packing = usualPacking): Stack {
  const boards = Math.floor(height / board + 1e-9);
  const filled = (under: number): Stack => {
    const rest = Math.max(0, height - under * board);
    const cards = Math.floor(rest / packing.card + 1e-9);
    return stackOf(under, cards, Math.round((rest - cards * packing.card) / packing.paper), board, packing);
  };
  const candidates = [filled(boards), stackOf(boards + 1, 0, 0, board, packing)];
  const misses = (s: Stack): number => Math.abs(s.height - height) + 1e-6 * (s.cards + s.papers);
  return candidates.reduce((best, s) => (misses(s) < misses(best) ? s : best));
}

/** The whole layers of board just below and just above a height; the same where it is whole already. */
export function wholeLayers(height: number, board: number): readonly [number, number] {
  const exact = height / board;
  const near = Math.round(exact);
  return Math.abs(exact - near) < 1e-6 ? [near, near] : [Math.floor(exact), Math.ceil(exact)];
}
