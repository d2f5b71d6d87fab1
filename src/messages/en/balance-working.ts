import {topic} from '../topic.js';

/** Words of the working, which is loaded for those who open it. */
export const balanceWorkingWords = topic('balance-working', {
  items: {
    'wing': 'Wing', 'wing-glue': 'Glue in its creases', 'body': 'Body', 'body-glue': 'Glue between its layers', 'tailplane': 'Tailplane', 'fins': 'Fins',
    'tail-glue': 'Glue at the tail', 'tail': 'Tail with fins', 'bands': 'Rubber bands', 'tape': 'Tape', 'plane': 'The plane as measured, without weights fitted', 'weight': 'Fitted weight',
  },
  moments: {caption: 'Moments about the nose', item: 'What', mass: 'Mass', at: 'From the nose', moment: 'Moment', total: 'Together', weighed: 'weighed', about: 'estimated'},
  because: {
    balance: 'The plane hangs level about the place where the moments of all masses cancel: their sum over the whole mass.',
    measured: 'Measured as a whole: no need to add up the parts.',
    slopes: 'Lift slope: how fast lift grows as the nose turns up. Helmbold’s formula (1942), with sweep after Lowry and Polhamus, NACA TN 3911 (1957). A is span over mean chord; Λ the sweep at half chord.',
    plates: 'Fins on the ends of the tailplane act as end plates and make it work like a longer one: Hoerner, Fluid-Dynamic Drag (1965). h is their height, b the tail’s span.',
    downwash: 'Downwash: the wing turns the air down, so the tail feels only part of each turn of the nose. USAF Stability and Control DATCOM, 4.4.1: K with A allows for the aspect ratio, with λ for the taper, with H for how far back the tail is; l from quarter chord to quarter chord.',
    volume: 'Tail volume: how much tail there is and how far back, over the wing. S are areas as they fly, c̄ the wing’s mean chord.',
    neutral: 'Neutral point: where extra lift acts when a gust turns the nose up. Ahead of it the plane steadies itself. Etkin and Reid, Dynamics of Flight; a is the lift slope of the whole plane, η = 0.9 for air that the wing has slowed.',
    model: (a: {model: string; handbook: string; apart: string; usual: string}) =>
      `The answer takes the neutral point from the flight model, a vortex lattice with the body: ${a.model} behind the wing’s front edge. The handbook formulas above, without the body, are a check beside it: ${a.handbook}, ${a.apart} of the mean chord away; up to ${a.usual} is usual.`,
    band: (band: string) => `Either is good to about ${band} both ways, so throw gently at first.`,
    target: 'Static margin: how far the balance lies ahead of the neutral point, in mean chords. 15 to 30 % suits a beginner’s plane (common practice).',
    back: (back: string, chord: string) => `The mean chord is ${chord}; its front edge lies ${back} behind the front edge in the middle, from which fingers measure.`,
    off: 'Less than nothing: so much comes off there.',
    add: 'Moments about the wanted balance point, all places from the nose: x now, x with T wanted, w the weight’s own centre, M the mass of the plane.',
    pieces: 'With whole pieces the mass is fixed, so the same equation is solved for the place.',
  },
  source: 'The formulas are quoted from memory of the books named and checked against their published examples.',
  spoken: {
    balance: (at: string) => `the balance point is the sum of the moments over the whole mass: ${at} from the nose`,
    slope: (a: {of: string; slope: string}) => `lift slope of the ${a.of}: two pi A over two plus the square root of four plus A squared over cosine squared of the sweep, ${a.slope} per radian`,
    wing: 'wing', tail: 'tail',
    plates: (aspect: string) => `aspect ratio of the tail with its end plates: ${aspect}`,
    downwashPlace: (value: string) => `factor for the place of the tail: one over the cube root of twice the arm over the span, ${value}`,
    downwash: (value: string) => `downwash gradient: ${value}`,
    volume: (value: string) => `tail volume: tail area times arm over wing area times mean chord, ${value}`,
    neutral: (at: string) => `neutral point: a quarter plus tail volume times eta times the ratio of lift slopes times one minus the downwash gradient, ${at} mean chords`,
    margin: (margin: string) => `static margin now: ${margin}`,
    add: (a: {mass: string}) => `mass to add: whole mass times the distance to move over the arm of the weight, ${a.mass}`,
    place: (at: string) => `place of the pieces: ${at} from the nose`,
  },
  rows: {
    now: 'Balance now, behind the wing’s front edge', then: 'Balance then', from: 'Target from', to: 'Target to', neutral: 'Neutral point', margin: 'Static margin now', marginThen: 'Static margin then',
    mass: 'Mass now', massThen: 'Mass then', place: 'The weight, from the nose', weight: 'The weight', wing: 'Wing loading then', cube: 'Wing cube loading then', volume: 'Tail volume',
  },
});
