import type {dihedralWords} from '../en/dihedral.js';

type Said = Parameters<typeof dihedralWords.en.by.angle>[0];

const end = (a: Said): string => (a.outermost ? 'Flügelende' : 'nächsten Knick');

/** What to prop on what: "Jede Flügelspitze am Ende auf einen 40 mm hohen Klotz stützen". */
function prop(a: Said, block: string): string {
  const at = a.where === 'edge' ? (a.outermost ? ' am Ende' : ' am nächsten Knick') : '';
  const size = a.where === 'plumb' ? `${block} hohen und ${a.width} breiten` : `${block} hohen`;
  const place = {
    edge: '', inset: `, dessen innere Kante ${a.inset} vor dem ${end(a)} steht`, bench: `, dessen innere Kante ${a.fromJoint} vom Knick steht`,
    plumb: `, außen bündig mit dem ${end(a)}`,
  }[a.where];
  const on = `auf einen ${size} Klotz stützen${place}`;
  switch (a.propped) {
    case 'one-half': return `Eine Hälfte flach auflegen und die andere${at} ${on}`;
    case 'both-halves': return `Beide Hälften gleich legen, jede${at} ${on}`;
    case 'panel': return a.outermost ? `Jeden Außenflügel${at} ${on}` : `Dann jeden inneren Flügelteil${at} ${on}`;
  }
}

const rises = (a: Said): string => a.propped === 'panel'
  ? `Der ${a.outermost ? 'Außenflügel' : 'Flügelteil'} steigt um **${a.angle}**` : `Jede Hälfte steigt um **${a.angle}**, zusammen ein Knick von ${a.fold}`;

const words: typeof dihedralWords.en = {
  heading: 'V-Form: wie hoch die Flügelenden stützen',
  flat: 'Dieser Flügel ist **flach**: Er hat noch keinen V-Knick.',
  by: {
    angle: (a) => `${prop(a, `**${a.block}**`)}: ${rises(a)}.`,
    block: (a) => `${prop(a, a.block)}: ${rises(a)}.`,
    place: (a) => `Den ${a.block} hohen Klotz **${a.fromJoint} vom Knick** aufstellen, ${a.inset} vor dem ${end(a)}: ${rises(a)}.`,
  },
  level: (a) => `Der ${a.outermost ? 'Außenflügel' : 'Flügelteil'} bleibt **flach** liegen: Dort wird nichts gestützt.`,
  missed: (a) => `Der Klotz steht **zu weit außen**: Der ${a.outermost ? 'Außenflügel' : 'Flügelteil'} rutscht an ihm vorbei und lehnt bei ${a.angle} an seiner Seite. Den Klotz weiter nach innen schieben.`,
  clear: (a) => `Der Klotz **berührt nichts**: Der ${a.outermost ? 'Außenflügel' : 'Flügelteil'} liegt flach. Den Klotz darunterschieben.`,
  several: 'Von den Flügelenden nach innen arbeiten.',
  flying: (a) => `Die Flügelenden stehen ${a.rise} über der Mitte, und aus ${a.flat} Spannweite werden im Flug ${a.flown}.`,
  actsLike: (v) => `Der Flügel wirkt wie ein einfaches V von ${v} (gleichwertige V-Form).`,
  closing: {
    flat: (width) => `Die Nut muss an der Oberfläche mindestens ${width} breit sein, sonst geht sie zu, bevor der Flügelteil oben ist.`,
    cambered: (width) =>
      `Die Nut muss an Vorder- und Hinterkante mindestens ${width} breit sein und am Scheitel der Wölbung breiter (siehe Rechenweg); dort muss die Deckschicht im Knick geschlitzt werden.`,
  },
  opening: {
    flat: (width) => `Der Schlitz unten öffnet sich auf ${width}: mit Kleber füllen.`,
    cambered: (width) =>
      `Der Schlitz unten öffnet sich auf ${width}: mit Kleber füllen. Vor und hinter dem Scheitel der Wölbung muss die Deckschicht im Knick geschlitzt werden.`,
  },
  off: {
    panel: (a) => `Ist der Klotz auf einer Seite ${a.step} zu hoch, steigt der Flügel dort um ${a.angle} mehr als auf der anderen.`,
    halves: (a) => `Ist der Klotz ${a.step} zu hoch, steigt jede Hälfte um ${a.angle} mehr.`,
  },
  fields: {
    at: 'Knick ab Mitte', angle: 'Flügelteil steigt um', block: 'Klotz am Ende',
    nth: {at: (n) => `Knick ${String(n)} ab Mitte`, angle: (n) => `Teil ${String(n)} steigt um`, block: (n) => `Klotz unter Teil ${String(n)}`},
  },
  add: 'Ein Knick mehr je Seite',
  remove: 'Ein Knick weniger',
  picture: (a) => `Vorderansicht des halben Flügels auf dem Tisch. ${a.joints} Darunter der ganze Flügel im Flug, ${a.flown} von Ende zu Ende, die Flügelenden ${a.rise} hoch.`,
  pictureFlat: 'Vorderansicht des Flügels: flach von Ende zu Ende.',
  pictureJoint: (a) => `Knick ${a.at} ab Mitte, gestützt auf einen ${a.block} hohen Klotz, der Flügelteil ${a.angle} schräg zum Tisch.`,
  caution: 'Heißkleber verbrennt die Haut, und eine frische Klinge rutscht ab: von den Fingern weg schneiden, auf einer Matte, und die Regeln des Raums und der Aufsicht einhalten.',
};

export default words;
