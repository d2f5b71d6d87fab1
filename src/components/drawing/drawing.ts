import {css, html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {wingDihedral} from '../../calc/bench/dihedral.js';
import {wingFold} from '../../calc/bench/wing-fold.js';
import type {PlaneBalance} from '../../calc/balance/plane-balance.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {partsOf} from '../../calc/parts/parts.js';
import {good, refused} from '../../calc/problem.js';
import type {Outcome} from '../../calc/problem.js';
import type {ViewName} from '../../drawing/figures/three-view-layout.js';
import {commonWords} from '../../messages/en/common.js';
import {drawingWords} from '../../messages/en/drawing.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {explain} from '../base/explain.js';
import {unreadGlider} from '../base/unread-glider.js';
import {Figure} from '../base/figure.js';
import {numbersTable} from '../base/table.js';
import type {Shown, ThreeViewPictures} from './picture.js';
import {allNumbers} from './numbers.js';
import type {Drawn} from './three-view.js';

const viewNames: readonly ViewName[] = ['side', 'plan', 'front'];

/** The dimensions that each view can change, in the order of their fields. */
const pathsOf: Readonly<Record<ViewName, readonly DimensionPath[]>> = {
  plan: ['wing.span', 'wing.chord', 'wing.tipChord', 'wing.sweep', 'arrangement.wingAt', 'arrangement.tailAt', 'tail.span', 'tail.chord', 'tail.tipChord'],
  side: ['body.length', 'body.height', 'body.tailHeight', 'tail.fins.height', 'tail.fins.chord', 'arrangement.wingAt', 'wing.chord', 'arrangement.tailAt'],
  front: ['wing.joints', 'wing.span', 'tail.fins.count'],
};

/**
 * Plan, side and front view of a glider to scale, with dimension lines and handles.
 *
 * Laid out by its own width: one view under the other, or the front view beside the side view. Every handle has its field below the picture.
 *
 * @summary The glider in three views, to scale, with handles.
 * @attr {string} show - Which views: `plan`, `side`, `front`, space-separated; all three without it.
 * @attr {string} hide - Parts left out: `heading`, `picture`, `question`.
 * @csspart card - The whole drawing.
 * @csspart heading - The glider's name.
 * @csspart figure - The picture.
 * @csspart question - The fields and the table of the numbers.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderDrawing extends Calculator<Drawn> {
  static override properties = {...Calculator.properties, show: {type: String}};
  static override styles = [...Calculator.styles, css`
    /* about what the views of the usual glider take at this width */
    .coming { min-block-size: calc(130cqi + 18rem); }
    @container (min-width: 760px) { .coming { min-block-size: calc(78cqi + 6rem); } }
    .handle::before { inline-size: 9px; block-size: 9px; }
    .handle { inline-size: 32px; block-size: 32px; margin: -16px 0 0 -16px; }
    .dimensions { display: grid; gap: 1.2rem; padding-block: .8rem .3rem; }
  `];

  declare show: string | undefined;

  #planeBalance: ((design: GliderDesign) => Outcome<PlaneBalance>) | undefined;
  #drawn: Outcome<Drawn> | undefined;
  #last: Shown | undefined;
  #parts: ThreeViewPictures | undefined;
  readonly #figure = new Figure<Shown>(this, {
    load: async () => {
      const {ThreeViewPictures: Made} = await import('./picture.js');
      const parts = this.#parts = new Made(this);
      return parts.draw;
    },
    data: () => this.#shown,
    // of the usual glider, its views one below another, or two of them side by side where there is room
    height: (width) => Math.round((width < 760 ? width * 1.3 + 200 : width * 0.78) * this.views.length / 3),
    handles: (shown, view) => this.#parts?.handles(shown, view).filter(({path}) => !this.locked(path)) ?? [],
  }, this.fields);

  /** The balance point is worked out once the drawing stands. */
  protected override firstUpdated(): void {
    this.await(import('../../calc/balance/plane-balance.js').then(({planeBalance}) => {
      this.#planeBalance = planeBalance;
      this.requestUpdate();
    }, () => undefined));
  }

  /** The views that are shown, in the order in which they are laid out. */
  get views(): readonly ViewName[] {
    const asked = (this.show ?? '').split(/\s+/);
    const known = viewNames.filter((name) => asked.includes(name));
    return known.length > 0 ? known : viewNames;
  }

  protected override get paths(): readonly DimensionPath[] {
    return [...new Set((['plan', 'side', 'front'] as const).filter((view) => this.views.includes(view)).flatMap((view) => pathsOf[view]))];
  }

  /** The last glider that fitted, as this element shows it; the same object until one of them changes. */
  get #shown(): Shown | undefined {
    const {good: drawn, views} = this;
    if (!drawn) return undefined;
    if (this.#last?.drawn !== drawn || this.#last.views.join() !== views.join()) this.#last = {drawn, views};
    return this.#last;
  }

  protected override work(): Outcome<Drawn> {
    const {design} = this.state;
    const {wing, body, tail, arrangement, board} = design;
    const {problems} = partsOf(wing, body, tail, arrangement, board);
    if (problems.length > 0) return refused(...problems);
    const dihedral = wingDihedral(wing, board);
    if (!dihedral.ok) return dihedral;
    const fold = wingFold(wing, board);
    if (!fold.ok) return fold;
    const balance = this.#planeBalance?.(design);
    const balanced = balance?.ok ? balance.value : undefined;
    if (this.#drawn?.ok && this.#drawn.value.design === design && this.#drawn.value.balance === balanced) return this.#drawn;
    return this.#drawn = good({design, dihedral: dihedral.value, folds: fold.value.folds, balance: balanced});
  }

  protected override renderHeading(): string { return this.say(drawingWords).heading(this.state.design.name); }

  protected override answer(): Answer { return {sentence: ''}; }
  protected override renderWorking(): TemplateResult { return html``; }

  override render(): TemplateResult {
    if (this.link.status === 'missing' || this.link.status === 'seeking') return this.renderWithout();
    const {result, good: drawn} = this;
    const beside = result.ok ? [] : result.problems;
    return html`<section class="card" part="card" aria-label=${this.renderHeading()}>
      ${this.hides('heading') ? nothing : html`<h3 part="heading">${this.renderHeading()}</h3>`}
      ${unreadGlider(this)}
      ${result.ok ? nothing : html`<div>${drawn ? html`<p class="problem" part="problem">${this.say(commonWords).stale}</p>` : nothing}
        ${beside.map((problem) => html`<p class="problem" part="problem">${explain(this, problem)}</p>`)}</div>`}
      ${this.hides('picture') || !drawn ? nothing : html`<div class=${result.ok ? '' : 'stale'}>${this.renderPicture(drawn)}</div>`}
      ${this.hides('question') ? nothing : html`<details part="question"><summary>${this.say(drawingWords).dimensions}</summary><div class="dimensions">${this.renderQuestion()}${drawn ? numbersTable(this, allNumbers(this, drawn)) : nothing}</div></details>`}
    </section>`;
  }

  protected override renderQuestion(): TemplateResult {
    return html`<div class="fields">${this.paths.map((path) => this.fields.of(path, {disabled: this.locked(path)}))}</div>`;
  }

  protected override renderPicture({design}: Drawn): TemplateResult {
    const words = this.say(drawingWords);
    const length = (value: number): string => this.write(value, 'length');
    const names = this.views.map((view) => words.views[view]);
    const listed = names.length > 1 ? `${names.slice(0, -1).join(', ')} ${words.and} ${names.at(-1) ?? ''}` : names.join('');
    return this.#figure.render(words.picture({
      views: listed, span: length(design.wing.span), length: length(design.body.length), chord: length(design.wing.chord),
    }));
  }
}
