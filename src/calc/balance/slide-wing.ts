import {planeNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
import {neutralPointOf} from '../aero/neutral-point.js';
import {asBuilt} from '../as-built/as-built.js';
import type {GliderDesign} from '../design/design.js';
import {good, refused, type Outcome} from '../problem.js';
import {balancedAt, targetOf, type Balanced, type PlaneBalance, type Reference} from './plane-balance.js';

/** The wing slid along its body until the plane balances in the middle of its target. */
export interface Slide {
  /** Backwards; less than nothing is forward. m. */
  readonly by: number;
  readonly wingAt: number;
  readonly after: Balanced;
}

/** By how much the handbook has the neutral point too far forward with the wing at a place, and how that grows as the wing goes back. */
interface Amiss {
  readonly wingAt: number;
  readonly by: number;
  readonly slope: number;
}

const amissAt = ({wingAt, by, slope}: Amiss, place: number): number => by + slope * (place - wingAt);

/** m. Each round leaves a small share of the miss before. */
const close = 1e-9;
const mostRounds = 40;

/** How near to the furthest place that the flight model takes a wing is looked for, m. */
const furthest = 1e-4;

/**
 * How far to slide the wing instead of adding weight. The balance goes along by the wing's share of the mass, and the target goes with the wing, but less
 * and less as the tail's arm shortens. How it goes, the handbook tells at next to no cost; by how much the handbook is out, the flight model says where
 * the wing then stands, and a straight line through the last two such places says it for the next. Only the model says that no place does it: the handbook, out by what it is at the first place,
 * may look too far back.
 *
 * Refused: 'slide-off-body' where no place between the nose and the tail does it.
 */
export function slideWing(plane: PlaneBalance, planned: GliderDesign): Outcome<Slide> {
  const {wing, tail, body, arrangement, board, balance} = asBuilt(planned).design;
  const share = plane.masses.onWing / plane.mass;
  const balanceAt = (wingAt: number): number => plane.at + share * (wingAt - plane.wingAt);
  const last = Math.min(body.length, arrangement.tailAt) - wing.chord;
  let amiss: Amiss = {wingAt: plane.wingAt, by: plane.neutralPoint - plane.handbook.behindWing, slope: 0};
  // the model takes a wing at the first, and none at the second
  let taken = plane.wingAt, refusedAt = Infinity;
  for (let round = 0; round < mostRounds; round++) {
    const known = amiss;
    const reference = (wingAt: number): Reference | undefined => {
      const handbook = planeNeutralPoint(wing, tail, {...arrangement, wingAt}, board);
      return handbook.ok ? {handbook: handbook.value, wingAt, neutralPoint: handbook.value.behindWing + amissAt(known, wingAt)} : undefined;
    };
    const even = evenPlace((place) => {
      const there = reference(place);
      return there && balanceAt(place) - targetOf(there, balance).middle;
    }, last);
    if (even === 'ahead') break;
    const aim = even === 'beyond' ? last : even;
    const wingAt = aim < refusedAt ? aim : (taken + refusedAt) / 2;
    const there = reference(wingAt), found = neutralPointOf(wing, body, tail, {...arrangement, wingAt}, board);
    if (!there || !found.ok) {
      if (wingAt <= taken) break;
      refusedAt = wingAt;
    } else {
      const truly = {...there, neutralPoint: found.value};
      if (wingAt === even && Math.abs(found.value - there.neutralPoint) < close) {
        return good({by: wingAt - plane.wingAt, wingAt, after: balancedAt(there, plane.mass, balanceAt(wingAt))});
      }
      taken = Math.max(taken, wingAt);
      const isFurthest = wingAt === last || refusedAt - wingAt < furthest;
      if (isFurthest && balanceAt(wingAt) > targetOf(truly, balance).middle) break;
      const by = found.value - there.handbook.behindWing;
      if (wingAt !== known.wingAt) amiss = {wingAt, by, slope: (by - known.by) / (wingAt - known.wingAt)};
    }
    if (refusedAt - taken < furthest / 2) break;
  }
  return refused({code: 'slide-off-body', path: 'arrangement.wingAt'});
}

/** Where between nothing and `last` a plane is no longer too heavy behind: by halving, fifty times leave nothing of a metre. Or on which side of that. */
function evenPlace(excess: (wingAt: number) => number | undefined, last: number): number | 'ahead' | 'beyond' {
  let [low, high] = [0, last];
  const first = excess(low), end = excess(high);
  if (first === undefined || first < 0) return 'ahead';
  if (end === undefined || end > 0) return 'beyond';
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if ((excess(middle) ?? 0) > 0) low = middle; else high = middle;
  }
  return (low + high) / 2;
}
