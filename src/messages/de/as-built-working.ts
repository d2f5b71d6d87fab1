import type {asBuiltWorkingWords} from '../en/as-built-working.js';

const words: typeof asBuiltWorkingWords.en = {
  because: {
    hollow: 'd: Tiefe des Hohlraums über dem Lineal; f: der Knick; a und b: die Unterseite von jeder Kante bis zum Falz, bei geschlossener Nut um die halbe Nut kürzer als die Platte. Mehrere Falze teilen sich den Knick zu gleichen Teilen.',
    tips: 'h: Höhe einer Spitze über dem Tisch; die Felder außerhalb jeder Knickstelle werden alle um denselben Anteil ihres geplanten Winkels gedreht, bis sie so hoch reicht. Der Mittelwert beider Seiten fliegt, ihr Unterschied lässt den Rumpf schräg hängen.',
    tail: 'i: Winkel des Höhenleitwerks, Vorderkante nach oben; z mit r und f: seine Hinter- und seine Vorderkante; c: seine Tiefe. Beim Flügel ebenso.',
    skew: 'ψ: Schrägstellung des Flügels; d mit l und r: linke und rechte Spitze bis zum Leitwerk; s: halbe Spannweite im Flug; l: entlang des Rumpfs. Ein krummer Rumpf dreht die Seitenleitwerke um die doppelte Biegung durch seine freie Länge.',
    supports: 'x: Schwerpunkt; x mit f und r: die Stützen; m mit r: was die hintere trägt. Das Hebelgesetz.',
    truth: 'Ein kleiner Schritt in beide Richtungen, geflogen mit dem Modell der Flugprüfung; für Kurven wird der Gleiter mit diesem Schritt wie beim Wurf bis zur Landung aus der Höhe der Hand verfolgt.',
  },
  spoken: {
    hollow: (a) => `die Tiefe ist a b Sinus f durch die Wurzel aus a Quadrat plus b Quadrat plus zwei a b Kosinus f: ${a.hollow} kommen von einem Knick von ${a.fold}`,
    tail: (value) => `der Winkel ist minus der Arkussinus von hinterer minus vorderer Höhe durch die Tiefe: ${value}`,
    skew: (value) => `der Sinus der Schrägstellung ist linker Abstand im Quadrat minus rechter Abstand im Quadrat durch vier s l: ${value}`,
    supports: 'der Schwerpunkt ist die vordere Stütze plus der Abstand der Stützen mal die Last der hinteren durch die ganze Masse',
  },
  rows: {planned: 'Plan', measured: 'Wie gebaut', caption: 'Was anstelle des Plans gemessen ist', what: 'Maß'},
  source: 'Trigonometrie in der Ebene und der Hebel, für dieses Element ausgearbeitet; das Flugmodell ist das der Flugprüfung.',
};

export default words;
