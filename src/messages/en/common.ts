import {topic} from '../topic.js';

/** Words that every element shares. */
export const commonWords = topic('common', {
  more: 'More',
  working: 'The working',
  where: 'Where this comes from',
  numbers: 'The numbers in the picture',
  noDesign: (id: string) => `There is no design called ${id} on this page.`,
  stale: 'This is the last answer that fitted; mend what is marked.',
  standIn: 'What stands here is about the plane that every page starts with.',
  unanswered: 'The answer appears here once what is marked has been mended.',
  about: (quantity: string) => `about ${quantity}`,
  use: 'Use this',
  dash: '–',
  edit: (label: string) => `Change: ${label}`,
});
