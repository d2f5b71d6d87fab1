import type {tailShimWords} from '../en/tail-shim.js';

type Surface = Parameters<typeof tailShimWords.en.flat>[0];

const the = (surface: Surface): string => (surface === 'tail' ? 'das Höhenleitwerk' : 'der Flügel');
const ofThe = (surface: Surface): string => (surface === 'tail' ? 'des Höhenleitwerks' : 'des Flügels');

const words: typeof tailShimWords.en = {
  heading: 'Streifen unter dem Leitwerk: vom Stapel zum Winkel zur Geschwindigkeit',
  waiting: (angle) => `Was ein Winkel von ${angle} bewirkt, wird berechnet, sobald das Flugmodell da ist.`,
  series: (boards, cards, papers) => [
    ...boards ? [boards === 1 ? '1 Lage Platte' : `${String(boards)} Lagen Platte`] : [],
    ...cards ? [`${String(cards)} Stück Karton`] : [],
    ...papers ? [`${String(papers)} Blatt Papier`] : [],
  ].join(', ').replace(/, ([^,]*)$/, ' und $1'),
  flat: (surface) => `Ohne Streifen liegt ${the(surface)} flach auf dem Rumpf.`,
  set: (a) =>
    `**${a.stack}** (${a.height}) unter die **${a.edge === 'front' ? 'Vorderkante' : 'Hinterkante'}** ${ofThe(a.surface)} legen: Die Vorderkante zeigt dann **${a.angle}**${
      a.built === undefined ? '' : ` (${a.built} mit diesen ganzen Lagen)`}.`,
  up: (angle) => `${angle} nach oben`, down: (angle) => `${angle} nach unten`,
  flies: (a) => `Der Gleiter fliegt dann mit **etwa ${a.speed}** (${a.least} bis ${a.most}) und kommt etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert.`,
  unstable: 'Er hält mit keinem Streifen eine Geschwindigkeit: Der Schwerpunkt liegt zu weit hinten, das zuerst richten.',
  dives: (edge) => `Der Gleiter geht dann nur in den **Sturzflug**: für flaches Gleiten mit Reserve über dem Strömungsabriss die Hinterkante des Höhenleitwerks um weitere ${edge} anheben.`,
  stalls: (edge) => `Dann **reißt** nur die Strömung **ab**: für flaches Gleiten mit Reserve über dem Strömungsabriss die Hinterkante des Höhenleitwerks um ${edge} senken.`,
  silent: 'Was der Gleiter dann tut, lässt sich noch nicht berechnen.',
  difference: (a) =>
    `Der Flügel steht ${a.wing} zum Rumpf, das Leitwerk ${a.tail}: Es zählt der Unterschied (Einstellwinkeldifferenz), ${a.difference}. Beide um denselben Winkel zu drehen ändert fast nur, wie der Rumpf hängt.`,
  perMillimetre: (a) => `Weitere ${a.step} unter der Hinterkante des Leitwerks machen den Gleiter ${a.by} ${a.slower ? 'langsamer' : 'schneller'}; herausgenommen wirken sie umgekehrt.`,
  rule: 'Ein Streifen unter der Hinterkante senkt die Vorderkante des Leitwerks: Das Leitwerk drückt nach unten, die Nase hebt sich, der Gleiter fliegt langsamer.',
  crushed: (half, angle) => `Schaum gibt nach, und ${half} sind schon ${angle}: am fertigen Gleiter die Höhe beider Kanten messen und hier eintragen.`,
  surface: 'Streifen unter', surfaces: {tail: 'dem Leitwerk', wing: 'dem Flügel'},
  under: 'Angehobene Kante', edges: {front: 'Vorderkante', rear: 'Hinterkante'},
  stackLegend: 'Der Stapel', boards: 'Lagen Platte', cards: 'Stück Karton', papers: 'Blatt Papier',
  width: 'Streifen, vorn bis hinten', touches: 'Oder berührt, ab der anderen Kante', overhang: 'Überstand der anderen Kante',
  edgeLegend: 'Oder am Gleiter gemessen', frontHeight: 'Vorderkante über dem Rumpf', rearHeight: 'Hinterkante über dem Rumpf',
  speedLegend: 'Oder von einer Geschwindigkeit aus', wanted: 'Gewünschtes Tempo', setFor: 'So einstellen',
  picture: (a) => `Seitenansicht, ${the(a.surface)} auf dem Rumpf, maßstäblich, Vorderkante links: ${a.angle}, auf Streifen von ${a.height} Höhe.`,
  pictureFlat: (surface) => `Seitenansicht, ${the(surface)} flach auf dem Rumpf, Vorderkante links.`,
  front: 'vorn', body: 'Rumpf',
  caution: 'Immer nur eines ändern und wieder werfen. Weg von Gesichtern, Augen und Straßen werfen; Flugregeln vor Ort und Aufsicht gehen vor. Streifen von den Fingern weg schneiden.',
};

export default words;
