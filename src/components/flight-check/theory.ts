import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {amountsOf, causes, total} from '../../calc/aero/plane-loads.js';
import type {FlightCheck} from '../../calc/flight/flight-check.js';
import type {Trim} from '../../calc/flight/flight.js';
import {flightWorkingWords} from '../../messages/en/flight-working.js';
import type {GliderElement} from '../base/element.js';
import {brackets, equation, fraction, named, number, operator, quantity, root, row, symbol} from '../base/equation.js';

const times = operator('·'), minus = operator('−'), plus = operator('+');
const attack = causes.indexOf('attack');
const pure = (host: GliderElement, value: number, digits: number): string => host.write(value, 'count', {digits});
const inBrackets = (written: string): TemplateResult => (written.startsWith('−') ? brackets(number(written)) : number(written));

/** Why it flies at that lift: the folded section by itself, and the angle at which the moments about the balance cancel. */
export function trimming(host: GliderElement, {plane}: FlightCheck, {glide}: Trim): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {zeroLiftAngle, quarterChordMoment} = plane.aero.rootSection;
  const delta = operator('Δ'), theta = symbol('θ'), s = symbol('s'), sum = operator('∑');
  const alpha = symbol('α'), CL = (of: string) => symbol('C', of);
  const none = amountsOf({...glide.setting, attack: 0}), moment = total(plane.moment, none), lift = total(plane.lift, none);
  const slope = plane.moment[attack] ?? NaN, liftSlope = plane.lift[attack] ?? NaN;
  const zero = host.write(zeroLiftAngle, 'angle'), angle = host.write(glide.setting.attack, 'angle'), cm = pure(host, quarterChordMoment, 3), cl = pure(host, glide.lift, 2);
  return html`${equation(spoken.zeroLift(zero), symbol('α', '0'), row(fraction(number('1'), symbol('π')), sum, s, brackets(row(delta, theta, minus, delta, named('sin', theta)))), quantity(zero))}
    ${equation(spoken.sectionMoment(cm), symbol('c', 'm'), row(fraction(number('1'), number('2')), sum, s, brackets(row(fraction(number('1'), number('2')), delta, named('sin', row(number('2'), theta)), minus, delta, named('sin', theta)))), number(cm))}
    <p class="source">${because.section}</p>
    ${equation(spoken.attack(angle), alpha, row(minus, fraction(CL('m0'), CL('mα'))), row(minus, fraction(number(pure(host, moment, 3)), number(pure(host, slope, 2)))), quantity(angle))}
    ${equation(spoken.lift(cl), CL('L'), row(CL('L0'), plus, CL('Lα'), times, alpha),
      row(number(pure(host, lift, 2)), plus, number(pure(host, liftSlope, 2)), times, inBrackets(pure(host, glide.setting.attack, 3))), number(cl))}
    <p class="source">${because.trim}</p>`;
}

/** What it does when something has disturbed it. */
export function moving(host: GliderElement, {motion}: FlightCheck, {glide}: Trim): TemplateResult | typeof nothing {
  if (!motion.ok) return nothing;
  const {because, spoken} = host.say(flightWorkingWords);
  const {lanchester, phugoid, spiralCriterion: criterion, coefficients: {sideslip, rolling, yawing}} = motion.value;
  const C = (of: string) => symbol('C', of), gamma = symbol('γ'), V = symbol('V');
  const period = host.write(lanchester, 'time', {digits: 1}), own = phugoid.find((swing) => swing.period !== undefined)?.period;
  const value = pure(host, criterion, 4), each = (one: number): TemplateResult => inBrackets(pure(host, one, 3));
  /** One of the criterion's two differences: narrow pages have no room for both in a line. */
  const pair = (name: 'E1' | 'E2', [a, b, c, d]: readonly [string, string, string, string], [p, q, r, s]: readonly [number, number, number, number]): TemplateResult => {
    const said = pure(host, p * q - r * s, 4);
    return equation(spoken.pair({a, b, c, d, value: said}), symbol('E', name.slice(1)), row(C(a), C(b), minus, C(c), C(d)),
      row(each(p), times, each(q), minus, each(r), times, each(s)), number(said));
  };
  return html`${equation(spoken.phugoid(period), symbol('T'), fraction(row(symbol('π'), root(number('2')), V), symbol('g')),
      fraction(row(symbol('π'), root(number('2')), times, quantity(host.write(glide.speed, 'speed'))), symbol('g')), quantity(period))}
    <p class="source">${because.phugoid(own === undefined ? undefined : host.write(own, 'time', {digits: 1}))}</p>
    ${pair('E1', ['lβ', 'nr', 'nβ', 'lr'], [sideslip.roll, yawing.yaw, sideslip.yaw, yawing.roll])}
    ${pair('E2', ['lp', 'nβ', 'lβ', 'np'], [rolling.roll, sideslip.yaw, sideslip.roll, rolling.yaw])}
    ${equation(spoken.spiral(value), symbol('E'), row(symbol('E', '1'), named('cos', gamma), minus, symbol('E', '2'), named('sin', gamma)), number(value))}
    <p class="source">${because.spiral}</p>`;
}
