import {topic} from '../topic.js';

const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);

/** What the parts sheet says while it looks for a better layout, and of pieces that a reader puts in place. */
export const sheetSearchWords = topic('sheet-search', {
  soon: 'This layout was found at once; a better one is looked for as soon as you pause.',
  looking: (a: {seconds: number; better: number}) => `Looking for a better layout … ${a.seconds} s${a.better > 0 ? `, bettered ${times(a.better)}` : ''}`,
  trying: (a: {what: string; seconds: number}) => `Looking for room for ${a.what} … ${a.seconds} s`,
  gliders: (n: number) => (n === 1 ? 'one glider' : `${n} gliders`),
  wing: (length: string) => `a wing of ${length}`,
  vain: (what: string) => `No room was found for ${what}; that does not prove that there is none.`,
  awaited: 'The picture still shows the layout from before.',
  awaitedStraight: 'The picture still shows parts cut along their outlines.',
  notStraight: 'No layout with straight cuts only was found for this; the picture shows one cut along the outlines.',
  stop: 'Stop',
  stopped: 'Stopped at the best so far.',
  resting: (a: {seconds: number; better: number}) => `Looked for ${a.seconds} s${a.better > 0 ? ` and bettered it ${times(a.better)}` : ' and found nothing better'}.`,
  lookOn: 'Look on',
  proved: 'No layout has fewer sheets.',
  ended: (a: {better: number}) => (a.better > 0 ? `Bettered ${times(a.better)}; after that the search found nothing better.` : 'The search found nothing better.'),
  notLoaded: 'What looks for better layouts could not be loaded; this one was found at once.',

  byHand: 'Put a part in its place by hand',
  inHand: 'Part in hand',
  none: 'none',
  onSheet: (a: {number: number; part: string; sheet: string}) => `${a.number} ${a.part}, sheet ${a.sheet}`,
  lies: (a: {part: string; across: string; up: string}) => `${a.part} lies ${a.across} from the left and ${a.up} from below.`,
  moved: (a: {part: string; across: string; up: string}) => `${a.part} moved to ${a.across} from the left and ${a.up} from below, not held yet.`,
  held: (a: {part: string; across: string; up: string}) => `${a.part} is held ${a.across} from the left and ${a.up} from below; the rest lies round it.`,
  asking: 'Placing the rest round it …',
  turn: 'Turn',
  hold: 'Hold here',
  letGo: 'Let go',
  putBack: 'Put back',
  letAllGo: 'Let all go',
  manyHeld: (n: number) => (n === 1 ? 'One part is held.' : `${n} parts are held.`),
  handHelp: 'Drag a part in the picture, or pick it in the list and press Tab: then arrow keys move it (with Shift ten times as far), R turns it, Enter in the picture holds it or lets it go, Escape puts it back.',
  handKeys: 'Keys, once the list is left with Tab: arrows move it, R turns it, Escape puts it back.',
  handHelpTouch: 'Drag a part in the picture, or pick it in the list; then “Turn” turns it and “Hold here” keeps it where it is. With a keyboard, press Tab after picking: arrow keys move it (with Shift ten times as far), R turns it, Enter holds it or lets it go, Escape puts it back.',
  bench: 'The sheet, with one part in hand',
});
