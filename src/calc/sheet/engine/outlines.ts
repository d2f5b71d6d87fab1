import {memberAt} from '../block.js';
import type {Pose, Shape} from '../shape.js';
import {coverOf} from './convex.js';
import type {Field, Laid} from './field.js';
import {fillInOrder, type Lying} from './fill-outlines.js';
import {forbidden, type Forbidden} from './nofit.js';
import type {Filler} from './packing.js';
import type {Random} from './random.js';
import type {Ready} from './ready.js';
import type {Kind, Spot} from './task.js';

/** So many regions are remembered, in some 20 MB. */
const mostKnown = 3e4;

/** Pieces placed by their outlines, each into the notches that those before it leave. */
export function outlines({loose: shapes, grid, job}: Ready, random: Random): Field {
  const cell = grid.metres(1);
  const gap = job.gap / cell;
  const kinds = shapes.map(({area, part: {mayTurn}, poses: [{length, width}]}): Kind =>
    ({length: length / cell + gap, width: width / cell + gap, mayTurn, area: area / cell ** 2}));
  const ways = [false, true].map((exchanged) => {
    const made = new Map<number, readonly Lying[]>();
    return (kind: number): readonly Lying[] => {
      const poses: readonly Pose[] = shapes[kind]?.poses ?? [];
      const lying = made.get(kind) ?? differing(poses).map((pose) => lyingOf(pose, poses.indexOf(pose), cell, exchanged));
      made.set(kind, lying);
      return lying;
    };
  });
  const known = new Map<Lying, Map<Lying, readonly Forbidden[]>>();
  let regions = 0;
  const between = (a: Lying, b: Lying): readonly Forbidden[] => {
    const before = known.get(a)?.get(b);
    if (before) return before;
    const found = forbidden(a.pieces, b.pieces, gap);
    if ((regions += found.length) > mostKnown) {
      known.clear();
      regions = found.length;
    }
    known.set(a, (known.get(a) ?? new Map<Lying, readonly Forbidden[]>()).set(b, found));
    return found;
  };
  const orders = new Map<string, readonly number[]>();
  const filler: Filler = {
    kinds,
    fill: (task, effort) => fillInOrder(task, effort, {lying: ways[effort.along ? 0 : 1] ?? (() => []), between, gap, orders}, random),
    broadest: () => 50,
    size: ({kind, pose}) => {
      const {length = 0, width = 0} = shapes[kind]?.poses[pose] ?? {};
      return {length: length / cell + gap, width: width / cell + gap};
    },
  };
  return {
    upright: false,
    filler,
    counts: shapes.map(({part}) => part.count),
    lay(rooms) {
      const left = shapes.map(({part}) => part.count);
      const laid = rooms.map((spots) => spots.flatMap(({kind, x, y, pose}: Spot): Laid[] => {
        const shape = shapes[kind], lies = shape?.poses[pose];
        if (!shape || !lies) return [];
        left[kind] = (left[kind] ?? 0) - 1;
        return [{x: x * cell, y: y * cell, length: lies.length, width: lies.width, members: [memberAt(shape, lies, 0, 0)]}];
      }));
      return {laid, left: shapes.flatMap((shape, kind) => Array<Shape>(left[kind] ?? 0).fill(shape))};
    },
  };
}

/** Poses that do not look the same: a rectangle turned half round is no other. */
function differing(poses: readonly Pose[]): readonly Pose[] {
  const look = ({outline}: Pose): string => outline.map(({x, y}) => `${x.toFixed(9)} ${y.toFixed(9)}`).sort().join();
  return [...new Map([...poses].reverse().map((pose) => [look(pose), pose])).values()].reverse();
}

function lyingOf({outline, length, width}: Pose, pose: number, cell: number, exchanged: boolean): Lying {
  const corners = exchanged ? outline.map(({x, y}) => ({x: y / cell, y: x / cell})).reverse() : outline.map(({x, y}) => ({x: x / cell, y: y / cell}));
  const [long, wide] = exchanged ? [width, length] : [length, width];
  return {pose, length: long / cell, width: wide / cell, pieces: coverOf(corners)};
}
