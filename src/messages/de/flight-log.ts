import type {flightLogWords} from '../en/flight-log.js';

type Words = typeof flightLogWords.en;
type MeasureId = Parameters<Words['several']>[0]['measure'];

const throws = (n: number): string => `${String(n)} ${n === 1 ? 'Wurf' : 'Würfe'}`;
const overThrows = (n: number): string => `${String(n)} ${n === 1 ? 'Wurf' : 'Würfen'}`;
const moreThrows = (n: number): string => `${String(n)} ${n === 1 ? 'weiteren Wurf' : 'weiteren Würfen'}`;

/** What one version does more of than another. */
const ahead: Readonly<Record<MeasureId, string>> = {
  distance: 'fliegt weiter', time: 'bleibt länger oben', ratio: 'gleitet flacher', sink: 'sinkt langsamer', speed: 'fliegt schneller',
};
const average: Readonly<Record<MeasureId, (value: string) => string>> = {
  distance: (value) => `fliegt im Schnitt **${value}** weit`, time: (value) => `bleibt im Schnitt **${value}** oben`,
  ratio: (value) => `fliegt im Schnitt **${value}-mal so weit, wie sie an Höhe verliert**`, sink: (value) => `sinkt im Schnitt mit **${value}**`,
  speed: (value) => `fliegt im Schnitt mit **${value}**`,
};

const words: Words = {
  heading: 'Flugbuch: Welche Version fliegt besser?',
  nothing: '**Werfen, die Uhr stoppen, messen, aufschreiben.** Ab fünf Würfen jeder Version zeigt sich, welche besser fliegt.',
  nothingLike: (what) => `Für „${what}“ fehlt allen Würfen hier etwas: Weite, Zeit und Höhe der Hand aufschreiben.`,
  one: (a) => `Bisher ein Wurf von ${a.name}: **${a.value}**. Noch einmal werfen: Ein einzelner Wurf sagt wenig.`,
  several: (a) => `${a.name} ${average[a.measure](a.mean)}, aus ${overThrows(a.n)}.`,
  scatter: (a) => `Zwei von drei Würfen liegen bis etwa ${a.deviation} daneben; der beste bisher: ${a.best}.`,
  scatterOnly: (deviation) => `Zwei von drei Würfen liegen bis etwa ${deviation} daneben.`,
  mean: (a) => `Mit endlos vielen Würfen käme der Schnitt höchstwahrscheinlich zwischen ${a.from} und ${a.to} heraus.`,
  settled: (a) => `**${a.ahead} ${ahead[a.measure]} als ${a.behind}**: um etwa **${a.difference}**, höchstwahrscheinlich zwischen ${a.from} und ${a.to}.`,
  settledAside: (a) => `Aus ${String(a.a)} und ${overThrows(a.b)}. Zwei gleich gute Gleiter sähen durch bloßes Glück in weniger als einem von zwanzig solchen Versuchen so verschieden aus.`,
  open: (a) => `**Noch nicht entschieden.** ${a.ahead} ${ahead[a.measure]} als ${a.behind}, im Schnitt um ${a.difference}, aber das kann Glück sein.`,
  more: (a) => {
    const which = a.a === a.b ? `${moreThrows(a.a)} von jeder`
      : a.a === 0 ? `${moreThrows(a.b)} von ${a.nameB}` : a.b === 0 ? `${moreThrows(a.a)} von ${a.nameA}` : `${moreThrows(a.a)} von ${a.nameA} und ${String(a.b)} von ${a.nameB}`;
    return `Ist der Unterschied wirklich so groß, wäre es nach etwa **${which}** entschieden.`;
  },
  hopeless: 'Sie sind so gleich, und die Würfe streuen so stark, dass kein Nachmittag lang genug ist, um es zu entscheiden: **eine größere Änderung wählen**.',
  between: (a) => `Nach diesen Würfen ist alles möglich: ${a.ahead} kann um ${a.from} hinten liegen oder um ${a.to} vorn.`,
  tooFew: (a) => `**Noch zu wenig zum Vergleichen**: ${a.nameA} hat ${throws(a.a)}, ${a.nameB} hat ${throws(a.b)}. Zwei von jeder müssen es sein, ab fünf zeigt sich etwas.`,
  alike: (a) => `Bei ${a.nameA} ist jeder Wurf wie der andere und bei ${a.nameB} auch: **feiner messen**, auf den Zentimeter oder die Hundertstelsekunde.`,
  version: (name) => `Version ${name}`,
  Version: (name) => `Version ${name}`,
  unfair: {
    few: 'Weniger als fünf Würfe von jeder sagen wenig.',
    surfaces: 'Sie sind auf verschiedenem Boden gelandet und dort verschieden weit gerutscht: bis dahin messen, wo sie zuerst aufsetzen.',
    winds: 'Sie sind bei verschiedenem Wind geflogen: beide in derselben Luft werfen.',
    windy: 'Es war windig: Wind kann einen Gleiter weiter tragen als jede Änderung. Am besten ist eine Halle oder ein stiller Abend.',
    heights: 'Sie wurden aus verschiedener Höhe geworfen: Schon eine höhere Hand macht einen Wurf länger.',
    turns: 'Erst kamen alle Würfe der einen, dann alle der anderen. Abwechselnd werfen: Arme werden müde, und die Luft ändert sich.',
  },
  picture: (a) => `Jeder Wurf als Punkt auf einer Skala: ${a.measure}. ${a.lanes.join(' ')}`,
  lane: (a) => `${a.name}: ${throws(a.n)}, im Schnitt ${a.mean}.`,
  laneShort: (a) => `${a.name}, ${throws(a.n)}`,
  laneMean: (mean) => `Schnitt ${mean}`,
  legend: {mean: 'Schnitt', interval: 'wo der wahre Schnitt höchstwahrscheinlich liegt', band: 'vorhergesagt', out: 'nicht gezählt'},
  latestLanes: (n) => `Das Bild zeigt die ${String(n)} zuletzt geworfenen Versionen.`,
  compareBy: 'Vergleichen nach',
  measures: {distance: 'Weite', time: 'Flugzeit', ratio: 'Gleitzahl', sink: 'Sinken', speed: 'Geschwindigkeit'},
  with: 'Vergleichen',
  and: 'mit',
  nobody: 'nichts',
  versions: 'Die Versionen bisher',
  columns: {version: 'Version', thrown: 'Wurf', n: 'Würfe', mean: 'Schnitt', scatter: 'Streuung', best: 'Bester'},
  expected: (a) => `vorhergesagt ${a.least} bis ${a.most}${{within: ': so flog er', above: ': es wurde mehr', below: ': es wurde weniger'}[a.standing]}`,
  start: 'Start, wenn er die Hand verlässt',
  stop: 'Stopp, wenn er aufsetzt',
  again: 'Neu starten',
  watch: 'Stoppuhr',
  thrown: 'Geworfen wird',
  name: 'Ihr Name',
  nameTaken: 'Eine andere Version heißt schon so.',
  nameEmpty: 'Eine Version braucht einen Namen.',
  newVersion: 'Neue Version',
  distance: 'Weite',
  time: 'Flugzeit',
  height: 'Höhe der Hand',
  path: 'Er flog',
  surface: 'Gelandet auf',
  wind: 'Wind',
  note: 'Notiz',
  unsaid: '–',
  paths: {straight: 'geradeaus', left: 'nach links', right: 'nach rechts', wavy: 'auf und ab', dive: 'in den Sturzflug'},
  surfaces: {floor: 'Hallenboden', grass: 'Gras', hard: 'harter Boden', sand: 'Sand'},
  winds: {calm: 'keiner', against: 'gegen den Wurf', behind: 'von hinten', across: 'von der Seite', gusts: 'Böen'},
  write: 'Diesen Wurf aufschreiben',
  correct: 'Berichtigung sichern',
  leave: 'So lassen, wie er war',
  written: (a) => `Aufgeschrieben: Wurf ${String(a.n)} von ${a.name}, ${a.value}.`,
  corrected: 'Berichtigt.',
  deleted: 'Aus dem Flugbuch genommen.',
  undo: 'Zurückholen',
  restored: 'Zurückgeholt.',
  caution: 'Weg von Gesichtern und Augen werfen, nie auf Menschen, Straßen oder Fenster zu; niemand steht vor dem, der wirft, und niemand sucht einen Gleiter auf der Straße. Die Regeln des Geländes und der Aufsicht gehen vor.',
  changed: (a) => `Der Gleiter auf dieser Seite ist nicht mehr so wie bei ${a.name}: ${a.what.join('; ')}.`,
  itIs: (name) => `Das ist eine neue Version: ${name}`,
  still: (name) => `Nein, ${name} war schon so`,
  from: (a) => `${a.label} ${a.from} → ${a.to}`,
  none: 'nichts',
  differNone: (a) => `${a.nameA} und ${a.nameB} sind den Maßen nach derselbe Gleiter.`,
  differOne: (a) => `Von ${a.nameA} zu ${a.nameB} hat sich eines geändert: ${a.what}. Was sich im Flug unterscheidet, kommt also davon, oder von den Würfen.`,
  differMany: (a) =>
    `Von ${a.nameA} zu ${a.nameB} hat sich mehreres geändert (${String(a.n)}): ${a.what.join('; ')}. Die Würfe können nicht sagen, was davon es war: immer nur eines ändern.`,
  list: 'Jeder Wurf',
  listOf: (n) => `Jeder Wurf (${String(n)})`,
  newest: 'der neueste zuerst',
  edit: 'Berichtigen',
  leaveOut: 'Nicht zählen',
  countIt: 'Doch zählen',
  remove: 'Löschen',
  which: (a) => `Wurf ${String(a.n)} von ${a.name}`,
  pages: (a) => `${String(a.from)} bis ${String(a.to)} von ${String(a.of)}`,
  older: 'Ältere Würfe',
  newer: 'Neuere Würfe',
  isOut: 'nicht gezählt',
  keep: {
    memory: 'Dieses Flugbuch hält nur so lange wie diese Seite: vor dem Verlassen als Datei sichern.',
    opening: 'Was dieser Browser aufgehoben hat, wird geöffnet …',
    kept: 'In diesem Browser aufgehoben, nur auf diesem Gerät.',
    forbidden: 'Dieser Browser lässt die Seite nichts aufheben. Die Würfe sind auf dem Bildschirm sicher: vor dem Verlassen als Datei sichern.',
    full: 'Dieser Browser hat keinen Platz mehr. Die Würfe sind auf dem Bildschirm sicher: als Datei sichern, dann Platz schaffen.',
    'later-version': 'In einem anderen Tab ist eine neuere Version dieser Seite offen: diese neu laden. Die Würfe sind auf dem Bildschirm sicher; zuerst als Datei sichern.',
    'not-loaded': 'Was das Flugbuch aufhebt, ließ sich nicht holen. Die Würfe sind auf dem Bildschirm sicher: vor dem Verlassen als Datei sichern.',
  },
  tryAgain: 'Noch einmal aufheben',
  files: 'Dateien, und Zeilen, die sich nicht lesen ließen',
  plan: 'Vor dem Schneiden: Könnten die Würfe es zeigen?',
};

export default words;
