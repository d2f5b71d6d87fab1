import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {FlightLog, Throw} from '../../calc/flight-log/log.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {GliderElement} from '../base/element.js';
import {writeNumber} from './written.js';

/** As many rows as a phone shows without losing its place. */
const perPage = 20;

/** A throw with its number among those of its version. */
interface Numbered { readonly one: Throw; readonly n: number; readonly name: string }

const known = new WeakMap<FlightLog, readonly Numbered[]>();

/** Every throw, newest first. */
function numbered(log: FlightLog): readonly Numbered[] {
  let rows = known.get(log);
  if (!rows) {
    const names = new Map(log.versions.map(({id, name}) => [id, name]));
    const counts = new Map<string, number>();
    rows = log.throws.map((one) => {
      const n = (counts.get(one.version) ?? 0) + 1;
      counts.set(one.version, n);
      return {one, n, name: names.get(one.version) ?? ''};
    }).reverse();
    known.set(log, rows);
  }
  return rows;
}

/** What a throw is called: its version and its number in it. */
export const numberOf = (log: FlightLog, id: string): Numbered | undefined => numbered(log).find(({one}) => one.id === id);

export interface ListActions {
  readonly page: number;
  readonly held: string | undefined;
  readonly turn: (page: number) => void;
  readonly correct: (one: Throw) => void;
}

/** The throws page by page: ten thousand of them stay as quick as ten. */
export function throwList(host: GliderElement, log: FlightLog, {page, held, turn, correct}: ListActions): TemplateResult | typeof nothing {
  const words = host.say(flightLogWords);
  const rows = numbered(log);
  if (rows.length === 0) return nothing;
  const at = Math.min(page, Math.ceil(rows.length / perPage) - 1);
  const shown = rows.slice(at * perPage, (at + 1) * perPage);
  return html`<details part="list"><summary>${words.listOf(rows.length)}</summary><div class="panel">
    <table><caption class="hidden">${words.list}, ${words.newest}</caption>
      <thead><tr><th scope="col">${words.columns.thrown}</th><th scope="col" class="number">${words.distance}</th><th scope="col" class="number">${words.time}</th><td></td></tr></thead>
      <tbody>${shown.map((row) => rowOf(host, row, held, correct))}</tbody></table>
    ${rows.length > perPage ? html`<div class="buttons">
      <button type="button" part="button" ?disabled=${at === 0} @click=${() => { turn(at - 1); }}>${words.newer}</button>
      <button type="button" part="button" ?disabled=${(at + 1) * perPage >= rows.length} @click=${() => { turn(at + 1); }}>${words.older}</button>
      <span>${words.pages({from: at * perPage + 1, to: at * perPage + shown.length, of: rows.length})}</span></div>` : nothing}</div></details>`;
}

function rowOf(host: GliderElement, {one, n, name}: Numbered, held: string | undefined, correct: (one: Throw) => void): TemplateResult {
  const words = host.say(flightLogWords);
  const number = (key: 'distance' | 'time' | 'height'): string => { const value = one[key]; return value === undefined ? '–' : writeNumber(host, key, value); };
  const said = [
    one.out ? words.isOut : '', words.paths[one.path] ?? one.path, words.surfaces[one.surface] ?? one.surface,
    one.wind === '' ? '' : words.windWas(words.winds[one.wind] ?? one.wind), one.note,
  ].filter(Boolean).join(' · ');
  return html`<tr class="${one.out ? 'left-out' : ''} ${one.id === held ? 'held' : ''}">
    <th scope="row">${name} ${n}${said ? html`<span class="words">${said}</span>` : nothing}</th><td class="number">${number('distance')}</td><td class="number">${number('time')}</td>
    <td><button type="button" part="button" aria-label="${words.edit}: ${words.which({name, n})}" @click=${() => { correct(one); }}>${words.edit}</button></td></tr>`;
}
