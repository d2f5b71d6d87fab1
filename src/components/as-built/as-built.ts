import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {AsBuiltStudy} from '../../calc/as-built/study.js';
import {valueAt} from '../../calc/design/design.js';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import {refused, type Outcome} from '../../calc/problem.js';
import type {AsBuiltPicture} from '../../drawing/figures/as-built.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import type {Ticks} from './card.js';
import type * as Picturing from './picture.js';
import {asBuiltStyles} from './styles.js';
import {Weighing} from './weighing.js';

const shortNames = {
  hollow: 'built.hollow', tipLeft: 'built.tipLeft', tipRight: 'built.tipRight', tailFront: 'built.tailFront', tailRear: 'built.tailRear',
  leftTipToTail: 'built.leftTipToTail', rightTipToTail: 'built.rightTipToTail', bow: 'built.bow', mass: 'measured.mass', balance: 'measured.balance',
  masses: 'ballast.masses', tailAngle: 'arrangement.tailIncidence', span: 'wing.span', chord: 'wing.chord', noseToWing: 'arrangement.wingAt', noseToTail: 'arrangement.tailAt',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here. */
const notRead = /^(name$|launch\.(speed|angle|pitch)|board\.(length|width|margin|gap))/;

const groups = {
  wing: ['built.hollow', 'built.tipLeft', 'built.tipRight'],
  tail: ['built.tailFront', 'built.tailRear'],
  straight: ['built.leftTipToTail', 'built.rightTipToTail', 'built.bow'],
  weight: ['measured.mass', 'measured.balance'],
} as const satisfies Readonly<Record<string, readonly DimensionPath[]>>;

const others = ['built.wingFront', 'built.wingRear'] as const satisfies readonly DimensionPath[];

const loadReckoning = () => import('./reckoning.js');
const loadWorking = () => import('./working.js');

/**
 * What was measured on the finished plane takes the place of what was planned, in this answer and in every other about how the plane flies: the hollow under a
 * ruler, tips over the bench, the edges of the tail, tip to tail, the bow of the body, weight and balance. With a card to tick before the first throw: how true is true enough.
 *
 * @summary Measurements on the finished plane, what they do, and how true is true enough.
 * @attr {string} hollow - Depth of the wing's hollow over a ruler laid from front edge to rear edge.
 * @attr {string} tip-left - The left tip's lower edge over the bench, the middle lying flat.
 * @attr {string} tip-right - The same on the right.
 * @attr {string} tail-front - The tailplane's front edge over the body's upper edge.
 * @attr {string} tail-rear - Its rear edge.
 * @attr {string} left-tip-to-tail - From the left tip's rear corner to the middle of the tail's rear edge.
 * @attr {string} right-tip-to-tail - The same on the right.
 * @attr {string} bow - How far the tail end stands to the right of a straight body.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @attr {string} tail-angle - The tailplane as planned, front edge up.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart truth - The card to tick before the first throw.
 * @csspart tick - A box of that card.
 * @csspart question - The fields.
 * @csspart button - A button that changes what was measured.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderAsBuilt extends Calculator<AsBuiltStudy> {
  static override readonly shortNames = shortNames;
  static override properties = {...Calculator.properties, ...shortProperties(shortNames)};
  static override styles = [...Calculator.styles, asBuiltStyles];

  declare hollow: string | undefined;
  declare tipLeft: string | undefined;
  declare tipRight: string | undefined;
  declare tailFront: string | undefined;
  declare tailRear: string | undefined;
  declare leftTipToTail: string | undefined;
  declare rightTipToTail: string | undefined;
  declare bow: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;
  declare masses: string | undefined;
  declare tailAngle: string | undefined;
  declare span: string | undefined;
  declare chord: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  readonly #ticks: Ticks = new Set();
  readonly #weighing = new Weighing(this);
  /** Whose readings these are: of which design, and of which of the gliders that were put into it. */
  #glider: {readonly source: unknown; readonly gliders: number | undefined} | undefined;
  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<AsBuiltPicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawAsBuilt;
    },
    data: () => this.good && this.#picturing?.asBuiltPicture(this, this.good),
    height: (width) => Math.round(width < 680 ? 330 + width * 0.9 : 400),
  }, this.fields);

  protected work(): Outcome<AsBuiltStudy> {
    // without it there is nothing wrong, only nothing to say yet
    const reckoning = later(this, loadReckoning);
    return reckoning?.asBuiltStudy(this.state.design, this.system === 'inch' ? reckoning.inchSteps : reckoning.metricSteps) ?? refused();
  }

  override render(): TemplateResult {
    if (later(this, loadReckoning) || this.link.status === 'missing' || this.link.status === 'seeking') return super.render();
    const words = this.say(asBuiltWords);
    return html`<section class="card" part="card" aria-label=${words.heading}><div><h3 part="heading">${words.heading}</h3>
      <p class="answer" part="answer">${words.waiting}</p></div></section>`;
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    const {source, state: {gliders}} = this.link, before = this.#glider;
    if (before && (before.source !== source || before.gliders !== gliders)) this.#weighing.forget();
    this.#glider = {source, gliders};
    // a measurement that cannot be stands beside its field, and the plan counts
    const {result} = this;
    if (result.ok) this.fields.found = result.value.built.problems;
  }

  protected renderHeading(): string { return this.say(asBuiltWords).heading; }

  protected answer(study: AsBuiltStudy): Answer {
    return later(this, loadReckoning)?.asBuiltAnswer(this, study) ?? {sentence: this.say(asBuiltWords).waiting};
  }

  protected renderPicture(study: AsBuiltStudy): TemplateResult {
    const words = this.say(asBuiltWords);
    return html`${this.#figure.render(words.picture({measured: study.built.counted.length}))}
      <p class="caution">${words.caution}</p>`;
  }

  /** The card goes along to the field. */
  protected override renderTakeaway(study: AsBuiltStudy): TemplateResult {
    return html`${later(this, loadReckoning)?.card(this, study, this.#ticks)}`;
  }

  protected renderQuestion(): TemplateResult {
    const words = this.say(asBuiltWords);
    const reckoning = later(this, loadReckoning);
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path), fine: path.startsWith('built.')});
    const {design} = this.state;
    return html`<div class="fields">
      ${(Object.keys(groups) as (keyof typeof groups)[]).map((name) => html`<fieldset class="fields"><legend>${words.groups[name]}</legend>
        ${name === 'weight' && reckoning ? html`${this.#weighing.render(reckoning.lever)}<h4 class="group">${words.form.kept}</h4>` : nothing}
        ${groups[name].map(of)}
        ${name === 'tail' ? this.fields.more(() => others.map(of)) : nothing}
      </fieldset>`)}
      <button type="button" part="button" class="forget" ?disabled=${!reckoning?.measurements.some((path) => valueAt(design, path) !== undefined && !this.locked(path))}
        @click=${() => { this.#forget(reckoning?.measurements ?? []); }}>${words.forget}</button>
    </div>`;
  }

  #forget(measurements: readonly DimensionPath[]): void {
    this.#weighing.forget();
    this.ask(measurements.filter((path) => !this.locked(path)).map((path) => ({path, value: undefined})));
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  protected renderWorking(study: AsBuiltStudy): TemplateResult | undefined {
    return later(this, loadWorking)?.asBuiltWorking(this, study);
  }
}
