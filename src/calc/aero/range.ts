/** A number that is only known to a range: the figure to work with, and how far it may be out. */
export interface Range {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

/** A range worked out three times over, each end from the same end of what it depends on. */
export const rangeOf = (at: (end: keyof Range) => number): Range => ({least: at('least'), usual: at('usual'), most: at('most')});
