import type {reckonedWords} from '../en/reckoned.js';

const words: typeof reckonedWords.en = {
  names: {
    hollow: 'Hohlraum', tips: 'Flügelspitzen', wing: 'Flügelkanten', tail: 'Leitwerkskanten', distances: 'Abstände der Spitzen zum Leitwerk', bow: 'Biegung des Rumpfs', mass: 'Gewicht', balance: 'Schwerpunkt',
  },
  with: (a) => `Gerechnet mit ${a.count === 1 ? 'einem gemessenen Wert' : `${String(a.count)} gemessenen Werten`}: ${a.what.join(', ')}.`,
};

export default words;
