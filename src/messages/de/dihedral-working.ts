import type {dihedralWorkingWords} from '../en/dihedral-working.js';

const words: typeof dihedralWorkingWords.en = {
  how: {
    closing: 'Auf dem Tisch liegt die Oberseite des Flügels oben, und dort ist die Nut; die Deckschicht auf dem Tisch bleibt heil.',
    opening: 'Auf dem Tisch liegt die Oberseite des Flügels oben, und ihre Deckschicht bleibt heil; der Schlitz öffnet sich unten.',
  },
  slit: {
    closing: 'Eine Deckschicht, die schon für die Wölbung geknickt ist, knickt nicht noch einmal quer dazu: Am Scheitel die Deckschicht im Knick schlitzen und der Nut nach beschneiden.',
    opening: 'Eine Deckschicht, die schon für die Wölbung geknickt ist, knickt nicht noch einmal quer dazu: Sie bleibt nur am Scheitel heil, davor und dahinter schlitzen.',
  },
  step: (order, where) => `${String(order)}. Knick ${where}`,
  rows: {
    joint: (n) => `Knick ${String(n)}`,
    at: 'Ab Mitte', angle: 'Flügelteil steigt um', fold: 'Ganzer Knickwinkel', panel: 'Flügelteil, flach', block: 'Klotz', fromJoint: 'Vom Knick bis zur Berührung', inset: 'Von dort bis zum Ende des Flügelteils',
    groove: 'Nut, mindestens', grooveCrest: 'Nut am Scheitel, mindestens', slot: 'Schlitz, der aufgeht', perMillimetre: 'Je Millimeter Klotz',
    rise: 'Flügelenden über der Mitte', flown: 'Spannweite im Flug', equivalent: 'Gleichwertige V-Form', sameRise: 'V mit gleich hohen Enden',
  },
  because: {
    'closing-edge': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Klotzes, L die flache Länge des gestützten Flügelteils, f sein Winkel zum Tisch.',
    'closing-inset': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Klotzes, L der gestützte Flügelteil, e der Abstand von seinem Ende bis zur Berührung, f sein Winkel zum Tisch.',
    'closing-bench': 'Rechtwinkliges Dreieck auf dem Tisch: h ist die Höhe des Klotzes, x der Abstand vom Knick bis zu seiner inneren Kante, f der Winkel des Flügelteils zum Tisch.',
    'closing-plumb': 'Die innere Kante eines Klotzes der Breite w, dessen Außenseite lotrecht unter dem Ende steht, ist L cos f − w vom Knick entfernt; die kleinste Lösung gilt.',
    'opening': 'Liegt die heile Deckschicht oben, dreht sich der Flügelteil um seine obere Ecke, eine Plattendicke t über dem Tisch; seine untere Kante beginnt daher jenseits des Knicks.',
    'place': 'Dasselbe Dreieck umgestellt: Der Klotz ist gegeben, und e, der Abstand vom Ende bis zur Berührung, ist, was übrig bleibt.',
    'one-half': 'Eine Hälfte liegt flach, also steigt die andere um den ganzen Knick: f ist das Doppelte der V-Form Γ.',
    'both-halves': 'Beide Hälften steigen gleich, also ist f die V-Form Γ jeder Hälfte; der ganze Knick ist das Doppelte.',
    'flown': 'H ist die Höhe der Flügelenden über der Mitte, b die Spannweite im Flug: Jeder Flügelteil zählt mit Sinus und Kosinus seines Winkels Γ zur Waagerechten, die Winkel aller weiter innen liegenden Knicke zusammengezählt.',
    'equivalent': 'Gleichwertige V-Form ist hier nach dem Moment gewichtet: Jeder Streifen des Flügels rollt ihn im Verhältnis zu seinem Winkel, seinem Hebelarm y und seiner Profiltiefe c (Streifentheorie). Allein nach der Höhe der Enden hätte das V einen anderen Winkel; beides heißt gleichwertige V-Form.',
    'groove': 'Beide Seiten der Nut treffen sich in der Ebene, die den Knick halbiert. Der Knick dreht sich um die Linie der unteren Kanten; die Nut g ist also dort am breitesten, wo die Oberseite am höchsten über dieser Linie steht: z ist ihre Höhe dort und φ der ganze Knick.',
    'slot': 'Die beiden unteren Kanten des Schnitts drehen sich um die obere Ecke, eine Plattendicke t entfernt, um den ganzen Knick φ; g ist, was sich zwischen ihnen öffnet.',
  },
  source: 'Ebene Trigonometrie, für dieses Element hergeleitet und durch schrittweises Drehen des Flügelteils geprüft.',
  equivalentSource: 'Idee: B. Beron-Rawdon, „Dihedral“, Model Aviation, 1988 bis 1990; die Gewichtung ist hier aus der Streifentheorie hergeleitet.',
  spoken: {
    block: (a) => `Die Höhe h des Klotzes wird ${a.block} für einen Winkel f von ${a.angle}`,
    angle: (a) => `Der Winkel f wird ${a.angle} für einen Klotz h von ${a.block}`,
    place: (a) => `Der Abstand e wird ${a.inset}`,
    panel: (value) => `Für einen Flügelteil sind das ${value}`,
    groove: (a) => `Die Nut wird ${a.groove}`,
    rise: (a) => `Die Höhe der Flügelenden, die Summe aus Länge mal Sinus des Winkels jedes Flügelteils, wird ${a.rise}`,
    flown: (a) => `Die Spannweite im Flug, zweimal die Summe aus Länge mal Kosinus des Winkels jedes Flügelteils, wird ${a.flown}`,
    equivalent: (a) => `Die gleichwertige V-Form, das Integral von V-Form mal Profiltiefe mal Hebelarm durch das Integral von Profiltiefe mal Hebelarm, wird ${a.equivalent}`,
  },
};

export default words;
