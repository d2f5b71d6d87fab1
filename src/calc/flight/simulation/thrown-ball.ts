import {gravity} from '../../aero/air.js';

/**
 * How far away a ball lands that is thrown level, m: V √(2h/g). Galileo's parabola; the air slows a ball of a few grams noticeably only after several
 * metres. A strip of tape there teaches a hand what a speed feels like.
 */
export const ballLands = (speed: number, height: number): number => speed * Math.sqrt(2 * height / gravity);

/** The speed with which a ball was thrown level that landed so far away, m/s. */
export const ballSpeed = (distance: number, height: number): number => distance / Math.sqrt(2 * height / gravity);
