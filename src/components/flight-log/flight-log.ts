import {html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {writeDesignFile} from '../../calc/design/file.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {emptyLog, withoutRows, withRows, type FlightLog, type Throw, type Version} from '../../calc/flight-log/log.js';
import {measureOf, measures, type MeasureId} from '../../calc/flight-log/measures.js';
import {good, type Outcome} from '../../calc/problem.js';
import type {ThrowsPicture} from '../../drawing/figures/flight-log.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import {findIn, shownIn, type LogFound, type Picked} from './found.js';
import {Keeping, type KeepState} from './keeping.js';
import {newId} from './new-id.js';
import type * as Picturing from './picture.js';
import type {Prediction, Predictions} from './prediction.js';
import {logAnswer, pairDifference} from './sentences.js';
import {predictionsFor} from './predictions-for.js';
import {flightLogStyles} from './styles.js';
import {numberOf, throwList} from './throw-list.js';
import {ThrowForm, type Written} from './throw-form.js';
import {movedOnFrom, nextName, VersionFields} from './version-fields.js';
import {versionTable} from './version-table.js';
import {writeMeasure} from './written.js';

const loadStatistics = () => import('./student-t.js');
const loadWorking = () => import('./working.js');
const loadFiles = () => import('./files.js');
const loadPlanning = () => import('./planning.js');

/** What a person's act makes of a log. */
export interface FlightLogDetail { readonly log: FlightLog }

/**
 * A log of throws, version by version: a stopwatch for a thumb, the throws as dots on a scale, and a fair comparison of two versions that says how many more
 * throws would settle it. It lasts as long as the page, unless its author lets the browser keep it.
 *
 * @summary Throws written down, and which version flies better.
 * @attr {string} keep - The name under which the browser keeps the log; without it nothing is stored.
 * @attr {string} measure - What is compared: `distance`, `time`, `ratio`, `sink` or `speed`.
 * @attr {string} difference - What a planned change is expected to give, by that measure: `0.8 m`, `0.5 s`, `0.4`, `0.1 m/s`.
 * @attr {string} hide - Parts left out: `heading`, `answer`, `picture`, `question`, `list`, `files`, `plan`, `working`.
 * @slot - Shown while there is no glider.
 * @csspart card - The whole log.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart question - The watch and the fields.
 * @csspart watch - The stopwatch.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart button - A button.
 * @csspart list - Every throw.
 * @csspart panel - Files, and the planning of a change.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 * @fires {CustomEvent<FlightLogDetail>} glider-flight-log - When a person has changed the log.
 */
export class GliderFlightLog extends Calculator<LogFound> {
  static override properties = {
    ...Calculator.properties, keep: {type: String}, measure: {type: String}, difference: {type: String}, predictions: {attribute: false}, log: {attribute: false, noAccessor: true},
  };
  static override styles = [...Calculator.styles, flightLogStyles];

  declare keep: string | null | undefined;
  declare measure: MeasureId | null | undefined;
  declare difference: string | null | undefined;
  /** What a page's own model expects of versions, by their names; without it the flight model here is asked about versions whose glider is known. */
  declare predictions: Predictions | undefined;

  protected override readonly paths: readonly DimensionPath[] = [];

  #log: FlightLog = emptyLog;
  #current: string | undefined;
  /** The version that was picked by hand, and the glider that stood on the page then. */
  #chosen: {readonly id: string; readonly design: GliderDesign} | undefined;
  #picked: Picked = {a: undefined, b: undefined};
  #page = 0;
  #said = '';
  #saidIn = '';
  #before: FlightLog | undefined;
  #keeping: Keeping | undefined;
  #keepState: KeepState = 'memory';
  #opened = {files: false, plan: false};
  #found: {readonly of: readonly unknown[]; readonly found: Outcome<LogFound>} | undefined;
  #picturing: typeof Picturing | undefined;
  #picture: {readonly of: readonly unknown[]; readonly picture: ThrowsPicture} | undefined;
  readonly #form = new ThrowForm(this, (written, correcting) => { this.#write(written, correcting); });
  readonly #versionFields = new VersionFields(this);
  readonly #figure = new Figure<ThrowsPicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawThrows;
    },
    data: () => this.#pictureNow(),
  });

  /** The log as it stands: frozen lists in SI. Setting it replaces it, in the store too. */
  get log(): FlightLog { return this.#log; }
  set log(log: FlightLog) { this.#become(log); }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#openStore();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#closeStore();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('keep') && this.hasUpdated) {
      this.#closeStore();
      this.#openStore();
    }
    // a note of the past is not worth another language
    if (this.#saidIn !== this.speech) this.#said = '';
    this.#saidIn = this.speech;
    super.willUpdate(changed);
  }

  #openStore(): void {
    const {keep} = this;
    if (!keep || this.#keeping) return;
    this.#keeping = new Keeping(keep, {
      changed: (log) => { this.#log = log; this.requestUpdate(); },
      state: (state) => { this.#keepState = state; this.requestUpdate(); },
    });
    // what was thrown before is kept from now on
    void this.#keeping.write(emptyLog, this.#log);
  }

  #closeStore(): void {
    this.#keeping?.close();
    this.#keeping = undefined;
    this.#keepState = 'memory';
  }

  #become(log: FlightLog): void {
    const before = this.#log;
    if (log === before) return;
    this.#log = log;
    void this.#keeping?.write(before, log);
    this.requestUpdate();
  }

  /** What a person did, with what is said about it and, where it takes something away, the way back. */
  #act(log: FlightLog, said: string, undo = false): void {
    this.#before = undo ? this.#log : undefined;
    this.#said = said;
    this.#become(log);
    this.dispatchEvent(new CustomEvent<FlightLogDetail>('glider-flight-log', {detail: {log}, bubbles: true, composed: true}));
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  get #version(): Version | undefined {
    const {versions} = this.#log;
    return versions.find(({id}) => id === this.#current) ?? versions.at(-1);
  }

  /** A name for now that comes after every other. */
  #now(): number {
    const {throws, versions} = this.#log;
    return Math.max(Date.now(), (throws.at(-1)?.at ?? 0) + 1, (versions.at(-1)?.at ?? 0) + 1);
  }

  /** Whether the glider on the page has moved on from a version, and the reader has not said that it is thrown all the same. */
  #hasMovedOn(version: Version): boolean {
    const chosen = this.#chosen?.id === version.id && this.#chosen.design === this.state.design;
    return !chosen && movedOnFrom(this, version).length > 0;
  }

  #newVersion(): Version {
    return Object.freeze({id: newId(), name: nextName(this.#log), at: this.#now(), ...(this.link.linked && {design: writeDesignFile(this.state)})});
  }

  #write(written: Written, correcting: Throw | undefined): void {
    const words = this.say(flightLogWords);
    const log = this.#log;
    if (correcting) {
      this.#act(withRows(log, {throws: [Object.freeze({...correcting, ...written})]}), words.corrected, true);
      return;
    }
    const current = this.#version;
    const version = current && !this.#hasMovedOn(current) ? current : this.#newVersion();
    const one: Throw = Object.freeze({...written, id: newId(), version: version.id, at: this.#now() + 1, out: false});
    const measure = measureOf(this.measure);
    const value = measure.of(one) ?? one.distance ?? one.time ?? 0;
    const shown = measure.of(one) === undefined ? one.distance === undefined ? 'time' : 'distance' : measure.id;
    const next = withRows(log, {versions: version === current ? [] : [version], throws: [one]});
    this.#current = version.id;
    this.#page = 0;
    this.#act(next, words.written({name: words.version(version.name), n: numberOf(next, one.id)?.n ?? 1, value: writeMeasure(this, shown, value, true)}));
  }

  protected override work(): Outcome<LogFound> {
    const measure = measureOf(this.measure);
    // the statistics are for those who have something to compare
    const t = this.#log.throws.length > 1 ? later(this, loadStatistics)?.studentT : undefined;
    const of = [this.#log, measure, this.#picked, t];
    if (!this.#found || of.some((each, i) => each !== this.#found?.of[i])) this.#found = {of, found: good(findIn(this.#log, measure, this.#picked, t))};
    return this.#found.found;
  }

  protected override renderHeading(): string { return this.say(flightLogWords).heading; }
  protected override answer(found: LogFound): Answer { return logAnswer(this, found); }

  #predictions(found: LogFound): ReadonlyMap<string, Prediction> { return predictionsFor(this, found, this.predictions); }

  #pictureNow(): ThrowsPicture | undefined {
    const found = this.good;
    const {reader} = this;
    if (!found?.single || !this.#picturing) return undefined;
    const predictions = this.#predictions(found);
    const of = [found, reader, predictions];
    if (!this.#picture || of.some((each, i) => each !== this.#picture?.of[i])) this.#picture = {of, picture: this.#picturing.throwsPicture(this, found, predictions)};
    return this.#picture.picture;
  }

  protected override renderPicture(found: LogFound): TemplateResult {
    const words = this.say(flightLogWords);
    const {pair, single, measure, told} = found;
    if (!single) return html`<p class="caution">${words.caution}</p>`;
    const lanes = shownIn(found);
    const name = words.picture({measure: words.measures[measure.id], lanes: lanes.flatMap((lane) => lane.spread
      ? words.lane({name: words.Version(lane.version.name), n: lane.values.length, mean: writeMeasure(this, measure.id, lane.spread.mean)}) : [])});
    const difference = pair && pairDifference(this, pair);
    return html`<div class="told">${this.#renderChoices(found)}${this.#figure.render(name)}
      ${lanes.length < told.filter(({throws}) => throws.length > 0).length ? html`<p class="source">${words.latestLanes(lanes.length)}</p>` : nothing}
      ${pair && (difference !== undefined || pair.unfair.length > 0) ? html`<ul class="notes">${difference === undefined ? nothing : html`<li>${difference}</li>`}
        ${pair.unfair.map((why) => html`<li>${words.unfair[why]}</li>`)}</ul>` : nothing}
      ${versionTable(this, found, this.#predictions(found))}</div>`;
  }

  #renderChoices({told, pair, single}: LogFound): TemplateResult {
    const words = this.say(flightLogWords);
    const flown = told.filter(({spread}) => spread);
    const choose = (id: string, label: string, value: string, options: readonly (readonly [string, string])[], take: (value: string) => void): TemplateResult =>
      html`<div class="field" part="field"><label for=${id}>${label}</label><span class="q"><select id=${id} .value=${live(value)} @change=${(e: Event) => {
        take((e.target as HTMLSelectElement).value);
        this.requestUpdate();
      }}>${options.map(([key, said]) => html`<option value=${key} ?selected=${key === value}>${said}</option>`)}</select></span><span></span></div>`;
    const versions = flown.map(({version: {id, name}}) => [id, name] as const);
    const b = pair?.b ?? single;
    return html`<div class="fields chosen">
      ${choose('field-measure', words.compareBy, measureOf(this.measure).id, measures.map(({id}) => [id, words.measures[id]]), (value) => { this.measure = measureOf(value).id; })}
      ${flown.length < 2 || !b ? nothing : html`
        ${choose('field-b', words.with, b.version.id, versions, (id) => { this.#picked = {a: id === pair?.a.version.id ? b.version.id : pair?.a.version.id ?? 'none', b: id}; })}
        ${choose('field-a', words.and, pair?.a.version.id ?? 'none', [...versions.filter(([id]) => id !== b.version.id), ['none', words.nobody]], (id) => { this.#picked = {a: id, b: b.version.id}; })}`}</div>`;
  }

  protected override renderQuestion(): TemplateResult {
    const words = this.say(flightLogWords);
    const log = this.#log;
    const {correcting} = this.#form;
    const versions = correcting ? this.#renderCorrecting(correcting) : this.#versionFields.render(log, {
      current: this.#version,
      choose: (id) => {
        this.#current = id;
        this.#chosen = {id, design: this.state.design};
        this.requestUpdate();
      },
      movedOn: this.#version !== undefined && this.#hasMovedOn(this.#version),
      rename: (version, name) => { this.#act(withRows(log, {versions: [Object.freeze({...version, name})]}), ''); },
      start: () => {
        const version = this.#newVersion();
        this.#current = version.id;
        this.#act(withRows(log, {versions: [version]}), '');
      },
      confirm: (version) => { this.#act(withRows(log, {versions: [Object.freeze({...version, design: writeDesignFile(this.state)})]}), ''); },
    });
    return html`${this.#form.render(versions)}
      <div class="said"><p role="status">${this.#said}</p>${this.#before ? html`<button type="button" part="button" @click=${() => { this.#undo(); }}>${words.undo}</button>` : nothing}</div>
      ${log.throws.length > 0 ? html`<p class="caution">${words.caution}</p>` : nothing}`;
  }

  #renderCorrecting(one: Throw): TemplateResult {
    const words = this.say(flightLogWords);
    return html`<div class="buttons">
      <button type="button" part="button" @click=${() => { this.#form.clear(); this.#act(withRows(this.#log, {throws: [Object.freeze({...one, out: !one.out})]}), words.corrected, true); }}>${one.out ? words.countIt : words.leaveOut}</button>
      <button type="button" part="button" @click=${() => { this.#form.clear(); this.#act(withoutRows(this.#log, new Set([one.id])), words.deleted, true); }}>${words.remove}</button></div>`;
  }

  #undo(): void {
    if (this.#before) this.#act(this.#before, this.say(flightLogWords).restored);
  }

  protected override renderTakeaway(found: LogFound): TemplateResult {
    const words = this.say(flightLogWords);
    const state = this.#keepState;
    const bad = state !== 'memory' && state !== 'kept' && state !== 'opening';
    return html`<div class="panels">${this.hides('list') ? nothing : throwList(this, this.#log, {
      page: this.#page, held: this.#form.correcting?.id, turn: (page) => { this.#page = page; this.requestUpdate(); }, correct: (one) => { this.#form.correct(one); },
    })}
      ${this.hides('plan') ? nothing : this.#panel('plan', words.plan, () => later(this, loadPlanning)?.planning(this, found, this.#version, this.difference ?? undefined))}
      ${this.hides('files') ? nothing : this.#panel('files', words.files, () => later(this, loadFiles)?.filesPanel(this, this.#log, (log, said, undo) => { this.#act(log, said, undo); }, () => { this.#said = ''; this.requestUpdate(); }))}
      ${state === 'memory' && this.#log.throws.length === 0 ? nothing : html`<p class="state ${bad ? 'bad' : ''}" part=${bad ? 'problem' : 'state'} role=${bad ? 'alert' : nothing}>${words.keep[state]}
        ${bad && state !== 'later-version' ? html`<button type="button" part="button" @click=${() => { void this.#keeping?.flush(); }}>${words.tryAgain}</button>` : nothing}</p>`}</div>`;
  }

  #panel(name: 'files' | 'plan', summary: string, content: () => TemplateResult | undefined): TemplateResult {
    return html`<details part="panel" data-panel=${name} @toggle=${() => { if (!this.#opened[name]) { this.#opened = {...this.#opened, [name]: true}; this.requestUpdate(); } }}>
      <summary>${summary}</summary><div class="panel">${this.#opened[name] ? content() : nothing}</div></details>`;
  }

  protected override renderWorking(found: LogFound): TemplateResult | undefined { return later(this, loadWorking)?.logWorking(this, found); }
}
