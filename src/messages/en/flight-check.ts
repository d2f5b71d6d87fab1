import type {MeasureId} from '../../calc/flight/usual-ranges.js';
import {topic} from '../topic.js';

interface MeasureWords {
  readonly name: string;
  /** What the number means, whatever it is. */
  readonly means: string;
  /** What follows and what to change where it is less or more than usual. */
  readonly below: string;
  readonly above: string;
}

const measures: Readonly<Record<MeasureId, MeasureWords>> = {
  mass: {
    name: 'Weight', means: 'Everything that is thrown, weights included.',
    below: 'So light that each breeze takes it along: throw it indoors or in still air.', above: 'It will fly faster and land harder: peel a skin off the wing, or take lighter board.',
  },
  wingLoading: {
    name: 'Wing loading', means: 'What each piece of wing has to carry: four times as much makes it fly twice as fast.',
    below: 'It flies slowly, and best where no wind blows.', above: 'Make the wing larger or the plane lighter.',
  },
  cubeLoading: {
    name: 'Wing cube loading', means: 'Weight against wing as it feels in the hand, so that small planes and large ones can be compared.',
    below: 'It floats like a feather: keep out of the wind.', above: 'It is a dart for its size: make the wing larger or the plane lighter.',
  },
  balance: {
    name: 'Balance', means: 'Where the plane hangs level on two fingertips, behind the wing’s front edge.',
    below: 'The nose is too heavy: take weight off it, or slide the wing forward.', above: 'The tail is too heavy: add weight to the nose, or slide the wing back.',
  },
  staticMargin: {
    name: 'Static margin', means: 'How far the balance lies ahead of the neutral point, in mean chords: what makes the plane steady itself.',
    below: 'It will be twitchy or not steady at all: bring the balance forward.', above: 'It is steady but needs much tail to hold its nose up: bring the balance back.',
  },
  tailVolume: {
    name: 'Tail volume', means: 'How much tailplane there is and how far back it stands.',
    below: 'The nose will wander up and down: make the tailplane larger or move it back.', above: 'More than aeroplanes with a pilot have: nobody steers this one, so it does no harm, but it costs weight at the tail.',
  },
  finVolume: {
    name: 'Fin volume', means: 'The same for the fins, which keep the nose into the wind.',
    below: 'It may wag or fly sideways: make the fins higher.', above: 'Too much of it pulls a bank into a tightening turn: cut the fins lower, unless the wing has plenty of dihedral.',
  },
  roll: {
    name: 'Roll steadiness', means: 'How well dihedral rights a wing that has dropped; at about 5 a turn neither opens nor tightens.',
    below: 'A turn will tighten into a spiral: prop the wing tips higher, or cut the fins lower.', above: 'Wings level themselves strongly; with little fin the tail may wag.',
  },
  speed: {
    name: 'Flying speed', means: 'The speed that it settles to by itself, and so the speed to throw at.',
    below: 'Slower than a gentle throw: wait for still air.', above: 'Too fast to throw gently: raise the tail’s rear edge a little, or make the plane lighter.',
  },
  stallMargin: {
    name: 'Speed over the stall', means: 'How much faster it flies than the slowest that its wing can carry it.',
    below: 'Little in reserve: a slow throw or a bump makes it stop and drop, so lower the tail’s rear edge a little.', above: 'It has speed to spare: raise the tail’s rear edge a little for a flatter glide.',
  },
  glideRatio: {
    name: 'Glide ratio', means: 'How many times as far it glides as it drops, in still air.',
    below: 'Steep: press the edges thin, smooth what sticks out, and once it glides steadily set the tail for a slower glide.', above: 'More than such planes manage: measure it before you promise it.',
  },
  sink: {
    name: 'Sink', means: 'How fast it comes down: the slower, the longer a throw lasts.',
    below: 'It comes down like a leaf: the slightest lift in the air keeps it up.', above: 'Make the plane lighter, or once it glides steadily set the tail for a slower glide.',
  },
  reynolds: {
    name: 'Reynolds number', means: 'Speed times chord, measured in the stickiness of air: thin boards do as well as thick wings up to about 70 000.',
    below: 'The air feels sticky at this size: a broader wing helps more than a longer one.', above: 'Here a thick, smooth wing would begin to beat a board.',
  },
};

/** The answer, the measures, the plot and the wing's strength. */
export const flightCheckWords = topic('flight-check', {
  measures,
  groups: {weighs: 'What it weighs', steady: 'How steady it is', glides: 'How it glides'},
  /** Where the speed is above its range, and the stall too near for the tail to mend it. */
  onlyLighter: 'Too fast to throw gently, and slower it would be too close to its stall: make the plane lighter or the wing larger.',
  standing: {below: 'Less than usual.', within: 'Usual.', above: 'More than usual.'},
  balanceStanding: {below: 'Further forward than wanted.', within: 'As wanted.', above: 'Further back than wanted.'},
  wantedStanding: {below: 'Less than wanted.', within: 'As wanted.', above: 'More than wanted.'},
  usual: {
    drela: (range: string) => `usually ${range}`, practice: (range: string) => `usually ${range}, common practice`, wanted: (range: string) => `wanted ${range}`,
  },
  range: (from: string, to: string) => `${from} to ${to}`,
  flies: (a: {aim: string; speed: string; ratio: string}) => `It will fly: throw it at **about ${a.speed}**, ${a.aim}, and it glides **${a.ratio} times as far as it drops**.`,
  /** Where it asks for another speed. */
  calls: {
    slower: (a: {speed: string; by: string}) =>
      `It will fly, but at **about ${a.speed}**, faster than it has to: raise the tail’s rear edge **about ${a.by}** for an easier throw and a flatter glide.`,
    faster: (a: {speed: string; by: string}) =>
      `It will fly, but at **about ${a.speed}**, close to its stall: lower the tail’s rear edge **about ${a.by}**, so that a slow throw or a bump does not make it drop.`,
  },
  /** Said `now` after what it would do with another tail. */
  sinks: (a: {now: boolean; sink: string; margin: string}) => `${a.now ? 'As it is it sinks' : 'It sinks'} ${a.sink}, with a static margin of about ${a.margin} of the mean chord.`,
  better: (a: {up: boolean; by: string; speed: string; ratio: string}) =>
    `With the tail’s rear edge ${a.by} ${a.up ? 'higher' : 'lower'} it would fly its flattest, about ${a.ratio} times as far as it drops, at about ${a.speed}.`,
  /** The same where its very flattest lies too near the stall to be advised. */
  flatter: (a: {up: boolean; by: string; speed: string; ratio: string}) =>
    `With the tail’s rear edge ${a.by} ${a.up ? 'higher' : 'lower'} it would glide flatter, about ${a.ratio} times as far as it drops, at about ${a.speed}, and still keep well clear of the stall.`,
  /** Of names as they stand over the rulers. */
  out: (names: readonly string[]) => `Out of the usual: ${names.map((name) => name.charAt(0).toLowerCase() + name.slice(1)).join(', ')}.`,
  allUsual: 'All its numbers are usual ones.',
  asItIs: (a: {speed: string; ratio: string}) => `As it is it would settle at about ${a.speed} and glide about ${a.ratio} times as far as it drops.`,
  unsteady: (a: {behind: string; ahead: boolean}) => `As it is it will not steady itself: it balances ${a.behind} ${a.ahead ? 'ahead of' : 'behind'} its neutral point.`,
  divesNow: 'As it is it would dive.', stallsNow: 'As it is it would rear up and stall.',
  dives: (edge: string) => `It is steady, but as it is built it would **dive**: raise the tail’s rear edge **about ${edge}**.`,
  stalls: (edge: string) => `It is steady, but as it is built it would **rear up and stall**: lower the tail’s rear edge **about ${edge}**.`,
  then: (a: {speed: string; ratio: string}) => `Then it glides about ${a.ratio} times as far as it drops, at about ${a.speed}.`,
  motion: {
    'rolls-out': 'Left alone in a bank, it levels its wings.', 'holds': 'Left alone in a bank, it goes on circling.', 'tightens': 'Left alone in a bank, it tightens its turn: prop the tips higher or cut the fins lower.',
  },
  wags: {not: '', briefly: 'Its tail wags once or twice after a bump.', on: 'Its tail goes on wagging: make the fins higher or the dihedral less.'},
  swing: (period: string) => `Thrown too fast or too slowly it swings up and down, once in about ${period} s.`,
  strength: {
    yes: (a: {place: string}) => `The wing will hold: even at twice the throwing speed, what bends it stays below what such foam takes; weakest is ${a.place}.`,
    perhaps: (a: {place: string}) => `The wing may fold at ${a.place} at twice the throwing speed, where the foam’s range is reached: tape over the cut skin, and throw gently.`,
    no: (a: {place: string}) => `The wing will fold at ${a.place} at twice the throwing speed: tape over the cut skin there, and throw no harder than it flies.`,
    peeled: {
      yes: (): string => 'With its upper skin peeled off it would hold too.', perhaps: (a: {place: string}) => `With its upper skin peeled off it might fold at ${a.place}.`,
      no: (a: {place: string}) => `With its upper skin peeled off it would fold at ${a.place}.`,
    },
    whole: {
      yes: (): string => 'With both skins on it would hold.', perhaps: (a: {place: string}) => `With both skins on it might still fold at ${a.place}.`,
      no: (a: {place: string}) => `With both skins on it would still fold at ${a.place}.`,
    },
    middle: 'the middle', joint: (at: string) => `the joint ${at} from the middle`,
  },
  caution: 'Throw over grass, never towards people or animals, and keep eyes clear of the nose. Local rules and supervision come first.',
  picture: (a: {stall: string; best: string}) => `Plot of sinking speed against flying speed. It stalls below about ${a.stall} and glides flattest at about ${a.best}.`,
  pictureHere: (a: {speed: string; sink: string}) => `As built it flies at about ${a.speed} and sinks ${a.sink}.`,
  plot: {
    speed: (unit: string) => `flying speed, ${unit}`, sink: (unit: string) => `sink, ${unit}`, stall: 'stalls below', best: 'flattest glide', ratio: (ratio: string) => `1 : ${ratio}`, throwAt: 'throw at',
  },
  caption: 'The line: how fast it sinks at each speed with the tail set for it. The band: how far the estimate may be out.',
  captionHere: 'The dot: this plane as it is built.',
});
