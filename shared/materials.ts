/** What a board is made of and weighs, before anyone has weighed the sheet at hand. SI units. */
export interface Board {
  readonly id: string;
  /** m. */
  readonly thickness: number;
  /** Mass of a sheet over its area, kg/m². */
  readonly arealMass: number;
  /** The share of the mass that is in both skins together; 0 for bare foam. */
  readonly skinShare: number;
  readonly source: string;
}

/** A quantity that differs from maker to maker: the figure to start from and how far it may be out. */
export interface Spread {
  readonly usual: number;
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

/** Both skins of a 100 cm² sample of paper-faced board weighed 1.545 g, its foam 1.364 g. */
const skinShare = 1.545 / (1.545 + 1.364);

export const boards = [
  {
    id: 'paper-faced-light', thickness: 0.0048, arealMass: 0.297, skinShare,
    source: 'a 20 × 30 in sheet weighed at 115 g, published 2013; skins from a weighed sample (common practice, no standard)',
  },
  {
    id: 'paper-faced', thickness: 0.005, arealMass: 0.45, skinShare,
    source: 'midway between a light and a heavy board (common practice, no source)',
  },
  {
    id: 'paper-faced-heavy', thickness: 0.005, arealMass: 0.6045, skinShare,
    source: '0.39 g/in², published for a heavy board; skins from a weighed sample (common practice, no standard)',
  },
  {
    id: 'bare-foam', thickness: 0.005, arealMass: 0.15, skinShare: 0,
    source: 'extruded polystyrene of 30 kg/m³ ± 5 %, a maker’s data sheet',
  },
] as const satisfies readonly Board[];

export type BoardId = (typeof boards)[number]['id'];

/** Mass over area of paper-faced board about 5 mm thick, kg/m²: a factor of two, so weigh a sheet. */
export const boardArealMass = {
  usual: 0.45, least: 0.3, most: 0.6,
  source: 'sheets weighed between 297 and 605 g/m² (common practice, no standard)',
} as const satisfies Spread;

/** Density of the foam between the skins, kg/m³. */
export const coreDensity = {
  usual: 30.3, least: 28.5, most: 31.5,
  source: 'a weighed sample with a 4.5 mm core; extruded polystyrene data sheets say 30 ± 5 %',
} as const satisfies Spread;

/** Density of hot-melt glue (ethylene vinyl acetate), kg/m³. */
export const hotMeltDensity = {
  usual: 950, least: 930, most: 980,
  source: 'typical of ethylene vinyl acetate hot melts (from memory)',
} as const satisfies Spread;

/** Diameters of a bead of hot-melt glue as hands lay it, m: a thin, a usual and a thick one. */
export const beadDiameter = {
  usual: 0.003, least: 0.002, most: 0.004,
  source: 'common practice, no source',
} as const satisfies Spread;

/** Density of modelling clay, kg/m³. */
export const clayDensity = {
  usual: 2000, least: 1600, most: 2000,
  source: 'plasticine, 100 g in 50 cm³ (a physics teaching page); commercial modelling clays are 1600 to 2000',
} as const satisfies Spread;

/** Mass of a round glue bead over its length, kg/m. */
export const beadMassPerLength = (diameter: number, density: number = hotMeltDensity.usual): number =>
  density * Math.PI / 4 * diameter ** 2;
