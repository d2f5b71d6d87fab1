import {topic} from '../topic.js';

/** Headings of what the parts sheet loads when it is opened. */
export const sheetPanelWords = topic('sheet-panels', {
  marking: 'Marking out with pencil and tape',
  cutting: 'Cut by cut',
  sheet: 'Which sheet',
  notLoaded: 'This list could not be loaded. Open it again when the page is reachable.',
});
