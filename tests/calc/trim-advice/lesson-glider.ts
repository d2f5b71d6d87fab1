import {readDesignFile} from '../../../src/calc/design/file.js';
import type {GliderDesign} from '../../../src/calc/design/design.js';
import {valueOf} from '../flight/planes.js';

/** A glider as a lesson has it, all of its numbers usual ones. */
export const lessonFile = `{
  "glider": 1,
  "name": "Halfpenny",
  "board": {"length": "700 mm", "width": "500 mm", "thickness": "5 mm", "sheetMass": "112 g"},
  "wing": {"span": "620 mm", "chord": "115 mm", "creases": "45mm", "stack": "10 mm", "joints": "12°@180mm", "blocks": "27mm"},
  "body": {"length": "540 mm", "height": "32 mm", "tailHeight": "18 mm", "taperFrom": "320 mm", "layers": "2"},
  "tail": {"span": "230 mm", "chord": "74 mm", "fins": {"count": "2", "height": "58 mm", "chord": "66 mm", "tipChord": "46 mm"}},
  "arrangement": {"wingAt": "190 mm", "tailAt": "462 mm", "tailIncidence": "-3°"},
  "glue": {"bead": "2.5 mm"},
  "ballast": {"masses": "17.8g@14mm", "at": "14 mm"}
}`;

export const lessonGlider: GliderDesign = valueOf(readDesignFile(lessonFile)).design;
