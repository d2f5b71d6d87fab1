import {topic} from '../topic.js';

interface Hand {
  readonly speed: string;
  /** Which way, in words of its own. */
  readonly aim: string;
}

export const flightPathWords = topic('flight-path', {
  heading: 'The throw: what the hand must do, and what the plane does then',
  waiting: (height: string) => `A throw from ${height} is worked out as soon as the flight model has arrived.`,
  right: (a: Hand & {ball: string; distance: string; time: string}) =>
    `Throw it at **about ${a.speed}**, ${a.aim}: as fast as a ball that, thrown level, lands **${a.ball}** away. It glides about **${a.distance}** in **${a.time}**.`,
  own: (a: Hand & {distance: string; time: string; top: string | undefined; should: string}) =>
    `Thrown at **${a.speed}**, ${a.aim}, it flies about **${a.distance}** in **${a.time}**${a.top === undefined ? '' : `, **${a.top}** high at most`}. Throw it at about ${a.should} and it glides.`,
  tape: (a: {ball: string; height: string}) =>
    `Stick tape on the floor ${a.ball} in front of you and throw a ball level from ${a.height} until it lands there every time: that is the speed for the plane.`,
  speedRange: (least: string, most: string) => `With what is not known for certain about this plane, the right speed lies between ${least} and ${most}.`,
  glide: (a: {ratio: string; sink: string}) => `It goes about ${a.ratio} times as far as it comes down, and sinks about ${a.sink}.`,
  steep: (sink: string) => `It goes hardly further than it comes down, and sinks about ${sink}.`,
  asItIsThrown: (a: {speed: string; aim: string; distance: string; time: string}) =>
    `The picture shows what it does as it is: thrown at ${a.speed}, ${a.aim}, it comes about ${a.distance} far in ${a.time}.`,
  /** Where its glide asks for another speed. */
  calls: {
    slower: (by: string) => `That is faster than it has to fly, more a dart than a glider: raise the tail’s rear edge about ${by} first, and it flies slower and flatter.`,
    faster: (by: string) => `That is close to its stall: lower the tail’s rear edge about ${by} first, and a slow throw or a bump does not make it drop.`,
  },
  wind: {
    behind: (speed: string) => `The wind comes **from behind**, at ${speed}: turn round and throw **into the wind**, or better wait until it is calm.`,
    ahead: (speed: string) => `A wind of ${speed} carries it about: better **wait until it is calm**.`,
  },
  dives: (edge: string) => `It does not glide yet, it dives: raise the rear edge of the tailplane by **${edge}** first.`,
  stalls: (edge: string) => `It does not glide yet, it stalls: lower the rear edge of the tailplane by **${edge}** first.`,
  thrownAllTheSame: 'The picture shows what it does when it is thrown as it is.',
  names: {
    'own': 'your throw', 'right': 'right', 'slow': 'too slow', 'fast': 'too fast', 'up': 'too steep', 'nose-heavy': 'nose-heavy', 'tail-heavy': 'tail-heavy', 'crooked': 'crooked',
  },
  asItIs: 'as it is',
  /** Where it does not balance as it is. */
  moved: {'nose-heavy': 'heavier nose', 'tail-heavy': 'lighter nose'},
  more: (mass: string) => `${mass} more at the nose`,
  less: (mass: string) => `${mass} less at the nose`,
  why: {
    'slow': 'Too slow, and the wing cannot carry the plane yet: it drops until it is fast enough.',
    'fast': 'Too fast, and the wing lifts more than the plane weighs: it zooms up until it has no speed left, then it dives for new speed.',
    'up': 'Too steep, and the climb eats the speed: it slows down on top and drops its nose.',
    'nose-heavy': 'Nose-heavy, and the tail can hold the nose up only at a higher speed: it dives for it.',
    'tail-heavy': 'Tail-heavy, and the tail holds the nose too high: it slows down until the wing lets go, then the nose drops.',
  },
  compare: 'Compare',
  comparisons: {throws: 'throws: slow, right, fast, steep', balances: 'balances: nose-heavy, right, tail-heavy', one: 'nothing, this throw alone'},
  table: {caption: 'How they fly', name: 'Throw', distance: 'Distance', time: 'Time', top: 'Highest', speed: 'Thrown at'},
  stillFlying: (distance: string) => `over ${distance}`,
  leftEmpty: (a: Hand) => `Speed and angle left empty are those of the glide: ${a.speed}, ${a.aim}.`,
  play: 'Play', pause: 'Pause', moment: 'Moment of the flight',
  seconds: (n: string) => `${n}\u00a0s`,
  now: (a: {name: string; time: string; height: string; distance: string; speed: string; nose: string; up: boolean}) =>
    `${a.name}, ${a.time}: ${a.height} up, ${a.distance} away, ${a.speed}, nose ${a.nose} ${a.up ? 'up' : 'down'}`,
  landed: (a: {name: string; time: string; distance: string}) => `${a.name}: landed after ${a.time}, ${a.distance} away`,
  ball: (distance: string) => `ball ${distance}`,
  landing: (name: string, distance: string) => `${name} ${distance}`,
  picture: (flights: string) => `Side view of the throws, to scale, the planes drawn larger than they are: ${flights}.`,
  pictured: (a: {name: string; distance: string; top: string}) => `${a.name}, ${a.distance} far and ${a.top} high at most`,
  turns: (a: {way: 'left' | 'right'; across: string; tighter: boolean; aside: string | undefined}) =>
    `Crooked like that it turns **${a.way}**, at the end on a circle about **${a.across}** across${a.tighter ? ' that is still getting tighter' : ''}${a.aside === undefined ? '' : `, and lands **${a.aside}** to the ${a.way}`}.`,
  hardlyTurns: (a: {way: 'left' | 'right'; aside: string}) => `Crooked like that it turns ${a.way} so little that it is **${a.aside}** aside where it lands.`,
  straightOn: 'Crooked like that it flies straight on: nobody sees a turn.',
  rollsOver: (way: 'left' | 'right') => `Crooked like that it rolls over to the **${way}**: straighten it before you throw it.`,
  steepTurn: (way: 'left' | 'right') => `Crooked like that it turns ${way}, and noses up or down more steeply than a turn can be followed here.`,
  crookedNoGlide: 'With that weight at the tip it does not glide any more.',
  crooked: {
    legend: 'What is crooked', note: 'To the right, seen from behind; a minus sign for the left. The throw is followed with it, and a view from above shows the turn.',
    fin: 'Fin: rear edge stands to the right by', tip: 'Weight at the right tip', twist: 'Left half of the wing set higher in front by',
  },
  plan: {
    above: 'Seen from above', behind: 'Seen from behind', aside: (distance: string, way: 'left' | 'right') => `${distance} to the ${way}`, ahead: 'straight ahead',
    bank: (a: {time: string; bank: string}) => `${a.time}: ${a.bank}`,
    picture: (aside: string) => `Below, the turn seen from above to the same scale: it ends ${aside}; and the bank seen from behind.`,
  },
  nowTurning: (a: {bank: string; aside: string}) => `banked ${a.bank}, ${a.aside}`,
  caution: 'Throw away from faces, eyes and roads, with nobody in front of you; keep to the rules for flying where you are and to whoever supervises. Tape the nose weight on so that it cannot fly off.',
});
