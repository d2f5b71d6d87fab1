import type {GliderDesign} from '../design/design.js';
import {windy} from '../flight/launch-wind.js';
import {usualRanges} from '../flight/usual-ranges.js';
import {motionOf} from '../flight/motion.js';
import type {ThrowStudy} from '../flight/simulation/throw-study.js';
import type {Flight} from '../flight/flight.js';
import {wingStrength} from '../flight/wing-strength.js';
import {blameOf, type CauseId} from './causes.js';
import type {Past, Seen} from './seen.js';
import type {Fit} from './suspects.js';
import {seenTurn, type Straightenings} from './straightening.js';

/** Something about this plane that makes a cause more likely, or less. */
export type Fact =
  | {readonly id: 'margin-high' | 'margin-low'; readonly margin: number; readonly least: number; readonly most: number}
  | {readonly id: 'looks-so' | 'measures-fit' | 'measures-miss' | 'tightens' | 'rolls-out' | 'wags' | 'dies-away' | 'same-every-time'}
  | {readonly id: 'near-stall' | 'far-from-stall'; readonly ratio: number}
  | {readonly id: 'speed-high'; readonly speed: number; readonly best: number}
  | {readonly id: 'hand-faster' | 'hand-slower'; readonly speed: number; readonly right: number}
  | {readonly id: 'hand-steeper' | 'hand-flatter'; readonly angle: number; readonly right: number}
  | {readonly id: 'wind'; readonly wind: number}
  | {readonly id: 'folds'}
  | {readonly id: 'turns-by'; readonly cause: 'crooked-fin' | 'heavy-tip' | 'twisted-wing'; readonly fault: number; readonly turns: number}
  | {readonly id: 'measured-bow'; readonly by: number; readonly side: 'left' | 'right'; readonly turns: number}
  | {readonly id: 'measured-skew' | 'measured-tips'; readonly left: number; readonly right: number; readonly turns: number}
  /** It glides faster than when it was thrown before, and is to be thrown faster for that. */
  | {readonly id: 'faster-now'; readonly speed: number; readonly before: number}
  | {readonly id: 'tried'; readonly times: number};

/** A fact, and what it makes of how likely a cause is. The factors are common practice, no source. */
export type Weight = readonly [factor: number, fact?: Fact];

const nearStall = usualRanges.stallMargin.from, farFromStall = usualRanges.stallMargin.to;

/** What is known of a plane, weighed for one cause. */
export function weigh(cause: CauseId, design: GliderDesign, flight: Flight, study: ThrowStudy, fit: Fit | undefined): readonly Weight[] {
  return [...known(cause, design, flight, study), ...fit ? ofFit(fit) : []];
}

function ofFit({match, looks, measures}: Fit): Weight[] {
  return [looks === 'so' ? [match, {id: 'looks-so'}] : [match], ...measures ? [[1, {id: `measures-${measures}`}] as const] : []];
}

function known(cause: CauseId, design: GliderDesign, {plane, best, trim}: Flight, {own, right, glide}: ThrowStudy): Weight[] {
  const {margin, wanted: [least, most]} = plane;
  const stallMargin = trim.ok ? trim.value.stallMargin : undefined;
  const bounds = {margin, least, most};
  const weights: Readonly<Partial<Record<CauseId, () => Weight[]>>> = {
    'nose-heavy': () => [
      ...margin > most ? [[2, {id: 'margin-high', ...bounds}] as const] : [],
      ...stallMargin !== undefined && stallMargin < nearStall ? [[0.6, {id: 'near-stall', ratio: stallMargin}] as const] : [],
      ...stallMargin !== undefined && stallMargin > farFromStall ? [[1.6, {id: 'speed-high', speed: glide.speed, best: best.speed}] as const] : [],
    ],
    'tail-heavy': () => [
      ...margin < least + (most - least) / 4 ? [[1.6, {id: 'margin-low', ...bounds}] as const] : [],
      ...stallMargin !== undefined && stallMargin < nearStall ? [[1.8, {id: 'near-stall', ratio: stallMargin}] as const] : [],
      ...stallMargin !== undefined && stallMargin > farFromStall ? [[0.6, {id: 'far-from-stall', ratio: stallMargin}] as const] : [],
    ],
    'thrown-fast': () => own.speed > 1.1 * right.speed ? [[3, {id: 'hand-faster', speed: own.speed, right: right.speed}]] : [],
    'thrown-slow': () => own.speed < 0.9 * right.speed ? [[3, {id: 'hand-slower', speed: own.speed, right: right.speed}]] : [],
    'thrown-up': () => own.angle + own.attack > right.angle + right.attack + 0.07 ? [[3, {id: 'hand-steeper', angle: own.angle, right: right.angle}]] : [],
    'thrown-down': () => own.angle + own.attack < right.angle + right.attack - 0.07 ? [[3, {id: 'hand-flatter', angle: own.angle, right: right.angle}]] : [],
    'windy': () => Math.abs(design.launch.wind) >= windy ? [[6, {id: 'wind', wind: design.launch.wind}]] : [],
    'little-dihedral': () => {
      const motion = motionOf(design);
      return !motion.ok ? [] : motion.value.turn === 'tightens' ? [[2, {id: 'tightens'}]] : [[0.5, {id: 'rolls-out'}]];
    },
    'small-fin': () => {
      const motion = motionOf(design);
      return !motion.ok ? [] : motion.value.wags === 'on' ? [[2, {id: 'wags'}]] : motion.value.wags === 'not' ? [[0.4, {id: 'dies-away'}]] : [];
    },
    'soft-wing': () => {
      const strength = wingStrength(design);
      return strength.ok && strength.value.holds !== 'yes' ? [[2.5, {id: 'folds'}]] : [];
    },
  };
  return weights[cause]?.() ?? [];
}

/** A throw that turns the same way each time is not the hand's doing. */
export const everyTime = (cause: CauseId, {what}: Seen, past: readonly {readonly seen: Seen}[]): Weight[] =>
  cause === 'thrown-banked' && past.at(-1)?.seen.what === what ? [[0.3, {id: 'same-every-time'}]] : [];

/** A fault that hardly turns this plane is hardly why it turned. */
export function bySide(cause: CauseId, straight: Straightenings): Weight[] {
  const one = cause === 'crooked-fin' || cause === 'heavy-tip' || cause === 'twisted-wing' ? straight[cause] : undefined;
  return one ? [[Math.min(Math.max(one.turns / seenTurn, 0.15), 2), {id: 'turns-by', cause: cause as keyof Straightenings, fault: one.fault, turns: one.turns}]] : [];
}

/** Less than this of a speed nobody throws apart: common practice, no source. */
const tellable = 0.03;

/** A throw asked for faster than before: not the cure for one that was too fast, but what the plane has come to since. */
export function fasterNow(cause: CauseId, {right: {speed}}: ThrowStudy, history: readonly Past[]): Weight[] {
  if (blameOf[cause] !== 'throw' || cause === 'windy') return [];
  const other = history.flatMap(({right}) => (right !== undefined && Math.abs(right / speed - 1) > tellable ? [right] : [])).at(-1);
  return other !== undefined && other < speed ? [[1, {id: 'faster-now', speed, before: other}]] : [];
}
