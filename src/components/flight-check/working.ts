import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {planeNeutralPoint} from '../../calc/aero/handbook/plane-neutral-point.js';
import {gravity} from '../../calc/aero/air.js';
import {finVolume, tailVolume} from '../../calc/flight/fin-volume.js';
import type {GliderDesign} from '../../calc/design/design.js';
import type {FlightCheck} from '../../calc/flight/flight-check.js';
import type {Flight, Trim} from '../../calc/flight/flight.js';
import type {Change} from '../../calc/flight/sensitivities.js';
import {equivalentDihedral} from '../../calc/flight/spiral.js';
import {fastLoad, type BendingAt, type WingStrength} from '../../calc/flight/wing-strength.js';
import {flightCheckWords} from '../../messages/en/flight-check.js';
import {flightWorkingWords} from '../../messages/en/flight-working.js';
import type {GliderElement} from '../base/element.js';
import {brackets, equation, fraction, named, number, operator, power, quantity, root, row, symbol} from '../base/equation.js';
import {numbersTable} from '../base/table.js';
import {neutralPointWithin} from './checked.js';
import {usualOf, valueOf, written} from './numbers.js';
import {moving, trimming} from './theory.js';

const times = operator('·'), minus = operator('−');
const m = symbol('m'), S = symbol('S'), c = symbol('c̄'), b = symbol('b'), V = symbol('V'), gamma = symbol('γ');

const pure = (host: GliderElement, value: number, digits = 2): string => host.write(value, 'count', {digits});
const length = (host: GliderElement, value: number): TemplateResult => quantity(host.write(value, 'length'));
const area = (host: GliderElement, value: number): TemplateResult => quantity(host.write(value, 'area', host.system === 'inch' ? {} : {digits: 2}));

/** Every formula behind the check, with this plane's numbers. */
export function flightWorking(host: GliderElement, check: FlightCheck): TemplateResult {
  const {because} = host.say(flightWorkingWords);
  const words = host.say(flightCheckWords);
  return html`${loadings(host, check)}${margin(host, check)}${volumes(host, check)}
    ${check.flight.ok && check.trim.ok ? html`${trimming(host, check, check.trim.value)}${gliding(host, check, check.flight.value, check.trim.value)}${moving(host, check, check.trim.value)}${changes(host, check.trim.value)}${bending(host, check)}` : nothing}
    <p class="source">${because.practice}</p>
    ${numbersTable(host, check.measures.map((measure) => [words.measures[measure.id].name, `${valueOf(host, measure, check)} (${usualOf(host, measure)})`]))}`;
}

function loadings(host: GliderElement, {plane}: FlightCheck): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {mass, aero: {shape: {wing}}} = plane;
  const weight = quantity(host.write(mass, 'mass'));
  const wings = written(host, {id: 'wingLoading', kind: 'areal-mass'}, mass / wing.area), cube = written(host, {id: 'cubeLoading', kind: 'cube-loading'}, mass / wing.area ** 1.5);
  return html`${equation(spoken.wing(wings), fraction(m, S), fraction(weight, area(host, wing.area)), quantity(wings))}
    ${equation(spoken.cube(cube), fraction(m, power(S, '3/2')), fraction(weight, power(row(operator('('), area(host, wing.area), operator(')')), '3/2')), quantity(cube))}
    <p class="source">${because.loading}</p>`;
}

function margin(host: GliderElement, check: FlightCheck): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {plane, design} = check;
  const {meanAerodynamicChord: chord} = plane.aero.shape.wing;
  const said = host.write(plane.margin, 'ratio', {digits: 0});
  const handbook = planeNeutralPoint(design.wing, design.tail, design.arrangement, design.board);
  return html`${equation(spoken.margin(said), symbol('σ'), fraction(row(symbol('x', 'n'), minus, symbol('x')), c),
    fraction(row(length(host, plane.neutralPoint), minus, length(host, plane.balance)), length(host, chord)), quantity(said))}
    <p class="source">${because.margin(neutralPointWithin(host, check))}
      ${handbook.ok ? because.handbook({lattice: host.write(plane.neutralPoint, 'length'), handbook: host.write(handbook.value.behindWing, 'length')}) : nothing}</p>`;
}

function volumes(host: GliderElement, {plane, design}: FlightCheck): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {wing, tail, arm} = plane.aero.shape;
  const tails = pure(host, tailVolume(plane)), fin = finVolume(plane, design), fins = pure(host, fin, 3);
  const {count, height, chord, tipChord = chord} = design.tail.fins;
  const finArea = count * height * (chord + tipChord) / 2;
  const volume = (s: TemplateResult, l: TemplateResult, wings: TemplateResult, by: TemplateResult): TemplateResult => fraction(row(s, times, l), row(wings, times, by));
  return html`${equation(spoken.tail(tails), symbol('V', 't'), volume(symbol('S', 't'), symbol('l', 't'), S, c),
    volume(area(host, tail.area), length(host, arm), area(host, wing.area), length(host, wing.meanAerodynamicChord)), number(tails))}
    ${finArea > 0 ? equation(spoken.fin(fins), symbol('V', 'f'), volume(symbol('S', 'f'), symbol('l', 'f'), S, b),
      volume(area(host, finArea), length(host, fin * wing.area * wing.span / finArea), area(host, wing.area), length(host, wing.span)), number(fins)) : nothing}
    <p class="source">${because.volumes}</p>`;
}

function gliding(host: GliderElement, {plane, motion}: FlightCheck, {air}: Flight, {glide}: Trim): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {wing, arm} = plane.aero.shape;
  const CL = symbol('C', 'L'), CD = symbol('C', 'D'), rho = symbol('ρ');
  const speed = host.write(glide.speed, 'speed'), sink = host.write(glide.sink.usual, 'speed', {digits: 2}), angle = host.write(glide.angle, 'angle');
  const {parasite, induced, suction} = glide.dragOf;
  const part = (value: number): string => host.write(value / (parasite + induced + suction), 'ratio', {digits: 0});
  const reynolds = written(host, {id: 'reynolds', kind: 'count'}, glide.reynolds);
  const si = {
    weight: `${pure(host, plane.mass * gravity)}\u00a0N`, density: `${pure(host, air.density)}\u00a0kg/m³`, area: `${pure(host, wing.area, 4)}\u00a0m²`,
    viscosity: `${pure(host, air.kinematicViscosity * 1e6, 1)}\u00a0mm²/s`,
  };
  const dihedral = equivalentDihedral(plane.aero.strips);
  return html`${equation(spoken.angle(angle), named('tan', gamma), fraction(CD, CL), fraction(number(pure(host, glide.drag.usual, 3)), number(pure(host, glide.lift))), named('tan', quantity(angle)))}
    ${equation(spoken.speed(speed), V, root(fraction(row(number('2'), m, symbol('g'), named('cos', gamma)), row(rho, S, CL))),
      root(fraction(row(number('2'), times, quantity(si.weight), times, named('cos', quantity(angle))), row(quantity(si.density), times, quantity(si.area), times, number(pure(host, glide.lift))))), quantity(speed))}
    ${equation(spoken.sink(sink), symbol('w'), row(V, named('sin', gamma)), row(quantity(speed), times, named('sin', quantity(angle))), quantity(sink))}
    <p class="source">${because.glide} ${because.drag({parasite: part(parasite), induced: part(induced), suction: part(suction)})}</p>
    ${equation(spoken.reynolds(reynolds), symbol('Re'), fraction(row(V, times, symbol('c')), symbol('ν')),
      fraction(row(quantity(speed), times, length(host, wing.meanChord)), quantity(si.viscosity)), number(reynolds))}
    <p class="source">${because.reynolds}</p>
    ${motion.ok ? html`${equation(spoken.roll(pure(host, motion.value.spiralRule, 1)), symbol('B'), row(fraction(symbol('l'), b), times, fraction(symbol('Γ'), CL)),
      row(fraction(length(host, plane.aero.x + arm - plane.balance), length(host, wing.span)), times, fraction(quantity(host.write(dihedral, 'angle')), number(pure(host, glide.lift)))), number(pure(host, motion.value.spiralRule, 1)))}
      <p class="source">${because.roll}</p>` : nothing}`;
}

/** What a gram, a millimetre and a degree do. */
function changes(host: GliderElement, {sensitivities}: Trim): TemplateResult {
  const {change: words} = host.say(flightWorkingWords);
  const signed = (value: number, said: string): string => value > 0 ? `+${said}` : said;
  const rows = (['noseGram', 'tailMillimetre', 'foldDegree'] as const).flatMap((name): (readonly [string, Change])[] => {
    const change = sensitivities[name];
    return change ? [[words[name], change]] : [];
  });
  return html`<table data-table="changes"><caption class="source">${words.caption}</caption>
    <thead><tr><th scope="col">${words.what}</th><th scope="col" class="number">${words.speed}</th><th scope="col" class="number">${words.ratio}</th><th scope="col" class="number">${words.margin}</th></tr></thead>
    <tbody>${rows.map(([name, {speed, ratio, margin: more}]) => html`<tr><th scope="row">${name}</th><td class="number">${signed(speed, host.write(speed, 'speed', {digits: 2}))}</td>
      <td class="number">${signed(ratio, pure(host, ratio, 1))}</td><td class="number">${signed(more, host.write(more, 'ratio', {digits: 1}))}</td></tr>`)}</tbody></table>`;
}

/** Bending as the wing is, and beside it as it would be with its upper skin peeled, or whole. */
function bending(host: GliderElement, {design, plane, strength, otherwise: other}: FlightCheck): TemplateResult {
  const {because, strength: words} = host.say(flightWorkingWords);
  if (!strength.ok) return html``;
  const bare = design.wing.peeled !== 'none';
  const place = ({at}: BendingAt): string => at === 0 ? words.middle : words.joint(host.write(at, 'length'));
  const moment = (value: number): string => pure(host, value * 1000, 0);
  const line = (one: BendingAt, name: string): TemplateResult => html`<tr><th scope="row">${name}</th><td class="number">${moment(one.glide)}</td>
    <td class="number">${moment(one.fast)}</td><td class="number">${host.say(flightCheckWords).range(moment(one.takes.least), moment(one.takes.most))}</td></tr>`;
  return html`${strengthOf(host, design, plane, strength.value, place)}<table data-table="bending"><caption class="source">${words.caption}</caption>
    <thead><tr><th scope="col">${words.place}</th><th scope="col" class="number">${words.glide}</th><th scope="col" class="number">${words.fast}</th><th scope="col" class="number">${words.takes}</th></tr></thead>
    <tbody>${strength.value.places.map((one) => line(one, place(one)))}
      ${other.ok ? other.value.places.map((one) => line(one, (bare ? words.whole : words.peeled)(place(one)))) : nothing}</tbody></table>
    <p class="source">${because.strength}</p>`;
}

/** The bending moment at the weakest place and what the board takes there, in N and mm as its table. */
function strengthOf(host: GliderElement, {board}: GliderDesign, {mass}: FlightCheck['plane'], {weakest, onWing}: WingStrength, place: (one: BendingAt) => string): TemplateResult {
  const {because, spoken} = host.say(flightWorkingWords);
  const {byAir, glide, fast, takes, bears, carries, chord, reserve} = weakest;
  const M = symbol('M'), most = symbol('M', 'b'), h = symbol('h'), width = symbol('c', 'b');
  const moment = (value: number, digits = 0): string => `${pure(host, value * 1e3, digits)}\u00a0N·mm`;
  const mm = (value: number): TemplateResult => quantity(host.write(value, 'length', {unit: 'mm', digits: 1}));
  const grams = (value: number): TemplateResult => quantity(host.write(value, 'mass', {unit: 'g', digits: 0}));
  // the skins' force for each millimetre, the foam's stress for each square one
  const strong = quantity(carries === 'skins' ? `${pure(host, bears.usual / 1e3, 1)}\u00a0N/mm` : `${pure(host, bears.usual / 1e6)}\u00a0N/mm²`);
  const sigma = symbol('σ'), parts = {'skins': undefined, 'skin-and-foam': '3', 'foam': '6'}[carries];
  const formula = parts === undefined ? row(symbol('n'), h, width) : fraction(row(sigma, power(h, '2'), width), number(parts));
  const product = row(strong, times, parts === undefined ? mm(board.thickness) : power(brackets(mm(board.thickness)), '2'), times, mm(chord));
  return html`${equation(spoken.bending(moment(glide)), M, row(brackets(row(number('1'), minus, fraction(symbol('m', 'w'), m))), operator('∑'), symbol('F'), symbol('y')),
      row(brackets(row(number('1'), minus, fraction(grams(onWing), grams(mass)))), times, quantity(moment(byAir))), quantity(moment(glide)))}
    ${equation(spoken.takes[carries](moment(takes.usual)), most, formula, parts === undefined ? product : fraction(product, number(parts)), quantity(moment(takes.usual)))}
    ${equation(spoken.reserve(pure(host, reserve.usual, 1)), symbol('r'), fraction(most, row(number(String(fastLoad)), M)), fraction(quantity(moment(takes.usual)), quantity(moment(fast))), number(pure(host, reserve.usual, 1)))}
    <p class="source">${because.bending(place(weakest))} ${because.carries[carries]}</p>`;
}
