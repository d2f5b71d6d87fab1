import type {asBuiltWords, How} from '../en/as-built.js';

const slower = (is: boolean): string => (is ? 'langsamer' : 'schneller');
const side = (way: 'left' | 'right'): string => (way === 'left' ? 'links' : 'rechts');

const how = (one: How): string => one === 'measured' ? 'Wie gemessen' : 'Wie geplant';

const words: typeof asBuiltWords.en = {
  heading: 'Wie gebaut: Was gemessen ist, zählt',
  waiting: 'Was die Messwerte bewirken, wird berechnet, sobald das Flugmodell da ist.',
  nothing: 'Noch ist nichts gemessen, also **gilt der Plan**.',
  begin: (a) => `Am meisten zählt **${a.what}**: ${a.step}, und er fliegt ${a.by} ${slower(a.slower)}.`,
  beginNoGlide: (a) => `Am meisten zählt **${a.what}**: ${a.step}, und er gleitet nicht mehr.`,
  firsts: {hollow: 'der Hohlraum des Flügels', tail: 'die Höhe der Leitwerkskanten', balance: 'der Schwerpunkt', nose: 'das Gewicht'},
  flies: (speed) => `Wie gemessen fliegt er mit **etwa ${speed}**`,
  asPlanned: ', wie geplant',
  offPlan: (a) => `, **${a.by} ${slower(a.slower)}** als geplant`,
  straight: ', und geradeaus',
  turns: (a) => `, und kurvt nach **${side(a.way)}**, bei der Landung auf einem Kreis von etwa **${a.across}** Durchmesser`,
  hardlyTurns: (way) => `, und kurvt so wenig nach ${side(way)}, dass es niemand sieht`,
  rollsOver: (way) => `, und rollt nach **${side(way)}** ab: vor dem ersten Wurf gerade richten`,
  steepTurn: (way) => `, und kurvt steiler nach **${side(way)}**, als sich hier verfolgen lässt: vor dem ersten Wurf gerade richten`,
  dives: (a) => `${how(a.how)} ginge er nur in den **Sturzflug**${a.edge === undefined ? '.' : `: vor dem ersten Wurf die Hinterkante des Höhenleitwerks um **${a.edge}** anheben.`}`,
  stalls: (a) => `${how(a.how)} **risse** die Strömung nur **ab**${a.edge === undefined ? '.' : `: vor dem ersten Wurf die Hinterkante des Höhenleitwerks um **${a.edge}** senken.`}`,
  unstable: (by) => `${how(by)} **fängt er sich nicht** von selbst.`,
  silent: 'Was er wie gemessen tut, lässt sich noch nicht berechnen.',
  tooFarOff: (what) => `Ungenauer, als er verträgt: ${what.join(', ')}.`,
  trueEnough: 'Was gemessen ist, ist genau genug.',
  better: {
    slower: 'Die Leitwerkskanten sind so besser als geplant, denn wie geplant ist er schneller als nötig: sie lassen und den Plan ändern, den Einstellwinkel des Leitwerks.',
    faster: 'Die Leitwerkskanten sind so besser als geplant, denn wie geplant reißt die Strömung leicht ab: sie lassen und den Plan ändern, den Einstellwinkel des Leitwerks.',
  },
  names: {
    'hollow': 'Hohlraum', 'tail': 'Leitwerkskanten', 'balance': 'Schwerpunkt', 'nose': 'Ballast', 'tips': 'Flügelspitzen', 'skew': 'schräger Flügel', 'bow': 'krummer Rumpf',
    'tip-weight': 'schwere Spitze', 'fin': 'Seitenleitwerke', 'twist': 'verwundener Flügel',
  },
  figure: {
    hollow: 'Flügel von der Seite, ein Lineal darunter', tips: 'Flügel von vorn, die Mitte flach auf dem Tisch', tail: 'Leitwerk auf dem Rumpf, von links', plan: 'Von oben: Spitzen bis Leitwerk, am Faden',
    planned: (value) => `Plan ${value}`, left: (value) => `links ${value}`, right: (value) => `rechts ${value}`,
    bow: (a) => `Heck ${a.by} nach ${a.right ? 'rechts' : 'links'}`,
  },
  picture: (a) => `Was am fertigen Gleiter zu messen ist, in vier maßstäblichen Ansichten: der Hohlraum über einem Lineal, die Spitzen über dem Tisch, die Kanten des Leitwerks, Spitzen bis Leitwerk und die Biegung des Rumpfs; ${
    a.measured === 0 ? 'noch nichts gemessen' : `bisher ${String(a.measured)} gemessen`}.`,
  groups: {wing: 'Der Flügel', tail: 'Kanten über dem Rumpf', straight: 'Gerade von oben', weight: 'Gewicht und Schwerpunkt'},
  forget: 'Alle Messwerte vergessen',
  truth: {
    heading: 'Wie genau ist genau genug: die Karte vor dem ersten Wurf', caption: 'Das Wichtigste steht oben. Abhaken, was geprüft ist.', check: 'Prüfen', off: 'Etwas daneben', within: 'Erlaubt',
    truths: {
      'hollow': {check: (target) => `Hohlraum des Flügels ${target} tief`, step: (step) => `${step} tiefer`},
      'tail': {check: (target) => `Hinterkante des Leitwerks ${target} höher als seine Vorderkante`, step: (step) => `${step} höher`},
      'balance': {check: (target) => `Schwerpunkt ${target} hinter der Vorderkante des Flügels`, step: (step) => `${step} weiter hinten`},
      'nose': {check: (target) => `Ballast wie geplant, zusammen ${target}`, step: (step) => `${step} mehr`},
      'tips': {check: (target) => `Beide Spitzen gleich hoch, ${target}`, step: (step) => `${step} Unterschied`},
      'skew': {check: (target) => `Beide Spitzen gleich weit vom Leitwerk, ${target}`, step: (step) => `${step} Unterschied`},
      'bow': {check: () => 'Rumpf gerade am Faden', step: (step) => `${step} am Heck`},
      'tip-weight': {check: () => 'Keine Spitze schwerer als die andere', step: (step) => `${step} an einer Spitze`},
      'fin': {check: () => 'Seitenleitwerke genau nach vorn', step: (step) => `${step} an der Hinterkante`},
      'twist': {check: () => 'Beide Flügelhälften im selben Winkel', step: (step) => `eine Hinterkante ${step} tiefer`},
    },
    speed: (a) => `${a.step}: ${a.by} ${slower(a.slower)}`,
    turn: (a) => `${a.step}: ein Kreis von etwa ${a.across} Durchmesser`,
    noTurn: (step) => `${step}: kaum eine Kurve`,
    rollsOver: (step) => `${step}: rollt um`,
    steepTurn: (step) => `${step}: kurvt zu steil`,
    noGlide: (step) => `${step}: gleitet nicht mehr`,
    hardly: 'kaum wichtig',
    range: (from, to) => `${from} bis ${to}`,
    measuredAt: (at) => `gemessen: ${at}`,
    measured: (a) => `gemessen: ${a.off} daneben`,
    fits: 'genau genug', fitsNot: 'zu weit daneben',
    criterion: (a) => `Klein genug heißt hier: die Geschwindigkeit auf ${a.speed} genau und kein Kreis unter ${a.across} Durchmesser bei der Landung; beim Schwerpunkt der Bereich, in dem sich der Gleiter gut von selbst fängt. Übliche Praxis, ohne Quelle.`,
    better: 'besser als geplant',
    none: 'Die Karte kommt mit einem Gleiter, der gleitet: zuerst richten, was die Antwort nennt.',
  },
  form: {
    kept: 'Was behalten wird: dasselbe ohne den aufgeführten Ballast', how: 'Schwerpunkt gefunden auf', hows: {fingers: 'zwei Fingern', scale: 'einer Waage und zwei Stützen'}, mass: 'Der Gleiter, wie er geworfen wird, wiegt',
    at: 'Finger hinter der Vorderkante des Flügels', front: 'Vordere Stütze hinter der Vorderkante des Flügels', rear: 'Hintere Stütze hinter der Vorderkante des Flügels', under: 'Die Waage steht unter',
    supports: {front: 'der vorderen Stütze', rear: 'der hinteren Stütze'}, reading: 'Sie zeigt',
    fitted: 'Der aufgeführte Ballast ist angebracht', found: (a) => a.at === undefined ? `Das Gewicht ist **${a.mass}**.` : `Der Schwerpunkt liegt **${a.at}** hinter der Vorderkante des Flügels, das Gewicht ist ${a.mass}.`,
    bare: (a) => `Ohne die ${a.fitted} Ballast, die daran waren, wären es ${a.mass}${a.at === undefined ? '' : ` und ${a.at} hinter der Vorderkante des Flügels`}.`,
    willKeep: (use) => `„${use}“ behält das.`, isKept: 'Das ist behalten.',
    since: 'Der aufgeführte Ballast ist seither ein anderer: den Gleiter zur Probe neu wiegen.',
    hint: 'Den Gleiter waagerecht auf zwei hochkant gestellte Streifen legen, einer steht auf der Waage; das Gewicht des Streifens von der Anzeige abziehen. Vor der Vorderkante des Flügels ist kleiner als null.',
  },
  caution: 'Prüfen, ob der Ballast festsitzt. Dann weg von Gesichtern, Augen und Straßen werfen; Flugregeln vor Ort und Aufsicht gehen vor.',
};

export default words;
