import type {sheetListWords} from '../en/sheet-lists.js';

const series = (items: readonly string[]): string => (items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} und ${items.at(-1) ?? ''}`);

const words: typeof sheetListWords.en = {
  ticksIntro: (a) => 'Das Maßband an der mit 0 bezeichneten Ecke anlegen und dort lassen. Alle Zahlen in dieser Reihenfolge an einer Kante anzeichnen, dann dieselben an der Kante gegenüber, und Strich mit Strich verbinden. Wird immer ab 0 gemessen, bleiben kleine Fehler klein.'
    + ` Zuerst die Kanten von ${a.along}, dann die von ${a.across}.`,
  ticksAlong: (edge) => `Striche an beiden Kanten von ${edge}`,
  columns: {tick: 'Strich bei', line: 'Bleistiftlinie', pieces: 'Kante von'},
  whole: 'ganz hinüber',
  span: (a) => `${a.from} bis ${a.to}`,
  noTicks: 'An diesen Kanten braucht es keine Striche.',
  diagonal: (length) => `Zuerst die Platte prüfen: Von Ecke zu Ecke müssen es beide Male ${length} sein, sonst ist sie nicht rechtwinklig.`,
  slanting: (numbers) => `Die Striche von ${series(numbers)} umschließen einen schrägen Umriss; seine Ecken stehen im Rechenweg.`,

  notStraight: 'Diese Teile liegen so, dass jedes am eigenen Umriss entlang geschnitten wird. Für eine Reihenfolge von Schnitten von Kante zu Kante bei den Feldern gerade Schnitte wählen.',
  step: (a) => `Schnitt ${a.nth} von ${a.of}`,
  previous: 'Schnitt davor',
  next: 'Nächster Schnitt',
  first: 'Erster Schnitt',
  hideCut: 'Schnitt ausblenden',
  help: 'Die Pfeiltasten nach links und rechts gehen durch die Schnitte.',
  whose: {whole: 'Die ganze Platte in der Hand', piece: (size) => `Das Stück von ${size} in der Hand`},
  ruler: (a) =>
    `${a.hand}: ${a.again ? `Lineal bleibt bei ${a.setting}` : `Lineal auf **${a.setting}** stellen`} ab der ${a.along ? 'unteren' : 'linken'} Kante; die ganze ${a.along ? 'Länge' : 'Breite'} durchschneiden, ${a.long}.`,
  edge: (a) => `${a.hand}: Lineal von ${a.from} nach ${a.to} legen und ganz durchschneiden, für ${series(a.pieces)}.`,
  outline: (pieces) => `${series(pieces)} am Umriss entlang schneiden; die inneren Ecken zuletzt.`,
  off: (pieces) => `Ab geht der Streifen mit ${series(pieces)}.`,
  offPiece: (piece) => `Ab geht ${piece}, fertig.`,
  all: 'Alle Schnitte der Reihe nach',
  restOffcut: (size) => `Es bleibt ein Rest von ${size}.`,
  offcut: (size) => `Ab geht ein Rest von ${size}.`,
  offRough: (piece) => `Ab geht ${piece}, noch nicht in Form.`,
  sliver: (width) => `Nur ein Streifchen von ${width} geht ab: das Lineal gut festhalten und abschaben.`,
  restRough: (piece) => `Es bleibt ${piece}, noch nicht in Form.`,
  rest: (piece) => `Es bleibt ${piece}, fertig.`,
  corner: (a) => `${a.across} | ${a.up}`,
  drawnAs: 'Das Bild zeigt den Schnitt; Zahlenpaare gelten von links und von unten am Stück in der Hand, so wie es im Bild liegt.',
  sum: (a) => `${a.cuts} Schnitte, das Lineal ${a.settings}\u2011mal gestellt.`,
};

export default words;
