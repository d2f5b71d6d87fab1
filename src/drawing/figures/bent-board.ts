import type {XY} from '../pen.js';

/** A straight piece of a bent board: its length along the face that stays whole, and its angle from level, radians. */
export interface BentPanel {
  readonly length: number;
  readonly angle: number;
}

export interface BentBoard {
  readonly thickness: number;
  /** Closing folds pivot on the lower face and meet in a mitre; opening ones pivot on the upper face and gape below. */
  readonly face: 'closing' | 'opening';
  /** Where the lower face begins if the folds close, the upper face if they open. */
  readonly from: XY;
  /** The angle of what joins on before the first panel; without it the board begins square. */
  readonly before?: number;
  readonly panels: readonly BentPanel[];
}

/** A board seen edge-on, y upwards. */
export interface BentOutline {
  /** One outline for each panel, lower face first, counter-clockwise. */
  readonly panels: readonly (readonly XY[])[];
  /** The ends of the panels along the face that stays whole. */
  readonly pivots: readonly XY[];
}

const along = ({x, y}: XY, angle: number, by: number): XY => ({x: x + by * Math.cos(angle), y: y + by * Math.sin(angle)});

/** The outlines of a board bent up from panel to panel. */
export function bentBoard({thickness, face, from, before, panels}: BentBoard): BentOutline {
  const pivots = [from];
  for (const {length, angle} of panels) pivots.push(along(pivots.at(-1) ?? from, angle, length));
  const angleOf = (i: number): number | undefined => (i < 0 ? before : panels[i]?.angle);
  /** The corner across the board from a pivot, on the plane that halves the fold where the folds close. */
  const across = (pivot: XY, inner: number, outer: number): XY =>
    along(pivot, (inner + outer) / 2 + Math.PI / 2, thickness / Math.cos((outer - inner) / 2));
  return {
    pivots,
    panels: panels.map(({angle}, i) => {
      const inner = pivots[i] ?? from, outer = pivots[i + 1] ?? from;
      if (face === 'opening') return [along(inner, angle - Math.PI / 2, thickness), along(outer, angle - Math.PI / 2, thickness), outer, inner];
      return [inner, outer, across(outer, angle, angleOf(i + 1) ?? angle), across(inner, angleOf(i - 1) ?? angle, angle)];
    }),
  };
}

/** The same on the other side of the centre line. */
export const mirrored = (points: readonly XY[]): readonly XY[] => points.map(({x, y}) => ({x: -x, y}));
