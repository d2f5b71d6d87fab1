import {withValues, type GliderDesign} from '../design/design.js';
import {flightOf, type Flight, type Trim} from '../flight/flight.js';
import {loadedWith, balancedAt, type FlyingPlane} from '../flight/flying-plane.js';
import {glideAt} from '../flight/glide.js';
import {liftOf, mostLift, trimmedAt} from '../flight/trimmed.js';
import {rightThrow} from '../flight/simulation/as-gliding.js';
import {straight, type Crooked} from '../flight/simulation/crooked.js';
import {turnSeen} from '../flight/simulation/turn-seen.js';
import {turnTrack, type TurnTrack} from '../flight/simulation/turning.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {asBuilt, cornersOf, type Lopsided} from './as-built.js';
import {justBorne} from './borne.js';
import {tipWeightOf} from './crooked.js';
import {plannedSizes} from './planned-sizes.js';
import {finsTurned, tipDistances} from './straightness.js';
import {jointsFromTip, plannedJoints, tipOverBench, type Joints} from './tips.js';

/** What can be out of true, in no order. */
export type TruthId = 'hollow' | 'tail' | 'balance' | 'nose' | 'tips' | 'skew' | 'bow' | 'tip-weight' | 'fin' | 'twist';

/** What a millimetre or a gram does, and how much of it a plane bears. SI. */
export interface Truth {
  readonly id: TruthId;
  readonly kind: 'length' | 'mass';
  /** The step that is looked at: a millimetre or a gram, or as asked. */
  readonly step: number;
  /** What the step does to the glide, by flying it; missing where it turns the plane and does no more, and with `turn` where the plane with it dives or stalls. */
  readonly glide?: {readonly speed: number; readonly ratio: number};
  /** The glide from the design's hand height with the step, by `turnTrack`, or why there is none; missing where the step does not turn it. */
  readonly turn?: Outcome<TurnTrack>;
  /** As much as keeps the change small: see {@link smallEnough}. */
  readonly within: number;
}

/** The change that is small enough: speed within a twentieth, no circle smaller than this. Common practice, no source. */
export const smallEnough = {speed: 0.05, radius: 25} as const;

/** What is a little off: m, kg. */
export interface Steps { readonly length: number; readonly mass: number }

const millimetre = 1e-3;
/** As readers of either system think of a little: a millimetre and a gram, a sixteenth of an inch and of an ounce. */
export const metricSteps: Steps = {length: millimetre, mass: 1e-3}, inchSteps: Steps = {length: 0.0254 / 16, mass: 0.028349523125 / 16};

const stage = memo((design: GliderDesign, steps: Steps): Outcome<readonly Truth[]> => {
  const flight = flightOf(design);
  if (!flight.ok) return flight;
  const {trim} = flight.value;
  if (!trim.ok) return trim;
  const truths = [...ofGlide(design, flight.value, trim.value, steps), ...ofTurn(design, flight.value, trim.value, steps)];
  /** How many of the tolerances a millimetre or a gram is. */
  const weight = ({kind, within}: Truth): number => metricSteps[kind] / within;
  return good(truths.sort((a, b) => weight(b) - weight(a)));
});

/**
 * How true is true enough: for each thing that a builder can check, what a step off does to this plane and how much it bears, what
 * matters most first. Changes of the glide by flying the plane with the step; as much as it bears by a tenth of that either way. Turns by following the plane with the step, and nothing else
 * crooked, through its glide from the design's hand height until it lands; as much as it bears by following it with more or less until the circle is just as small as it may be, or it just does not roll over.
 *
 * Refused with why there is no glide, as `flightOf`.
 */
export const tolerancesOf = (design: GliderDesign, steps: Steps = metricSteps): Outcome<readonly Truth[]> => stage(design, steps);

function ofGlide(design: GliderDesign, {plane, air}: Flight, {glide}: Trim, steps: Steps): Truth[] {
  const {built, wingAt, tailChord, mass, balance} = plane;
  /** Speed and glide ratio with so much of a change, and whether its wing carries it so; nothing where it would not glide. */
  const flown = (changed: FlyingPlane | undefined, setting = built): {readonly speed: number; readonly ratio: number; readonly carries: () => boolean} | undefined => {
    if (!changed || !(changed.margin > 0)) return undefined;
    const trimmed = trimmedAt(changed, setting), lift = liftOf(changed, trimmed);
    if (!(lift > 0)) return undefined;
    const {speed, ratio} = glideAt(changed, trimmed, air);
    return {speed, ratio: ratio.usual, carries: () => lift <= mostLift(changed).usual};
  };
  const truth = (id: TruthId, kind: Truth['kind'], at: (amount: number) => ReturnType<typeof flown>): Truth[] => {
    const step = steps[kind], small = step / 10, more = at(small), less = at(-small);
    if (!more || !less) return [];
    const whole = at(step);
    return [{
      id, kind, step, within: smallEnough.speed * glide.speed * 2 * small / Math.abs(more.speed - less.speed),
      ...(whole?.carries() && {glide: {speed: whole.speed - glide.speed, ratio: whole.ratio - glide.ratio.usual}}),
    }];
  };
  const {hollow} = plannedSizes(design);
  const real = asBuilt(design).counted.includes('built.hollow') ? design.built.hollow : hollow;
  const flatter = (amount: number): FlyingPlane | undefined => {
    const changed = flightOf(withValues(design, {'built.hollow': (real ?? 0) + amount}));
    return changed.ok ? changed.value.plane : undefined;
  };
  return [
    ...real !== undefined && real > millimetre / 10 ? truth('hollow', 'length', (amount) => flown(flatter(amount))) : [],
    ...truth('tail', 'length', (amount) => flown(plane, {...built, tailIncidence: -Math.asin(Math.sin(-built.tailIncidence) + amount / tailChord)})),
    ...truth('balance', 'length', (amount) => flown(balancedAt(plane, mass, balance + amount))),
    ...truth('nose', 'mass', (amount) => flown(loadedWith(plane, amount, -wingAt))),
  ];
}

function ofTurn(design: GliderDesign, flight: Flight, trim: Trim, steps: Steps): Truth[] {
  const {wing, tail, arrangement, board, body, launch} = design;
  const thrown = rightThrow(trim.glide, launch);
  /** @param crookedBy what is crooked about a plane that is so much off */
  const truth = (id: TruthId, kind: Truth['kind'], crookedBy: (amount: number) => Partial<Crooked>): Truth[] => {
    const follow = (amount: number): Outcome<TurnTrack> => turnTrack(design, {...straight, ...crookedBy(amount)}, {thrown, air: flight.air});
    const share = (amount: number): number => {
      const turn = follow(amount);
      // one that rolls over may swing its nose through any radius in the end
      return turn.ok && /circle|hardly/.test(turnSeen(turn.value).kind) ? smallEnough.radius / Math.abs(turn.value.radius) : Infinity;
    };
    const step = steps[kind], small = step / 10, little = share(small);
    return little > 0 && Number.isFinite(little) ? [{id, kind, step, turn: follow(step), within: justBorne(share, small / little)}] : [];
  };
  const plan = plannedJoints(wing, board), {fins} = tail;
  const skew = 1e-4, {left, right} = tipDistances(cornersOf(wing, tail, arrangement, plan), skew);
  const free = arrangement.tailAt + tail.chord - arrangement.wingAt - wing.chord;
  const uneven = plan.ok ? unevenTips(wing, board, plan.value) : undefined;
  const perUneven = uneven ? tipWeightOf(flight, trim, body, uneven) / millimetre : 0;
  return [
    ...truth('tips', 'length', (amount) => ({tipMass: amount * perUneven})),
    ...truth('skew', 'length', (amount) => ({fin: amount * skew / (left - right)})),
    ...truth('bow', 'length', (amount) => ({fin: finsTurned(undefined, amount, free)})),
    ...truth('tip-weight', 'mass', (amount) => ({tipMass: amount})),
    ...fins.count > 0 ? truth('fin', 'length', (amount) => ({fin: edgeMoved(amount, fins.chord)})) : [],
    ...truth('twist', 'length', (amount) => ({twist: edgeMoved(amount, wing.chord)})),
  ];
}

/** The angle of a board whose one edge is so far aside. */
const edgeMoved = (by: number, chord: number): number => Math.asin(Math.min(by / chord, 1));

/** Halves whose tips differ by a millimetre, the left one higher; nothing where no joint lifts them. */
function unevenTips(wing: GliderDesign['wing'], board: GliderDesign['board'], planned: Joints): NonNullable<Lopsided['joints']> | undefined {
  const middle = Math.max(tipOverBench(wing, board, planned), millimetre / 2);
  const [left, right] = [middle + millimetre / 2, middle - millimetre / 2].map((height) => jointsFromTip(wing, board, planned, height, 'built.tipLeft'));
  return left?.ok && right?.ok ? {left: left.value, right: right.value} : undefined;
}
