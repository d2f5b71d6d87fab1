import {withValues, type GliderDesign} from '../design/design.js';
import {flightOf, type Flight, type Trim} from '../flight/flight.js';
import {loadedWith, balancedAt, type FlyingPlane} from '../flight/flying-plane.js';
import {glideAt} from '../flight/glide.js';
import {liftOf, trimmedAt} from '../flight/trimmed.js';
import {turnSensitivities, type TurnSensitivities} from '../flight/simulation/turning.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {asBuilt, cornersOf, type Lopsided} from './as-built.js';
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
  /** The step that is looked at: a millimetre or a gram. */
  readonly step: number;
  /** What the step does to the glide; missing where it turns the plane and does no more. */
  readonly glide?: {readonly speed: number; readonly ratio: number};
  /** Radius of the circle it flies with that step before it lands: Infinity straight on. */
  readonly radius?: number;
  /** As much as keeps the change small: see {@link smallEnough}. */
  readonly within: number;
}

/** The change that is small enough: speed within a twentieth, no circle smaller than this. Common practice, no source. */
export const smallEnough = {speed: 0.05, radius: 25} as const;

const millimetre = 1e-3, gram = 1e-3;

/**
 * How true is true enough: for each thing that a builder can check, what a millimetre or a gram off does to this plane and how much it bears, what
 * matters most first. Changes of the glide by flying the changed plane a tenth of the step either way; turns by small motions, at the end of a glide from
 * the design's hand height.
 *
 * Refused with why there is no glide, as `flightOf`.
 */
export const tolerancesOf = memo((design: GliderDesign): Outcome<readonly Truth[]> => {
  const flight = flightOf(design);
  if (!flight.ok) return flight;
  const {trim} = flight.value;
  if (!trim.ok) return trim;
  const turn = turnSensitivities(design);
  if (!turn.ok) return turn;
  const truths = [...ofGlide(design, flight.value, trim.value), ...ofTurn(design, flight.value, trim.value, turn.value)];
  return good(truths.sort((a, b) => b.step / b.within - a.step / a.within));
});

function ofGlide(design: GliderDesign, {plane, air}: Flight, {glide}: Trim): Truth[] {
  const {built, wingAt, tailChord, mass, balance} = plane;
  /** Speed and glide ratio with so much of a change; nothing where it would not glide. */
  const flown = (changed: FlyingPlane | undefined, setting = built): {readonly speed: number; readonly ratio: number} | undefined => {
    if (!changed || !(changed.margin > 0)) return undefined;
    const trimmed = trimmedAt(changed, setting);
    if (!(liftOf(changed, trimmed) > 0)) return undefined;
    const {speed, ratio} = glideAt(changed, trimmed, air);
    return {speed, ratio: ratio.usual};
  };
  const truth = (id: TruthId, kind: Truth['kind'], step: number, at: (amount: number) => ReturnType<typeof flown>): Truth[] => {
    const small = step / 10, more = at(small), less = at(-small);
    if (!more || !less) return [];
    const per = (pick: 'speed' | 'ratio'): number => (more[pick] - less[pick]) / 2 / small;
    return [{id, kind, step, glide: {speed: per('speed') * step, ratio: per('ratio') * step}, within: smallEnough.speed * glide.speed / Math.abs(per('speed'))}];
  };
  const {hollow} = plannedSizes(design);
  const real = asBuilt(design).counted.includes('built.hollow') ? design.built.hollow : hollow;
  const flatter = (amount: number): FlyingPlane | undefined => {
    const changed = flightOf(withValues(design, {'built.hollow': (real ?? 0) + amount}));
    return changed.ok ? changed.value.plane : undefined;
  };
  return [
    ...real !== undefined && real > millimetre / 10 ? truth('hollow', 'length', millimetre, (amount) => flown(flatter(amount))) : [],
    ...truth('tail', 'length', millimetre, (amount) => flown(plane, {...built, tailIncidence: built.tailIncidence - Math.asin(amount / tailChord)})),
    ...truth('balance', 'length', millimetre, (amount) => flown(balancedAt(plane, mass, balance + amount))),
    ...truth('nose', 'mass', gram, (amount) => flown(loadedWith(plane, amount, -wingAt))),
  ];
}

function ofTurn({wing, tail, arrangement, board, body}: GliderDesign, flight: Flight, trim: Trim, {per, speed}: TurnSensitivities): Truth[] {
  const truth = (id: TruthId, kind: Truth['kind'], step: number, rate: number): Truth[] =>
    rate === 0 || !Number.isFinite(rate) ? [] : [{id, kind, step, radius: speed / rate, within: step * speed / smallEnough.radius / Math.abs(rate)}];
  const plan = plannedJoints(wing, board), {fins} = tail;
  const skew = 1e-4, {left, right} = tipDistances(cornersOf(wing, tail, arrangement, plan), skew);
  const free = arrangement.tailAt + tail.chord - arrangement.wingAt - wing.chord;
  const uneven = plan.ok ? unevenTips(wing, board, plan.value) : undefined;
  return [
    ...uneven ? truth('tips', 'length', millimetre, tipWeightOf(flight, trim, body, uneven) * per.tipMass.rate) : [],
    ...truth('skew', 'length', millimetre, millimetre * skew / (left - right) * per.fin.rate),
    ...truth('bow', 'length', millimetre, finsTurned(undefined, millimetre, free) * per.fin.rate),
    ...truth('tip-weight', 'mass', gram, gram * per.tipMass.rate),
    ...fins.count > 0 ? truth('fin', 'length', millimetre, millimetre / fins.chord * per.fin.rate) : [],
    ...truth('twist', 'length', millimetre, millimetre / wing.chord * per.twist.rate),
  ];
}

/** Halves whose tips differ by a millimetre, the left one higher; nothing where no joint lifts them. */
function unevenTips(wing: GliderDesign['wing'], board: GliderDesign['board'], planned: Joints): NonNullable<Lopsided['joints']> | undefined {
  const middle = Math.max(tipOverBench(wing, board, planned), millimetre / 2);
  const [left, right] = [middle + millimetre / 2, middle - millimetre / 2].map((height) => jointsFromTip(wing, board, planned, height, 'built.tipLeft'));
  return left?.ok && right?.ok ? {left: left.value, right: right.value} : undefined;
}
