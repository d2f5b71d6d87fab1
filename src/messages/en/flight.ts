import {topic} from '../topic.js';

/** What the flight check says before the flight has been worked out. */
export const flightWords = topic('flight', {
  heading: 'Flight check: will it fly, and how?',
  waiting: '– How it flies is being worked out.',
  groups: {weighs: 'What it weighs', size: 'How it is laid out', wing: 'How the wing is folded', steady: 'How steady it should be', air: 'The air it flies in'},
});
