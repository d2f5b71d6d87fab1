import type {sheetQuestionWords} from '../en/sheet-question.js';

const words: typeof sheetQuestionWords.en = {
  cuts: 'So wird geschnitten',
  ways: {free: 'an jedem Umriss entlang', straight: 'gerade, von Kante zu Kante'},
  spares: 'Gleiter in Reserve oder %',
  atHand: 'So viele dieser Platten sind da',
  asNeeded: 'nach Bedarf',
  others: 'Andere Platten und Reststücke',
  length: 'Länge',
  width: 'Breite',
  count: 'Wie viele',
  kind: 'Was es ist',
  kinds: {board: 'eine ganze Platte', left: 'ein Reststück'},
  add: 'Platte oder Reststück hinzufügen',
  remove: (nth) => `Platte ${nth} entfernen`,
  nth: (nth) => `Platte ${nth}`,
  unreadBoards: 'Die Liste der Platten in dieser Seite ist nicht zu lesen: etwa „400mm@300mm@2“, also Länge, Breite und wie viele.',
  splice: 'Darf aus Längen geklebt werden',
  splicedParts: {wing: 'Flügel', body: 'Rumpf', tailplane: 'Höhenleitwerk', fin: 'Seitenleitwerke'},
  notSpliced: (a) => `„${a.names}“ in dieser Seite ist kein Teil, das aus Längen geklebt werden darf: Es gibt ${a.parts}.`,
  price: 'Preis einer Platte',
  currency: 'Währung',
  numberUnread: (a) => `Eine einfache Zahl von 0 bis ${a.most} schreiben.`,
};

export default words;
