import {topic} from '../topic.js';

/** Words of the flight check's working, loaded for those who open it. */
export const flightWorkingWords = topic('flight-working', {
  because: {
    loading: 'm: mass; S: area of the wing as it flies. The cube loading divides by the area to the power 3/2, so that it does not grow with the size of a plane.',
    margin: (band: string) => `x: balance, x with n: neutral point, c̄: mean chord. The neutral point is that of a vortex lattice over wing, tailplane and fins, with the body’s lift after R. T. Jones, NACA Report 835 (1946); good to about ${band} either way.`,
    handbook: (a: {lattice: string; handbook: string}) => `A check beside it: handbook formulas, without the body, put the neutral point at ${a.handbook}; the lattice with the body at ${a.lattice}.`,
    volumes: 'S with t and f: tailplane and fins; l: how far back their quarter chord stands, the tailplane’s from the wing’s, the fins’ from the balance; b: span. Usual ranges: M. Drela, Basic Aircraft Design Rules, MIT 16.01 (2006); that of the fins quoted from memory.',
    glide: 'Weight, lift and drag in balance: R. F. Stengel, Flight Dynamics (2004), section 2.6. γ: the glide’s angle below level; ρ: density of the air at its temperature and height above the sea, ISO 2533; the lift is that at which moments about the balance cancel.',
    drag: (a: {parasite: string; induced: string; suction: string}) =>
      `The drag is friction and blunt edges ${a.parasite}, the price of a finite span ${a.induced}, and suction that a sharp front edge loses ${a.suction}. Little is measured on boards at such speeds: sink is good to about a quarter, speed to about a tenth.`,
    reynolds: 'V: speed, c: mean chord, ν: how sticky the air is.',
    roll: 'Γ: dihedral in degrees, spread evenly over the span; C with L: lift coefficient; l: from the balance to the fins. About 5 is neutral, 3 to 4 still flies with a pilot: M. Drela, after Blaine Rawdon.',
    section: 'The section of the middle: s: slope of each straight piece of the folded board; θ: from 0 at the front edge to π at the rear one, x = c (1 − cos θ)/2. H. Glauert, The Elements of Aerofoil and Airscrew Theory (1926).',
    trim: 'α: angle of attack of the body’s upper edge; C with m: moment about the balance, on the mean chord; with 0: at α = 0, with α: for each radian. All four from the vortex lattice over wing, tailplane and fins.',
    phugoid: (period: string | undefined) => `The swing of a plane that keeps its angle of attack: F. W. Lanchester, Aerodonetics (1908). ${
      period === undefined ? 'The whole equations of motion have this plane not swing at all.' : `The whole equations of motion give ${period}: a light plane does not keep it.`}`,
    spiral: 'C with l and n: rolling and yawing moment; with β, p and r: for each radian of sideslip, of rolling and of yawing. More than nothing rolls out of a bank: B. Etkin and L. D. Reid, Dynamics of Flight, section 6.8, with the glide’s angle kept.',
    bending: (place: string) =>
      `${place}: there the wing has least to spare. M: bending moment in the glide, the sum over the strips of the wing outside that place of F, what the air does to each, times y, how far out it does it; less the wing’s own share of the weight, m with w of m, which it carries where it is. M with b: what the board takes, with the middle of its range. r: how many times what bends the wing at twice the throwing speed, four times M; below 1 it folds.`,
    carries: {
      'skins': 'h: thickness of the board, c with b: chord there. Both skins are whole: one is pressed and one pulled, and the weaker gives way at n for each millimetre of its width. The elementary theory of sandwich beams.',
      'skin-and-foam': 'h: thickness of the board, c with b: chord there. One skin is cut or peeled off: it bends about the other, and the foam takes up to σ at the open side, evenly less towards the skin. Half σ over h, two thirds of h away: a third of σ h². The elementary theory of beams.',
      'foam': 'h: thickness of the board, c with b: chord there. Foam alone, from σ on one side through nothing in the middle to σ on the other: a sixth of σ h². The elementary theory of beams.',
    },
    strength: 'Bending in the glide, and at twice the throwing speed, when the load is four times as large. Foam of this kind takes 0.9 to 2.8 bar in pressing and 2.1 to 5.2 bar in bending (makers’ data for polystyrene foams on either side of it); a paper skin 1.5 to 4 N for each millimetre of its width (common practice, no source).',
    practice: 'Ranges marked common practice have no source: they are what hand-launched gliders of foam board come out at.',
  },
  strength: {caption: 'What bends the wing, in N·mm', place: 'Where', glide: 'In the glide', fast: 'Twice the speed', takes: 'Such board takes', middle: 'The middle', joint: (at: string) => `Joint at ${at}`, peeled: (place: string) => `${place}, upper skin peeled`, whole: (place: string) => `${place}, skins whole`},
  spoken: {
    wing: (value: string) => `wing loading: mass over wing area, ${value}`,
    cube: (value: string) => `wing cube loading: mass over wing area to the power three halves, ${value}`,
    margin: (value: string) => `static margin: neutral point less balance, over the mean chord, ${value}`,
    tail: (value: string) => `tail volume: tail area times arm over wing area times mean chord, ${value}`,
    fin: (value: string) => `fin volume: fin area times arm over wing area times span, ${value}`,
    angle: (value: string) => `tangent of the glide angle: drag coefficient over lift coefficient, ${value}`,
    speed: (value: string) => `speed: square root of twice the weight times the cosine of the glide angle over density times area times lift coefficient, ${value}`,
    sink: (value: string) => `sink: speed times the sine of the glide angle, ${value}`,
    zeroLift: (value: string) => `angle without lift: sum over the pieces of slope times the step of theta less the step of its sine, over pi, ${value}`,
    sectionMoment: (value: string) => `section’s moment about the quarter chord: half the sum over the pieces of slope times half the step of the sine of twice theta less the step of its sine, ${value}`,
    attack: (value: string) => `angle of attack: less moment at no angle over moment for each radian, ${value}`,
    lift: (value: string) => `lift coefficient: lift at no angle and lift for each radian times the angle of attack, ${value}`,
    phugoid: (value: string) => `Lanchester’s period: pi times the square root of two times speed over gravity, ${value}`,
    pair: (a: {a: string; b: string; c: string; d: string; value: string}) => `part of the spiral criterion: C ${a.a} times C ${a.b} less C ${a.c} times C ${a.d}, ${a.value}`,
    spiral: (value: string) => `spiral criterion, from the derivatives of rolling and yawing moment, ${value}`,
    reynolds: (value: string) => `Reynolds number: speed times chord over kinematic viscosity, ${value}`,
    bending: (value: string) => `bending moment in the glide: one less the wing’s share of the mass, times the sum of forces times how far out they act, ${value}`,
    takes: {
      'skins': (value: string) => `what the board takes: force of a skin for each millimetre times thickness times chord, ${value}`,
      'skin-and-foam': (value: string) => `what the board takes: stress of the foam times thickness squared times chord over three, ${value}`,
      'foam': (value: string) => `what the board takes: stress of the foam times thickness squared times chord over six, ${value}`,
    },
    reserve: (value: string) => `reserve: what the board takes over four times the bending moment, ${value}`,
    roll: (value: string) => `spiral rule: fin arm over span times dihedral in degrees over lift coefficient, ${value}`,
  },
  change: {
    caption: 'What a small change does', what: 'Change', speed: 'Speed', ratio: 'Glide ratio', margin: 'Static margin',
    noseGram: 'One more gram at the nose', tailMillimetre: 'Tail’s rear edge one millimetre higher', foldDegree: 'Wing folded one degree further',
  },
});
