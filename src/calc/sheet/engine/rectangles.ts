import {membersTurned, type Block} from '../block.js';
import {beam, Bench, broadest} from './beam.js';
import type {Field, Laid} from './field.js';
import type {Blocks} from './nested.js';
import type {Filler} from './packing.js';
import type {Random} from './random.js';
import type {Ready} from './ready.js';
import type {Kind, Spot} from './task.js';

/** Blocks of one size, some of which lie across the way their kind does. */
interface Group {
  readonly kind: Kind;
  readonly blocks: {readonly block: Block; readonly across: boolean; readonly count: number}[];
}

/** Pieces placed by their upright bounds. */
export function rectangles(all: readonly Blocks[], {grid, job}: Ready, random: Random): Field {
  const gap = grid.of(job.gap);
  const groups = new Map<string, Group>();
  for (const {block, count} of all) {
    const given = [grid.of(block.length) + gap, grid.of(block.width) + gap] as const;
    const across = block.mayTurn && given[0] < given[1];
    const [length, width] = across ? [given[1], given[0]] : given;
    const key = [length, width, block.mayTurn].join();
    const group = groups.get(key) ?? {kind: {length, width, mayTurn: block.mayTurn, area: length * width}, blocks: []};
    groups.set(key, group);
    group.blocks.push({block, across, count});
  }
  const kinds = [...groups.values()].map(({kind}) => kind);
  const bench = new Bench();
  const filler: Filler = {
    kinds,
    fill: (task, effort) => beam(task, job.cuts === 'straight', effort, random, bench),
    broadest,
    size: ({kind, pose}) => {
      const {length = 0, width = 0} = kinds[kind] ?? {};
      return pose ? {length: width, width: length} : {length, width};
    },
  };
  return {
    upright: true,
    filler,
    counts: [...groups.values()].map(({blocks}) => blocks.reduce((sum, {count}) => sum + count, 0)),
    lay(rooms) {
      const waiting = [...groups.values()].map(({blocks}) => blocks.flatMap(({count, ...each}) => Array.from({length: count}, () => each)));
      const laid = rooms.map((spots) => spots.flatMap(({kind, x, y, pose}: Spot): Laid[] => {
        const next = waiting[kind]?.shift();
        return next ? [laidAt(grid.metres(x), grid.metres(y), next.block, next.across !== (pose === 1))] : [];
      }));
      return {laid, left: waiting.flat().flatMap(({block}) => block.members.map(({shape}) => shape))};
    },
  };
}

const laidAt = (x: number, y: number, block: Block, turned: boolean): Laid => (turned
  ? {x, y, length: block.width, width: block.length, members: membersTurned(block)}
  : {x, y, length: block.length, width: block.width, members: block.members});
