/** What a mass is: parts of the plane, glue, what holds it together, a fitted weight, or the whole plane as it was weighed. */
export type MassId =
  | 'wing' | 'wing-glue' | 'body' | 'body-glue' | 'tailplane' | 'fins' | 'tail-glue' | 'tail' | 'bands' | 'tape' | 'plane' | 'weight';

/** How sure a number is: read off a scale or a ruler, or estimated. */
export type Sure = 'weighed' | 'about';

/** A mass and where its centre is. */
export interface MassItem {
  readonly id: MassId;
  /** kg. */
  readonly mass: number;
  /** m behind the nose; less than nothing ahead of it. */
  readonly at: number;
  readonly sure: Sure;
  /** Whether it goes along when the wing is slid on the body. */
  readonly onWing: boolean;
}

/** Several masses as one. */
export interface Centre {
  readonly mass: number;
  readonly at: number;
  readonly sure: Sure;
}

/**
 * Where masses balance together: the place about which their moments cancel, Σ m x / Σ m. Without any mass, the place is the
 * nose. "About" as soon as one of them is.
 */
export function centreOf(items: readonly Pick<MassItem, 'mass' | 'at' | 'sure'>[]): Centre {
  const mass = items.reduce((sum, item) => sum + item.mass, 0);
  const moment = items.reduce((sum, item) => sum + item.mass * item.at, 0);
  return {mass, at: mass > 0 ? moment / mass : 0, sure: items.every(({sure}) => sure === 'weighed') ? 'weighed' : 'about'};
}
