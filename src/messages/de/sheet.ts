import type {LineLabel, PartId} from '../../calc/parts/part.js';
import type {sheetWords} from '../en/sheet.js';

const few = ['kein', 'ein', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn'];

/** A number of things; `ending` is that of "ein" and "kein" in the case and gender needed. */
const counted = (n: number, ending: string, one: string, many: string): string =>
  `${few[n] ?? String(n)}${n < 2 ? ending : ''} ${n === 1 ? one : many}`;

/** "auf zwei Platten", "aus einer Platte": the nominative and the accusative are alike. */
const sheets = (n: number): string => counted(n, 'e', 'Platte', 'Platten');
const fromSheets = (n: number): string => counted(n, n === 1 ? 'er' : 'en', 'Platte', 'Platten');

/** Who takes sheets, what sheets give, and whose wings these are. */
const gliders = (n: number): string => counted(n, n === 1 ? '' : 'e', 'Gleiter', 'Gleiter');
const givenGliders = (n: number): string => counted(n, n === 1 ? 'en' : 'e', 'Gleiter', 'Gleiter');
const ofGliders = (n: number): string => counted(n, n === 1 ? 'em' : 'en', 'Gleiter', 'Gleitern');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Joined as one says it: "150, 270 und 540 mm". */
const series = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} und ${items.at(-1) ?? ''}`;

const parts: Readonly<Record<PartId, string>> = {wing: 'Flügel', body: 'Rumpf', tailplane: 'Höhenleitwerk', fin: 'Seitenleitwerk'};
const the = (id: PartId): string => `${id === 'wing' || id === 'body' ? 'der' : 'das'} ${parts[id]}`;

type LeftFrom = Parameters<typeof sheetWords.en.fits>[0]['from'];

const left = (piece: string | undefined, from: LeftFrom): string => piece === undefined
  ? '; ein brauchbarer Rest bleibt nicht' : `; ${{one: 'es', each: 'von jeder', last: 'von der letzten'}[from]} bleibt ein Stück von **${piece}** übrig`;

const markNames: Readonly<Partial<Record<LineLabel, string>>> = {
  'wing-front': 'Flügelvorderkante', 'wing-rear': 'Flügelhinterkante', 'tail-front': 'Leitwerksvorderkante', 'tail-rear': 'Leitwerkshinterkante',
};

const words: typeof sheetWords.en = {
  heading: 'Teile auf der Platte: Passen alle darauf?',
  parts,
  fits: (a) => {
    const old = a.old === 1 ? 'ein Reststück' : `${few[a.old] ?? String(a.old)} Reststücke`;
    const all = a.sheets === 0 ? `**${old}**` : `**${sheets(a.sheets)}** von ${a.sheet}${a.old > 0 ? ` und **${old}**` : ''}`;
    const end = `${all}${left(a.leftover, a.from)}.`;
    if (a.kits > 1) return `**${capital(gliders(a.kits))}** brauchen ${end}`;
    return a.sheets + a.old === 1 ? `Alles passt auf ${end}` : `Die Teile brauchen ${end}`;
  },
  spares: (a) => `Das ${a.wanted === 1 ? 'ist' : 'sind'} ${gliders(a.wanted)} und ${a.spare === 1 ? 'einer' : few[a.spare] ?? String(a.spare)} in Reserve.`,
  cost: (a) => `Bei ${a.sheet} je Platte kostet die Platte insgesamt ${a.all}${a.each === undefined ? '' : `, ${a.each} je Gleiter`}.`,
  runOut: (a) => `Die vorhandenen Platten reichen nicht für ${a.count === 1 ? 'ein' : few[a.count] ?? String(a.count)} Stück von diesem Teil: ${parts[a.part]}.`,
  boardsRunOut: (a) =>
    `${capital(sheets(a.sheets))} von ${a.sheet} ${a.sheets === 1 ? 'reicht' : 'reichen'} **nicht für ${gliders(a.kits)}**${a.kits > 1 ? ': mehr Platten nehmen oder fragen, wie viele Gleiter sie ergeben' : ''}.`,
  lengthOf: (a) => `${a.part} ${a.nth}/${a.of}`,
  oldPiece: (title) => `${title} (Reststück)`,
  doesNotFit: (a) =>
    `**${capital(series(a.missing.map(the)))} ${a.missing.length > 1 ? 'passen' : 'passt'} nicht** auf eine Platte von ${a.sheet}; ${
      a.sheets === 0 ? 'sonst gibt es nichts zu verteilen' : `alles andere geht auf **${sheets(a.sheets)}**`}.`,
  tooBig: (a) =>
    `${capital(the(a.part))} misst ${a.size}, die Platte bietet nur ${a.room}: eine mindestens ${a.needs} ${a.tooLong ? 'lange' : 'breite'} Platte nehmen oder das Teil höchstens ${a.most} ${
      a.tooLong ? 'lang' : 'breit'} machen.`,
  tooLongForGrain: (a) =>
    `${capital(the(a.part))} misst ${a.size}, und längs der Faser hat die Platte von ${a.room} nur ${a.along}: eine Platte nehmen, die längs der Faser länger ist, oder eine ohne Faserrichtung.`,
  tooBigForMargin: (a) =>
    `${capital(the(a.part))} misst ${a.size}, und ein freier Rand von ${a.margin} lässt nur ${a.room}: Mit sauberen Werkskanten würde es passen.`,
  noOutline: (part) => `${capital(the(part))} hat keinen Umriss, der sich schneiden ließe.`,
  gives: (a) =>
    `**${capital(sheets(a.sheets))}** von ${a.sheet} ${a.sheets === 1 ? 'ergibt' : 'ergeben'} **${givenGliders(a.gliders)}**${
      a.used < a.sheets ? `, schon aus ${fromSheets(a.used)}; ${a.capped ? 'mehr werden hier nicht verteilt' : 'der Rest bleibt ganz'}` : left(a.leftover, a.from)}.`,
  givesNone: (a) =>
    `${capital(sheets(a.sheets))} von ${a.sheet} ${a.sheets === 1 ? 'reicht' : 'reichen'} **nicht für einen Gleiter**: Er braucht **${sheets(a.needed)}**.`,
  longest: (a) =>
    `Auf **${fromSheets(a.sheets)}** von ${a.sheet} ${a.kits > 1 ? `können die Flügel von ${ofGliders(a.kits)} je` : 'kann der Flügel'} **${a.span}** lang sein${
      a.whole ? ', so lang wie die Platte selbst' : ''}.`,
  noWing: (a) =>
    `Auf ${fromSheets(a.sheets)} von ${a.sheet} ist neben den anderen Teilen${a.kits > 1 ? ` von ${ofGliders(a.kits)}` : ''} **kein Platz für einen Flügel** mit diesen Knicken.`,
  asideLonger: (now) => `Jetzt sind es ${now}. Das Bild zeigt den längeren Flügel, alles andere wie bisher.`,
  asideShorter: (now) => `Jetzt sind es ${now}, das ist zu lang. Das Bild zeigt den kürzeren Flügel, alles andere wie bisher.`,
  justSo: 'So lang ist er jetzt.',
  noMore: 'Liegt jedes Teil gerade zu den Kanten der Platte, passt kein weiterer Gleiter darauf; das ist bewiesen.',
  noMoreThan: (n) => `Liegt jedes Teil gerade zu den Kanten der Platte, passen nicht mehr als ${few[n] ?? String(n)} darauf; das ist bewiesen.`,
  noLonger: 'Liegt jedes Teil gerade zu den Kanten der Platte, kann er nicht länger sein; das ist bewiesen.',
  noLongerThan: (span) => `Liegt jedes Teil gerade zu den Kanten der Platte, kann er nicht länger als ${span} sein; das ist bewiesen.`,
  byHand: 'Von Hand verteilt ist vielleicht noch etwas mehr zu holen.',
  asNow: (now) => `Das Bild zeigt den Stand jetzt, mit einem Flügel von ${now}.`,
  fewest: 'Mit weniger geht es nicht.',
  maybeFewer: (least) => `Ausgeschlossen ist nicht, dass ${least === 1 ? 'eine reicht' : `${few[least] ?? String(least)} reichen`}, aber keine der versuchten Anordnungen kommt mit weniger aus.`,
  allAlike: (perSheet) => `Jede Platte wird gleich zugeschnitten und ergibt ${givenGliders(perSheet)}.`,
  alikeInstead: (a) => `Werden alle Platten gleich zugeschnitten, je ${givenGliders(a.perSheet)} aus jeder, braucht es ${a.sheets === 1 ? 'eine' : few[a.sheets] ?? String(a.sheets)}.`,
  use: (a) => `Die Teile bedecken ${a.used} der Platte, ${a.waste} sind Abfall und Reste; sie wiegen ${a.about ? 'etwa ' : ''}${a.mass}, noch ohne Kleber.`,
  board: 'Vorhandene Platte',
  ownSize: 'andere Größe',
  systems: {metric: 'In Millimetern verkauft', inch: 'In Zoll verkauft'},
  wanted: 'Gefragt',
  questions: {sheets: 'nötige Platten', gliders: 'mögliche Gleiter', span: 'längster Flügel'},
  kits: 'Wie viele Gleiter',
  sheetsAtHand: 'Vorhandene Platten',
  useSpan: (span) => `Den Flügel ${span} lang machen`,
  picture: 'Die Teile auf der Platte, von oben gesehen.',
  piece: (a) => `${String(a.number)} ${a.part}`,
  pictureSheet: (title, pieces) => `${title}: ${pieces.join(', ')}.`,
  sheetTitle: (a) =>
    a.only ? 'Wie auf dem Tisch, Seite A oben' : a.alike === 1 ? `Platte ${String(a.first)}, Seite A oben` : `Platten ${String(a.first)} bis ${String(a.first + a.alike - 1)}, alle gleich`,
  leftOver: (piece) => `Rest: ${piece}`,
  legend: {cut: 'durchschneiden', above: 'Nut auf der oberen Seite', below: 'Nut auf der unteren Seite', mark: 'Bleistiftstrich', grain: 'Faser der Platte', held: 'festgehalten'},
  wingHere: 'Flügel',
  tailHere: 'Leitwerk',
  list: 'Zuschnittliste',
  places: 'Wo jedes Teil liegt',
  columns: {piece: 'Teil', part: 'Teil', pieces: 'Stück', size: 'Maße', sheet: 'Platte', across: 'x', up: 'y'},
  sheetNumbers: (first, alike) => (alike === 1 ? String(first) : `${String(first)}–${String(first + alike - 1)}`),
  show: (a) => `${String(a.number)}, ${a.part}, dort festhalten`,
  grain: 'Jedes Teil liegt der Länge nach längs der Faser.',
  howToRead: 'Von der mit 0 bezeichneten Ecke bis zur nächsten Ecke jedes Teils messen: x nach rechts, y nach oben. Seite A liegt oben wie gezeichnet, Seite B auf dem Tisch.',
  note: {
    pieces: (n) => n === 1 ? 'Ein Stück.' : `${capital(few[n] ?? String(n))} gleiche Stücke.`,
    flies: 'Seite A fliegt oben.',
    crease: (a) => `${a.at.length > 1 ? 'Falze' : 'Falz'} ${series(a.at)} hinter der Vorderkante, Nut auf Seite ${a.face}.`,
    joint: (a) => `${a.at.length > 1 ? 'V-Knicke' : 'V-Knick'} links und rechts ${series(a.at)} von der Mitte, Nut auf Seite ${a.face}.`,
    jointMiddle: (face) => `V-Knick in der Mitte, Nut auf Seite ${face}.`,
    centre: (faces) => `Mittellinie auf ${faces.length > 1 ? 'beiden Seiten' : `Seite ${faces[0] ?? 'A'}`}.`,
    tip: (a) => `Außen ${a.chord} tief${a.back === undefined ? '' : `, die Vorderkante dort ${a.back} weiter hinten`}.`,
    taper: (a) => `Ab ${a.from} hinter der Nase steigt die Unterkante an, bis auf ${a.height} Höhe am Ende.`,
    marks: (marks) => `Striche auf Seite A, ab der Nase: ${series(marks.map(({label, at}) => `${markNames[label] ?? label} ${at}`))}.`,
    fins: (inset) => `Innenseiten der Seitenleitwerke ${inset} von jedem Ende.`,
    finTop: (chord) => `Oben ${chord} tief.`,
  },
  corners: 'Ecken der schrägen Teile, ab der mit 0 bezeichneten Ecke: x | y',
  because: {
    area: (least) => `Keine Anordnung kommt mit weniger Platte aus, als die Teile Fläche haben. Mit dem Platz fürs Messer braucht es mindestens ${sheets(least)}, wie die Teile auch liegen.`,
    bound: (least) => `Zählt für jedes Teil der Anteil an der Länge mal dem Anteil an der Breite einer Platte, den es sicher einnimmt, so gemessen, dass keine Platte mehr als ein Ganzes fasst, braucht es mindestens ${sheets(least)} (S. P. Fekete, J. Schepers, 2004; J. Carlier, F. Clautiaux, A. Moukrim, 2007).`,
    search: 'Von da an wird weitergesucht: Platten werden wieder und wieder in anderer Reihenfolge gefüllt, und was besser ist, bleibt: alles untergebracht, die wenigsten Platten, der größte Rest, die wenigsten Schnitte und Lineal-Einstellungen, in dieser Reihenfolge.',
    placing: 'Zuerst wird jedes Teil mit dem Rechteck, das es umschließt, liegend oder um ein Viertel gedreht in das am besten passende freie Rechteck gelegt; zwei schräge Teile werden auch Kopf an Fuß zusammengelegt. Das wird in vielen Reihenfolgen versucht; behalten wird die Anordnung mit den wenigsten Platten und dem größten Rest.',
    source: 'Alle größten freien Rechtecke behalten: J. Jylänki, A Thousand Ways to Pack the Bin (2010). Untergrenze: die Fläche, für dieses Element hergeleitet.',
    more: 'Danach versucht die Suche einen Gleiter mehr oder einen längeren Flügel, in wachsenden Schritten, solange sich Platz findet, und kommt immer wieder auf den nächsten Schritt zurück. Sie lässt aus, wofür die Platte nach den beiden Untergrenzen zu klein ist: nach der Fläche und nach den Anteilen an Länge und Breite.',
    longest: 'Eine Länge nach der anderen versucht, die Unsicherheit jedes Mal halbiert, bis auf einen Teilstrich des Lineals.',
  },
  spoken: (a) =>
    `die Zahl der Platten ist mindestens die Fläche der Teile durch die Fläche einer Platte: ${a.parts} durch ${a.board} ist ${a.ratio}, also mindestens ${sheets(a.least)}`,
  symbols: {parts: 'Teile', sheet: 'Platte'},
  caution: 'Auf einer Matte schneiden, an einem Stahllineal mit Fingerschutz, in mehreren leichten Zügen, die Klinge weg von der Hand, die hält. Die Regeln des Raums und der Aufsicht gehen vor.',
};

export default words;
