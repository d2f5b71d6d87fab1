import {usuallyApart} from '../../calc/aero/handbook/plane-neutral-point.js';
import type {BalancePlan} from '../../calc/balance/balance-plan.js';
import {pieceOf} from '../../calc/balance/pieces.js';
import {modelBehindHandbook, type Balanced} from '../../calc/balance/plane-balance.js';
import type {Remedy} from '../../calc/balance/remedy.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {balanceWords} from '../../messages/en/balance.js';
import {commonWords} from '../../messages/en/common.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';

/** One gram, or where ounces are read a tenth of one. */
const step = (host: GliderElement): number => host.system === 'inch' ? 0.1 * 0.028349523125 : 1e-3;

/** A place that is only good to a range: to whole millimetres or eighths of an inch. */
export const near = (host: GliderElement, value: number, bare = false): string =>
  host.write(value, 'length', host.system === 'inch' ? {fraction: 8, bare} : {digits: 0, bare});

/** The target, behind the wing's front edge. */
export const targetWords = (host: GliderElement, {target, wingAt}: BalancePlan['plane']): string =>
  host.say(balanceWords).range(near(host, target.from - wingAt, true), near(host, target.to - wingAt));

/** Where the plane balances, said as surely as it is known. */
export const nowWords = (host: GliderElement, {sure, behindWing}: BalancePlan['plane'], place = Math.abs(behindWing)): string =>
  sure === 'about' ? host.say(commonWords).about(near(host, place)) : host.write(place, 'length');

const length = (host: GliderElement, value: number): string => host.write(Math.abs(value), 'length');

/** A wing loading in the unit that planes are compared in. */
export const wingLoading = (host: GliderElement, value: number): string =>
  host.write(value, 'areal-mass', host.system === 'inch' ? {} : {unit: 'g/dm²'});

/** Where a weight goes, measured from the nearer end of the body. */
export function placeWords(end: Remedy['end'], place: number, bodyLength: number, host: GliderElement): {readonly end: Remedy['end']; readonly distance: string; readonly beyond: boolean} {
  const from = end === 'nose' ? place : bodyLength - place;
  return {end, distance: length(host, from), beyond: from < 0};
}

/** The answer: where it balances and what to do, and what follows. */
export function adviceWords(host: GliderElement, plan: BalancePlan, choice: string): Answer {
  const words = host.say(balanceWords);
  const {plane, remedy, advice, whole, design} = plan;
  const now = {at: nowWords(host, plane), ahead: plane.behindWing < 0};
  const target = targetWords(host, plane);
  if (plane.heavy === 'neither') {
    return {sentence: words.onTarget({...now, target}), aside: `${words.margin(host.write(plane.margin, 'ratio', {digits: 0}))} ${loadings(host, plan, plane)}${doubt(host, plane)}`};
  }
  const off = words.off[plane.heavy](near(host, Math.abs(plane.at - (plane.heavy === 'tail' ? plane.target.to : plane.target.from))));
  const needed = remedy.ok ? remedy.value : undefined;
  if (!needed || !advice) return {sentence: words.noWay({...now, target, heavy: plane.heavy}), aside: `${off} ${loadings(host, plan, plane)}`};
  return {
    sentence: words.put({
      ...now, ...placeWords(needed.end, advice.place, design.body.length, host), what: weightWords(host, plan, choice), target,
      then: near(host, advice.after.behindWing), middle: whole?.ok ? whole.value.exact : true,
    }),
    aside: [off, ...needed.placeMoved ? [words.moved[needed.end]] : [], loadings(host, plan, advice.after), words.margin(host.write(advice.after.margin, 'ratio', {digits: 0}))].join(' ') + doubt(host, plane),
  };
}

/** Said where the flight model and the handbook are further apart than they were found to be for likely planes. */
function doubt(host: GliderElement, plane: BalancePlan['plane']): string {
  const apart = Math.abs(modelBehindHandbook(plane));
  return apart > usuallyApart ? ` ${host.say(balanceWords).doubt(host.write(apart, 'ratio', {digits: 0}))}` : '';
}

/** The weight to fit: whole pieces, clay, or its mass alone. */
export function weightWords(host: GliderElement, {advice, whole, remedy}: BalancePlan, choice: string): string {
  const words = host.say(balanceWords);
  const mass = host.write(advice?.mass ?? 0, 'mass');
  if (whole?.ok) return words.pieces(String(whole.value.count), words.piece(whole.value.piece.id, whole.value.count), mass);
  const needed = remedy.ok ? remedy.value : undefined;
  return choice === 'clay' && needed ? words.clay(mass, length(host, needed.clayBall)) : words.grams(mass);
}

function loadings(host: GliderElement, {plane}: BalancePlan, of: Balanced): string {
  const mass = host.write(of.mass, 'mass');
  return host.say(balanceWords).loading({
    mass: plane.sure === 'about' ? host.say(commonWords).about(mass) : mass, wing: wingLoading(host, of.wingLoading),
    cube: host.write(of.cubeLoading, 'cube-loading'), with: of !== plane,
  });
}

/** The other ways to the same balance, a sentence each. */
export function otherWays(host: GliderElement, {plane, remedy, slide, off, whole, design}: BalancePlan, choice: string): readonly string[] {
  const words = host.say(balanceWords);
  const needed = remedy.ok ? remedy.value : undefined;
  const mass = (value: number): string => host.write(value, 'mass');
  const at = needed && placeWords(needed.end, needed.place, design.body.length, host);
  const behind = (at: number): string => near(host, at - plane.wingAt);
  return [
    ...whole?.ok && needed && Math.abs(whole.value.place - needed.place) > 5e-3 ? [words.onlyThere] : [],
    ...needed && at ? [
      words.least(mass(needed.least.mass), behind(needed.end === 'nose' ? plane.target.to : plane.target.from), at),
      ...pieceOf(choice) || choice === 'grams' ? [words.ball(mass(needed.middle.mass), length(host, needed.clayBall), at)] : [],
      words.perMass({...at, step: host.write(step(host), 'mass', {unit: usualUnit('mass', host.system)}), shift: length(host, needed.perMass * step(host)), forward: needed.perMass < 0}),
    ] : [],
    ...whole?.ok && whole.value.count > 1 ? [words.stack(length(host, whole.value.stack))] : [],
    ...slide?.ok ? [words.slide({by: length(host, slide.value.by), back: slide.value.by > 0, to: host.write(slide.value.wingAt, 'length'), then: near(host, slide.value.after.behindWing)})]
      : slide ? [words.noSlide] : [],
    ...off.map(({from, mass: taken, of, place}) => from === 'weight' ? words.takeOff.weight(mass(taken), length(host, place)) : words.takeOff.tailplane(mass(taken), mass(of))),
  ];
}
