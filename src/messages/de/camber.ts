import type {camberWords} from '../en/camber.js';

type Propped = Parameters<typeof camberWords.en.gives>[0];

const parts = {rear: 'den hinteren Flügelteil', front: 'den vorderen Flügelteil'} as const;

/** What to prop and where, as the object of "stützen". */
const what = ({side, place, at}: Pick<Propped, 'side' | 'place' | 'at'>): string => {
  if (side === 'crest') return 'den Falz';
  switch (place) {
    case 'edge': return side === 'rear' ? 'die Hinterkante' : 'die Vorderkante';
    case 'inset': return `${parts[side]} ${at} von der Kante nach innen`;
    case 'bench': return `${parts[side]} ${at} vom Falz`;
    case 'plumb': return `${parts[side]} bündig unter der Kante`;
  }
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const layers = (n: number, kind = ''): string => `${String(n)} ${kind}${n === 1 ? 'Lage' : 'Lagen'}`;

/** Joined as one says it: "2 Lagen Platte, 3 Stück Karton und 1 Blatt Papier". */
const series = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} und ${parts.at(-1) ?? ''}`;

const words: typeof camberWords.en = {
  heading: 'Wölbung: wie hoch den Flügel stützen',
  stack: (boards, cards, papers) => series([
    ...(boards ? [`${layers(boards)} Platte`] : []),
    ...(cards ? [`${String(cards)} Stück Karton`] : []),
    ...(papers ? [`${String(papers)} Blatt Papier`] : []),
  ]) || 'nichts',
  gives: (a) => `${capital(what(a))} auf **${a.stack} (${a.height})** stützen. Das knickt den Flügel um ${a.fold} und gibt ihm **${a.camber} Wölbung**.`,
  wanted: (a) => `Für **${a.camber} Wölbung** ${what(a)} **${a.height}** hoch stützen: Mit ${a.stack} ${a.built}.`,
  builtExactly: 'wird es genau das',
  builtNearly: (camber) => `werden es ${camber}`,
  flat: 'Der Flügel liegt **flach**: Ohne etwas darunter gibt es keine Wölbung.',
  crest: (a) => `Der Scheitel liegt ${a.height} über der Linie von der Vorder- zur Hinterkante, ${a.at} hinter der Vorderkante.`,
  wholeLayers: (a) => `${layers(a.layers, 'ganze ')} ${a.layers === 1 ? 'ergäbe' : 'ergäben'} ${a.camber}.`,
  groove: (width) => `Die Nut muss an der Oberfläche mindestens ${width} breit sein, sonst geht sie zu früh zu.`,
  slot: (width) => `Der Schlitz unten öffnet sich auf ${width}: mit Kleber füllen.`,
  stopped: (fold) => `Bei ${fold} ist die Nut zu: Ein höherer Stapel knickt den Flügel nicht weiter.`,
  moved: (a) => `So untergeschoben knickt der Stapel den Flügel um ${a.fold}; mit aufliegender Kante wären es ${a.atEdge}.`,
  tip: (a) => `Das gilt für die Flügelmitte; am schmaleren Flügelende gibt ein Stapel von ${a.height} dieselbe Wölbung.`,
  missed: 'Der Stapel steht so, dass der Flügelteil **an ihm vorbeirutscht**: Die Kante kommt vor dem Stapel herunter und lehnt an seiner Seite.',
  clear: 'Der Stapel berührt den Flügel nicht: Der Flügel liegt flach.',
  picture: (a) => `Seitenansicht des Flügels auf dem Tisch, um ${a.fold} geknickt, ${a.height} hoch gestützt. ${a.contact}`,
  contact: {
    'panel-root-on-stack-top': 'Der geöffnete Schlitz steht auf dem Stapel.',
    'panel-edge-against-stack-face': 'Die Kante des Flügelteils lehnt an der Seite des Stapels.',
    'two-edges-under-crest': 'Der Stapel berührt mit seinen beiden oberen Kanten.',
    'none': 'Nichts berührt den Stapel.',
    'panel-edge-on-stack-top': 'Die Kante des Flügelteils liegt oben auf dem Stapel.',
    'stack-edge-under-panel': 'Der Stapel berührt den Flügelteil mit der oberen Kante, die dem Falz am nächsten ist.',
  },
  touches: 'berührt hier',
  bench: 'Tisch',
  crease: 'Falz',
  creases: 'Falze ab der Vorderkante',
  flatPanel: 'liegt flach',
  caution: 'Heißkleber verbrennt die Haut, und eine frische Klinge rutscht ab: von den Fingern weg schneiden, auf einer Matte, und die Regeln des Raums und der Aufsicht einhalten.',
};

export default words;
