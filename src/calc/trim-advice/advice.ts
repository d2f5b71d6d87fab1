import type {GliderDesign} from '../design/design.js';
import {flightOf, type Flight} from '../flight/flight.js';
import {flyingPlane} from '../flight/flying-plane.js';
import {throwStudy, type ThrowStudy} from '../flight/simulation/throw-study.js';
import {memo} from '../memo.js';
import {good, refused, type Outcome} from '../problem.js';
import {blameOf, usualCauses, type Blame, type CauseId} from './causes.js';
import type {Change} from './change.js';
import {choose, measuring, type First} from './choosing.js';
import {problemBehindLimit} from './limit.js';
import {blamedOf, likelihoodOf, measuredTurns, turnOf, type MeasuredId, type MeasuredTurns} from './measured-turns.js';
import {noGlideOf} from './no-glide.js';
import {checkSeen, type Past, type Seen, type Sight} from './seen.js';
import {leversTowards, type Overshoot} from './sizing.js';
import {moreDihedral, seenTurn, straightening, tallerFins, type Straightenings} from './straightening.js';
import {fitOf, suspectsFor, type Fit} from './suspects.js';
import {halvingsAfter, leftOver, nextAfter, runOf, triesOf, type Next} from './thread.js';
import {bySide, everyTime, fasterNow, weigh, type Fact} from './weighing.js';

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
  /** The most likely first; none after a good glide, and none where nothing is changed any more. */
  readonly causes: readonly Cause[];
  /** By the model the likeliest cause would not make this plane fly as it was seen to, or what was measured turns it the other way: its numbers are not quite the plane that was thrown. */
  readonly unlike: boolean;
  /** What to try before anything else: the throw, or what only has to be held fast, where it is nearly as likely: that costs nothing. What was measured comes before it. */
  readonly first: First<Cause> | undefined;
  readonly study: ThrowStudy;
}

/** What the model's flight straight ahead shows to somebody beside it. */
const fromBeside: ReadonlySet<Sight> = new Set<Sight>(['dives', 'swoops', 'zooms', 'drops']);

/**
 * What to do after a throw: causes in order of likelihood for this design, with the change that mends each in its own numbers, and which to try first. The usual
 * causes of what was seen are weighed by what the model knows of the plane, by how it would fly for each of them, by what was measured, and by what has been tried.
 *
 * Refused whatever was seen: 'balance-behind-limit' {margin, least, forward} where the plane is unstable or balances behind the least static margin wanted,
 * 'trim-dives' or 'trim-stalls' {edge} where it would only do that as it is set (`balanceFirst` mends both where the balance is off, else `tailRemedy`);
 * 'throw-number-out-of-range', 'throw-too-fast', 'throw-too-slow' for what nobody can have measured; and as `flyingPlane`, `flightOf` and `throwStudy`.
 */
export const adviceFor = memo((design: GliderDesign, seen: Seen, history: readonly Past[]): Outcome<Advice> => {
  const plane = flyingPlane(design);
  if (!plane.ok) return plane;
  const behind = problemBehindLimit(plane.value);
  if (behind) return refused(behind);
  const wrong = checkSeen(seen);
  if (wrong) return wrong;
  const flight = flightOf(design);
  if (!flight.ok) return flight;
  const {trim} = flight.value;
  if (!trim.ok && noGlideOf(flight.value)) return trim;
  const study = throwStudy(design, 'one');
  if (!study.ok) return study;
  return good({seen, ...causesOf(design, flight.value, study.value, seen, history), study: study.value});
});

function causesOf(design: GliderDesign, flight: Flight, study: ThrowStudy, seen: Seen, history: readonly Past[]): Omit<Advice, 'seen' | 'study'> {
  const {speed} = study.right;
  const next = nextAfter(seen, history), run = runOf(seen, history, speed), overshoot = overshootOf(next, halvingsAfter(seen, history), history, speed);
  const turned = seen.what === 'left' || seen.what === 'right' ? seen.what : undefined;
  const sideways = turned !== undefined || seen.what === 'rolls';
  const straight = sideways ? straightening(design, turned, overshoot.halvings) : {};
  const measured = sideways ? measuredTurns(design) : {}, blamed = blamedOf(measured, turned);
  const usual = [
    ...(Object.entries(blamed) as [MeasuredId, NonNullable<MeasuredTurns[MeasuredId]>][]).map(([id, one]) => [id, likelihoodOf(one)] as const),
    ...Object.entries(usualCauses[seen.what]) as [CauseId, number][],
  ];
  const fits = usual.map(([id]) => fitOf(suspectsFor(id, flight, design.body, study.glide, study.right), seen, study.glide));
  const weighed = usual.map(([id, often], i) => {
    const changes = changesFor(id, {design, flight, study, seen, overshoot, straight, blamed}, fits[i]);
    const tries = Math.max(0, ...changes.map((change) => triesOf(change.id, seen, history)));
    const weights = [
      ...weigh(id, design, flight, study, fits[i]), ...bySide(id, straight), ...everyTime(id, seen, history), ...fasterNow(id, study, history),
      ...id in blamed ? [[1, blamed[id as MeasuredId]?.fact] as const] : [],
    ];
    const untried = weights.reduce((product, [factor]) => product * factor, often);
    const facts = [...weights.flatMap(([, fact]) => (fact ? [fact] : [])), ...tries > 0 ? [{id: 'tried', times: tries} as const] : []];
    return {cause: {id, blame: blameOf[id], changes, facts}, looks: fits[i]?.looks, untried, weight: untried * leftOver(id) ** tries};
  }).sort((a, b) => b.weight - a.weight);
  const whole = weighed.reduce((sum, {weight}) => sum + weight, 0);
  const listed = weighed.map((one) => ({...one, cause: {...one.cause, share: whole > 0 ? one.weight / whole : 1 / weighed.length}}));
  const smaller = (change: Change): boolean => !('after' in change) || overshoot.made === undefined || change.after.speed === undefined
    || Math.abs(Math.log(change.after.speed / study.glide.speed)) <= aboutHalf * Math.abs(Math.log(overshoot.made));
  const chosen = choose(listed, seen.what, next, history, run, new Set(Object.keys(blamed) as MeasuredId[]), overshoot.halvings, smaller);
  if (chosen.next === 'stop') return {...chosen, causes: [], unlike: false};
  const turnsBack = turned !== undefined && turnOf(measured) * (turned === 'right' ? 1 : -1) < -seenTurn / 2;
  const otherwise = fromBeside.has(seen.what) && listed.find(({looks}) => looks !== undefined)?.looks === 'otherwise';
  // that it does not fit its numbers is said once
  return {...chosen, causes: listed.map(({cause}) => cause), unlike: chosen.because !== 'no-fit' && (turnsBack || otherwise)};
}

/** A step of less than this of the last one is about half as large, by what can be measured out. */
const aboutHalf = 0.7;
/** A step that changes the speed by less than this was not one of balance or tail, or was not made in the design. */
const changedNothing = 0.005;

function overshootOf({because}: Next, halvings: number, history: readonly Past[], speed: number): Overshoot {
  const before = history.at(-1)?.right, made = before === undefined ? 1 : speed / before;
  return because === 'overshot' && Math.abs(Math.log(made)) > changedNothing ? {halvings, made} : {halvings};
}

interface Case {
  readonly design: GliderDesign;
  readonly flight: Flight;
  readonly study: ThrowStudy;
  readonly seen: Seen;
  readonly overshoot: Overshoot;
  readonly straight: Straightenings;
  readonly blamed: MeasuredTurns;
}

function changesFor(id: CauseId, one: Case, fit: Fit | undefined): readonly Change[] {
  const {design, flight, study: {right, ball}, straight} = one;
  const {launch} = design;
  const asShould = {'launch.speed': undefined, 'launch.angle': undefined, 'launch.pitch': 0};
  const set = launch.speed !== undefined || launch.angle !== undefined || launch.pitch !== 0;
  const measure: Change = {id: 'measure', what: measuring[one.seen.what]};
  const only = (change: Change | undefined): readonly Change[] => [change ?? measure];
  const orMeasure = (changes: readonly Change[]): readonly Change[] => (changes.length > 0 ? changes : [measure]);
  switch (id) {
    case 'thrown-fast': case 'thrown-slow': case 'thrown-up': case 'thrown-down': case 'thrown-banked':
      return [{id: 'throw', speed: right.speed, angle: right.angle, ball, height: right.height, ...(set && {values: asShould})}];
    case 'windy': return [{id: 'calm', wind: launch.wind, ...(launch.wind !== 0 && {values: {'launch.wind': 0}})}];
    case 'nose-heavy': return orMeasure(leversTowards('slower', design, flight, fit, one.overshoot));
    case 'tail-heavy': return orMeasure(leversTowards('faster', design, flight, fit, one.overshoot));
    case 'bowed-body': case 'askew-wing': case 'uneven-tips': return only(one.blamed[id]?.change);
    case 'crooked-fin': case 'heavy-tip': case 'twisted-wing': return only(straight[id]?.change);
    case 'little-dihedral': return only(moreDihedral(design));
    case 'small-fin': return only(tallerFins(design));
    case 'loose-tail': return [{id: 'secure', what: 'tail'}];
    case 'loose-boards': return [{id: 'secure', what: 'boards'}];
    case 'soft-wing': return [{id: 'secure', what: 'wing'}];
    case 'lost-camber': return [measure];
  }
}
