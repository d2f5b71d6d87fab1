import {css, html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import type {Crooked} from '../../calc/flight/simulation/crooked.js';
import type {Comparison, ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import {good, refused, type Outcome, type Problem} from '../../calc/problem.js';
import type {FlightPathPicture} from '../../drawing/figures/flight-path.js';
import {flightPathWords} from '../../messages/en/flight-path.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {plain} from '../base/emphasis.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import {OwnField} from '../base/own-field.js';
import type * as Picturing from './picture.js';
import {Player} from './player.js';
import {distanceWords, fullNameOf, handWords, high, mainOf, momentWords, nameOf, seconds, speedWords, throwAnswer, turnedName} from './sentences.js';

const shortNames = {
  height: 'launch.height', speed: 'launch.speed', angle: 'launch.angle', pitch: 'launch.pitch', wind: 'launch.wind',
  masses: 'ballast.masses', tailAngle: 'arrangement.tailIncidence', wingAngle: 'arrangement.wingIncidence',
  span: 'wing.span', chord: 'wing.chord', noseToWing: 'arrangement.wingAt', noseToTail: 'arrangement.tailAt', mass: 'measured.mass', balance: 'measured.balance',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here. */
const notRead = /^(name$|board\.(length|width|margin|gap))/;

const first = ['launch.height', 'launch.speed', 'launch.angle', 'launch.pitch', 'launch.wind'] as const satisfies readonly DimensionPath[];
const others = [
  'ballast.masses', 'arrangement.tailIncidence', 'arrangement.wingIncidence', 'arrangement.wingAt', 'arrangement.tailAt', 'wing.span', 'wing.chord',
  'measured.mass', 'measured.balance', 'air.temperature', 'air.altitude',
] as const satisfies readonly DimensionPath[];
const shown: ReadonlySet<string> = new Set([...first, ...others]);

const comparisons = ['throws', 'balances', 'one'] as const satisfies readonly Comparison[];
const isComparison = (name: string | null | undefined): name is Comparison => (comparisons as readonly unknown[]).includes(name);

const loadStudy = () => import('../../calc/flight/simulation/throw-study.js');
const loadTurning = () => import('../../calc/flight/simulation/turn-study.js');
const loadWorking = () => import('./working.js');

/**
 * The throw: what the hand must do, as the place where a ball thrown level as fast would land; and the flight that follows, drawn to scale beside throws that are too
 * slow, too fast and too steep, or beside planes with a heavy nose and a heavy tail.
 *
 * @summary What a throw does, drawn to scale and moment by moment.
 * @attr {string} compare - What stands beside the throw: `throws`, `balances` or `one` for nothing.
 * @attr {string} height - Of the hand above the floor.
 * @attr {string} speed - Of the hand; left out, as fast as the plane glides.
 * @attr {string} angle - Of the throw, upwards; left out, along the glide.
 * @attr {string} pitch - How much higher than in the glide the nose is held.
 * @attr {string} wind - Against the throw.
 * @attr {string} fin-edge - How far to the right the fins' rear edges stand: a length.
 * @attr {string} tip-weight - What the right tip is heavier by: a mass.
 * @attr {string} twist - How much more incidence the left half of the wing has: an angle.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @attr {string} tail-angle - The tailplane to the body, front edge up.
 * @attr {string} wing-angle - The wing to the body, front edge up.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart moment - The slider along the flight, and where the plane is then.
 * @csspart button - Plays the flight.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderFlightPath extends Calculator<ThrowStudy> {
  static override readonly shortNames = shortNames;
  static override properties = {
    ...Calculator.properties, ...shortProperties(shortNames), compare: {type: String}, finEdge: {type: String, attribute: 'fin-edge'}, tipWeight: {type: String, attribute: 'tip-weight'}, twist: {type: String},
    _compared: {state: true, attribute: false},
  };

  static override styles = [...Calculator.styles, css`
    .moment { display: grid; grid-template-columns: auto minmax(6rem, 1fr); gap: .3rem .8rem; align-items: center; margin-block: .4rem .8rem; }
    .moment button { min-inline-size: 5.2rem; min-block-size: 2.75rem; }
    .moment label { display: grid; font-size: .88em; color: var(--_soft); }
    .moment label:only-of-type:first-child { grid-column: 1 / -1; }
    .moment input { inline-size: 100%; min-block-size: 2rem; margin: 0; accent-color: var(--_accent); cursor: ew-resize; }
    .moment input:focus-visible { outline: 2px solid var(--_accent); outline-offset: 2px; }
    .moment output { grid-column: 1 / -1; font-size: .95em; min-block-size: 3em; }
    .why { margin: 0; padding: 0; list-style: none; display: grid; gap: .3rem; font-size: .95em; max-inline-size: 68ch; }
    fieldset.fields { grid-column: 1 / -1; margin-block-start: .6rem; }
    .compared { display: grid; gap: .4rem 2.4rem; align-items: start; margin-block-end: .8rem; }
    .empty { grid-column: 1 / -1; }
    .flights { overflow-x: auto; }
    .flights table { min-inline-size: 0; inline-size: 100%; }
    .flights :is(th, td) { padding-inline-end: .7rem; }
    @media print { .moment { display: none; } }
    .flights :is(th, td):last-child { padding-inline-end: 0; }
    @container (max-width: 24rem) { .flights table { font-size: .8em; } .flights :is(th, td) { padding-inline-end: .4rem; } }
    @container (min-width: 30rem) { .moment output { min-block-size: 1.5em; } }
    @container (min-width: 48rem) { .compared { grid-template-columns: minmax(22rem, auto) 1fr; } .why { margin-block-start: 2.2rem; } }
  `];

  declare compare: string | undefined;
  declare finEdge: string | undefined;
  declare tipWeight: string | undefined;
  declare twist: string | undefined;
  /** What the reader chose to compare; until then, what the page's author did. */
  declare protected _compared: Comparison | undefined;
  declare height: string | undefined;
  declare speed: string | undefined;
  declare angle: string | undefined;
  declare pitch: string | undefined;
  declare wind: string | undefined;
  declare masses: string | undefined;
  declare tailAngle: string | undefined;
  declare wingAngle: string | undefined;
  declare span: string | undefined;
  declare chord: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  readonly #fin = new OwnField(this, 'crooked-fin', 'length', [-0.025, 0.025], 0);
  readonly #tip = new OwnField(this, 'crooked-tip', 'mass', [-0.03, 0.03], 0);
  readonly #twist = new OwnField(this, 'crooked-twist', 'angle', [-8 * Math.PI / 180, 8 * Math.PI / 180], 0);
  #turned: {readonly straight: ThrowStudy; readonly key: string; readonly study: Outcome<ThrowStudy>} | undefined;
  readonly #player = new Player(this, () => Math.max(0, ...this.good?.flown.map(({track}) => track.last.time) ?? []));
  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<FlightPathPicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawFlightPath;
    },
    data: () => this.good && this.#picturing?.flightPathPicture(this, this.good, this.#player.time),
  }, this.fields);

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('compare')) this._compared = undefined;
    if (changed.has('finEdge')) this.#fin.give(this.finEdge);
    if (changed.has('tipWeight')) this.#tip.give(this.tipWeight);
    if (changed.has('twist')) this.#twist.give(this.twist);
    super.willUpdate(changed);
  }

  get #comparison(): Comparison { return this._compared ?? (isComparison(this.compare) ? this.compare : 'throws'); }

  protected work(): Outcome<ThrowStudy> {
    // without it there is nothing wrong, only nothing to say yet
    const study = later(this, loadStudy)?.throwStudy(this.state.design, this.#comparison) ?? refused();
    const {crooked} = this, {design} = this.state;
    const measured = Object.values(design.built).some((value) => value !== undefined);
    if (!study.ok || !(crooked ?? measured)) return study;
    const turning = later(this, loadTurning);
    if (!turning) return study;
    const key = JSON.stringify(crooked ?? {});
    if (this.#turned?.straight !== study.value || this.#turned.key !== key) {
      this.#turned = {straight: study.value, key, study: good(turning.withTurn(study.value, design, crooked ?? {}))};
    }
    return this.#turned.study;
  }

  /** What is crooked about the plane besides what was measured, as typed; nothing where nothing is. */
  get crooked(): Crooked | undefined {
    const {fins} = this.state.design.tail;
    const fin = fins.count > 0 ? Math.asin(Math.min(Math.max((this.#fin.value ?? 0) / fins.chord, -0.4), 0.4)) : 0;
    const tipMass = this.#tip.value ?? 0, twist = this.#twist.value ?? 0;
    return fin === 0 && tipMass === 0 && twist === 0 ? undefined : {fin, tipMass, twist};
  }

  override render(): TemplateResult {
    if (later(this, loadStudy) || this.link.status === 'missing' || this.link.status === 'seeking') return super.render();
    const words = this.say(flightPathWords);
    return html`<section class="card" part="card" aria-label=${words.heading}><div><h3 part="heading">${words.heading}</h3>
      <p class="answer" part="answer">${words.waiting(high(this, this.state.design.launch.height))}</p></div></section>`;
  }

  protected renderHeading(): string { return this.say(flightPathWords).heading; }
  protected answer(study: ThrowStudy): Answer { return throwAnswer(this, study, later(this, loadStudy)?.balanceFirst(this.state.design)); }

  protected renderPicture(study: ThrowStudy): TemplateResult {
    const words = this.say(flightPathWords);
    const why = !study.trim.ok ? [] : study.flown.flatMap(({id}) => id in words.why && nameOf(this, id, study) === words.names[id] ? [words.why[id as keyof typeof words.why]] : []);
    const pictured = words.picture(study.flown.map((one) => words.pictured({
      name: fullNameOf(this, one, study), distance: distanceWords(this, one), top: high(this, one.track.highest.height),
    })).join('; '));
    return html`${this.#figure.render([pictured, ...turnedName(this, study)].join(' '))}
      ${this.#renderMoment(study)}
      <div class="compared">${this.#renderTable(study)}${why.length === 0 ? nothing : html`<ul class="why">${why.map((sentence) => html`<li>${sentence}</li>`)}</ul>`}</div>
      <p class="caution">${words.caution}</p>`;
  }

  #renderMoment(study: ThrowStudy): TemplateResult {
    const words = this.say(flightPathWords);
    const {time, playing, moves} = this.#player;
    const main = mainOf(study);
    const longest = Math.max(0, ...study.flown.map(({track}) => track.last.time));
    return html`<div class="moment" part="moment">
      ${moves ? html`<button type="button" part="button" @click=${() => { if (playing) this.#player.pause(); else this.#player.play(); }}>${playing ? words.pause : words.play}</button>` : nothing}
      <label>${words.moment}<input id="moment" type="range" min="0" max=${(Math.ceil(longest * 20) / 20).toFixed(2)} step="0.05" .value=${live(time.toFixed(2))}
        aria-valuetext=${seconds(this, time, 2)} @input=${(e: Event) => { e.stopPropagation(); this.#player.seek(Number((e.target as HTMLInputElement).value)); }}></label>
      <output for="moment" aria-live="off">${main ? momentWords(this, main, time, study) : nothing}</output></div>`;
  }

  #renderTable(study: ThrowStudy): TemplateResult {
    const {table} = this.say(flightPathWords);
    return html`<div class="flights"><table><caption class="source">${table.caption}</caption>
      <thead><tr><th scope="col">${table.name}</th><th scope="col" class="number">${table.speed}</th><th scope="col" class="number">${table.distance}</th>
        <th scope="col" class="number">${table.time}</th><th scope="col" class="number">${table.top}</th></tr></thead>
      <tbody>${study.flown.map((one) => html`<tr><th scope="row">${one.noseMass === undefined ? nameOf(this, one.id, study) : fullNameOf(this, one, study)}</th>
        <td class="number">${speedWords(this, one.thrown.speed)}</td><td class="number">${distanceWords(this, one)}</td>
        <td class="number">${seconds(this, one.track.last.time)}</td><td class="number">${high(this, one.track.highest.height)}</td></tr>`)}</tbody></table></div>`;
  }

  protected renderQuestion(): TemplateResult {
    const words = this.say(flightPathWords);
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const chosen = this.#comparison;
    return html`<div class="fields">
      <div class="field choice" part="field"><label for="compare">${words.compare}</label><span class="q"><select id="compare" .value=${live(chosen)}
        @change=${(e: Event) => {
          const {value} = e.target as HTMLSelectElement;
          if (isComparison(value)) this._compared = value;
          this.dispatchEvent(new Event('change', {bubbles: true}));
        }}>${comparisons.map((one) => html`<option value=${one} ?selected=${one === chosen}>${words.comparisons[one]}</option>`)}</select></span></div>
      ${first.map(of)}
      ${this.good ? html`<p class="source empty">${plain(words.leftEmpty(handWords(this, this.good.right)))}</p>` : nothing}
      ${this.#renderCrooked()}
      ${this.fields.more(() => others.map(of))}
    </div>`;
  }

  #renderCrooked(): TemplateResult {
    const {crooked: words} = this.say(flightPathWords);
    const again = (): void => { this.requestUpdate(); };
    return html`<fieldset class="fields"><legend>${words.legend}</legend>
      ${this.state.design.tail.fins.count > 0 ? this.#fin.render(words.fin, again) : nothing}${this.#tip.render(words.tip, again)}${this.#twist.render(words.twist, again)}
      <p class="source empty">${words.note}</p></fieldset>`;
  }

  /** Only where its field is one of those shown here. */
  protected override besideAField(problem: Problem): boolean {
    return super.besideAField(problem) && shown.has(problem.path ?? '');
  }

  protected renderWorking(study: ThrowStudy): TemplateResult | undefined {
    return later(this, loadWorking)?.flightPathWorking(this, study);
  }
}
