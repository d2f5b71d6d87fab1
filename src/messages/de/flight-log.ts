import type {flightLogWords} from '../en/flight-log.js';

type Words = typeof flightLogWords.en;
type Measure = keyof Words['measures'];

const throws = (n: number): string => (n === 1 ? '1 Wurf' : `${String(n)} Würfe`);
/** After "nach", "bei" and "mit". */
const throwsDative = (n: number): string => (n === 1 ? '1 Wurf' : `${String(n)} Würfen`);
const moreThrows = (n: number): string => (n === 1 ? '1 weiteren Wurf' : `${String(n)} weiteren Würfen`);

/** What one version does more of than another. */
const ahead: Readonly<Record<Measure, string>> = {
  distance: 'fliegt weiter', time: 'bleibt länger oben', ratio: 'gleitet flacher', sink: 'sinkt langsamer', speed: 'fliegt schneller',
};
const average: Readonly<Record<Measure, (value: string) => string>> = {
  distance: (value) => `fliegt im Mittel **${value}** weit`, time: (value) => `bleibt im Mittel **${value}** oben`,
  ratio: (value) => `fliegt im Mittel **${value}\u2011mal so weit, wie sie an Höhe verliert**`,
  sink: (value) => `sinkt im Mittel mit **${value}**`, speed: (value) => `fliegt im Mittel mit **${value}**`,
};

const words: Words = {
  heading: 'Flugbuch: Welche Version fliegt besser?',
  nothing: '**Werfen, Zeit stoppen, messen, aufschreiben.** Ab fünf Würfen mit jeder Version zeigt sich allmählich, welche besser fliegt.',
  nothingLike: (what) => `Zu keinem Wurf ist hier alles aufgeschrieben, was es dafür braucht (${what}): Weite, Zeit und Höhe der Hand eintragen.`,
  one: (a) => `Bisher ein Wurf mit ${a.name}: **${a.value}**. Noch einmal werfen: Ein einzelner Wurf sagt wenig.`,
  several: (a) => `${a.name} ${average[a.measure](a.mean)}, nach ${throwsDative(a.n)}.`,
  scatter: (a) => `Zwei von drei Würfen weichen höchstens etwa ${a.deviation} davon ab; der beste bisher: ${a.best}.`,
  scatterOnly: (deviation) => `Zwei von drei Würfen weichen höchstens etwa ${deviation} davon ab.`,
  mean: (a) => `Nach endlos vielen Würfen läge der Mittelwert sehr wahrscheinlich zwischen ${a.from} und ${a.to}.`,
  settled: (a) => `**${a.ahead} ${ahead[a.measure]} als ${a.behind}**: um etwa **${a.difference}**, sehr wahrscheinlich um ${a.from} bis ${a.to}.`,
  settledAside: (a) => `Nach ${String(a.a)} und ${throwsDative(a.b)}. Durch bloßen Zufall sähen zwei gleiche Gleiter in weniger als einem von zwanzig solchen Versuchen so verschieden aus.`,
  open: (a) => `**Noch nicht entschieden.** ${a.ahead} ${ahead[a.measure]} als ${a.behind}, im Mittel um ${a.difference}, aber das kann Zufall sein.`,
  more: (a) => {
    const which = a.a === a.b ? `${moreThrows(a.a)} mit jeder`
      : a.a === 0 ? `${moreThrows(a.b)} mit ${a.nameB}` : a.b === 0 ? `${moreThrows(a.a)} mit ${a.nameA}` : `${moreThrows(a.a)} mit ${a.nameA} und ${String(a.b)} mit ${a.nameB}`;
    return `Ist der Unterschied wirklich so groß, wäre es nach etwa **${which}** entschieden.`;
  },
  hopeless: 'Sie liegen so dicht beieinander und die Würfe so weit auseinander, dass kein Nachmittag für die Entscheidung reicht: **mehr auf einmal ändern**.',
  between: (a) => `Nach diesen Würfen ist alles möglich: ${a.ahead} kann um ${a.from} zurückliegen oder um ${a.to} vorn.`,
  tooFew: (a) => `**Für einen Vergleich noch zu wenig**: ${throws(a.a)} mit ${a.nameA}, ${throws(a.b)} mit ${a.nameB}. Zwei mit jeder sind das Mindeste, ab fünf zeigt sich etwas.`,
  alike: (a) => `Mit ${a.nameA} ist jeder Wurf wie der vorige, mit ${a.nameB} auch: **genauer messen**, auf den Zentimeter oder die hundertstel Sekunde.`,
  version: (name) => `Version ${name}`,
  Version: (name) => `Version ${name}`,
  unfair: {
    few: 'Weniger als fünf Würfe mit jeder sagen wenig.',
    surfaces: 'Sie sind auf verschiedenem Boden gelandet und rutschen dort verschieden weit: bis dahin messen, wo jeder zuerst aufkommt.',
    winds: 'Sie sind bei verschiedenem Wind geflogen: beide in derselben Luft werfen.',
    windy: 'Es war windig: Das kann einen Gleiter weiter tragen als jede Änderung am Gleiter selbst. Am besten ist eine Halle oder ein stiller Abend.',
    heights: 'Sie sind aus verschiedener Höhe geworfen: Schon eine höhere Hand macht einen Wurf länger.',
    turns: 'Alle Würfe mit der einen kamen vor allen mit der anderen. Abwechselnd werfen: Arme werden müde, und die Luft ändert sich.',
  },
  picture: (a) => `Jeder Wurf als Punkt auf einer Skala: ${a.measure}. ${a.lanes.join(' ')}`,
  lane: (a) => `${a.name}: ${throws(a.n)}, im Mittel ${a.mean}.`,
  laneShort: (a) => `${a.name}, ${throws(a.n)}`,
  laneMean: (mean) => `Mittel ${mean}`,
  legend: {mean: 'Mittelwert', interval: 'wo der wahre Mittelwert sehr wahrscheinlich liegt', band: 'vorhergesagt', out: 'zählt nicht'},
  latestLanes: (n) => `Das Bild zeigt die ${String(n)} zuletzt geworfenen Versionen.`,
  compareBy: 'Vergleichen nach',
  measures: {distance: 'Weite', time: 'Flugzeit', ratio: 'Gleitzahl', sink: 'Sinken', speed: 'Geschwindigkeit'},
  with: 'Vergleichen',
  and: 'mit',
  nobody: 'nichts',
  versions: 'Die Versionen bisher',
  columns: {version: 'Version', thrown: 'Wurf', n: 'Würfe', mean: 'Mittelwert', scatter: 'Streuung', best: 'Bester'},
  expected: (a) => `vorhergesagt ${a.least} bis ${a.most}${{within: ': wie geflogen', above: ': geflogen wurde mehr', below: ': geflogen wurde weniger'}[a.standing]}`,
  start: 'Start, wenn er die Hand verlässt',
  stop: 'Stopp, wenn er aufkommt',
  again: 'Noch einmal starten',
  watch: 'Stoppuhr',
  thrown: 'Geworfene Version',
  name: 'Ihr Name',
  nameTaken: 'So heißt schon eine andere Version.',
  nameEmpty: 'Eine Version braucht einen Namen.',
  newVersion: 'Neue Version',
  distance: 'Weite',
  time: 'Flugzeit',
  height: 'Höhe der Hand',
  path: 'Er flog',
  surface: 'Boden bei der Landung',
  wind: 'Wind',
  windWas: (wind) => `Wind: ${wind}`,
  note: 'Notiz',
  unsaid: '–',
  paths: {straight: 'geradeaus', left: 'nach links', right: 'nach rechts', wavy: 'auf und ab', dive: 'im Sturzflug'},
  surfaces: {floor: 'Hallenboden', grass: 'Gras', hard: 'harter Boden', sand: 'Sand'},
  winds: {calm: 'keiner', against: 'gegen den Wurf', behind: 'von hinten', across: 'von der Seite', gusts: 'Böen'},
  write: 'Diesen Wurf aufschreiben',
  correct: 'Korrektur speichern',
  leave: 'Lassen, wie es war',
  written: (a) => `Aufgeschrieben: Wurf ${String(a.n)} mit ${a.name}, ${a.value}.`,
  corrected: 'Korrigiert.',
  deleted: 'Aus dem Flugbuch genommen.',
  undo: 'Zurückholen',
  restored: 'Zurückgeholt.',
  caution: 'Weg von Gesichtern und Augen werfen, nie auf Menschen, Straßen oder Fenster zu; niemand steht vor dem, der wirft, und niemand sucht einen Gleiter auf der Straße. Die Regeln des Geländes und der Aufsicht gehen vor.',
  changed: (a) => `Der Gleiter auf dieser Seite ist nicht mehr so, wie er bei ${a.name} war: ${a.what.join('; ')}.`,
  counts: (version) => `Der nächste Wurf zählt für ${version}.`,
  itIs: (name) => `Das ist eine neue Version: ${name}`,
  still: (name) => `Nein, ${name} war schon so`,
  from: (a) => `${a.label} ${a.from} → ${a.to}`,
  none: 'nichts',
  differNone: (a) => `Nach ihren Maßen sind ${a.nameA} und ${a.nameB} derselbe Gleiter.`,
  differOne: (a) => `Von ${a.nameA} zu ${a.nameB} hat sich eines geändert: ${a.what}. Was im Flug anders ist, kommt also davon oder von den Würfen.`,
  differMany: (a) => `Von ${a.nameA} zu ${a.nameB} hat sich an ${String(a.n)} Stellen etwas geändert: ${a.what.join('; ')}. Woran es lag, können die Würfe nicht sagen: immer nur eines ändern.`,
  list: 'Alle Würfe',
  listOf: (n) => `Alle Würfe (${String(n)})`,
  newest: 'neueste zuerst',
  edit: 'Korrigieren',
  leaveOut: 'Nicht zählen',
  countIt: 'Mitzählen',
  remove: 'Löschen',
  which: (a) => `Wurf ${String(a.n)} mit ${a.name}`,
  pages: (a) => `${String(a.from)} bis ${String(a.to)} von ${String(a.of)}`,
  older: 'Ältere Würfe',
  newer: 'Neuere Würfe',
  isOut: 'zählt nicht',
  keep: {
    memory: 'Dieses Flugbuch besteht nur so lange wie diese Seite: vor dem Verlassen als Datei speichern.',
    opening: 'Was dieser Browser aufbewahrt hat, wird geöffnet …',
    kept: 'In diesem Browser aufbewahrt, nur auf diesem Gerät.',
    forbidden: 'Dieser Browser lässt die Seite nichts aufbewahren. Die Würfe stehen sicher auf dem Bildschirm: vor dem Verlassen als Datei speichern.',
    full: 'In diesem Browser ist kein Platz mehr. Die Würfe stehen sicher auf dem Bildschirm: als Datei speichern, dann Platz schaffen.',
    'later-version': 'In einem anderen Tab ist eine neuere Fassung dieser Seite offen: diese hier neu laden. Die Würfe stehen sicher auf dem Bildschirm; vorher als Datei speichern.',
    'not-loaded': 'Was das Flugbuch aufbewahrt, ließ sich nicht laden. Die Würfe stehen sicher auf dem Bildschirm: vor dem Verlassen als Datei speichern.',
  },
  tryAgain: 'Noch einmal versuchen',
  files: 'Dateien und Zeilen, die sich nicht lesen ließen',
  plan: 'Vor dem Schneiden: Könnten die Würfe es zeigen?',
};

export default words;
