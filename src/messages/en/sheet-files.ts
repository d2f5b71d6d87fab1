import {topic} from '../topic.js';

/** What the parts sheet says of its files before anyone asks for one. */
export const sheetFileWords = topic('sheet-files', {
  heading: 'Templates at true size',
  notLoaded: 'What makes the files could not be loaded. Open this again when the page is reachable.',
  notToScale: 'Not to scale. Templates at true size are a file of their own: see the page itself.',
});
