import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {StudentT} from '../../calc/flight-log/comparison.js';
import {differences} from '../../calc/flight-log/differences.js';
import type {Version} from '../../calc/flight-log/log.js';
import type {MeasureId} from '../../calc/flight-log/measures.js';
import {leastShown, mostThrows, throwsToShow, usualThrows} from '../../calc/flight-log/plan.js';
import {readQuantity, type ReadResult} from '../../calc/units/read.js';
import {flightLogPanelWords} from '../../messages/en/flight-log-panels.js';
import type {GliderElement} from '../base/element.js';
import {emphasised} from '../base/emphasis.js';
import {explain} from '../base/explain.js';
import {later} from '../base/later.js';
import {designOf, type LogFound} from './found.js';
import type {Prediction} from './prediction.js';
import {handHeight} from './predictions-for.js';
import {farUnit, writeMeasure} from './written.js';

const loadModel = () => import('./predicting.js');
const loadStatistics = () => import('./student-t.js');

/** What a reader expects of a change, as typed; kept while the element lasts. */
const drafts = new WeakMap<GliderElement, {readonly id: MeasureId; readonly text: string}>();

const unitOf = (host: GliderElement, id: MeasureId): string =>
  ({distance: farUnit(host), time: 's', ratio: '', sink: host.system === 'inch' ? 'ft/s' : 'm/s', speed: host.system === 'inch' ? 'ft/s' : 'm/s'})[id];

function read(host: GliderElement, id: MeasureId, text: string): ReadResult {
  if (id === 'ratio') {
    const value = Number(text.trim().replace(',', '.'));
    return text.trim() === '' ? {ok: false, problem: {code: 'quantity-empty'}} : Number.isFinite(value) ? {ok: true, value, unit: ''} : {ok: false, problem: {code: 'quantity-not-finite'}};
  }
  return readQuantity(text, id === 'distance' ? 'length' : id === 'time' ? 'time' : 'speed', {bareUnit: unitOf(host, id), decimal: host.decimal});
}

/** Whether the throws could show what a change is expected to give, before anything is cut. */
export function planning(host: GliderElement, found: LogFound, version: Version | undefined, given: string | undefined): TemplateResult {
  const words = host.say(flightLogPanelWords);
  const {id} = found.measure;
  const model = modelDifference(host, found, version);
  const draft = drafts.get(host);
  const typed = draft?.id === id ? draft.text : undefined;
  const text = typed ?? given ?? (model ? writeMeasure(host, id, Math.abs(model.usual), true) : '');
  const expected = text.trim() === '' ? undefined : read(host, id, text.replace('−', '-'));
  const problem = expected && !expected.ok ? explain(host, expected.problem) : undefined;
  return html`<p class="source">${words.planHelp}</p>
    ${model && version ? html`<p>${words.predictedNow({name: version.name, value: signed(host, id, model.usual), least: signed(host, id, model.least), most: signed(host, id, model.most)})}</p>`
      : given !== undefined && typed === undefined ? html`<p class="source">${words.planGiven}</p>` : nothing}
    ${!model && version && isSame(host, version) ? html`<p class="source">${words.predictedSame}</p>` : nothing}
    <div class="fields"><div class="field" part="field"><label for="field-expected">${words.expected[id]}</label>
      <span class="q"><input id="field-expected" part="input" type="text" autocomplete="off" inputmode="decimal" .value=${live(text)} aria-invalid=${problem ? 'true' : 'false'} aria-describedby="field-expected-problem"
        @input=${(e: Event) => { drafts.set(host, {id, text: (e.target as HTMLInputElement).value}); host.requestUpdate(); }}><span class="unit" aria-hidden="true">${/\p{L}/u.test(text) ? '' : unitOf(host, id)}</span></span>
      <span id="field-expected-problem">${problem ? html`<span class="problem" part="problem">${problem}</span>` : nothing}</span></div></div>
    ${verdict(host, found, expected?.ok ? Math.abs(expected.value) : undefined)}`;
}

const signed = (host: GliderElement, id: MeasureId, value: number): string => `${value > 0 ? '+' : ''}${writeMeasure(host, id, value, true)}`;

const isSame = (host: GliderElement, version: Version): boolean => {
  const design = designOf(version);
  return host.link.linked && design !== undefined && differences(design, host.state.design).length === 0;
};

/** What the flight model expects of the glider on the page, less what it expects of the version thrown now. */
function modelDifference(host: GliderElement, found: LogFound, version: Version | undefined): Prediction | undefined {
  const design = version && designOf(version);
  if (!design || !host.link.linked || isSame(host, version)) return undefined;
  const model = later(host, loadModel);
  const height = handHeight(host, found.told.find((told) => told.version === version));
  const [before, after] = [design, host.state.design].map((each) => model?.predicted(each, found.measure.id, height));
  if (!before || !after) return undefined;
  const ends = [after.least - before.least, after.most - before.most];
  return {least: Math.min(...ends), usual: after.usual - before.usual, most: Math.max(...ends)};
}

function verdict(host: GliderElement, {scatter, measure: {id}}: LogFound, difference: number | undefined): TemplateResult | typeof nothing {
  const words = host.say(flightLogPanelWords);
  if (scatter === undefined || !(scatter > 0)) return html`<p role="status">${emphasised(words.noScatter)}</p>`;
  const t: StudentT | undefined = later(host, loadStatistics)?.studentT;
  if (!t) return nothing;
  const write = (value: number): string => writeMeasure(host, id, value, true);
  const scatters = {a: scatter, b: scatter};
  const least = write(leastShown(usualThrows, scatters, t));
  const said = {scatter: write(scatter), usual: usualThrows, least};
  if (difference === undefined || difference === 0) return html`<p role="status">${emphasised(words.canShow(said))}</p><p class="source">${words.steady}</p>`;
  const n = throwsToShow(difference, scatters, t);
  return html`<p role="status">${emphasised(n !== undefined && n <= mostThrows ? words.takes({n, difference: write(difference), scatter: write(scatter)})
    : words.bigger({...said, n: n === undefined || n > 1000 ? undefined : n, difference: write(difference)}))}</p><p class="source">${words.steady}</p>`;
}
