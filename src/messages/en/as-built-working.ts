import {topic} from '../topic.js';

export const asBuiltWorkingWords = topic('as-built-working', {
  because: {
    hollow: 'd: depth of the hollow over the ruler; f: the fold; a and b: the lower face from each edge to the crease, in a closed groove shorter than the board by half the groove. Several creases share the fold alike.',
    tips: 'h: height of a tip over the bench; the panels beyond each joint are turned up by one and the same share of their planned angles until they reach it. The mean of both sides flies, their difference hangs the body aside.',
    tail: 'i: angle of the tailplane, front edge up; z with r and f: its rear and front edge; c: its chord. The wing’s the same way.',
    skew: 'ψ: the wing askew; d with l and r: left and right tip to the tail; s: half the span as it flies; l: along the body. A bowed body turns the fins by twice its bow over its free length.',
    supports: 'x: balance; x with f and r: the supports; m with r: what the rear one carries. The law of the lever.',
    truth: 'A small step either way, flown by the model of the flight check; turns by following the plane with the step, as the throw does, until it lands from the hand’s height.',
  },
  spoken: {
    hollow: (a: {hollow: string; fold: string}) => `the depth is a b sine f over the root of a squared plus b squared plus two a b cosine f: ${a.hollow} comes from a fold of ${a.fold}`,
    tail: (value: string) => `the angle is minus the arc sine of rear less front height over chord: ${value}`,
    skew: (value: string) => `the sine of the skew is left distance squared less right distance squared over four s l: ${value}`,
    supports: 'the balance is the front support plus the distance between the supports times what the rear one carries over the whole mass',
  },
  rows: {planned: 'Plan', measured: 'As built', caption: 'What was measured in place of the plan', what: 'Dimension'},
  source: 'Plane trigonometry and the lever, worked out for this element; the flight model is that of the flight check.',
});
