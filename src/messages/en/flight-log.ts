import type {Unfairness} from '../../calc/flight-log/fairness.js';
import type {MeasureId} from '../../calc/flight-log/measures.js';
import {topic} from '../topic.js';

const throws = (n: number): string => `${String(n)} ${n === 1 ? 'throw' : 'throws'}`;

/** What one version does more of than another. */
const ahead: Readonly<Record<MeasureId, string>> = {
  distance: 'flies further', time: 'stays up longer', ratio: 'glides flatter', sink: 'sinks more slowly', speed: 'flies faster',
};
const average: Readonly<Record<MeasureId, (value: string) => string>> = {
  distance: (value) => `flies **${value}** on average`, time: (value) => `stays up **${value}** on average`, ratio: (value) => `flies **${value} times as far as it drops**, on average`,
  sink: (value) => `sinks **${value}** on average`, speed: (value) => `flies at **${value}** on average`,
};

const unfair: Readonly<Record<Unfairness, string>> = {
  few: 'Fewer than five throws of each tell little.',
  surfaces: 'They landed on different ground, where they slide differently: measure to where each first touches.',
  winds: 'They flew in different winds: throw both in the same air.',
  windy: 'There was wind: it can move a glider further than any change of yours. Best is a hall or a still evening.',
  heights: 'They were let go at different heights: a higher hand alone makes a throw longer.',
  turns: 'All throws of one came before all of the other. Throw them by turns: arms tire and air changes.',
};

/** Words offered for a throw; others are kept as they were written. */
const paths: Readonly<Record<string, string>> = {straight: 'straight on', left: 'bent left', right: 'bent right', wavy: 'up and down', dive: 'dived'};
const surfaces: Readonly<Record<string, string>> = {floor: 'hall floor', grass: 'grass', hard: 'hard ground', sand: 'sand'};
const winds: Readonly<Record<string, string>> = {calm: 'none', against: 'against the throw', behind: 'from behind', across: 'from the side', gusts: 'gusts'};

export const flightLogWords = topic('flight-log', {
  heading: 'Flight log: which version flies better?',
  nothing: '**Throw, stop the watch, measure, write it down.** Five throws of each version begin to tell which flies better.',
  nothingLike: (what: string) => `No throw here has what it takes for the ${what}: write down distance, time and the height of the hand.`,
  one: (a: {name: string; measure: MeasureId; value: string}) => `One throw of ${a.name} so far: **${a.value}**. Throw again: a single throw tells little.`,
  several: (a: {name: string; measure: MeasureId; mean: string; n: number}) => `${a.name} ${average[a.measure](a.mean)}, over ${throws(a.n)}.`,
  scatter: (a: {deviation: string; best: string}) => `Two out of three throws land within about ${a.deviation} of that; the best so far: ${a.best}.`,
  scatterOnly: (deviation: string) => `Two out of three throws lie within about ${deviation} of that.`,
  mean: (a: {from: string; to: string}) => `Go on for ever, and the average would most likely end up between ${a.from} and ${a.to}.`,
  settled: (a: {ahead: string; behind: string; measure: MeasureId; difference: string; from: string; to: string}) =>
    `**${a.ahead} ${ahead[a.measure]} than ${a.behind}**: by about **${a.difference}**, most likely something from ${a.from} to ${a.to}.`,
  settledAside: (a: {a: number; b: number}) => `Over ${String(a.a)} and ${throws(a.b)}. Luck alone would make two equal gliders look so different less than once in twenty such trials.`,
  open: (a: {ahead: string; behind: string; measure: MeasureId; difference: string}) =>
    `**Not settled yet.** ${a.ahead} ${ahead[a.measure]} than ${a.behind} by ${a.difference} on average, but that may be luck.`,
  more: (a: {a: number; b: number; nameA: string; nameB: string}) => {
    const which = a.a === a.b ? `${throws(a.a)} more of each`
      : a.a === 0 ? `${throws(a.b)} more of ${a.nameB}` : a.b === 0 ? `${throws(a.a)} more of ${a.nameA}` : `${throws(a.a)} more of ${a.nameA} and ${String(a.b)} more of ${a.nameB}`;
    return `If the difference really is that big, about **${which}** would settle it.`;
  },
  hopeless: 'They are so close, and the throws so far apart, that no afternoon is long enough to settle it: **choose a bigger change**.',
  between: (a: {from: string; to: string; ahead: string; behind: string}) => `By these throws anything is possible from ${a.ahead} behind by ${a.from} to ${a.ahead} in front by ${a.to}.`,
  tooFew: (a: {nameA: string; a: number; nameB: string; b: number}) =>
    `**Not enough to compare yet**: ${a.nameA} has ${throws(a.a)}, ${a.nameB} has ${throws(a.b)}. Two of each are the least, five begin to tell.`,
  alike: (a: {nameA: string; nameB: string}) => `Every throw of ${a.nameA} is like the last, and so is every throw of ${a.nameB}: **measure more finely**, to the nearest centimetre or hundredth of a second.`,
  version: (name: string) => `version ${name}`,
  Version: (name: string) => `Version ${name}`,
  unfair,
  picture: (a: {measure: string; lanes: readonly string[]}) => `Every throw as a dot on a scale: ${a.measure}. ${a.lanes.join(' ')}`,
  lane: (a: {name: string; n: number; mean: string}) => `${a.name}: ${throws(a.n)}, ${a.mean} on average.`,
  laneShort: (a: {name: string; n: number}) => `${a.name}, ${throws(a.n)}`,
  laneMean: (mean: string) => `average ${mean}`,
  legend: {mean: 'average', interval: 'where the true average most likely lies', band: 'predicted', out: 'left out'},
  latestLanes: (n: number) => `The picture shows the ${String(n)} versions thrown last.`,
  compareBy: 'Compare by',
  measures: {distance: 'distance', time: 'time aloft', ratio: 'glide ratio', sink: 'sink', speed: 'speed'} satisfies Record<MeasureId, string>,
  with: 'Compare',
  and: 'with',
  nobody: 'nothing',
  versions: 'The versions so far',
  columns: {version: 'Version', thrown: 'Throw', n: 'Throws', mean: 'Average', scatter: 'Scatter', best: 'Best'},
  expected: (a: {least: string; most: string; standing: 'within' | 'above' | 'below'}) =>
    `predicted ${a.least} to ${a.most}${{within: ': as it flew', above: ': it flew more', below: ': it flew less'}[a.standing]}`,
  // the watch
  start: 'Start as it leaves the hand',
  stop: 'Stop as it touches',
  again: 'Start again',
  watch: 'Stopwatch',
  // the form
  thrown: 'Version thrown',
  name: 'Its name',
  nameTaken: 'Another version has this name.',
  nameEmpty: 'A version needs a name.',
  newVersion: 'New version',
  distance: 'Distance',
  time: 'Time aloft',
  height: 'Hand height',
  path: 'It flew',
  surface: 'It landed on',
  wind: 'Wind',
  windWas: (wind: string) => `wind: ${wind}`,
  note: 'Note',
  unsaid: '–',
  paths,
  surfaces,
  winds,
  write: 'Write this throw down',
  correct: 'Save the correction',
  leave: 'Leave it as it was',
  written: (a: {name: string; n: number; value: string}) => `Written down: throw ${String(a.n)} of ${a.name}, ${a.value}.`,
  corrected: 'Corrected.',
  deleted: 'Taken out of the log.',
  undo: 'Put it back',
  restored: 'Put back.',
  caution: 'Throw away from faces and eyes, never towards people, roads or windows; nobody stands in front of the thrower, and nobody looks for a glider in a road. The rules of the field and of whoever supervises it come first.',
  // what differs
  changed: (a: {name: string; what: readonly string[]}) => `The glider on this page is no longer as it was for ${a.name}: ${a.what.join('; ')}.`,
  counts: (version: string) => `The next throw counts for ${version}.`,
  itIs: (name: string) => `It is a new version: ${name}`,
  still: (name: string) => `No, ${name} was like this`,
  from: (a: {label: string; from: string; to: string}) => `${a.label} ${a.from} → ${a.to}`,
  none: 'none',
  differNone: (a: {nameA: string; nameB: string}) => `${a.nameA} and ${a.nameB} are the same glider by their dimensions.`,
  differOne: (a: {nameA: string; nameB: string; what: string}) => `One thing changed from ${a.nameA} to ${a.nameB}: ${a.what}. So whatever differs in flight comes from that, or from the throws.`,
  differMany: (a: {nameA: string; nameB: string; n: number; what: readonly string[]}) =>
    `${String(a.n)} things changed from ${a.nameA} to ${a.nameB}: ${a.what.join('; ')}. The throws cannot tell which of them did it: change one thing at a time.`,
  // the list
  list: 'Every throw',
  listOf: (n: number) => `Every throw (${String(n)})`,
  newest: 'newest first',
  edit: 'Correct',
  leaveOut: 'Leave out',
  countIt: 'Count it',
  remove: 'Delete',
  which: (a: {name: string; n: number}) => `throw ${String(a.n)} of ${a.name}`,
  pages: (a: {from: number; to: number; of: number}) => `${String(a.from)} to ${String(a.to)} of ${String(a.of)}`,
  older: 'Older throws',
  newer: 'Newer throws',
  isOut: 'left out',
  // keeping
  keep: {
    memory: 'This log lasts as long as this page: save it as a file before you leave.',
    opening: 'Opening what this browser has kept …',
    kept: 'Kept in this browser, on this device only.',
    forbidden: 'This browser does not let the page keep anything. Your throws are safe on screen: save them as a file before you leave.',
    full: 'This browser has no room left. Your throws are safe on screen: save them as a file, then make room.',
    'later-version': 'Another tab has a later version of this page: reload this one. Your throws are safe on screen; save them as a file first.',
    'not-loaded': 'What keeps the log could not be fetched. Your throws are safe on screen: save them as a file before you leave.',
  },
  tryAgain: 'Try again to keep it',
  files: 'Files, and rows that could not be read',
  plan: 'Before you cut: could your throws show it?',
});
