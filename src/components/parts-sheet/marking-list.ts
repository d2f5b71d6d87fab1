import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {markingOut, type Tick} from '../../calc/sheet/engine/marking-out.js';
import type {Placed} from '../../calc/sheet/layout.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {sheetListWords} from '../../messages/en/sheet-lists.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import type {LaidPlan} from './laid-out.js';
import {pieceName} from './picture.js';
import {place} from './sizes.js';

/** All ticks of a sheet from one corner, the long edges first, and the diagonal that shows whether it is square. */
export function markingList(host: GliderElement, plan: LaidPlan): TemplateResult {
  const words = host.say(sheetListWords);
  const {sheet} = plan;
  const out = markingOut(sheet);
  const length = host.write(sheet.length, 'length'), width = host.write(sheet.width, 'length');
  const alongX = {ticks: out.x, edge: length, end: sheet.width}, alongY = {ticks: out.y, edge: width, end: sheet.length};
  const [first, then] = out.longAlongX ? [alongX, alongY] : [alongY, alongX];
  const slanting = plan.pieces.filter(({placed: {outline}}) => outline.some(({x, y}, i) => {
    const before = outline.at(i - 1);
    return before !== undefined && Math.min(Math.abs(before.x - x), Math.abs(before.y - y)) > 1e-9;
  }));
  return html`<p class="source">${words.diagonal(host.write(out.diagonal, 'length'))}</p>
    <p class="source">${words.ticksIntro({along: first.edge, across: then.edge})}</p>
    ${[first, then].map(({ticks, edge, end}) => tickTable(host, plan, ticks, words.ticksAlong(edge), end))}
    ${slanting.length === 0 ? nothing : html`<p class="source">${words.slanting(slanting.map((piece) => called(host, plan, piece.placed)))}</p>`}`;
}

function tickTable(host: GliderElement, plan: LaidPlan, ticks: readonly Tick[], caption: string, end: number): TemplateResult {
  const words = host.say(sheetListWords);
  if (ticks.length === 0) return html`<p class="source">${caption}: ${words.noTicks}</p>`;
  const unit = usualUnit('length', host.system);
  return html`<div class="list"><table class="ticks"><caption>${caption}</caption>
    <thead><tr><th scope="col" class="number">${words.columns.tick}, ${unit}</th><th scope="col">${words.columns.line}, ${unit}</th><th scope="col">${words.columns.pieces}</th></tr></thead>
    <tbody>${ticks.map(({at, spans, pieces}) => html`<tr><th scope="row" class="number">${place(host, at)}</th>
      <td>${spans.map(({from, to}) => (from < 1e-6 && to > end - 1e-6 ? words.whole : words.span({from: place(host, from), to: place(host, to)}))).join('; ')}</td>
      <td class="edges">${pieces.map((piece) => called(host, plan, piece)).join(', ')}</td></tr>`)}</tbody></table></div>`;
}

/** A piece by its number and name. */
export function called(host: GliderElement, {pieces}: LaidPlan, {id, copy, x, y}: Placed): string {
  const piece = pieces.find(({placed}) => placed.id === id && placed.copy === copy) ?? pieces.find(({placed}) => placed.id === id && placed.x === x && placed.y === y);
  return piece ? host.say(sheetWords).piece({number: piece.number, part: pieceName(host, piece.part)}) : '';
}
