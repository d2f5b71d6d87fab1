import type {TruthId} from '../../calc/as-built/tolerances.js';
import {topic} from '../topic.js';

interface TruthWords {
  /** What to check before the first throw; `target` is what the plan has. */
  readonly check: (target: string) => string;
  /** A millimetre or a gram off, and which way. */
  readonly step: (step: string) => string;
}

const truths: Readonly<Record<TruthId, TruthWords>> = {
  'hollow': {check: (target) => `Hollow of the wing ${target} deep`, step: (step) => `${step} deeper`},
  'tail': {check: (target) => `Tail’s rear edge ${target} higher than its front edge`, step: (step) => `${step} higher`},
  'balance': {check: (target) => `Balances ${target} behind the wing’s front edge`, step: (step) => `${step} further back`},
  'nose': {check: (target) => `Weight at the nose as planned, ${target} in all`, step: (step) => `${step} more`},
  'tips': {check: (target) => `Both tips equally high, ${target}`, step: (step) => `${step} apart`},
  'skew': {check: (target) => `Both tips equally far from the tail, ${target}`, step: (step) => `${step} apart`},
  'bow': {check: () => 'Body straight along a thread', step: (step) => `${step} at the tail`},
  'tip-weight': {check: () => 'Neither tip heavier than the other', step: (step) => `${step} at one tip`},
  'fin': {check: () => 'Fins pointing straight ahead', step: (step) => `${step} at the rear edge`},
  'twist': {check: () => 'Both halves of the wing at the same angle', step: (step) => `one rear edge ${step} lower`},
};

/** The plane as somebody measured it, or as the plan has it. */
export type How = 'measured' | 'planned';

export const asBuiltWords = topic('as-built', {
  heading: 'As built: what you measure counts',
  waiting: 'What your measurements do is worked out as soon as the flight model has arrived.',
  nothing: 'Nothing has been measured yet, so the **plan counts**.',
  begin: (a: {what: string; step: string; by: string; slower: boolean}) => `Begin with **${a.what}**: ${a.step}, and it flies ${a.by} ${a.slower ? 'slower' : 'faster'}.`,
  beginNoGlide: (a: {what: string; step: string}) => `Begin with **${a.what}**: ${a.step}, and it no longer glides.`,
  firsts: {hollow: 'the hollow of the wing', tail: 'the edges of the tail', balance: 'the balance', nose: 'the weight'},
  flies: (speed: string) => `As measured it flies at **about ${speed}**`,
  asPlanned: ', as planned',
  offPlan: (a: {by: string; slower: boolean}) => `, **${a.by} ${a.slower ? 'slower' : 'faster'}** than planned`,
  straight: ', and straight on',
  turns: (a: {way: 'left' | 'right'; across: string}) => `, and turns **${a.way}**, on a circle about **${a.across}** across where it lands`,
  hardlyTurns: (way: 'left' | 'right') => `, and turns ${way} so little that nobody sees it`,
  rollsOver: (way: 'left' | 'right') => `, and rolls over to the **${way}**: straighten it before you throw it`,
  steepTurn: (way: 'left' | 'right') => `, and turns **${way}** more steeply than can be followed here: straighten it before you throw it`,
  dives: (a: {how: How; edge: string | undefined}) => `As ${a.how} it would only **dive**${a.edge === undefined ? '.' : `: raise the rear edge of the tailplane by **${a.edge}** before you throw it.`}`,
  stalls: (a: {how: How; edge: string | undefined}) => `As ${a.how} it would only **stall**${a.edge === undefined ? '.' : `: lower the rear edge of the tailplane by **${a.edge}** before you throw it.`}`,
  unstable: (how: How) => `As ${how} it would **not steady itself**.`,
  silent: 'What it does as measured cannot be worked out yet.',
  tooFarOff: (what: readonly string[]) => `Further out of true than it bears: ${what.join(', ')}.`,
  trueEnough: 'What was measured is true enough.',
  better: {
    slower: 'The edges of the tail are better so than planned, where it is faster than it has to be: leave them and change the plan, the tail’s angle.',
    faster: 'The edges of the tail are better so than planned, where it is close to its stall: leave them and change the plan, the tail’s angle.',
  },
  names: {
    'hollow': 'the hollow', 'tail': 'the edges of the tail', 'balance': 'the balance', 'nose': 'the nose weight', 'tips': 'the tips', 'skew': 'the wing, askew', 'bow': 'the body, bowed',
    'tip-weight': 'a heavy tip', 'fin': 'the fins', 'twist': 'the wing, twisted',
  },
  figure: {
    hollow: 'Wing from the side, a ruler under it', tips: 'Wing from the front, middle flat on the bench', tail: 'Tail on the body, from the left', plan: 'From above: tip to tail, and along a thread',
    planned: (value: string) => `plan ${value}`, left: (value: string) => `left ${value}`, right: (value: string) => `right ${value}`,
    bow: (a: {by: string; right: boolean}) => `tail ${a.by} to the ${a.right ? 'right' : 'left'}`,
  },
  picture: (a: {measured: number}) => `What to measure on the finished plane, in four views to scale: the hollow under a ruler, the tips over the bench, the edges of the tail, tip to tail and the body’s bow; ${
    a.measured === 0 ? 'nothing measured yet' : `${String(a.measured)} measured so far`}.`,
  groups: {wing: 'The wing', tail: 'Edges over the body', straight: 'Straight from above', weight: 'Weight and balance'},
  forget: 'Forget all measurements',
  truth: {
    heading: 'How true is true enough: the card before the first throw', caption: 'What matters most comes first. Tick what you have checked.', check: 'Check', off: 'A little off', within: 'Keep within',
    truths,
    speed: (a: {step: string; by: string; slower: boolean}) => `${a.step}: ${a.by} ${a.slower ? 'slower' : 'faster'}`,
    turn: (a: {step: string; across: string}) => `${a.step}: a circle about ${a.across} across`,
    noTurn: (step: string) => `${step}: hardly turns`,
    rollsOver: (step: string) => `${step}: rolls over`,
    steepTurn: (step: string) => `${step}: turns too steeply`,
    noGlide: (step: string) => `${step}: does not glide`,
    hardly: 'hardly matters',
    range: (from: string, to: string) => `${from} to ${to}`,
    measuredAt: (at: string) => `measured: ${at}`,
    measured: (a: {off: string}) => `measured: off by ${a.off}`,
    fits: 'true enough', fitsNot: 'too far off',
    criterion: (a: {speed: string; across: string}) => `Small enough here means: the speed within ${a.speed}, and no circle less than ${a.across} across where it lands; for the balance, the range in which the plane steadies itself well. Common practice, no source.`,
    better: 'better than planned',
    none: 'The card comes with a plane that glides: put right first what the answer says.',
  },
  form: {
    kept: 'What is kept: the same without the weights fitted', how: 'Balance found on', hows: {fingers: 'two fingers', scale: 'one scale and two supports'}, mass: 'The plane as it is thrown weighs',
    at: 'Fingers behind the wing’s front edge', front: 'Front support behind the wing’s front edge', rear: 'Rear support behind the wing’s front edge', under: 'The scale is under',
    supports: {front: 'the front support', rear: 'the rear support'}, reading: 'It reads',
    fitted: 'The weights listed are fitted', found: (a: {at: string | undefined; mass: string}) => a.at === undefined ? `It weighs **${a.mass}**.` : `It balances **${a.at}** behind the wing’s front edge and weighs ${a.mass}.`,
    bare: (a: {at: string | undefined; mass: string; fitted: string}) => `Without the ${a.fitted} of weights that were on it, it would weigh ${a.mass}${a.at === undefined ? '' : ` and balance ${a.at} behind the wing’s front edge`}.`,
    willKeep: (use: string) => `“${use}” keeps that.`, isKept: 'That is kept.',
    since: 'The weights listed have changed since: weigh the plane again to check it.',
    hint: 'Lay the plane on two strips on edge, one on the scale, level; take what the strip weighs off the reading. A place ahead of the wing’s front edge is less than nothing.',
  },
  caution: 'Check that the nose weight is held fast. Then throw away from faces, eyes and roads; local flying rules and supervision come first.',
});
