/** What the size and arm of a tail surface are measured against. All in m and m². */
export interface TailVolumeInputs {
  readonly tailArea: number;
  /** From the balance point, or from the wing's quarter chord, to the tail's quarter chord: say which beside it. */
  readonly arm: number;
  readonly wingArea: number;
  /** The wing's mean aerodynamic chord for a tailplane, its span for a fin. */
  readonly wingLength: number;
}

/** Tail volume: tail area × arm / (wing area × wing length), a pure number. By definition. */
export const tailVolume = ({tailArea, arm, wingArea, wingLength}: TailVolumeInputs): number =>
  tailArea * arm / (wingArea * wingLength);
