import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {camberOver, wingFold} from '../../calc/bench/wing-fold.js';
import type {WingFold} from '../../calc/bench/wing-fold.js';
import {nearestStack, wholeLayers} from '../../calc/bench/stack.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Outcome} from '../../calc/problem.js';
import {writeAtLeast} from '../../calc/units/write.js';
import type {CamberPicture} from '../../drawing/figures/camber.js';
import {camberWords} from '../../messages/en/camber.js';
import type * as Picturing from './picture.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';

const loadWorking = () => import('./working.js');

/**
 * How high to prop a creased wing so that it takes on camber, and what camber a stack at hand gives.
 *
 * @summary Camber from a stack under the wing, and back.
 * @attr {string} chord - Wing chord, such as `115 mm`.
 * @attr {string} crease - Distance of each crease from the front edge, space-separated.
 * @attr {string} thickness - Thickness of the board.
 * @attr {string} stack - Height of the stack.
 * @attr {string} camber - Camber wanted, such as `4 %`; with `from="camber"`.
 * @attr {string} from - What is given: `stack` or `camber`.
 * @attr {string} propped - What is propped: `rear`, `front` or `crest`.
 * @attr {string} place - How the stack stands: `edge`, `inset`, `bench` or `plumb`.
 * @attr {string} inset - How far the stack is pushed in, along the panel.
 * @attr {string} from-crease - Distance of the stack from the crease, along the bench.
 * @attr {string} face - `closing` for a groove on top, `opening` for a slit below.
 * @attr {string} groove - Width of a groove already cut.
 * @attr {string} hide - Parts left out: `heading`, `answer`, `picture`, `question`, `working`.
 * @attr {string} lock - Dimensions that a reader may not change; empty for all.
 * @slot - Shown while there is no glider.
 * @csspart card - The whole calculator.
 * @csspart answer - The sentence to act on.
 * @csspart figure - The picture.
 * @csspart question - The fields.
 * @csspart working - The formulas.
 */
export class GliderCamberShim extends Calculator<WingFold> {
  static override readonly shortNames = {
    chord: 'wing.chord', crease: 'wing.creases', thickness: 'board.thickness', stack: 'wing.stack', camber: 'wing.camber', from: 'wing.foldBy',
    propped: 'wing.propped', place: 'wing.propPlace', inset: 'wing.stackInset', fromCrease: 'wing.stackFromCrease', face: 'wing.foldFace', groove: 'wing.groove',
  } as const;

  static override properties = {...Calculator.properties, ...shortProperties(GliderCamberShim.shortNames)};

  declare chord: string | undefined;
  declare crease: string | undefined;
  declare thickness: string | undefined;
  declare stack: string | undefined;
  declare camber: string | undefined;
  declare from: string | undefined;
  declare propped: string | undefined;
  declare place: string | undefined;
  declare inset: string | undefined;
  declare fromCrease: string | undefined;
  declare face: string | undefined;
  declare groove: string | undefined;

  protected override readonly paths: readonly DimensionPath[] = [
    'wing.chord', 'wing.creases', 'board.thickness', 'wing.stack', 'wing.camber', 'wing.foldBy', 'wing.propped', 'wing.propPlace',
    'wing.stackInset', 'wing.stackFromCrease', 'wing.stackWidth', 'wing.foldFace', 'wing.groove', 'wing.tipChord',
  ];

  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<CamberPicture>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawCamber;
    },
    data: () => this.good && this.#picturing?.camberPicture(this, this.good),
    height: (width) => Math.round(70 + width / 8),
    handles: (picture) => this.#picturing?.camberHandles(this, picture) ?? [],
  }, this.fields);

  protected override work(): Outcome<WingFold> {
    const {wing, board} = this.state.design;
    const fold = wingFold(wing, board);
    // what the bench refuses belongs beside what was asked of it
    return fold.ok ? fold : {ok: false, problems: fold.problems.map((p) => (p.path ? p : {...p, path: wing.foldBy === 'stack' ? 'wing.stack' : 'wing.camber'}))};
  }

  protected override renderHeading(): string { return this.say(camberWords).heading; }

  /** A stack in a builder's words: what to lay on the bench. */
  stackInWords(height: number): string {
    const {boards, cards, papers} = nearestStack(height, this.state.design.board.thickness);
    return this.say(camberWords).stack(boards, cards, papers);
  }

  protected override answer(fold: WingFold): Answer {
    const words = this.say(camberWords);
    const {wing, board} = this.state.design;
    const {onBench, section} = fold;
    const camber = this.write(section.camber, 'ratio');
    if (onBench.contactKind === 'panel-edge-against-stack-face') return {sentence: words.missed};
    if (fold.total === 0) return {sentence: onBench.contactKind === 'none' && wing.stack > 0 && fold.folds.length > 0 ? words.clear : words.flat};
    const built = nearestStack(fold.stack, board.thickness);
    const at = {edge: 0, inset: wing.stackInset, bench: wing.stackFromCrease, plumb: 0}[wing.propPlace];
    const said = {side: wing.propped, place: wing.propPlace, at: this.write(at, 'length'), stack: this.stackInWords(fold.stack), height: this.write(fold.stack, 'length'), camber};
    const sentence = wing.foldBy === 'stack'
      ? words.gives({...said, fold: this.write(fold.total, 'angle')})
      : words.wanted({...said, built: this.#builtGives(built.height, section.camber)});
    return {sentence, aside: this.#aside(fold)};
  }

  #builtGives(height: number, wanted: number): string {
    const words = this.say(camberWords);
    const {wing, board} = this.state.design;
    const given = camberOver(wing, board, height);
    return given === undefined || Math.abs(given - wanted) < 5e-4 ? words.builtExactly : words.builtNearly(this.write(given, 'ratio'));
  }

  #aside(fold: WingFold): string {
    const words = this.say(camberWords);
    const {wing, board} = this.state.design;
    const {section, onBench} = fold;
    const said = [words.crest({
      height: this.write(section.camberHeight, 'length'), at: this.write(section.crest, 'length'), edgeRise: this.write(onBench.edge.y, 'length'),
    })];
    const [below, above] = wholeLayers(fold.stack, board.thickness);
    const layers = below === above ? below + 1 : below > 0 && fold.stack - below * board.thickness < board.thickness / 2 ? below : above;
    const others = camberOver(wing, board, layers * board.thickness);
    if (others !== undefined) said.push(words.wholeLayers({layers, camber: this.write(others, 'ratio')}));
    const widest = Math.max(...fold.grooves);
    const width = writeAtLeast(widest, 'length', {system: this.system, decimal: this.decimal});
    said.push(onBench.stoppedByGroove ? words.stopped(this.write(fold.total, 'angle')) : wing.foldFace === 'closing' ? words.groove(width) : words.slot(width));
    if (onBench.foldAtEdge !== undefined && Math.abs(onBench.foldAtEdge - fold.total) > 2e-3) {
      said.push(words.moved({fold: this.write(fold.total, 'angle'), atEdge: this.write(onBench.foldAtEdge, 'angle')}));
    }
    if (fold.stackAtTip !== undefined) said.push(words.tip({height: this.write(fold.stackAtTip, 'length')}));
    return said.join(' ');
  }

  protected override renderPicture(fold: WingFold): TemplateResult {
    const words = this.say(camberWords);
    return this.#figure.render(words.picture({
      fold: this.write(fold.total, 'angle'), height: this.write(fold.stack, 'length'), contact: words.contact[fold.onBench.contactKind],
    }));
  }

  protected override renderQuestion(): TemplateResult {
    const {wing} = this.state.design;
    const {fields} = this;
    const of = (path: DimensionPath): TemplateResult => fields.of(path, {disabled: this.locked(path)});
    return html`<div class="fields">
      ${of('wing.foldBy')}
      ${wing.foldBy === 'stack' ? of('wing.stack') : of('wing.camber')}
      ${of('wing.chord')}
      ${wing.creases.length === 1 ? fields.item('wing.creases', {index: 0, name: 'at', disabled: this.locked('wing.creases')}) : of('wing.creases')}
      ${of('board.thickness')}
      ${wing.propped === 'crest' ? of('wing.stackWidth') : html`${of('wing.propPlace')}${this.#placeField()}`}
      ${fields.more(() => [
        of('wing.propped'), of('wing.foldFace'), of('wing.groove'),
        ...(wing.creases.length === 1 ? [fields.text('wing.creases', {label: this.say(camberWords).creases, disabled: this.locked('wing.creases')})] : []),
        ...(wing.propPlace === 'plumb' || wing.propped === 'crest' ? [] : [of('wing.stackWidth')]),
      ])}
    </div>`;
  }

  #placeField(): TemplateResult | typeof nothing {
    const path = ({edge: undefined, inset: 'wing.stackInset', bench: 'wing.stackFromCrease', plumb: 'wing.stackWidth'} as const)[this.state.design.wing.propPlace];
    return path ? this.fields.of(path, {disabled: this.locked(path)}) : nothing;
  }

  /** Seen without opening the working, and whatever is hidden: the answer asks for a blade. */
  protected override renderTakeaway({folds}: WingFold): TemplateResult | typeof nothing {
    return folds.some((angle) => angle !== 0) ? html`<p class="caution">${this.say(camberWords).caution}</p>` : nothing;
  }

  protected override renderWorking(fold: WingFold): TemplateResult | undefined {
    return later(this, loadWorking)?.renderCamberWorking(this, fold);
  }
}
