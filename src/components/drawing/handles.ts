import type {WingDihedral} from '../../calc/bench/dihedral.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import {layOutThreeView} from '../../drawing/figures/three-view-layout.js';
import type {ThreeViewPicture} from '../../drawing/figures/three-view.js';
import {tipOf} from '../../drawing/figures/three-view-shapes.js';
import type {XY} from '../../drawing/pen.js';
import {dragged, toStep, within} from '../base/dragged.js';
import type {Handle} from '../base/figure.js';

const MM = 1000;
const HALF_DEGREE = Math.PI / 360;

/** What a pointer can take hold of in the three views, where they lie now. */
export function threeViewHandles(design: GliderDesign, dihedral: WingDihedral | undefined, picture: ThreeViewPicture, widthPx: number, step: number): readonly Handle[] {
  const {origins} = layOutThreeView(picture, widthPx);
  const {plan, side, front} = origins;
  return [
    ...(plan ? planHandles(design, plan, step) : []),
    ...(side ? sideHandles(design, picture, side, step, !plan) : []),
    ...(front && dihedral ? frontHandles(design, dihedral, picture, front, step) : []),
  ];
}

/** A handle of one view, its place and its pointer in that view's own metres, y downwards. */
function handleIn(origin: XY, path: DimensionPath, x: number, y: number, drag: (to: XY) => Change, key: string = path): Handle {
  return {
    key, path, at: {x: origin.x + x * MM, y: origin.y + y * MM},
    drag: (to) => [drag({x: (to.x - origin.x) / MM, y: (to.y - origin.y) / MM})],
  };
}

function planHandles({wing, tail, arrangement}: GliderDesign, origin: XY, step: number): readonly Handle[] {
  const {wingAt, tailAt} = arrangement;
  const tip = tipOf(wing);
  const half = wing.span / 2;
  const chordPath = wing.tipChord === undefined ? 'wing.chord' : 'wing.tipChord';
  const tailChordPath = tail.tipChord === undefined ? 'tail.chord' : 'tail.tipChord';
  const tailTip = tail.tipChord ?? tail.chord;
  const at = (path: DimensionPath, x: number, y: number, value: (to: XY) => number): Handle =>
    handleIn(origin, path, x, y, (to) => dragged(path, value(to), step), `plan-${path}`);
  return [
    at('wing.span', wingAt + tip.back + tip.chord / 2, -half, ({y}) => 2 * Math.abs(y)),
    at('wing.sweep', wingAt + tip.back, half, ({x}) => x - wingAt),
    at(chordPath, wingAt + tip.back + tip.chord, half, ({x}) => x - wingAt - tip.back),
    ...(wing.tipChord === undefined ? [] : [at('wing.chord', wingAt + wing.chord, 0, ({x}) => x - wingAt)]),
    at('arrangement.wingAt', wingAt, 0, ({x}) => x),
    at('arrangement.tailAt', tailAt, 0, ({x}) => x),
    at('tail.span', tailAt + tail.sweep + tailTip / 2, -tail.span / 2, ({y}) => 2 * Math.abs(y)),
    at(tailChordPath, tailAt + tail.sweep + tailTip, tail.span / 2, ({x}) => x - tailAt - tail.sweep),
  ];
}

function sideHandles({body, tail, wing, arrangement}: GliderDesign, {places}: ThreeViewPicture, origin: XY, step: number, alone: boolean): readonly Handle[] {
  const at = (path: DimensionPath, x: number, y: number, value: (to: XY) => number): Handle =>
    handleIn(origin, path, x, y, (to) => dragged(path, value(to), step), `side-${path}`);
  const {fin} = places;
  return [
    at('body.length', body.length, (body.tailHeight ?? body.height) / 2, ({x}) => x),
    at('body.height', Math.min(arrangement.wingAt / 2, body.length / 4), body.height, ({y}) => y),
    ...(fin ? [at('tail.fins.height', fin.rear / MM - (tail.fins.tipChord ?? tail.fins.chord) / 2, fin.top / MM, ({y}) => fin.foot / MM - y)] : []),
    ...(alone ? [
      at('arrangement.wingAt', arrangement.wingAt, 0, ({x}) => x),
      at('wing.chord', arrangement.wingAt + wing.chord, 0, ({x}) => x - arrangement.wingAt),
      at('arrangement.tailAt', arrangement.tailAt, 0, ({x}) => x),
    ] : []),
  ];
}

function frontHandles({wing}: GliderDesign, {panels}: WingDihedral, {places}: ThreeViewPicture, origin: XY, step: number): readonly Handle[] {
  const joints = (index: number, changed: Partial<GliderDesign['wing']['joints'][number]>): Change =>
    ({path: 'wing.joints', value: wing.joints.map((joint, i) => (i === index ? {...joint, ...changed} : joint))});
  const handles: Handle[] = [];
  const first = panels.length - wing.joints.length;   // a wing with a flat middle has one panel more than joints
  places.foldPivots.forEach(({at, from}, index) => {
    const pivot = {x: at.x / MM, y: -at.y / MM};
    const inner = wing.joints[index - 1]?.at ?? 0, outer = wing.joints[index + 1]?.at ?? wing.span / 2;
    const own = wing.joints[index]?.at ?? 0;
    if (own > 0) {
      handles.push(handleIn(origin, 'wing.joints', pivot.x, pivot.y, ({x}) => {
        const moved = own + (x - pivot.x) / Math.cos(panels[index + first - 1]?.angle ?? 0);
        return joints(index, {at: within(toStep(moved, step), inner + 5 * step, outer - 5 * step)});
      }, `front-joint-${String(index)}`));
    }
    const next = places.foldPivots[index + 1]?.at ?? places.tip;
    if (!next || wing.dihedralBy === 'block' || index < places.foldPivots.length - 1) return;
    handles.push(handleIn(origin, 'wing.joints', next.x / MM, -next.y / MM, ({x, y}) => {
      const angle = Math.atan2(pivot.y - y, Math.max(x - pivot.x, step)) - from;
      return joints(index, {angle: within(toStep(angle, HALF_DEGREE), 0, 120 * HALF_DEGREE)});
    }, `front-angle-${String(index)}`));
  });
  return handles;
}
