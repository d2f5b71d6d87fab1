import {css, html, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {leftAsMeasured} from '../../calc/as-built/carry.js';
import type {Stack} from '../../calc/bench/stack.js';
import {usualPacking} from '../../calc/bench/stack.js';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import {checkValue} from '../../calc/design/read-dimension.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {Change} from '../../calc/design/store.js';
import type {Edge, ShimStudy, SlipPlacing, Surface} from '../../calc/flight/slips.js';
import {refused, type Outcome, type Problem} from '../../calc/problem.js';
import type {TailShimPicture} from '../../drawing/figures/tail-shim.js';
import {dimensionWords} from '../../messages/en/dimensions.js';
import {tailShimWords} from '../../messages/en/tail-shim.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {explain} from '../base/explain.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import {OwnField} from '../base/own-field.js';
import {slipWords} from '../base/slip.js';
import type * as Picturing from './picture.js';
import {shimAnswer} from './sentences.js';

const shortNames = {
  tailAngle: 'arrangement.tailIncidence', wingAngle: 'arrangement.wingIncidence', tailChord: 'tail.chord', chord: 'wing.chord', thickness: 'board.thickness',
  masses: 'ballast.masses', mass: 'measured.mass', balance: 'measured.balance', span: 'wing.span', noseToWing: 'arrangement.wingAt', noseToTail: 'arrangement.tailAt',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here. */
const notRead = /^(name$|launch\.|built\.(bow|leftTip|rightTip)|board\.(length|width|margin|gap))/;
const first = ['arrangement.tailIncidence', 'arrangement.wingIncidence'] as const satisfies readonly DimensionPath[];
const incidence = {tail: first[0], wing: first[1]} as const;
const others = ['tail.chord', 'wing.chord', 'board.thickness', 'ballast.masses', 'measured.mass', 'measured.balance', 'arrangement.wingAt'] as const satisfies readonly DimensionPath[];
const surfaces = ['tail', 'wing'] as const satisfies readonly Surface[];
const edges = {tail: ['built.tailFront', 'built.tailRear'], wing: ['built.wingFront', 'built.wingRear']} as const satisfies Readonly<Record<Surface, readonly DimensionPath[]>>;

const loadSlips = () => import('../../calc/flight/slips.js');
const loadWorking = () => import('./working.js');

/**
 * The tailplane, or the wing, on slips of board, card and paper: from the stack, the edge heights as measured or a speed wanted to the angle, and what the plane does with it.
 *
 * @summary From slips under the tail to its angle, the speed and the glide, and back.
 * @attr {string} under - What the slips are under: `tail` or `wing`.
 * @attr {string} tail-angle - The tailplane to the body, front edge up.
 * @attr {string} wing-angle - The wing to the body, front edge up.
 * @attr {string} tail-chord - Front edge to rear edge of the tailplane.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} thickness - Thickness of the board.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart button - Sets the tail for a speed, or makes a plan of what was measured.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderTailShim extends Calculator<ShimStudy> {
  static override readonly shortNames = shortNames;
  static override properties = {...Calculator.properties, ...shortProperties(shortNames), under: {type: String}, _surface: {state: true, attribute: false}};

  static override styles = [...Calculator.styles, css`
    fieldset.fields { grid-column: 1 / -1; margin-block: .6rem; }
    .fields button { min-block-size: 2.75rem; grid-column: 1 / -1; justify-self: start; }
  `];

  declare under: string | undefined;
  declare protected _surface: Surface | undefined;
  declare tailAngle: string | undefined;
  declare wingAngle: string | undefined;
  declare tailChord: string | undefined;
  declare chord: string | undefined;
  declare thickness: string | undefined;
  declare masses: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;
  declare span: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  readonly #width = new OwnField(this, 'slip-width', 'length', [1e-3, 0.2], 0.01);
  readonly #touches = new OwnField(this, 'slip-touches', 'length', [1e-3, 0.5]);
  readonly #overhang = new OwnField(this, 'slip-overhang', 'length', [0, 0.1], 0);
  readonly #wanted = new OwnField(this, 'speed-wanted', 'speed', [0.1, 40]);
  #asked: readonly Problem[] = [];
  /** The edge last chosen to be raised, for a stack that is still to come. */
  #edge: Edge = 'rear';
  #kept: {readonly design: GliderDesign; readonly key: string; readonly study: Outcome<ShimStudy>} | undefined;
  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<TailShimPicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawTailShim;
    },
    data: () => this.good && this.#picturing?.tailShimPicture(this, this.good),
  }, this.fields);

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('under')) this._surface = undefined;
    super.willUpdate(changed);
    // heights that cannot be stand beside their fields, and the plan counts there
    const slips = later(this, loadSlips);
    if (this.result.ok && slips) this.fields.found = slips.asBuilt(this.state.design).problems;
  }

  /** A change of the plan leaves what was measured as it was measured. */
  override ask(changes: readonly Change[]): void {
    const {design, texts} = this.state;
    const held = Object.entries(leftAsMeasured(design, changes.map(({path}) => path))) as [DimensionPath, number][];
    super.ask([...changes, ...held.map(([path, value]) => ({path, value, ...(texts[path] !== undefined && {text: texts[path]})}))]);
  }

  get #surface(): Surface { return this._surface ?? (this.under === 'wing' ? 'wing' : 'tail'); }

  /** How the slips lie. */
  get placing(): SlipPlacing {
    const touches = this.#touches.value;
    return {place: touches === undefined ? {width: this.#width.value ?? 0.01} : {fromPivot: touches}, overhang: this.#overhang.value ?? 0};
  }

  protected work(): Outcome<ShimStudy> {
    const slips = later(this, loadSlips);
    if (!slips) return refused();
    const {design} = this.state, {placing} = this;
    const key = JSON.stringify([this.#surface, placing, this.#step]);
    if (this.#kept?.design !== design || this.#kept.key !== key) this.#kept = {design, key, study: slips.shimStudy(design, this.#surface, placing, this.#step)};
    return this.#kept.study;
  }

  override render(): TemplateResult {
    if (later(this, loadSlips) || this.link.status === 'missing' || this.link.status === 'seeking') return super.render();
    const words = this.say(tailShimWords);
    return html`<section class="card" part="card" aria-label=${words.heading}><div><h3 part="heading">${words.heading}</h3>
      <p class="answer" part="answer">${words.waiting(this.write(this.state.design.arrangement.tailIncidence, 'angle'))}</p></div></section>`;
  }

  protected renderHeading(): string { return this.say(tailShimWords).heading; }

  /** An angle with the front edge up or down. */
  angleWords(angle: number): string {
    const words = this.say(tailShimWords);
    const size = this.write(Math.abs(angle), 'angle');
    return angle === 0 ? size : angle > 0 ? words.up(size) : words.down(size);
  }

  /** A length as small as a slip is high. */
  fine(value: number): string { return slipWords(this, value); }

  /** What a slip may be higher: a millimetre, or 1/32 in. */
  get #step(): number { return this.system === 'inch' ? 0.0254 / 32 : 1e-3; }

  stackWords({boards, cards, papers}: Stack): string { return this.say(tailShimWords).series(boards, cards, papers); }

  protected answer(study: ShimStudy): Answer { return shimAnswer(this, study, this.#step / 2); }

  protected renderPicture({surface, now: board}: ShimStudy): TemplateResult {
    const words = this.say(tailShimWords);
    return html`${this.#figure.render(board.raised ? words.picture({surface, angle: this.angleWords(board.angle), height: this.fine(board.height)}) : words.pictureFlat(surface))}
      <p class="caution">${words.caution}</p>`;
  }

  protected renderQuestion(): TemplateResult {
    const words = this.say(tailShimWords);
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const {good} = this, slips = later(this, loadSlips), {design} = this.state;
    const stack = good?.planned.stack ?? {boards: 0, cards: 0, papers: 0}, raised = good?.planned.raised ?? this.#edge;
    /** Beside what was measured, what belongs to the plan says so. */
    const planned = (surface: Surface): boolean => slips?.measuredAngle(design, surface) !== undefined;
    const again = (): void => { this.requestUpdate(); };
    const setting = this.#settingWanted();
    return html`<div class="fields">
      ${this.#select('surface', words.surface, this.#surface, Object.entries(words.surfaces), (value) => { this._surface = value === 'wing' ? 'wing' : 'tail'; })}
      ${surfaces.map((surface, i) => this.fields.of(first[i] ?? first[0], {
        disabled: this.locked(first[i] ?? first[0]), ...(planned(surface) && {label: words.planned(this.say(dimensionWords)[first[i] ?? first[0]].label)}),
      }))}
      <fieldset class="fields"><legend>${planned(this.#surface) ? words.planned(words.stackLegend) : words.stackLegend}</legend>
        ${this.#select('edge', words.under, raised, Object.entries(words.edges), (value) => {
          this.#edge = value === 'front' ? 'front' : 'rear';
          this.#setStack(stack, this.#edge);
        })}
        ${(['boards', 'cards', 'papers'] as const).map((name) => this.#select(`stack-${name}`, words[name], String(stack[name]), counts(stack[name]),
          (value) => { this.#setStack({...stack, [name]: Number(value)}, raised); }))}
        ${this.#width.render(words.width, again)}${this.#touches.render(words.touches, again)}${this.#overhang.render(words.overhang, again)}
        ${this.#said()}
      </fieldset>
      <fieldset class="fields"><legend>${words.edgeLegend}</legend>
        ${edges[this.#surface].map((path, i) => this.fields.of(path, {disabled: this.locked(path), fine: true, label: i === 0 ? words.frontHeight : words.rearHeight}))}
        ${good?.better && good.slips ? html`<button type="button" part="button" ?disabled=${this.locked(incidence[this.#surface])} @click=${() => { this.#planSo(good); }}>${words.planSo}</button>` : nothing}
      </fieldset>
      <fieldset class="fields"><legend>${words.speedLegend}</legend>
        ${this.#wanted.render(words.wanted, again, setting && !setting.ok ? setting.problems[0] : undefined)}
        <button type="button" part="button" ?disabled=${!setting?.ok || this.locked('arrangement.tailIncidence')} @click=${() => { this.#setForSpeed(); }}>${words.setFor}</button>
      </fieldset>
      ${this.fields.more(() => others.map(of))}
    </div>`;
  }

  #select(id: string, label: string, chosen: string, options: readonly (readonly [value: string, label: string])[], choose: (value: string) => void): TemplateResult {
    return html`<div class="field" part="field"><label for=${id}>${label}</label><span class="q"><select id=${id} .value=${live(chosen)} @change=${(e: Event) => {
      choose((e.target as HTMLSelectElement).value);
      this.requestUpdate();
      this.dispatchEvent(new Event('change', {bubbles: true}));
    }}>${options.map(([value, name]) => html`<option value=${value} ?selected=${value === chosen}>${name}</option>`)}</select></span></div>`;
  }

  /** What a stack asked for could not be. */
  #said(): TemplateResult | typeof nothing {
    return this.#asked.length === 0 ? nothing : html`<p class="problem" part="problem">${this.#asked.map((problem) => explain(this, problem)).join(' ')}</p>`;
  }

  #setStack({boards, cards, papers}: Pick<Stack, 'boards' | 'cards' | 'papers'>, under: Edge): void {
    const slips = later(this, loadSlips);
    if (!slips) return;
    const {design} = this.state;
    const height = boards * design.board.thickness + cards * usualPacking.card + papers * usualPacking.paper;
    this.#take(slips.angleOnSlips(slips.chordOf(design, this.#surface), height, under, this.placing));
  }

  /** How the tail has to be set for the speed wanted, or why it cannot be; nothing while none is wanted. */
  #settingWanted(): Outcome<number> | undefined {
    const {value, wrong} = this.#wanted, slips = later(this, loadSlips);
    if (value === undefined || wrong || !slips) return undefined;
    const setting = slips.tailSettingFor(this.state.design, value);
    if (!setting.ok) return setting;
    const {tailIncidence} = setting.value, problem = checkValue('arrangement.tailIncidence', tailIncidence);
    return problem ? refused(problem) : {ok: true, value: tailIncidence};
  }

  #setForSpeed(): void {
    const setting = this.#settingWanted();
    if (!setting?.ok) return;
    this._surface = 'tail';
    this.#take(setting);
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  /** What was measured stays measured, and is as planned then. */
  #planSo({now}: ShimStudy): void {
    this.#take({ok: true, value: now.angle});
    this.dispatchEvent(new Event('change', {bubbles: true}));
    void this.readOn();
  }

  /** Asks for an angle that was found, or says why there is none. */
  #take(angle: Outcome<number>): void {
    const path = incidence[this.#surface];
    const wrong = angle.ok ? checkValue(path, angle.value) : undefined;
    this.#asked = !angle.ok ? angle.problems : wrong ? [wrong] : [];
    if (angle.ok && !wrong) {
      if (angle.value !== 0) this.#edge = angle.value > 0 ? 'front' : 'rear';
      this.askFor(path, angle.value);
    }
    this.requestUpdate();
  }

  /** Only where its field is one of those shown here. */
  protected override besideAField(problem: Problem): boolean {
    return super.besideAField(problem) && ([...first, ...others, ...edges[this.#surface]] as readonly string[]).includes(problem.path ?? '');
  }

  protected renderWorking(study: ShimStudy): TemplateResult | undefined {
    return later(this, loadWorking)?.tailShimWorking(this, study);
  }
}

/** The counts to choose from: as many as are usual, and what there is. */
const counts = (now: number): readonly (readonly [string, string])[] =>
  Array.from({length: Math.max(now, 9) + 1}, (_, i) => [String(i), String(i)] as const);
