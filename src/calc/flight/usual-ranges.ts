import type {QuantityKind} from '../units/kinds.js';

/** What a flight check looks at, in the order in which it is read. */
export type MeasureId =
  | 'mass' | 'wingLoading' | 'cubeLoading'
  | 'balance' | 'staticMargin' | 'tailVolume' | 'finVolume' | 'roll'
  | 'speed' | 'stallMargin' | 'glideRatio' | 'sink' | 'reynolds';

/** Where a usual range comes from: a book, what the builder of this plane wants, or common practice without a source. */
export type RangeSource = 'drela' | 'wanted' | 'practice';

export interface UsualRange {
  readonly kind: QuantityKind;
  readonly from: number;
  readonly to: number;
  readonly source: RangeSource;
}

/**
 * Usual ranges of a hand-launched glider cut from foam board, SI. Those of the tail, the fins and the spiral rule: M. Drela, Basic Aircraft Design
 * Rules, MIT 16.01 (2006), that of the fins from memory; the others common practice, no source.
 */
export const usualRanges = {
  mass: {kind: 'mass', from: 0.05, to: 0.14, source: 'practice'},
  wingLoading: {kind: 'areal-mass', from: 0.7, to: 1.6, source: 'practice'},
  cubeLoading: {kind: 'cube-loading', from: 2.5, to: 6, source: 'practice'},
  tailVolume: {kind: 'count', from: 0.3, to: 0.6, source: 'drela'},
  finVolume: {kind: 'count', from: 0.02, to: 0.05, source: 'drela'},
  roll: {kind: 'count', from: 4, to: 12, source: 'drela'},
  speed: {kind: 'speed', from: 3.5, to: 7, source: 'practice'},
  stallMargin: {kind: 'ratio', from: 1.1, to: 1.5, source: 'practice'},
  glideRatio: {kind: 'count', from: 4, to: 9, source: 'practice'},
  sink: {kind: 'speed', from: 0.4, to: 1.2, source: 'practice'},
  reynolds: {kind: 'count', from: 20_000, to: 70_000, source: 'practice'},
} as const satisfies Partial<Record<MeasureId, UsualRange>>;
