import {topic} from '../topic.js';

type Surface = 'tail' | 'wing';
type Edge = 'front' | 'rear';

const board = (surface: Surface): string => surface === 'tail' ? 'the tailplane' : 'the wing';

export const tailShimWords = topic('tail-shim', {
  heading: 'Slips under the tail: from a stack to an angle to a speed',
  waiting: (angle: string) => `What an angle of ${angle} does is worked out as soon as the flight model has arrived.`,
  series: (boards: number, cards: number, papers: number) => [
    ...boards ? [boards === 1 ? '1 layer of board' : `${String(boards)} layers of board`] : [],
    ...cards ? [cards === 1 ? '1 card' : `${String(cards)} cards`] : [],
    ...papers ? [papers === 1 ? '1 sheet of paper' : `${String(papers)} sheets of paper`] : [],
  ].join(', ').replace(/, ([^,]*)$/, ' and $1'),
  flat: (surface: Surface) => `Without slips ${board(surface)} lies flat on the body.`,
  set: (a: {surface: Surface; edge: Edge; stack: string; height: string; angle: string; built: string | undefined}) =>
    `Put **${a.stack}** (${a.height}) under the **${a.edge} edge** of ${board(a.surface)}: its front edge then points **${a.angle}**${a.built === undefined ? '' : ` (${a.built} with these whole sheets)`}.`,
  up: (angle: string) => `${angle} up`, down: (angle: string) => `${angle} down`,
  flies: (a: {speed: string; least: string; most: string; ratio: string}) =>
    `The plane then flies at **about ${a.speed}** (${a.least} to ${a.most}) and goes about ${a.ratio} times as far as it comes down.`,
  unstable: 'It holds no speed with any slip: its balance lies too far back, so put that right first.',
  dives: (edge: string) => `The plane then only **dives**: for a flat glide with speed to spare raise the rear edge of the tailplane by ${edge} more.`,
  stalls: (edge: string) => `The plane then only **stalls**: for a flat glide with speed to spare lower the rear edge of the tailplane by ${edge}.`,
  silent: 'What the plane does then cannot be worked out yet.',
  difference: (a: {wing: string; tail: string; difference: string}) =>
    `The wing stands at ${a.wing} to the body and the tail at ${a.tail}: what counts is the difference, ${a.difference}. Turning both by the same angle changes next to nothing but how the body hangs.`,
  perMillimetre: (a: {step: string; by: string; slower: boolean}) =>
    `Another ${a.step} under the rear edge of the tail makes it ${a.by} ${a.slower ? 'slower' : 'faster'}; taken out it does the reverse.`,
  rule: 'A slip under the rear edge lowers the front edge of the tail: the tail pushes down, the nose comes up, the plane flies slower.',
  crushed: (half: string, angle: string) => `Foam gives way, and ${half} is already ${angle}: measure the two edges on the finished plane and type their heights instead.`,
  surface: 'Slips under', surfaces: {tail: 'the tail', wing: 'the wing'},
  under: 'Raised edge', edges: {front: 'front edge', rear: 'rear edge'},
  stackLegend: 'The stack', boards: 'Layers of board', cards: 'Cards', papers: 'Sheets of paper',
  width: 'Slip, front to rear', touches: 'Or touches, from the other edge', overhang: 'Overhang of the other edge',
  edgeLegend: 'Or as measured on the plane', frontHeight: 'Front edge above the body', rearHeight: 'Rear edge above the body',
  speedLegend: 'Or from a speed', wanted: 'Speed wanted', setFor: 'Set the tail for it',
  picture: (a: {surface: Surface; angle: string; height: string}) => `Side view of ${board(a.surface)} on the body, to scale, front edge to the left: ${a.angle}, on slips ${a.height} high.`,
  pictureFlat: (surface: Surface) => `Side view of ${board(surface)} lying flat on the body, front edge to the left.`,
  front: 'front', body: 'body',
  caution: 'Change one thing at a time and throw again. Throw away from faces, eyes and roads; local flying rules and supervision come first. Cut slips away from your fingers.',
});
