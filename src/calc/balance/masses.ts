import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {estimatedMasses} from './estimate.js';
import {centreOf, type MassItem} from './mass-item.js';

/** The masses that make a plane balance where it does. */
export interface PlaneMasses {
  readonly items: readonly MassItem[];
  /** What would go along if the wing were slid, kg. */
  readonly onWing: number;
  /** The same plane part by part, for what can be told only of parts. */
  readonly parts: readonly MassItem[];
}

/**
 * Every mass of a plane as it stands: estimated part by part, or as the whole plane was measured, and the fitted weights.
 *
 * A measured balance point makes one mass of the plane. A measured mass alone scales what is estimated, so that all of it
 * together weighs what the scale says. Refused: 'parts-outweigh-plane' {parts, plane} where the weighed parts alone weigh
 * more than the plane, and with what {@link estimatedMasses} refuses.
 */
export const planeMasses = memo((
  wing: GliderDesign['wing'], body: GliderDesign['body'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'],
  board: GliderDesign['board'], glue: GliderDesign['glue'], measured: GliderDesign['measured'], ballast: GliderDesign['ballast'],
): Outcome<PlaneMasses> => {
  const estimate = estimatedMasses(wing, body, tail, arrangement, board, glue);
  if (!estimate.ok) return estimate;
  const scaled = scaledTo(measured.mass, estimate.value);
  if (!scaled.ok) return scaled;
  const parts = scaled.value;
  const onWing = parts.reduce((sum, item) => sum + (item.onWing ? item.mass : 0), 0);
  const plane: readonly MassItem[] = measured.balance === undefined ? parts : [{
    id: 'plane', mass: centreOf(parts).mass, at: arrangement.wingAt + measured.balance, sure: measured.mass === undefined ? 'about' : 'weighed', onWing: false,
  }];
  const weights = ballast.masses.filter(({mass}) => mass > 0).map(({mass, at}) => ({id: 'weight', mass, at, sure: 'weighed', onWing: false}) as const);
  return good({items: [...plane, ...weights], onWing, parts});
});

/** The estimated masses made to weigh, with the weighed ones, what the whole plane weighs. */
function scaledTo(whole: number | undefined, items: readonly MassItem[]): Outcome<readonly MassItem[]> {
  if (whole === undefined) return good(items);
  const estimated = centreOf(items.filter(({sure}) => sure === 'about')).mass;
  const weighed = centreOf(items).mass - estimated;
  const rest = whole - weighed;
  if (rest < 0) return refused({code: 'parts-outweigh-plane', path: 'measured.mass', args: {parts: weighed, plane: whole, kind: 'mass'}});
  // nothing is left to estimate: the weighed parts share what the scale says beyond them
  const share = estimated > 0 ? rest / estimated : 1;
  const spread = estimated > 0 ? 1 : whole / weighed;
  return good(items.map((item) => ({...item, mass: item.mass * (item.sure === 'about' ? share : spread)})));
}
