/**
 * The calculations behind the elements, for pages and programs of one's own: quantities, designs, geometry, the bench and the parts. No DOM, SI units
 * throughout (metres, kilograms, seconds, radians), plain frozen data in, plain data out. Stages that can fail give an `Outcome`: a value, or the
 * problems that stand against one. What stands on the flight model, the balance among it, is in `glider-elements/calc/flight`.
 */
export type {Outcome, Problem} from './problem.js';

export {readList, writeList, writeListForReading} from './units/list.js';
export {usualUnit, units} from './units/kinds.js';
export type {QuantityKind, SystemOfUnits, Unit} from './units/kinds.js';
export {readQuantity} from './units/read.js';
export type {ReadOptions, ReadResult} from './units/read.js';
export {writeAtLeast, writeExact, writeQuantity} from './units/write.js';
export type {WriteOptions} from './units/write.js';

export {attributeOf, dimensionPaths, dimensions, isDimensionPath} from './design/dimensions.js';
export type {DimensionPath, DimensionValue, DimensionValues} from './design/dimensions.js';
export {defaultDesign, valueAt, withValues} from './design/design.js';
export type {GliderDesign} from './design/design.js';
export {clashesOf} from './design/clashes.js';
export {readDimension} from './design/read-dimension.js';
export {readDesignFile, writeDesignFile} from './design/file.js';
export {createDesignStore} from './design/store.js';
export type {Change, DesignHandle, DesignState, DesignStore, RefusedEntry} from './design/store.js';

export * from './geometry/polygon/index.js';
export * from './geometry/planform/index.js';
export * from './geometry/fold/index.js';

export {nearestStack, usualPacking, wholeLayers} from './bench/stack.js';
export {wingFold} from './bench/wing-fold.js';
export type {WingFold} from './bench/wing-fold.js';
export {wingDihedral} from './bench/dihedral.js';
export type {WingDihedral} from './bench/dihedral.js';

export {partsOf} from './parts/parts.js';
export type {LineLabel, Part, PartId, PartLine, Parts} from './parts/parts.js';
