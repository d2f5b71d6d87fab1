import type {flightLogPanelWords} from '../en/flight-log-panels.js';

const rows = (n: number): string => (n === 1 ? '1 Zeile' : `${String(n)} Zeilen`);
const throws = (n: number): string => (n === 1 ? '1 Wurf' : `${String(n)} Würfe`);
/** After "bei" and "mit". */
const throwsDative = (n: number): string => (n === 1 ? '1 Wurf' : `${String(n)} Würfen`);
/** The verb for rows that could not be read. */
const unreadable = (n: number): string => `${rows(n)} ${n === 1 ? 'ließ' : 'ließen'} sich nicht lesen`;

const words: typeof flightLogPanelWords.en = {
  saveCsv: 'Für eine Tabelle speichern (CSV)',
  saveJson: 'Alles speichern (JSON)',
  open: 'Eine Datei einlesen',
  csvLacks: 'CSV enthält die Würfe; JSON enthält auch die Maße jeder Version.',
  ready: (name) => `${name} speichern`,
  readIn: (a) => `${throws(a.added)} eingelesen${a.known > 0 ? `, ${String(a.known)} schon vorhanden` : ''}${
    a.replaced > 0 ? `, ${String(a.replaced)} jetzt wie in der Datei` : ''}${
    a.unread > 0 ? `; ${unreadable(a.unread)} und ${a.unread === 1 ? 'steht' : 'stehen'} unten` : ''}.`,
  unnamed: 'A',
  unread: unreadable,
  unreadHelp: 'Davon geht nichts verloren: Jede steht hier Zeichen für Zeichen und kommt in jede gespeicherte Datei. Eine verbessern und noch einmal lesen.',
  row: 'Die Zeile',
  again: 'Noch einmal lesen',
  drop: 'Löschen',
  dropped: 'Zeile gelöscht.',
  readNow: 'Zeile gelesen.',
  moreRows: (n) => `und noch ${rows(n)}`,
  forget: 'Das ganze Flugbuch löschen',
  forgotten: 'Das Flugbuch ist leer.',
  planHelp: 'Eine Änderung lohnt das Schneiden, wenn die Würfe sie zeigen können. Eintragen, was sie bringen soll.',
  expected: {distance: 'Weiter fliegen um', time: 'Länger oben bleiben um', ratio: 'Flacher gleiten um', sink: 'Langsamer sinken um', speed: 'Schneller fliegen um'},
  predictedNow: (a) => `Das Flugmodell erwartet ${a.value} Unterschied von ${a.name} zum Gleiter auf dieser Seite (${a.least} bis ${a.most}, wenn sein Fehler ganz in eine Richtung geht).`,
  predictedSame: 'Für das Flugmodell ist der Gleiter auf dieser Seite noch dieselbe Version: eines ändern, dann steht hier, was zu erwarten ist.',
  planGiven: 'So viel erwartet, wer diese Seite geschrieben hat.',
  noScatter: 'Wie weit die Würfe streuen, ist noch nicht bekannt: **den Gleiter zuerst vier- oder fünfmal werfen, wie er ist**.',
  takes: (a) => `Die Würfe streuen um ${a.scatter}. Damit sich ein Unterschied von ${a.difference} zeigt, jede Version **etwa ${String(a.n)}-mal** werfen.`,
  bigger: (a) => `**Mehr auf einmal ändern.** Die Würfe streuen um ${a.scatter}; damit sich ${a.difference} zeigt, bräuchte es ${
    a.n === undefined ? 'mehr Würfe, als irgendjemand macht' : `${throws(a.n)} mit jeder`}. Bei ${String(a.usual)} mit jeder zeigt sich ein Unterschied ab ${a.least}.`,
  canShow: (a) => `Die Würfe streuen um ${a.scatter}. Bei ${throwsDative(a.usual)} mit jeder zeigt sich ein Unterschied ab ${a.least}.`,
  steady: 'Immer gleich werfen, von derselben Marke und aus derselben Höhe: Das verkleinert die Streuung und hilft mehr als viele Würfe.',
  spokenMean: (a) => `der Mittelwert ist die Summe aller Würfe durch ihre Anzahl, ${String(a.n)}: ${a.mean}`,
  spokenDeviation: (value) => `die Streuung ist die Wurzel aus der Summe der Quadrate von jedem Wurf minus Mittelwert, durch die Anzahl der Würfe minus eins: ${value}`,
  spokenError: (value) => `der Standardfehler des Unterschieds ist die Wurzel aus der Summe von jeder Streuung zum Quadrat durch ihre Anzahl der Würfe: ${value}`,
  spokenInterval: (a) => `der Unterschied ist der Mittelwert der zweiten minus den der ersten, plus oder minus t mal Standardfehler: von ${a.from} bis ${a.to}`,
  because: {
    interval: 'In neunzehn von zwanzig solchen Versuchen enthält ein solches Intervall den wahren Unterschied. B. L. Welch, Biometrika 34 (1947), über den Vergleich von Mittelwerten bei ungleicher Streuung.',
    mean: 'Mittelwert, Streuung (Standardabweichung der Stichprobe) und Intervall eines Mittelwerts: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.',
    plan: 'Wie viele Würfe: t für das Intervall und noch einmal t für vier von fünf Versuchen, der übliche Plan für den Vergleich zweier Mittelwerte (J. Cohen, Statistical Power Analysis, 2. Auflage, 1988).',
    flight: 'Aus einem Wurf: Gleitzahl = Weite / Höhe der Hand; Sinken = Höhe / Zeit; Geschwindigkeit = gerader Weg von der Hand zum Boden / Zeit. Der Schwung der Hand steckt darin; nur mit Gleitgeschwindigkeit geworfen sind es die Werte des Gleiters selbst.',
    watch: 'Ein Daumen ist auf etwa eine fünftel Sekunde genau. Übliche Erfahrung, ohne Quelle.',
    predicted: 'Vorhergesagt: der Gleitflug des Flugmodells aus der Höhe der Hand, mit Gleitgeschwindigkeit in stiller Luft geworfen; jedes Ende des Bands aus demselben Ende des Modellfehlers.',
  },
};

export default words;
