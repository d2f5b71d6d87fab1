import {carriedAlong} from '../as-built/carry.js';
import {weightAt, withMore} from '../balance/with-more.js';
import {nearestStack} from '../bench/stack.js';
import {withValues, type GliderDesign} from '../design/design.js';
import {checkValue} from '../design/read-dimension.js';
import type {DimensionPath} from '../design/dimensions.js';
import {callsOf, type Call} from '../flight/calls.js';
import {flightOf, tailForSpeed, type Flight} from '../flight/flight.js';
import {loadedWith, type FlyingPlane} from '../flight/flying-plane.js';
import {glideAt} from '../flight/glide.js';
import {liftOf, trimmedAt} from '../flight/trimmed.js';
import type {Change, Gliding, Values} from './change.js';

export type Way = 'slower' | 'faster';

/** What a scale, a ruler and a stack of paper can show: kg and m. */
const gram = 5e-4, millimetre = 1e-3, paper = 1e-4;
/** A weight goes no nearer to the balance. */
const clear = 0.005;
/** No weight is ever put ahead of the nose: what sticks out there lands first, and hits first. */
export const holder = (at: number): number => Math.max(at, 0);
/** More than this share of the plane at its nose is no trimming. Common practice, no source. */
const mostAdded = 0.3;

type Ballast = GliderDesign['ballast']['masses'];

/** The design with a change made, and with what was measured over slips moved along. */
export const changed = (design: GliderDesign, values: Values): GliderDesign => withValues(design, {...values, ...carriedAlong(design, values)});

/** What a design glides like by the model; undefined where it is no plane at all. */
export function glidingOf(design: GliderDesign): Gliding | undefined {
  const flight = flightOf(design);
  if (!flight.ok) return undefined;
  const {plane: {margin}, trim} = flight.value;
  return {margin, ...(trim.ok && {speed: trim.value.glide.speed})};
}

/** Speeds nearer to one another than this nobody tells apart. Common practice, no source. */
export const tellable = 0.015;

/** What speaks against a step towards slower or faster: that the plane would then ask for the opposite, or, where the step moves its balance, for that back. */
const against = {slower: {speed: 'faster', balance: 'forward'}, faster: {speed: 'slower', balance: 'back'}} as const satisfies Readonly<Record<Way, Readonly<Record<string, Call>>>>;

/** Whether a step leaves a plane whose numbers ask for no step back. */
export function leavesUsual(before: Flight, after: Flight, way: Way): boolean {
  const calls = callsOf(after), {speed, balance} = against[way];
  const moved = Math.abs(after.plane.margin - before.plane.margin) > 1e-6;
  return after.trim.ok && !calls.has(speed) && !(moved && calls.has(balance));
}

/**
 * What makes a plane glide at about a speed wanted: weight at the nose, the same weight moved, slips under the tail; each alone, rounded to what can be measured
 * out. Weight comes first where the balance lies on the side of the wanted margins that it mends, slips where the balance is right. None leaves less than
 * the least static margin wanted, and none that is not `fit` afterwards: it is made a step smaller, or left out.
 */
export function leversFor(design: GliderDesign, flight: Flight, wanted: number, way: Way, fit: (after: Flight) => boolean = () => true): readonly Change[] {
  const {plane} = flight;
  const before = glidingOf(design) ?? {margin: plane.margin};
  const [least, most] = plane.wanted;
  const made = (by: typeof bySlips): readonly Change[] => {
    for (const rounding of [Math.round, Math.floor]) {
      const make = by(design, flight, wanted, way, rounding), change = make && flown(make);
      if (change) return [change];
    }
    return [];
  };
  const flown = (make: Made): Change | undefined => {
    if ((Object.keys(make.values) as DimensionPath[]).some((path) => checkValue(path, make.values[path]) !== undefined)) return undefined;
    const mended = changed(design, make.values), after = glidingOf(mended), flies = flightOf(mended);
    if (!flies.ok || after?.speed === undefined || after.margin < least || !fit(flies.value)) return undefined;
    const helps = before.speed === undefined || (way === 'slower' ? after.speed < before.speed : after.speed > before.speed);
    return helps ? {...make, before, after} as Change : undefined;
  };
  const weight = [byNoseWeight, byMoving];
  const balanceFirst = way === 'slower' ? plane.margin > (least + most) / 2 : plane.margin < (least + most) / 2;
  return (balanceFirst ? [...weight, bySlips] : [bySlips, ...weight]).flatMap(made);
}

/** A change before anyone has flown it. */
type Made = {readonly values: Values} & Readonly<Record<string, unknown>>;

/** The speed a plane settles to, whether it is stalled then or not: Infinity where nothing holds its nose up. */
function settles(plane: FlyingPlane, air: Flight['air']): number {
  const setting = trimmedAt(plane, plane.built);
  return liftOf(plane, setting) > 0 ? glideAt(plane, setting, air).speed : Infinity;
}

/** As much of `from`…`to` as brings a growing speed to the one wanted; the whole where it does not reach. */
function amount(to: number, wanted: number, way: Way, speedAt: (amount: number) => number): number {
  const short = (x: number): boolean => (way === 'faster' ? speedAt(x) < wanted : speedAt(x) > wanted);
  if (short(to)) return to;
  let [low, high] = [0, to];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (short(middle)) low = middle; else high = middle;
  }
  return high;
}

type Rounding = (steps: number) => number;

/** Whole steps, at least one; none where there is no room for one. */
const inSteps = (value: number, step: number, most: number, rounding: Rounding): number => {
  const steps = Math.min(Math.max(rounding(value / step), 1), Math.floor(most / step + 1e-9));
  return Math.round(steps * step * 1e7) / 1e7;
};

function byNoseWeight(design: GliderDesign, {plane, air}: Flight, wanted: number, way: Way, rounding: Rounding): Made | undefined {
  const {masses, at: place} = design.ballast;
  if (way === 'faster') {
    const at = place < plane.balance + plane.wingAt - clear ? holder(place) : Math.min(0.015, plane.wingAt);
    const on = (m: number): FlyingPlane => loadedWith(plane, m, at - plane.wingAt);
    const most = mostKeeping(plane, mostAdded * plane.mass, on, way);
    const mass = inSteps(amount(most, wanted, way, (m) => settles(on(m), air)), gram, most, rounding);
    return mass > 0 ? {id: 'nose-on', mass, at, fitted: weightAt(masses, at) !== undefined, values: {'ballast.masses': withMore(masses, mass, at)}} : undefined;
  }
  const front = foremost(masses, plane);
  if (!front) return undefined;
  const off = (m: number): FlyingPlane => loadedWith(plane, -m, front.at - plane.wingAt);
  const most = mostKeeping(plane, front.mass, off, way);
  const mass = inSteps(amount(most, wanted, way, (m) => settles(off(m), air)), gram, most, rounding);
  return mass > 0 ? {id: 'nose-off', mass, at: front.at, values: {'ballast.masses': withMore(masses, -mass, front.at)}} : undefined;
}

function byMoving(design: GliderDesign, {plane, air}: Flight, wanted: number, way: Way, rounding: Rounding): Made | undefined {
  const {masses} = design.ballast;
  const front = foremost(masses, plane);
  if (!front) return undefined;
  const side = way === 'slower' ? 1 : -1;
  const moved = (by: number): FlyingPlane =>
    loadedWith(loadedWith(plane, -front.mass, front.at - plane.wingAt), front.mass, front.at + side * by - plane.wingAt);
  const room = way === 'slower' ? plane.balance + plane.wingAt - clear - front.at : front.at;
  const most = mostKeeping(plane, room, moved, way);
  const by = inSteps(amount(most, wanted, way, (d) => settles(moved(d), air)), millimetre, most, rounding);
  const to = Math.round((front.at + side * by) * 1e7) / 1e7;
  return by > 0 && to >= 0 ? {
    id: way === 'slower' ? 'weight-back' : 'weight-forward', mass: front.mass, by, to,
    values: {'ballast.masses': masses.map((one) => (one === front ? {mass: one.mass, at: to} : one))},
  } : undefined;
}

/** How much of a change leaves the static margins wanted: the margin falls with one towards slower and grows with one towards faster. */
function mostKeeping({wanted: [least, wantedMost]}: FlyingPlane, most: number, after: (amount: number) => FlyingPlane, way: Way): number {
  const keeps = (amount: number): boolean => (way === 'slower' ? after(amount).margin >= least : after(amount).margin <= wantedMost);
  if (keeps(most)) return most;
  let [low, high] = [0, most];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (keeps(middle)) low = middle; else high = middle;
  }
  return low;
}

const foremost = (masses: Ballast, {balance, wingAt}: FlyingPlane): Ballast[number] | undefined =>
  masses.filter(({mass, at}) => mass > 0 && at < balance + wingAt - clear).reduce<Ballast[number] | undefined>((best, one) => (best && best.at <= one.at ? best : one), undefined);

function bySlips(design: GliderDesign, _flight: Flight, wanted: number, way: Way, rounding: Rounding): Made | undefined {
  const set = tailForSpeed(design, wanted);
  if (!set.ok) return undefined;
  const rise = Math.sign(set.value.rise) * inSteps(Math.abs(set.value.rise), paper, Infinity, rounding);
  if (way === 'slower' ? rise <= 0 : rise >= 0) return undefined;
  const {tail: {chord}, arrangement: {tailIncidence}, board} = design;
  const sine = Math.sin(tailIncidence) - rise / chord;
  if (!(Math.abs(sine) < 1)) return undefined;
  const angle = Math.asin(sine), edge = Math.abs(rise);
  return {
    id: way === 'slower' ? 'slip-more' : 'slip-less', edge, angle, stack: nearestStack(edge, board.thickness), values: {'arrangement.tailIncidence': angle},
  };
}
