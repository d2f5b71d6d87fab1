import type {commonWords} from '../en/common.js';

const words: typeof commonWords.en = {
  more: 'Mehr',
  working: 'Der Rechenweg',
  where: 'Woher das kommt',
  numbers: 'Die Zahlen im Bild',
  noDesign: (id) => `Auf dieser Seite gibt es keinen Entwurf namens ${id}.`,
  stale: 'Das ist die letzte Antwort, die gepasst hat; bitte das Markierte berichtigen.',
  standIn: 'Was hier steht, handelt von dem Flugzeug, mit dem jede Seite beginnt.',
  unanswered: 'Die Antwort erscheint hier, sobald das Markierte berichtigt ist.',
  about: (quantity) => `etwa ${quantity}`,
  use: 'Übernehmen',
  dash: '–',
  edit: (label) => `Ändern: ${label}`,
};

export default words;
