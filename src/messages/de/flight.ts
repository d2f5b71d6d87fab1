import type {flightWords} from '../en/flight.js';

const words: typeof flightWords.en = {
  heading: 'Flugprüfung: Wird er fliegen, und wie?',
  waiting: '– Wie er fliegt, wird gerade berechnet.',
  groups: {weighs: 'Was die Teile wiegen', size: 'Wie der Gleiter gebaut ist', wing: 'Wie der Flügel geknickt ist', steady: 'Wie stabil er sein soll', air: 'Die Luft, in der er fliegt'},
};

export default words;
