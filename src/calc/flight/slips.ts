import {asBuilt} from '../as-built/as-built.js';
import {nearestStack, type Stack} from '../bench/stack.js';
import {withValues, type GliderDesign} from '../design/design.js';
import {slipAngle, slipForAngle, type TailSlipPlace} from '../geometry/fold/tail-slip.js';
import {good, refused, type Outcome} from '../problem.js';
import {balanceFirst, type BalanceFirst} from './balance-first.js';
import {betterThanPlan, type BetterThanPlan} from './better-than-plan.js';
import {tailCall, type TailCall} from './calls.js';
import {flightOf, tailForSpeed, type TailSetting, type Trim} from './flight.js';

export {asBuilt};
export type Surface = 'tail' | 'wing';
export type Edge = 'front' | 'rear';

/** How slips lie on the body: flush under an edge and so wide, or touching so far from the edge that the board turns about. Lengths in m. */
export interface SlipPlacing {
  readonly place: TailSlipPlace;
  /** By how much the edge that the board turns about overhangs the step it lies on. */
  readonly overhang: number;
}

/** A board set at an angle on slips. SI. */
export interface SetBoard {
  readonly chord: number;
  /** To the body's upper edge, front edge up. */
  readonly angle: number;
  /** The edge that is raised; none where the board lies flat. */
  readonly raised: Edge | undefined;
  /** How high the slips are. */
  readonly height: number;
  readonly stack: Stack;
  /** What that stack of whole sheets makes of the angle. */
  readonly stackAngle: number;
  /** By how much the raised edge stands higher than the other. */
  readonly rise: number;
}

const pivotChord = (chord: number, {overhang}: SlipPlacing): number => chord - overhang;

/** The chord in the middle of a surface. */
export const chordOf = (design: GliderDesign, surface: Surface): number => surface === 'tail' ? design.tail.chord : design.wing.chord;
export const angleOf = ({arrangement}: GliderDesign, surface: Surface): number => surface === 'tail' ? arrangement.tailIncidence : arrangement.wingIncidence;
export const incidencePath = {tail: 'arrangement.tailIncidence', wing: 'arrangement.wingIncidence'} as const;

/** The angle, front edge up, that slips of a height give: see `slipAngle`. Refused as that. */
export function angleOnSlips(chord: number, height: number, under: Edge, placing: SlipPlacing): Outcome<number> {
  if (height === 0) return good(0);
  const turned = slipAngle(pivotChord(chord, placing), {...placing.place, height});
  return turned.ok ? good(under === 'front' ? turned.value : -turned.value) : turned;
}

/** The fields of the heights at which a surface's edges were measured. */
export const edgePaths = {tail: ['built.tailFront', 'built.tailRear'], wing: ['built.wingFront', 'built.wingRear']} as const;

/** The angle that the measured edges of a surface tell, front edge up; undefined where they were not measured. */
export function measuredAngle(design: GliderDesign, surface: Surface): number | undefined {
  const built = asBuilt(design);
  return built.counted.includes(edgePaths[surface][1]) ? angleOf(built.design, surface) : undefined;
}

/** A design whose surface stands at an angle, whatever was measured of it before. */
export function setAt(design: GliderDesign, surface: Surface, angle: number): GliderDesign {
  const [front, rear] = edgePaths[surface];
  return withValues(design, {[incidencePath[surface]]: angle, [front]: undefined, [rear]: undefined});
}

/** A surface at an angle on slips: the exact height, and the nearest stack of board, card and paper. Refused as `slipForAngle`. */
function boardAt(design: GliderDesign, surface: Surface, angle: number, placing: SlipPlacing): Outcome<SetBoard> {
  const chord = chordOf(design, surface);
  const slips = angle === 0 ? good({height: 0}) : slipForAngle(pivotChord(chord, placing), Math.abs(angle), placing.place);
  if (!slips.ok) return refused(...slips.problems.map((problem) => ({...problem, path: incidencePath[surface]})));
  const {height} = slips.value;
  const raised: Edge | undefined = angle > 0 ? 'front' : angle < 0 ? 'rear' : undefined;
  const stack = nearestStack(height, design.board.thickness);
  const built = angleOnSlips(chord, stack.height, raised ?? 'rear', placing);
  return good({chord, angle, raised, height, stack, stackAngle: built.ok ? built.value : angle, rise: chord * Math.sin(Math.abs(angle))});
}

/** The slips for the angle that a design plans for a surface. Refused as `slipForAngle`. */
export const slipsUnder = (design: GliderDesign, surface: Surface, placing: SlipPlacing): Outcome<SetBoard> =>
  boardAt(design, surface, angleOf(design, surface), placing);

/** What to lay under an edge, or to take out there, in whole pieces, and what the plane does then. */
export interface Slips {
  /** All of them, or so many beside what lies there. */
  readonly how: 'in-all' | 'more' | 'less';
  readonly edge: Edge;
  readonly stack: Stack;
  /** The angle that they give, front edge up. */
  readonly angle: number;
  readonly trim: Outcome<Trim>;
}

/** What a little more and a little less slip does. SI. */
export interface SlipStep {
  readonly edge: Edge;
  readonly height: number;
  /** By how much the edge comes up with the little more. */
  readonly rise: number;
  readonly more: Outcome<Trim>;
  /** Missing where there is not so much to take out. */
  readonly less?: Outcome<Trim>;
}

/** A surface on its slips, and what the plane does with it. */
export interface ShimStudy {
  readonly surface: Surface;
  readonly planned: SetBoard;
  /** As it stands: by its edges where they were measured, else as planned. */
  readonly now: SetBoard;
  readonly measured: boolean;
  /** Wing and tail to the body as they stand, front edges up, and their difference, which sets the speed. */
  readonly wing: number;
  readonly tail: number;
  readonly difference: number;
  /** What it settles to as it stands, or why to nothing. */
  readonly trim: Outcome<Trim>;
  /** What brings it to the plan as nearly as whole pieces do; missing where nothing is to be done. */
  readonly slips?: Slips;
  readonly step?: SlipStep;
  /** What comes before any slip, where the balance lies outside its target. */
  readonly first: BalanceFirst | undefined;
  /** What its speed as it stands asks of the tail, and the speed that it would have then, m/s. */
  readonly call: (TailCall & {readonly to: number}) | undefined;
  /** Where the plan is what should be changed, and not the slips. */
  readonly better: BetterThanPlan | undefined;
}

/**
 * What slips do to a plane. Edges that were measured count before the plan. What keeps the plane from gliding is told in `trim`. Refused as {@link slipsUnder}.
 *
 * @param step the little more that is looked at, m
 */
export function shimStudy(design: GliderDesign, surface: Surface, placing: SlipPlacing, step = 1e-3): Outcome<ShimStudy> {
  const planned = slipsUnder(design, surface, placing);
  if (!planned.ok) return planned;
  const angle = measuredAngle(design, surface), measured = angle !== undefined;
  const now = measured ? boardAt(design, surface, angle, placing) : planned;
  if (!now.ok) return refused(...now.problems.map((problem) => ({...problem, path: edgePaths[surface][1]})));
  const {wingIncidence: wing, tailIncidence: tail} = asBuilt(design).design.arrangement;
  const slips = measured ? towardsPlan(design, surface, placing, now.value, planned.value) : inAll(design, surface, planned.value);
  // of what whole pieces make, so that what is said of one more is what is said once it lies there
  const lies = measured ? now.value : {...planned.value, height: planned.value.stack.height, angle: planned.value.stackAngle};
  const little = stepOf(design, surface, placing, lies, step);
  return good({
    surface, planned: planned.value, now: now.value, measured, wing, tail, difference: wing - tail, trim: trimOf(design), first: balanceFirst(design), call: callOf(design), better: betterThanPlan(design),
    ...(slips && {slips}), ...(little && {step: little}),
  });
}

function callOf(design: GliderDesign): ShimStudy['call'] {
  const flight = flightOf(design), call = flight.ok ? tailCall(flight.value) : undefined;
  return flight.ok && call ? {...call, to: flight.value.advised.speed} : undefined;
}

function trimOf(design: GliderDesign): Outcome<Trim> {
  const flight = flightOf(design);
  return flight.ok ? flight.value.trim : flight;
}

function inAll(design: GliderDesign, surface: Surface, {raised, stack, stackAngle}: SetBoard): Slips | undefined {
  return raised === undefined || stack.height === 0 ? undefined
    : {how: 'in-all', edge: raised, stack, angle: stackAngle, trim: trimOf(setAt(design, surface, stackAngle))};
}

/** Slips under the rear edge count upwards, under the front edge downwards. */
const signed = ({raised, height}: SetBoard): number => raised === 'front' ? -height : height;
const edgeOf = (height: number): Edge => height < 0 ? 'front' : 'rear';

/** What is to be laid under or taken out, beside what lies there, to come from one setting to another. */
function towardsPlan(design: GliderDesign, surface: Surface, placing: SlipPlacing, now: SetBoard, planned: SetBoard): Slips | undefined {
  const from = signed(now), to = signed(planned);
  // what lies under the other edge comes out altogether
  const across = from * to < 0, by = across ? to : to - from;
  const stack = nearestStack(Math.abs(by), design.board.thickness);
  if (stack.height === 0) return undefined;
  const reached = (across ? 0 : from) + Math.sign(by) * stack.height;
  const angle = angleOnSlips(now.chord, Math.abs(reached), edgeOf(reached), placing);
  if (!angle.ok) return undefined;
  const more = across || Math.abs(to) > Math.abs(from);
  return {
    how: across ? 'in-all' : more ? 'more' : 'less', edge: edgeOf(more ? to : from), stack, angle: angle.value, trim: trimOf(setAt(design, surface, angle.value)),
  };
}

/** Missing where so much more cannot lie there. */
function stepOf(design: GliderDesign, surface: Surface, placing: SlipPlacing, {chord, raised = 'rear', height, angle}: SetBoard, step: number): SlipStep | undefined {
  const at = (slips: number): Outcome<number> => angleOnSlips(chord, slips, raised, placing);
  const flown = (angle: number): Outcome<Trim> => trimOf(setAt(design, surface, angle));
  const more = at(height + step), less = height >= step ? at(height - step) : undefined;
  return more.ok ? {
    edge: raised, height: step, rise: chord * (Math.sin(Math.abs(more.value)) - Math.sin(Math.abs(angle))), more: flown(more.value),
    ...(less?.ok && {less: flown(less.value)}),
  } : undefined;
}

/** How the tail has to be set for a wanted speed. Refused as `tailForSpeed`, and 'speed-below-stall' for what is no speed. */
export const tailSettingFor = (design: GliderDesign, speed: number): Outcome<TailSetting> => tailForSpeed(design, speed);
