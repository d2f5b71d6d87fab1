import {topic} from '../topic.js';
import {where, type End, type Place} from './weights.js';

/** Coins and washers by their id: one, and several. */
const pieceNames: Readonly<Record<string, readonly [one: string, several: string]>> = {
  'eur-0.01': ['one-cent coin', 'one-cent coins'], 'eur-0.02': ['two-cent coin', 'two-cent coins'], 'eur-0.05': ['five-cent coin', 'five-cent coins'],
  'eur-0.10': ['ten-cent coin', 'ten-cent coins'], 'eur-0.20': ['twenty-cent coin', 'twenty-cent coins'], 'eur-0.50': ['fifty-cent coin', 'fifty-cent coins'],
  'eur-1': ['one-euro coin', 'one-euro coins'], 'eur-2': ['two-euro coin', 'two-euro coins'],
  'usd-0.01': ['penny', 'pennies'], 'usd-0.05': ['nickel', 'nickels'], 'usd-0.10': ['dime', 'dimes'], 'usd-0.25': ['quarter', 'quarters'],
  'usd-0.50': ['half dollar', 'half dollars'], 'usd-1': ['dollar coin', 'dollar coins'],
  'gbp-0.01': ['penny', 'pennies'], 'gbp-0.02': ['two-pence coin', 'two-pence coins'], 'gbp-0.05': ['five-pence coin', 'five-pence coins'],
  'gbp-0.10': ['ten-pence coin', 'ten-pence coins'], 'gbp-0.20': ['twenty-pence coin', 'twenty-pence coins'], 'gbp-0.50': ['fifty-pence coin', 'fifty-pence coins'],
  'gbp-1': ['pound coin', 'pound coins'], 'gbp-2': ['two-pound coin', 'two-pound coins'],
  ...Object.fromEntries([3, 4, 5, 6, 8, 10, 12].map((m) => [`washer-m${String(m)}`, [`M${String(m)} washer`, `M${String(m)} washers`]])),
};

interface Now {
  readonly at: string;
  /** Ahead of the wing's front edge rather than behind it. */
  readonly ahead: boolean;
}

const balances = ({at, ahead}: Now): string => `It balances **${at}** ${ahead ? 'ahead of' : 'behind'} the wing’s front edge`;

export const balanceWords = topic('balance', {
  heading: 'Balance: where it hangs level, and what to add',
  piece: (id: string, count: number) => pieceNames[id]?.[count === 1 ? 0 : 1] ?? id,
  pieces: (count: string, name: string, mass: string) => `${count} ${name} (${mass})`,
  clay: (mass: string, ball: string) => `${mass} of clay, a ball ${ball} across,`,
  grams: (mass: string) => mass,
  range: (from: string, to: string) => `${from} to ${to}`,
  onTarget: (a: Now & {target: string}) => `${balances(a)}, inside the target of **${a.target}**: nothing to add.`,
  /** What to do, and where it balances then. */
  change: (a: Now & {doing: string; then: string; target: string; middle: boolean}) =>
    `${balances(a)}; ${a.doing}, and it balances at **${a.then}**, ${a.middle ? 'in the middle of' : 'inside'} ${a.target}.`,
  /** Whole pieces come out even at a place of their own; `like` is what would do the same where weights go on this plane. */
  put: (a: Place & {what: string; like: (Place & {mass: string; about: boolean}) | undefined}) =>
    `put **${a.what}** ${where(a)}${a.like === undefined ? '' : ` (it does ${a.like.about ? 'about ' : ''}what ${a.like.mass} would do ${where(a.like)})`}`,
  noWay: (a: Now & {target: string; heavy: End}) => `${balances(a)}, ${a.heavy}-heavy: it should balance at **${a.target}**.`,
  off: {tail: (d: string) => `That is ${d} too far back: the tail is too heavy.`, nose: (d: string) => `That is ${d} too far forward: the nose is too heavy.`},
  margin: (margin: string) => `Its static margin is ${margin} of the mean chord.`,
  loading: (a: {mass: string; wing: string; cube: string; with: boolean}) =>
    `${a.with ? 'With that it weighs' : 'It weighs'} ${a.mass}; wing loading ${a.wing}, wing cube loading ${a.cube} (wing as it flies).`,
  moved: {
    'of-no-use': {nose: 'The place given for the weight lies behind the target, so it is put near the nose.', tail: 'Weight is needed behind the target, so it is put near the tail.'},
    'off-body': {nose: 'The place given for the weight lies ahead of the body, so it is put at its tip.', tail: 'The place given for the weight lies behind the body, so it is put at its end.'},
  },
  otherWays: 'Other ways',
  least: (mass: string, edge: string, place: Place) => `${mass} ${where(place)} just reaches the edge of the target, ${edge}.`,
  ball: (mass: string, across: string, place: Place) => `Clay can go just where you like: ${mass}, a ball ${across} across, ${where(place)} reaches the middle.`,
  onlyThere: 'Whole pieces come out even only at the place given; anywhere else, take another number of them or clay.',
  perMass: (a: Place & {step: string; shift: string; forward: boolean}) => `Each ${a.step} ${where(a)} moves the balance ${a.shift} ${a.forward ? 'forward' : 'back'} to begin with.`,
  slide: (a: {by: string; back: boolean; to: string; then: string}) =>
    `Or leave the weights as they are and slide the wing ${a.by} ${a.back ? 'back' : 'forward'}, to ${a.to} from the nose: it then balances at ${a.then}, the middle of the target as it is then.`,
  noSlide: 'Sliding the wing alone does not do it: it would leave the body or meet the tail.',
  takeOff: {
    weight: (mass: string, at: string) => `Or take ${mass} off the weight fitted ${at} from the nose.`,
    tailplane: (mass: string, of: string) => `Or lighten the tail by ${mass} of its ${of}: peel the skin off one face.`,
  },
  stack: (height: string) => `In one stack they stand ${height} high; share them out on both sides of the body.`,
  fit: 'Fit this weight', takeNow: 'Take that off', changeNow: 'Change the weights so', slideNow: 'Slide the wing there', clear: 'Take all weights off',
  atHand: 'Weights at hand', howMany: 'How many', asNeeded: 'as many as it takes',
  anyClay: 'modelling clay', anyMass: 'anything that can be weighed',
  groups: {weighs: 'What it weighs', size: 'How it is laid out', steady: 'How steady it should be'},
  caution: 'Tape or glue every weight on so that it cannot fly off; coins and small parts are nothing for small children. First throws go over grass, away from people; local rules and supervision come first.',
  picture: (a: {now: string; target: string}) => `Side view of the plane, nose to the left. It balances ${a.now} behind the wing’s front edge; it should at ${a.target}.`,
  pictureChange: (a: {doing: string; then: string}) => `To do: ${a.doing}. Then it balances at ${a.then}.`,
  now: (at: string) => `now ${at}`,
  then: (at: string) => `then ${at}`,
  here: (target: string) => `balance here: ${target}`,
  hereShort: 'balance here',
  neutral: 'neutral point',
  doubt: (apart: string) => `For this plane the flight model and the handbook differ by ${apart} of the mean chord, more than usual: begin with the balance well forward.`,
});
