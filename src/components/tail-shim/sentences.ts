import type {ShimStudy, Slips} from '../../calc/flight/slips.js';
import {tailShimWords} from '../../messages/en/tail-shim.js';
import type {Answer} from '../base/calculator.js';
import {explain} from '../base/explain.js';
import {balanceFirstWords} from '../base/weights.js';
import type {GliderTailShim} from './tail-shim.js';

type Glide = ShimStudy['trim'];

/** A height that is a round one. */
const round = (host: GliderTailShim, value: number): string => host.write(value, 'length', {fraction: 64});

/** What is under the board or is to come there, and what the plane does with it: each speed beside the angle that it belongs to. */
export function shimAnswer(host: GliderTailShim, study: ShimStudy, half: number): Answer {
  const words = host.say(tailShimWords);
  const {wing, tail, difference, measured, now, first, call} = study;
  const balance = first && balanceFirstWords(host, first);
  return {
    sentence: [
      ...balance ? [balance.sentence] : [],
      ...measured ? asMeasured(host, study) : asPlanned(host, study),
    ].join(' '),
    aside: [
      ...balance?.then ?? [],
      ...call && !first ? [words.calls[call.speed]({by: host.fine(call.rise), speed: speedOf(host, call.to)})] : [],
      words.difference({wing: host.write(wing, 'angle'), tail: host.write(tail, 'angle'), difference: host.write(difference, 'angle')}),
      ...perStep(host, study), words.rule,
      measured ? words.again : words.crushed(round(host, half), host.write(half / now.chord, 'angle')),
    ].join(' '),
  };
}

function asPlanned(host: GliderTailShim, {surface, planned, slips, trim, first}: ShimStudy): readonly string[] {
  const words = host.say(tailShimWords);
  if (!slips) return [words.flat(surface), flies(host, trim, 'then', first)];
  const near = nearest(host, slips, planned.angle);
  return [words.set({surface, edge: slips.edge, ...laid(host, slips), ...near}), flies(host, near.planned === undefined ? trim : slips.trim, 'then', first)];
}

function asMeasured(host: GliderTailShim, {surface, planned, now, slips, trim, first, better}: ShimStudy): readonly string[] {
  const words = host.say(tailShimWords);
  return [
    words.measured({surface, angle: now.angle === 0 ? undefined : host.angleWords(now.angle)}), flies(host, trim, 'now', first),
    ...first ? [] : [slips && better ? words.better[better.speed]({does: does(host, better.planned), glides: better.planned.ok}) : slips ? words.towards[slips.how]({edge: slips.edge, ...laid(host, slips), ...nearest(host, slips, planned.angle), does: does(host, slips.trim)}) : words.asPlanned],
  ];
}

const laid = (host: GliderTailShim, {stack}: Slips): {readonly stack: string; readonly height: string} => ({stack: host.stackWords(stack), height: host.fine(stack.height)});

/** The angle that whole pieces give, and the planned one where it is written otherwise. */
function nearest(host: GliderTailShim, {angle}: Slips, planned: number): {readonly angle: string; readonly planned: string | undefined} {
  const given = host.angleWords(angle), wanted = host.angleWords(planned);
  return {angle: given, planned: given === wanted ? undefined : wanted};
}

const speedOf = (host: GliderTailShim, value: number): string => host.write(value, 'speed', {digits: 1});

/** @param first what comes before any slip: then no slip is the cure */
function flies(host: GliderTailShim, trim: Glide, when: 'then' | 'now', first: ShimStudy['first']): string {
  const words = host.say(tailShimWords);
  if (trim.ok) {
    const {glide, speed: {least, most}} = trim.value;
    return words.flies[when]({speed: speedOf(host, glide.speed), least: speedOf(host, least), most: speedOf(host, most), ratio: host.write(glide.ratio.usual, 'count', {digits: 0})});
  }
  const [problem] = trim.problems;
  const edge = first === undefined ? host.fine(Math.abs(Number(problem?.args?.['edge'] ?? NaN))) : undefined;
  return {'trim-dives': words.dives({when, edge}), 'trim-stalls': words.stalls({when, edge}), 'flight-unstable': words.unstable}[problem?.code ?? '']
    ?? [words.silent, ...problem ? [explain(host, problem)] : []].join(' ');
}

/** The same in two or three words. */
function does(host: GliderTailShim, trim: Glide): string {
  const {does: words} = host.say(tailShimWords);
  if (trim.ok) return words.flies(speedOf(host, trim.value.glide.speed));
  return {'trim-dives': words.dives, 'trim-stalls': words.stalls}[trim.problems[0]?.code ?? ''] ?? words.unstable;
}

function perStep(host: GliderTailShim, {surface, trim, step, first}: ShimStudy): readonly string[] {
  return trim.ok && step && !first ? [host.say(tailShimWords).perStep({
    surface, edge: step.edge, step: round(host, step.height), rise: host.fine(step.rise), more: does(host, step.more), less: step.less && does(host, step.less),
  })] : [];
}
