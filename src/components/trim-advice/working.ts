import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {gravity} from '../../calc/aero/air.js';
import {flyingPlane} from '../../calc/flight/flying-plane.js';
import {commonWords} from '../../messages/en/common.js';
import {trimAdviceCauseWords} from '../../messages/en/trim-advice-causes.js';
import {trimAdviceWorkingWords} from '../../messages/en/trim-advice-working.js';
import type {GliderElement} from '../base/element.js';
import {equation, fraction, number, operator, quantity, root, row, symbol} from '../base/equation.js';
import {numbersTable} from '../base/table.js';
import {capital} from './sentences.js';
import type {Advised} from './told.js';

const times = operator('·'), minus = operator('−');

/** How causes are weighed and changes are sized, with this plane's numbers. */
export function trimAdviceWorking(host: GliderElement, {advice, design}: Advised): TemplateResult {
  const {spoken, because, rows, source} = host.say(trimAdviceWorkingWords);
  const {cause} = host.say(trimAdviceCauseWords);
  const plane = flyingPlane(design);
  const length = (value: number): TemplateResult => quantity(host.write(value, 'length'));
  const share = (value: number): string => host.write(value, 'ratio', {digits: 0});
  const c = symbol('c'), h = symbol('h'), g = symbol('g'), V = symbol('V');
  return html`
    ${equation(spoken.share, symbol('p'), fraction(symbol('w'), row(operator('∑'), symbol('w'))))}<p class="source">${because.share}</p>
    ${plane.ok ? html`${equation(spoken.margin({margin: share(plane.value.margin)}), fraction(row(symbol('x', 'N'), minus, symbol('x', 'G')), c),
      fraction(row(length(plane.value.neutralPoint), minus, length(plane.value.balance)), length(plane.value.aero.shape.wing.meanAerodynamicChord)), quantity(share(plane.value.margin)))}
      <p class="source">${because.margin}</p>` : nothing}
    ${equation(spoken.mass, symbol('Δm'), fraction(row(symbol('m'), times, symbol('s')), symbol('d')))}<p class="source">${because.mass}</p>
    ${advice ? html`${ballEquation(advice)}<p class="source">${because.ball}</p>` : nothing}
    ${numbersTable(host, [
      ...plane.ok ? [[rows.margin, share(plane.value.margin)] as const] : [],
      ...advice ? [
        [rows.speed, host.write(advice.study.glide.speed, 'speed', {digits: 1})], [rows.right, host.write(advice.study.right.speed, 'speed', {digits: 1})], [rows.height, host.write(advice.study.right.height, 'length')],
        ...advice.causes.map((one) => [capital(cause[one.id]), share(one.share)] as const),
      ] as const : [],
    ])}
    <p class="source">${host.say(commonWords).where}: ${source}</p>`;

  function ballEquation({study: {right, ball}}: NonNullable<Advised['advice']>): TemplateResult {
    const speed = host.write(right.speed, 'speed', {digits: 1}), distance = host.write(ball, 'length', host.system === 'inch' ? {unit: 'ft', digits: 1} : {unit: 'm', digits: 1});
    return equation(spoken.ball({speed, distance}), row(V, root(fraction(row(number('2'), h), g))),
      row(quantity(speed), times, root(fraction(row(number('2'), times, length(right.height)), quantity(`${host.write(gravity, 'count', {digits: 2})}\u00a0m/s²`)))), quantity(distance));
  }
}
