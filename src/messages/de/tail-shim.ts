import type {tailShimWords} from '../en/tail-shim.js';

type Surface = Parameters<typeof tailShimWords.en.flat>[0];
type Towards = Parameters<typeof tailShimWords.en.towards.more>[0];

const the = (surface: Surface): string => (surface === 'tail' ? 'das Höhenleitwerk' : 'der Flügel');
const ofThe = (surface: Surface): string => (surface === 'tail' ? 'des Höhenleitwerks' : 'des Flügels');

const edgeOf = (edge: Towards['edge']): string => (edge === 'front' ? 'Vorderkante' : 'Hinterkante');
const noNearer = (planned: string | undefined): string => planned === undefined ? '' : ` (geplant: ${planned}; mit ganzen Lagen geht es nicht genauer)`;
const then = (a: Towards): string => `Die Vorderkante zeigt dann **${a.angle}**${noNearer(a.planned)}, und der Gleiter ${a.does}.`;

const words: typeof tailShimWords.en = {
  heading: 'Streifen unter dem Leitwerk: vom Stapel zum Winkel zur Geschwindigkeit',
  waiting: (angle) => `Was ein Winkel von ${angle} bewirkt, wird berechnet, sobald das Flugmodell da ist.`,
  series: (boards, cards, papers) => [
    ...boards ? [boards === 1 ? '1 Lage Platte' : `${String(boards)} Lagen Platte`] : [],
    ...cards ? [`${String(cards)} Stück Karton`] : [],
    ...papers ? [`${String(papers)} Blatt Papier`] : [],
  ].join(', ').replace(/, ([^,]*)$/, ' und $1'),
  flat: (surface) => `Ohne Streifen liegt ${the(surface)} flach auf dem Rumpf.`,
  set: (a) => `**${a.stack}** (${a.height}) unter die **${edgeOf(a.edge)}** ${ofThe(a.surface)} legen: Die Vorderkante zeigt dann **${a.angle}**${noNearer(a.planned)}.`,
  measured: (a) => a.angle === undefined ? `Wie gemessen liegt ${the(a.surface)} **eben** auf dem Rumpf.` : `Wie gemessen zeigt die Vorderkante ${ofThe(a.surface)} **${a.angle}**.`,
  towards: {
    'in-all': (a) => `Für den Plan herausnehmen, was darunter liegt, und **${a.stack}** (${a.height}) unter die **${edgeOf(a.edge)}** legen: ${then(a)}`,
    'more': (a) => `Für den Plan **${a.stack}** (${a.height}) **mehr** unter die **${edgeOf(a.edge)}** legen: ${then(a)}`,
    'less': (a) => `Für den Plan **${a.stack}** (${a.height}) unter der **${edgeOf(a.edge)} herausnehmen**: ${then(a)}`,
  },
  better: {
    slower: (a) => `Der geplante Gleiter ${a.does}${a.glides ? ', schneller als nötig' : ''}: **die Streifen lassen** und den Plan ändern.`,
    faster: (a) => `Der geplante Gleiter ${a.does}${a.glides ? ', kurz bevor die Strömung abreißt' : ''}: **die Streifen lassen** und den Plan ändern.`,
  },
  planSo: 'Das zum Plan machen',
  asPlanned: 'Das ist wie geplant.',
  up: (angle) => `${angle} nach oben`, down: (angle) => `${angle} nach unten`,
  flies: {
    then: (a) => `Der Gleiter fliegt dann mit **etwa ${a.speed}** (${a.least} bis ${a.most}) und kommt etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert.`,
    now: (a) => `So fliegt der Gleiter mit **etwa ${a.speed}** (${a.least} bis ${a.most}) und kommt etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert.`,
  },
  calls: {
    slower: (a) => `Das ist schneller, als er fliegen muss: Mit der Hinterkante des Leitwerks etwa ${a.by} höher fliegt er mit etwa ${a.speed}. Dieses Tempo unten eintragen, dann ergeben sich die Streifen dafür.`,
    faster: (a) => `So langsam reißt die Strömung leicht ab: Mit der Hinterkante des Leitwerks etwa ${a.by} tiefer fliegt er mit etwa ${a.speed}. Dieses Tempo unten eintragen, dann ergeben sich die Streifen dafür.`,
  },
  does: {flies: (speed) => `fliegt mit etwa ${speed}`, dives: 'geht nur in den Sturzflug', stalls: 'sackt nur durch', unstable: 'hält keine Geschwindigkeit'},
  unstable: 'So, wie er ist, hält er mit keinem Streifen eine Geschwindigkeit.',
  dives: (a) => `${a.when === 'then' ? 'Der Gleiter geht dann' : 'So geht der Gleiter'} nur in den **Sturzflug**${
    a.edge === undefined ? '.' : `: für flaches Gleiten mit Reserve über dem Strömungsabriss die Hinterkante des Höhenleitwerks um weitere ${a.edge} anheben.`}`,
  stalls: (a) => `${a.when === 'then' ? 'Dann' : 'So'} **reißt** nur die Strömung **ab**${
    a.edge === undefined ? '.' : `: für flaches Gleiten mit Reserve über dem Strömungsabriss die Hinterkante des Höhenleitwerks um ${a.edge} senken.`}`,
  silent: 'Was der Gleiter dann tut, lässt sich noch nicht berechnen.',
  difference: (a) =>
    `Der Flügel steht ${a.wing} zum Rumpf, das Leitwerk ${a.tail}: Es zählt der Unterschied (Einstellwinkeldifferenz), ${a.difference}. Beide um denselben Winkel zu drehen ändert fast nur, wie der Rumpf hängt.`,
  perStep: (a) => `Weitere ${a.step} Streifen unter der ${edgeOf(a.edge)} ${ofThe(a.surface)} heben diese Kante um ${a.rise}, und der Gleiter ${a.more}${
    a.less === undefined ? '' : `; mit ${a.step} weniger gilt: Er ${a.less}`}.`,
  rule: 'Ein Streifen unter der Hinterkante senkt die Vorderkante des Leitwerks: Das Leitwerk drückt nach unten, die Nase hebt sich, der Gleiter fliegt langsamer.',
  crushed: (half, angle) => `Schaum gibt nach, und ${half} sind schon ${angle}: am fertigen Gleiter die Höhe beider Kanten messen und hier eintragen.`,
  again: 'Schaum gibt nach: nach jeder Änderung der Streifen beide Kanten neu messen.',
  surface: 'Streifen unter', surfaces: {tail: 'dem Leitwerk', wing: 'dem Flügel'},
  under: 'Angehobene Kante', edges: {front: 'Vorderkante', rear: 'Hinterkante'},
  planned: (what) => `${what}, geplant`,
  stackLegend: 'Der Stapel', boards: 'Lagen Platte', cards: 'Stück Karton', papers: 'Blatt Papier',
  width: 'Streifen, vorn bis hinten', touches: 'Oder berührt, ab der anderen Kante', overhang: 'Überstand der anderen Kante',
  edgeLegend: 'Am Gleiter gemessen', frontHeight: 'Vorderkante über dem Rumpf', rearHeight: 'Hinterkante über dem Rumpf',
  speedLegend: 'Oder von einer Geschwindigkeit aus', wanted: 'Gewünschtes Tempo', setFor: 'So einstellen',
  picture: (a) => `Seitenansicht, ${the(a.surface)} auf dem Rumpf, maßstäblich, Vorderkante links: ${a.angle}, auf Streifen von ${a.height} Höhe.`,
  pictureFlat: (surface) => `Seitenansicht, ${the(surface)} flach auf dem Rumpf, Vorderkante links.`,
  front: 'vorn', body: 'Rumpf',
  caution: 'Immer nur eines ändern und wieder werfen. Weg von Gesichtern, Augen und Straßen werfen; Flugregeln vor Ort und Aufsicht gehen vor. Streifen von den Fingern weg schneiden.',
};

export default words;
