import {css, html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {wingDihedral} from '../../calc/bench/dihedral.js';
import type {JointFold, WingDihedral} from '../../calc/bench/dihedral.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import type {Change} from '../../calc/design/store.js';
import {good} from '../../calc/problem.js';
import type {Outcome} from '../../calc/problem.js';
import {writeAtLeast} from '../../calc/units/write.js';
import {dihedralWords} from '../../messages/en/dihedral.js';
import {Calculator} from '../base/calculator.js';
import type {Answer} from '../base/calculator.js';
import {rulerStep} from '../base/dragged.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import type {DihedralPictures} from './picture.js';

const loadWorking = () => import('./working.js');

const shortNames = {
  span: 'wing.span', chord: 'wing.chord', tipChord: 'wing.tipChord', joints: 'wing.joints', blocks: 'wing.blocks', by: 'wing.dihedralBy',
  face: 'wing.jointFace', place: 'wing.jointPlace', inset: 'wing.blockInset', fromJoint: 'wing.blockFromJoint', width: 'wing.blockWidth',
  held: 'wing.vPropped', creases: 'wing.creases', thickness: 'board.thickness',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** What the element works out: the wing's dihedral, and what it was worked out from. */
export interface Solved {
  readonly dihedral: WingDihedral;
  readonly wing: GliderDesign['wing'];
  readonly board: GliderDesign['board'];
}

/** Whether a block stands where its panel does not come to rest on it. */
const isMissed = ({place, block}: JointFold): boolean => place.kind === 'panel-edge-against-stack-face' || (place.kind === 'none' && block > 0);

/** A block lower than this, m, is written as none. */
const unseen = 5e-5;

/**
 * Dihedral: from where the joints are and what props the panels up to the angles, and back; or where a block at hand must stand.
 *
 * @summary Which block gives which dihedral, joint by joint, and the wing as it flies.
 * @attr {string} span - Tip to tip, flat on the board.
 * @attr {string} chord - Front edge to rear edge in the middle.
 * @attr {string} tip-chord - The same at the tip.
 * @attr {string} joints - Angle @ distance from the middle, one for each joint of a half: `12° @ 190 mm`.
 * @attr {string} blocks - Height of the block for each joint, from the middle outwards.
 * @attr {string} by - What is given: `angle`, `block`, or `place` for both.
 * @attr {string} face - `closing` for a groove on top, `opening` for a slit below.
 * @attr {string} place - How a block stands: `edge`, `inset`, `bench` or `plumb`.
 * @attr {string} inset - From the end of the panel to where the block touches.
 * @attr {string} from-joint - From the joint to the block, along the bench.
 * @attr {string} width - Width of the block along the span.
 * @attr {string} held - A joint in the middle: `one` half flat on the bench, or `both` propped alike.
 * @attr {string} creases - Creases of the wing from its front edge: a cambered wing needs a deeper groove.
 * @attr {string} thickness - Thickness of the board.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The picture.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderDihedralAngle extends Calculator<Solved> {
  static override readonly shortNames = shortNames;
  static override properties = {...Calculator.properties, ...shortProperties(shortNames)};
  static override styles = [...Calculator.styles, css`.buttons { display: flex; flex-wrap: wrap; gap: .5rem; margin: 1rem 0 0; font-size: .92em; }`];

  declare span: string | undefined;
  declare chord: string | undefined;
  declare tipChord: string | undefined;
  declare joints: string | undefined;
  declare blocks: string | undefined;
  declare by: string | undefined;
  declare face: string | undefined;
  declare place: string | undefined;
  declare inset: string | undefined;
  declare fromJoint: string | undefined;
  declare width: string | undefined;
  declare held: string | undefined;
  declare creases: string | undefined;
  declare thickness: string | undefined;

  protected override readonly paths = Object.values(shortNames);

  #solved: Solved | undefined;
  #picture: DihedralPictures | undefined;
  readonly #figure = new Figure<Solved>(this, {
    load: async () => {
      const {DihedralPictures: Made} = await import('./picture.js');
      const picture = this.#picture = new Made(this);
      return picture.draw;
    },
    data: () => this.good,
    handles: (solved, view) => this.#picture?.handles(solved, view).filter(({path}) => !this.locked(path)) ?? [],
  }, this.fields);

  protected override work(): Outcome<Solved> {
    const {wing, board} = this.state.design;
    const found = wingDihedral(wing, board);
    if (!found.ok) return found;
    if (this.#solved?.dihedral !== found.value) this.#solved = {dihedral: found.value, wing, board};
    return good(this.#solved);
  }

  protected override renderHeading(): string { return this.#words.heading; }

  protected override answer(solved: Solved): Answer {
    const {dihedral, wing} = solved;
    const words = this.#words;
    const {joints} = dihedral;
    if (joints.length === 0) return {sentence: words.flat};
    const sentences = joints.map((_, i) => this.#sentence(joints[joints.length - 1 - i], wing, i === 0));
    const sentence = [...(joints.length > 1 ? [words.several] : []), ...sentences].join(' ');
    if (joints.some(isMissed) || joints.every(({block}) => block < unseen)) return {sentence};
    return {
      sentence,
      aside: [
        words.flying({rise: this.#length(dihedral.tipRise), flat: this.#length(wing.span), flown: this.#length(dihedral.spanAsFlown)}),
        words.actsLike(this.#angle(dihedral.equivalent)), this.#groove(solved), this.#off(dihedral),
      ].join(' '),
    };
  }

  #sentence(joint: JointFold | undefined, wing: GliderDesign['wing'], outermost: boolean): string {
    if (!joint) return '';
    const words = this.#words;
    if (joint.place.kind === 'panel-edge-against-stack-face') return words.missed({outermost, angle: this.#angle(joint.lean)});
    if (isMissed(joint)) return words.clear({outermost});
    if (joint.block < unseen) return words.level({outermost});
    return words.by[wing.dihedralBy]({
      where: wing.jointPlace, outermost, propped: joint.propped,
      block: this.#length(joint.block), angle: this.#angle(joint.angle), fold: this.#angle(joint.fold),
      inset: this.#length(joint.place.inset), fromJoint: this.#length(joint.place.fromJoint), width: this.#length(wing.blockWidth),
    });
  }

  protected override renderQuestion(): TemplateResult {
    const {wing} = this.state.design;
    const {fields} = this.#words;
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const {joints, dihedralBy: by, jointPlace: place} = wing;
    const item = (path: 'wing.joints' | 'wing.blocks', index: number, name: string, label: 'at' | 'angle' | 'block'): TemplateResult =>
      this.fields.item(path, {index, name, label: joints.length > 1 ? fields.nth[label](index + 1) : fields[label], disabled: this.locked(path)});
    return html`<div class="fields" @change=${this.#carryOver}>
      ${of('wing.dihedralBy')}
      ${joints.map((_, i) => html`${item('wing.joints', i, 'at', 'at')}
        ${by === 'block' ? nothing : item('wing.joints', i, 'angle', 'angle')}
        ${by === 'angle' ? nothing : i < wing.blocks.length ? item('wing.blocks', i, 'height', 'block') : nothing}`)}
      ${by !== 'angle' && wing.blocks.length < joints.length ? of('wing.blocks') : nothing}
      ${of('wing.span')}
      ${joints[0]?.at === 0 ? of('wing.vPropped') : nothing}
      ${by === 'place' ? nothing : of('wing.jointPlace')}
      ${by === 'place' ? nothing : place === 'inset' ? of('wing.blockInset') : place === 'bench' ? of('wing.blockFromJoint') : place === 'plumb' ? of('wing.blockWidth') : nothing}
      ${this.fields.more(() => [of('wing.joints'), of('wing.jointFace'), of('board.thickness'), of('wing.chord'), of('wing.tipChord'), of('wing.creases')])}
    </div>
    ${this.locked('wing.joints') ? nothing : html`<p class="buttons">
      <button type="button" ?disabled=${joints.length >= 4} @click=${this.#add}>${this.#words.add}</button>
      <button type="button" ?disabled=${joints.length === 0} @click=${this.#remove}>${this.#words.remove}</button></p>`}`;
  }

  /** When a reader starts from something else, the wing stays as it is: what was found becomes what is given. */
  readonly #carryOver = (event: Event): void => {
    const {good} = this;
    if (!good || (event.target as HTMLElement).id !== 'field-wing.dihedralBy') return;
    const {joints} = good.dihedral;
    const {wing} = this.state.design;
    const changes: Change[] = [];
    if (good.wing.dihedralBy === 'angle') changes.push({path: 'wing.blocks', value: joints.map(({block}) => ({height: block}))});
    if (good.wing.dihedralBy === 'block') changes.push({path: 'wing.joints', value: wing.joints.map((joint, i) => ({...joint, angle: joints[i]?.angle ?? joint.angle}))});
    if (joints.length === wing.joints.length) this.ask(changes);
  };

  readonly #add = (): void => {
    const {joints, blocks, span} = this.state.design.wing;
    const last = joints.at(-1);
    const at = last ? (last.at + span / 2) / 2 : span / 3;
    this.#setJoints([...joints, {angle: last?.angle ?? Math.PI / 18, at: Math.round(at * 1000) / 1000}], [...blocks, ...(blocks.length <= joints.length ? [{height: blocks.at(-1)?.height ?? 0.02}] : [])]);
  };

  readonly #remove = (): void => {
    const {joints, blocks} = this.state.design.wing;
    this.#setJoints(joints.slice(0, -1), blocks);
  };

  #setJoints(joints: GliderDesign['wing']['joints'], blocks: GliderDesign['wing']['blocks']): void {
    this.ask([{path: 'wing.joints', value: joints}, {path: 'wing.blocks', value: blocks}]);
    this.dispatchEvent(new Event('change', {bubbles: true}));
  }

  protected override renderPicture(solved: Solved): TemplateResult {
    const words = this.#words;
    const {dihedral} = solved;
    const {joints} = dihedral;
    const name = joints.length === 0 ? words.pictureFlat : words.picture({
      joints: [...joints].reverse().map((joint) => words.pictureJoint({at: this.#length(joint.at), block: this.#length(joint.block), angle: this.#angle(joint.lean)})).join(' '),
      flown: this.#length(dihedral.spanAsFlown), rise: this.#length(dihedral.tipRise),
    });
    return this.#figure.render(name);
  }

  /** How wide the sharpest joint must be cut, and where a cambered skin is in the way. */
  #groove({dihedral: {joints}, wing}: Solved): string {
    const sharpest = joints.reduce((a, b) => (b.fold > a.fold ? b : a));
    const face = wing.jointFace;
    const width = writeAtLeast(face === 'closing' ? sharpest.grooveLeast : sharpest.slot, 'length', {system: this.system, decimal: this.decimal});
    return this.#words[face][wing.creases.length > 0 ? 'cambered' : 'flat'](width);
  }

  /** What a millimetre does where it does most. */
  #off({joints}: WingDihedral): string {
    const {perMillimetre, propped} = joints.reduce((a, b) => ((b.perMillimetre ?? 0) > (a.perMillimetre ?? 0) ? b : a));
    if (perMillimetre === undefined) return '';
    const step = rulerStep(this.system);
    return this.#words.off[propped === 'panel' ? 'panel' : 'halves']({step: this.#length(step), angle: this.#angle(perMillimetre * step / 1e-3)});
  }

  /** Seen without opening the working, and whatever is hidden: the answer asks for a blade. */
  protected override renderTakeaway({dihedral: {joints}}: Solved): TemplateResult | typeof nothing {
    return joints.length > 0 ? html`<p class="caution">${this.#words.caution}</p>` : nothing;
  }

  protected override renderWorking(solved: Solved): TemplateResult | undefined {
    return later(this, loadWorking)?.renderDihedralWorking(this, solved);
  }

  get #words(): (typeof dihedralWords)['en'] { return this.say(dihedralWords); }
  #length(value: number): string { return this.write(value, 'length'); }
  #angle(value: number): string { return this.write(value, 'angle'); }
}
