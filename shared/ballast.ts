/** A round piece of known mass that can be taped or glued to a nose. SI units. */
interface BallastPiece {
  readonly id: string;
  /** Across the widest part, m. */
  readonly diameter: number;
  /** m. */
  readonly thickness: number;
  readonly source: string;
}

/** A coin in use. Worn coins weigh a little less. */
export interface Coin extends BallastPiece {
  /** ISO 4217 code. */
  readonly currency: 'EUR' | 'GBP' | 'USD';
  /** What it is worth in its currency. */
  readonly value: number;
  /** kg, as struck. */
  readonly mass: number;
}

/** A flat steel washer. */
export interface Washer extends BallastPiece {
  /** The bolt it goes with. */
  readonly thread: string;
  /** Diameter of the hole, m. */
  readonly hole: number;
}

const eu = 'Council Regulation (EC) No 975/98; thickness from euro coin specification pages';
const us = 'United States Mint, coin specifications';
const uk = 'Royal Mint figures through secondary pages';

export const coins = [
  {id: 'eur-0.01', currency: 'EUR', value: 0.01, mass: 0.0023, diameter: 0.01625, thickness: 0.00167, source: eu},
  {id: 'eur-0.02', currency: 'EUR', value: 0.02, mass: 0.00306, diameter: 0.01875, thickness: 0.00167, source: eu},
  {id: 'eur-0.05', currency: 'EUR', value: 0.05, mass: 0.00392, diameter: 0.02125, thickness: 0.00167, source: eu},
  {id: 'eur-0.10', currency: 'EUR', value: 0.1, mass: 0.0041, diameter: 0.01975, thickness: 0.00193, source: eu},
  {id: 'eur-0.20', currency: 'EUR', value: 0.2, mass: 0.00574, diameter: 0.02225, thickness: 0.00214, source: eu},
  {id: 'eur-0.50', currency: 'EUR', value: 0.5, mass: 0.0078, diameter: 0.02425, thickness: 0.00238, source: eu},
  {id: 'eur-1', currency: 'EUR', value: 1, mass: 0.0075, diameter: 0.02325, thickness: 0.00233, source: eu},
  {id: 'eur-2', currency: 'EUR', value: 2, mass: 0.0085, diameter: 0.02575, thickness: 0.0022, source: eu},
  {id: 'usd-0.01', currency: 'USD', value: 0.01, mass: 0.0025, diameter: 0.01905, thickness: 0.00152, source: us},
  {id: 'usd-0.05', currency: 'USD', value: 0.05, mass: 0.005, diameter: 0.02121, thickness: 0.00195, source: us},
  {id: 'usd-0.10', currency: 'USD', value: 0.1, mass: 0.002268, diameter: 0.01791, thickness: 0.00135, source: us},
  {id: 'usd-0.25', currency: 'USD', value: 0.25, mass: 0.00567, diameter: 0.02426, thickness: 0.00175, source: us},
  {id: 'usd-0.50', currency: 'USD', value: 0.5, mass: 0.01134, diameter: 0.03061, thickness: 0.00215, source: us},
  {id: 'usd-1', currency: 'USD', value: 1, mass: 0.0081, diameter: 0.02649, thickness: 0.002, source: us},
  {id: 'gbp-0.01', currency: 'GBP', value: 0.01, mass: 0.00356, diameter: 0.0203, thickness: 0.00165, source: uk},
  {id: 'gbp-0.02', currency: 'GBP', value: 0.02, mass: 0.00712, diameter: 0.0259, thickness: 0.00203, source: uk},
  {id: 'gbp-0.05', currency: 'GBP', value: 0.05, mass: 0.00325, diameter: 0.018, thickness: 0.0017, source: uk},
  {id: 'gbp-0.10', currency: 'GBP', value: 0.1, mass: 0.0065, diameter: 0.0245, thickness: 0.00185, source: uk},
  {id: 'gbp-0.20', currency: 'GBP', value: 0.2, mass: 0.005, diameter: 0.0214, thickness: 0.0017, source: uk},
  {id: 'gbp-0.50', currency: 'GBP', value: 0.5, mass: 0.008, diameter: 0.0273, thickness: 0.00178, source: uk},
  {id: 'gbp-1', currency: 'GBP', value: 1, mass: 0.00875, diameter: 0.02343, thickness: 0.0028, source: uk},
  {id: 'gbp-2', currency: 'GBP', value: 2, mass: 0.012, diameter: 0.0284, thickness: 0.0025, source: uk},
] as const satisfies readonly Coin[];

const iso = 'ISO 7089 (plain washers, normal series)';

/** Hole, outside diameter and thickness are the nominal d₁, d₂ and h of the standard. */
export const washers = [
  {id: 'washer-m3', thread: 'M3', hole: 0.0032, diameter: 0.007, thickness: 0.0005, source: iso},
  {id: 'washer-m4', thread: 'M4', hole: 0.0043, diameter: 0.009, thickness: 0.0008, source: iso},
  {id: 'washer-m5', thread: 'M5', hole: 0.0053, diameter: 0.01, thickness: 0.001, source: iso},
  {id: 'washer-m6', thread: 'M6', hole: 0.0064, diameter: 0.012, thickness: 0.0016, source: iso},
  {id: 'washer-m8', thread: 'M8', hole: 0.0084, diameter: 0.016, thickness: 0.0016, source: iso},
  {id: 'washer-m10', thread: 'M10', hole: 0.0105, diameter: 0.02, thickness: 0.002, source: iso},
  {id: 'washer-m12', thread: 'M12', hole: 0.013, diameter: 0.024, thickness: 0.0025, source: iso},
] as const satisfies readonly Washer[];

/** Density of plain carbon steel, kg/m³: the figure washer mass tables are worked out with. */
export const steelDensity = 7850;

/** Mass of a coin or a washer in kg: a coin's as struck, a washer's from its ring of steel. */
export const massOf = (piece: Coin | Washer): number =>
  'mass' in piece
    ? piece.mass
    : steelDensity * Math.PI / 4 * (piece.diameter ** 2 - piece.hole ** 2) * piece.thickness;
