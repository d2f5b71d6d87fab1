import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {readHeading} from '../../calc/flight-log/columns.js';
import {readLogFile, writeLogFile} from '../../calc/flight-log/file.js';
import {emptyLog, withoutRows, type FlightLog, type UnreadRow} from '../../calc/flight-log/log.js';
import {isEmpty, merged, readIn, type ReadIn} from '../../calc/flight-log/read-in.js';
import {readRows, readTable} from '../../calc/flight-log/read-table.js';
import {writeTable} from '../../calc/flight-log/write-table.js';
import type {Outcome} from '../../calc/problem.js';
import {flightLogPanelWords} from '../../messages/en/flight-log-panels.js';
import type {GliderElement} from '../base/element.js';
import {fileOf, type SavedFile} from '../parts-sheet/saved-file.js';
import {parseCsv, writeCsv} from './csv.js';
import {newId} from './new-id.js';
import {explainThrow} from './written.js';

/** Puts another log in the place of the one there is, and says what happened; `undo` offers the way back. */
export type Act = (log: FlightLog, said: string, undo: boolean) => void;

/** Rows shown to be mended at once. */
const mostShown = 20;

interface Panel {
  file: SavedFile | undefined;
  problem: string;
  readonly drafts: Map<string, string>;
}

const panels = new WeakMap<GliderElement, Panel>();

const panelOf = (host: GliderElement): Panel => {
  const panel = panels.get(host) ?? {file: undefined, problem: '', drafts: new Map<string, string>()};
  panels.set(host, panel);
  return panel;
};

/** Saving and reading of files, and the rows that could not be read. */
/** `hush` takes back what was said last, where a file could not be read after it. */
export function filesPanel(host: GliderElement, log: FlightLog, act: Act, hush: () => void): TemplateResult {
  const words = host.say(flightLogPanelWords);
  const panel = panelOf(host);
  const empty = isEmpty(log);
  return html`<div class="buttons">
      <button type="button" part="button" ?disabled=${empty} @click=${() => { save(host, panel, 'flight-log.csv', csvOf(host, log), 'text/csv'); }}>${words.saveCsv}</button>
      <button type="button" part="button" ?disabled=${empty} @click=${() => { save(host, panel, 'flight-log.json', writeLogFile(log), 'application/json'); }}>${words.saveJson}</button>
      <label class="open">${words.open}<input type="file" accept=".csv,.txt,.tsv,.json,text/csv,application/json" @change=${(e: Event) => { void open(host, panel, log, e.target as HTMLInputElement, act, hush); }}></label>
      ${panel.file ? html`<a class="file" href=${panel.file.address} download=${panel.file.name}>${words.ready(panel.file.name)}</a>` : nothing}</div>
    <p class="source">${words.csvLacks}</p>
    <p class="problem" part="problem" role="alert" ?hidden=${panel.problem === ''}>${panel.problem}</p>
    ${unreadList(host, panel, log, act)}
    <div class="buttons"><button type="button" part="button" ?disabled=${empty} @click=${() => { act(emptyLog, words.forgotten, true); }}>${words.forget}</button></div>`;
}

const csvOf = (host: GliderElement, log: FlightLog): string =>
  writeCsv(writeTable(log, {decimal: host.decimal, why: ({problem}) => explainThrow(host, problem)}), host.decimal);

function save(host: GliderElement, panel: Panel, name: string, text: string, type: string): void {
  panel.file?.letGo();
  panel.file = fileOf(name, new Blob([text], {type: `${type};charset=utf-8`}));
  host.requestUpdate();
  // the link stays, for a browser that saves nothing unasked
  void host.updateComplete.then(() => { host.renderRoot.querySelector<HTMLAnchorElement>('a.file')?.click(); });
}

/** Spreadsheets still write the letters of Western Europe in their own way. */
async function textOf(file: Blob): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', {fatal: true}).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

async function open(host: GliderElement, panel: Panel, log: FlightLog, input: HTMLInputElement, act: Act, hush: () => void): Promise<void> {
  const [file] = input.files ?? [];
  if (!file) return;
  const read = readText(host, log, await textOf(file));
  input.value = '';
  panel.problem = read.ok ? '' : read.problems.map((problem) => explainThrow(host, problem)).join(' ');
  if (read.ok) act(read.value.log, host.say(flightLogPanelWords).readIn(read.value), read.value.added + read.value.replaced + read.value.unread > 0);
  else hush();
}

/** Reads a log file or a table into a log. */
export function readText(host: GliderElement, log: FlightLog, text: string): Outcome<ReadIn> {
  const options = {newId, now: Date.now()};
  if (/^\s*[{[]/.test(text)) {
    const read = readLogFile(text, options);
    return read.ok ? {ok: true, value: merged(log, read.value)} : read;
  }
  const {rows, delimiter} = parseCsv(text);
  const table = readTable(rows, {...options, delimiter});
  return table.ok ? {ok: true, value: readIn(log, table.value, {...options, unnamed: host.say(flightLogPanelWords).unnamed})} : table;
}

function unreadList(host: GliderElement, panel: Panel, log: FlightLog, act: Act): TemplateResult | typeof nothing {
  const words = host.say(flightLogPanelWords);
  const {unread} = log;
  if (unread.length === 0) return nothing;
  return html`<p><b>${words.unread(unread.length)}.</b> ${words.unreadHelp}</p><ol class="unread">${unread.slice(0, mostShown).map((row) => {
    const id = `unread-${row.id}`;
    return html`<li><div class="field" part="field"><label for=${id}>${words.row}</label><span class="q"><input id=${id} class="row-text" part="input" type="text" autocomplete="off" spellcheck="false"
        .value=${live(panel.drafts.get(row.id) ?? row.text)} aria-describedby="${id}-problem" @input=${(e: Event) => { panel.drafts.set(row.id, (e.target as HTMLInputElement).value); }}></span>
      <span id="${id}-problem"><span class="problem" part="problem">${explainThrow(host, row.problem)}</span></span></div>
      <div class="buttons"><button type="button" part="button" @click=${() => { again(host, panel, log, row, act); }}>${words.again}</button>
        <button type="button" part="button" @click=${() => { act(withoutRows(log, new Set([row.id])), words.dropped, true); }}>${words.drop}</button></div></li>`;
  })}</ol>${unread.length > mostShown ? html`<p class="source">${words.moreRows(unread.length - mostShown)}</p>` : nothing}`;
}

/** Reads one row again as it stands now; one that still cannot be read stays, as it was mended so far, with the new reason. */
function again(host: GliderElement, panel: Panel, log: FlightLog, row: UnreadRow, act: Act): void {
  const text = panel.drafts.get(row.id) ?? row.text;
  const options = {newId, now: row.at};
  const rest = withoutRows(log, new Set([row.id]));
  let read: Outcome<ReadIn>;
  if (row.columns) {
    const delimiter = row.delimiter ?? ',';
    const table = readRows(parseCsv(text, delimiter).rows, row.columns.map(readHeading), {...options, delimiter});
    read = {ok: true, value: readIn(rest, table, {...options, unnamed: host.say(flightLogPanelWords).unnamed})};
  } else {
    read = readText(host, rest, `{"flightLog":1,"versions":${JSON.stringify(log.versions.map(({id, name}) => ({id, name})))},"throws":[${text}]}`);
  }
  panel.drafts.delete(row.id);
  if (read.ok) act(read.value.log, read.value.added > 0 ? host.say(flightLogPanelWords).readNow : '', true);
  else {
    panel.problem = read.problems.map((problem) => explainThrow(host, problem)).join(' ');
    host.requestUpdate();
  }
}
