import type {trimAdviceWorkingWords} from '../en/trim-advice-working.js';

const words: typeof trimAdviceWorkingWords.en = {
  spoken: {
    share: 'der Anteil einer Ursache ist ihr Gewicht durch die Summe aller Gewichte',
    margin: (a) => `das Stabilitätsmaß ist der Abstand vom Schwerpunkt zum Neutralpunkt durch die mittlere Flügeltiefe: ${a.margin}`,
    mass: 'Ballast an der Nase: Masse mal Verschiebung des Schwerpunkts, durch den Abstand vom Ballast zum Schwerpunkt danach',
    ball: (a) => `ein mit ${a.speed} waagerecht geworfener Ball landet nach ${a.distance}`,
  },
  because: {
    share: 'w ist, wie oft eine Ursache hinter dem Gesehenen steckt, mal einem Faktor für alles, was von diesem Gleiter bekannt ist. Beides ist übliche Praxis ohne Quelle: der Reihenfolge glauben, nicht den Zahlen.',
    margin: 'x wird ab der Vorderkante des Flügels gemessen: N ist der Neutralpunkt, G der Schwerpunkt; c ist die mittlere Flügeltiefe.',
    mass: 'm ist die Masse des Gleiters, s die gewünschte Verschiebung, d der Abstand vom Ballast zum Schwerpunkt danach. Wie weit Schwerpunkt und Leitwerk gehen müssen, folgt aus dem Flugmodell; dort wird jede Änderung geflogen, bevor sie vorgeschlagen wird.',
    ball: 'V ist das Tempo der Hand, h ihre Höhe, g 9,81 m/s².',
  },
  rows: {margin: 'Stabilitätsmaß', speed: 'Gleiten', right: 'Richtiger Wurf', height: 'Höhe der Hand'},
  source: 'R. F. Stengel, Flight Dynamics (2004), für Schwerpunkt und Trimmung; was üblich ist, ist übliche Praxis ohne Quelle.',
};

export default words;
