import type {GliderDesign} from '../design/design.js';
import type {FlyingPlane} from './flying-plane.js';

/** S_t l / (S c̄): how much tailplane there is and how far back it stands. The usual definition; l from quarter chord to quarter chord. */
export const tailVolume = ({aero: {shape: {wing, tail, arm}}}: FlyingPlane): number =>
  tail.area * arm / (wing.area * wing.meanAerodynamicChord);

/**
 * S_f l_f / (S b): the same for the fins together, l_f from the balance point back to the quarter point of the fin's mean chord. 0 without fins.
 * M. Drela, Basic Aircraft Design Rules, MIT 16.01 (2006).
 */
export function finVolume({balance, aero: {shape: {wing}}}: FlyingPlane, {tail, arrangement}: GliderDesign): number {
  const {count, height, chord, tipChord = chord} = tail.fins;
  const area = count * height * (chord + tipChord) / 2;
  const mean = 2 / 3 * (chord + tipChord - chord * tipChord / (chord + tipChord));
  // rear edges are flush with the tailplane's: two stand at its tips, one in the middle
  const rear = count === 2 ? tail.sweep + (tail.tipChord ?? tail.chord) : tail.chord;
  const quarter = arrangement.tailAt - arrangement.wingAt + rear - 3 / 4 * mean;
  return area * (quarter - balance) / (wing.area * wing.span);
}
