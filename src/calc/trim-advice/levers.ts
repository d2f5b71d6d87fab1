import {carriedAlong} from '../as-built/carry.js';
import {withMore} from '../balance/with-more.js';
import {nearestStack} from '../bench/stack.js';
import {withValues, type GliderDesign} from '../design/design.js';
import {checkValue} from '../design/read-dimension.js';
import type {DimensionPath} from '../design/dimensions.js';
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

/**
 * What makes a plane glide at about a speed wanted: weight at the nose, the same weight moved, slips under the tail; each alone, rounded to what can be measured
 * out. Weight comes first where the balance lies on the side of the wanted margins that it mends, slips where the balance is right. None leaves less than
 * the least static margin wanted.
 */
export function leversFor(design: GliderDesign, flight: Flight, wanted: number, way: Way): readonly Change[] {
  const {plane} = flight;
  const before = glidingOf(design) ?? {margin: plane.margin};
  const [least, most] = plane.wanted;
  const weight = [...byNoseWeight(design, flight, wanted, way), ...byMoving(design, flight, wanted, way)];
  const slips = bySlips(design, wanted, way);
  const balanceFirst = way === 'slower' ? plane.margin > (least + most) / 2 : plane.margin < (least + most) / 2;
  return (balanceFirst ? [...weight, ...slips] : [...slips, ...weight]).flatMap((make): Change[] => {
    if ((Object.keys(make.values) as DimensionPath[]).some((path) => checkValue(path, make.values[path]) !== undefined)) return [];
    const after = glidingOf(changed(design, make.values));
    if (after?.speed === undefined || after.margin < least) return [];
    const helps = before.speed === undefined || (way === 'slower' ? after.speed < before.speed : after.speed > before.speed);
    return helps ? [{...make, before, after} as Change] : [];
  });
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

/** Whole steps, at least one; none where there is no room for one. */
const inSteps = (value: number, step: number, most: number): number => {
  const steps = Math.min(Math.max(Math.round(value / step), 1), Math.floor(most / step + 1e-9));
  return Math.round(steps * step * 1e7) / 1e7;
};

function byNoseWeight(design: GliderDesign, {plane, air}: Flight, wanted: number, way: Way): Made[] {
  const {masses, at: place} = design.ballast;
  if (way === 'faster') {
    const at = place < plane.balance + plane.wingAt - clear ? holder(place) : Math.min(0.015, plane.wingAt);
    const most = mostAdded * plane.mass;
    const mass = inSteps(amount(most, wanted, way, (m) => settles(loadedWith(plane, m, at - plane.wingAt), air)), gram, most);
    return mass > 0 ? [{id: 'nose-on', mass, at, values: {'ballast.masses': withMore(masses, mass, at)}}] : [];
  }
  const front = foremost(masses, plane);
  if (!front) return [];
  const off = (m: number): FlyingPlane => loadedWith(plane, -m, front.at - plane.wingAt);
  const most = mostKeeping(plane, front.mass, off);
  const mass = inSteps(amount(most, wanted, way, (m) => settles(off(m), air)), gram, most);
  return mass > 0 ? [{id: 'nose-off', mass, at: front.at, values: {'ballast.masses': withMore(masses, -mass, front.at)}}] : [];
}

function byMoving(design: GliderDesign, {plane, air}: Flight, wanted: number, way: Way): Made[] {
  const {masses} = design.ballast;
  const front = foremost(masses, plane);
  if (!front) return [];
  const side = way === 'slower' ? 1 : -1;
  const moved = (by: number): FlyingPlane =>
    loadedWith(loadedWith(plane, -front.mass, front.at - plane.wingAt), front.mass, front.at + side * by - plane.wingAt);
  const room = way === 'slower' ? plane.balance + plane.wingAt - clear - front.at : front.at;
  const most = way === 'slower' ? mostKeeping(plane, room, moved) : room;
  const by = inSteps(amount(most, wanted, way, (d) => settles(moved(d), air)), millimetre, most);
  const to = Math.round((front.at + side * by) * 1e7) / 1e7;
  if (!(by > 0) || to < 0) return [];
  return [{
    id: way === 'slower' ? 'weight-back' : 'weight-forward', mass: front.mass, by, to,
    values: {'ballast.masses': masses.map((one) => (one === front ? {mass: one.mass, at: to} : one))},
  }];
}

/** How much of a change leaves the least static margin wanted: the margin falls with it. */
function mostKeeping({wanted: [least]}: FlyingPlane, most: number, after: (amount: number) => FlyingPlane): number {
  if (after(most).margin >= least) return most;
  let [low, high] = [0, most];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (after(middle).margin >= least) low = middle; else high = middle;
  }
  return low;
}

const foremost = (masses: Ballast, {balance, wingAt}: FlyingPlane): Ballast[number] | undefined =>
  masses.filter(({mass, at}) => mass > 0 && at < balance + wingAt - clear).reduce<Ballast[number] | undefined>((best, one) => (best && best.at <= one.at ? best : one), undefined);

function bySlips(design: GliderDesign, wanted: number, way: Way): Made[] {
  const set = tailForSpeed(design, wanted);
  if (!set.ok) return [];
  const rise = Math.sign(set.value.rise) * inSteps(Math.abs(set.value.rise), paper, Infinity);
  if (way === 'slower' ? rise <= 0 : rise >= 0) return [];
  const {tail: {chord}, arrangement: {tailIncidence}, board} = design;
  const sine = Math.sin(tailIncidence) - rise / chord;
  if (!(Math.abs(sine) < 1)) return [];
  const angle = Math.asin(sine), edge = Math.abs(rise);
  return [{
    id: way === 'slower' ? 'slip-more' : 'slip-less', edge, angle, stack: nearestStack(edge, board.thickness), values: {'arrangement.tailIncidence': angle},
  }];
}
