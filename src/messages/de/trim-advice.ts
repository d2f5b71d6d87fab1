import type {trimAdviceWords} from '../en/trim-advice.js';

const words: typeof trimAdviceWords.en = {
  heading: 'Nach einem Wurf: was zu ändern ist',
  waiting: 'Was zu ändern ist, wird berechnet, sobald das Flugmodell da ist.',
  begin: (a) => `In ruhige Luft werfen, mit **etwa ${a.speed}**, ${a.angle}. Dann unten sagen, **was er getan hat**.`,
  beginAside: 'Aus Schulterhöhe, so schnell, wie er gleitet, und nicht schneller. Immer nur eines ändern, und nach jeder Änderung ein Wurf.',
  beginCalls: {
    slower: (by) => `Das ist schneller, als er fliegen muss: zuerst die Hinterkante des Leitwerks etwa ${by} anheben, dann fliegt er langsamer und flacher.`,
    faster: (by) => `So langsam reißt die Strömung leicht ab: zuerst die Hinterkante des Leitwerks etwa ${by} senken, dann sackt er bei langsamem Wurf oder einer Bö nicht durch.`,
  },
  beginAfter: 'Dann in ruhige Luft werfen und unten sagen, **was er getan hat**. Immer nur eines ändern, und nach jeder Änderung ein Wurf.',
  thrownAgain: 'Ihn **noch einmal genauso werfen** und sagen, was er jetzt tut.',
  changedNow: (what) => `Jetzt **noch einmal werfen** und sagen, was er tut. Geändert: ${what}.`,
  thrownSo: (what) => `Jetzt **noch einmal werfen** und sagen, was er tut: ${what}.`,
  measuredNow: '**Eintragen, was gemessen wurde**, wo es anders ist als auf dieser Seite. Dann wieder werfen und sagen, was er tut.',
  legend: 'Was hat er getan?',
  sights: {
    good: 'glitt gut, gerade und flach', dives: 'ging gleich in den Sturzflug', swoops: 'stieg, sackte durch, stieg wieder', zooms: 'stieg steil, sackte einmal durch', drops: 'fiel flach zu Boden',
    left: 'kurvte nach links', right: 'kurvte nach rechts', rolls: 'rollte auf den Rücken', wags: 'wedelte mit dem Heck', flutters: 'flatterte, Platten zitterten',
  },
  measured: 'Falls gemessen', distance: 'Wie weit er flog', time: 'Wie lange',
  changedIt: 'Habe ich geändert', measuredIt: 'Habe ich gemessen', throwSo: 'Nächster Wurf so', threwAgain: 'Nächster Wurf, nichts geändert', fastened: 'Ist befestigt', takeBack: 'Das letzte zurücknehmen', startOver: 'Von vorn',
  remedyTail: (a) => `Zuerst das Leitwerk einstellen, vorher lohnt nichts anderes: ${a.change}. ${a.effect}`,
  remedyUnlike: '**Was zu sehen war, zählt mehr als das Berechnete.** Flog er gar nicht so schlecht, dann vor dem Ändern nachmessen: die Kanten des Leitwerks, die Höhlung des Flügels, den Schwerpunkt.',
  notYet: (why) => `**Noch nicht werfen.** ${why}`,
  leftAlone: 'Die Zahlen des Gleiters blieben, wie sie sind: Was diese Änderung gesetzt hatte, wurde seitdem anders gesetzt.',
  thread: 'Bisherige Würfe', thrown: 'Nichts geändert', empty: 'Leer lassen, was nicht gemessen wurde.',
  flew: (distance) => `flog ${distance}`, lasted: (time) => `${time} lang`,
  caution: 'Weg von Gesichtern, Augen, Menschen und Straßen werfen, mit niemandem davor. Vor jedem Wurf prüfen, ob der Ballast an der Nase festsitzt. Regeln vor Ort und Aufsicht gehen vor.',
};

export default words;
