import type {camberWorkingWords} from '../en/camber-working.js';

const words: typeof camberWorkingWords.en = {
  how: {
    closing: 'Den Flügel mit der heilen Deckschicht auf den Tisch legen, die Nut nach oben. Falzen, stützen, dann Kleber in die Nut geben und den Stapel darunter lassen, bis der Kleber kalt ist.',
    opening: 'Den Flügel mit der heilen Deckschicht nach oben legen. Stützen, dann mit festgehaltenem Stapel umdrehen und den Schlitz mit Kleber füllen.',
  },
  faces: {
    closing: 'Was auf dem Tisch oben liegt, ist im Flug die Unterseite.',
    opening: 'Was auf dem Tisch oben liegt, ist im Flug die Unterseite.',
  },
  rows: {
    fold: 'Knickwinkel', camber: 'Wölbung, bezogen auf die wahre Profiltiefe', camberHeight: 'Höhe des Scheitels', crestAt: 'Scheitel hinter der Vorderkante', chord: 'Wahre Profiltiefe, geknickt',
    stack: 'Höhe des Stapels', rise: 'Höhe der freien Kante', contact: 'Vom Falz bis zur Berührung', groove: 'Nut, die zugeht, mindestens', slot: 'Schlitz, der aufgeht', glue: 'Querschnitt, der mit Kleber zu füllen ist',
  },
  because: {
    'edge': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Stapels, L der Flügelteil vom Falz bis zur freien Kante.',
    'inset': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Stapels, L der Flügelteil, e der Abstand von der freien Kante bis zur Berührung.',
    'bench': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Stapels, x der Abstand vom Falz bis zu seiner nahen Kante.',
    'plumb': 'Die nahe Kante eines Stapels der Breite w, dessen Außenseite lotrecht unter der freien Kante steht, ist L cos f − w vom Falz entfernt; die kleinste Lösung gilt.',
    'opening': 'Liegt die heile Deckschicht oben, dreht sich der Flügelteil um seine obere Ecke, eine Plattendicke t über dem Tisch; seine untere Kante beginnt daher hinter dem Falz.',
    'crest': 'Platte und Tisch bilden über dem Stapel ein Dreieck: a und b sind die Unterseiten der beiden Flügelteile (eine Nut nimmt ihre Schräge davon weg), c der Tisch zwischen ihren Kanten, w die Breite des Stapels. Der kleinste Winkel gilt.',
    'several': 'Bei mehreren Falzen verteilt sich der Winkel gleichmäßig; jeder Flügelteil steht steiler als der vorige. Gelöst für den ersten Winkel, bei dem der Flügelteil den Stapel berührt.',
    'camber': 'Wölbung einer geknickten Platte, bezogen auf ihre eigene, kürzer gewordene Profiltiefe: a und b sind der vordere und der hintere Flügelteil.',
  },
  source: 'Ebene Trigonometrie, für dieses Element hergeleitet und durch schrittweises Drehen des Flügelteils geprüft.',
  spoken: {
    fold: (a) => `f ist der Arkussinus von h durch L: ${a.height} durch ${a.length} ergibt ${a.fold}`,
    camber: (camber) => `Wölbung durch Profiltiefe ist a b Sinus f durch a Quadrat plus b Quadrat plus zwei a b Kosinus f: ${camber}`,
  },
};

export default words;
