import type {flightPathWords} from '../en/flight-path.js';

const words: typeof flightPathWords.en = {
  heading: 'Der Wurf: was die Hand tun muss und was der Gleiter dann tut',
  waiting: (height) => `Ein Wurf aus ${height} wird berechnet, sobald das Flugmodell da ist.`,
  right: (a) =>
    `Mit **etwa ${a.speed}** werfen, ${a.aim}: so schnell wie ein Ball, der waagerecht geworfen **${a.ball}** weit kommt. Der Gleiter fliegt etwa **${a.distance}** in **${a.time}**.`,
  own: (a) =>
    `Mit **${a.speed}** geworfen, ${a.aim}, fliegt er etwa **${a.distance}** in **${a.time}**${a.top === undefined ? '' : `, höchstens **${a.top}** hoch`}. Mit etwa ${a.should} geworfen gleitet er.`,
  tape: (a) =>
    `${a.ball} vor den Füßen Klebeband auf den Boden kleben und einen Ball waagerecht aus ${a.height} werfen, bis er jedes Mal dort landet: Das ist die Geschwindigkeit für den Gleiter.`,
  speedRange: (least, most) => `Mit allem, was an diesem Gleiter nicht sicher ist, liegt die richtige Geschwindigkeit zwischen ${least} und ${most}.`,
  glide: (a) => `Er gleitet etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert, und sinkt mit etwa ${a.sink}.`,
  steep: (sink) => `Er kommt kaum weiter, als er an Höhe verliert, und sinkt mit etwa ${sink}.`,
  asItIsThrown: (a) => `Das Bild zeigt, was er tut, so wie er ist: mit ${a.speed} geworfen, ${a.aim}, kommt er etwa ${a.distance} weit in ${a.time}.`,
  calls: {
    slower: (by) => `Das ist schneller, als er fliegen muss, mehr Pfeil als Gleiter: zuerst die Hinterkante des Leitwerks etwa ${by} anheben, dann fliegt er langsamer und flacher.`,
    faster: (by) => `So langsam reißt die Strömung leicht ab: zuerst die Hinterkante des Leitwerks etwa ${by} senken, dann sackt er bei langsamem Wurf oder einer Bö nicht durch.`,
  },
  wind: {
    behind: (speed) => `Der Wind kommt **von hinten**, mit ${speed}: umdrehen und **gegen den Wind** werfen oder besser warten, bis es windstill ist.`,
    ahead: (speed) => `Ein Wind von ${speed} trägt ihn davon: besser **warten, bis es windstill ist**.`,
  },
  dives: (edge) => `Er gleitet noch nicht, er geht in den Sturzflug: zuerst die Hinterkante des Höhenleitwerks um **${edge}** anheben.`,
  stalls: (edge) => `Er gleitet noch nicht, die Strömung reißt ab: zuerst die Hinterkante des Höhenleitwerks um **${edge}** senken.`,
  thrownAllTheSame: 'Das Bild zeigt, was er tut, wenn er so geworfen wird, wie er ist.',
  names: {
    'own': 'eigener Wurf', 'right': 'richtig', 'slow': 'zu langsam', 'fast': 'zu schnell', 'up': 'zu steil', 'nose-heavy': 'kopflastig', 'tail-heavy': 'schwanzlastig', 'crooked': 'schief',
  },
  asItIs: 'wie er ist',
  moved: {'nose-heavy': 'Nase schwerer', 'tail-heavy': 'Nase leichter'},
  more: (mass) => `${mass} mehr an der Nase`,
  less: (mass) => `${mass} weniger an der Nase`,
  why: {
    'slow': 'Zu langsam: Der Flügel kann den Gleiter noch nicht tragen; er sackt durch, bis er schnell genug ist.',
    'fast': 'Zu schnell: Der Flügel hebt mehr, als der Gleiter wiegt; er zieht hoch, bis keine Fahrt mehr übrig ist, und taucht dann nach neuer.',
    'up': 'Zu steil: Das Steigen kostet Fahrt; oben wird er langsam und lässt die Nase fallen.',
    'nose-heavy': 'Kopflastig: Das Leitwerk hält die Nase erst bei höherer Fahrt oben; die holt er sich im Sturz.',
    'tail-heavy': 'Schwanzlastig: Das Leitwerk hält die Nase zu hoch; er wird langsamer, bis am Flügel die Strömung abreißt, dann fällt die Nase.',
  },
  compare: 'Vergleichen',
  comparisons: {throws: 'Würfe: langsam, richtig, schnell, steil', balances: 'Schwerpunkte: kopflastig, richtig, schwanzlastig', one: 'nichts, nur diesen Wurf'},
  table: {caption: 'Wie sie fliegen', name: 'Wurf', distance: 'Weite', time: 'Zeit', top: 'Größte Höhe', speed: 'Geworfen mit'},
  stillFlying: (distance) => `über ${distance}`,
  leftEmpty: (a) => `Wo Geschwindigkeit und Winkel leer sind, gelten die des Gleitflugs: ${a.speed}, ${a.aim}.`,
  play: 'Abspielen', pause: 'Anhalten', moment: 'Augenblick des Flugs',
  seconds: (n) => `${n}\u00a0s`,
  now: (a) => `${a.name}, ${a.time}: ${a.height} hoch, ${a.distance} weit, ${a.speed}, Nase ${a.nose} nach ${a.up ? 'oben' : 'unten'}`,
  landed: (a) => `${a.name}: gelandet nach ${a.time}, ${a.distance} weit`,
  ball: (distance) => `Ball ${distance}`,
  landing: (name, distance) => `${name} ${distance}`,
  picture: (flights) => `Seitenansicht der Würfe, maßstäblich, die Gleiter größer gezeichnet, als sie sind: ${flights}.`,
  pictured: (a) => `${a.name}, ${a.distance} weit und höchstens ${a.top} hoch`,
  turns: (a) =>
    `So schief fliegt er eine **${a.way === 'left' ? 'Links' : 'Rechts'}kurve**, am Ende auf einem Kreis von etwa **${a.across}** Durchmesser${a.tighter ? ', der noch enger wird' : ''}${a.aside === undefined ? '' : `, und landet **${a.aside}** ${a.way === 'left' ? 'links' : 'rechts'}`}.`,
  hardlyTurns: (a) => `So schief biegt er kaum nach ${a.way === 'left' ? 'links' : 'rechts'} ab: Wo er landet, ist er **${a.aside}** daneben.`,
  straightOn: 'So schief fliegt er geradeaus: Eine Kurve sieht niemand.',
  rollsOver: (way) => `So schief rollt er nach **${way === 'left' ? 'links' : 'rechts'}** um: vor dem Werfen richten.`,
  steepTurn: (way) => `So schief fliegt er nach ${way === 'left' ? 'links' : 'rechts'} und hebt oder senkt die Nase steiler, als die Kurve hier verfolgt werden kann.`,
  crookedNoGlide: 'Mit diesem Gewicht an der Flügelspitze gleitet er nicht mehr.',
  crooked: {
    legend: 'Was schief ist', note: 'Nach rechts, von hinten gesehen; für links mit Minuszeichen. Der Wurf wird damit verfolgt, und eine Ansicht von oben zeigt die Kurve.',
    fin: 'Seitenleitwerk: Hinterkante steht nach rechts um', tip: 'Gewicht an der rechten Flügelspitze', twist: 'Linke Flügelhälfte vorn höher eingestellt um',
  },
  plan: {
    above: 'Von oben', behind: 'Von hinten', aside: (distance, way) => `${distance} ${way === 'left' ? 'links' : 'rechts'}`, ahead: 'geradeaus',
    bank: (a) => `${a.time}: ${a.bank}`,
    picture: (aside) => `Darunter die Kurve von oben, im selben Maßstab: Sie endet ${aside}; und die Querlage von hinten.`,
  },
  nowTurning: (a) => `Querlage ${a.bank}, ${a.aside}`,
  caution: 'Weg von Gesichtern, Augen und Straßen werfen, niemand darf davor stehen; die Regeln zum Fliegen vor Ort und die Aufsicht gehen vor. Ballast an der Nase so festkleben, dass er nicht wegfliegen kann.',
};

export default words;
