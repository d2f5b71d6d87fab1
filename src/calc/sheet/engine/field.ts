import type {Member} from '../block.js';
import type {Shape} from '../shape.js';
import type {Box} from './job.js';
import type {Filler} from './packing.js';
import type {Spot} from './task.js';

/** Pieces in one upright rectangle, from the corner of their room, in m. */
export interface Laid extends Box {
  readonly members: readonly Member[];
}

/** A way to look at the parts of a job: as things of certain kinds to fill rooms with. */
export interface Field {
  /** Whether its things are upright rectangles. */
  readonly upright: boolean;
  readonly filler: Filler;
  readonly counts: readonly number[];
  /** The pieces for the places found, room by room, and those that have none. */
  lay(rooms: readonly (readonly Spot[])[]): {readonly laid: readonly (readonly Laid[])[]; readonly left: readonly Shape[]};
}
