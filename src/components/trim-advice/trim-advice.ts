import {html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {valueAt} from '../../calc/design/design.js';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import type {Change as Asked, DesignHandle} from '../../calc/design/store.js';
import {throwLimits} from '../../calc/flight-log/throw-check.js';
import {good, refused, type Outcome, type Problem} from '../../calc/problem.js';
import type {CauseId} from '../../calc/trim-advice/causes.js';
import type {Change, Values} from '../../calc/trim-advice/change.js';
import {sights, type Past, type Seen, type Sight} from '../../calc/trim-advice/seen.js';
import type {Next} from '../../calc/trim-advice/thread.js';
import {takenBack} from '../../calc/trim-advice/taken-back.js';
import {trimAdviceWords} from '../../messages/en/trim-advice.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {plain} from '../base/emphasis.js';
import {later} from '../base/later.js';
import {OwnField} from '../base/own-field.js';
import {heldUp} from './held-up.js';
import {trimAdviceStyles} from './styles.js';
import type {Advised, Told} from './told.js';

const shortNames = {
  masses: 'ballast.masses', tailAngle: 'arrangement.tailIncidence', wingAngle: 'arrangement.wingIncidence', mass: 'measured.mass', balance: 'measured.balance',
  span: 'wing.span', chord: 'wing.chord', noseToWing: 'arrangement.wingAt', noseToTail: 'arrangement.tailAt', speed: 'launch.speed', wind: 'launch.wind',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here. */
const notRead = /^(name$|board\.(length|width|margin|gap))/;
const others = [
  'ballast.masses', 'arrangement.tailIncidence', 'arrangement.wingIncidence', 'measured.mass', 'measured.balance', 'launch.speed', 'launch.wind',
] as const satisfies readonly DimensionPath[];

const isSight = (name: string | null | undefined): name is Sight => (sights as readonly unknown[]).includes(name);

const loadAdvising = () => import('./advising.js');
const loadDrawing = () => import('./drawn-sights.js');
const loadWorking = () => import('./working.js');

/** What has been told of the throws so far, and what was changed after each. */
export interface TrimAdviceDetail { readonly thread: readonly Past[] }

/**
 * What to change after a throw: the reader picks what the glider did, and is told what to try first in this glider's numbers, why, and what else may be
 * behind it; throw by throw, one change at a time, until two good glides in a row.
 *
 * @summary From what a throw looked like to the one change to make next.
 * @attr {string} seen - What the glider did: `good`, `dives`, `swoops`, `zooms`, `drops`, `left`, `right`, `rolls`, `wags` or `flutters`; left out, the reader says so.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @attr {string} tail-angle - The tailplane to the body, front edge up.
 * @attr {string} wing-angle - The wing to the body, front edge up.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @attr {string} speed - Of the hand; left out, as fast as the plane glides.
 * @attr {string} wind - Against the throw.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart question - The pictures to pick from, and the fields.
 * @csspart sight - One picture with its words.
 * @csspart button - Says what was done.
 * @csspart causes - Every cause with what mends it.
 * @csspart thread - The throws so far.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 * @fires {CustomEvent<TrimAdviceDetail>} glider-trim-advice - When a person has told of a throw or a change, or taken it back.
 */
export class GliderTrimAdvice extends Calculator<Advised> {
  static override readonly shortNames = shortNames;
  static override properties = {...Calculator.properties, ...shortProperties(shortNames), seen: {type: String}};
  static override styles = [...Calculator.styles, trimAdviceStyles];

  declare seen: Sight | null | undefined;
  declare masses: string | undefined;
  declare tailAngle: string | undefined;
  declare wingAngle: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;
  declare span: string | undefined;
  declare chord: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;
  declare speed: string | undefined;
  declare wind: string | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  readonly #distance = new OwnField(this, 'seen-distance', 'length', [throwLimits.distance.least, throwLimits.distance.most], undefined, () => (this.system === 'inch' ? 'ft' : 'm'));
  readonly #time = new OwnField(this, 'seen-time', 'time', [throwLimits.time.least, throwLimits.time.most]);
  #what: Sight | undefined;
  #near = false;
  #thread: readonly Told[] = [];
  /** Whose throws these are: of which design, and of which of the gliders that were put into it. */
  #glider: {readonly source: DesignHandle; readonly number: number | undefined} | undefined;
  /** What was taken back last had been changed elsewhere, so that the design was left alone. */
  #leftAlone = false;
  #told: {readonly key: string; readonly seen: Seen | undefined} = {key: '', seen: undefined};
  #kept: {readonly of: readonly unknown[]; readonly found: Outcome<Advised>} | undefined;

  /** The throws told so far, and what was changed after each: nothing where the plane was thrown again as it was. */
  get thread(): readonly Past[] { return this.#thread.map(pastOf); }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('design')) this.link.seek();
    this.#beginAnew();
    if (changed.has('seen')) this.#what = isSight(this.seen) ? this.seen : undefined;
    super.willUpdate(changed);
    // the remedy has a button of its own
    this.fields.found = this.fields.found.filter((problem) => !heldUp(problem));
  }

  /** Another glider: nothing that was told or changed of the one before has to do with it. */
  #beginAnew(): void {
    const {source, state: {gliders: number}} = this.link, before = this.#glider;
    // a design that has gone for a moment may come back
    if (!source || (before?.source === source && before.number === number)) return;
    this.#glider = {source, number};
    if (!before) return;
    this.#recall([], undefined);
    this.#what = isSight(this.seen) ? this.seen : undefined;
  }

  /** What draws the pictures is loaded when they come near. */
  protected override firstUpdated(changed: PropertyValues): void {
    super.firstUpdated(changed);
    const watching = new IntersectionObserver((entries) => {
      if (!entries.some((one) => one.isIntersecting)) return;
      watching.disconnect();
      this.#near = true;
      this.requestUpdate();
    }, {rootMargin: '400px'});
    watching.observe(this);
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (this.#near) later(this, loadDrawing)?.drawSights(this.renderRoot.querySelectorAll<SVGSVGElement>('svg[data-sight]'));
  }

  /** The last throw as it was told; the same object until something else is told. */
  get #seen(): Seen | undefined {
    const what = this.#what, distance = this.#distance.value, time = this.#time.value;
    const key = JSON.stringify([what, distance, time]);
    if (this.#told.key !== key) {
      this.#told = {key, seen: what && {what, ...(distance !== undefined && {distance}), ...(time !== undefined && {time})}};
    }
    return this.#told.seen;
  }

  protected work(): Outcome<Advised> {
    const advising = later(this, loadAdvising);
    if (!advising) return refused();
    const {design} = this.state, seen = this.#seen, thread = this.#thread;
    const of = [design, seen, thread];
    if (this.#kept?.of.every((one, i) => one === of[i])) return this.#kept.found;
    // a balance behind its limit is refused before anything was seen
    const advice = advising.adviceFor(design, seen ?? unseen, thread);
    const found = advice.ok ? good({advice: seen && advice.value, thread, design, study: advice.value.study}) : advice;
    this.#kept = {of, found};
    return found;
  }

  override render(): TemplateResult {
    if (later(this, loadAdvising) || this.link.status === 'missing' || this.link.status === 'seeking') return super.render();
    const words = this.say(trimAdviceWords);
    return html`<section class="card" part="card" aria-label=${words.heading}><div><h3 part="heading">${words.heading}</h3>
      <p class="answer" part="answer">${words.waiting}</p></div></section>`;
  }

  protected renderHeading(): string { return this.say(trimAdviceWords).heading; }

  protected answer({advice, thread, study}: Advised): Answer {
    const words = this.say(trimAdviceWords), advising = later(this, loadAdvising);
    if (!advising) return {sentence: words.waiting};
    if (advice) return advising.adviceAnswer(this, advice);
    const last = thread.at(-1);
    if (!last) return advising.beginAnswer(this, study);
    const {change, cause} = last;
    if (!change) return {sentence: words.thrownAgain};
    if (change.id === 'measure') return {sentence: words.measuredNow};
    const done = advising.changeWords(this, change, cause);
    return {sentence: isThrow(change) ? words.thrownSo(done) : words.changedNow(plain(done))};
  }

  /** What comes before any throw is the answer of today, with its remedy. */
  protected override verdict(problems: readonly Problem[]): Answer | undefined {
    const held = problems.find(heldUp);
    if (!held) return undefined;
    return later(this, loadAdvising)?.heldAnswer(this, held, this.#what) ?? {sentence: this.say(trimAdviceWords).waiting};
  }

  /** The pictures are what is asked. */
  protected renderPicture(): TemplateResult { return html``; }

  protected renderQuestion(): TemplateResult {
    const words = this.say(trimAdviceWords);
    const again = (): void => { this.requestUpdate(); };
    return html`<p class="left-alone" role="status">${this.#leftAlone ? words.leftAlone : nothing}</p>${this.#renderRemedy()}
      <fieldset class="sights"><legend>${words.legend}</legend>${sights.map((what) => this.#renderSight(what))}</fieldset>
      ${this.#renderButtons()}
      <fieldset class="fields measured"><legend>${words.measured}</legend>${this.#distance.render(words.distance, again)}${this.#time.render(words.time, again)}</fieldset>
      <div class="fields">${this.fields.more(() => others.map((path) => this.fields.of(path, {disabled: this.locked(path)})))}</div>
      <p class="caution">${words.caution}</p>`;
  }

  #renderSight(what: Sight): TemplateResult {
    return html`<label class="sight" part="sight"><input type="radio" name="sight" value=${what} .checked=${live(this.#what === what)} @change=${() => {
      this.#what = what;
      this.#leftAlone = false;
      this.requestUpdate();
      this.dispatchEvent(new Event('change', {bubbles: true}));
    }}><svg data-sight=${what} viewBox="0 0 72 44" aria-hidden="true"></svg><span>${this.say(trimAdviceWords).sights[what]}</span></label>`;
  }

  /** What comes before any advice, to be said done. */
  #renderRemedy(): TemplateResult | typeof nothing {
    const {result} = this;
    if (result.ok || !result.problems.some(heldUp)) return nothing;
    return later(this, loadAdvising)?.remedyButton(this, result.problems, (values, said) => html`<p class="do-it">${
      this.#free(values) ? html`<button type="button" class="main" part="button" @click=${() => {
        this.#apply(values);
        void this.readOn();
      }}>${said}</button>` : nothing}</p>`) ?? nothing;
  }

  #renderButtons(): TemplateResult {
    const words = this.say(trimAdviceWords), {result} = this;
    const advice = result.ok ? result.value.advice : undefined;
    const first = advice?.next === 'change' ? advice.first : undefined;
    return html`<p class="do-it">${first ? html`<button type="button" class="main" part="button" @click=${() => { this.#tell({change: first.change, cause: first.cause.id}); }}>${first.change.id === 'measure' ? words.measuredIt : isThrow(first.change) ? words.throwSo : words.changedIt}</button>` : nothing}${
      advice && (advice.next !== 'stop' || practises(advice)) ? html`<button type="button" class=${first ? '' : 'main'} part="button" @click=${() => { this.#tell(); }}>${words.threwAgain}</button>` : nothing}</p>`;
  }

  protected override renderTakeaway({advice}: Advised, result: Outcome<Advised>): TemplateResult {
    return html`<div class="advised">
      ${advice && result.ok ? later(this, loadAdvising)?.causeList(this, advice, (change, cause) => { this.#tell({change, cause}); }) : nothing}
      ${this.#renderThread()}</div>`;
  }

  #renderThread(): TemplateResult | typeof nothing {
    if (this.#thread.length === 0) return nothing;
    const words = this.say(trimAdviceWords), advising = later(this, loadAdvising);
    return html`<section aria-label=${words.thread}><h4>${words.thread}</h4><ol class="thread" part="thread">${this.#thread.map(({seen, change, cause}) => html`<li>${this.#sightWords(seen)}
      <span class="how">→ ${change && advising ? plain(advising.changeWords(this, change, cause)) : words.thrown}</span></li>`)}</ol>
      <p class="back"><button type="button" part="button" @click=${() => { this.#takeBack(); }}>${words.takeBack}</button>
        <button type="button" part="button" @click=${() => { this.#leftAlone = false; this.#become([], undefined); }}>${words.startOver}</button></p></section>`;
  }

  #sightWords({what, distance, time}: Seen): string {
    const words = this.say(trimAdviceWords);
    return [
      words.sights[what],
      ...distance === undefined ? [] : [words.flew(this.write(distance, 'length', {unit: this.system === 'inch' ? 'ft' : 'm', digits: 1}))],
      ...time === undefined ? [] : [words.lasted(this.write(time, 'time', {digits: 1}))],
    ].join(', ');
  }

  /** Whether a reader may change all of it. */
  #free(values: Values): boolean { return (Object.keys(values) as DimensionPath[]).every((path) => !this.locked(path)); }

  /** Asks the design for it, in one revision. */
  #apply(values: Values): void {
    this.ask((Object.keys(values) as DimensionPath[]).map((path): Asked => ({path, value: values[path]})));
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  /** Keeps the throw with what was done after it, in the design too where a dimension says it, and waits for the next one. */
  #tell(done?: {readonly change: Change; readonly cause: CauseId}): void {
    const seen = this.#seen;
    if (!seen) return;
    const {design} = this.state;
    const {values: wanted = {}} = done?.change ?? {};
    const values = this.#free(wanted) ? wanted : {};
    const before: Values = Object.fromEntries((Object.keys(values) as DimensionPath[]).map((path) => [path, valueAt(design, path)]));
    const right = this.result.ok ? this.result.value.advice?.study.right.speed : undefined;
    this.#leftAlone = false;
    this.#become([...this.#thread, {seen, before, set: values, ...(right !== undefined && {right}), ...(done && {changed: done.change.id, ...done})}], undefined);
    this.#apply(values);
  }

  /** The last throw is open again, and its change undone: that alone, and only where it still stands. */
  #takeBack(): void {
    const last = this.#thread.at(-1);
    if (!last) return;
    const {design, refused} = this.state;
    const back = Object.keys(last.set).some((path) => path in refused) ? undefined : takenBack(design, last);
    this.#leftAlone = back === undefined;
    this.#become(this.#thread.slice(0, -1), last.seen);
    if (back) this.#apply(back);
  }

  #recall(thread: readonly Told[], seen: Seen | undefined): void {
    this.#thread = thread;
    this.#what = seen?.what;
    this.#distance.set(seen?.distance);
    this.#time.set(seen?.time);
  }

  #become(thread: readonly Told[], seen: Seen | undefined): void {
    this.#recall(thread, seen);
    this.requestUpdate();
    this.dispatchEvent(new CustomEvent<TrimAdviceDetail>('glider-trim-advice', {detail: {thread: this.thread}, bubbles: true, composed: true}));
    // the button that was pressed may be gone
    void this.updateComplete.then(() => { this.renderRoot.querySelector<HTMLElement>('.sight input:checked, .sight input')?.focus({preventScroll: true}); });
  }

  protected override besideAField(problem: Problem): boolean { return !heldUp(problem) && super.besideAField(problem); }

  protected renderWorking(advised: Advised): TemplateResult | undefined {
    return later(this, loadWorking)?.trimAdviceWorking(this, advised);
  }
}

const unseen: Seen = {what: 'good'};

/** What is done with the next throw, and not at the bench before it. */
const isThrow = ({id}: Change): boolean => id === 'throw' || id === 'calm';

/** Whether a plane that is changed no more is thrown on, for the hand to learn it. */
const practises = ({because}: Next): boolean => because === 'unsteady' || because === 'either-way';

const pastOf = ({seen, changed, cause, right}: Told): Past => ({seen, ...(changed && {changed}), ...(cause && {cause}), ...(right !== undefined && {right})});
