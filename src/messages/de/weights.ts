import type {weightsWords, Place} from '../en/weights.js';

export const where = ({end, distance, beyond}: Place): string =>
  end === 'nose' ? `${distance} ${beyond ? 'vor' : 'hinter'} der Nase` : `${distance} ${beyond ? 'hinter' : 'vor'} dem Rumpfende`;

const words: typeof weightsWords.en = {
  take: {
    some: (a) => `von den ${a.of} ${where(a)} **${a.mass}** wegnehmen oder dort nur **${a.left}** anbringen`,
    all: (a) => `die **${a.mass}** ${where(a)} abnehmen`,
  },
  put: (a) => `**${a.mass}** ${where(a)} anbringen`,
  putMore: (a) => `**${a.mass} mehr** ${where(a)} anbringen, zusammen ${a.together}`,
  then: (doing) => doing.join(', dann '),
  first: (a) =>
    `**Zuerst der Schwerpunkt:** Er liegt ${a.at} ${a.ahead ? 'vor' : 'hinter'} der Vorderkante des Flügels, **${a.by} zu weit ${a.heavy === 'tail' ? 'hinten' : 'vorn'}**${
      a.doing === undefined ? ', und Ballast allein hilft nicht: den angebrachten Ballast und das Gemessene prüfen oder den Flügel verschieben' : `; ${a.doing}`}.`,
  thenFlies: (a) => `So ausgewogen fliegt er mit etwa ${a.speed} und gleitet etwa ${a.ratio}\u2011mal so weit, wie er an Höhe verliert.`,
  thenCalls: {
    slower: (a) => `So ausgewogen fliegt er mit etwa ${a.speed}, schneller als nötig: danach die Hinterkante des Leitwerks etwa ${a.by} anheben.`,
    faster: (a) => `So ausgewogen fliegt er mit etwa ${a.speed}, kurz bevor die Strömung abreißt: danach die Hinterkante des Leitwerks etwa ${a.by} senken.`,
  },
  thenDives: (edge) => `So ausgewogen ginge er in den Sturzflug: danach die Hinterkante des Leitwerks etwa ${edge} anheben.`,
  thenStalls: (edge) => `So ausgewogen risse die Strömung ab: danach die Hinterkante des Leitwerks etwa ${edge} senken.`,
};

export default words;
