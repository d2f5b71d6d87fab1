import {topic} from '../topic.js';

export type End = 'nose' | 'tail';

/** Where a weight lies or goes, as a hand finds it on the plane. */
export interface Place {
  readonly end: End;
  /** From the end of the body, always positive. */
  readonly distance: string;
  /** Whether that is beyond the end. */
  readonly beyond: boolean;
}

export const where = ({end, distance, beyond}: Place): string =>
  end === 'nose' ? (beyond ? `${distance} ahead of the nose` : `${distance} behind the nose`)
    : (beyond ? `${distance} behind the end of the body` : `${distance} ahead of the end of the body`);

/** What to do with a plane's weights so that it balances: the same words wherever it is asked. */
export const weightsWords = topic('weights', {
  take: {
    some: (a: Place & {mass: string; of: string; left: string}) => `take **${a.mass}** off the ${a.of} fitted ${where(a)}, or fasten one of **${a.left}** there instead`,
    all: (a: Place & {mass: string}) => `take off the **${a.mass}** fitted ${where(a)}`,
  },
  put: (a: Place & {mass: string}) => `put **${a.mass}** ${where(a)}`,
  putMore: (a: Place & {mass: string; together: string}) => `put **${a.mass} more** ${where(a)}, ${a.together} in all`,
  /** Of several things to do, one after the other. */
  then: (doing: readonly string[]) => doing.join(', then '),
  /** What comes before anything else, with what to do or without where no weight does it. */
  first: (a: {at: string; ahead: boolean; by: string; heavy: End; doing: string | undefined}) =>
    `**Balance it first:** it balances ${a.at} ${a.ahead ? 'ahead of' : 'behind'} the wing’s front edge, **${a.by} too far ${a.heavy === 'tail' ? 'back' : 'forward'}**${
      a.doing === undefined ? ', and no weight mends that alone: look at the weights fitted and at what was measured, or slide the wing' : `; ${a.doing}`}.`,
  thenFlies: (a: {speed: string; ratio: string}) => `Balanced like that it flies at about ${a.speed} and glides about ${a.ratio} times as far as it drops.`,
  /** Where it then asks for another speed. */
  thenCalls: {
    slower: (a: {speed: string; by: string}) => `Balanced like that it flies at about ${a.speed}, faster than it has to: after that, raise the tail’s rear edge about ${a.by}.`,
    faster: (a: {speed: string; by: string}) => `Balanced like that it flies at about ${a.speed}, close to its stall: after that, lower the tail’s rear edge about ${a.by}.`,
  },
  thenDives: (edge: string) => `Balanced like that it would dive: after that, raise the tail’s rear edge about ${edge}.`,
  thenStalls: (edge: string) => `Balanced like that it would stall: after that, lower the tail’s rear edge about ${edge}.`,
});
