import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {ShimStudy} from '../../calc/flight/slips.js';
import {commonWords} from '../../messages/en/common.js';
import {tailShimWorkingWords} from '../../messages/en/tail-shim-working.js';
import {equation, fraction, named, operator, quantity, row, symbol} from '../base/equation.js';
import {numbersTable} from '../base/table.js';
import type {GliderTailShim} from './tail-shim.js';

const minus = operator('−');

/** From slips to an angle and from angles to a speed, with this plane's numbers. */
export function tailShimWorking(host: GliderTailShim, {now: board, difference, trim}: ShimStudy): TemplateResult {
  const {because, spoken, rows, source} = host.say(tailShimWorkingWords);
  const {place, overhang} = host.placing;
  const length = (value: number): TemplateResult => quantity(host.write(value, 'length', host.system === 'metric' ? {digits: 1} : {}));
  const turned = host.write(Math.abs(board.angle), 'angle'), height = host.fine(board.height);
  const c = symbol('c'), d = symbol('d'), h = symbol('h'), w = symbol('w'), x = symbol('x');
  const flush = 'width' in place
    ? equation(spoken.flush({height, angle: turned}), row(c, named('sin', d), minus, w, named('tan', d)),
      row(length(board.chord - overhang), operator('·'), named('sin', quantity(turned)), minus, length(place.width), operator('·'), named('tan', quantity(turned))), h, length(board.height))
    : equation(spoken.flush({height, angle: turned}), row(named('tan', d)), fraction(h, x), fraction(length(board.height), length(place.fromPivot)));
  return html`${board.raised ? html`${flush}<p class="source">${because.flush}</p>` : nothing}
    ${equation(spoken.edges, d, named('arcsin', fraction(row(symbol('z', 'r'), minus, symbol('z', 'f')), c)))}
    <p class="source">${because.edges}</p>
    ${equation(spoken.difference(host.write(difference, 'angle')), row(symbol('i', 'w'), minus, symbol('i', 't')), quantity(host.write(difference, 'angle')))}
    <p class="source">${because.difference} ${because.speed}</p>
    ${numbersTable(host, [
      [rows.angle, host.write(board.angle, 'angle')], [rows.height, height], [rows.rise, host.fine(board.rise)],
      ...board.raised ? [[rows.stack, host.stackWords(board.stack)]] as const : [],
      [rows.difference, host.write(difference, 'angle')],
      ...trim.ok ? [[rows.speed, host.write(trim.value.glide.speed, 'speed')]] as const : [],
    ])}
    <p class="source">${host.say(commonWords).where}: ${source}</p>`;
}
