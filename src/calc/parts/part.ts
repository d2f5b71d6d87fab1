import type {Point, Polygon} from '../geometry/polygon/index.js';

export type PartId = 'wing' | 'body' | 'tailplane' | 'fin';

/** What a line on a part is there for; `src/messages` has the words. */
export type LineLabel = 'camber' | 'dihedral' | 'centre' | 'wing-front' | 'wing-rear' | 'tail-front' | 'tail-rear' | 'fin';

/**
 * A straight line to cut into or draw on one face of a part. Face A looks up as the part is drawn, face B lies on the
 * bench. A crease or a joint is on the face that carries its groove; the other skin stays whole.
 */
export interface PartLine {
  readonly kind: 'crease' | 'joint' | 'mark';
  readonly from: Point;
  readonly to: Point;
  readonly face: 'A' | 'B';
  readonly label: LineLabel;
}

/** A flat piece to cut from the board, face A up, in metres. */
export interface Part {
  readonly id: PartId;
  /** How many alike. */
  readonly count: number;
  readonly outline: Polygon;
  readonly lines: readonly PartLine[];
  /** Whether a layout may lay it a quarter turned: most foam board has no grain to speak of. */
  readonly mayTurn: boolean;
  /** Where it may not: whether it may lie the other way round, and whether it lies a quarter turned from how it is drawn. */
  readonly mayTurnHalf?: boolean;
  readonly liesAcross?: boolean;
  /** Whether a layout may turn it over: never where a groove belongs on one face. */
  readonly mayMirror: boolean;
  /** Of one piece, m². */
  readonly area: number;
}
