import {usuallyApart} from '../../calc/aero/handbook/plane-neutral-point.js';
import type {BalancePlan} from '../../calc/balance/balance-plan.js';
import {pieceOf} from '../../calc/balance/pieces.js';
import {modelBehindHandbook, type Balanced} from '../../calc/balance/plane-balance.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {writeAtLeast} from '../../calc/units/write.js';
import {balanceWords} from '../../messages/en/balance.js';
import {commonWords} from '../../messages/en/common.js';
import {weightsWords, type Place} from '../../messages/en/weights.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {near} from '../base/near.js';
import {placeWords, takeWords} from '../base/weights.js';

/** One gram, or where ounces are read a tenth of one. */
const step = (host: GliderElement): number => host.system === 'inch' ? 0.1 * 0.028349523125 : 1e-3;

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

/** The answer: where it balances and what to do, and what follows. */
export function adviceWords(host: GliderElement, plan: BalancePlan, choice: string): Answer {
  const words = host.say(balanceWords);
  const {plane, remedy, advice, whole} = plan;
  const now = {at: nowWords(host, plane), ahead: plane.behindWing < 0};
  const target = targetWords(host, plane);
  if (plane.heavy === 'neither') {
    return {sentence: words.onTarget({...now, target}), aside: `${words.margin(host.write(plane.margin, 'ratio', {digits: 0}))} ${loadings(host, plan, plane)}${doubt(host, plane)}`};
  }
  const off = words.off[plane.heavy](near(host, Math.abs(plane.at - (plane.heavy === 'tail' ? plane.target.to : plane.target.from))));
  const after = thenOf(plan);
  if (!after) return {sentence: words.noWay({...now, target, heavy: plane.heavy}), aside: `${off} ${loadings(host, plan, plane)}`};
  const needed = remedy.ok ? remedy.value : undefined;
  return {
    sentence: words.change({
      ...now, doing: doing(host, plan, choice), target, then: near(host, after.behindWing), middle: whole?.ok && advice ? whole.value.exact : true,
    }),
    aside: [
      off, ...needed?.placeMoved ? [words.moved[needed.placeMoved][needed.end]] : [], loadings(host, plan, after), words.margin(host.write(after.margin, 'ratio', {digits: 0})),
    ].join(' ') + doubt(host, plane),
  };
}

/** The plane with what is advised; nothing where nothing is to be done, or nothing helps. */
export const thenOf = ({advice, lightened, remedy}: BalancePlan): Balanced | undefined =>
  advice?.after ?? (lightened.off.length > 0 && remedy.ok && !remedy.value ? lightened.plane : undefined);

/** What to do, in the weights at hand. */
export function doing(host: GliderElement, plan: BalancePlan, choice: string): string {
  const words = host.say(balanceWords);
  const {plane: {heavy}, lightened: {off}, advice, remedy, whole, weights, design} = plan;
  const needed = remedy.ok ? remedy.value : undefined;
  const on = weights.ok ? weights.value?.on : undefined;
  const place = (at: number): Place => placeWords(needed?.end ?? 'nose', at, design.body.length, host);
  // of pieces that do not come to the middle, it is said only where they lie clearly elsewhere
  const elsewhere = whole?.ok && on && Math.abs(whole.value.place - on.at) > (whole.value.exact ? 1e-3 : 5e-3);
  return host.say(weightsWords).then([
    ...heavy === 'neither' ? [] : takeWords(host, off, heavy, design),
    ...!advice || !needed ? [] : [words.put({
      ...place(advice.place), what: weightWords(host, plan, choice), like: elsewhere ? {...place(on.at), mass: host.write(on.mass, 'mass'), about: !whole.value.exact} : undefined,
    })],
  ]);
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
export function otherWays(host: GliderElement, {plane, lightened, remedy, weights, slide, off, whole, design}: BalancePlan, choice: string): readonly string[] {
  const words = host.say(balanceWords);
  const needed = remedy.ok ? remedy.value : undefined;
  const on = weights.ok ? weights.value?.on : undefined;
  const mass = (value: number): string => host.write(value, 'mass');
  const at = needed && placeWords(needed.end, needed.place, design.body.length, host);
  const behind = (at: number): string => near(host, at - plane.wingAt);
  return [
    ...whole?.ok && whole.value.exact && needed && Math.abs(whole.value.place - needed.place) > 5e-3 ? [words.onlyThere] : [],
    ...needed && at ? [
      words.least(writeAtLeast(needed.least.mass, 'mass', {system: host.system, decimal: host.decimal}), behind(needed.end === 'nose' ? plane.target.to : plane.target.from), at),
      ...pieceOf(choice) || choice === 'grams' ? [words.ball(mass(on?.mass ?? needed.middle.mass), length(host, needed.clayBall), at)] : [],
      words.perMass({...at, step: host.write(step(host), 'mass', {unit: usualUnit('mass', host.system)}), shift: length(host, needed.perMass * step(host)), forward: needed.perMass < 0}),
    ] : [],
    ...whole?.ok && whole.value.count > 1 ? [words.stack(length(host, whole.value.stack))] : [],
    ...slide?.ok ? [words.slide({by: length(host, slide.value.by), back: slide.value.by > 0, to: host.write(slide.value.wingAt, 'length'), then: near(host, slide.value.after.behindWing)})]
      : slide ? [words.noSlide] : [],
    ...off.filter(({from, place}) => from !== 'weight' || !lightened.off.some(({at}) => at === place)).map(({from, mass: taken, of, place}) => from === 'weight' ? words.takeOff.weight(mass(taken), length(host, place)) : words.takeOff.tailplane(mass(taken), mass(of))),
  ];
}
