import {panelsOf, wingFold} from '../../calc/bench/wing-fold.js';
import {wingStations} from '../../calc/bench/wing-stations.js';
import {plannedJoints, type Joints} from '../../calc/as-built/tips.js';
import type {AsBuiltStudy} from '../../calc/as-built/study.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {valueAt} from '../../calc/design/design.js';
import {wingAsFlown} from '../../calc/geometry/fold/dihedral.js';
import {tailStations} from '../../calc/parts/stations.js';
import type {AsBuiltPicture, Reading} from '../../drawing/figures/as-built.js';
import {wingSection} from '../../drawing/figures/wing-section.js';
import type {XY} from '../../drawing/pen.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import type {GliderElement} from '../base/element.js';
import {fine} from './sentences.js';

export {drawAsBuilt} from '../../drawing/figures/as-built.js';

const MM = 1000;
const drawn = new WeakMap<AsBuiltStudy, {readonly reader: string; readonly picture: AsBuiltPicture}>();

/** What is measured, as a figure; the same object for the same answer and reader. */
export function asBuiltPicture(host: GliderElement, study: AsBuiltStudy): AsBuiltPicture {
  const {reader} = host;
  const kept = drawn.get(study);
  if (kept?.reader === reader) return kept.picture;
  const picture = pictureOf(host, study);
  drawn.set(study, {reader, picture});
  return picture;
}

function pictureOf(host: GliderElement, study: AsBuiltStudy): AsBuiltPicture {
  const {figure} = host.say(asBuiltWords);
  const {design, sizes} = study;
  /** As measured, or as the plan has it. */
  const reading = (path: DimensionPath, planned: number | undefined, word: (value: string) => string, plan: (value: string) => string): Reading => {
    const value = study.built.counted.includes(path) ? valueAt(design, path) : undefined;
    return typeof value === 'number' ? {words: word(fine(host, value)), taken: true}
      : {words: planned === undefined ? '' : plan(fine(host, planned)), taken: false};
  };
  const planned = (word: (value: string) => string) => (value: string): string => figure.planned(word(value));
  return {
    hollow: {...section(study), title: figure.hollow, reading: reading('built.hollow', sizes.hollow, (value) => value, figure.planned)},
    tips: {
      ...halves(study), thickness: design.board.thickness * MM, title: figure.tips,
      readings: [reading('built.tipLeft', sizes.tip, figure.left, planned(figure.left)), reading('built.tipRight', sizes.tip, figure.right, planned(figure.right))],
    },
    tail: {
      ...tailEdges(study), chord: design.tail.chord * MM, thickness: design.board.thickness * MM, title: figure.tail,
      readings: [
        reading('built.tailFront', Math.max(-sizes.tail, 0), (value) => value, figure.planned), reading('built.tailRear', Math.max(sizes.tail, 0), (value) => value, figure.planned),
      ],
    },
    plan: {
      ...fromAbove(study), title: figure.plan,
      readings: [
        reading('built.leftTipToTail', sizes.tipToTail, figure.left, planned(figure.left)), reading('built.rightTipToTail', sizes.tipToTail, figure.right, planned(figure.right)),
      ],
      bow: study.built.counted.includes('built.bow') && design.built.bow !== undefined && design.built.bow !== 0
        ? {words: figure.bow({by: fine(host, Math.abs(design.built.bow)), right: design.built.bow > 0}), taken: true} : undefined,
    },
  };
}

function section({built: {design: {wing, board}}}: AsBuiltStudy): Pick<AsBuiltPicture['hollow'], 'boards' | 'chord' | 'deepest'> {
  const fold = wingFold(wing, board);
  const boards = wingSection(wing.chord * MM, wing.creases.map(({at}) => at * MM), fold.ok ? fold.value.folds : panelsOf(wing).slice(1).map(() => 0), board.thickness * MM, wing.foldFace);
  const lower = boards.flatMap((board) => board.slice(2));
  return {boards, chord: Math.max(...lower.map(({x}) => x)), deepest: lower.reduce((a, b) => (b.y > a.y ? b : a), lower[0] ?? {x: 0, y: 0})};
}

/** The lower face of each half from the front, y upwards. */
function halves({built: {design: {wing, board}, lopsided: {joints: sides}}}: AsBuiltStudy): Pick<AsBuiltPicture['tips'], 'left' | 'right'> {
  const plan = plannedJoints(wing, board);
  const half = (joints: Joints, side: number): readonly XY[] => wingAsFlown(wing.span / 2, joints).points.map(({y, z}) => ({x: side * y * MM, y: z * MM}));
  const usual = plan.ok ? plan.value : [];
  return {left: half(sides?.left ?? usual, -1), right: half(sides?.right ?? usual, 1)};
}

function tailEdges({design: {built: {tailFront, tailRear}}, built: {counted}, sizes}: AsBuiltStudy): Pick<AsBuiltPicture['tail'], 'front' | 'rear'> {
  return tailFront !== undefined && tailRear !== undefined && counted.includes('built.tailRear') ? {front: tailFront * MM, rear: tailRear * MM}
    : {front: Math.max(-sizes.tail, 0) * MM, rear: Math.max(sizes.tail, 0) * MM};
}

/** Wing, body and tail from above as they were measured, the wing's middle at the origin: y backwards. */
function fromAbove({built: {design: {wing, tail, arrangement, body, built}, counted, lopsided: {skew = 0}}}: AsBuiltStudy): Pick<AsBuiltPicture['plan'], 'wing' | 'tail' | 'body' | 'line' | 'corners' | 'tailPoint'> {
  const turned = ({x, y}: XY): XY => {
    // about the middle of the wing, left tip forward
    const c = Math.cos(skew), s = Math.sin(skew), m = wing.chord / 2;
    return {x: (x * c - (y - m) * s) * MM, y: (m + x * s + (y - m) * c) * MM};
  };
  const outline = (stations: ReturnType<typeof wingStations>): readonly XY[] => {
    const right = [...stations.map(({at, back}) => ({x: at, y: back})), ...[...stations].reverse().map(({at, back, chord}) => ({x: at, y: back + chord}))];
    return [...right, ...[...right].reverse().map(({x, y}) => ({x: -x, y}))];
  };
  const bow = counted.includes('built.bow') ? built.bow ?? 0 : 0;
  const back = arrangement.tailAt - arrangement.wingAt, end = body.length - arrangement.wingAt, from = wing.chord, last = Math.max(end, back + tail.chord);
  // evenly bowed behind the wing
  const aside = (y: number): number => (y <= from ? 0 : bow * ((y - from) / (last - from)) ** 2);
  const width = Math.max(body.layers, 1) * 0.005;
  const along = Array.from({length: 9}, (_, i) => -0.06 + (end + 0.06) * i / 8);
  const edge = (side: number): XY[] => along.map((y) => ({x: (aside(y) + side * width / 2) * MM, y: y * MM}));
  const stations = wingStations(wing), tip = stations.at(-1) ?? {at: 0, back: 0, chord: 0};
  const moved = aside(back + tail.chord);
  return {
    wing: outline(stations).map(turned), tail: outline(tailStations(tail)).map(({x, y}) => ({x: (x + moved) * MM, y: (y + back) * MM})),
    body: [...edge(-1), ...edge(1).reverse()], line: [{x: 0, y: -60}, {x: 0, y: last * MM}],
    corners: [turned({x: -tip.at, y: tip.back + tip.chord}), turned({x: tip.at, y: tip.back + tip.chord})], tailPoint: {x: moved * MM, y: (back + tail.chord) * MM},
  };
}
