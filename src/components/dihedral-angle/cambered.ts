import type {CrestGroove} from '../../calc/bench/joint-groove.js';

/** Whether the wing arches over its joints by more than a hair; not while its camber is unknown. */
export const isCambered = (crests: readonly CrestGroove[] | undefined, thickness: number): boolean =>
  crests?.some(({height}) => height > thickness * 1.02) ?? false;
