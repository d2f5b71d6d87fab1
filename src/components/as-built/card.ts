import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {outOfTrue, type AsBuiltStudy} from '../../calc/as-built/study.js';
import {smallEnough, type Truth, type TruthId} from '../../calc/as-built/tolerances.js';
import {asBuiltWords} from '../../messages/en/as-built.js';
import type {GliderElement} from '../base/element.js';
import {circle, fine, fits, stepOf, widest} from './sentences.js';

/** Ticks of one element, in memory only. */
export type Ticks = Set<TruthId>;

/** More than a builder could miss. */
const obvious = {length: 0.02, mass: 0.02} as const;

/** What to check before the first throw, what matters most first: with what a little off does, and how much the plane bears. */
export function card(host: GliderElement, study: AsBuiltStudy, ticks: Ticks): TemplateResult {
  const {truth: words} = host.say(asBuiltWords);
  const off = outOfTrue(study);
  return html`<div part="truth"><h4 class="group">${words.heading}</h4>
    ${study.truths.length === 0 ? html`<p class="source">${words.none}</p>` : html`<table class="truth"><caption class="source">${words.caption}</caption>
      <thead><tr><th scope="col">${words.check}</th><th scope="col">${words.off}</th><th scope="col" class="number">${words.within}</th></tr></thead>
      <tbody>${study.truths.map((one) => row(host, study, one, off, ticks))}</tbody></table>
    <p class="source">${words.criterion({speed: host.write(smallEnough.speed, 'ratio', {digits: 0}), radius: circle(host, smallEnough.radius)})}</p>`}</div>`;
}

function row(host: GliderElement, study: AsBuiltStudy, truth: Truth, off: Readonly<Partial<Record<TruthId, number>>>, ticks: Ticks): TemplateResult {
  const {truth: words} = host.say(asBuiltWords);
  const {id, kind, within} = truth, by = off[id], fit = fits(truth, off);
  return html`<tr data-truth=${id}><th scope="row"><label><input type="checkbox" part="tick" .checked=${ticks.has(id)} @change=${(e: Event) => {
    if ((e.target as HTMLInputElement).checked) ticks.add(id); else ticks.delete(id);
  }}><span>${words.truths[id].check(target(host, study, id))}
    ${by === undefined ? nothing : html`<span class="found ${fit === false ? 'bad' : ''}">${words.measured({off: fine(host, Math.abs(by))})}, ${fit === false ? words.fitsNot : words.fits}</span>`}</span></label></th>
    <td>${effect(host, truth)}</td><td class="number">${within > obvious[kind] ? words.hardly : html`±\u00a0${allowance(host, kind, within)}`}</td></tr>`;
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
  const {words: step, times} = stepOf(host, truth), named = words.truths[truth.id].step(step);
  if (truth.glide) {
    const by = truth.glide.speed * times;
    return words.speed({step: named, by: host.write(Math.abs(by), 'speed', {digits: host.system === 'inch' ? 1 : 2}), slower: by < 0});
  }
  const radius = Math.abs(truth.radius ?? Infinity) / times;
  return radius > widest ? words.noTurn(named) : words.turn({step: named, radius: circle(host, radius)});
}

/** What the plan has, in words. */
function target(host: GliderElement, {sizes, planned, design}: AsBuiltStudy, id: TruthId): string {
  const size = {hollow: sizes.hollow, tail: sizes.tail, balance: planned.plane.balance, tips: sizes.tip, skew: sizes.tipToTail}[id as string];
  if (id === 'nose') return host.write(design.ballast.masses.reduce((sum, {mass}) => sum + mass, 0), 'mass');
  return size === undefined ? '' : fine(host, size);
}
