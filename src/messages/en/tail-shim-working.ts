import {topic} from '../topic.js';

export const tailShimWorkingWords = topic('tail-shim-working', {
  because: {
    flush: 'A flat slip touches the tilted board with one edge only, its upper edge nearest to the pivot: d is the angle, c the chord from the pivot, w the slip’s width front to rear, h its height; the least root counts.',
    edges: 'From the heights of both edges over the body.',
    difference: 'i is the angle of each to the body, front edge up.',
    speed: 'The speed comes from the flight model: the lift at which nose and tail balance.',
  },
  spoken: {
    flush: (a: {height: string; angle: string}) => `c sine d minus w tangent d equals h: ${a.height} gives ${a.angle}`,
    edges: 'd equals the arc sine of rear height minus front height over c',
    difference: (difference: string) => `the difference is the wing’s angle minus the tail’s: ${difference}`,
  },
  rows: {angle: 'Angle, front edge up', height: 'Height of the slips', stack: 'Nearest stack', rise: 'Raised edge over the other', difference: 'Wing less tail', speed: 'Speed'},
  source: 'Plane trigonometry, worked out for this element; R. F. Stengel, Flight Dynamics (2004), section 2.6, for the speed.',
});
