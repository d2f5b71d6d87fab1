import type {MeasureId} from '../../calc/flight-log/measures.js';
import {topic} from '../topic.js';

const rows = (n: number): string => `${String(n)} ${n === 1 ? 'row' : 'rows'}`;
const throws = (n: number): string => `${String(n)} ${n === 1 ? 'throw' : 'throws'}`;

/** What the panels for files and for planning say, and the working. */
export const flightLogPanelWords = topic('flight-log-panels', {
  saveCsv: 'Save for a spreadsheet (CSV)',
  saveJson: 'Save all of it (JSON)',
  open: 'Read a file in',
  csvLacks: 'CSV holds the throws; JSON holds the dimensions of each version too.',
  ready: (name: string) => `Save ${name}`,
  readIn: (a: {added: number; known: number; replaced: number; unread: number}) => `${throws(a.added)} read in${a.known > 0 ? `, ${String(a.known)} there already` : ''}${
    a.replaced > 0 ? `, ${String(a.replaced)} now as in the file` : ''}${
    a.unread > 0 ? `; ${rows(a.unread)} could not be read and ${a.unread === 1 ? 'is' : 'are'} kept below` : ''}.`,
  unnamed: 'A',
  unread: (n: number) => `${rows(n)} could not be read`,
  unreadHelp: 'Nothing of them is lost: each stands here letter by letter, and goes into every file you save. Mend one and read it again.',
  row: 'The row',
  again: 'Read again',
  drop: 'Delete',
  dropped: 'Row deleted.',
  readNow: 'Row read.',
  moreRows: (n: number) => `and ${rows(n)} more`,
  forget: 'Delete the whole log',
  forgotten: 'The log is empty.',
  // planning
  planHelp: 'A change is worth cutting when your throws can show it. Say what you expect of it.',
  expected: {distance: 'It should fly further by', time: 'It should stay up longer by', ratio: 'It should glide flatter by', sink: 'It should sink more slowly by', speed: 'It should fly faster by'} satisfies Record<MeasureId, string>,
  predictedNow: (a: {name: string; value: string; least: string; most: string}) => `The flight model expects ${a.value} from ${a.name} to the glider on this page (${a.least} to ${a.most}, were its error all one way).`,
  predictedSame: 'To the flight model the glider on this page is that version still: change one thing, and it says here what to expect.',
  planGiven: 'The author of this page expects that much.',
  noScatter: 'How far your throws scatter is not known yet: **throw the glider as it is four or five times first**.',
  takes: (a: {n: number; difference: string; scatter: string}) => `Your throws scatter by ${a.scatter}. To show a difference of ${a.difference}, throw each version **about ${throws(a.n)}**.`,
  bigger: (a: {n: number | undefined; difference: string; scatter: string; usual: number; least: string}) =>
    `**Choose a bigger change.** Your throws scatter by ${a.scatter}; to show ${a.difference} it would take ${a.n === undefined ? 'more throws than anybody makes' : `${throws(a.n)} of each`}. With ${String(a.usual)} of each you can show ${a.least} or more.`,
  canShow: (a: {scatter: string; usual: number; least: string}) => `Your throws scatter by ${a.scatter}. With ${String(a.usual)} throws of each you can show a difference of ${a.least} or more.`,
  steady: 'Throwing always alike, from the same mark at the same height, makes the scatter smaller, and that helps more than many throws.',
  // the working
  spokenMean: (a: {mean: string; n: number}) => `the average is the sum of all throws over their number, ${String(a.n)}: ${a.mean}`,
  spokenDeviation: (value: string) => `the scatter is the square root of the sum of the squares of each throw less the average, over the number of throws less one: ${value}`,
  spokenError: (value: string) => `the standard error of the difference is the square root of the sum of each scatter squared over its number of throws: ${value}`,
  spokenInterval: (a: {from: string; to: string}) => `the difference is the average of the second less that of the first, plus or minus t times the standard error: from ${a.from} to ${a.to}`,
  because: {
    interval: 'In nineteen of twenty such trials an interval like this holds the true difference. B. L. Welch, The generalization of “Student’s” problem when several different population variances are involved, Biometrika 34 (1947).',
    mean: 'Average, scatter (sample standard deviation) and the interval of an average: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.',
    plan: 'How many throws: t for the interval and t again for four trials out of five, the usual plan for comparing two averages (J. Cohen, Statistical Power Analysis, 2nd ed., 1988).',
    flight: 'From one throw: glide ratio = distance / height of the hand; sink = height / time; speed = straight way from hand to ground / time. The push of the hand is in them, so they are the glider’s own only where it was thrown at its gliding speed.',
    watch: 'A thumb is good to about a fifth of a second. Common practice, no source.',
    predicted: 'Predicted: the flight model’s glide from the height of the hand, thrown at gliding speed in still air, each end of the band from the same end of the model’s error.',
  },
});
