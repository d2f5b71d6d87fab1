// From instances to what the engine and the packers are asked. Lengths of an instance are taken as millimetres.
import {createHash} from 'node:crypto';

const mm = 1e-3;

const rectangle = (length, width) => [{x: 0, y: 0}, {x: length * mm, y: 0}, {x: length * mm, y: width * mm}, {x: 0, y: width * mm}];

function partOf({w, h, n = 1, polygon, rotations = [0]}, i) {
  const more = {id: `part ${i}`, count: n, mayMirror: false};
  if (!polygon) return {...more, outline: rectangle(w, h), mayTurn: true};
  return {...more, outline: polygon.map(([x, y]) => ({x: x * mm, y: y * mm})), mayTurn: rotations.includes(90), mayTurnHalf: rotations.includes(180)};
}

/** What is to be measured on an instance, told by what it holds and by what is known of it. */
export function tasksOf(set, instance) {
  const {stock, items, known} = instance;
  const uneven = items.some(({polygon}) => polygon);
  const strip = !stock.width || !stock.height;
  const across = strip ? stock.width ?? stock.height : stock.height;
  const parts = items.map(partOf);
  const jobWith = (cuts) => ({parts, margin: 0, gap: 0, cuts, boards: [{id: 'board', length: strip ? Infinity : stock.width * mm, width: across * mm}]});
  const task = (cuts, best, seconds) => ({set: set.name, name: instance.name, instance, cuts, best, seconds, strip, uneven, across, job: jobWith(cuts)});
  if (uneven && strip) return [task('free', known.bestKnownLength ?? known.optimumLength, [20])];
  if (uneven) return [task('free', known.optimumBins, [10])];
  if (!strip) return [task('straight', known.RG3?.bestKnownBins, [2])];
  if (known.optimumHeight !== undefined) return [task('free', known.optimumHeight, [1, 10]), task('straight', known.optimumHeight, [1])];
  return [task('straight', known.guillotineOptimumRot, [5])];
}

/** A name for what is asked: the same again whatever file it comes from. */
export const keyOf = ({job, seconds, best}) => createHash('sha256').update(JSON.stringify([job, seconds, best])).digest('hex').slice(0, 16);

/** So long may a quick look take, s. */
const quickSeconds = 170;

const kindOf = ({set, cuts, seconds}) => [set, cuts, seconds].join();

/** Some of the tasks, as many of one kind as of another where there are, and in less time where there is no goal for that. */
export function quick(tasks) {
  const shorter = tasks.map((task) => ({...task, seconds: task.uneven ? [2] : [Math.min(...task.seconds)]}));
  const kinds = [...new Set(shorter.map(kindOf))].map((kind) => spread(shorter.filter((task) => kindOf(task) === kind)));
  const chosen = new Set();
  let left = quickSeconds;
  for (let round = 0; kinds.some((kind) => kind.length > round); round++) {
    for (const kind of kinds) {
      const task = kind[round];
      if (task && (left -= Math.max(...task.seconds)) >= 0) chosen.add(task);
    }
  }
  return shorter.filter((task) => chosen.has(task));
}

/** In another order, by golden sections, so that the first few are from everywhere. */
const spread = (tasks) => tasks.map((task, i) => ({task, place: i * 0.6180339887 % 1}))
  .sort((a, b) => a.place - b.place).map(({task}) => task);
