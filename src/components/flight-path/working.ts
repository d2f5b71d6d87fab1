import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {gravity} from '../../calc/aero/air.js';
import type {ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import {commonWords} from '../../messages/en/common.js';
import {flightPathWorkingWords} from '../../messages/en/flight-path-working.js';
import {acrossWords} from '../base/across.js';
import {equation, fraction, named, number, operator, power, quantity, root, row, symbol} from '../base/equation.js';
import type {GliderElement} from '../base/element.js';
import {numbersTable} from '../base/table.js';
import {bankWords, far, speedWords} from './sentences.js';

const minus = operator('−'), times = operator('·');

/** The formulas behind the throw, with this plane's numbers. */
export function flightPathWorking(host: GliderElement, study: ThrowStudy): TemplateResult {
  const {because, source, rows, spoken} = host.say(flightPathWorkingWords);
  const {plane, air, glide, ball, right, trim} = study;
  const turn = study.turn?.ok ? study.turn.value : undefined;
  const pure = (value: number, digits = 2): string => host.write(value, 'count', {digits});
  const speed = speedWords(host, glide.speed), angle = host.write(glide.angle, 'angle');
  const V = symbol('V'), m = symbol('m'), g = symbol('g'), gamma = symbol('γ'), h = symbol('h');
  const height = host.write(right.height, 'length');
  const earth = quantity(`${pure(gravity)}\u00a0m/s²`);
  return html`
    ${trim.ok ? html`${equation(spoken.speed(speed), V,
      root(fraction(row(number('2'), m, g, named('cos', gamma)), row(symbol('ρ'), symbol('S'), symbol('C')))),
      root(fraction(row(number('2'), times, quantity(host.write(plane.mass, 'mass')), times, earth, times, named('cos', quantity(angle))),
        row(quantity(host.write(plane.parasite.area, 'area')), times, quantity(host.write(air.density, 'density', {digits: host.system === 'inch' ? 3 : 2})), times, number(pure(glide.lift))))),
      quantity(speed))}<p class="source">${because.speed}</p>
    ${equation(spoken.ball({speed: speedWords(host, right.speed), height, distance: far(host, ball)}), symbol('x'), row(V, root(fraction(row(number('2'), h), g))),
      row(quantity(speedWords(host, right.speed)), times, root(fraction(row(number('2'), times, quantity(height)), earth))), quantity(far(host, ball)))}
    <p class="source">${because.ball}</p>` : nothing}
    ${equation(spoken.motion, symbol('V̇'), row(minus, fraction(symbol('D'), m), minus, g, named('sin', gamma)))}
    ${equation(spoken.motion, symbol('γ̇'), fraction(row(symbol('L'), minus, m, g, named('cos', gamma)), row(m, V)))}
    ${equation(spoken.motion, symbol('θ̈'), fraction(symbol('M'), symbol('I')))}
    <p class="source">${because.motion} ${because.steps}</p>
    ${turn ? html`<p class="source">${because.turn}</p>
      ${equation(spoken.steady({bank: bankWords(host, turn.bank), speed: speedWords(host, turn.last.speed), radius: far(host, Math.abs(turn.radius))}),
        named('tan', symbol('φ')), fraction(power(V, '2'), row(g, symbol('R'))))}<p class="source">${because.steady}</p>` : nothing}
    <p class="source">${because.stall} ${because.left} ${because.sure}</p>
    ${numbersTable(host, [
      ...trim.ok ? [
        [rows.speed, speed], [rows.angle, angle], [rows.ratio, pure(glide.ratio.usual, 1)], [rows.sink, speedWords(host, glide.sink.usual)], [rows.ball, far(host, ball)],
      ] as const : [],
      ...turn ? [
        [rows.bank, bankWords(host, turn.bank)], [rows.turned, host.write(Math.abs(turn.last.heading), 'angle', {digits: 0})],
        ...Number.isFinite(turn.radius) ? [[rows.across, acrossWords(host, 2 * Math.abs(turn.radius))] as const] : [],
      ] as const : [],
      [rows.mass, host.write(plane.mass, 'mass')], [rows.margin, host.write(plane.margin, 'ratio', {digits: 0})],
    ])}
    <p class="source">${host.say(commonWords).where}: ${source}</p>`;
}
