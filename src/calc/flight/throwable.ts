import {gravity, usualAir} from '../aero/air.js';
import {liftLimit} from '../aero/section/board-drag.js';
import type {MassId, MassItem} from '../balance/mass-item.js';
import type {DimensionPath} from '../design/dimensions.js';
import type {GliderDesign} from '../design/design.js';
import type {Problem} from '../problem.js';
import {usualRanges} from './usual-ranges.js';

/** Beyond this no hand throws a glider of foam board, m/s. Common practice, no source. */
export const fastestThrow = 12;

/** kg/m² of a wing that can just be thrown as fast as it has to fly: V = k √(2 m g/(ρ S c_l)), k the least usual speed over the stall's. */
const mostLoading = (camber: number): number =>
  usualAir.density * (fastestThrow / usualRanges.stallMargin.from) ** 2 * liftLimit(camber).usual / (2 * gravity);

/** The most that a plane of some wing area may weigh, kg. */
export const mostMass = (area: number, camber: number): number => mostLoading(camber) * area;

/**
 * What keeps a plane from being thrown at all, stable or not: it weighs so much that even with all of its wing at the most that such a section carries it
 * would have to leave the hand faster than a hand can throw. 'too-heavy-to-throw' {mass, most, speed}, beside what weighs most. Needs no flight to be worked out, so that
 * the balance of a plane is refused by the same rule.
 */
export function tooHeavy(mass: number, items: readonly MassItem[], area: number, camber: number, design: Pick<GliderDesign, 'measured' | 'board'>): Problem | undefined {
  const most = mostMass(area, camber);
  if (mass <= most) return undefined;
  return {code: 'too-heavy-to-throw', path: blamed(items, design), args: {mass, most, speed: fastestThrow * Math.sqrt(mass / most)}};
}

const fieldOf: Partial<Readonly<Record<MassId, DimensionPath>>> = {
  'weight': 'ballast.masses', 'bands': 'glue.bands', 'tape': 'glue.tape', 'wing-glue': 'glue.bead', 'body-glue': 'glue.bead', 'tail-glue': 'glue.bead', 'tail': 'tail.weighed',
};

/** The field of what weighs most: the scale's where the plane was weighed, the board's where nothing was. */
function blamed(items: readonly MassItem[], {measured, board}: Pick<GliderDesign, 'measured' | 'board'>): DimensionPath {
  const weights = items.reduce((sum, {id, mass}) => sum + (id === 'weight' ? mass : 0), 0), whole = items.reduce((sum, {mass}) => sum + mass, 0);
  if (weights > whole / 2) return 'ballast.masses';
  if (measured.mass !== undefined) return 'measured.mass';
  const heaviest = items.reduce<MassItem | undefined>((a, b) => (a && a.mass >= b.mass ? a : b), undefined);
  if (heaviest?.sure === 'weighed' && (heaviest.id === 'wing' || heaviest.id === 'body')) return `${heaviest.id}.weighed`;
  return (heaviest && fieldOf[heaviest.id]) ?? (board.sheetMass === undefined ? 'board.arealMass' : 'board.sheetMass');
}
