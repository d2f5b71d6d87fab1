import {topic} from '../topic.js';

type Side = 'rear' | 'front' | 'crest';

/** What is propped, how its stack stands, and the distance that says where. */
interface Propped {
  readonly side: Side;
  readonly place: 'edge' | 'inset' | 'bench' | 'plumb';
  readonly at: string;
}

const edges: Readonly<Record<Side, string>> = {rear: 'rear edge', front: 'front edge', crest: 'crease'};

const panels: Readonly<Record<Side, string>> = {rear: 'rear panel', front: 'front panel', crest: 'crease'};

/** What to prop and where: the edge, unless the stack stands somewhere else. */
const what = ({side, place, at}: Propped): string => ({
  edge: `the ${edges[side]}`, inset: `the ${panels[side]}, ${at} in from its edge,`, bench: `the ${panels[side]}, ${at} from the crease,`,
  plumb: `the ${panels[side]}, flush below its edge,`, crest: 'the crease',
})[side === 'crest' ? 'crest' : place];

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
  gives: (a: Propped & {stack: string; height: string; fold: string; camber: string}) =>
    `Prop ${what(a)} on **${a.stack}, ${a.height}**. That folds the wing ${a.fold} and gives it **${a.camber} camber**.`,
  wanted: (a: Propped & {stack: string; height: string; camber: string; built: string}) =>
    `For **${a.camber} camber**, prop ${what(a)} **${a.height}** high: ${a.stack} ${a.built}.`,
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
  caution: 'Hot glue burns and a fresh blade slips: cut away from your fingers, on a mat, and keep to the rules of your room and of whoever supervises it.',
});
