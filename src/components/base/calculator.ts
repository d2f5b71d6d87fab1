import {html, nothing} from 'lit';
import type {PropertyDeclarations, PropertyValues, TemplateResult} from 'lit';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {DesignHandle} from '../../calc/design/store.js';
import type {Outcome, Problem} from '../../calc/problem.js';
import {commonWords} from '../../messages/en/common.js';
import {Announcer} from './announcer.js';
import {calculatorStyles} from './calculator-styles.js';
import {GliderElement} from './element.js';
import {emphasised, plain} from './emphasis.js';
import {equationStyles} from './equation-styles.js';
import {explain} from './explain.js';
import {fieldStyles} from './field-styles.js';
import {Fields} from './fields.js';
import {figureStyles} from './figure.js';
import {reckoned} from './reckoned.js';
import {baseStyles} from './styles.js';
import {unreadGlider} from './unread-glider.js';

/** The answer in words: one sentence to act on, what is exact set between `**`, and what follows from it. */
export interface Answer {
  readonly sentence: string;
  readonly aside?: string;
}

/**
 * A calculator: the answer first, then the picture, the question and the working.
 *
 * A bad entry keeps the last good answer on screen, greyed and left out of print and copies, and what is wrong stands beside the field. `R`
 * must keep its identity while nothing it depends on changes, as every memoised stage does.
 */
export abstract class Calculator<R> extends GliderElement {
  static override properties: PropertyDeclarations = {...GliderElement.properties, hide: {type: String}, lock: {type: String}};
  static override styles = [baseStyles, calculatorStyles, fieldStyles, figureStyles, equationStyles];

  /** Parts left out, space-separated: `question`, `picture`, `answer`, `working`, `heading`. */
  declare hide: string | undefined;
  /** Dimensions that a reader may not change, space-separated; empty for all. */
  declare lock: string | undefined;

  protected readonly fields: Fields = new Fields(this);
  protected readonly announcer: Announcer = new Announcer(this);
  #good: R | undefined;
  /** The design that the last good answer is about. */
  #goodOf: DesignHandle | undefined;
  #opened = false;

  /**
   * The dimensions this calculator reads: an entry refused at one of them greys the answer, and of the measurements on the finished plane among them
   * the answer says that it was reckoned with them.
   */
  protected abstract readonly paths: readonly DimensionPath[];
  protected abstract work(): Outcome<R>;
  protected abstract renderHeading(): string;
  protected abstract answer(result: R): Answer;
  protected abstract renderQuestion(): TemplateResult;
  protected abstract renderPicture(result: R): TemplateResult;
  /** The formulas with this plane's numbers; nothing while what writes them is on its way. */
  protected abstract renderWorking(result: R): TemplateResult | undefined;

  /** What is to be said where a refusal is itself the answer, and holds as much as one: printed and copied, and nothing greyed before it. */
  protected verdict(_problems: readonly Problem[]): Answer | undefined { return undefined; }

  /** What can be taken away from the answer, such as files, between the question and the working; `result` is what holds now. */
  protected renderTakeaway(_good: R, _result: Outcome<R>): TemplateResult | typeof nothing { return nothing; }

  /** What was worked out from the entries as they stand, or why nothing could be. */
  get result(): Outcome<R> {
    const refused = this.paths.flatMap((path) => this.state.refused[path]?.problem ?? []);
    return refused.length > 0 ? {ok: false, problems: refused} : this.work();
  }

  /** Whether a result says anything yet; what only waits is no answer to go back to. */
  protected says(_result: R): boolean { return true; }

  /** The last answer that fitted: what the picture goes on showing while an entry is mended. */
  protected get good(): R | undefined { return this.#good; }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const {source} = this.link;
    if (source !== this.#goodOf) this.#good = undefined;
    this.#goodOf = source;
    if (!source) return;
    const {result} = this;
    if (result.ok) this.#good = result.value;
    else if (this.#good !== undefined && !this.says(this.#good)) this.#good = undefined;
    this.fields.found = result.ok ? [] : result.problems;
  }

  protected hides(part: string): boolean { return (this.hide ?? '').split(/\s+/).includes(part); }

  /** A button that did its work and is gone leaves its reader at the answer, not at the top of the page. */
  protected async readOn(): Promise<void> {
    await this.updateComplete;
    const answer = this.renderRoot.querySelector<HTMLElement>('[part=answer]');
    if (!answer || this.ownerDocument.activeElement !== this.ownerDocument.body) return;
    answer.tabIndex = -1;
    answer.focus({preventScroll: true});
  }

  locked(path: DimensionPath): boolean {
    const lock = this.lock as string | null | undefined;   // Lit gives null for an attribute taken away
    if (lock === undefined || lock === null) return false;
    const names = lock.split(/\s+/).filter(Boolean);
    return names.length === 0 || names.includes(path);
  }

  /** While the glider is on its way, the page keeps about as much room as the answer will take, and holds still when it comes. */
  protected override renderWithout(): TemplateResult {
    const without = super.renderWithout();
    return this.link.status === 'seeking' ? html`<div class="coming">${without}</div>` : without;
  }

  override render(): TemplateResult {
    if (this.link.status === 'missing' || this.link.status === 'seeking') return this.renderWithout();
    const {result} = this;
    const good = this.#good;
    const stale = !result.ok;
    // before the answer, which leaves to a field what stands beside it
    this.fields.begin();
    const question = this.hides('question') ? nothing : html`<div part="question">${this.renderQuestion()}</div>`;
    return html`<section class="card" part="card" aria-label=${this.renderHeading()}>
      ${this.hides('answer') && this.hides('heading') ? nothing : html`<div>
        ${this.hides('heading') ? nothing : html`<h3 part="heading">${this.renderHeading()}</h3>`}
        ${this.hides('answer') ? nothing : this.#renderAnswer(good, result)}</div>`}
      ${unreadGlider(this)}
      ${this.hides('picture') || good === undefined ? nothing : html`<div class=${stale ? 'stale' : ''}>${this.renderPicture(good)}</div>`}
      ${question}
      ${good === undefined ? nothing : this.renderTakeaway(good, result)}
      ${this.hides('working') || good === undefined ? nothing : html`<details part="working" @toggle=${this.#open}><summary>${this.say(commonWords).working}</summary>
        <div class="working ${stale ? 'stale' : ''}">${this.#opened ? this.renderWorking(good) : nothing}</div></details>`}
      <div class="hidden" aria-live="polite">${this.announcer.said}</div>
    </section>`;
  }

  /** The working is for those who ask for it, and so is its loading. */
  readonly #open = (): void => {
    if (this.#opened) return;
    this.#opened = true;
    this.requestUpdate();
  };

  #renderAnswer(good: R | undefined, result: Outcome<R>): TemplateResult {
    const verdict = result.ok ? undefined : this.verdict(result.problems);
    const said = verdict ?? (good === undefined ? undefined : this.answer(good)), holds = result.ok || verdict !== undefined;
    if (holds && said) this.announcer.hear(plain(said.sentence), this.reader);
    const aside = [said?.aside, said && reckoned(this, (path) => this.paths.includes(path))].filter(Boolean).join(' ');
    const loose = result.ok || verdict ? [] : result.problems.filter((p) => !this.besideAField(p));
    return html`${said ? html`<p class="answer ${holds ? '' : 'stale'}" part="answer">${emphasised(said.sentence)}${
      aside ? html`<span class="aside" part="aside">${emphasised(aside)}</span>` : nothing}</p>` : nothing}
      ${holds ? nothing : html`<p class="problem" part="problem">${said ? this.say(commonWords).stale : this.say(commonWords).unanswered}</p>`}
      ${loose.map((p) => html`<p class="problem" part="problem">${explain(this, p)}</p>`)}`;
  }

  /** What a field of this calculator is about stands beside it; the rest stands under the answer. */
  protected besideAField(problem: Problem): boolean { return this.fields.shows(problem); }
}
