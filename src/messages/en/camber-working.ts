import {topic} from '../topic.js';

export const camberWorkingWords = topic('camber-working', {
  how: {
    closing: 'Lay the wing with its whole skin on the bench and the groove facing you. Crease it, prop it, then run glue into the groove and leave the stack in until it is cold.',
    opening: 'Lay the wing with its whole skin facing you. Prop it, then turn it over with the stack held in place and fill the slit with glue.',
  },
  faces: {
    closing: 'The side that faces you on the bench will be the underside in flight.',
    opening: 'The side that faces you on the bench will be the underside in flight.',
  },
  rows: {
    fold: 'Fold', camber: 'Camber over the true chord', camberHeight: 'Height of the crest', crestAt: 'Crest behind the front edge', chord: 'True chord, as folded',
    stack: 'Height of the stack', rise: 'Rise of the free edge', contact: 'From the crease to where it touches', groove: 'Groove to close, at least', slot: 'Slit that opens', glue: 'Cross-section left to fill with glue',
  },
  because: {
    'edge': 'Right-angled triangle on the bench: h is the height of the stack, L the panel from crease to free edge.',
    'inset': 'Right-angled triangle on the bench: h is the height of the stack, L the panel, e how far in from its free edge the stack touches.',
    'bench': 'Right-angled triangle on the bench: h is the height of the stack, x the distance from the crease to its near edge.',
    'plumb': 'The near edge of a stack w wide, its outer face plumb below the free edge, lies L cos f − w from the crease; the smallest root counts.',
    'opening': 'With the whole skin facing up the panel turns about its upper corner, a board’s thickness t above the bench, so its lower edge starts behind the crease.',
    'crest': 'Board and bench make a triangle over the stack: a and b are the lower faces of the two panels (a closing groove takes its bevel off them), c the bench between their edges, w the width of the stack. The least fold counts.',
    'several': 'With several creases the fold is shared out evenly; each panel leans more than the one before it. Solved for the first fold at which the panel meets the stack.',
    'camber': 'Camber of a folded plate over its own, shortened chord: a and b are the front and the rear panel.',
  },
  source: 'Plane trigonometry; worked out for this element and checked against rotating the panel step by step.',
  spoken: {
    fold: (a: {height: string; length: string; fold: string}) => `f equals the arc sine of h over L: ${a.height} over ${a.length} gives ${a.fold}`,
    camber: (camber: string) => `camber over chord equals a b sine f, over a squared plus b squared plus two a b cosine f: ${camber}`,
  },
});
