import type {tailShimWorkingWords} from '../en/tail-shim-working.js';

const words: typeof tailShimWorkingWords.en = {
  because: {
    flush: 'Ein flacher Streifen berührt die schräge Platte nur mit einer Kante, der oberen, die dem Drehpunkt am nächsten ist: d ist der Winkel, c die Tiefe ab dem Drehpunkt, w die Breite des Streifens von vorn nach hinten, h seine Höhe; die kleinste Lösung gilt.',
    edges: 'Aus den Höhen beider Kanten über dem Rumpf.',
    difference: 'i ist jeweils der Winkel zum Rumpf, Vorderkante nach oben.',
    speed: 'Die Geschwindigkeit kommt aus dem Flugmodell: der Auftrieb, bei dem Nase und Leitwerk im Gleichgewicht sind.',
  },
  spoken: {
    flush: (a) => `c Sinus d minus w Tangens d ist h: ${a.height} ergibt ${a.angle}`,
    edges: 'd ist der Arkussinus aus Höhe hinten minus Höhe vorn durch c',
    difference: (difference) => `die Differenz ist der Winkel des Flügels minus der des Leitwerks: ${difference}`,
  },
  rows: {angle: 'Winkel, Vorderkante nach oben', height: 'Höhe der Streifen', stack: 'Nächster Stapel', rise: 'Angehobene Kante über der anderen', difference: 'Flügel minus Leitwerk', speed: 'Geschwindigkeit'},
  source: 'Ebene Trigonometrie, für dieses Element hergeleitet; R. F. Stengel, Flight Dynamics (2004), Abschnitt 2.6, für die Geschwindigkeit.',
};

export default words;
