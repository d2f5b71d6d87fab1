import {css, html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {balancePlan, type BalancePlan, type WeightsAtHand} from '../../calc/balance/balance-plan.js';
import {pieceOf} from '../../calc/balance/pieces.js';
import {withMore} from '../../calc/balance/with-more.js';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import type {Outcome} from '../../calc/problem.js';
import type {BalancePicture} from '../../drawing/figures/balance.js';
import {balanceWords} from '../../messages/en/balance.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {plain} from '../base/emphasis.js';
import {explain} from '../base/explain.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import type * as Picturing from './picture.js';
import {near} from '../base/near.js';
import {adviceWords, doing, nowWords, otherWays, targetWords, thenOf} from './sentences.js';
import {weightChoices, type WeightChoices} from './weights.js';

const shortNames = {
  span: 'wing.span', chord: 'wing.chord', tipChord: 'wing.tipChord', sweep: 'wing.sweep', tailSpan: 'tail.span', tailChord: 'tail.chord',
  bodyLength: 'body.length', noseToWing: 'arrangement.wingAt', noseToTail: 'arrangement.tailAt', sheetMass: 'board.sheetMass',
  mass: 'measured.mass', balance: 'measured.balance', masses: 'ballast.masses', weightAt: 'ballast.at',
  marginLow: 'balance.marginLow', marginHigh: 'balance.marginHigh',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here: how the camber is propped, how the sheet is laid out, and the throw. */
const notRead = /^(name$|wing\.(stack|prop|fold|camber|groove)|board\.(margin|gap)|built\.(?!tip)|launch\.|air\.)/;

/** The fields behind the few that most readers need, in three groups. */
const groups = {
  weighs: ['board.sheetMass', 'board.arealMass', 'wing.weighed', 'body.weighed', 'tail.weighed', 'wing.peeled', 'glue.bead', 'glue.bands', 'glue.tape'],
  size: ['wing.span', 'wing.chord', 'wing.tipChord', 'wing.sweep', 'tail.span', 'tail.chord', 'tail.fins.count', 'tail.fins.height', 'body.length', 'body.height', 'arrangement.tailAt'],
  steady: ['balance.marginLow', 'balance.marginHigh'],
} as const satisfies Readonly<Record<string, readonly DimensionPath[]>>;

const first = ['ballast.at', 'arrangement.wingAt', 'measured.mass', 'measured.balance', 'ballast.masses'] as const satisfies readonly DimensionPath[];


const loadWorking = () => import('./working.js');

/**
 * The balance point: from the masses of the parts or from one measured balance to where the plane balances, where it should, and what to do:
 * which weights go where, how far to slide the wing, or what to take off.
 *
 * @summary Where a glider balances, where it should, and which weights put it right.
 * @attr {string} pieces - Weights at hand, space-separated: coins (`eur-5c`), washers (`m8`), `clay`, `grams`.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} tip-chord - The same at the tip.
 * @attr {string} sweep - How far the tip's front edge lies behind the middle's.
 * @attr {string} tail-span - Tip to tip of the tailplane.
 * @attr {string} tail-chord - Front edge to rear edge of the tailplane.
 * @attr {string} body-length - Nose to the end of the body.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @attr {string} sheet-mass - What a whole sheet of the board weighs.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @attr {string} weight-at - Where a weight can go, behind the nose.
 * @attr {string} margin-low - The least static margin that is wanted.
 * @attr {string} margin-high - The largest.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart ways - The other ways to the same balance.
 * @csspart button - A button that changes the plane.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderBalancePoint extends Calculator<BalancePlan> {
  static override readonly shortNames = shortNames;
  static override properties = {
    ...Calculator.properties, ...shortProperties(shortNames), pieces: {type: String},
    _chosen: {state: true, attribute: false}, _count: {state: true, attribute: false},
  };

  static override styles = [...Calculator.styles, css`
    .ways { margin: .4rem 0 0; padding-inline-start: 1.1rem; font-size: .95em; max-inline-size: 68ch; display: grid; gap: .15rem; }
    .ways::marker, .ways li::marker { color: var(--_soft); }
    .buttons { display: flex; flex-wrap: wrap; gap: .5rem .7rem; margin: .8rem 0; }
    .buttons:empty { display: none; }
  `];

  declare pieces: string | undefined;
  declare span: string | undefined;
  declare chord: string | undefined;
  declare tipChord: string | undefined;
  declare sweep: string | undefined;
  declare tailSpan: string | undefined;
  declare tailChord: string | undefined;
  declare bodyLength: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;
  declare sheetMass: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;
  declare masses: string | undefined;
  declare weightAt: string | undefined;
  declare marginLow: string | undefined;
  declare marginHigh: string | undefined;
  /** What the reader chose from the weights at hand; until then, the first of them. */
  declare protected _chosen: string | undefined;
  declare protected _count: number | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  #atHand: WeightsAtHand = {};
  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<BalancePicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawBalance;
    },
    data: () => this.good && this.#picturing?.balancePicture(this, this.good),
    handles: (picture) => this.#picturing?.balanceHandles(this, picture) ?? [],
  }, this.fields);

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('pieces')) this._chosen = undefined;
    super.willUpdate(changed);
  }

  protected work(): Outcome<BalancePlan> { return balancePlan(this.state.design, this.#weightsAtHand()); }

  get #choices(): WeightChoices { return weightChoices(this.pieces, this.speech); }

  get #choice(): string {
    const {pieces, loose, first} = this.#choices;
    const {_chosen: chosen} = this;
    return chosen !== undefined && (pieces.some(({id}) => id === chosen) || (loose as readonly string[]).includes(chosen)) ? chosen : first;
  }

  /** The same object while the choice is the same, so that the plan is worked out once. */
  #weightsAtHand(): WeightsAtHand {
    const piece = pieceOf(this.#choice);
    const count = piece && this._count;
    if (this.#atHand.piece !== piece || this.#atHand.count !== count) this.#atHand = {...(piece && {piece}), ...(count !== undefined && {count})};
    return this.#atHand;
  }

  protected renderHeading(): string { return this.say(balanceWords).heading; }
  protected answer(plan: BalancePlan): Answer { return adviceWords(this, plan, this.#choice); }

  protected renderQuestion(): TemplateResult {
    const words = this.say(balanceWords);
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const group = (name: keyof typeof groups): TemplateResult => html`<details class="more" ?open=${groups[name].some((path) => this.#troubled(path))}>
      <summary>${words.groups[name]}</summary><div class="fields">${groups[name].map(of)}</div></details>`;
    return html`<div class="fields">
      ${this.#renderChoices()}
      ${first.map(of)}
      ${group('weighs')}${group('size')}${group('steady')}
    </div>`;
  }

  #troubled(path: DimensionPath): boolean {
    const {refused, problems} = this.state;
    return path in refused || [...problems, ...this.fields.found].some((problem) => problem.path === path);
  }

  #renderChoices(): TemplateResult {
    const words = this.say(balanceWords);
    const {pieces, loose} = this.#choices;
    const choice = this.#choice;
    const option = (id: string, label: string): TemplateResult => html`<option value=${id} ?selected=${id === choice}>${label}</option>`;
    const counts = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20];
    return html`<div class="field choice" part="field"><label for="pieces">${words.atHand}</label><span class="q"><select id="pieces" .value=${live(choice)}
        @change=${(e: Event) => { this._chosen = (e.target as HTMLSelectElement).value; this.#committed(); }}>
        ${pieces.map(({id}) => option(id, words.piece(id, 2)))}
        ${loose.map((id) => option(id, id === 'clay' ? words.anyClay : words.anyMass))}</select></span></div>
      ${pieceOf(choice) ? html`<div class="field choice" part="field"><label for="count">${words.howMany}</label><span class="q"><select id="count" .value=${live(String(this._count ?? ''))}
        @change=${(e: Event) => { const {value} = e.target as HTMLSelectElement; this._count = value === '' ? undefined : Number(value); this.#committed(); }}>
        <option value="" ?selected=${this._count === undefined}>${words.asNeeded}</option>
        ${counts.map((n) => html`<option value=${n} ?selected=${n === this._count}>${n}</option>`)}</select></span></div>` : nothing}`;
  }

  #committed(): void { this.dispatchEvent(new Event('change', {bubbles: true})); }

  protected renderPicture(plan: BalancePlan): TemplateResult {
    const words = this.say(balanceWords);
    const {remedy, advice, lightened, slide, design} = plan;
    const ways = otherWays(this, plan, this.#choice);
    return html`${this.#figure.render(this.#pictureName(plan))}
      ${remedy.ok ? nothing : html`<p class="problem" part="problem">${remedy.problems.map((problem) => explain(this, problem)).join(' ')}</p>`}
      ${plan.whole && !plan.whole.ok ? html`<p class="problem" part="problem">${plan.whole.problems.map((problem) => explain(this, problem)).join(' ')}</p>` : nothing}
      ${ways.length === 0 ? nothing : html`<ul class="ways" part="ways">${ways.map((way) => html`<li>${way}</li>`)}</ul>`}
      <p class="buttons">
        ${(advice ?? thenOf(plan)) && !this.locked('ballast.masses') ? html`<button type="button" part="button" @click=${() => { this.#fit(plan); }}>${
          lightened.off.length === 0 ? words.fit : advice ? words.changeNow : words.takeNow}</button>` : nothing}
        ${slide?.ok && !this.locked('arrangement.wingAt') ? html`<button type="button" part="button" @click=${() => { this.#ask('arrangement.wingAt', slide.value.wingAt); }}>${words.slideNow}</button>` : nothing}
        ${design.ballast.masses.length > 0 && !this.locked('ballast.masses') ? html`<button type="button" part="button" @click=${() => { this.#ask('ballast.masses', []); }}>${words.clear}</button>` : nothing}
      </p><p class="caution">${words.caution}</p>`;
  }

  /** Takes off and fits what is advised: from now on these are the plane's weights. */
  #fit({advice, lightened}: BalancePlan): void {
    const {masses} = lightened.design.ballast;
    this.#ask('ballast.masses', advice ? withMore(masses, advice.mass, advice.place) : masses);
  }

  #ask(path: DimensionPath, value: Parameters<typeof this.askFor>[1]): void {
    this.askFor(path, value);
    this.#committed();
    void this.readOn();
  }

  protected renderWorking(plan: BalancePlan): TemplateResult | undefined {
    return later(this, loadWorking)?.balanceWorking(this, plan);
  }

  #pictureName(plan: BalancePlan): string {
    const words = this.say(balanceWords);
    const {plane} = plan, then = thenOf(plan);
    const name = words.picture({now: nowWords(this, plane, plane.behindWing), target: targetWords(this, plane)});
    return then ? `${name} ${words.pictureChange({doing: plain(doing(this, plan, this.#choice)), then: near(this, then.behindWing)})}` : name;
  }
}
