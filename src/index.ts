/** Registers every element and gives their classes. */
export * from './components/as-built/define.js';
export * from './components/balance-point/define.js';
export * from './components/camber-shim/define.js';
export * from './components/design/define.js';
export * from './components/dihedral-angle/define.js';
export * from './components/dimensions/define.js';
export * from './components/drawing/define.js';
export * from './components/flight-check/define.js';
export * from './components/flight-log/define.js';
export * from './components/flight-path/define.js';
export * from './components/parts-sheet/define.js';
export * from './components/tail-shim/define.js';
export * from './components/trim-advice/define.js';
export * from './components/value/define.js';
export {version} from './version.js';
