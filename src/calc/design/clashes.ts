import {clayBall} from '../balance/clay-ball.js';
import type {Problem} from '../problem.js';
import {memo} from '../memo.js';
import type {GliderDesign} from './design.js';

/**
 * Clashes between values that are each allowed alone: accepted, reported, and shown beside the field of their path.
 * Stages that need the clashing values refuse with the same problem.
 */
export const clashesOf = memo((design: GliderDesign): readonly Problem[] => [
  ...wingClashes(design.wing),
  ...bodyClashes(design),
  ...weightClashes(design),
  ...(design.balance.marginLow > design.balance.marginHigh
    ? [{code: 'margins-crossed', path: 'balance.marginHigh', also: ['balance.marginLow'], args: {low: design.balance.marginLow, high: design.balance.marginHigh}}] : []),
]);

/** Clashes inside the wing alone. */
export const wingClashes = memo((wing: GliderDesign['wing']): readonly Problem[] => {
  const problems: Problem[] = [];
  const half = wing.span / 2;
  const shortest = Math.min(wing.chord, wing.tipChord ?? wing.chord, ...wing.stations.map((s) => s.chord));

  let previous = 0;
  for (const {at} of wing.creases) {
    if (at >= shortest) problems.push({code: 'crease-outside-chord', path: 'wing.creases', also: ['wing.chord', 'wing.tipChord'], args: {at, chord: shortest}});
    else if (at <= previous) problems.push({code: 'list-not-ascending', path: 'wing.creases', args: {at}});
    previous = at;
  }
  previous = -1;
  for (const {at} of wing.joints) {
    if (at >= half) problems.push({code: 'joint-outside-wing', path: 'wing.joints', also: ['wing.span'], args: {at, half}});
    else if (at <= previous) problems.push({code: 'list-not-ascending', path: 'wing.joints', args: {at}});
    previous = at;
  }
  previous = 0;
  for (const {at} of wing.stations) {
    if (at >= half) problems.push({code: 'station-outside-wing', path: 'wing.stations', also: ['wing.span'], args: {at, half}});
    else if (at <= previous) problems.push({code: 'list-not-ascending', path: 'wing.stations', args: {at}});
    previous = at;
  }
  if (wing.dihedralBy !== 'angle' && wing.blocks.length < wing.joints.length) {
    problems.push({code: 'block-missing', path: 'wing.blocks', args: {joints: wing.joints.length, blocks: wing.blocks.length}});
  }
  return problems;
});

function bodyClashes({wing, body, arrangement}: GliderDesign): Problem[] {
  const problems: Problem[] = [];
  const wingEnd = arrangement.wingAt + wing.chord;
  if (wingEnd > body.length) {
    problems.push({code: 'wing-off-body', path: 'arrangement.wingAt', also: ['wing.chord', 'body.length'], args: {end: wingEnd, body: body.length}});
  }
  if (arrangement.tailAt < wingEnd) {
    problems.push({code: 'tail-in-wing', path: 'arrangement.tailAt', also: ['arrangement.wingAt', 'wing.chord'], args: {at: arrangement.tailAt, end: wingEnd}});
  } else if (arrangement.tailAt >= body.length) {
    problems.push({code: 'tail-off-body', path: 'arrangement.tailAt', also: ['body.length'], args: {at: arrangement.tailAt, body: body.length}});
  }
  if (body.taperFrom !== undefined && body.taperFrom >= body.length) {
    problems.push({code: 'taper-off-body', path: 'body.taperFrom', also: ['body.length'], args: {at: body.taperFrom, body: body.length}});
  }
  if (body.tailHeight !== undefined && body.tailHeight > body.height) {
    problems.push({code: 'tail-height-above-body', path: 'body.tailHeight', also: ['body.height'], args: {tail: body.tailHeight, body: body.height}});
  }
  return problems;
}

/**
 * Weights that would hang in the air, beyond an end of the plane, be it the body's or a board's that stands out there: further out than a ball of clay of that
 * mass reaches when it is stuck to the very end. Each end names the weight furthest out there.
 */
function weightClashes({ballast, body, wing, tail, arrangement: {wingAt, tailAt}}: GliderDesign): Problem[] {
  const wingTip = {back: wing.sweep, chord: wing.tipChord ?? wing.chord}, tailTip = {back: tail.sweep, chord: tail.tipChord ?? tail.chord};
  const boards = [
    ...[{back: 0, chord: wing.chord}, ...wing.stations, wingTip].map(({back, chord}) => ({from: wingAt + back, to: wingAt + back + chord})),
    ...[{back: 0, chord: tail.chord}, tailTip].map(({back, chord}) => ({from: tailAt + back, to: tailAt + back + chord})),
  ];
  const front = Math.min(0, ...boards.map(({from}) => from)), rear = Math.max(body.length, ...boards.map(({to}) => to));
  const furthest = (beyondEnd: (at: number) => number): Problem['args'] => {
    const [worst] = ballast.masses.filter(({mass, at}) => mass > 0 && beyondEnd(at) > clayBall(mass) / 2).sort((a, b) => beyondEnd(b.at) - beyondEnd(a.at));
    return worst && {mass: worst.mass, at: worst.at, beyond: beyondEnd(worst.at), reach: clayBall(worst.mass) / 2, body: body.length};
  };
  const ahead = furthest((at) => front - at), behind = furthest((at) => at - rear);
  return [
    ...ahead ? [{code: 'weight-ahead-of-nose', path: 'ballast.masses', args: ahead}] : [],
    ...behind ? [{code: 'weight-behind-tail', path: 'ballast.masses', also: ['body.length'], args: behind}] : [],
  ];
}
