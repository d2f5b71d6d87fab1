import type {PartId} from '../../calc/parts/part.js';
import type {sheetTemplateWords} from '../en/sheet-templates.js';

const parts: Readonly<Record<PartId, string>> = {wing: 'Flügel', body: 'Rumpf', tailplane: 'Höhenleitwerk', fin: 'Seitenleitwerk'};

const pages = (n: number): string => (n === 1 ? 'Eine Seite' : `${String(n)} Seiten`);

const words: typeof sheetTemplateWords.en = {
  intro: 'Jedes Teil in wahrer Größe: zum Drucken, Zusammenkleben und Durchstechen auf die Platte oder zum Schneiden mit der Maschine.',
  paper: 'Papier',
  whole: 'eine Seite so groß wie die Platte',
  overlap: 'Überlappung der Seiten',
  oneForAll: 'Ein Satz reicht für eine ganze Klasse: nach einem Gleiter fragen, seine Schablonen drucken und jedes Teil danach durchstechen.',
  which: 'Welche Platten',
  all: 'alle',
  pages: (a) => `${pages(a.pages)} ${a.paper}.`,
  plotter: (a) => `${pages(a.pages)} von ${a.size}, für den Copyshop.`,
  printer: 'Wenn der Drucker nicht genau ist',
  printerHelp: 'Eine Seite mit 100 % drucken, ohne hier etwas zu ändern, ihren Kasten messen und hier eintragen, was das Lineal sagt. Die nächste Datei gleicht es aus.',
  side: (side) => `Gemessen statt ${side}`,
  makePdf: 'PDF erzeugen',
  saveSvg: 'Als SVG speichern',
  saveDxf: 'Als DXF speichern',
  loading: 'Was die Datei schreibt, wird geholt …',
  writing: (a) => `Seite ${String(a.page)} von ${String(a.of)} wird gezeichnet …`,
  stop: 'Anhalten',
  stopped: 'Angehalten; es gibt keine Datei.',
  ready: (name) => `${name} noch einmal speichern`,
  readyPdf: 'Mit 100 % drucken, „tatsächliche Größe“, und vor dem Schneiden den Kasten auf der ersten Seite messen.',
  readyCut: 'Eine Einheit ist ein Millimeter. Linien der Seite B liegen da, wo man sie von oben sieht, durch die Platte hindurch.',
  stale: 'Aus einer Antwort, die nicht mehr gilt, entsteht keine Datei: erst die oben markierte Angabe berichtigen.',
  nothing: 'Auf dieser Platte gibt es nichts zu schneiden.',
  leftOut: (ids) => `Was keinen Platz fand, steht nicht in der Datei: ${ids.map((id) => parts[id]).join(', ')}.`,
  letters: (letters) => `Die Schrift der Datei kennt nur lateinische Buchstaben; ein Fragezeichen steht für ${letters}`,
  notLoaded: 'Was diese Datei schreibt, ließ sich nicht laden. Noch einmal versuchen, wenn die Seite wieder erreichbar ist; eine Seite mit dem einen Skript braucht die anderen Skripte des Pakets daneben.',
  failed: 'Die Datei ließ sich nicht schreiben.',

  nameless: 'Gleiter',
  fact: (a) => `${parts[a.part]}${a.count > 1 ? ` (${String(a.count)})` : ''} ${a.size}`,
  board: (a) => `Platte ${a.size}, ${a.thickness} dick`,
  grain: {length: 'Faser längs der langen Kante', width: 'Faser längs der kurzen Kante'},
  kits: (kits) => `Für ${String(kits)} Gleiter`,
  page: (a) => `${a.code === undefined ? '' : `${a.code} · `}Seite ${String(a.page)} von ${String(a.pages)}`,
  corrected: (a) => `Für einen Drucker gezeichnet, der aus ${a.box} ${a.measured} macht.`,
  measure: {
    heading: 'Diesen Kasten vor dem Schneiden messen',
    lines: [
      'Mit 100 % drucken, „tatsächliche Größe“, nicht „anpassen“: Dann ist der innere Kasten 100 × 50 mm groß, der äußere 4 × 2 in.',
      'Stimmt er noch nicht, das Gemessene dort eintragen, woher die Datei kam, und sie neu erzeugen.',
    ],
  },
  trim: (code) => `hier abschneiden, über ${code} legen`,
  under: (code) => `${code} kommt über diesen Rand`,
  boardEdge: 'Kante der Platte',
};

export default words;
