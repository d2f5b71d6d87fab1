import {topic} from '../topic.js';

type Where = 'edge' | 'inset' | 'bench' | 'plumb';
type Propped = 'panel' | 'one-half' | 'both-halves';

interface Stand {
  readonly where: Where;
  readonly outermost: boolean;
  readonly inset: string;
  readonly fromJoint: string;
  readonly width: string;
}

/** Where the block stands, after "a block so high". */
const standing = ({where, outermost, inset, fromJoint, width}: Stand): string => {
  const end = outermost ? 'tip' : 'next joint';
  switch (where) {
    case 'edge': return outermost ? ' under its end' : ' under the next joint';
    case 'inset': return `, its inner edge ${inset} in from the ${end}`;
    case 'bench': return `, its inner edge ${fromJoint} from the joint`;
    case 'plumb': return ` and ${width} wide, flush below the ${end}`;
  }
};

interface Said extends Stand {
  readonly propped: Propped;
  readonly block: string;
  readonly angle: string;
  readonly fold: string;
}

const propped = (a: Said): string =>
  a.propped === 'one-half' ? 'Lay one half flat and prop the other on' : a.propped === 'both-halves' ? 'Prop both halves alike, each on'
    : a.outermost ? 'Prop each tip on' : 'Then prop each inner panel on';

const rises = (a: Said): string =>
  (a.propped === 'panel' ? `the ${a.outermost ? 'tip ' : ''}panel rises **${a.angle}**` : `each half rises **${a.angle}**, a fold of ${a.fold} in all`);

export const dihedralWords = topic('dihedral', {
  heading: 'Dihedral: how high to prop the tips',
  flat: 'This wing is **flat**: it has no dihedral joint yet.',
  /** What is given, and what follows from it. */
  by: {
    angle: (a: Said) => `${propped(a)} a block **${a.block}** high${standing(a)}: ${rises(a)}.`,
    block: (a: Said) => `${propped(a)} a block ${a.block} high${standing(a)}: ${rises(a)}.`,
    place: (a: Said) => `Stand the block of ${a.block} **${a.fromJoint} from the joint**, ${a.inset} in from the ${a.outermost ? 'tip' : 'next joint'}: ${rises(a)}.`,
  },
  level: (a: {outermost: boolean}) => `The ${a.outermost ? 'tip ' : ''}panel stays **flat**, in line with what lies inside of it: nothing is propped there.`,
  missed: (a: {outermost: boolean; angle: string}) =>
    `The block stands **too far out**: the ${a.outermost ? 'tip ' : ''}panel slips past its top and leans on its side at ${a.angle}. Push it further in.`,
  clear: (a: {outermost: boolean}) => `The block stands **clear** of the ${a.outermost ? 'tip ' : ''}panel, which lies flat. Push it in under the panel.`,
  several: 'Work from the tips inwards.',
  flying: (a: {rise: string; flat: string; flown: string}) => `The tips stand ${a.rise} over the middle, and the span of ${a.flat} becomes ${a.flown} as it flies.`,
  actsLike: (v: string) => `The wing acts like a plain V of ${v} (equivalent dihedral).`,
  closing: {
    flat: (width: string) => `The groove must be at least ${width} wide at the surface, or it shuts before the panel is up.`,
    cambered: (width: string) =>
      `The groove must be at least ${width} wide at the front and rear edges and wider at the crest of the camber (see the working), where the hinge skin has to be slit.`,
  },
  opening: {
    flat: (width: string) => `The slit underneath opens to ${width}: fill it with glue.`,
    cambered: (width: string) =>
      `The slit underneath opens to ${width}: fill it with glue. Ahead of the crest of the camber and behind it the hinge skin has to be slit.`,
  },
  off: {
    panel: (a: {step: string; angle: string}) => `A block ${a.step} too tall on one side lifts that tip ${a.angle} more than the other.`,
    halves: (a: {step: string; angle: string}) => `A block ${a.step} too tall adds ${a.angle} to each half.`,
  },
  fields: {
    at: 'Joint from the middle', angle: 'Panel rises', block: 'Block under its end',
    nth: {
      at: (n: number) => `Joint ${String(n)} from the middle`, angle: (n: number) => `Panel ${String(n)} rises`, block: (n: number) => `Block under panel ${String(n)}`,
    },
  },
  add: 'One more joint on each side',
  remove: 'One joint less',
  picture: (a: {joints: string; flown: string; rise: string}) => `Front view of half the wing on the bench. ${a.joints} Below, the whole wing as it flies, ${a.flown} from tip to tip, its tips ${a.rise} high.`,
  pictureFlat: 'Front view of the wing: flat from tip to tip.',
  pictureJoint: (a: {at: string; block: string; angle: string}) => `Joint ${a.at} from the middle, propped on a block ${a.block} high, the panel at ${a.angle} to the bench.`,
  caution: 'Hot glue burns and a fresh blade slips: cut away from your fingers, on a mat, and keep to the rules of your room and of whoever supervises it.',
});
