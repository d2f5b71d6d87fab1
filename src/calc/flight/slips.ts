import {usualAir} from '../aero/air.js';
import {nearestStack, type Stack} from '../bench/stack.js';
import type {GliderDesign} from '../design/design.js';
import {angleFromEdges, slipAngle, slipForAngle, type TailSlipPlace} from '../geometry/fold/tail-slip.js';
import {good, refused, type Outcome} from '../problem.js';
import {flightOf, tailForSpeed, type TailSetting, type Trim} from './flight.js';

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

/** The angle, front edge up, from the heights of the two edges over the body's upper edge. Refused as `angleFromEdges`. */
export function angleOfEdges(chord: number, front: number, rear: number): Outcome<number> {
  const turned = angleFromEdges(chord, front, rear);
  return turned.ok ? good(-turned.value + 0) : turned;
}

/** The slips for the angle that a design gives a surface: the exact height, and the nearest stack of board, card and paper. Refused as `slipForAngle`. */
export function slipsUnder(design: GliderDesign, surface: Surface, placing: SlipPlacing): Outcome<SetBoard> {
  const chord = chordOf(design, surface), angle = angleOf(design, surface);
  const slips = angle === 0 ? good({height: 0}) : slipForAngle(pivotChord(chord, placing), Math.abs(angle), placing.place);
  if (!slips.ok) return refused(...slips.problems.map((problem) => ({...problem, path: incidencePath[surface]})));
  const {height} = slips.value;
  const raised: Edge | undefined = angle > 0 ? 'front' : angle < 0 ? 'rear' : undefined;
  const stack = nearestStack(height, design.board.thickness);
  const built = angleOnSlips(chord, stack.height, raised ?? 'rear', placing);
  return good({chord, angle, raised, height, stack, stackAngle: built.ok ? built.value : angle, rise: chord * Math.sin(Math.abs(angle))});
}

/** A surface on its slips, and what the plane does with it. */
export interface ShimStudy {
  readonly surface: Surface;
  readonly board: SetBoard;
  /** Wing less tail, front edges up: the difference that sets the speed. */
  readonly difference: number;
  /** What it settles to, or why to nothing. */
  readonly trim: Outcome<Trim>;
}

/** What slips do to a plane. Refused as {@link slipsUnder}; what keeps the plane from gliding is told in `trim`. */
export function shimStudy(design: GliderDesign, surface: Surface, placing: SlipPlacing): Outcome<ShimStudy> {
  const board = slipsUnder(design, surface, placing);
  if (!board.ok) return board;
  const flight = flightOf(design, usualAir);
  return good({surface, board: board.value, difference: angleOf(design, 'wing') - angleOf(design, 'tail'), trim: flight.ok ? flight.value.trim : flight});
}

/** How the tail has to be set for a wanted speed. Refused as `tailForSpeed`, and 'speed-below-stall' for what is no speed. */
export const tailSettingFor = (design: GliderDesign, speed: number): Outcome<TailSetting> => tailForSpeed(design, speed, usualAir);
