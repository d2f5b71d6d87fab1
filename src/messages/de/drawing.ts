import type {drawingWords} from '../en/drawing.js';

const words: typeof drawingWords.en = {
  heading: (name) => name || 'Der Gleiter in drei Ansichten',
  title: (name) => name || 'Gleiter',
  side: 'Von links',
  plan: 'Von oben, der Flügel flach',
  front: 'Von vorn, im Flug',
  section: 'Schnitt in Flügelmitte, vergrößert',
  camber: (a) => `Wölbung ${a.camber}: ${a.height} über der Linie von Kante zu Kante`,
  lengths: (unit) => `Längen in ${unit}.`,
  inUnit: (title, unit) => `${title} (${unit})`,
  faces: {
    above: 'A, Doppellinie: Nut oben.',
    below: 'B, gestrichelt: Nut unten.',
  },
  dimensions: 'Maße',
  picture: (a) => `Maßstäbliche Zeichnung des Gleiters ${a.views}: Spannweite ${a.span}, Länge ${a.length}, Profiltiefe ${a.chord}.`,
  views: {side: 'von links', plan: 'von oben', front: 'von vorn'},
  and: 'und',
  rows: {
    span: 'Spannweite, flach', flown: 'Spannweite im Flug', length: 'Länge', chord: 'Profiltiefe', tipChord: 'Profiltiefe außen', sweep: 'Pfeilung', area: 'Flügelfläche, Zuschnitt', aspectRatio: 'Streckung (Spannweite² durch Fläche)', camber: 'Wölbung',
    crease: 'Falz hinter der Vorderkante', joint: 'V-Knick ab Mitte', angle: 'Flügelteil steigt dort um', rise: 'Flügelenden über der Mitte', equivalent: 'Gleichwertige V-Form',
    tailSpan: 'Leitwerk, Spannweite', tailChord: 'Leitwerk, Tiefe', finHeight: 'Seitenleitwerk, Höhe', wingAt: 'Nase bis Flügel', tailAt: 'Nase bis Leitwerk', bodyHeight: 'Rumpf, Höhe', balance: 'Schwerpunkt hinter der Flügelvorderkante', target: 'Schwerpunkt, Ziel', range: (from, to) => `${from} bis ${to}`,
    several: (label, n) => `${label}, ${String(n)}`,
  },
};

export default words;
