import {html, mathml, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {neutralPointBand, tailEfficiency, usuallyApart} from '../../calc/aero/handbook/plane-neutral-point.js';
import type {BalancePlan} from '../../calc/balance/balance-plan.js';
import {massToAdd} from '../../calc/balance/adding.js';
import {modelBehindHandbook, type PlaneBalance} from '../../calc/balance/plane-balance.js';
import type {Addition} from '../../calc/balance/remedy.js';
import {unitFor, usualUnit} from '../../calc/units/kinds.js';
import {balanceWorkingWords} from '../../messages/en/balance-working.js';
import type {GliderElement} from '../base/element.js';
import {numbersTable} from '../base/table.js';
import {balanceRows} from './rows.js';
import {brackets, equation, fraction, number, operator, power, quantity, root, row, symbol} from '../base/equation.js';

const times = operator('·'), minus = operator('−'), plus = operator('+');
const half = {digits: 1} as const;
const cubeRoot = (inside: TemplateResult): TemplateResult => mathml`<mroot>${inside}<mn>3</mn></mroot>`;

/** How the balance, the neutral point, the target and the weight are worked out, with this plane's numbers. */
export function balanceWorking(host: GliderElement, plan: BalancePlan): TemplateResult {
  return html`${momentsTable(host, plan)}${neutralPointWorking(host, plan)}${targetWorking(host, plan)}${weightWorking(host, plan)}
    <p class="source">${host.say(balanceWorkingWords).source}</p>
    ${numbersTable(host, balanceRows(host, plan))}`;
}

const pure = (host: GliderElement, value: number, digits = 2): string => host.write(value, 'count', {digits});

function momentsTable(host: GliderElement, {design, plane}: BalancePlan): TemplateResult {
  const {moments, items, because, spoken} = host.say(balanceWorkingWords);
  const massUnit = usualUnit('mass', host.system), lengthUnit = usualUnit('length', host.system);
  const perUnit = (unitFor(massUnit, 'mass')?.si ?? 1) * (unitFor(lengthUnit, 'length')?.si ?? 1);
  const moment = (value: number): string => `${pure(host, value / perUnit, host.system === 'inch' ? 2 : 0)}\u00a0${massUnit}·${lengthUnit}`;
  const length = (value: number): string => host.write(value, 'length', half);
  const mass = (value: number): string => host.write(value, 'mass', host.system === 'inch' ? {digits: 2} : half);
  const x = symbol('x'), m = symbol('m');
  const whole = plane.masses.items.reduce((sum, item) => sum + item.mass * item.at, 0);
  return html`<table><caption class="source">${moments.caption}</caption>
    <thead><tr><th scope="col">${moments.item}</th><th scope="col" class="number">${moments.mass}</th><th scope="col" class="number">${moments.at}</th><th scope="col" class="number">${moments.moment}</th></tr></thead>
    <tbody>${plane.masses.items.map((item) => html`<tr><th scope="row">${items[item.id]} <span class="source">(${moments[item.sure]})</span></th>
      <td class="number">${mass(item.mass)}</td><td class="number">${length(item.at)}</td><td class="number">${moment(item.mass * item.at)}</td></tr>`)}
      <tr><th scope="row"><b>${moments.total}</b></th><td class="number"><b>${mass(plane.mass)}</b></td><td class="number"><b>${length(plane.at)}</b></td><td class="number"><b>${moment(whole)}</b></td></tr></tbody></table>
    ${equation(spoken.balance(length(plane.at)), symbol('x'), fraction(row(operator('∑'), m, x), row(operator('∑'), m)), fraction(quantity(moment(whole)), quantity(mass(plane.mass))), quantity(length(plane.at)))}
    <p class="source">${because.balance} ${design.measured.balance === undefined ? nothing : because.measured}</p>`;
}

function neutralPointWorking(host: GliderElement, {design, plane}: BalancePlan): TemplateResult {
  const {because, spoken} = host.say(balanceWorkingWords);
  const {handbook: neutral} = plane;
  const {wing, tail} = neutral;
  const n = (value: number, digits = 2): TemplateResult => number(pure(host, value, digits));
  const length = (value: number): TemplateResult => quantity(host.write(value, 'length'));
  const area = (value: number): TemplateResult => quantity(host.write(value, 'area', host.system === 'inch' ? {} : {digits: 2}));
  const pi2 = row(number('2'), symbol('π'));
  const slope = (below: string, aspect: number, result: number, of: string): TemplateResult => {
    const formula = (a: TemplateResult): TemplateResult =>
      fraction(row(pi2, a), row(number('2'), plus, root(row(number('4'), plus, fraction(power(a, '2'), row(power(symbol('cos'), '2'), symbol('Λ')))))));
    return equation(spoken.slope({of, slope: pure(host, result)}), symbol('a', below), formula(symbol('A')), formula(n(aspect)), n(result));
  };
  const de = fraction(row(symbol('d'), symbol('ε')), row(symbol('d'), symbol('α')));
  const {downwashFactors: factors} = neutral;
  const downwash = (...[aspect, taper, place, cosine]: readonly [TemplateResult, TemplateResult, TemplateResult, TemplateResult]): TemplateResult =>
    row(number('4.44'), power(brackets(row(aspect, taper, place, root(cosine))), '1.19'));
  const volume = (s: TemplateResult, l: TemplateResult, S: TemplateResult, c: TemplateResult): TemplateResult => fraction(row(s, times, l), row(S, times, c));
  const plated = design.tail.fins.count === 2;
  return html`
    ${slope('w', wing.aspectRatio, neutral.wingSlope, spoken.wing)}
    ${plated ? html`${equation(spoken.plates(pure(host, neutral.tailAspectRatio)), symbol('A', 't'),
      row(fraction(symbol('b'), symbol('c')), brackets(row(number('1'), plus, number('1.9'), fraction(symbol('h'), symbol('b'))))),
      row(n(tail.aspectRatio), brackets(row(number('1'), plus, number('1.9'), fraction(length(design.tail.fins.height), length(tail.span))))),
      n(neutral.tailAspectRatio))}<p class="source">${because.plates}</p>` : nothing}
    ${slope('t', neutral.tailAspectRatio, neutral.tailSlope, spoken.tail)}
    <p class="source">${because.slopes}</p>
    ${equation(spoken.downwashPlace(pure(host, factors.place)), symbol('K', 'H'), fraction(number('1'), cubeRoot(fraction(row(number('2'), symbol('l')), symbol('b')))),
      fraction(number('1'), cubeRoot(fraction(row(number('2'), times, length(neutral.arm)), length(wing.span)))), n(factors.place))}
    ${equation(spoken.downwash(pure(host, neutral.downwash)), de, downwash(symbol('K', 'A'), symbol('K', 'λ'), symbol('K', 'H'), row(symbol('cos'), symbol('Λ'))),
      downwash(row(n(factors.aspect, 3), times), row(n(factors.taper), times), row(n(factors.place), times), n(Math.cos(wing.quarterChordSweep), 3)), n(neutral.downwash))}
    <p class="source">${because.downwash}</p>
    ${equation(spoken.volume(pure(host, neutral.tailVolume)), symbol('V'), volume(symbol('S', 't'), symbol('l'), symbol('S', 'w'), symbol('c̄')),
      volume(area(tail.area), length(neutral.arm), area(wing.area), length(wing.meanAerodynamicChord)), n(neutral.tailVolume))}
    <p class="source">${because.volume}</p>
    ${equation(spoken.neutral(pure(host, neutral.share)), symbol('h', 'n'),
      row(fraction(number('1'), number('4')), plus, symbol('V'), symbol('η'), fraction(symbol('a', 't'), symbol('a')), brackets(row(number('1'), minus, de))),
      row(n(0.25), plus, n(neutral.tailVolume), times, n(tailEfficiency), times, fraction(n(neutral.tailSlope), n(neutral.slope)), times, brackets(row(number('1'), minus, n(neutral.downwash)))),
      n(neutral.share))}
    <p class="source">${because.neutral}</p>
    <p class="source">${because.model({
      model: host.write(plane.neutralPoint, 'length'), handbook: host.write(neutral.behindWing, 'length'), apart: host.write(Math.abs(modelBehindHandbook(plane)), 'ratio', {digits: 1}),
      usual: host.write(usuallyApart, 'ratio', {digits: 1}),
    })} ${because.band(host.write(neutralPointBand * wing.meanAerodynamicChord, 'length'))}</p>`;
}

function targetWorking(host: GliderElement, {plane}: BalancePlan): TemplateResult {
  const {because, spoken} = host.say(balanceWorkingWords);
  const {neutralPoint, handbook} = plane;
  const {meanAerodynamicChord: chord, meanAerodynamicChordBack: back} = handbook.wing;
  const length = (value: number): string => host.write(value, 'length', half);
  return html`${equation(spoken.margin(host.write(plane.margin, 'ratio')), symbol('σ'), fraction(row(symbol('x', 'n'), minus, symbol('x')), symbol('c̄')),
    fraction(row(quantity(length(neutralPoint)), minus, quantity(length(plane.behindWing))), quantity(length(chord))), quantity(host.write(plane.margin, 'ratio')))}
    <p class="source">${because.target} ${because.back(host.write(back, 'length'), host.write(chord, 'length'))}</p>`;
}

function weightWorking(host: GliderElement, {plane, lightened, remedy, whole}: BalancePlan): TemplateResult {
  const {because} = host.say(balanceWorkingWords);
  const needed = remedy.ok ? remedy.value : undefined, [taken, another] = lightened.off;
  if (needed) return html`${addition(host, lightened.plane, needed.middle)}<p class="source">${because.add}</p>${wholeWorking(host, lightened.plane, whole)}`;
  const off = taken && !another ? massToAdd(plane, plane.target.middle, taken.at) : undefined;
  return taken && off?.ok ? html`${addition(host, plane, {mass: off.value, place: taken.at})}<p class="source">${because.add} ${because.off}</p>` : html``;
}

const exactly = (host: GliderElement, value: number): TemplateResult => quantity(host.write(value, 'length', half));

function addition(host: GliderElement, plane: PlaneBalance, {mass, place}: Pick<Addition, 'mass' | 'place'>): TemplateResult {
  const {spoken} = host.say(balanceWorkingWords);
  const written = host.write(mass, 'mass'), {middle} = plane.target;
  const [m, M, x, X, w] = [symbol('m'), symbol('M'), symbol('x'), symbol('x', 'T'), symbol('w')];
  return equation(spoken.add({mass: written}), m, row(M, times, fraction(row(x, minus, X), row(X, minus, w))),
    row(quantity(host.write(plane.mass, 'mass')), times, fraction(row(exactly(host, plane.at), minus, exactly(host, middle)), row(exactly(host, middle), minus, exactly(host, place)))), quantity(written));
}

function wholeWorking(host: GliderElement, plane: PlaneBalance, whole: BalancePlan['whole']): TemplateResult | typeof nothing {
  if (!whole?.ok || !whole.value.exact) return nothing;
  const {because, spoken} = host.say(balanceWorkingWords);
  const {middle} = plane.target, {mass, place} = whole.value;
  const [m, M, x, X, w] = [symbol('m'), symbol('M'), symbol('x'), symbol('x', 'T'), symbol('w')];
  return html`${equation(spoken.place(host.write(place, 'length')), w, row(X, minus, fraction(row(M, brackets(row(x, minus, X))), m)),
    row(exactly(host, middle), minus, fraction(row(quantity(host.write(plane.mass, 'mass')), times, brackets(row(exactly(host, plane.at), minus, exactly(host, middle)))), quantity(host.write(mass, 'mass')))),
    exactly(host, place))}<p class="source">${because.pieces}</p>`;
}
