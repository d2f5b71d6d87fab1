import type {GliderDesign} from '../design/design.js';
import {wingClashes} from '../design/clashes.js';
import {
  blockForV, equivalentDihedral, foldFromProp, grooveToClose, placeForFold, placeForV, propForFold, proppedBy, sameRiseDihedral, slotThatOpens, vFromBlock, wingAsFlown,
} from '../geometry/fold/index.js';
import type {ContactKind, DihedralPanel, FoldFromProp, Panel, Prop, PropPlace, PropPlacing} from '../geometry/fold/index.js';
import {sectionAt} from '../geometry/planform/section-at.js';
import {memo} from '../memo.js';
import {good, refused} from '../problem.js';
import type {Outcome} from '../problem.js';
import {wingStations} from './wing-stations.js';

type Wing = GliderDesign['wing'];
type Board = GliderDesign['board'];

/** One dihedral joint as it is glued on the bench. Lengths in m, angles in rad. */
export interface JointFold {
  /** From the centre line, flat. */
  readonly at: number;
  /** By how much the panel outside rises from the panel inside, on each side. */
  readonly angle: number;
  /** The whole fold: twice the angle for a joint in the middle. */
  readonly fold: number;
  /** The angle between the propped panel and the bench: the whole fold where the other half lies flat. */
  readonly lean: number;
  /** What is propped: the panel outside a joint, one half of a V, or both halves alike. */
  readonly propped: 'panel' | 'one-half' | 'both-halves';
  /** Flat length of the propped panel, from this joint to the next or to the tip. */
  readonly panel: number;
  /** Height of the block. */
  readonly block: number;
  readonly place: BlockPlace;
  /** A closing groove is at least this wide at the surface of a flat board. */
  readonly grooveLeast: number;
  /** An opening slit is this wide at the bench. */
  readonly slot: number;
  /** Height of the propped panel's outer end, lower face, over the bench. */
  readonly rise: number;
  /** What a block one millimetre taller adds to `angle`; missing where none could be stood there. */
  readonly perMillimetre?: number;
}

/** Where a panel touches its block. */
export interface BlockPlace {
  readonly kind: ContactKind;
  /** Along the bench from the joint to the block's inner upper edge. */
  readonly fromJoint: number;
  /** Where they touch, over the bench: the block's height unless it is missed. */
  readonly height: number;
  /** Along the panel from the contact to its outer end. */
  readonly inset: number;
}

export interface WingDihedral {
  /** From the centre outwards; they are glued from the outside in. */
  readonly joints: readonly JointFold[];
  /** The panels of one half between flat distances from the centre, each with its angle from level as it flies. */
  readonly panels: readonly {readonly from: number; readonly to: number; readonly angle: number}[];
  /** Tip to tip, straight across. */
  readonly spanAsFlown: number;
  /** Height of the tips over the middle of the wing. */
  readonly tipRise: number;
  /** ∫ Γ c y dy / ∫ c y dy: the V whose dihedral acts as strongly, each strip counted by its lever and its chord. */
  readonly equivalent: number;
  /** The V whose tips stand as high. */
  readonly sameRiseV: number;
}

const MILLIMETRE = 1e-3;

/**
 * The dihedral of a wing: each joint as it is propped and glued on the bench, and the wing as it flies.
 *
 * `wing.dihedralBy` says what is given: the angles (blocks follow), the blocks (angles follow), or both (the place of each block
 * follows). Refused with the clashes of the wing's joints, 'dihedral-past-upright' {angle}, and what the geometry of a
 * propped panel refuses.
 */
export const wingDihedral: (wing: Wing, board: Board) => Outcome<WingDihedral> = memo((wing: Wing, board: Board) => {
  const clashes = wingClashes(wing).filter(({path}) => path !== 'wing.creases');
  if (clashes.length) return refused(...clashes);
  const joints: JointFold[] = [];
  for (const index of wing.joints.keys()) {
    const joint = foldJoint(wing, board.thickness, index);
    if (!joint.ok) return joint;
    joints.push(joint.value);
  }
  const panels = panelsOf(wing.span / 2, joints);
  const steepest = Math.max(...panels.map(({angle}) => angle));
  if (steepest > Math.PI / 2) return refused({code: 'dihedral-past-upright', path: 'wing.joints', args: {angle: steepest}});
  const {span, tipRise} = wingAsFlown(wing.span / 2, joints);
  return good({
    joints, panels, tipRise, spanAsFlown: span,
    equivalent: equivalentDihedral(strips(wing, panels)), sameRiseV: sameRiseDihedral(tipRise, wing.span / 2),
  });
});

const beside = (path: string, {problems}: ReturnType<typeof refused>): ReturnType<typeof refused> =>
  refused(...problems.map((problem) => ({path, ...problem})));

/** One joint on the bench: the propped panel by its angle to the bench, whatever kind of joint it is. */
interface Bench {
  readonly propped: JointFold['propped'];
  readonly panel: Panel;
  /** By how much the panel leans for each radian of the joint's angle. */
  readonly leanPer: 1 | 2;
  lean(prop: Prop): Outcome<FoldFromProp & {readonly lean: number}>;
  block(angle: number, prop: PropPlacing): Outcome<{readonly height: number}>;
  place(angle: number, height: number): Outcome<PropPlace>;
}

function benchOf(wing: Wing, thickness: number, index: number): Bench {
  const at = wing.joints[index]?.at ?? 0;
  const panel: Panel = {length: (wing.joints[index + 1]?.at ?? wing.span / 2) - at, thickness, face: wing.jointFace};
  if (at > 0) {
    return {
      propped: 'panel', panel, leanPer: 1,
      lean: (prop) => leaning(onBlock(panel, prop), ({angle}) => angle),
      block: (angle, prop) => propForFold(panel, angle, prop),
      place: (angle, height) => placeForFold(panel, angle, height),
    };
  }
  const held = wing.vPropped;
  return {
    propped: held === 'one' ? 'one-half' : 'both-halves', panel, leanPer: held === 'one' ? 2 : 1,
    lean: (prop) => leaning(vFromBlock(panel, prop, held), ({angle, panelAngle}) => (held === 'one' ? angle : panelAngle)),
    block: (angle, prop) => blockForV(panel, angle, prop, held),
    place: (angle, height) => placeForV(panel, angle, height, held),
  };
}

/** A block that stands too far out is missed: the panel slips past its top or never meets it. */
function onBlock(panel: Panel, prop: Prop): Outcome<FoldFromProp> {
  const fold = foldFromProp(panel, prop);
  return fold.ok || prop.where !== 'bench' ? fold
    : proppedBy(panel, {height: prop.height, nearFace: prop.fromCrease ?? panel.length, width: prop.width ?? MILLIMETRE});
}

const leaning = <F extends FoldFromProp>(fold: Outcome<F>, lean: (fold: F) => number): Outcome<F & {readonly lean: number}> =>
  (fold.ok ? good({...fold.value, lean: lean(fold.value)}) : fold);

function foldJoint(wing: Wing, thickness: number, index: number): Outcome<JointFold> {
  const {at, angle: wanted} = wing.joints[index] ?? {at: 0, angle: 0};
  const bench = benchOf(wing, thickness, index);
  const {propped, panel, leanPer} = bench;
  const byBlock = wing.dihedralBy === 'block';
  const path = byBlock ? 'wing.blocks' : 'wing.joints';
  const prop = propOf(wing, bench, wanted, wing.blocks[index]?.height ?? 0);
  if (!prop.ok) return beside(path, prop);
  const found = bench.lean(prop.value);
  if (!found.ok) return beside(path, found);
  const lean = byBlock ? found.value.lean : wanted * leanPer;
  const angle = lean / leanPer;
  const fold = at > 0 ? angle : 2 * angle;
  const taller = bench.lean({...prop.value, height: prop.value.height + MILLIMETRE});
  const {contact, contactKind, alongPanel, edgeRise} = found.value;
  return good({
    at, angle, fold, lean, propped, panel: panel.length, block: prop.value.height,
    place: {
      kind: contactKind, height: contact.y, inset: panel.length - alongPanel,
      // a block that the panel has missed stands where it stands
      fromJoint: prop.value.where === 'bench' ? prop.value.fromCrease ?? contact.x : contact.x,
    },
    grooveLeast: grooveToClose(thickness, fold), slot: slotThatOpens(thickness, fold), rise: edgeRise,
    ...(taller.ok && {perMillimetre: (taller.value.lean - lean) / leanPer}),
  });
}

/** The block under a panel: as tall as the angle needs, as it was typed, or as it was typed and moved to where the angle needs it. */
function propOf(wing: Wing, bench: Bench, angle: number, height: number): Outcome<Prop> {
  const place = {where: wing.jointPlace, inset: wing.blockInset, fromCrease: wing.blockFromJoint, width: wing.blockWidth};
  switch (wing.dihedralBy) {
    case 'block': return good({...place, height});
    case 'angle': {
      const block = bench.block(angle, place);
      return block.ok ? good({...place, height: block.value.height}) : block;
    }
    case 'place': {
      const found = bench.place(angle, height);
      return found.ok ? good({where: 'inset', inset: found.value.inset, height}) : found;
    }
  }
}

function panelsOf(half: number, joints: readonly JointFold[]): WingDihedral['panels'] {
  const edges = [...(joints[0]?.at === 0 ? [] : [{at: 0, angle: 0}]), ...joints];
  let angle = 0;
  return edges.map((edge, i) => ({from: edge.at, to: edges[i + 1]?.at ?? half, angle: angle += edge.angle}));
}

/** The half wing cut at every joint and every corner of its outline. */
function strips(wing: Wing, panels: WingDihedral['panels']): readonly DihedralPanel[] {
  const stations = wingStations(wing);
  const chordAt = (at: number): number => sectionAt(stations, at)?.chord ?? wing.chord;
  return panels.flatMap(({from, to, angle}) => {
    const cuts = [from, ...stations.map(({at}) => at).filter((at) => at > from && at < to), to];
    return cuts.slice(1).map((y1, i) => {
      const y0 = cuts[i] ?? from;
      return {y0, y1, chord0: chordAt(y0), chord1: chordAt(y1), angle};
    });
  });
}
