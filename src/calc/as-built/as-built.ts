import {wingFold} from '../bench/wing-fold.js';
import type {GliderDesign} from '../design/design.js';
import {dimensionPaths, type DimensionPath, type DimensionValue} from '../design/dimensions.js';
import {wingAsFlown} from '../geometry/fold/dihedral.js';
import {memo} from '../memo.js';
import {refused, type Outcome, type Problem} from '../problem.js';
import {angleOfEdges} from './edges.js';
import {foldedSoFar, foldFromHollow} from './hollow.js';
import {finsTurned, skewOf, type TipsAndTail} from './straightness.js';
import {jointsFromTip, plannedJoints, type Joints} from './tips.js';

/** A planned value that measurements have taken the place of. */
export interface Replaced {
  readonly path: DimensionPath;
  readonly planned: DimensionValue;
  readonly measured: DimensionValue;
  readonly from: readonly DimensionPath[];
}

/** What was measured to be different on the right and on the left. */
export interface Lopsided {
  /** Joints of each half, where the tips were measured. */
  readonly joints?: {readonly left: Joints; readonly right: Joints};
  /** The wing to the tail, left tip forward, rad. */
  readonly skew?: number;
  /** The fins to the wing, rear edge to the right, rad; 0 where nothing was measured. */
  readonly fins: number;
}

/** A glider as it stands on the bench. */
export interface AsBuilt {
  /** The design with what was measured in place of what was planned; the same object where nothing was. */
  readonly design: GliderDesign;
  readonly replaced: readonly Replaced[];
  /** The measurements that count, in the order of the table. */
  readonly counted: readonly DimensionPath[];
  readonly lopsided: Lopsided;
  /** Measurements that no plane like this can have: the plan counts there. */
  readonly problems: readonly Problem[];
}

type Parts = Pick<GliderDesign, 'wing' | 'arrangement'>;
interface Measured extends Omit<AsBuilt, 'design'> { readonly parts: Parts }

const bothTips = ['built.tipLeft', 'built.tipRight'] as const, bothDistances = ['built.leftTipToTail', 'built.rightTipToTail'] as const;
const edges = {wing: ['built.wingFront', 'built.wingRear'], tail: ['built.tailFront', 'built.tailRear']} as const;

const measured = memo((
  wing: GliderDesign['wing'], tail: GliderDesign['tail'], arrangement: GliderDesign['arrangement'], board: GliderDesign['board'], built: GliderDesign['built'],
): Measured => {
  let flown = wing, placed = arrangement;
  const replaced: Replaced[] = [], problems: Problem[] = [], counted = new Set<DimensionPath>();
  /** What was found from measurements, where they can be. */
  const take = <T>(found: Outcome<T>, from: readonly DimensionPath[], use: (value: T) => void): void => {
    if (!found.ok) { problems.push(...found.problems); return; }
    from.forEach((path) => counted.add(path));
    use(found.value);
  };
  /** Two measurements that tell nothing one without the other. */
  const pair = ([one, other]: readonly [DimensionPath, DimensionPath]): readonly [number, number] | undefined => {
    const [a, b] = [built[nameOf(one)], built[nameOf(other)]];
    if (a !== undefined && b !== undefined) return [a, b];
    if (a !== b) problems.push({code: 'other-one-missing', path: a === undefined ? one : other});
    return undefined;
  };

  const {hollow} = built;
  if (hollow !== undefined) {
    take(foldFromHollow(wing, board, hollow), ['built.hollow'], (total) => {
      flown = foldedSoFar(flown, total);
      const plan = wingFold(wing, board);
      replaced.push({path: 'wing.camber', planned: plan.ok ? plan.value.section.camber : undefined, measured: flown.camber, from: ['built.hollow']});
    });
  }
  const plan = plannedJoints(wing, board), tips = pair(bothTips);
  let sides: Lopsided['joints'];
  if (tips && plan.ok) {
    const [left, right] = bothTips.map((path, i) => jointsFromTip(wing, board, plan.value, tips[i] ?? 0, path));
    take(left?.ok && right?.ok ? {ok: true, value: {left: left.value, right: right.value}} : refused(...[left, right].flatMap((half) => half && !half.ok ? half.problems : [])),
      bothTips, (joints) => {
        sides = joints;
        const mean = joints.left.map(({angle, at}, i) => ({angle: (angle + (joints.right[i]?.angle ?? angle)) / 2, at}));
        flown = {...flown, joints: mean, dihedralBy: 'angle'};
        replaced.push({path: 'wing.joints', planned: plan.value, measured: mean, from: bothTips});
      });
  }
  for (const [surface, path] of [['wing', 'wingIncidence'], ['tail', 'tailIncidence']] as const) {
    const heights = pair(edges[surface]);
    if (!heights) continue;
    const fold = wingFold(flown, board);
    const chord = surface === 'tail' ? tail.chord : fold.ok ? fold.value.section.chord : wing.chord;
    take(angleOfEdges(chord, ...heights, edges[surface][1]), edges[surface], (angle) => {
      replaced.push({path: `arrangement.${path}`, planned: arrangement[path], measured: angle, from: edges[surface]});
      placed = {...placed, [path]: angle};
    });
  }
  const distances = pair(bothDistances);
  let skew: number | undefined;
  if (distances) take(skewOf(cornersOf(flown, tail, arrangement, plan), ...distances), bothDistances, (angle) => { skew = angle; });
  const free = arrangement.tailAt + tail.chord - arrangement.wingAt - wing.chord, {bow} = built;
  let counts: number | undefined;
  if (bow !== undefined) {
    take(Math.abs(bow) <= free / 4 ? {ok: true, value: bow} : refused({code: 'bow-too-large', path: 'built.bow', args: {most: free / 4}}),
      ['built.bow'], (value) => { counts = value; });
  }
  return {
    parts: {wing: Object.freeze(flown), arrangement: Object.freeze(placed)}, replaced, problems, counted: [...counted],
    lopsided: {...(sides && {joints: sides}), ...(skew !== undefined && {skew}), fins: finsTurned(skew, counts, free)},
  };
});

/** Where the corners lie between which tip-to-tail distances are measured, on a straight plane. */
export function cornersOf(wing: GliderDesign['wing'], tail: GliderDesign['tail'], {wingAt, tailAt}: GliderDesign['arrangement'], joints: Outcome<Joints>): TipsAndTail {
  const {span, tipRise} = wingAsFlown(wing.span / 2, wing.dihedralBy === 'block' && joints.ok ? joints.value : wing.joints);
  return {half: span / 2, rise: tipRise, back: tailAt + tail.chord - wingAt - wing.sweep - (wing.tipChord ?? wing.chord)};
}

type Name = keyof GliderDesign['built'];
const nameOf = (path: DimensionPath): Name => path.slice('built.'.length) as Name;

/** Every measurement of a finished plane. */
export const measurements: readonly DimensionPath[] = dimensionPaths.filter((path) => /^(built|measured)\./.test(path));
const names = measurements.filter((path) => path.startsWith('built.')).map(nameOf);

const nothing: Omit<AsBuilt, 'design' | 'counted'> = {replaced: [], problems: [], lopsided: {fins: 0}};

/**
 * The glider as it was built: measurements on the finished plane in place of the plan, for whatever tells how it flies. What plans the building goes
 * on reading the plan. A weighed mass and a balance that was found count where they always did, in `measured`.
 *
 * Never refused: a measurement that no such plane can have is told in `problems`, beside its field, and the plan counts there:
 * 'hollow-too-deep' {most}, 'hollow-without-crease', 'tip-too-high' {most}, 'edges-too-far-apart' {most}, 'tip-distance-unlike' {expected}, 'bow-too-large' {most};
 * 'other-one-missing' where one of two that belong together is still to be measured.
 */
export const asBuilt: (design: GliderDesign) => AsBuilt = memo((design: GliderDesign): AsBuilt => {
  const {wing, tail, arrangement, board, built} = design;
  const weighed = (['measured.mass', 'measured.balance'] as const).filter((path) => design.measured[path === 'measured.mass' ? 'mass' : 'balance'] !== undefined);
  if (names.every((name) => built[name] === undefined)) return {...nothing, design, counted: weighed};
  const {parts, counted, ...found} = measured(wing, tail, arrangement, board, built);
  const all = new Set([...weighed, ...counted]);
  return {...found, design: Object.freeze({...design, ...parts}), counted: measurements.filter((path) => all.has(path))};
});
