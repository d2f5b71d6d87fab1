/**
 * The flight model, for pages and programs of one's own: balance, loads in the air, trim and glide, motion, the throw and its turn, the strength of
 * the wing, what was measured on the finished plane, and what to change after a throw. SI units; as `glider-elements/calc`, without a DOM.
 */
export {planeNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
export type {PlaneNeutralPoint} from '../aero/handbook/plane-neutral-point.js';
export {balancePlan} from '../balance/balance-plan.js';
export type {BalancePlan, WeightsAtHand} from '../balance/balance-plan.js';
export {pieceOf, pieces} from '../balance/pieces.js';
export {planeBalance} from '../balance/plane-balance.js';
export {weightsForBalance} from '../balance/weights-for-balance.js';
export type {Put, Taken, WeightsForBalance} from '../balance/weights-for-balance.js';
export type {Balanced, PlaneBalance, Target} from '../balance/plane-balance.js';

export {airAt, usualAir} from '../aero/air.js';
export {airOf} from './air-of.js';
export type {Air} from '../aero/air.js';
export {flyingPlane, loadedWith, neutralPointBand} from './flying-plane.js';
export type {FlyingPlane} from './flying-plane.js';
export {flightOf, tailForSpeed} from './flight.js';
export type {Flight, TailSetting, Trim} from './flight.js';
export type {Glide} from './glide.js';
export {motionOf} from './motion.js';
export type {Mode, Motion} from './motion.js';
export {sensitivitiesOf} from './sensitivities.js';
export type {Change, Sensitivities} from './sensitivities.js';
export {balanceFirst} from './balance-first.js';
export type {BalanceFirst} from './balance-first.js';
export {flightCheck} from './flight-check.js';
export type {FlightCheck, Measure} from './flight-check.js';
export {usualRanges} from './usual-ranges.js';
export type {MeasureId, UsualRange} from './usual-ranges.js';
export {wingStrength} from './wing-strength.js';
export type {BendingAt, WingStrength} from './wing-strength.js';
export {shimStudy, slipsUnder, tailSettingFor} from './slips.js';
export type {Edge, SetBoard, ShimStudy, SlipPlacing, Surface} from './slips.js';

export {throwStudy} from './simulation/throw-study.js';
export type {Flown, ThrowStudy} from './simulation/throw-study.js';
export {fly, throwLimits} from './simulation/throw.js';
export type {FlightOptions, Throw} from './simulation/throw.js';
export {airframeOf} from './simulation/plane-airframe.js';
export type {Airframe} from './simulation/airframe.js';
export type {Moment, Track} from './simulation/track.js';
export {ballLands, ballSpeed} from './simulation/thrown-ball.js';
export {turnSensitivities, turnTrack} from './simulation/turning.js';
export type {TurnEffect, TurnOptions, TurnPoint, TurnSensitivities, TurnTrack} from './simulation/turning.js';
export type {Crooked} from './simulation/crooked.js';

export {asBuilt} from '../as-built/as-built.js';
export type {AsBuilt, Lopsided, Replaced} from '../as-built/as-built.js';
export {balanceOnSupports} from '../as-built/on-supports.js';
export type {OnSupports} from '../as-built/on-supports.js';
export {tolerancesOf} from '../as-built/tolerances.js';
export type {Steps, Truth} from '../as-built/tolerances.js';

export {adviceFor} from '../trim-advice/advice.js';
export type {Advice, Cause} from '../trim-advice/advice.js';
export {sights} from '../trim-advice/seen.js';
export type {Past, Seen, Sight} from '../trim-advice/seen.js';
