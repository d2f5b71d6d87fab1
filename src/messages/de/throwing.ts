import type {throwingWords} from '../en/throwing.js';

const words: typeof throwingWords.en = {
  level: 'waagerecht', up: (angle) => `**${angle}** über der Waagerechten`, down: (angle) => `**${angle}** unter der Waagerechten`,
  downAt: (a) => `**${a.angle}** unter der Waagerechten, auf den Boden **${a.ground}** voraus gezielt`,
};

export default words;
