import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {AsBuiltStudy} from '../../calc/as-built/study.js';
import {wingFold} from '../../calc/bench/wing-fold.js';
import {isListRow, isNumberRow, rowOf, type DimensionPath, type DimensionValue} from '../../calc/design/dimensions.js';
import {writeListForReading} from '../../calc/units/list.js';
import {asBuiltWorkingWords} from '../../messages/en/as-built-working.js';
import {commonWords} from '../../messages/en/common.js';
import {dimensionWords} from '../../messages/en/dimensions.js';
import type {GliderElement} from '../base/element.js';
import {equation, fraction, named, operator, power, quantity, root, row, symbol} from '../base/equation.js';
import {fine} from './sentences.js';

const minus = operator('−'), plus = operator('+'), times = operator('·');

/** How measurements become angles, with this plane's numbers, and what took the place of what. */
export function asBuiltWorking(host: GliderElement, study: AsBuiltStudy): TemplateResult {
  const {because, spoken, rows, source} = host.say(asBuiltWorkingWords);
  const {design, built, sizes} = study;
  const fold = wingFold(built.design.wing, built.design.board);
  const f = symbol('f'), a = symbol('a'), b = symbol('b'), c = symbol('c'), s = symbol('s'), l = symbol('l');
  const angle = host.write(fold.ok ? fold.value.total : 0, 'angle'), hollow = fine(host, built.counted.includes('built.hollow') ? design.built.hollow ?? 0 : sizes.hollow ?? 0);
  const tail = host.write(built.design.arrangement.tailIncidence, 'angle'), skew = host.write(built.lopsided.skew ?? 0, 'angle');
  return html`${equation(spoken.hollow({hollow, fold: angle}), symbol('d'),
      fraction(row(a, b, named('sin', f)), root(row(power(a, '2'), plus, power(b, '2'), plus, row(operator('2'), a, b, named('cos', f))))), quantity(hollow))}
    <p class="source">${because.hollow} ${because.tips}</p>
    ${equation(spoken.tail(tail), symbol('i'), row(minus, named('arcsin', fraction(row(symbol('z', 'r'), minus, symbol('z', 'f')), c))), quantity(tail))}
    <p class="source">${because.tail}</p>
    ${equation(spoken.skew(skew), named('sin', symbol('ψ')), fraction(row(power(symbol('d', 'l'), '2'), minus, power(symbol('d', 'r'), '2')), row(operator('4'), s, l)))}
    <p class="source">${because.skew}</p>
    ${equation(spoken.supports, symbol('x'), row(symbol('x', 'f'), plus, operator('('), symbol('x', 'r'), minus, symbol('x', 'f'), operator(')'), times, fraction(symbol('m', 'r'), symbol('m'))))}
    <p class="source">${because.supports} ${because.truth}</p>
    ${built.replaced.length === 0 ? nothing : html`<table><caption class="source">${rows.caption}</caption>
      <thead><tr><th scope="col">${rows.what}</th><th scope="col" class="number">${rows.planned}</th><th scope="col" class="number">${rows.measured}</th></tr></thead>
      <tbody>${built.replaced.map(({path, planned, measured}) => html`<tr><th scope="row">${host.say(dimensionWords)[path].label}</th>
        <td class="number">${written(host, path, planned)}</td><td class="number">${written(host, path, measured)}</td></tr>`)}</tbody></table>`}
    <p class="source">${host.say(commonWords).where}: ${source}</p>`;
}

function written(host: GliderElement, path: DimensionPath, value: DimensionValue): string {
  const row = rowOf(path), {system, decimal} = host;
  if (value === undefined) return host.say(commonWords).dash;
  if (isNumberRow(row)) return host.write(value as number, row.kind, {digits: 1});
  return isListRow(row) ? writeListForReading(value as readonly Readonly<Record<string, number>>[], row.list, {system, decimal}) : value as string;
}
