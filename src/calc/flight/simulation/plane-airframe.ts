import {gravity, type Air} from '../../aero/air.js';
import {usualParasiteDrag} from '../../aero/parasite.js';
import {amountsOf, causes, total, totalOfPairs, type PerCause} from '../../aero/plane-loads.js';
import {tailEfficiency} from '../../aero/plane-aero.js';
import {liftLimit, lostSuction} from '../../aero/section/board-drag.js';
import type {GliderDesign} from '../../design/design.js';
import {memo} from '../../memo.js';
import {carriedAir, coefficientsOf} from '../derivatives.js';
import type {FlyingPlane} from '../flying-plane.js';
import {glideAt} from '../glide.js';
import {inertiaOf} from '../inertia.js';
import {mostLift, trimmedFor} from '../trimmed.js';
import type {Airframe, Pitching} from './airframe.js';
import {leftBy, plateCentre, plateForce} from './stalled-plate.js';
import {smoothTable} from './smooth-table.js';

const attack = causes.indexOf('attack');

/** Speeds between which friction is worked out; slower and faster it keeps its coefficient. */
const speeds = [0.5, 40] as const;

/** A coefficient that is straight in the angle of attack. */
interface Straight { readonly none: number; readonly slope: number }

/** A lifting surface that stalls: what it does attached, and the angles of attack of the plane at which its flow begins to leave it. */
interface Surface {
  readonly lift: Straight;
  readonly from: number;
  readonly to: number;
  /** Its own angle to the body, and its area over the wing's. */
  readonly incidence: number;
  readonly share: number;
  /** Its quarter point behind the balance point and its chord, both over the mean chord. */
  readonly quarter: number;
  readonly chord: number;
}

/**
 * A plane as a throw meets it, stable or not: up to the stall the loads of the flight model, attached and straight in the angle of attack, with friction at the
 * speed it has; beyond it the wing and the tailplane, each by itself, go over to plates that the flow has left. So every attitude has loads, backwards too. Left
 * out: the ground's nearness, fins and body when they stand across the stream, boards that bend.
 */
export const airframeOf = memo((plane: FlyingPlane, body: GliderDesign['body'], air: Air): Airframe => {
  const {aero, parasite, mass, built, moment} = plane;
  const {area} = parasite, {meanAerodynamicChord: chord} = aero.shape.wing;
  const none = amountsOf({...built, attack: 0});
  const straight = (list: PerCause): Straight => ({none: total(list, none), slope: list[attack] ?? 0});
  const whole = straight(plane.lift), ofTail = straight(aero.tailLift), turning = straight(moment);
  const {wing, tail} = surfacesOf(plane, {none: whole.none - ofTail.none, slope: whole.slope - ofTail.slope}, ofTail);
  const ofWing = {none: turning.none + tail.quarter * ofTail.none, slope: turning.slope + tail.quarter * ofTail.slope};
  const drag = bowl((a) => {
    const amounts = amountsOf({...built, attack: a});
    return totalOfPairs(aero.induced, amounts) + lostSuction.usual * totalOfPairs(aero.suction, amounts);
  });
  const friction = smoothTable((speed) => usualParasiteDrag(parasite, speed, air), speeds);
  const {pitching, damping} = pitchingOf(plane, body, air);
  return {
    mass, gravity, pitching,
    loads(speed, angle, rate) {
      const pressure = air.density * speed * speed / 2 * area;
      const wingLeft = left(wing, angle), tailLeft = left(tail, angle);
      const [up, back, turn] = stalled(wing, angle, wingLeft), [tailUp, tailBack, tailTurn] = stalled(tail, angle, tailLeft);
      const wingLift = wing.lift.none + wing.lift.slope * angle, tailLift = tail.lift.none + tail.lift.slope * angle;
      const lift = (1 - wingLeft) * wingLift + (1 - tailLeft) * tailLift + up + tailUp;
      const about = (1 - wingLeft) * (ofWing.none + ofWing.slope * angle) - (1 - tailLeft) * tail.quarter * tailLift + turn + tailTurn;
      return {
        lift: pressure * lift + damping.lift * speed * rate,
        drag: pressure * (friction(speed) + (1 - wingLeft) * Math.max(drag(angle), 0) + back + tailBack),
        moment: pressure * chord * about + damping.moment * speed * rate,
      };
    },
  };
});

const left = ({from, to}: Surface, angle: number): number => Math.min(leftBy(angle - to) + leftBy(from - angle), 1);

/** Lift, drag and moment coefficients, on the wing's area and mean chord, of a surface as a plate, as far as the flow has left it. */
function stalled({incidence, share, quarter, chord}: Surface, angle: number, left: number): readonly [lift: number, drag: number, moment: number] {
  if (left === 0) return [0, 0, 0];
  const sine = Math.sin(angle + incidence), cosine = Math.cos(angle + incidence);
  const force = left * share * plateForce(sine);
  return [force * cosine, force * sine, -force * (quarter + chord * (plateCentre(sine, cosine) - 0.25))];
}

function surfacesOf(plane: FlyingPlane, wingLift: Straight, tailLift: Straight): {readonly wing: Surface; readonly tail: Surface} {
  const {aero, balance, built, parasite: {area}} = plane;
  const {wing: flown, tail: planform, arm} = aero.shape;
  const chord = flown.meanAerodynamicChord;
  const most = trimmedFor(plane, mostLift(plane).usual, built).attack;
  const flat = liftLimit(0).usual, zero = -wingLift.none / wingLift.slope;
  const share = planform.area / area * tailEfficiency.usual;
  // the tail's angle for each rad of the plane's, and what of the plane's brings the tail to its most lift
  const reach = flat * share / tailLift.slope, flatTail = -tailLift.none / tailLift.slope;
  return {
    wing: {
      lift: wingLift, to: most, from: zero - (most - zero) * flat / liftLimit(aero.camber).usual,
      incidence: built.wingIncidence, share: 1, quarter: (aero.x - balance) / chord, chord: 1,
    },
    tail: {
      lift: tailLift, to: flatTail + reach, from: flatTail - reach,
      incidence: built.tailIncidence, share, quarter: (aero.x + arm - balance) / chord, chord: planform.meanAerodynamicChord / chord,
    },
  };
}

/** A parabola through what it gives at −1, 0 and 1: drag goes with squares. */
function bowl(at: (x: number) => number): (x: number) => number {
  const [before, middle, after] = [at(-1), at(0), at(1)];
  const bend = (before + after) / 2 - middle, slope = (after - before) / 2;
  return (x) => middle + x * (slope + x * bend);
}

/** A speed's worth of plates standing across the stream: Hoerner, as {@link plateForce}. */
const across = plateForce(1);

function pitchingOf(plane: FlyingPlane, body: GliderDesign['body'], air: Air): {readonly pitching: Pitching; readonly damping: {readonly lift: number; readonly moment: number}} {
  const {aero, balance, built, parasite: {area}} = plane;
  const {meanAerodynamicChord: chord} = aero.shape.wing;
  const inertia = inertiaOf(plane, body);
  // these derivatives are the same in every glide
  const {pitching, lag} = coefficientsOf(plane, glideAt(plane, trimmedFor(plane, 0.5, built), air), inertia, air);
  const carried = carriedAir(plane, inertia.z, air.density);
  const quarter = air.density * area * chord / 4;
  const crossFlow = aero.strips.reduce((sum, {share, chord: c, width, dy, x}) =>
    sum + 2 * share * c * width * (dy / width) ** 2 * Math.abs(x + c / 4 - balance) ** 3, 0);
  return {
    pitching: {
      inertia: inertia.pitch + carried.pitch, lagLift: carried.up + quarter * lag.lift, lagMoment: quarter * chord * lag.moment,
      crossFlow: air.density / 2 * across * crossFlow,
    },
    damping: {lift: quarter * pitching.lift, moment: quarter * chord * pitching.moment},
  };
}

