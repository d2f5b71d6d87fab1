import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {Polygon} from '../../calc/geometry/polygon/index.js';
import {commonWords} from '../../messages/en/common.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import {equation, fraction, number, operator, quantity, row, symbol} from '../base/equation.js';
import type {Found} from './found.js';
import {pieceName} from './picture.js';
import {place} from './sizes.js';

/** Why no fewer sheets can do, how the parts were placed, and the corners of what is no plain rectangle. */
export function sheetWorking(host: GliderElement, {cut, wanted}: Found): TemplateResult {
  const words = host.say(sheetWords);
  const {because, symbols} = words;
  const {length, width} = cut.stock;
  const parts = host.write(cut.usedArea, 'area'), board = host.write(length * width, 'area');
  const ratio = (cut.usedArea / (length * width)).toFixed(2).replace('.', host.decimal);
  return html`
    ${cut.byArea === 0 ? nothing : html`${equation(words.spoken({parts, board, ratio, least: cut.byArea}),
      row(symbol('n'), operator('≥'), fraction(symbol('A', symbols.parts), symbol('A', symbols.sheet))),
      fraction(quantity(parts), quantity(board)), number(ratio))}
      <p class="source">${because.area(cut.byArea)}</p>`}
    ${cut.least > cut.byArea ? html`<p class="source">${because.bound(cut.least)}</p>` : nothing}
    <p class="source">${because.placing} ${because.search}</p>
    ${wanted === 'span' ? html`<p class="source">${because.longest}</p>` : nothing}
    ${wanted === 'sheets' ? nothing : html`<p class="source">${because.more}</p>`}
    ${corners(host, cut.plans.flatMap(({pieces}) => pieces.map(({number: n, part, placed}) => ({n, name: pieceName(host, part), outline: placed.outline}))))}
    <p class="source">${host.say(commonWords).where}: ${because.source}</p>`;
}

interface Piece { readonly n: number; readonly name: string; readonly outline: Polygon }

/** Whether an outline is an upright rectangle: then its place and size say it all. */
const isPlain = (outline: Polygon): boolean => outline.length === 4 && outline.every(({x, y}, i) => {
  const before = outline.at(i - 1);
  return before !== undefined && (Math.abs(before.x - x) < 1e-9 || Math.abs(before.y - y) < 1e-9);
});

function corners(host: GliderElement, pieces: readonly Piece[]): TemplateResult | typeof nothing {
  const words = host.say(sheetWords);
  const slanting = pieces.filter(({outline}) => !isPlain(outline));
  if (slanting.length === 0) return nothing;
  return html`<table><caption class="source">${words.corners}</caption><tbody>${slanting.map(({n, name, outline}) => html`<tr><th scope="row">${n} ${name}</th>
    <td>${outline.map(({x, y}, i) => html`${i > 0 ? ' · ' : ''}<span class="corner">${place(host, x)} | ${place(host, y)}</span>`)}</td></tr>`)}</tbody></table>`;
}
