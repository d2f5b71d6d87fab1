import {topic} from '../topic.js';

export const trimAdviceWorkingWords = topic('trim-advice-working', {
  spoken: {
    share: 'the share of a cause is its weight over the sum of all weights',
    margin: (a: {margin: string}) => `the static margin is the distance from the balance to the neutral point over the mean chord: ${a.margin}`,
    mass: 'weight at the nose: mass times shift of the balance, over the distance from the weight to the balance then',
    ball: (a: {speed: string; distance: string}) => `a ball thrown level at ${a.speed} lands ${a.distance} away`,
  },
  because: {
    share: 'w is how often a cause is behind what was seen, times a factor for each thing known of this plane. Both are common practice, no source: believe the order, not the figures.',
    margin: 'x is measured behind the wing’s front edge: N the neutral point, G the balance; c is the mean chord.',
    mass: 'm is the plane’s mass, s the shift wanted, d from the weight to the balance afterwards. How far the balance and the tail have to go follows from the flight model; each change is flown there before it is offered.',
    ball: 'V is the speed of the hand, h its height, g 9.81 m/s².',
  },
  rows: {margin: 'Static margin', speed: 'Glide', right: 'Right throw', height: 'Height of the hand'},
  source: 'R. F. Stengel, Flight Dynamics (2004), for balance and trim; what is usual is common practice, no source.',
});
