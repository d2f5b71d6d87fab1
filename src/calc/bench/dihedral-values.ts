import type {DerivedValue} from '../derived-value.js';
import type {QuantityKind} from '../units/kinds.js';
import {wingDihedral} from './dihedral.js';
import type {JointFold, WingDihedral} from './dihedral.js';

const from = (kind: QuantityKind, pick: (dihedral: WingDihedral) => number): DerivedValue => ({
  kind,
  of: ({wing, board}) => {
    const found = wingDihedral(wing, board);
    return found.ok ? {ok: true, value: pick(found.value)} : found;
  },
});

/** Of the outermost joint; nothing for a flat wing. */
const atTip = (kind: QuantityKind, pick: (joint: JointFold) => number): DerivedValue =>
  from(kind, ({joints}) => { const joint = joints.at(-1); return joint ? pick(joint) : 0; });

/** What follows from the wing's dihedral joints. */
export const dihedralValues: Readonly<Record<string, DerivedValue>> = {
  block: atTip('length', ({block}) => block),
  angle: atTip('angle', ({angle}) => angle),
  panel: atTip('length', ({panel}) => panel),
  tipRise: from('length', ({tipRise}) => tipRise),
  spanAsFlown: from('length', ({spanAsFlown}) => spanAsFlown),
  equivalent: from('angle', ({equivalent}) => equivalent),
};
