import {topic} from '../topic.js';

export const flightPathWorkingWords = topic('flight-path-working', {
  because: {
    speed: 'The speed at which lift and drag carry the weight along the glide: m is the mass, S the wing’s area, ρ the density of the air, γ the angle of the glide below level, C the lift coefficient at which nose and tail balance.',
    ball: 'A ball thrown level falls h in the time √(2h/g), however fast it flies; in that time it comes so far.',
    motion: 'The flight itself is followed in small steps: lift and drag bend and slow the way, the moment about the balance point turns the plane. D is drag, L lift, θ the pitch, M the moment and I the inertia.',
    steps: 'Steps are as long as an error of a millionth allows; what the plane loses in height and speed is what drag has taken.',
    stall: 'Beyond the stall the boards are taken as plates that the air has left. How exactly they get there is not known, so flights that stall are rougher estimates than those that do not.',
    left: 'Left out: gusts, the nearness of the ground, and boards that bend. Only a plane that is said to be crooked turns.',
    turn: 'The turn: a fin turned aside, a wing twisted or a weight at a tip rolls and yaws the plane; sideslip, roll and yaw do the rest, all six ways to move together. Loads to the side are taken as straight, so a turn that gets very tight is a rougher estimate.',
    steady: 'In a steady turn the bank φ, the speed and the radius R, half of what the circle is across, belong together; the air’s force on fins and body changes that by some hundredths.',
    sure: 'Speeds are good to about a tenth, sink and distance to about a quarter.',
  },
  source: 'R. F. Stengel, Flight Dynamics (2004), sections 2.6 and 3.1; B. Etkin and L. D. Reid, Dynamics of Flight, equations 4.7,1 to 4.7,4 and 4.9,18; J. R. Dormand and P. J. Prince (1980) for the steps.',
  spoken: {
    steady: (a: {bank: string; speed: string; radius: string}) => `tangent phi equals V squared over g R: ${a.speed} and ${a.radius} give ${a.bank}`,
    speed: (speed: string) => `V equals the square root of two m g cosine gamma over rho S C: ${speed}`,
    ball: (a: {speed: string; height: string; distance: string}) => `x equals V times the square root of two h over g: ${a.speed} from ${a.height} gives ${a.distance}`,
    motion: 'The change of speed is minus drag over mass minus g sine gamma; of the way’s angle, lift minus weight times cosine gamma over m V; of the pitch’s rate, moment over inertia',
  },
  rows: {
    speed: 'Speed of the glide', angle: 'Glide below level', ratio: 'Glide ratio', sink: 'Sink', mass: 'Mass', margin: 'Static margin', ball: 'The ball lands at', bank: 'Bank at the end', across: 'Circle at the end, across', turned: 'Turned by',
  },
});
