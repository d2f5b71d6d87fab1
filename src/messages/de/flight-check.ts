import type {flightCheckWords} from '../en/flight-check.js';

const words: typeof flightCheckWords.en = {
  measures: {
    mass: {
      name: 'Gewicht', means: 'Alles, was geworfen wird, mit Ballast.',
      below: 'So leicht, dass ihn jeder Hauch mitnimmt: drinnen oder bei Windstille werfen.', above: 'Er fliegt schneller und landet härter: eine Deckschicht vom Flügel abziehen oder leichtere Platte nehmen.',
    },
    wingLoading: {
      name: 'Flächenbelastung', means: 'Was jedes Stück Flügel tragen muss: Viermal so viel lässt ihn doppelt so schnell fliegen.',
      below: 'Er fliegt langsam und am besten ohne Wind.', above: 'Den Flügel größer oder den Gleiter leichter bauen.',
    },
    cubeLoading: {
      name: 'Kubische Flächenbelastung', means: 'Gewicht zu Flügel, wie es sich in der Hand anfühlt; so lassen sich kleine und große Gleiter vergleichen.',
      below: 'Er schwebt wie eine Feder: Wind meiden.', above: 'Für seine Größe ist er ein Pfeil: den Flügel größer oder den Gleiter leichter bauen.',
    },
    balance: {
      name: 'Schwerpunkt', means: 'Wo der Gleiter auf zwei Fingerspitzen waagerecht hängt, hinter der Vorderkante des Flügels.',
      below: 'Er ist kopflastig: Ballast von der Nase nehmen oder den Flügel nach vorn schieben.', above: 'Er ist schwanzlastig: Ballast an die Nase setzen oder den Flügel nach hinten schieben.',
    },
    staticMargin: {
      name: 'Stabilitätsmaß', means: 'Wie weit der Schwerpunkt vor dem Neutralpunkt liegt, in mittleren Profiltiefen: Deshalb fängt sich der Gleiter von selbst.',
      below: 'Er wird nervös oder gar nicht stabil: den Schwerpunkt nach vorn bringen.', above: 'Er ist stabil, braucht aber viel Leitwerk, um die Nase oben zu halten: den Schwerpunkt nach hinten bringen.',
    },
    tailVolume: {
      name: 'Höhenleitwerksvolumen', means: 'Wie viel Höhenleitwerk es gibt und wie weit hinten es steht.',
      below: 'Die Nase wandert auf und ab: das Höhenleitwerk größer machen oder nach hinten setzen.', above: 'Mehr, als Flugzeuge mit Piloten haben: Diesen steuert niemand, darum schadet es nicht, kostet aber Gewicht am Leitwerk.',
    },
    finVolume: {
      name: 'Seitenleitwerksvolumen', means: 'Dasselbe für das Seitenleitwerk, das die Nase im Wind hält.',
      below: 'Er kann schlingern oder schräg fliegen: das Seitenleitwerk höher machen.', above: 'Zu viel davon zieht eine Schräglage in eine immer engere Kurve: das Seitenleitwerk kürzen, außer bei viel V-Form.',
    },
    roll: {
      name: 'Rollstabilität', means: 'Wie gut die V-Form einen hängenden Flügel aufrichtet; bei etwa 5 wird eine Kurve weder weiter noch enger.',
      below: 'Eine Kurve wird zur immer engeren Spirale: die Flügelenden höher stützen oder das Seitenleitwerk kürzen.', above: 'Der Flügel richtet sich kräftig auf; bei kleinem Seitenleitwerk kann das Heck schlingern.',
    },
    speed: {
      name: 'Fluggeschwindigkeit', means: 'Die Geschwindigkeit, auf die er sich von selbst einpendelt, und damit die zum Werfen.',
      below: 'Langsamer als ein sanfter Wurf: auf Windstille warten.', above: 'Zu schnell für einen sanften Wurf: die Hinterkante des Leitwerks etwas anheben oder den Gleiter leichter bauen.',
    },
    stallMargin: {
      name: 'Abstand zum Strömungsabriss', means: 'Wie viel schneller er fliegt als das Langsamste, bei dem der Flügel ihn trägt.',
      below: 'Wenig Reserve: Nach einem langsamen Wurf oder einer Bö bleibt er stehen und fällt; die Hinterkante des Leitwerks etwas senken.', above: 'Er hat Fahrt übrig: die Hinterkante des Leitwerks etwas anheben, dann gleitet er flacher.',
    },
    glideRatio: {
      name: 'Gleitzahl', means: 'Wievielmal so weit er gleitet, wie er an Höhe verliert, in stiller Luft.',
      below: 'Steil: die Kanten dünn drücken, glätten, was vorsteht, und, wenn er gleichmäßig gleitet, das Leitwerk für langsameren Flug einstellen.', above: 'Mehr, als solche Gleiter schaffen: erst messen, dann versprechen.',
    },
    sink: {
      name: 'Sinken', means: 'Wie schnell er herunterkommt: je langsamer, desto länger dauert ein Wurf.',
      below: 'Er kommt herunter wie ein Blatt: Der kleinste Aufwind hält ihn oben.', above: 'Den Gleiter leichter bauen oder, wenn er gleichmäßig gleitet, das Leitwerk für langsameren Flug einstellen.',
    },
    reynolds: {
      name: 'Reynoldszahl', means: 'Geschwindigkeit mal Profiltiefe, gemessen an der Zähigkeit der Luft: Dünne Platten sind bis etwa 70 000 so gut wie dicke Flügel.',
      below: 'In dieser Größe fühlt sich die Luft zäh an: Ein tieferer Flügel hilft mehr als ein längerer.', above: 'Hier wäre ein dicker, glatter Flügel langsam besser als eine Platte.',
    },
  },
  groups: {weighs: 'Was er wiegt', steady: 'Wie stabil er ist', glides: 'Wie er gleitet'},
  onlyLighter: 'Zu schnell für einen sanften Wurf, und langsamer risse die Strömung zu leicht ab: den Gleiter leichter oder den Flügel größer bauen.',
  standing: {below: 'Weniger als üblich.', within: 'Üblich.', above: 'Mehr als üblich.'},
  balanceStanding: {below: 'Weiter vorn als gewünscht.', within: 'Wie gewünscht.', above: 'Weiter hinten als gewünscht.'},
  wantedStanding: {below: 'Weniger als gewünscht.', within: 'Wie gewünscht.', above: 'Mehr als gewünscht.'},
  usual: {
    drela: (range) => `üblich ${range}`, practice: (range) => `üblich ${range}, allgemeine Praxis`, wanted: (range) => `gewünscht ${range}`,
  },
  range: (from, to) => `${from} bis ${to}`,
  flies: (a) => `Er wird fliegen: mit **etwa ${a.speed}** werfen, ${a.aim}, dann gleitet er **${a.ratio.replace(' bis ', '- bis ')}\u2011mal so weit, wie er an Höhe verliert**.`,
  calls: {
    slower: (a) => `Er wird fliegen, aber mit **etwa ${a.speed}**, schneller als nötig: für einen leichteren Wurf und flacheres Gleiten die Hinterkante des Leitwerks **etwa ${a.by}** anheben.`,
    faster: (a) => `Er wird fliegen, aber mit **etwa ${a.speed}**, kurz bevor die Strömung abreißt: die Hinterkante des Leitwerks **etwa ${a.by}** senken, damit er bei langsamem Wurf oder einer Bö nicht durchsackt.`,
  },
  sinks: (a) => `${a.now ? 'So, wie er ist, sinkt er' : 'Er sinkt'} mit ${a.sink}; das Stabilitätsmaß ist etwa ${a.margin} der mittleren Profiltiefe.`,
  better: (a) =>
    `Mit der Hinterkante des Leitwerks ${a.by} ${a.up ? 'höher' : 'tiefer'} flöge er am flachsten, etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert, mit etwa ${a.speed}.`,
  flatter: (a) =>
    `Mit der Hinterkante des Leitwerks ${a.by} ${a.up ? 'höher' : 'tiefer'} glitte er flacher, etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert, mit etwa ${a.speed}, und bliebe doch deutlich schneller, als die Strömung abreißt.`,
  out: (names) => `Nicht im üblichen Bereich: ${names.join(', ')}.`,
  allUsual: 'Alle seine Zahlen sind üblich.',
  asItIs: (a) => `So, wie er ist, stellt er sich auf etwa ${a.speed} ein und gleitet etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert.`,
  unsteady: (a) => `So, wie er ist, fängt er sich nicht von selbst: Der Schwerpunkt liegt ${a.behind} ${a.ahead ? 'vor' : 'hinter'} dem Neutralpunkt.`,
  divesNow: 'So, wie er ist, ginge er in den Sturzflug.', stallsNow: 'So, wie er ist, würde er sich aufbäumen, bis die Strömung abreißt.',
  dives: (edge) => `Er ist stabil, aber so gebaut ginge er in den **Sturzflug**: die Hinterkante des Leitwerks **etwa ${edge}** anheben.`,
  stalls: (edge) => `Er ist stabil, aber so gebaut würde er sich **aufbäumen, bis die Strömung abreißt**: die Hinterkante des Leitwerks **etwa ${edge}** senken.`,
  then: (a) => `Dann gleitet er etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert, mit etwa ${a.speed}.`,
  motion: {
    'rolls-out': 'In Schräglage sich selbst überlassen, richtet er sich auf.', 'holds': 'In Schräglage sich selbst überlassen, kreist er weiter.', 'tightens': 'In Schräglage sich selbst überlassen, wird seine Kurve enger: die Flügelenden höher stützen oder das Seitenleitwerk kürzen.',
  },
  wags: {not: '', briefly: 'Nach einer Bö schlingert das Heck ein- oder zweimal.', on: 'Das Heck schlingert immer weiter: das Seitenleitwerk höher oder die V-Form kleiner machen.'},
  swing: (period) => `Zu schnell oder zu langsam geworfen schwingt er auf und ab, einmal in etwa ${period} s.`,
  strength: {
    yes: (a) => `Der Flügel hält: Selbst bei doppelter Wurfgeschwindigkeit bleibt die Biegung unter dem, was solcher Schaum aushält; am schwächsten ist er ${a.place}.`,
    perhaps: (a) => `Der Flügel kann bei doppelter Wurfgeschwindigkeit ${a.place} einknicken, dort ist der Bereich des Schaums erreicht: Klebeband über die geschnittene Deckschicht kleben und sanft werfen.`,
    no: (a) => `Der Flügel knickt bei doppelter Wurfgeschwindigkeit ${a.place} ein: dort Klebeband über die geschnittene Deckschicht kleben und nicht stärker werfen, als er fliegt.`,
    peeled: {
      yes: () => 'Auch mit abgezogener oberer Deckschicht würde er halten.', perhaps: (a) => `Mit abgezogener oberer Deckschicht könnte er ${a.place} einknicken.`,
      no: (a) => `Mit abgezogener oberer Deckschicht würde er ${a.place} einknicken.`,
    },
    whole: {
      yes: () => 'Mit beiden Deckschichten würde er halten.', perhaps: (a) => `Auch mit beiden Deckschichten könnte er ${a.place} einknicken.`,
      no: (a) => `Auch mit beiden Deckschichten würde er ${a.place} einknicken.`,
    },
    middle: 'in der Mitte', joint: (at) => `am Knick ${at} ab Mitte`,
  },
  caution: 'Über Gras werfen, nie auf Menschen oder Tiere zu, die Augen weg von der Nase. Regeln vor Ort und Aufsicht gehen vor.',
  picture: (a) => `Schaubild des Sinkens über der Fluggeschwindigkeit. Unter etwa ${a.stall} reißt die Strömung ab, am flachsten gleitet er mit etwa ${a.best}.`,
  pictureHere: (a) => `So gebaut fliegt er mit etwa ${a.speed} und sinkt mit ${a.sink}.`,
  plot: {
    speed: (unit) => `Fluggeschwindigkeit, ${unit}`, sink: (unit) => `Sinken, ${unit}`, stall: 'Abriss unter', best: 'flachstes Gleiten', ratio: (ratio) => `1 : ${ratio}`, throwAt: 'werfen mit',
  },
  caption: 'Die Linie: wie schnell er bei jeder Geschwindigkeit sinkt, wenn das Leitwerk dafür eingestellt ist. Das Band: wie weit die Schätzung danebenliegen kann.',
  captionHere: 'Der Punkt: dieser Gleiter, wie er gebaut ist.',
};

export default words;
