/**
 * Which way a crease works as it lies on the bench. `closing`: the whole skin lies on the bench and the V groove on top
 * closes as the panel rises. `opening`: the whole skin faces up and the cut opens underneath.
 */
export type FoldFace = 'closing' | 'opening';

/**
 * How the place of the stack is known. `edge`: the panel's own free edge rests on the stack's upper edge nearest the
 * crease. `inset`: the stack is pushed in, and touches so far from the free edge along the panel. `bench`: that upper edge
 * stands so far from the crease, measured on the bench. `plumb`: the stack is wholly under the panel, and its outer face
 * stands plumb below the free edge.
 */
export type PropWhere = 'edge' | 'inset' | 'bench' | 'plumb';

/** A flat-topped stack or block, lengths in metres: `inset`, `fromCrease`, `width` are read where `where` needs them. */
export interface Prop {
  readonly height: number;
  readonly where: PropWhere;
  readonly inset?: number;
  readonly fromCrease?: number;
  readonly width?: number;
}

/** A prop whose height is not known yet. */
export type PropPlacing = Omit<Prop, 'height'>;

/** A stack that stands somewhere on the bench, in metres. */
export interface StandingStack {
  readonly height: number;
  /** From the crease to the face of the stack nearest to it. */
  readonly nearFace: number;
  readonly width: number;
}

/**
 * What touches what. `panel-edge-on-stack-top`: the free edge, flush with the stack's near upper edge.
 * `stack-edge-under-panel`: the stack's near upper edge, in under the panel. `panel-root-on-stack-top`: the lower corner
 * of an opened cut stands on a low stack pushed into the cut. `panel-edge-against-stack-face`: the panel has missed the
 * top and leans with its free edge against the stack's near face. `none`: the stack stands clear and the panel lies flat.
 */
export type ContactKind =
  | 'panel-edge-on-stack-top' | 'stack-edge-under-panel' | 'panel-root-on-stack-top' | 'panel-edge-against-stack-face' | 'none';
