import {topic} from '../topic.js';

type Surface = 'tail' | 'wing';
type Edge = 'front' | 'rear';

interface Towards {
  readonly edge: Edge;
  readonly stack: string;
  readonly height: string;
  readonly angle: string;
  readonly planned: string | undefined;
  readonly does: string;
}

const board = (surface: Surface): string => surface === 'tail' ? 'the tailplane' : 'the wing';

/** Where whole pieces do not come to the angle planned. */
const noNearer = (planned: string | undefined): string => planned === undefined ? '' : ` (planned: ${planned}; whole pieces come no nearer)`;
const then = (a: Towards): string => `its front edge then points **${a.angle}**${noNearer(a.planned)}, and the plane ${a.does}.`;

export const tailShimWords = topic('tail-shim', {
  heading: 'Slips under the tail: from a stack to an angle to a speed',
  waiting: (angle: string) => `What an angle of ${angle} does is worked out as soon as the flight model has arrived.`,
  series: (boards: number, cards: number, papers: number) => [
    ...boards ? [boards === 1 ? '1 layer of board' : `${String(boards)} layers of board`] : [],
    ...cards ? [cards === 1 ? '1 card' : `${String(cards)} cards`] : [],
    ...papers ? [papers === 1 ? '1 sheet of paper' : `${String(papers)} sheets of paper`] : [],
  ].join(', ').replace(/, ([^,]*)$/, ' and $1'),
  flat: (surface: Surface) => `Without slips ${board(surface)} lies flat on the body.`,
  set: (a: {surface: Surface; edge: Edge; stack: string; height: string; angle: string; planned: string | undefined}) =>
    `Put **${a.stack}** (${a.height}) under the **${a.edge} edge** of ${board(a.surface)}: its front edge then points **${a.angle}**${noNearer(a.planned)}.`,
  measured: (a: {surface: Surface; angle: string | undefined}) =>
    a.angle === undefined ? `As measured, ${board(a.surface)} lies **level** on the body.` : `As measured, the front edge of ${board(a.surface)} points **${a.angle}**.`,
  towards: {
    'in-all': (a: Towards) => `For the plan take out what lies under it and put **${a.stack}** (${a.height}) under its **${a.edge} edge**: ${then(a)}`,
    'more': (a: Towards) => `For the plan put **${a.stack}** (${a.height}) **more** under its **${a.edge} edge**: ${then(a)}`,
    'less': (a: Towards) => `For the plan take **${a.stack}** (${a.height}) **out** from under its **${a.edge} edge**: ${then(a)}`,
  },
  /** Where the slips were advised, and the plan has not followed. */
  better: {
    slower: (a: {does: string; glides: boolean}) => `As planned it ${a.does}${a.glides ? ', faster than it has to' : ''}: **leave the slips** and change the plan.`,
    faster: (a: {does: string; glides: boolean}) => `As planned it ${a.does}${a.glides ? ', close to its stall' : ''}: **leave the slips** and change the plan.`,
  },
  planSo: 'Make this the plan',
  asPlanned: 'That is as planned.',
  up: (angle: string) => `${angle} up`, down: (angle: string) => `${angle} down`,
  flies: {
    then: (a: {speed: string; least: string; most: string; ratio: string}) =>
      `The plane then flies at **about ${a.speed}** (${a.least} to ${a.most}) and goes about ${a.ratio} times as far as it comes down.`,
    now: (a: {speed: string; least: string; most: string; ratio: string}) =>
      `So the plane flies at **about ${a.speed}** (${a.least} to ${a.most}) and goes about ${a.ratio} times as far as it comes down.`,
  },
  calls: {
    slower: (a: {by: string; speed: string}) => `That is faster than it has to fly: with the tail’s rear edge about ${a.by} higher it flies at about ${a.speed}. Type that speed below, and the slips for it are worked out.`,
    faster: (a: {by: string; speed: string}) => `That is close to its stall: with the tail’s rear edge about ${a.by} lower it flies at about ${a.speed}. Type that speed below, and the slips for it are worked out.`,
  },
  does: {flies: (speed: string) => `flies at about ${speed}`, dives: 'only dives', stalls: 'only stalls', unstable: 'holds no speed'},
  unstable: 'As it is it holds no speed with any slip.',
  dives: (a: {when: 'then' | 'now'; edge: string | undefined}) =>
    `${a.when === 'then' ? 'The plane then' : 'So the plane'} only **dives**${a.edge === undefined ? '.' : `: for a flat glide with speed to spare raise the rear edge of the tailplane by ${a.edge} more.`}`,
  stalls: (a: {when: 'then' | 'now'; edge: string | undefined}) =>
    `${a.when === 'then' ? 'The plane then' : 'So the plane'} only **stalls**${a.edge === undefined ? '.' : `: for a flat glide with speed to spare lower the rear edge of the tailplane by ${a.edge}.`}`,
  silent: 'What the plane does then cannot be worked out yet.',
  difference: (a: {wing: string; tail: string; difference: string}) =>
    `The wing stands at ${a.wing} to the body and the tail at ${a.tail}: what counts is the difference, ${a.difference}. Turning both by the same angle changes next to nothing but how the body hangs.`,
  perStep: (a: {surface: Surface; edge: Edge; step: string; rise: string; more: string; less: string | undefined}) =>
    `Another ${a.step} of slips under the ${a.edge} edge of ${board(a.surface)} raises that edge by ${a.rise}, and the plane ${a.more}${a.less === undefined ? '' : `; with ${a.step} less it ${a.less}`}.`,
  rule: 'A slip under the rear edge lowers the front edge of the tail: the tail pushes down, the nose comes up, the plane flies slower.',
  crushed: (half: string, angle: string) => `Foam gives way, and ${half} is already ${angle}: measure the two edges on the finished plane and type their heights instead.`,
  again: 'Foam gives way: measure the two edges again after each change of slips.',
  surface: 'Slips under', surfaces: {tail: 'the tail', wing: 'the wing'},
  under: 'Raised edge', edges: {front: 'front edge', rear: 'rear edge'},
  planned: (what: string) => `${what}, as planned`,
  stackLegend: 'The stack', boards: 'Layers of board', cards: 'Cards', papers: 'Sheets of paper',
  width: 'Slip, front to rear', touches: 'Or touches, from the other edge', overhang: 'Overhang of the other edge',
  edgeLegend: 'As measured on the plane', frontHeight: 'Front edge above the body', rearHeight: 'Rear edge above the body',
  speedLegend: 'Or from a speed', wanted: 'Speed wanted', setFor: 'Set the tail for it',
  picture: (a: {surface: Surface; angle: string; height: string}) => `Side view of ${board(a.surface)} on the body, to scale, front edge to the left: ${a.angle}, on slips ${a.height} high.`,
  pictureFlat: (surface: Surface) => `Side view of ${board(surface)} lying flat on the body, front edge to the left.`,
  front: 'front', body: 'body',
  caution: 'Change one thing at a time and throw again. Throw away from faces, eyes and roads; local flying rules and supervision come first. Cut slips away from your fingers.',
});
