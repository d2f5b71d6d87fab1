import type {GliderDesign} from '../design/design.js';
import {flightOf, type Flight} from '../flight/flight.js';
import {flyingPlane} from '../flight/flying-plane.js';
import {throwStudy, type ThrowStudy} from '../flight/simulation/throw-study.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {blameOf, usualCauses, type Blame, type CauseId} from './causes.js';
import type {Change} from './change.js';
import {leversFor, type Way} from './levers.js';
import {behindLimit, problemBehindLimit} from './limit.js';
import {checkSeen, type ChangeId, type Past, type Seen} from './seen.js';
import {moreDihedral, straightening, tallerFins, type Straightenings} from './straightening.js';
import {fitOf, suspectsFor, type Fit} from './suspects.js';
import {halvingsAfter, leftOver, nextAfter, triesOf, type Next} from './thread.js';
import {bySide, everyTime, weigh, type Fact} from './weighing.js';

/** Why it may have flown like that, and what mends it. */
export interface Cause {
  readonly id: CauseId;
  readonly blame: Blame;
  /** How likely it is among those listed; they sum to 1. */
  readonly share: number;
  readonly facts: readonly Fact[];
  /** One of them is enough; the one to begin with first. Never empty. */
  readonly changes: readonly Change[];
}

/** What to do after a throw. */
export interface Advice extends Next {
  readonly seen: Seen;
  /** The most likely first; none after a good glide. */
  readonly causes: readonly Cause[];
  /** What to try before anything else: the throw, or what only has to be held fast, where it is nearly as likely: that costs nothing. */
  readonly first: {readonly cause: Cause; readonly change: Change} | undefined;
  readonly study: ThrowStudy;
}

/** A step at the bench changes the speed by so much where nothing measured says how much it takes. Common practice, no source. */
export const usualStep = 0.9;
const stepLimits = [0.8, 0.95] as const;

/** What costs nothing is tried first where it is nearly as likely as the likeliest cause. */
const nearlyAsLikely = 0.5;
const free: ReadonlySet<string> = new Set<ChangeId>(['throw', 'calm', 'secure']);

/** Speeds over the stall's that trimming goes no slower than. */
const slowestTrim = 1.1, usualTrim = 1.2;

/**
 * What to do after a throw: causes in order of likelihood for this design, with the change that mends each in its own numbers, and which to try first. The usual
 * causes of what was seen are weighed by what the model knows of the plane, by how it would fly for each of them, by what was measured, and by what has been tried.
 *
 * Refused: 'balance-behind-limit' {margin, least, forward, mass, at} whatever was seen, where the plane is unstable or balances behind the least static margin wanted;
 * 'throw-number-out-of-range', 'throw-too-fast', 'throw-too-slow' for what nobody can have measured; and as `flyingPlane`, `flightOf` and `throwStudy`.
 */
export const adviceFor = memo((design: GliderDesign, seen: Seen, history: readonly Past[]): Outcome<Advice> => {
  const plane = flyingPlane(design);
  if (!plane.ok) return plane;
  const behind = behindLimit(plane.value, design);
  if (behind) return refused(problemBehindLimit(plane.value, behind));
  const wrong = checkSeen(seen);
  if (wrong) return wrong;
  const flight = flightOf(design);
  if (!flight.ok) return flight;
  const study = throwStudy(design, 'one');
  if (!study.ok) return study;
  const next = nextAfter(seen, history);
  const causes = causesOf(design, flight.value, study.value, seen, history);
  return good({...next, seen, causes, first: firstOf(causes), study: study.value});
});

function causesOf(design: GliderDesign, flight: Flight, study: ThrowStudy, seen: Seen, history: readonly Past[]): readonly Cause[] {
  const halvings = halvingsAfter(seen, history);
  const turned = seen.what === 'left' || seen.what === 'right' ? seen.what : undefined;
  const straight = turned !== undefined || seen.what === 'rolls' ? straightening(design, turned, halvings) : {};
  const weighed = (Object.entries(usualCauses[seen.what]) as [CauseId, number][]).map(([id, usual]) => {
    const fit = fitOf(suspectsFor(id, flight, design.body, study.glide, study.right), seen, study.glide);
    const changes = changesFor(id, {design, flight, study, seen, halvings, straight}, fit);
    const tries = Math.max(0, ...changes.map((change) => triesOf(change.id, seen, history)));
    const weights = [
      ...weigh(id, design, flight, study, fit), ...bySide(id, straight), ...everyTime(id, seen, history),
      ...tries > 0 ? [[leftOver(id) ** tries, {id: 'tried', times: tries}] as const] : [],
    ];
    return {
      id, blame: blameOf[id], weight: weights.reduce((product, [factor]) => product * factor, usual), changes,
      facts: weights.flatMap(([, fact]) => (fact ? [fact] : [])),
    };
  });
  const whole = weighed.reduce((sum, {weight}) => sum + weight, 0);
  return weighed.map(({weight, ...cause}) => ({...cause, share: whole > 0 ? weight / whole : 1 / weighed.length})).sort((a, b) => b.share - a.share);
}

interface Case {
  readonly design: GliderDesign;
  readonly flight: Flight;
  readonly study: ThrowStudy;
  readonly seen: Seen;
  readonly halvings: number;
  readonly straight: Straightenings;
}

function changesFor(id: CauseId, one: Case, fit: Fit | undefined): readonly Change[] {
  const {design, flight, study: {right, ball}, straight} = one;
  const {launch} = design;
  const asShould = {'launch.speed': undefined, 'launch.angle': undefined, 'launch.pitch': 0};
  const set = launch.speed !== undefined || launch.angle !== undefined || launch.pitch !== 0;
  const only = (change: Change | undefined): readonly Change[] => [change ?? {id: 'measure'}];
  switch (id) {
    case 'thrown-fast': case 'thrown-slow': case 'thrown-up': case 'thrown-down': case 'thrown-banked':
      return [{id: 'throw', speed: right.speed, angle: right.angle, ball, height: right.height, ...(set && {values: asShould})}];
    case 'windy': return [{id: 'calm', wind: launch.wind, ...(launch.wind !== 0 && {values: {'launch.wind': 0}})}];
    case 'nose-heavy': return orMeasure(leversTowards('slower', design, flight, fit, one.halvings));
    case 'tail-heavy': return orMeasure(leversTowards('faster', design, flight, fit, one.halvings));
    case 'crooked-fin': case 'heavy-tip': case 'twisted-wing': return only(straight[id]?.change);
    case 'little-dihedral': return only(moreDihedral(design));
    case 'small-fin': return only(tallerFins(design));
    case 'loose-tail': return [{id: 'secure', what: 'tail'}];
    case 'loose-boards': return [{id: 'secure', what: 'boards'}];
    case 'soft-wing': return [{id: 'secure', what: 'wing'}];
    case 'lost-camber': return [{id: 'measure'}];
  }
}

const orMeasure = (changes: readonly Change[]): readonly Change[] => (changes.length > 0 ? changes : [{id: 'measure'}]);

/** By how much a step changes the speed: what the likeliest fault has made of it where throws were measured, else a usual step; halved where a step went too far. */
function stepOf(way: Way, fit: Fit | undefined, halvings: number): number {
  const {speedRatio, measures} = fit ?? {};
  const found = measures === 'fit' && speedRatio !== undefined ? (way === 'slower' ? 1 / speedRatio : speedRatio) : usualStep;
  return Math.min(Math.max(found, stepLimits[0]), stepLimits[1]) ** (1 / 2 ** halvings);
}

/** Changes of balance or tail towards slower or faster; none where the model sees no room for them. */
export function leversTowards(way: Way, design: GliderDesign, flight: Flight, fit: Fit | undefined, halvings: number): readonly Change[] {
  const {trim, stall, best} = flight;
  const usual = Math.max(best.speed, usualTrim * stall);
  const step = stepOf(way, fit, halvings);
  if (!trim.ok) return trim.problems[0]?.code === (way === 'slower' ? 'trim-dives' : 'trim-stalls') ? leversFor(design, flight, usual, way) : [];
  const {speed} = trim.value.glide;
  const wanted = way === 'slower' ? Math.max(speed * step, slowestTrim * stall) : speed / step;
  return way === 'slower' && wanted > 0.985 * speed ? [] : leversFor(design, flight, wanted, way);
}

function firstOf(causes: readonly Cause[]): Advice['first'] {
  const [likeliest] = causes;
  if (!likeliest) return undefined;
  const cause: Cause = causes.find(({changes: [change], share}) => change && free.has(change.id) && share >= nearlyAsLikely * likeliest.share) ?? likeliest;
  const [change] = cause.changes;
  return change && {cause, change};
}
