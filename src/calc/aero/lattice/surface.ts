/**
 * Where a lifting surface is and how wide: its front edge and its chord at one place along it. m, x backwards, y to the right,
 * z up. Only the right half of a plane is described.
 */
export interface Rib {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly chord: number;
}

/** The right half of a lifting surface, straight-edged from rib to rib. */
export interface Surface {
  /** Surfaces of one group meet edge to edge; the wake of another group reaches them spread out. */
  readonly group: number;
  /** From the inner end outwards, or upwards. */
  readonly ribs: readonly Rib[];
  /** Panels along the span and along the chord. Every stretch between two ribs has at least one strip. */
  readonly strips: number;
  readonly rows: number;
  /** Whether its outer end is free, so that its load falls to nothing there. */
  readonly freeTip: boolean;
  /** Whether it stands in the plane of symmetry, as a single fin does. */
  readonly inMiddle?: boolean;
}
