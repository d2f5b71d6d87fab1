import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {measures} from '../../calc/flight-log/measures.js';
import {spreadOf} from '../../calc/flight-log/spread.js';
import {commonWords} from '../../messages/en/common.js';
import {flightLogPanelWords} from '../../messages/en/flight-log-panels.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import {equation, fraction, number, operator, power, quantity, root, row, symbol} from '../base/equation.js';
import type {LogFound, Told} from './found.js';
import {writeMeasure} from './written.js';

/** Averages, scatter and the comparison with these throws' numbers, and where each comes from. */
export function logWorking(host: GliderElement, found: LogFound): TemplateResult {
  const words = host.say(flightLogPanelWords);
  const {pair, single} = found;
  return html`${single?.spread ? meanWorking(host, found, pair?.b ?? single) : nothing}${pair ? pairWorking(host, found) : nothing}
    ${glides(host, found)}
    <p class="source">${words.because.flight}</p><p class="source">${words.because.watch}</p>
    <p class="source">${host.say(commonWords).where}: ${words.because.mean} ${words.because.interval} ${words.because.plan} ${words.because.predicted}</p>`;
}

function meanWorking(host: GliderElement, {measure: {id}}: LogFound, {spread}: Told): TemplateResult | typeof nothing {
  if (!spread) return nothing;
  const words = host.say(flightLogPanelWords);
  const mean = writeMeasure(host, id, spread.mean, true);
  const average = row(symbol('x̄'));
  return html`${equation(words.spokenMean({mean, n: spread.n}), average, fraction(row(operator('∑'), symbol('x')), number(String(spread.n))), quantity(mean))}
    ${spread.deviation === undefined ? nothing : equation(words.spokenDeviation(writeMeasure(host, id, spread.deviation, true)), symbol('s'),
      root(fraction(row(operator('∑'), power(row(operator('('), symbol('x'), operator('−'), symbol('x̄'), operator(')')), '2')), row(symbol('n'), operator('−'), number('1')))),
      quantity(writeMeasure(host, id, spread.deviation, true)))}`;
}

function pairWorking(host: GliderElement, {pair, measure: {id}}: LogFound): TemplateResult | typeof nothing {
  if (!pair?.comparison?.ok) return nothing;
  const words = host.say(flightLogPanelWords);
  const {a, b, standardError, interval, difference} = pair.comparison.value;
  const write = (value: number): string => writeMeasure(host, id, value, true);
  const [error, from, to] = [write(standardError), write(interval.from), write(interval.to)];
  const half = difference - interval.from;
  const share = (name: string): TemplateResult => fraction(power(symbol('s', name), '2'), symbol('n', name));
  const [nameA, nameB] = [pair.a.version.name, pair.b.version.name];
  const numbers = (deviation: number | undefined, n: number): TemplateResult => fraction(power(row(operator('('), quantity(write(deviation ?? 0)), operator(')')), '2'), number(String(n)));
  return html`${equation(words.spokenError(error), symbol('e'), root(row(share(nameA), operator('+'), share(nameB))), root(row(numbers(a.deviation, a.n), operator('+'), numbers(b.deviation, b.n))), quantity(error))}
    ${equation(words.spokenInterval({from, to}), symbol('d'), row(symbol('x̄', nameB), operator('−'), symbol('x̄', nameA), operator('±'), symbol('t'), symbol('e')),
      row(quantity(write(difference)), operator('±'), number((half / standardError).toFixed(2).replace('.', host.decimal)), operator('×'), quantity(error)), row(quantity(from), operator('…'), quantity(to)))}`;
}

/** What else the throws tell of each version. */
function glides(host: GliderElement, {told}: LogFound): TemplateResult | typeof nothing {
  const words = host.say(flightLogWords);
  const means = told.map((one) => ({
    name: one.version.name,
    of: measures.map((measure) => spreadOf(one.throws.filter(({out}) => !out).flatMap((thrown) => measure.of(thrown) ?? []))?.mean),
  })).filter(({of}) => of.some((mean) => mean !== undefined));
  return means.length === 0 ? nothing : html`<table><caption class="source">${words.columns.mean}</caption>
    <thead><tr><th scope="col">${words.columns.version}</th>${measures.map(({id}) => html`<th scope="col" class="number">${words.measures[id]}</th>`)}</tr></thead>
    <tbody>${means.map(({name, of}) => html`<tr><th scope="row">${name}</th>${measures.map(({id}, i) => {
      const mean = of[i];
      return html`<td class="number">${mean === undefined ? '–' : writeMeasure(host, id, mean)}</td>`;
    })}</tr>`)}</tbody></table>`;
}
