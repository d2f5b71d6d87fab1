import type {WingDihedral} from '../../calc/bench/dihedral.js';
import type {PlaneBalance} from '../../calc/balance/plane-balance.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {flownHalf} from '../../drawing/figures/flown-wing.js';
import type {ThreeViewPicture} from '../../drawing/figures/three-view.js';
import type {ViewName} from '../../drawing/figures/three-view-layout.js';
import {threeViewShapes, tipOf} from '../../drawing/figures/three-view-shapes.js';
import {wingSection} from '../../drawing/figures/wing-section.js';

const MM = 1000;

/** What the drawing needs besides the design itself. */
export interface Drawn {
  readonly design: GliderDesign;
  readonly dihedral: WingDihedral | undefined;
  /** The fold at each crease, radians; none while the wing is flat. */
  readonly folds: readonly number[];
  /** Where it balances, as soon as that is known. */
  readonly balance: PlaneBalance | undefined;
}

/** The picture in millimetres, its figures and words already written. */
export function threeViewPicture({design, dihedral, folds, balance}: Drawn, show: readonly ViewName[], figures: ThreeViewPicture['figures'], words: ThreeViewPicture['words']): ThreeViewPicture {
  const {wing, body, tail, arrangement, board} = design;
  const shapes = threeViewShapes(design, dihedral, folds);
  const t = board.thickness * MM;
  const flown = dihedral && flownHalf(dihedral, wing.jointFace, t);
  const first = (dihedral?.panels.length ?? 0) - wing.joints.length;
  const fin = shapes.side.fin;
  const tip = tipOf(wing);
  const panelTip = flown?.panels.at(-1)?.[1];
  return {
    shapes, show, figures, words,
    section: wingSection(wing.chord * MM, wing.creases.map(({at}) => at * MM), folds, t, wing.foldFace),
    places: {
      thickness: t, wingAt: arrangement.wingAt * MM, chord: wing.chord * MM, tipBack: tip.back * MM, tipChord: tip.chord * MM, halfSpan: wing.span / 2 * MM,
      tailAt: arrangement.tailAt * MM, tailChord: tail.chord * MM, halfTail: tail.span / 2 * MM, bodyLength: body.length * MM, bodyHeight: body.height * MM,
      creases: wing.creases.map(({at}) => at * MM), joints: wing.joints.map(({at}) => at * MM),
      ...fin && {fin: {rear: Math.max(...fin.map(({x}) => x)), top: Math.min(...fin.map(({y}) => y)), foot: -t}},
      ...panelTip && {tip: panelTip},
      ...balance && {balance: {at: balance.at * MM, from: balance.target.from * MM, to: balance.target.to * MM}},
      foldPivots: wing.joints.flatMap((_, i) => {
        const at = flown?.pivots[i + first];
        const panel = dihedral?.panels[i + first];
        return at && panel ? [{at, from: dihedral.panels[i + first - 1]?.angle ?? 0, to: panel.angle, length: (panel.to - panel.from) * MM}] : [];
      }),
    },
  };
}
