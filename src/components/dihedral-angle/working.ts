import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {JointFold, WingDihedral} from '../../calc/bench/dihedral.js';
import {crestGrooves} from '../../calc/bench/joint-groove.js';
import type {CrestGroove} from '../../calc/bench/joint-groove.js';
import type {GliderDesign} from '../../calc/design/design.js';
import {writeAtLeast} from '../../calc/units/write.js';
import {dihedralWorkingWords} from '../../messages/en/dihedral-working.js';
import {commonWords} from '../../messages/en/common.js';
import type {GliderElement} from '../base/element.js';
import {brackets, equation, fraction, named, number, operator, quantity, row, symbol} from '../base/equation.js';
import {numbersTable} from '../base/table.js';
import type {Solved} from './dihedral-angle.js';

type Wing = GliderDesign['wing'];
type Piece = TemplateResult;

const sin = (of: Piece): TemplateResult => named('sin', of);
const tan = (of: Piece): TemplateResult => named('tan', of);
const cos = (of: Piece): TemplateResult => named('cos', of);
const times = operator('·');
const minus = operator('−');
const plus = operator('+');
const letters = {h: symbol('h'), L: symbol('L'), e: symbol('e'), x: symbol('x'), w: symbol('w'), t: symbol('t'), f: symbol('f'), z: symbol('z')};

/** The formulas behind the answer, each with this wing's numbers. */
export function renderDihedralWorking(host: GliderElement, {dihedral, wing, board}: Solved): TemplateResult {
  const {thickness} = board;
  const found = crestGrooves(wing, board);
  const crests = found.ok ? found.value : undefined;
  const words = host.say(dihedralWorkingWords);
  const {joints} = dihedral;
  const inOrder = [...joints].reverse();
  return html`
    ${joints.length === 0 ? nothing : html`<p class="source">${words.how[wing.jointFace]}${wing.creases.length > 0 ? ` ${words.slit[wing.jointFace]}` : nothing}</p>`}
    ${inOrder.map((joint, order) => html`${joints.length > 1 ? html`<p><b>${words.step(order + 1, host.write(joint.at, 'length'))}</b></p>` : nothing}
      ${jointWorking(host, joint, wing, thickness, crests?.[joints.indexOf(joint)])}`)}
    ${flownWorking(host, dihedral)}
    ${numbersTable(host, rows(host, dihedral, wing, crests))}
    <p class="source">${host.say(commonWords).where}: ${words.source} ${words.equivalentSource}</p>`;
}

function rows(host: GliderElement, dihedral: WingDihedral, wing: Wing, crests: readonly CrestGroove[] | undefined): readonly (readonly [string, string])[] {
  const {rows: names} = host.say(dihedralWorkingWords);
  const length = (value: number): string => host.write(value, 'length');
  const angle = (value: number): string => host.write(value, 'angle');
  const least = (value: number): string => writeAtLeast(value, 'length', {system: host.system, decimal: host.decimal});
  const several = dihedral.joints.length > 1;
  return [
    ...dihedral.joints.flatMap((joint, i) => {
      const crest = crests?.[i];
      const entries: readonly (readonly [string, string])[] = [
        [names.at, length(joint.at)], [names.angle, angle(joint.angle)], [names.fold, angle(joint.fold)], [names.panel, length(joint.panel)],
        [names.block, length(joint.block)], [names.fromJoint, length(joint.place.fromJoint)], [names.inset, length(joint.place.inset)],
        ...(wing.jointFace === 'opening' ? [[names.slot, least(joint.slot)] as const]
          : [[names.groove, least(joint.grooveLeast)] as const, ...(crest ? [[names.grooveCrest, least(crest.width)] as const] : [])]),
        ...(joint.perMillimetre === undefined ? [] : [[names.perMillimetre, angle(joint.perMillimetre)] as const]),
      ];
      return entries.map(([name, value]) => [several ? `${names.joint(i + 1)}: ${name}` : name, value] as const);
    }),
    [names.rise, length(dihedral.tipRise)], [names.flown, length(dihedral.spanAsFlown)],
    [names.equivalent, angle(dihedral.equivalent)], [names.sameRise, angle(dihedral.sameRiseV)],
  ];
}

/** How one joint is worked out: the height of the block as a formula, with this joint's numbers, and solved for what was asked. */
function jointWorking(host: GliderElement, joint: JointFold, wing: Wing, thickness: number, crest: CrestGroove | undefined): TemplateResult {
  const words = host.say(dihedralWorkingWords);
  const length = (value: number): TemplateResult => quantity(host.write(value, 'length', fine));
  const angle = (value: number): TemplateResult => quantity(host.write(value, 'angle'));
  const {block, lean, place, panel} = joint;
  const said = {block: host.write(block, 'length'), angle: host.write(lean, 'angle')};
  const opening = wing.jointFace === 'opening' && joint.propped !== 'both-halves';
  const where = wing.dihedralBy === 'place' ? 'inset' : wing.jointPlace;

  const leverOf = (of: {L: Piece; e: Piece}): Piece => (where === 'inset' ? brackets(row(of.L, minus, of.e)) : of.L);
  const height = (v: {L: Piece; e: Piece; x: Piece; w: Piece; t: Piece; f: Piece}): TemplateResult => {
    const raised = opening ? [plus, v.t, times, brackets(row(number('1'), minus, where === 'bench' ? fraction(number('1'), cos(v.f)) : cos(v.f)))] : [];
    if (where === 'bench') return row(v.x, times, tan(v.f), ...raised);
    return row(leverOf(v), times, sin(v.f), ...(where === 'plumb' ? [minus, v.w, times, tan(v.f)] : []), ...raised);
  };
  const {h, L, e, t, f, z} = letters;
  const numbers = {L: length(panel), e: length(place.inset), x: length(place.fromJoint), w: length(wing.blockWidth), t: length(thickness), f: angle(lean)};
  const because = words.because;
  return html`
    ${equation(wing.dihedralBy === 'angle' ? words.spoken.block(said) : words.spoken.angle(said), h, height(letters), height(numbers), length(block))}
    ${wing.dihedralBy === 'block' ? html`<div>${equation(words.spoken.angle(said), f, angle(lean))}</div>` : nothing}
    ${wing.dihedralBy === 'place' ? html`${equation(words.spoken.place({inset: host.write(place.inset, 'length')}), e, row(L, minus, fraction(h, sin(f))), length(place.inset))}
      <p class="source">${because.place}</p>` : nothing}
    <p class="source">${opening ? because.opening : because[`closing-${where}`]} ${joint.propped === 'panel' ? nothing : because[joint.propped]}</p>
    ${wing.jointFace === 'closing' ? html`${equation(words.spoken.groove({groove: host.write(crest?.width ?? joint.grooveLeast, 'length', fine)}),
      symbol('g'), row(number('2'), z, times, tan(fraction(symbol('φ'), number('2')))),
      row(number('2'), times, length(crest?.height ?? thickness), times, tan(fraction(angle(joint.fold), number('2')))),
      length(crest?.width ?? joint.grooveLeast))}
      <p class="source">${because.groove}</p>`
    : html`${equation(words.spoken.groove({groove: host.write(joint.slot, 'length', fine)}),
      symbol('g'), row(number('2'), t, times, sin(fraction(symbol('φ'), number('2')))), length(joint.slot))}<p class="source">${because.slot}</p>`}`;
}

const fine = {digits: 1} as const;

const panelLength = ({panels}: WingDihedral, index: number): number => (panels[index]?.to ?? 0) - (panels[index]?.from ?? 0);

/** The wing as it flies: how high, how far across, and which plain V it acts like. */
function flownWorking(host: GliderElement, result: WingDihedral): TemplateResult {
  const words = host.say(dihedralWorkingWords);
  const length = (value: number): string => host.write(value, 'length');
  const angle = (value: number): string => host.write(value, 'angle');
  const projected = (of: (argument: TemplateResult) => TemplateResult, by: (angle: number) => number): TemplateResult[] => result.panels
    .map((panel) => row(quantity(length(panel.to - panel.from)), times, of(quantity(angle(panel.angle)))))
    .map((formula, i) => equation(words.spoken.panel(length(panelLength(result, i) * by(result.panels[i]?.angle ?? 0))), formula, quantity(length(panelLength(result, i) * by(result.panels[i]?.angle ?? 0)))));
  const gamma = symbol('Γ'), c = symbol('c'), y = symbol('y');
  const integral = (...of: readonly Piece[]): TemplateResult => row(operator('∫'), ...of, symbol('d'), y);
  return html`
    ${equation(words.spoken.rise({rise: length(result.tipRise)}), symbol('H'), row(operator('∑'), letters.L, times, sin(gamma)), quantity(length(result.tipRise)))}
    ${projected(sin, Math.sin)}
    ${equation(words.spoken.flown({flown: length(result.spanAsFlown)}), symbol('b'), row(number('2'), operator('∑'), letters.L, times, cos(gamma)), quantity(length(result.spanAsFlown)))}
    ${projected(cos, Math.cos)}
    <p class="source">${words.because.flown}</p>
    ${equation(words.spoken.equivalent({equivalent: angle(result.equivalent)}), symbol('Γ', 'eq'), fraction(integral(gamma, c, y), integral(c, y)), quantity(angle(result.equivalent)))}
    <p class="source">${words.because.equivalent}</p>`;
}
