import {topic} from '../topic.js';

export const flightPathWorkingWords = topic('flight-path-working', {
  because: {
    speed: 'The speed at which lift and drag carry the weight along the glide: m is the mass, S the wing’s area, ρ the density of the air, γ the angle of the glide below level, C the lift coefficient at which nose and tail balance.',
    ball: 'A ball thrown level falls h in the time √(2h/g), however fast it flies; in that time it comes so far.',
    motion: 'The flight itself is followed in small steps: lift and drag bend and slow the way, the moment about the balance point turns the plane. D is drag, L lift, θ the pitch, M the moment and I the inertia.',
    steps: 'Steps are as long as an error of a hundred-millionth allows; what the plane loses in height and speed is what drag has taken.',
    stall: 'Beyond the stall the boards are taken as plates that the air has left. How exactly they get there is not known, so flights that stall are rougher estimates than those that do not.',
    left: 'Left out: gusts, the nearness of the ground, boards that bend, and any turn: the plane is taken to fly straight.',
    sure: 'Speeds are good to about a tenth, sink and distance to about a quarter.',
  },
  source: 'R. F. Stengel, Flight Dynamics (2004), sections 2.6 and 3.1; B. Etkin and L. D. Reid, Dynamics of Flight, equation 4.9,18; J. R. Dormand and P. J. Prince (1980) for the steps.',
  spoken: {
    speed: (speed: string) => `V equals the square root of two m g cosine gamma over rho S C: ${speed}`,
    ball: (a: {speed: string; height: string; distance: string}) => `x equals V times the square root of two h over g: ${a.speed} from ${a.height} gives ${a.distance}`,
    motion: 'The change of speed is minus drag over mass minus g sine gamma; of the way’s angle, lift minus weight times cosine gamma over m V; of the pitch’s rate, moment over inertia',
  },
  rows: {
    speed: 'Speed of the glide', angle: 'Glide below level', ratio: 'Glide ratio', sink: 'Sink', mass: 'Mass', margin: 'Static margin', ball: 'The ball lands at',
  },
});
