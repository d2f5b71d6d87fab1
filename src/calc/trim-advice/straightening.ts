import {gravity} from '../aero/air.js';
import type {GliderDesign} from '../design/design.js';
import {callsOf} from '../flight/calls.js';
import {finVolume} from '../flight/fin-volume.js';
import {flightOf} from '../flight/flight.js';
import {flyingPlane} from '../flight/flying-plane.js';
import {motionOf, type Motion} from '../flight/motion.js';
import {wholeFin, type Crooked} from '../flight/simulation/crooked.js';
import {turnSensitivities, type TurnEffect} from '../flight/simulation/turning.js';
import {usualRanges} from '../flight/usual-ranges.js';
import type {Change} from './change.js';
import {changed} from './levers.js';

/** A turn that is seen, and what a step takes back of it: too little to make a plane circle the other way. Common practice, no source. */
export const seenTurn = 20 * Math.PI / 180, turnedBack = 0.6 * seenTurn;

/**
 * Where a plane heads when it lands, and would a second later with the bank it has then: what banks it only in the end counts too. For each unit of a cause.
 * By its bank and not by how fast the nose swings just then: the nose may wag, or slip against the turn, while bank and path go one way.
 */
export const soon = ({heading, bank}: TurnEffect, speed: number): number => heading + gravity * bank / speed;

/** Whether the nose first swings against the bank, so that one onlooker says left and another right: a heavy tip far out on a wing with much dihedral. */
const swingsAgainst = ({heading, bank}: TurnEffect): boolean => heading * bank <= 0;

/** A strip at the fins' rear edge is bent; further than this it creases or stalls. Common practice, no source. */
const strip = 0.25, furthest = 12 * Math.PI / 180;
/** At a tip, and of a wing's twist, as much as is mended so at once. Common practice, no source. */
const heaviest = 0.002, mostTwist = 3 * Math.PI / 180;

/** Faults that happen to careful builders: rad, kg, rad. Common practice, no source. */
const usualFault = {fin: 1.5 * Math.PI / 180, tipMass: 0.5e-3, twist: Math.PI / 180} as const satisfies Crooked;

const other = {left: 'right', right: 'left'} as const;
type Side = keyof typeof other;

/** To the nearest whole steps, at least one; none where half of the last one would be less than that. */
const inSteps = (value: number, step: number, halvings: number): number =>
  halvings > 0 && value < leastHalf * step ? 0 : Math.round(Math.max(Math.round(value / step), 1) * step * 1e7) / 1e7;
const leastHalf = 0.75;

/** One way to straighten a plane. */
export interface Straightening {
  /** Missing where it would turn it the other way. */
  readonly change?: Change;
  /** How far a usual fault of that kind turns this plane, {@link soon}, and how large that fault is: rad, or kg. */
  readonly turns: number;
  readonly fault: number;
}

export type Straightenings = Readonly<Partial<Record<'crooked-fin' | 'heavy-tip' | 'twisted-wing', Straightening>>>;

/** What turns a plane by a step against the side it turned to: bending the fins, weight at a tip, untwisting the wing. Empty where it has no glide to be turned. */
export function straightening(design: GliderDesign, turned: Side | undefined, halvings: number): Straightenings {
  const effects = turnSensitivities(design);
  if (!effects.ok) return {};
  const {speed, per: {fin, tipMass, twist}} = effects.value;
  const step = (effect: TurnEffect): number => turnedBack / soon(effect, speed) / 2 ** halvings;
  const side = turned && {side: other[turned]};
  const {chord: root, tipChord = root} = design.tail.fins;
  const bent = strip * (root + tipChord) / 2;
  const bend = inSteps(bent * Math.sin(Math.min(step(fin) / wholeFin(1, strip), furthest)), 5e-4, halvings);
  const wingTip = design.wing.tipChord ?? design.wing.chord;
  const edge = inSteps(wingTip * Math.sin(Math.min(step(twist), mostTwist)), 5e-4, halvings);
  const mass = inSteps(Math.min(step(tipMass), heaviest), 1e-4, halvings);
  const one = (cause: keyof Crooked, effect: TurnEffect, size: number, change: Change | undefined): Straightening =>
    ({turns: soon(effect, speed) * usualFault[cause], fault: usualFault[cause], ...(change && soon(effect, speed) > 0 && size > 0 && {change})});
  return {
    'crooked-fin': one('fin', fin, bend, side && {id: 'fin', ...side, bend, angle: Math.asin(Math.min(bend / bent, 1)), strip: bent}),
    'heavy-tip': one('tipMass', tipMass, mass, {id: 'tip', ...(!swingsAgainst(tipMass) && side), mass}),
    // the half outside the turn carries more: its rear edge stands too low, or the other's too high
    'twisted-wing': one('twist', twist, edge, {id: 'untwist', ...side, edge, angle: Math.asin(Math.min(edge / wingTip, 1))}),
  };
}

/** What the fins bent as a change says are to the whole fin, rad to the right: what turns the plane in the model. */
export const finOf = ({angle, side}: Extract<Change, {id: 'fin'}>): number => (side === 'right' ? 1 : -1) * wholeFin(angle, strip);

const steeper = 3 * Math.PI / 180, taller = 0.01;

const growth = ({spiral}: Motion): number => spiral?.root.re ?? 0;

/** Whether a plane has become one whose numbers ask for no more than before. */
function asksNoMore(before: GliderDesign, after: GliderDesign): boolean {
  const [was, is] = [flightOf(before), flightOf(after)];
  if (!was.ok || !is.ok || !is.value.trim.ok) return false;
  const calls = callsOf(was.value);
  return [...callsOf(is.value)].every((call) => calls.has(call));
}

/** Tips bent up a little further, where that makes a bank roll out sooner and the wing level itself no more strongly than is usual. */
export function moreDihedral(design: GliderDesign): Change | undefined {
  const {joints, dihedralBy} = design.wing;
  const outer = joints.at(-1);
  if (!outer || dihedralBy !== 'angle') return {id: 'dihedral', by: steeper};
  const values = {'wing.joints': joints.map((joint) => (joint === outer ? {angle: joint.angle + steeper, at: joint.at} : joint))};
  const bent = changed(design, values), before = motionOf(design), after = motionOf(bent);
  return before.ok && after.ok && growth(after.value) < growth(before.value) && after.value.spiralRule <= usualRanges.roll.to && asksNoMore(design, bent)
    ? {id: 'dihedral', by: steeper, values} : undefined;
}

/** How fast the wag dies away: less than nothing. */
const damping = ({wag}: Motion): number => wag?.root.re ?? -Infinity;

/** Fins a little taller, where that makes the wag die away sooner and they are no larger than is usual. */
export function tallerFins(design: GliderDesign): Change | undefined {
  const height = design.tail.fins.height + taller;
  const values = {'tail.fins.height': height};
  const finned = changed(design, values), plane = flyingPlane(finned), before = motionOf(design), after = motionOf(finned);
  return plane.ok && before.ok && after.ok && damping(after.value) < damping(before.value) && finVolume(plane.value, finned) <= usualRanges.finVolume.to && asksNoMore(design, finned)
    ? {id: 'fin-larger', by: taller, height, values} : undefined;
}
