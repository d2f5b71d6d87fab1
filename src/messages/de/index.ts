import type {Pack} from '../speaker.js';
import common from './common.js';
import dimensions from './dimensions.js';

/** German: what every element says, and where the words of the other topics are. */
export default {
  common, dimensions,
  'as-built': () => import('./as-built.js'),
  'as-built-working': () => import('./as-built-working.js'),
  'balance': () => import('./balance.js'),
  'balance-working': () => import('./balance-working.js'),
  'camber': () => import('./camber.js'),
  'camber-working': () => import('./camber-working.js'),
  'dihedral': () => import('./dihedral.js'),
  'dihedral-figure': () => import('./dihedral-figure.js'),
  'dihedral-working': () => import('./dihedral-working.js'),
  'dimension-notes': () => import('./dimension-notes.js'),
  'drawing': () => import('./drawing.js'),
  'flight': () => import('./flight.js'),
  'flight-check': () => import('./flight-check.js'),
  'flight-log': () => import('./flight-log.js'),
  'flight-log-panels': () => import('./flight-log-panels.js'),
  'flight-path': () => import('./flight-path.js'),
  'flight-path-working': () => import('./flight-path-working.js'),
  'flight-working': () => import('./flight-working.js'),
  'problems': () => import('./problems.js'),
  'reckoned': () => import('./reckoned.js'),
  'sheet': () => import('./sheet.js'),
  'sheet-files': () => import('./sheet-files.js'),
  'sheet-lists': () => import('./sheet-lists.js'),
  'sheet-panels': () => import('./sheet-panels.js'),
  'sheet-question': () => import('./sheet-question.js'),
  'sheet-search': () => import('./sheet-search.js'),
  'sheet-templates': () => import('./sheet-templates.js'),
  'tail-shim': () => import('./tail-shim.js'),
  'tail-shim-working': () => import('./tail-shim-working.js'),
} satisfies Pack;
