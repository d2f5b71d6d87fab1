import type {sheetSearchWords} from '../en/sheet-search.js';

const times = (n: number): string => (n === 1 ? 'einmal' : n === 2 ? 'zweimal' : `${n}\u2011mal`);

const words: typeof sheetSearchWords.en = {
  soon: 'Diese Anordnung war sofort da; eine bessere wird gesucht, sobald Sie innehalten.',
  looking: (a) => `Suche nach einer besseren Anordnung … ${a.seconds} s${a.better > 0 ? `, ${times(a.better)} verbessert` : ''}`,
  trying: (a) => `Suche Platz für ${a.what} … ${a.seconds} s`,
  gliders: (n) => (n === 1 ? 'einen Gleiter' : `${n} Gleiter`),
  wing: (length) => `einen Flügel von ${length}`,
  vain: (what) => `Für ${what} fand sich kein Platz; das beweist nicht, dass es keinen gibt.`,
  awaited: 'Das Bild zeigt noch die Anordnung von vorhin.',
  awaitedStraight: 'Das Bild zeigt noch Teile, die am Umriss entlang geschnitten werden.',
  notStraight: 'Dafür fand sich keine Anordnung nur mit durchgehenden Schnitten; das Bild zeigt eine, die am Umriss entlang geschnitten wird.',
  stop: 'Anhalten',
  stopped: 'Angehalten beim bisher besten Stand.',
  resting: (a) => `${a.seconds} s lang gesucht${a.better > 0 ? ` und ${times(a.better)} verbessert` : ' und nichts Besseres gefunden'}.`,
  lookOn: 'Weitersuchen',
  proved: 'Keine Anordnung braucht weniger Platten.',
  ended: (a) => (a.better > 0 ? `${times(a.better).replace(/^e/, 'E').replace(/^z/, 'Z')} verbessert; danach fand die Suche nichts Besseres.` : 'Die Suche fand nichts Besseres.'),
  notLoaded: 'Was bessere Anordnungen sucht, ließ sich nicht laden; diese war sofort da.',

  byHand: 'Ein Teil von Hand an seinen Platz legen',
  inHand: 'Teil in der Hand',
  none: 'keines',
  onSheet: (a) => `${a.number} ${a.part}, Platte ${a.sheet}`,
  lies: (a) => `${a.part} liegt ${a.across} von links und ${a.up} von unten.`,
  moved: (a) => `${a.part} nach ${a.across} von links und ${a.up} von unten verschoben, noch nicht festgehalten.`,
  held: (a) => `${a.part} ist ${a.across} von links und ${a.up} von unten festgehalten; alles andere liegt darum herum.`,
  asking: 'Alles andere wird darum herum gelegt …',
  turn: 'Drehen',
  hold: 'Hier festhalten',
  letGo: 'Loslassen',
  putBack: 'Zurücklegen',
  letAllGo: 'Alle loslassen',
  manyHeld: (n) => (n === 1 ? 'Ein Teil ist festgehalten.' : `${n} Teile sind festgehalten.`),
  handHelp: 'Ein Teil im Bild ziehen oder in der Liste wählen und die Tabulatortaste drücken: dann verschieben es Pfeiltasten (mit der Umschalttaste zehnmal so weit), R dreht es, die Eingabetaste im Bild hält es fest oder lässt es los, Escape legt es zurück.',
  handKeys: 'Tasten, sobald die Liste mit der Tabulatortaste verlassen ist: Pfeile verschieben es, R dreht es, Escape legt es zurück.',
  handHelpTouch: 'Ein Teil im Bild ziehen oder in der Liste wählen; dann dreht „Drehen“ es, und „Hier festhalten“ hält es, wo es liegt. Mit Tasten: nach dem Wählen die Tabulatortaste, dann verschieben es Pfeiltasten (mit der Umschalttaste zehnmal so weit), R dreht es, die Eingabetaste hält es fest oder lässt es los, Escape legt es zurück.',
  bench: 'Die Platte, ein Teil in der Hand',
};

export default words;
