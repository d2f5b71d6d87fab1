import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {camberOver, wingFold} from '../../calc/bench/wing-fold.js';
import type {WingFold} from '../../calc/bench/wing-fold.js';
import {nearestStack, wholeLayers} from '../../calc/bench/stack.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import type {Outcome} from '../../calc/problem.js';
import {writeAtLeast} from '../../calc/units/write.js';
import type {CamberPicture} from '../../drawing/figures/camber.js';
import {camberWords} from '../../messages/en/camber.js';
import {commonWords} from '../../messages/en/common.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import type {Handle} from '../base/figure.js';
import {camberPicture} from './picture.js';
import {renderCamberWorking} from './working.js';

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

  readonly #figure = new Figure<CamberPicture>(this, {
    load: async () => (await import('../../drawing/figures/camber.js')).drawCamber,
    data: () => (this.good ? camberPicture(this, this.good) : undefined),
    handles: (picture) => this.#handles(picture),
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
    const side = wing.propped;
    const built = nearestStack(fold.stack, board.thickness);
    const said = {side, stack: this.stackInWords(fold.stack), height: this.write(fold.stack, 'length'), camber};
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

  protected override renderWorking(fold: WingFold): TemplateResult {
    const words = this.say(camberWords);
    return html`<p class="source">${words.how[this.state.design.wing.foldFace]} ${words.faces[this.state.design.wing.foldFace]}</p>
      <p class="caution">${words.caution}</p>
      ${renderCamberWorking(this, fold)}
      ${this.table(this.#rows(fold))}
      <p class="source">${this.say(commonWords).where}: ${words.source}</p>`;
  }

  #rows(fold: WingFold): readonly (readonly [string, string])[] {
    const {rows} = this.say(camberWords);
    const {wing} = this.state.design;
    const [contact] = fold.onBench.contacts;
    const {pivot} = fold.onBench;
    return [
      [rows.fold, fold.folds.map((f) => this.write(f, 'angle')).join(' + ') || this.write(0, 'angle')],
      [rows.camber, this.write(fold.section.camber, 'ratio')],
      [rows.camberHeight, this.write(fold.section.camberHeight, 'length', this.system === 'metric' ? {digits: 1} : {})],
      [rows.crestAt, this.write(fold.section.crest, 'length')],
      [rows.chord, this.write(fold.section.chord, 'length', this.system === 'metric' ? {digits: 1} : {})],
      [rows.stack, this.write(fold.stack, 'length')],
      [rows.rise, this.write(fold.onBench.edge.y, 'length', this.system === 'metric' ? {digits: 1} : {})],
      ...(contact && wing.propped !== 'crest' ? [[rows.contact, this.write(Math.hypot(contact.x - pivot.x, contact.y - pivot.y), 'length')] as const] : []),
      [wing.foldFace === 'closing' ? rows.groove : rows.slot, fold.grooves.map((w) => writeAtLeast(w, 'length', {system: this.system, decimal: this.decimal})).join(' + ') || '–'],
    ];
  }

  /** The stack can be made taller and moved; the crease can be moved where there is only one. */
  #handles(picture: CamberPicture): readonly Handle[] {
    const {wing} = this.state.design;
    const step = this.system === 'inch' ? 25.4 / 32 : 0.5;
    const metres = (mm: number): number => Math.round(mm / step) * step / 1000;
    const {side, stack, pivot, flatEnd} = picture;
    const top = stack.layers.reduce((most, {to}) => Math.max(most, to), 0);
    const handles: Handle[] = [];
    if (!this.locked('wing.stack') && wing.creases.length > 0) {
      handles.push({
        key: 'height', path: 'wing.stack', at: {x: (stack.near + stack.far) / 2, y: -top},
        drag: ({y}): readonly Change[] => [{path: 'wing.foldBy', value: 'stack'}, {path: 'wing.stack', value: Math.max(0, metres(-y))}],
      });
    }
    if (wing.propped !== 'crest' && !this.locked('wing.stackFromCrease') && top > 0) {
      const half = Math.abs(stack.far - stack.near) / 2;
      handles.push({
        key: 'place', path: 'wing.stackFromCrease', at: {x: (stack.near + stack.far) / 2, y: 0},
        drag: ({x}): readonly Change[] => [
          {path: 'wing.propPlace', value: 'bench'}, {path: 'wing.stackFromCrease', value: Math.max(1e-3, metres((x - pivot.x) * side - half))}],
      });
    }
    const [crease] = wing.creases;
    if (crease && wing.creases.length === 1 && wing.propped !== 'crest' && !this.locked('wing.creases')) {
      handles.push({
        key: 'crease', path: 'wing.creases', at: {x: pivot.x, y: 0},
        drag: ({x}): readonly Change[] => {
          const flat = metres(Math.abs(x - flatEnd.x));
          const at = wing.propped === 'rear' ? flat : wing.chord - flat;
          return at > 0.002 && at < wing.chord - 0.002 ? [{path: 'wing.creases', value: [{at}]}] : [];
        },
      });
    }
    return handles;
  }
}
