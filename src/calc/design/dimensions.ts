import type {QuantityKind} from '../units/kinds.js';

/** A row of the table: one number. `default: undefined` is a number the plane can do without, such as a weighing. */
export interface NumberRow {
  readonly kind: QuantityKind;
  readonly default: number | undefined;
  /** Values beyond these are unusual for a hand-launched glider; nothing is refused for it. */
  readonly sensible: readonly [number, number];
  /** Values beyond these are refused at their field. */
  readonly hard: readonly [number, number];
}

/** A row of the table: one of a few words. */
export interface ChoiceRow {
  readonly choices: readonly string[];
  readonly default: string;
}

/** A row of the table: free text, never read by a calculation. */
export interface TextRow {
  readonly text: true;
  readonly default: string;
  readonly longest: number;
}

/** One number of each item of a list, in the order in which an item is written: `8 g @ 20 mm`. */
export interface ListField {
  readonly name: string;
  readonly kind: QuantityKind;
  readonly hard: readonly [number, number];
}

/** A row of the table: a list, each item one or more numbers. */
export interface ListRow {
  readonly list: readonly ListField[];
  readonly default: readonly Readonly<Record<string, number>>[];
  readonly most: number;
}

export type DimensionRow = NumberRow | ChoiceRow | TextRow | ListRow;

/** A thousandth by division: `700 / 1000` is the number that `0.7` reads as, `700 * 1e-3` is not. */
const milli = (n: number): number => n / 1000;
const deg = Math.PI / 180;

/** A distance along the plane may not be negative and may not pass ten metres. */
const length = <D extends number | undefined>(value: D, least: number, most: number, hardLeast = 0.1, hardMost = 10_000) =>
  ({kind: 'length', default: (value === undefined ? undefined : milli(value)) as D,
    sensible: [milli(least), milli(most)], hard: [milli(hardLeast), milli(hardMost)]}) as const;

const mass = <D extends number | undefined>(value: D, least: number, most: number, hardLeast = 0) =>
  ({kind: 'mass', default: (value === undefined ? undefined : milli(value)) as D,
    sensible: [milli(least), milli(most)], hard: [milli(hardLeast), 10]}) as const;

const ratio = <D extends number | undefined>(value: D, sensible: readonly [number, number], hard: readonly [number, number]) =>
  ({kind: 'ratio', default: value, sensible, hard}) as const;

const incidence = (sensible: readonly [number, number]) =>
  ({kind: 'angle', default: 0, sensible: [sensible[0] * deg, sensible[1] * deg], hard: [-20 * deg, 20 * deg]}) as const;

const speed = <D extends number | undefined>(value: D, sensible: readonly [number, number], hard: readonly [number, number]) =>
  ({kind: 'speed', default: value, sensible, hard}) as const;

const count = (value: number, most: number, hardMost = most) =>
  ({kind: 'count', default: value, sensible: [1, most], hard: [0, hardMost]}) as const;

/**
 * Every dimension of a glider, once: what it is called, what kind of quantity it is, where it starts, what is usual and
 * what is refused. Attributes, fields, checks, files, documentation and the keys of the words all come from here.
 *
 * SI throughout: metres, kilograms, radians. Distances along the plane are measured from the nose, backwards, unless the
 * row belongs to the wing, whose own distances start at its leading edge or at its centre line.
 */
export const dimensions = {
  'name': {text: true, default: '', longest: 80},

  'board.length': length(700, 300, 1500),
  'board.width': length(500, 200, 1100),
  'board.thickness': length(5, 2, 10, 0.1, 100),
  /** A sheet on the kitchen scale: replaces the estimate from `board.arealMass`. */
  'board.sheetMass': mass(undefined, 40, 400, 1),
  'board.arealMass': {kind: 'areal-mass', default: 0.45, sensible: [0.25, 0.7], hard: [0.01, 10]},
  /** What is left of the thickness at an edge pressed thin. */
  'board.pressedEdge': length(1.5, 0.5, 4),
  /** The share of the two skins in the mass of the board: what peeling one face off saves is half of it. */
  'board.skinShare': ratio(0.53, [0.3, 0.65], [0, 0.95]),
  'board.margin': length(0, 0, 20, 0, 1000),
  'board.gap': length(1, 0, 5, 0, 100),
  /** Along the board's length, across it, or none: parts lie lengthwise along it. */
  'board.grain': {choices: ['none', 'length', 'width'], default: 'none'},

  'wing.span': length(660, 300, 1200),
  'wing.chord': length(120, 60, 200),
  'wing.tipChord': length(undefined, 40, 200),
  /** How far the tip's leading edge lies behind the root's. */
  'wing.sweep': length(0, -40, 150, -2000, 2000),
  /** Corners of the planform between root and tip: chord, distance from the centre line, leading edge set back. */
  'wing.stations': {
    list: [
      {name: 'chord', kind: 'length', hard: [1e-4, 10]},
      {name: 'at', kind: 'length', hard: [1e-4, 10]},
      {name: 'back', kind: 'length', hard: [-2, 2]},
    ], default: [], most: 8,
  },
  /** Distances behind the leading edge, on the board as cut. */
  'wing.creases': {list: [{name: 'at', kind: 'length', hard: [1e-4, 10]}], default: [{at: 0.048}], most: 6},
  /** Whether the groove closes as the panel rises (whole skin on the bench) or a slit opens (whole skin facing up). */
  'wing.foldFace': {choices: ['closing', 'opening'], default: 'closing'},
  /** Which side of the crease is propped; `crest` is a stack under the crease with both edges on the bench. */
  'wing.propped': {choices: ['rear', 'front', 'crest'], default: 'rear'},
  /** How the stack stands: its edge, in under the panel, measured on the bench, or plumb below the free edge. */
  'wing.propPlace': {choices: ['edge', 'inset', 'bench', 'plumb'], default: 'edge'},
  'wing.foldBy': {choices: ['stack', 'camber'], default: 'stack'},
  'wing.stack': length(10, 2, 40, 0, 1000),
  'wing.stackInset': length(10, 0, 60, 0, 10_000),
  'wing.stackFromCrease': length(60, 10, 180, 0.1, 10_000),
  'wing.stackWidth': length(25, 5, 100),
  'wing.camber': ratio(0.04, [0.01, 0.09], [0, 0.5]),
  /** A V groove already cut at each crease, measured at the surface; without it the groove closes just so. */
  'wing.groove': length(undefined, 0.2, 8, 0.05, 100),
  /** Dihedral joints of each half: angle by which the panel outside rises, distance from the centre line. */
  'wing.joints': {
    list: [{name: 'angle', kind: 'angle', hard: [0, 80 * deg]}, {name: 'at', kind: 'length', hard: [0, 5]}],
    default: [{angle: 12 * deg, at: 0.19}], most: 4,
  },
  /** What is given: angles (blocks follow), blocks (angles follow), or both (each block's place follows). */
  'wing.dihedralBy': {choices: ['angle', 'block', 'place'], default: 'angle'},
  /** What props the outer end of each panel, joint by joint from the centre outwards. */
  'wing.blocks': {list: [{name: 'height', kind: 'length', hard: [0, 2]}], default: [{height: 0.03}], most: 4},
  'wing.jointFace': {choices: ['closing', 'opening'], default: 'closing'},
  'wing.jointPlace': {choices: ['edge', 'inset', 'bench', 'plumb'], default: 'edge'},
  'wing.blockInset': length(10, 0, 100, 0, 10_000),
  'wing.blockFromJoint': length(100, 20, 400, 0.1, 10_000),
  'wing.blockWidth': length(25, 5, 100),
  /** A joint on the centre line: one half flat on the bench and the other propped, or both tips propped alike. */
  'wing.vPropped': {choices: ['one', 'both'], default: 'one'},
  /** Skins peeled off the wing, by the face it has in flight. */
  'wing.peeled': {choices: ['none', 'above', 'below', 'both'], default: 'none'},
  /** Edges pressed thin, by the face they are pressed from in flight: from one face only, the mean line goes along. */
  'wing.pressed': {choices: ['none', 'both', 'above', 'below'], default: 'none'},
  'wing.pressedFront': length(8, 2, 20, 0),
  'wing.pressedRear': length(12, 2, 30, 0),
  'wing.weighed': mass(undefined, 5, 120, 0.1),

  'body.length': length(620, 250, 1000),
  'body.height': length(32, 15, 80),
  'body.tailHeight': length(undefined, 8, 80),
  /** Behind this distance from the nose the lower edge rises to the height at the tail. */
  'body.taperFrom': length(undefined, 50, 900, 0),
  'body.layers': count(2, 3, 6),
  'body.weighed': mass(undefined, 3, 80, 0.1),

  'tail.span': length(240, 100, 400),
  'tail.chord': length(78, 40, 140),
  'tail.tipChord': length(undefined, 30, 140),
  'tail.sweep': length(0, -20, 80, -2000, 2000),
  /** Edges of tailplane and fins, pressed alike from both faces. */
  'tail.pressed': {choices: ['none', 'both'], default: 'none'},
  /** Tailplane and fins together. */
  'tail.weighed': mass(undefined, 1, 40, 0.1),
  'tail.fins.count': count(2, 2, 2),
  'tail.fins.height': length(70, 30, 140),
  'tail.fins.chord': length(70, 30, 140),
  'tail.fins.tipChord': length(undefined, 20, 140),

  'arrangement.wingAt': length(200, 40, 300, 0, 5000),
  'arrangement.tailAt': length(540, 200, 900, 0, 10_000),
  /** Angles to the body's upper edge, front edge up: a slip under the rear edge makes the tail's less than nothing. */
  'arrangement.wingIncidence': incidence([-2, 5]),
  'arrangement.tailIncidence': incidence([-10, 2]),

  'glue.bead': length(3, 2, 5, 0, 20),
  'glue.bands': mass(2, 0, 6),
  'glue.tape': mass(1, 0, 10),

  /** Weights fitted besides the parts: mass, distance behind the nose (less than nothing is ahead of it). */
  'ballast.masses': {
    list: [{name: 'mass', kind: 'mass', hard: [0, 10]}, {name: 'at', kind: 'length', hard: [-2, 10]}], default: [], most: 12,
  },
  'ballast.at': length(15, -30, 120, -2000, 10_000),
  'balance.marginLow': ratio(0.15, [0.05, 0.3], [0.01, 1]),
  'balance.marginHigh': ratio(0.3, [0.1, 0.5], [0.01, 1]),

  /** The finished plane on the scale, without the weights listed in `ballast.masses`. */
  'measured.mass': mass(undefined, 20, 250, 0.1),
  /** Where that plane balances, behind the wing's root leading edge. */
  'measured.balance': length(undefined, 0, 150, -2000, 10_000),

  /** Measured on the finished plane: replaces what was planned in every answer about how it flies, see `src/calc/as-built`. */
  /** Below a straightedge laid under the middle of the wing from front edge to rear edge, at the deepest place. */
  'built.hollow': length(undefined, 0, 15, 0, 200),
  /** The lower edge of each tip over the bench on which the middle of the wing lies flat. */
  'built.tipLeft': length(undefined, 0, 150, 0, 2000),
  'built.tipRight': length(undefined, 0, 150, 0, 2000),
  /** Lower faces at the edges, in the middle, over the body's upper edge; or all four over one bench. */
  'built.wingFront': length(undefined, 0, 100, -500, 1000),
  'built.wingRear': length(undefined, 0, 100, -500, 1000),
  'built.tailFront': length(undefined, 0, 100, -500, 1000),
  'built.tailRear': length(undefined, 0, 100, -500, 1000),
  /** From the middle of the tailplane's rear edge to the rear corner of each wing tip. */
  'built.leftTipToTail': length(undefined, 200, 900, 1, 10_000),
  'built.rightTipToTail': length(undefined, 200, 900, 1, 10_000),
  /** How far the end of the body stands to the right of a straight line along its front, seen from behind. */
  'built.bow': length(undefined, -10, 10, -500, 500),

  /** The throw: the hand's height, and its speed and angle over the ground; left out, as the plane glides. */
  'launch.height': length(1600, 1000, 2500, 10, 20_000),
  'launch.speed': speed(undefined, [3, 10], [0.1, 40]),
  'launch.angle': {kind: 'angle', default: undefined, sensible: [-15 * deg, 15 * deg], hard: [-90 * deg, 90 * deg]},
  /** How much higher the nose is held than it stands in the glide. */
  'launch.pitch': {kind: 'angle', default: 0, sensible: [-10 * deg, 10 * deg], hard: [-45 * deg, 45 * deg]},
  /** Against the throw; less than nothing comes from behind. */
  'launch.wind': speed(0, [-2, 3], [-20, 20]),

  /** The air it flies in: a school hall at the sea unless told otherwise. */
  'air.temperature': {kind: 'temperature', default: 293.15, sensible: [263.15, 313.15], hard: [233.15, 323.15]},
  'air.altitude': {kind: 'altitude', default: 0, sensible: [-100, 2500], hard: [-400, 5500]},
} as const satisfies Readonly<Record<string, DimensionRow>>;

type Table = typeof dimensions;
export type DimensionPath = keyof Table;

type ValueOf<R> =
  R extends {readonly list: readonly (infer F)[]} ? readonly Readonly<Record<F extends {readonly name: infer N extends string} ? N : never, number>>[]
  : R extends {readonly choices: readonly (infer C)[]} ? C
  : R extends {readonly text: true} ? string
  : R extends {readonly default: undefined} ? number | undefined
  : number;

/** The value each path holds. */
export type DimensionValues = {readonly [P in DimensionPath]: ValueOf<Table[P]>};

/** Any value a dimension can hold, for code that walks the table. */
export type DimensionValue = string | number | undefined | readonly Readonly<Record<string, number>>[];

export const dimensionPaths = Object.keys(dimensions) as readonly DimensionPath[];

export const isDimensionPath = (path: string): path is DimensionPath => Object.hasOwn(dimensions, path);

/** The row of a path, seen without its exact type. */
export const rowOf = (path: DimensionPath): DimensionRow => dimensions[path];

export const isNumberRow = (row: DimensionRow): row is NumberRow => 'kind' in row;
export const isChoiceRow = (row: DimensionRow): row is ChoiceRow => 'choices' in row;
export const isListRow = (row: DimensionRow): row is ListRow => 'list' in row;

/** `wing.tipChord` -> `wing-tip-chord`: the attribute of `<glider-design>` for a path. */
export const attributeOf = (path: string): string => path.replaceAll('.', '-').replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);
