import type {GliderDesign} from './design/design.js';
import type {Outcome} from './problem.js';
import type {QuantityKind} from './units/kinds.js';

/** A number that follows from a glider, for a sentence: what kind of quantity it is and how to work it out. */
export interface DerivedValue {
  readonly kind: QuantityKind;
  /** Whether it is only good to a range, always or for this glider: it is written with "about". */
  readonly about?: boolean | ((design: GliderDesign) => boolean);
  /** Decimals that are usual for it, where the unit alone does not say. */
  readonly digits?: number;
  of(design: GliderDesign): Outcome<number>;
}
