/** A size in which board or paper is sold, in metres. */
export interface SheetSize {
  readonly id: string;
  /** What a shop calls it; the same in every language. */
  readonly name: string;
  /** The longer side, m. */
  readonly length: number;
  /** The shorter side, m. */
  readonly width: number;
  /** Where it is at home. */
  readonly system: 'metric' | 'inch';
  readonly source: string;
}

const iso = 'ISO 216, table of sizes';
const inch = 'its own name, 1 in = 25.4 mm exactly';
const ansiA = 'ASME Y14.1 size A, 8½ × 11 in';
const ansiB = 'ASME Y14.1 size B, 11 × 17 in (from memory)';
const shops = 'common practice, no source: a size many shops stock';

/** Sheets from large to small within each family. Parts sheets and templates offer these; a reader may type any other. */
export const sheetSizes = [
  {id: 'a0', name: 'A0', length: 1.189, width: 0.841, system: 'metric', source: iso},
  {id: 'a1', name: 'A1', length: 0.841, width: 0.594, system: 'metric', source: iso},
  {id: 'a2', name: 'A2', length: 0.594, width: 0.42, system: 'metric', source: iso},
  {id: 'a3', name: 'A3', length: 0.42, width: 0.297, system: 'metric', source: iso},
  {id: 'a4', name: 'A4', length: 0.297, width: 0.21, system: 'metric', source: iso},
  {id: 'b1', name: 'B1', length: 1, width: 0.707, system: 'metric', source: iso},
  {id: 'b2', name: 'B2', length: 0.707, width: 0.5, system: 'metric', source: iso},
  {id: 'b3', name: 'B3', length: 0.5, width: 0.353, system: 'metric', source: iso},
  {id: '1000x700', name: '1000 × 700 mm', length: 1, width: 0.7, system: 'metric', source: shops},
  {id: '700x500', name: '700 × 500 mm', length: 0.7, width: 0.5, system: 'metric', source: shops},
  {id: '500x350', name: '500 × 350 mm', length: 0.5, width: 0.35, system: 'metric', source: shops},
  {id: '40x32in', name: '40 × 32 in', length: 1.016, width: 0.8128, system: 'inch', source: inch},
  {id: '40x30in', name: '40 × 30 in', length: 1.016, width: 0.762, system: 'inch', source: inch},
  {id: '30x20in', name: '30 × 20 in', length: 0.762, width: 0.508, system: 'inch', source: inch},
  {id: '28x22in', name: '28 × 22 in', length: 0.7112, width: 0.5588, system: 'inch', source: inch},
  {id: 'tabloid', name: 'Tabloid', length: 0.4318, width: 0.2794, system: 'inch', source: ansiB},
  {id: 'letter', name: 'Letter', length: 0.2794, width: 0.2159, system: 'inch', source: ansiA},
] as const satisfies readonly SheetSize[];

export type SheetSizeId = (typeof sheetSizes)[number]['id'];
