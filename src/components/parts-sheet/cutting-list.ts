import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {bounds, pointInPolygon, signedArea, type Point, type Polygon} from '../../calc/geometry/polygon/index.js';
import {cuttingOrder, type CutStep, type RulerCut} from '../../calc/sheet/engine/cutting-order.js';
import type {Box, FoundSheet} from '../../calc/sheet/engine/job.js';
import type {Placed} from '../../calc/sheet/layout.js';
import type {CutSketch} from '../../drawing/figures/sheet-layout.js';
import {sheetListWords} from '../../messages/en/sheet-lists.js';
import {emphasised} from '../base/emphasis.js';
import type {GliderElement} from '../base/element.js';
import type {LaidPlan} from './laid-out.js';
import {called} from './marking-list.js';
import {mm} from './picture.js';
import {place, written} from './sizes.js';

const known = new WeakMap<FoundSheet, readonly CutStep[]>();

/** The cuts of a sheet, in order; none where it is not cut edge to edge. */
export function stepsOf({sheet}: LaidPlan, gap: number): readonly CutStep[] {
  if (!sheet.plan) return [];
  const steps = known.get(sheet) ?? cuttingOrder(sheet, gap);
  known.set(sheet, steps);
  return steps;
}

const corners = ({x, y, length, width}: Box): Polygon => [{x, y}, {x: x + length, y}, {x: x + length, y: y + width}, {x, y: y + width}];
const handOf = (step: CutStep): Polygon => (step.kind === 'ruler' ? corners(step.hand) : step.hand);

/** A cut as the picture points it out. */
export function cutSketch(step: CutStep, sheet: number): CutSketch {
  const [outlined] = step.kind === 'outline' ? step.pieces : [];
  const line: Polygon = step.kind === 'outline' ? [...outlined?.outline ?? [], ...outlined?.outline.slice(0, 1) ?? []] : [step.line.from, step.line.to];
  return {sheet, hand: handOf(step).map(mm), line: line.map(mm)};
}

/** Where a reader has got to, and how to go on. */
export interface AtStep {
  readonly step: number | undefined;
  readonly goTo: (step: number | undefined) => void;
}

/** The order of cuts in words; the one at hand stands out, here and in the picture. */
export function cuttingList(host: GliderElement, plan: LaidPlan, gap: number, {step, goTo}: AtStep): TemplateResult {
  const words = host.say(sheetListWords);
  const steps = stepsOf(plan, gap);
  if (steps.length === 0) return html`<p class="source">${words.notStraight}</p>`;
  const last = steps.length - 1;
  const onKey = (event: KeyboardEvent): void => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    goTo(step === undefined ? 0 : Math.min(last, Math.max(0, step + by)));
  };
  const settings = steps.filter((each) => each.kind === 'ruler' && !each.again).length;
  return html`<div class="steps">
    <div class="stepping" role="group" @keydown=${onKey}>
      <button type="button" part="button" class="previous" aria-disabled=${step === undefined || step === 0 ? 'true' : 'false'} @click=${() => { if (step) goTo(step - 1); }}>${words.previous}</button>
      <button type="button" part="button" class="next" aria-disabled=${step === last ? 'true' : 'false'} @click=${() => { goTo(step === undefined ? 0 : Math.min(last, step + 1)); }}>${step === undefined ? words.first : words.next}</button>
      ${step === undefined ? nothing : html`<button type="button" part="button" class="hide" @click=${() => { goTo(undefined); }}>${words.hideCut}</button>`}
    </div>
    <p class="now" role="status">${step === undefined || !steps[step] ? `${words.sum({cuts: steps.length, settings})} ${words.drawnAs} ${words.help}` : html`<strong>${words.step({nth: step + 1, of: steps.length})}</strong> ${emphasised(inWords(host, plan, steps[step]))}`}</p>
    <details class="all"><summary>${words.all}</summary><ol>${steps.map((each, i) => html`<li class=${i === step ? 'lit' : ''} aria-current=${i === step ? 'step' : nothing}>${emphasised(inWords(host, plan, each))}</li>`)}</ol></details></div>`;
}

function inWords(host: GliderElement, plan: LaidPlan, step: CutStep): string {
  const words = host.say(sheetListWords);
  const name = (piece: Placed): string => called(host, plan, piece);
  if (step.kind === 'outline') return words.outline(step.pieces.map(name));
  const size = bounds(handOf(step));
  const {length, width} = plan.sheet;
  const isWhole = size.length > length - 1e-6 && size.width > width - 1e-6;
  const hand = isWhole ? words.whose.whole : words.whose.piece(written(host, size.length, size.width));
  if (step.kind === 'edge') {
    // as measured on the piece in hand, which has left the sheet by now
    const corner = ({x, y}: Point): string => words.corner({across: place(host, x - size.x), up: place(host, y - size.y)});
    return words.edge({pieces: step.pieces.map(name), from: corner(step.line.from), to: corner(step.line.to), hand});
  }
  const {setting, again, along} = step;
  const said = words.ruler({setting: host.write(setting, 'length', {fraction: 32}), again, along, long: host.write(along ? size.length : size.width, 'length'), hand});
  return [said, ...whatFalls(host, plan, step)].join(' ');
}

/** What is so narrow is shaved off rather than cut off. */
const sliver = 0.003;

/** What comes off, and what stays where that is a part already. */
function whatFalls(host: GliderElement, plan: LaidPlan, {hand, along, setting, off, rest}: RulerCut): readonly string[] {
  const words = host.say(sheetListWords);
  const within = (box: Box): readonly Placed[] => plan.pieces.map(({placed}) => placed).filter(({outline}) => {
    const {x, y, length, width} = bounds(outline);
    return pointInPolygon({x: x + length / 2, y: y + width / 2}, corners(box)) !== 'outside';
  });
  const isAll = (piece: Placed, box: Box): boolean => {
    const {length, width} = bounds(piece.outline);
    return Math.abs(length - box.length) < 1e-6 && Math.abs(width - box.width) < 1e-6;
  };
  const inOff = within(off), inRest = within(rest);
  const [one] = inOff, [stays] = inRest;
  // a slanting outline is not done when its box is
  const isDone = ({outline}: Placed, {length, width}: Box): boolean => Math.abs(signedArea(outline)) > length * width * (1 - 1e-6);
  const alone = (piece: Placed, box: Box, done: (piece: string) => string, rough: (piece: string) => string): string =>
    (isDone(piece, box) ? done : rough)(called(host, plan, piece));
  const offcut = (box: Box, width: number, say: (size: string) => string): string => (width < sliver ? words.sliver(host.write(width, 'length')) : say(sizeOf(box)));
  const sizeOf = ({length, width}: Box): string => written(host, Math.max(length, width), Math.min(length, width));
  const named = (pieces: readonly Placed[]): readonly string[] => pieces.map((piece) => called(host, plan, piece));
  if (stays === undefined && inOff.length > 1) return [offcut(rest, (along ? hand.width : hand.length) - setting, words.restOffcut)];
  return [
    one === undefined ? offcut(off, setting, words.offcut)
      : inOff.length === 1 && isAll(one, off) ? alone(one, off, words.offPiece, words.offRough) : words.off(named(inOff)),
    ...stays && inRest.length === 1 && isAll(stays, rest) ? [alone(stays, rest, words.rest, words.restRough)] : [],
  ];
}
