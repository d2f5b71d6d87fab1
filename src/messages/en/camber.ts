import {topic} from '../topic.js';

type Side = 'rear' | 'front' | 'crest';

const edges: Readonly<Record<Side, string>> = {rear: 'rear edge', front: 'front edge', crest: 'crease'};

const pieces = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${String(n)} ${many}`);

/** Joined as one says it: "2 layers of board, 3 cards and 1 sheet of paper". */
const series = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1] ?? ''}`;

export const camberWords = topic('camber', {
  heading: 'Camber: how high to prop the wing',
  stack: (boards: number, cards: number, papers: number) => series([
    ...(boards ? [pieces(boards, 'layer of board', 'layers of board')] : []),
    ...(cards ? [pieces(cards, 'piece of card', 'pieces of card')] : []),
    ...(papers ? [pieces(papers, 'sheet of paper', 'sheets of paper')] : []),
  ]) || 'nothing',
  gives: (a: {side: Side; stack: string; height: string; fold: string; camber: string}) =>
    `Prop the ${edges[a.side]} on **${a.stack}, ${a.height}**. That folds the wing ${a.fold} and gives it **${a.camber} camber**.`,
  wanted: (a: {side: Side; stack: string; height: string; camber: string; built: string}) =>
    `For **${a.camber} camber** the ${edges[a.side]} must stand **${a.height}** high: ${a.stack} ${a.built}.`,
  builtExactly: 'give just that',
  builtNearly: (camber: string) => `give ${camber}`,
  flat: 'The wing lies **flat**: with nothing under it there is no camber.',
  crest: (a: {height: string; at: string; edgeRise: string}) =>
    `The crest stands ${a.height} above the line from front edge to rear edge, ${a.at} behind the front edge.`,
  wholeLayers: (a: {layers: number; camber: string}) => `${pieces(a.layers, 'whole layer', 'whole layers')} would give ${a.camber}.`,
  groove: (width: string) => `The groove must be at least ${width} wide at the surface, or it stops the fold.`,
  slot: (width: string) => `The slit underneath opens to ${width}: fill it with glue.`,
  stopped: (fold: string) => `The groove is shut at ${fold}: a taller stack cannot fold the wing further.`,
  moved: (a: {fold: string; atEdge: string}) => `Pushed in as it is, the same stack folds the wing ${a.fold}; with the edge resting on it, ${a.atEdge}.`,
  tip: (a: {height: string}) => `That is for the middle of the wing; at its narrower tip the stack should be ${a.height} high for the same camber.`,
  missed: 'The stack stands so that the panel **slips past it**: its edge comes down in front of the stack and leans on its side.',
  clear: 'The stack stands clear of the panel: the wing lies flat.',
  how: {
    closing: 'Lay the wing with its whole skin on the bench and the groove facing you. Crease it, prop it, then run glue into the groove and leave the stack in until it is cold.',
    opening: 'Lay the wing with its whole skin facing you. Prop it, then turn it over with the stack held in place and fill the slit with glue.',
  },
  faces: {
    closing: 'The side that faces you on the bench will be the underside in flight.',
    opening: 'The side that faces you on the bench will be the underside in flight.',
  },
  caution: 'Hot glue burns and a fresh blade slips: cut away from your fingers, on a mat, and keep to the rules of your room and of whoever supervises it.',
  picture: (a: {fold: string; height: string; contact: string}) => `Side view of the wing on the bench, folded ${a.fold}, propped ${a.height} high. ${a.contact}`,
  contact: {
    'panel-root-on-stack-top': 'The opened slit stands on the stack.',
    'panel-edge-against-stack-face': 'The edge of the panel leans against the side of the stack.',
    'two-edges-under-crest': 'The stack touches with both its upper edges.',
    'none': 'Nothing touches the stack.',
    'panel-edge-on-stack-top': 'The edge of the panel rests on top of the stack.',
    'stack-edge-under-panel': 'The stack touches the panel with its upper edge nearest the crease.',
  },
  touches: 'touches here',
  bench: 'bench',
  crease: 'crease',
  creases: 'Creases from the front edge',
  flatPanel: 'lies flat',
  rows: {
    fold: 'Fold', camber: 'Camber over the true chord', camberHeight: 'Height of the crest', crestAt: 'Crest behind the front edge', chord: 'True chord, as folded',
    stack: 'Height of the stack', rise: 'Rise of the free edge', contact: 'From the crease to where it touches', groove: 'Groove to close, at least', slot: 'Slit that opens', glue: 'Glue to fill, for each length of crease',
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
