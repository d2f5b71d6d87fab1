import {topic} from '../topic.js';

/** What an answer was reckoned with: measurements on the finished plane in place of the plan. */
export const reckonedWords = topic('reckoned', {
  names: {
    hollow: 'hollow', tips: 'tips', wing: 'edges of the wing', tail: 'edges of the tail', distances: 'tips to tail', bow: 'bow of the body', mass: 'weight', balance: 'balance',
  },
  with: (a: {count: number; what: readonly string[]}) => `Reckoned with ${a.count === 1 ? 'one of your measurements' : `${String(a.count)} of your measurements`}: ${a.what.join(', ')}.`,
});
