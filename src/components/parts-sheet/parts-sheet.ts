import {html, isServer, nothing} from 'lit';
import type {PropertyValues, TemplateResult} from 'lit';
import {dimensionPaths} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Outcome, Problem} from '../../calc/problem.js';
import type {WayToCut} from '../../calc/sheet/engine/job.js';
import {sheetFileWords} from '../../messages/en/sheet-files.js';
import {sheetWords} from '../../messages/en/sheet.js';
import {decimalMark} from '../../messages/speaker.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {rulerStep} from '../base/dragged.js';
import {shortProperties} from '../base/element.js';
import {ownTask} from '../base/own-task.js';
import {find, foundFrom, sameFound, type Found, type Wanted} from './found.js';
import {isOwn, OwnQuestions} from './own-questions.js';
import {question} from './question.js';
import {sheetAnswer} from './sentences.js';
import {partsSheetStyles} from './styles.js';
import type {Templates} from './templates.js';
import {View} from './view.js';
import {sheetWorking} from './working.js';

const shortNames = {
  sheetLength: 'board.length', sheetWidth: 'board.width', margin: 'board.margin', gap: 'board.gap', grain: 'board.grain', thickness: 'board.thickness',
  span: 'wing.span', chord: 'wing.chord', tailSpan: 'tail.span', tailChord: 'tail.chord', bodyLength: 'body.length', bodyHeight: 'body.height',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** What is cut from the sheet, and what one weighs. */
const read = /^(board\.(?!skinShare)|wing\.(span|chord|tipChord|sweep|stations|creases|joints|foldFace|jointFace)$|body\.(?!weighed)|tail\.(?!weighed)|arrangement\.)/;

/**
 * The glider's parts laid out on sheets of the board at hand, with a cut list: how many sheets so many gliders take, how many gliders
 * so many sheets give, or how long the wing can be. A first layout stands at once; then a better one is looked for, in a worker where the
 * page allows one. A reader may put a part in its place and hold it there.
 *
 * @summary The parts of a glider on sheets of board, with a cut list.
 * @attr {string} sheet-length - The long edge of the sheet, such as `700 mm`.
 * @attr {string} sheet-width - Its short edge.
 * @attr {string} margin - Edge left unused; nothing for a factory edge.
 * @attr {string} gap - Room for the knife between parts.
 * @attr {string} grain - Which way the grain of the board runs: `length`, along its long edge, `width`, or `none`.
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
 * @attr {string} cuts - How parts are cut: `free`, along any outline, or `straight`, each cut from edge to edge.
 * @attr {string} spares - Gliders cut in case: a number or a share, such as `2` or `10%`.
 * @attr {number} at-hand - Sheets of this board at hand; without it, as many as needed.
 * @attr {string} boards - Other whole boards at hand: length, width and how many, such as `900mm@600mm@2`.
 * @attr {string} pieces - Pieces left over from before, written likewise; they are used first.
 * @attr {string} splice - Parts that may be glued up from lengths where they are too long: `wing`, `body`, `tailplane`.
 * @attr {number} price - What one sheet costs.
 * @attr {string} currency - What the money is called.
 * @attr {string} hide - Parts left out: `heading`, `answer`, `picture`, `search`, `list`, `marking`, `cutting`, `question`, `templates`, `working`.
 * @attr {string} lock - Dimensions that a reader may not change, `kits`, `sheets`, `wanted`, `cuts`, `spares`, `at-hand`, `boards`, `splice`, `price`, `currency`; empty for all.
 * @slot - Shown while there is no glider.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart search - How far the search for a better layout has got.
 * @csspart hand - The part in hand and what can be done with it.
 * @csspart figure - The picture.
 * @csspart list - The cut list.
 * @csspart button - A button.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart marking - The marking-out list.
 * @csspart cutting - The order of cuts.
 * @csspart templates - What makes files at true size.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderPartsSheet extends Calculator<Found> {
  static override readonly shortNames = shortNames;
  static override properties = {
    ...Calculator.properties, ...shortProperties(shortNames), kits: {type: Number}, sheets: {type: Number}, wanted: {type: String},
    cuts: {type: String}, spares: {type: String}, atHand: {type: String, attribute: 'at-hand'}, boards: {type: String}, pieces: {type: String},
    splice: {type: String}, price: {type: String}, currency: {type: String},
  };
  static override styles = [...Calculator.styles, partsSheetStyles];

  declare sheetLength: string | undefined;
  declare sheetWidth: string | undefined;
  declare margin: string | undefined;
  declare gap: string | undefined;
  declare grain: string | undefined;
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
  declare cuts: WayToCut | null | undefined;
  /** How many gliders more are cut in case, or what share of those wanted. */
  declare spares: string | null | undefined;
  /** Sheets of the design's board at hand; as many as needed unless given. */
  declare atHand: number | string | null | undefined;
  declare boards: string | undefined;
  declare pieces: string | undefined;
  declare splice: string | null | undefined;
  declare price: number | string | null | undefined;
  declare currency: string | null | undefined;

  protected override readonly paths = dimensionPaths.filter((path) => read.test(path));

  readonly #own = new OwnQuestions(this);
  readonly #view = new View(this, this.#own, () => this.good);
  #found: Outcome<Found> | undefined;
  #templates: Templates | 'asked' | 'not loaded' | undefined;
  /** Whether its first rendering is still to come; on a server, and over what a server has rendered, it comes at once. */
  #comes = !(isServer as boolean) && this.shadowRoot === null;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('boards') || changed.has('pieces')) this.#own.boards.read(this.boards, this.pieces);
    super.willUpdate(changed);
    if (this.good) this.#view.follow(this.good);
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.#view.updated();
  }

  protected override work(): Outcome<Found> {
    const own = this.#own;
    if (own.problems.length > 0) return {ok: false, problems: own.problems};
    const {wanted, spare} = own;
    const first = find(this.state.design, {wanted, kits: own.kits.value, spare, sheets: own.sheets.value, step: rulerStep(this.system)});
    if (!first.ok) return this.#found = first;
    const found = foundFrom(first.value, this.#view.layoutFor(first.value), own.priceOfSheet);
    return this.#found?.ok && sameFound(this.#found.value, found) ? this.#found : this.#found = {ok: true, value: found};
  }

  protected override besideAField(problem: Problem): boolean {
    return super.besideAField(problem) || (!this.hides('question') && isOwn(problem));
  }

  /** To come to the page, to place the parts and to render for the first time are three tasks: in one they would hold up a tap. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) {
      decimalMark(this.speech);   // a browser takes its time over the first number in a language
      await ownTask();
    }
    await super.scheduleUpdate();
  }

  override render(): TemplateResult {
    if (!this.#comes || this.good === undefined) return super.render();
    this.#comes = false;
    this.await(ownTask().then(() => { this.requestUpdate(); }));
    return html`<div class="coming"></div>`;
  }

  /** Whether an author left a part in. */
  shows(part: string): boolean { return !this.hides(part); }

  protected override renderHeading(): string { return this.say(sheetWords).heading; }

  protected override answer(found: Found): Answer { return sheetAnswer(this, found, this.currency ?? ''); }

  protected override renderPicture(found: Found): TemplateResult { return this.#view.render(found); }

  protected override renderQuestion(): TemplateResult {
    return question({
      host: this, fields: this.fields, own: this.#own, searches: this.shows('search'),
      locked: (path) => this.locked(path), lockedOwn: (name) => this.#lockedOwn(name),
    });
  }

  #lockedOwn(name: string): boolean {
    const names = this.lock?.split(/\s+/).filter(Boolean);
    return names !== undefined && (names.length === 0 || names.includes(name));
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
    this.await(import('./templates.js').then(({Templates: Panel}) => { this.#templates = new Panel(this, () => { this.#view.settle(); }); }, () => { this.#templates = 'not loaded'; })
      .finally(() => { this.requestUpdate(); }));
  };

  protected override renderWorking(found: Found): TemplateResult { return sheetWorking(this, found); }
}
