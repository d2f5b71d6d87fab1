import type {Air} from '../aero/air.js';
import {airOf} from './air-of.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import {good, type Outcome} from '../problem.js';
import {coefficientsOf, dimensional, type Coefficients} from './derivatives.js';
import {eigenvalues, type Complex} from './eigenvalues.js';
import {flightOf, type Flight} from './flight.js';
import {inertiaOf, type Inertia} from './inertia.js';
import {lateralMatrix, longitudinalMatrix, phugoidPeriod} from './motion-equations.js';
import {equivalentDihedral, spiralCriterion, spiralRule} from './spiral.js';

/** One way in which a disturbed plane moves. Times in s. */
export interface Mode {
  readonly root: Complex;
  /** Missing where it does not swing. */
  readonly period?: number;
  /** Until a disturbance is half of itself, or twice itself. */
  readonly half?: number;
  readonly double?: number;
}

/** What a person can see of a plane's motion, and the rest. */
export interface Motion {
  /** What becomes of a small bank: it rolls out, stays, or tightens while the plane is in the air. */
  readonly turn: 'rolls-out' | 'holds' | 'tightens';
  readonly wags: 'not' | 'briefly' | 'on';
  /** The slow swing between height and speed. */
  readonly phugoid: readonly Mode[];
  /** Its period by Lanchester, s: shorter, since his plane holds its angle of attack exactly. */
  readonly lanchester: number;
  /** The quick nod of the nose. */
  readonly nod: readonly Mode[];
  /** Tail and wings from side to side; missing where they do not swing. */
  readonly wag: Mode | undefined;
  readonly roll: Mode | undefined;
  readonly spiral: Mode | undefined;
  /** More than 0 rolls out. */
  readonly spiralCriterion: number;
  /** More than about 5 rolls out. */
  readonly spiralRule: number;
  readonly coefficients: Coefficients;
  readonly inertia: Inertia;
}

/** Within a hand-launched glider's few seconds, a bank that takes longer than this to halve or double is held. Common practice, no source. */
const flightTime = 8;

/**
 * How a trimmed design moves when something has disturbed it. Small motions about the glide it settles to; boards are taken as stiff.
 *
 * Refused with why there is no such glide, and as {@link flightOf}.
 */
export function motionOf(design: GliderDesign, air: Air = airOf(design)): Outcome<Motion> {
  const flight = flightOf(design, air);
  return flight.ok ? stage(design.body, flight.value) : flight;
}

const stage = memo((body: GliderDesign['body'], {plane, trim, air}: Flight): Outcome<Motion> => {
  if (!trim.ok) return trim;
  const {glide} = trim.value, {aero} = plane, {wing, arm} = aero.shape;
  const inertia = inertiaOf(plane, body);
  const coefficients = coefficientsOf(plane, glide, inertia, air);
  const {longitudinal, lateral, steady} = dimensional(plane, glide, inertia, coefficients, air);
  const upDown = eigenvalues(longitudinalMatrix(longitudinal, steady)), aside = sideways(eigenvalues(lateralMatrix(lateral, steady)));
  return good({
    turn: turnOf(aside.spiral), wags: wagsOf(aside.wag),
    phugoid: modesOf(upDown.slice(2)), lanchester: phugoidPeriod(glide.speed), nod: modesOf(upDown.slice(0, 2)), ...aside,
    spiralCriterion: spiralCriterion(coefficients, glide.angle),
    spiralRule: spiralRule((aero.x + arm - plane.balance) / wing.span, equivalentDihedral(aero.strips), glide.lift),
    coefficients, inertia,
  });
});

/** A pair of roots that swing is one mode. */
function modesOf(roots: readonly Complex[]): Mode[] {
  return roots.filter(({im}) => im >= 0).map((root) => ({
    root, ...(root.im > 0 && {period: 2 * Math.PI / root.im}),
    ...(root.re < 0 && {half: Math.LN2 / -root.re}), ...(root.re > 0 && {double: Math.LN2 / root.re}),
  }));
}

/** The swinging pair wags; of the others, the quick one is the roll, the slow one the spiral. Where two pairs swing, the slower is roll and spiral in one. */
function sideways(roots: readonly Complex[]): Pick<Motion, 'wag' | 'roll' | 'spiral'> {
  const modes = modesOf(roots);
  const [wag, slow] = modes.filter(({period}) => period !== undefined);
  const [roll, ...others] = modes.filter(({period}) => period === undefined);
  return slow ? {wag, roll: slow, spiral: slow} : {wag, roll, spiral: others.at(-1)};
}

function wagsOf(wag: Mode | undefined): Motion['wags'] {
  if (!wag?.period) return 'not';
  const swings = wag.half === undefined ? Infinity : wag.half / wag.period;
  return swings < 0.5 ? 'not' : swings < 2 ? 'briefly' : 'on';
}

const turnOf = (spiral: Mode | undefined): Motion['turn'] =>
  spiral?.double !== undefined && spiral.double < flightTime ? 'tightens' : spiral?.half !== undefined && spiral.half < flightTime ? 'rolls-out' : 'holds';
