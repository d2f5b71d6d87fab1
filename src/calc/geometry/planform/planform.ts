import {good, type Outcome} from '../../problem.js';
import {integral, halfWing, type HalfWing, type Station} from './station.js';

/** A wing seen from above, both halves. Lengths in m, areas in m². "Back" is behind the leading edge at the root. */
export interface Planform {
  readonly span: number;
  readonly area: number;
  /** span² / area. */
  readonly aspectRatio: number;
  readonly rootChord: number;
  readonly tipChord: number;
  /** Tip chord over root chord. */
  readonly taper: number;
  /** area / span. */
  readonly meanChord: number;
  /** ∫ c² dy / ∫ c dy: the chord that stands for the whole wing in moments and balance. */
  readonly meanAerodynamicChord: number;
  /** How far out from the centre line the mean aerodynamic chord stands, on each half. */
  readonly meanAerodynamicChordAt: number;
  /** How far back the leading edge of the mean aerodynamic chord lies. */
  readonly meanAerodynamicChordBack: number;
  /** How far back the quarter point of the mean aerodynamic chord lies. */
  readonly quarterChordBack: number;
  /** How far back the centre of the area lies: where an even sheet of this outline balances. */
  readonly areaCentreBack: number;
}

/**
 * Areas and chords of a wing given by its half, exact for straight-edged panels. Refused as {@link halfWing} says.
 *
 * Mean aerodynamic chord c̄ = (2/S) ∫ c² dy, its place (2/S) ∫ c y dy and its leading edge (2/S) ∫ c x dy over a half:
 * Raymer, Aircraft Design: A Conceptual Approach; Etkin & Reid, Dynamics of Flight, appendix C (both from memory).
 */
export function planformOf(stations: readonly Station[]): Outcome<Planform> {
  const half = halfWing(stations);
  return half.ok ? good(measured(half.value)) : half;
}

const one = () => 1;
const at = (station: Station) => station.at;
const chord = (station: Station) => station.chord;
const back = (station: Station) => station.back;
const middle = (station: Station) => station.back + station.chord / 2;

function measured({root, tip, panels}: HalfWing): Planform {
  const over = (f: (at: Station) => number, g: (at: Station) => number) =>
    panels.reduce((sum, panel) => sum + integral(panel, f, g), 0);
  const half = over(chord, one);
  const span = 2 * tip.at, area = 2 * half;
  const meanAerodynamicChord = over(chord, chord) / half;
  const meanAerodynamicChordBack = over(chord, back) / half - root.back;
  return {
    span,
    area,
    aspectRatio: span * span / area,
    rootChord: root.chord,
    tipChord: tip.chord,
    taper: tip.chord / root.chord,
    meanChord: area / span,
    meanAerodynamicChord,
    meanAerodynamicChordAt: over(chord, at) / half,
    meanAerodynamicChordBack,
    quarterChordBack: meanAerodynamicChordBack + meanAerodynamicChord / 4,
    areaCentreBack: over(chord, middle) / half - root.back,
  };
}
