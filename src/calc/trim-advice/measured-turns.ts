import {asBuilt, cornersOf} from '../as-built/as-built.js';
import {crookedAsBuilt} from '../as-built/crooked.js';
import {tipDistances} from '../as-built/straightness.js';
import {plannedJoints} from '../as-built/tips.js';
import type {GliderDesign} from '../design/design.js';
import {turnSensitivities} from '../flight/simulation/turning.js';
import type {Change, Values} from './change.js';
import {seenTurn, soon} from './straightening.js';
import type {Fact} from './weighing.js';

export type MeasuredId = 'bowed-body' | 'askew-wing' | 'uneven-tips';

/** Something crooked that was measured on the finished plane: how far it turns it, rad to the right, and what mends it. */
export interface MeasuredTurn {
  readonly turns: number;
  readonly fact: Fact;
  readonly change: Change;
}

export type MeasuredTurns = Readonly<Partial<Record<MeasuredId, MeasuredTurn>>>;

/** Less than this of a turn is none, rad. Common practice, no source. */
const least = seenTurn / 20;

/** Whatever was measured on the finished plane that turns it; empty where nothing was, or where it has no glide to be turned. */
export function measuredTurns(design: GliderDesign): MeasuredTurns {
  const {lopsided: {fins, skew, joints}, counted, design: {wing: flown}} = asBuilt(design);
  const crooked = crookedAsBuilt(design), effects = turnSensitivities(design);
  if (!crooked.ok || !effects.ok) return {};
  const {wing, tail, arrangement, board, built} = design;
  const {speed, per: {fin, tipMass}} = effects.value;
  const bow = counted.includes('built.bow') ? built.bow ?? 0 : 0, {leftTipToTail: left, rightTipToTail: right, tipLeft, tipRight} = built;
  const aside = Math.atan(bow / (arrangement.tailAt + tail.chord - arrangement.wingAt - wing.chord));
  // the tail of a bowed body has moved aside, which the distances from tip to tail have in them
  const askew = skew === undefined ? 0 : skew - aside;
  const found: {-readonly [K in MeasuredId]?: MeasuredTurn} = {};
  if (bow !== 0) {
    const turns = soon(fin, speed) * (fins - askew), by = Math.abs(bow);
    const corners = cornersOf(flown, tail, arrangement, plannedJoints(wing, board));
    const distances = (): Values => {
      if (skew === undefined || left === undefined || right === undefined) return {};
      const now = tipDistances(corners, skew), then = tipDistances(corners, skew - aside);
      return {'built.leftTipToTail': left + then.left - now.left, 'built.rightTipToTail': right + then.right - now.right};
    };
    found['bowed-body'] = {
      turns, fact: {id: 'measured-bow', by, side: bow > 0 ? 'right' : 'left', turns: Math.abs(turns)},
      change: {id: 'straighten', by, side: bow > 0 ? 'left' : 'right', values: {'built.bow': 0, ...distances()}},
    };
  }
  if (askew !== 0 && left !== undefined && right !== undefined) {
    const turns = soon(fin, speed) * askew, to = Math.sqrt((left ** 2 + right ** 2) / 2);
    found['askew-wing'] = {
      turns, fact: {id: 'measured-skew', left, right, turns: Math.abs(turns)},
      change: {id: 'square', to, values: {'built.leftTipToTail': to, 'built.rightTipToTail': to}},
    };
  }
  if (joints && tipLeft !== undefined && tipRight !== undefined && tipLeft !== tipRight) {
    const turns = soon(tipMass, speed) * crooked.value.tipMass, higher = Math.max(tipLeft, tipRight);
    found['uneven-tips'] = {
      turns, fact: {id: 'measured-tips', left: tipLeft, right: tipRight, turns: Math.abs(turns)},
      change: {id: 'even-tips', by: Math.abs(tipLeft - tipRight), side: tipLeft < tipRight ? 'left' : 'right', values: {'built.tipLeft': higher, 'built.tipRight': higher}},
    };
  }
  return found;
}

/** Of all that was measured, what turns the plane to the side that it turned to, or to whichever side it rolls; nothing where together it turns the other way. */
export function blamedOf(measured: MeasuredTurns, side: 'left' | 'right' | undefined): MeasuredTurns {
  const all = turnOf(measured), sign = side === 'right' ? 1 : side === 'left' ? -1 : Math.sign(all);
  if (!(all * sign > least)) return {};
  return Object.fromEntries(Object.entries(measured).filter(([, {turns}]) => turns * sign > least));
}

/** How far it turns with all that was measured, rad to the right. */
export const turnOf = (measured: MeasuredTurns): number => Object.values(measured).reduce((sum, {turns}) => sum + turns, 0);

/** What was measured is known and not only usual: so much likelier. Common practice, no source. */
const known = 10;

/** How likely it is beside usual causes: by how far it turns the plane. */
export const likelihoodOf = ({turns}: MeasuredTurn): number => 0.3 * known * Math.min(Math.abs(turns) / seenTurn, 2);
