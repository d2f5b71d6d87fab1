/** What the air does to a plane: N and N m, lift square to the way through the air, the moment about the balance point with the nose up positive. */
export interface Loads {
  readonly lift: number;
  readonly drag: number;
  readonly moment: number;
}

/** What turns a plane nose up and down: nothing of it where a plane is taken to hold its angle of attack. */
export interface Pitching {
  /** kg m², the air that turns along counted. */
  readonly inertia: number;
  /** Lift and nose-up moment for each m/s² of speed across the boards, kg and kg m: air that is moved, and downwash that reaches the tail late. */
  readonly lagLift: number;
  readonly lagMoment: number;
  /** Moment against turning fast, on the square of the rate, kg m². */
  readonly crossFlow: number;
}

/** All that a throw needs to know of a plane. SI units, angles in rad. */
export interface Airframe {
  readonly mass: number;
  readonly gravity: number;
  readonly pitching: Pitching | undefined;
  /** At a speed through the air, an angle of attack from −π to π, and a rate of pitch. */
  loads(speed: number, attack: number, rate: number): Loads;
}

/** A plane with constant coefficients that holds its angle of attack, as in F. W. Lanchester's Aerodonetics (1908). */
export function holdingAirframe({mass, area, lift, drag, density, gravity}: {
  readonly mass: number; readonly area: number; readonly lift: number; readonly drag: number; readonly density: number; readonly gravity: number;
}): Airframe {
  return {
    mass, gravity, pitching: undefined,
    loads(speed) {
      const force = density * speed ** 2 / 2 * area;
      return {lift: force * lift, drag: force * drag, moment: 0};
    },
  };
}
