import {topic} from '../topic.js';

/** How dihedral is worked out, and what to mind while it is glued. */
export const dihedralWorkingWords = topic('dihedral-working', {
  how: {
    closing: 'As it lies on the bench, the top of the wing faces you and the groove is on the top; the skin on the bench stays whole.',
    opening: 'As it lies on the bench, the top of the wing faces you and its skin stays whole; the slit opens underneath.',
  },
  slit: {
    closing: 'A skin that is already folded for camber cannot fold across itself: slit the hinge skin at the crest and trim it to the groove.',
    opening: 'A skin that is already folded for camber cannot fold across itself: it stays whole only at the crest, so slit it ahead of the crest and behind.',
  },
  step: (order: number, where: string) => `${String(order)}. Joint ${where}`,
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
    'flown': 'H is how high the tips stand over the middle and b the span as flown: each panel counts with the sine and the cosine of its angle Γ from level, the angles of all joints further in added up.',
    'equivalent': 'Equivalent dihedral here is moment-weighted: each strip of the wing rolls it in proportion to its angle, its lever y and its chord c (strip theory). By the height of the tips alone the V would have another angle; both are called equivalent dihedral.',
    'groove': 'Both sides of the groove meet in the plane that halves the fold. The joint turns about the line of the lower edges, so the groove g is widest where the upper face stands highest over that line: z is its height there and φ the whole fold.',
    'slot': 'The two lower edges of the cut turn about the upper corner, a board’s thickness t away, by the whole fold φ; g is what opens between them.',
  },
  source: 'Plane trigonometry, worked out for this element and checked against turning the panel step by step.',
  equivalentSource: 'Idea: B. Beron-Rawdon, “Dihedral”, Model Aviation, 1988 to 1990; the weighting is worked out here from strip theory.',
  spoken: {
    block: (a: {block: string; angle: string}) => `The height h of the block comes to ${a.block} for an angle f of ${a.angle}`,
    angle: (a: {block: string; angle: string}) => `The angle f comes to ${a.angle} for a block h of ${a.block}`,
    place: (a: {inset: string}) => `The distance e comes to ${a.inset}`,
    panel: (value: string) => `For one panel that makes ${value}`,
    groove: (a: {groove: string}) => `The groove comes to ${a.groove}`,
    rise: (a: {rise: string}) => `The rise of the tips, the sum of each panel's length times the sine of its angle, comes to ${a.rise}`,
    flown: (a: {flown: string}) => `The span as flown, twice the sum of each panel's length times the cosine of its angle, comes to ${a.flown}`,
    equivalent: (a: {equivalent: string}) => `The equivalent dihedral, the integral of dihedral times chord times lever over the integral of chord times lever, comes to ${a.equivalent}`,
  },
});
