import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import type {LogFound, Told} from './found.js';
import type {Prediction} from './prediction.js';
import {writeMeasure} from './written.js';

/** The numbers in the picture, version by version, and what was expected of each. */
export function versionTable(host: GliderElement, {told, measure}: LogFound, predictions: ReadonlyMap<string, Prediction>): TemplateResult {
  const words = host.say(flightLogWords);
  const {columns} = words;
  const flown = told.filter(({spread}) => spread);
  const expected = flown.some(({version}) => predictions.has(version.id));
  const best = measure.better !== 'neither';
  return html`<table><caption class="hidden">${words.versions}</caption>
    <thead><tr><th scope="col">${columns.version}</th><th scope="col" class="number">${columns.n}</th><th scope="col" class="number">${columns.mean}</th><th scope="col" class="number">${columns.scatter}</th>
      ${best ? html`<th scope="col" class="number">${columns.best}</th>` : nothing}</tr></thead>
    <tbody>${flown.map((one) => rowOf(host, one, measure, best, expected ? predictions.get(one.version.id) : undefined))}</tbody></table>`;
}

function rowOf(host: GliderElement, {version, spread}: Told, {id, better}: LogFound['measure'], best: boolean, prediction: Prediction | undefined): TemplateResult | typeof nothing {
  if (!spread) return nothing;
  const words = host.say(flightLogWords);
  const write = (value: number, fine = false): string => writeMeasure(host, id, value, fine);
  const standing = prediction === undefined || spread.mean >= prediction.least && spread.mean <= prediction.most ? 'within' : spread.mean > prediction.most ? 'above' : 'below';
  return html`<tr><th scope="row">${version.name}</th>
    <td class="number">${spread.n}</td><td class="number">${write(spread.mean)}</td><td class="number">${spread.deviation === undefined ? '–' : write(spread.deviation, true)}</td>
    ${best ? html`<td class="number">${write(better === 'less' ? spread.least : spread.most)}</td>` : nothing}</tr>
    ${prediction ? html`<tr class="expected"><td colspan=${best ? 5 : 4}>${words.expected({least: write(prediction.least), most: write(prediction.most), standing})}</td></tr>` : nothing}`;
}
