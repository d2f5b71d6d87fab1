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
    case 'edge': return outermost ? 'under its end' : 'under the next joint';
    case 'inset': return `its inner edge ${inset} in from the ${end}`;
    case 'bench': return `its inner edge ${fromJoint} from the joint`;
    case 'plumb': return `and ${width} wide, flush below the ${end}`;
  }
};

interface Said extends Stand {
  readonly propped: Propped;
  readonly block: string;
  readonly angle: string;
  readonly fold: string;
}

const what = (a: Said): string =>
  a.propped === 'one-half' ? 'Lay one half flat and prop the other on' : a.propped === 'both-halves' ? 'Prop both halves alike, each on' : `Prop each ${a.outermost ? 'tip' : 'panel'} on`;

export const dihedralWords = topic('dihedral', {
  heading: 'Dihedral: how high to prop the tips',
  flat: 'This wing is **flat**: it has no dihedral joint yet.',
  /** The block follows from the angle. */
  blockFor: (a: Said) =>
    `${what(a)} a block **${a.block}** high${a.where === 'plumb' ? '' : a.where === 'edge' ? '' : ','} ${standing(a)}: ${
      a.propped === 'panel' ? `the ${a.outermost ? 'tip ' : ''}panel rises **${a.angle}**` : `each half rises **${a.angle}**, a fold of ${a.fold} in all`}.`,
  /** The angle follows from the block. */
  angleFrom: (a: Said) =>
    `${what(a)} a block ${a.block} high${a.where === 'plumb' ? '' : a.where === 'edge' ? '' : ','} ${standing(a)}: ${
      a.propped === 'panel' ? `the ${a.outermost ? 'tip ' : ''}panel rises **${a.angle}**` : `each half rises **${a.angle}**, a fold of ${a.fold} in all`}.`,
  /** The place follows from both. */
  placeFor: (a: Said) =>
    `Stand the block of ${a.block} **${a.fromJoint} from the joint**, ${a.inset} in from the ${a.outermost ? 'tip' : 'next joint'}: ${
      a.propped === 'panel' ? `the ${a.outermost ? 'tip ' : ''}panel rises **${a.angle}**` : `each half rises **${a.angle}**`}.`,
  several: 'Work from the tips inwards.',
  flying: (a: {rise: string; flat: string; flown: string}) => `The tips stand ${a.rise} over the middle. The wing is ${a.flat} long flat and ${a.flown} from tip to tip as it flies.`,
  actsLike: (v: string) => `It acts like a plain V of ${v} (equivalent dihedral).`,
  how: {
    closing: 'As it lies on the bench, the top of the wing faces you and the groove is on the top; the skin on the bench stays whole.',
    opening: 'As it lies on the bench, the top of the wing faces you and its skin stays whole; the slit opens underneath.',
  },
  groove: (width: string) => `Make the groove at least ${width} wide at the surface, or it shuts before the panel is up.`,
  grooveCrest: (a: {edge: string; crest: string}) =>
    `Make the groove at least ${a.edge} wide at the front and rear edges and ${a.crest} at the crest of the camber, or it shuts before the panel is up.`,
  slot: (width: string) => `The slit opens to ${width} at the bench: fill it with glue.`,
  slit: {
    closing: 'A skin that is already folded for camber cannot fold across itself: slit the hinge skin at the crest and trim it to the groove.',
    opening: 'A skin that is already folded for camber cannot fold across itself: it stays whole only at the crest, so slit it ahead of the crest and behind.',
  },
  off: {
    panel: (a: {step: string; angle: string}) => `A block ${a.step} too tall on one side lifts that tip ${a.angle} more than the other.`,
    halves: (a: {step: string; angle: string}) => `A block ${a.step} too tall adds ${a.angle} to each half.`,
  },
  caution: 'Hot glue burns and a fresh blade slips: cut away from your fingers, on a mat, and keep to the rules of your room and of whoever supervises it.',
  fields: {
    at: 'Joint from the middle', angle: 'Panel rises', block: 'Block under its end',
    nth: (label: string, n: number) => `${label}, joint ${String(n)}`,
  },
  add: 'One more joint on each side',
  remove: 'One joint less',
  picture: (a: {joints: string; flown: string; rise: string}) => `Front view of half the wing on the bench. ${a.joints} Below, the whole wing as it flies, ${a.flown} from tip to tip, its tips ${a.rise} high.`,
  pictureFlat: 'Front view of the wing: flat from tip to tip.',
  pictureJoint: (a: {at: string; block: string; angle: string}) => `Joint ${a.at} from the middle, propped on a block ${a.block} high, the panel at ${a.angle} to the bench.`,
  title: (order: number, at: string) => `${String(order)}. Joint ${at}`,
  atMiddle: 'in the middle',
  atFromMiddle: (at: string) => `${at} from the middle`,
  middle: 'middle of the wing',
  flownTitle: 'As it flies, from the front',
  rows: {
    joint: (n: number) => `Joint ${String(n)}`,
    at: 'From the middle', angle: 'Panel rises', fold: 'Whole fold', panel: 'Panel, flat', block: 'Block', fromJoint: 'Joint to where it touches', inset: 'From there to the end of the panel',
    groove: 'Groove, at least', grooveCrest: 'Groove at the crest, at least', slot: 'Slit that opens', perMillimetre: 'For each millimetre of block',
    rise: 'Tips over the middle', flown: 'Span as flown', equivalent: 'Equivalent dihedral', sameRise: 'The V with tips as high',
  },
  because: {
    'closing-edge': 'Right-angled triangle on the bench: h is the height of the block, L the flat length of the propped panel, f its angle to the bench.',
    'closing-inset': 'Right-angled triangle on the bench: h is the height of the block, L the propped panel, e how far in from its end the block touches, f its angle to the bench.',
    'closing-bench': 'Right-angled triangle on the bench: h is the height of the block, x the distance from the joint to its inner edge, f the panel’s angle to the bench.',
    'closing-plumb': 'The inner edge of a block w wide, its outer face plumb below the end, lies L cos f − w from the joint; the smallest root counts.',
    'opening': 'With its whole skin facing up the panel turns about its upper corner, a board’s thickness t above the bench, so its lower edge starts beyond the joint.',
    'place': 'The same triangle turned round: the block is given, and e, how far in from the end it must touch, is what is left.',
    'one-half': 'One half lies flat, so the other rises by the whole fold: f is twice the dihedral Γ.',
    'both-halves': 'Both halves rise alike, so f is the dihedral Γ of each half; the whole fold is twice that.',
    'flown': 'Each panel counts with the sine and the cosine of its angle from level, all joints further in added up.',
    'equivalent': 'Equivalent dihedral here is moment-weighted: each strip of the wing rolls it in proportion to its angle, its lever y and its chord c (strip theory). By the height of the tips alone the V would have another angle; both are called equivalent dihedral.',
    'groove': 'Both sides of the groove meet in the plane that halves the fold. The joint turns about the line of the lower edges, so the groove is as wide as its depth there asks for, z being the height of the upper face over that line.',
    'slot': 'The two lower edges of the cut turn about the upper corner, a board’s thickness away.',
  },
  source: 'Plane trigonometry, worked out for this element and checked against turning the panel step by step.',
  equivalentSource: 'Idea: B. Beron-Rawdon, “Dihedral”, Model Aviation, 1988 to 1990; the weighting is worked out here from strip theory.',
  spoken: {
    block: (a: {block: string; angle: string}) => `The height h of the block comes to ${a.block} for an angle f of ${a.angle}`,
    angle: (a: {block: string; angle: string}) => `The angle f comes to ${a.angle} for a block h of ${a.block}`,
    place: (a: {inset: string}) => `The distance e comes to ${a.inset}`,
    groove: (a: {groove: string}) => `The groove comes to ${a.groove}`,
    rise: (a: {rise: string}) => `The rise of the tips, the sum of each panel's length times the sine of its angle, comes to ${a.rise}`,
    flown: (a: {flown: string}) => `The span as flown, twice the sum of each panel's length times the cosine of its angle, comes to ${a.flown}`,
    equivalent: (a: {equivalent: string}) => `The equivalent dihedral, the integral of dihedral times chord times lever over the integral of chord times lever, comes to ${a.equivalent}`,
  },
});
