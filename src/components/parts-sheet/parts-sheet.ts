import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {dimensionPaths} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Outcome, Problem} from '../../calc/problem.js';
import {mostGliders} from '../../calc/sheet/from-parts.js';
import {layOutSheets} from '../../drawing/figures/sheet-layout.js';
import type {SheetPicture} from '../../drawing/figures/sheet-layout.js';
import {sheetFileWords} from '../../messages/en/sheet-files.js';
import {sheetWords} from '../../messages/en/sheet.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {rulerStep} from '../base/dragged.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import {boardField} from './board-field.js';
import {CountField} from './count-field.js';
import {cutList} from './cut-list.js';
import {find, sameFound, wantedOf, type Found, type Wanted} from './found.js';
import {pictureInWords, sheetPicture} from './picture.js';
import {pieceAt} from './piece-at.js';
import {reasons, sheetAnswer} from './sentences.js';
import {partsSheetStyles} from './styles.js';
import type {Templates} from './templates.js';
import {sheetWorking} from './working.js';

const shortNames = {
  sheetLength: 'board.length', sheetWidth: 'board.width', margin: 'board.margin', gap: 'board.gap', thickness: 'board.thickness',
  span: 'wing.span', chord: 'wing.chord', tailSpan: 'tail.span', tailChord: 'tail.chord', bodyLength: 'body.length', bodyHeight: 'body.height',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** What is cut from the sheet, and what one weighs. */
const read = /^(board\.(?!skinShare)|wing\.(span|chord|tipChord|sweep|stations|creases|joints|foldFace|jointFace)$|body\.(?!weighed)|tail\.(?!weighed)|arrangement\.)/;

/** Fields behind the few that most readers need. */
const more: readonly DimensionPath[] = [
  'board.gap', 'board.margin', 'wing.chord', 'wing.tipChord', 'body.length', 'body.height', 'body.layers', 'tail.span', 'tail.chord', 'tail.fins.count',
  'board.thickness', 'board.sheetMass',
];

/** What has a field here; what is wrong with anything else is said under the answer. */

/**
 * The glider's parts laid out on sheets of the board at hand, with a cut list: how many sheets so many gliders take, how many gliders
 * so many sheets give, or how long the wing can be.
 *
 * @summary The parts of a glider on sheets of board, with a cut list.
 * @attr {string} sheet-length - The long edge of the sheet, such as `700 mm`.
 * @attr {string} sheet-width - Its short edge.
 * @attr {string} margin - Edge left unused; nothing for a factory edge.
 * @attr {string} gap - Room for the knife between parts.
 * @attr {string} thickness - Thickness of the board.
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} tail-span - Tip to tip of the tailplane.
 * @attr {string} tail-chord - Front edge to rear edge of the tailplane.
 * @attr {string} body-length - Nose to the end of the body.
 * @attr {string} body-height - The strip as it stands on edge.
 * @attr {number} kits - How many gliders are cut, 1 to 40.
 * @attr {number} sheets - Sheets at hand, 1 to 40, where it is asked what they give.
 * @attr {string} wanted - What is asked: `sheets`, `gliders` or `span`.
 * @attr {string} hide - Parts left out: `heading`, `answer`, `picture`, `list`, `question`, `templates`, `working`.
 * @attr {string} lock - Dimensions that a reader may not change, `kits`, `sheets`, `wanted`; empty for all.
 * @slot - Shown while there is no glider.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart list - The cut list.
 * @csspart button - A button.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart templates - What makes files at true size.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderPartsSheet extends Calculator<Found> {
  static override readonly shortNames = shortNames;
  static override properties = {
    ...Calculator.properties, ...shortProperties(shortNames), kits: {type: Number}, sheets: {type: Number}, wanted: {type: String},
  };
  static override styles = [...Calculator.styles, partsSheetStyles];

  declare sheetLength: string | undefined;
  declare sheetWidth: string | undefined;
  declare margin: string | undefined;
  declare gap: string | undefined;
  declare thickness: string | undefined;
  declare span: string | undefined;
  declare chord: string | undefined;
  declare tailSpan: string | undefined;
  declare tailChord: string | undefined;
  declare bodyLength: string | undefined;
  declare bodyHeight: string | undefined;
  /** How many gliders are cut; one unless given. */
  declare kits: number | null | undefined;
  /** Sheets at hand; one unless given. */
  declare sheets: number | null | undefined;
  declare wanted: Wanted | null | undefined;

  protected override readonly paths = dimensionPaths.filter((path) => read.test(path));

  readonly #kits = new CountField(this, 'kits', mostGliders, () => this.kits, (value) => { this.kits = value; });
  readonly #sheets = new CountField(this, 'sheets', mostGliders, () => this.sheets, (value) => { this.sheets = value; });
  #found: Outcome<Found> | undefined;
  #pointed: number | undefined;
  #held: number | undefined;
  #templates: Templates | 'asked' | 'not loaded' | undefined;
  #picture: {readonly of: Found; readonly reader: string; readonly lit: number | undefined; readonly picture: SheetPicture} | undefined;
  readonly #figure = new Figure<SheetPicture>(this, {
    load: async () => (await import('../../drawing/figures/sheet.js')).drawSheets,
    data: () => (this.good ? this.#pictureOf(this.good) : undefined),
  });

  get #wanted(): Wanted { return wantedOf(this.wanted); }

  protected override work(): Outcome<Found> {
    const wanted = this.#wanted;
    const problems = [wanted === 'gliders' ? undefined : this.#kits.problem, wanted === 'sheets' ? undefined : this.#sheets.problem];
    const wrong = problems.filter((problem) => problem !== undefined);
    if (wrong.length > 0) return {ok: false, problems: wrong};
    const found = find(this.state.design, {wanted, kits: this.#kits.value, sheets: this.#sheets.value, step: rulerStep(this.system)});
    const before = this.#found?.ok ? this.#found.value : undefined;
    return found.ok && sameFound(before, found.value) && this.#found ? this.#found : this.#found = found;
  }

  protected override besideAField(problem: Problem): boolean {
    return super.besideAField(problem) || (!this.hides('question') && (problem.path === 'kits' || problem.path === 'sheets'));
  }

  protected override renderHeading(): string { return this.say(sheetWords).heading; }

  protected override answer(found: Found): Answer { return sheetAnswer(this, found); }

  protected override renderPicture(found: Found): TemplateResult {
    const words = this.say(sheetWords);
    const {cut, span} = found;
    const why = reasons(this, found);
    return html`${why.length > 0 ? html`<div class="reasons">${why.map((reason) => html`<p class="problem" part="problem">${reason}</p>`)}</div>` : nothing}
      ${span === undefined || Math.abs(span - this.state.design.wing.span) < 1e-9 || this.locked('wing.span') ? nothing
        : html`<p class="use"><button type="button" part="button" @click=${() => { this.#useSpan(span); }}>${words.useSpan(this.write(span, 'length'))}</button></p>`}
      <div class="laid ${cut.plans.length === 1 ? 'beside' : ''}">
        <div class="seen"><p class="not-to-scale">${this.say(sheetFileWords).notToScale}</p>${cut.plans.length === 0 ? nothing : html`<div @pointermove=${this.#pointAt} @pointerleave=${() => { this.#point(undefined); }}>${this.#figure.render(pictureInWords(this, cut))}</div>
          <p class="source">${words.howToRead}</p>`}
          <p class="caution">${words.caution}</p></div>
        ${this.hides('list') || cut.plans.length === 0 ? nothing : cutList(this, cut, this.state.design, {
          lit: this.#lit, held: this.#held, point: (number) => { this.#point(number); }, hold: (number) => { this.#hold(number); },
        })}
      </div>`;
  }

  #useSpan(span: number): void {
    this.askFor('wing.span', span);
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  get #lit(): number | undefined { return this.#pointed ?? this.#held; }

  #point(number: number | undefined): void {
    if (number === this.#pointed) return;
    this.#pointed = number;
    this.requestUpdate();
  }

  #hold(number: number): void {
    this.#held = this.#held === number ? undefined : number;
    this.requestUpdate();
  }

  /** The piece under the pointer, so that its row stands out too. */
  readonly #pointAt = (event: PointerEvent): void => {
    const svg = (event.currentTarget as Element).querySelector('svg');
    if (!svg || !this.#picture) return;
    const {left, top, width} = svg.getBoundingClientRect();
    const {picture} = this.#picture;
    this.#point(pieceAt(picture, layOutSheets(picture, width), event.clientX - left, event.clientY - top));
  };

  #pictureOf(found: Found): SheetPicture {
    const {reader} = this;
    const lit = this.#lit;
    const kept = this.#picture;
    if (kept?.of === found && kept.reader === reader && kept.lit === lit) return kept.picture;
    const picture = kept?.of === found && kept.reader === reader ? {...kept.picture, lit} : {...sheetPicture(this, found.cut), lit};
    this.#picture = {of: found, reader, lit, picture};
    return picture;
  }

  protected override renderQuestion(): TemplateResult {
    const words = this.say(sheetWords);
    const wanted = this.#wanted;
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const sheets = this.#sheets.render(words.sheetsAtHand, this.#lockedOwn('sheets'));
    const kits = this.#kits.render(words.kits, this.#lockedOwn('kits'));
    return html`<div class="fields">
      ${this.#wantedField()}
      ${boardField(this, this.locked('board.length') || this.locked('board.width'))}
      ${of('board.length')}${of('board.width')}
      ${wanted === 'sheets' ? kits : wanted === 'gliders' ? sheets : html`${sheets}${kits}`}
      ${wanted === 'span' ? nothing : of('wing.span')}
      ${this.fields.more(() => [...wanted === 'span' ? [of('wing.span')] : [], ...more.map(of)])}
    </div>`;
  }

  #lockedOwn(name: string): boolean {
    const names = this.lock?.split(/\s+/).filter(Boolean);
    return names !== undefined && (names.length === 0 || names.includes(name));
  }

  #wantedField(): TemplateResult {
    const words = this.say(sheetWords);
    return html`<div class="field" part="field"><label for="field-wanted">${words.wanted}</label>
      <span class="q"><select id="field-wanted" .value=${live(this.#wanted)} ?disabled=${this.#lockedOwn('wanted')} @change=${(e: Event) => {
        this.wanted = wantedOf((e.target as HTMLSelectElement).value);
        this.dispatchEvent(new Event('change', {bubbles: true}));
      }}>${(['sheets', 'gliders', 'span'] as const).map((one) => html`<option value=${one} ?selected=${one === this.#wanted}>${words.questions[one]}</option>`)}</select></span><span></span></div>`;
  }

  protected override renderTakeaway(found: Found, {ok}: Outcome<Found>): TemplateResult | typeof nothing {
    if (this.hides('templates')) return nothing;
    const words = this.say(sheetFileWords);
    const templates = this.#templates;
    return html`<details class="templates" part="templates" @toggle=${this.#askForTemplates}><summary>${words.heading}</summary>
      ${templates === undefined || templates === 'asked' ? nothing : templates === 'not loaded' ? html`<p class="problem" part="problem">${words.notLoaded}</p>`
        : html`<div class="making">${templates.render(found, ok)}</div>`}</details>`;
  }

  readonly #askForTemplates = (): void => {
    if (this.#templates !== undefined && this.#templates !== 'not loaded') return;
    this.#templates = 'asked';
    this.await(import('./templates.js').then(({Templates: Panel}) => { this.#templates = new Panel(this); }, () => { this.#templates = 'not loaded'; })
      .finally(() => { this.requestUpdate(); }));
  };

  protected override renderWorking(found: Found): TemplateResult { return sheetWorking(this, found); }
}
