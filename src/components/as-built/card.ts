import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {outOfTrue, type AsBuiltStudy} from '../../calc/as-built/study.js';
import {smallEnough, type Truth, type TruthId} from '../../calc/as-built/tolerances.js';
import {turnSeen} from '../../calc/flight/simulation/turn-seen.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import {acrossWords} from '../base/across.js';
import type {GliderElement} from '../base/element.js';
import {balanceRange, fine, fits, stepWords} from './sentences.js';

/** Ticks of one element, in memory only. */
export type Ticks = Set<TruthId>;

/** More than a builder could miss. */
const obvious = {length: 0.02, mass: 0.02} as const;

/** What to check before the first throw, what matters most first: with what a little off does, and how much the plane bears. Its roles stay what they are where a narrow page stacks its rows. */
export function card(host: GliderElement, study: AsBuiltStudy, ticks: Ticks): TemplateResult {
  const {truth: words} = host.say(asBuiltWords);
  const off = outOfTrue(study);
  return html`<div part="truth"><h4 class="group">${words.heading}</h4>
    ${study.truths.length === 0 ? html`<p class="source">${words.none}</p>` : html`<table class="truth" role="table"><caption class="source">${words.caption}</caption>
      <thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">${words.check}</th><th scope="col" role="columnheader">${words.off}</th><th scope="col" role="columnheader" class="number">${words.within}</th></tr></thead>
      <tbody role="rowgroup">${study.truths.map((one) => row(host, study, one, off, ticks))}</tbody></table>
    <p class="source">${words.criterion({speed: host.write(smallEnough.speed, 'ratio', {digits: 0}), across: acrossWords(host, 2 * smallEnough.radius)})}</p>`}</div>`;
}

function row(host: GliderElement, study: AsBuiltStudy, truth: Truth, off: Readonly<Partial<Record<TruthId, number>>>, ticks: Ticks): TemplateResult {
  const {truth: words} = host.say(asBuiltWords);
  const {id, kind, within} = truth, by = off[id], better = id === 'tail' && study.better !== undefined, fit = better || fits(truth, off), matters = id === 'balance' || within <= obvious[kind];
  return html`<tr role="row" data-truth=${id}><th scope="row" role="rowheader"><label><input type="checkbox" part="tick" .checked=${ticks.has(id)} @change=${(e: Event) => {
    if ((e.target as HTMLInputElement).checked) ticks.add(id); else ticks.delete(id);
  }}><span>${words.truths[id].check(target(host, study, id))}
    ${by === undefined ? nothing : html`<span class="found ${fit === false ? 'bad' : ''}">${id === 'balance' ? words.measuredAt(fine(host, study.balance.behindWing)) : words.measured({off: fine(host, Math.abs(by))})}, ${better ? words.better : fit === false ? words.fitsNot : words.fits}</span>`}</span></label></th>
    <td role="cell">${effect(host, truth)}</td><td role="cell" class="number" data-name=${matters ? words.within : nothing}>${id === 'balance' ? balanceRange(host, study) : matters ? html`±\u00a0${allowance(host, kind, within)}` : words.hardly}</td></tr>`;
}

/** What a plane bears, never rounded to nothing. */
function allowance(host: GliderElement, kind: Truth['kind'], within: number): string {
  const small = kind === 'mass' || within < 0.0254 / 16;
  if (host.system === 'inch') return host.write(within, kind, small ? {digits: 3} : {fraction: 32});
  return host.write(within, kind, {digits: within < 1e-4 ? 2 : 1});
}

/** What a millimetre or a gram off does. */
function effect(host: GliderElement, truth: Truth): string {
  const {truth: words} = host.say(asBuiltWords);
  const step = words.truths[truth.id].step(stepWords(host, truth)), {glide, turn} = truth;
  if (glide) return words.speed({step, by: host.write(Math.abs(glide.speed), 'speed', {digits: host.system === 'inch' ? 1 : 2}), slower: glide.speed < 0});
  if (!turn?.ok) return words.noGlide(step);
  const seen = turnSeen(turn.value);
  switch (seen.kind) {
    case 'circle': return words.turn({step, across: acrossWords(host, seen.across)});
    case 'hardly': return words.noTurn(step);
    case 'rolls-over': return words.rollsOver(step);
    case 'too-steep': return words.steepTurn(step);
  }
}

/** Where the plan balances, if that is right for the plane as it was built; else the middle of what is. Behind the wing's front edge. */
function inTarget({target: {from, to, middle}, wingAt}: AsBuiltStudy['balance'], planned: number): number {
  return planned + wingAt >= from && planned + wingAt <= to ? planned : middle - wingAt;
}

/** What the plan has, in words. */
function target(host: GliderElement, {sizes, planned, balance, design}: AsBuiltStudy, id: TruthId): string {
  const size = {hollow: sizes.hollow, tail: sizes.tail, balance: inTarget(balance, planned.plane.balance), tips: sizes.tip, skew: sizes.tipToTail}[id as string];
  if (id === 'nose') return host.write(design.ballast.masses.reduce((sum, {mass}) => sum + mass, 0), 'mass');
  return size === undefined ? '' : fine(host, size);
}
