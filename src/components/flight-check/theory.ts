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
  const period = host.write(lanchester, 'time', {digits: 1}), own = phugoid.find(({period: each}) => each !== undefined)?.period;
  const value = pure(host, criterion, 4), four = (each: number): TemplateResult => inBrackets(pure(host, each, 3));
  return html`${equation(spoken.phugoid(period), symbol('T'), fraction(row(symbol('π'), root(number('2')), V), symbol('g')),
      fraction(row(symbol('π'), root(number('2')), times, quantity(host.write(glide.speed, 'speed'))), symbol('g')), quantity(period))}
    <p class="source">${because.phugoid(own === undefined ? undefined : host.write(own, 'time', {digits: 1}))}</p>
    ${equation(spoken.spiral(value), symbol('E'),
      row(brackets(row(C('lβ'), C('nr'), minus, C('nβ'), C('lr'))), named('cos', gamma), minus, brackets(row(C('lp'), C('nβ'), minus, C('lβ'), C('np'))), named('sin', gamma)),
      row(brackets(row(four(sideslip.roll), times, four(yawing.yaw), minus, four(sideslip.yaw), times, four(yawing.roll))), named('cos', gamma), minus,
        brackets(row(four(rolling.roll), times, four(sideslip.yaw), minus, four(sideslip.roll), times, four(rolling.yaw))), named('sin', gamma)), number(value))}
    <p class="source">${because.spiral}</p>`;
}
