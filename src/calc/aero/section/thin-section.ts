import type {Point} from '../../geometry/polygon/point.js';
import {good, refused, type Outcome} from '../../problem.js';

/** A section as thin-aerofoil theory sees it. Angles in rad from the x axis of its mean line. */
export interface ThinSection {
  /** The angle of attack without lift: less than 0 for a hollow underside. */
  readonly zeroLiftAngle: number;
  /** Moment coefficient about the quarter chord, the same at every angle; less than 0 turns the nose down. */
  readonly quarterChordMoment: number;
  /** The angle at which the air meets the leading edge smoothly, without a suction peak. */
  readonly idealAngle: number;
}

/** A board without any fold. */
export const flatSection: ThinSection = {zeroLiftAngle: 0, quarterChordMoment: 0, idealAngle: 0};

/**
 * Thin-aerofoil theory in closed form for a mean line of straight pieces, which is what a folded board is: every crease acts as
 * a sealed flap. With x = c (1 − cos θ)/2 and the slope s of each piece, Glauert's integrals become sums over the pieces,
 *
 * α₀ = (1/π) Σ s (Δθ − Δ sin θ), c_m = ½ Σ s (½ Δ sin 2θ − Δ sin θ), α_i = (1/π) Σ s Δθ.
 *
 * H. Glauert, The Elements of Aerofoil and Airscrew Theory (1926), chapters VII and IX; Abbott and von Doenhoff, Theory of
 * Wing Sections (1959), chapter 4. No viscosity: on real boards at Reynolds numbers below 10⁵ a fold near the trailing edge
 * does about 0.6 to 0.8 of this (from memory); no measurement of a sharply creased plate is known to the authors.
 *
 * Refused: 'mean-line-doubles-back' {point} where x does not grow from each point to the next.
 *
 * @param line from leading to trailing edge, in any unit of length
 */
export function thinSection(line: readonly Point[]): Outcome<ThinSection> {
  const first = line[0]?.x ?? 0;
  const chord = (line.at(-1)?.x ?? 0) - first;
  const thetaAt = (x: number): number => Math.acos(Math.min(1, Math.max(-1, 1 - 2 * (x - first) / chord)));
  let zeroLiftAngle = 0, quarterChordMoment = 0, idealAngle = 0;
  for (const [i, to] of line.entries()) {
    const from = line[i - 1];
    if (!from) continue;
    if (!(to.x > from.x)) return refused({code: 'mean-line-doubles-back', args: {point: i}});
    const slope = (to.y - from.y) / (to.x - from.x);
    const a = thetaAt(from.x), b = thetaAt(to.x);
    const sine = Math.sin(b) - Math.sin(a);
    zeroLiftAngle += slope * (b - a - sine) / Math.PI;
    quarterChordMoment += slope * ((Math.sin(2 * b) - Math.sin(2 * a)) / 2 - sine) / 2;
    idealAngle += slope * (b - a) / Math.PI;
  }
  return chord > 0 ? good({zeroLiftAngle, quarterChordMoment, idealAngle}) : refused({code: 'mean-line-doubles-back', args: {point: 0}});
}

/** Lift coefficient of a section at an angle of attack in rad: 2π (α − α₀). */
export const sectionLift = ({zeroLiftAngle}: ThinSection, angle: number): number => 2 * Math.PI * (angle - zeroLiftAngle);

/** The lift coefficient at which the leading edge has no suction peak. */
export const idealLift = (section: ThinSection): number => sectionLift(section, section.idealAngle);

/**
 * A smooth mean line as a fine polyline for {@link thinSection}: its points crowd towards both edges, where Glauert's
 * integrals are steepest. With 400 pieces the sums are good to five digits.
 *
 * @param height of the line over the chord, at x from 0 to 1
 */
export const meanLine = (height: (x: number) => number, pieces = 400): readonly Point[] =>
  Array.from({length: pieces + 1}, (_, i) => {
    const x = (1 - Math.cos(Math.PI * i / pieces)) / 2;
    return {x, y: height(x)};
  });
