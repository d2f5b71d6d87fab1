import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import type {GliderDesign} from '../../calc/design/design.js';
import type {CutPiece} from '../../calc/sheet/plans.js';
import {usualUnit} from '../../calc/units/kinds.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import type {CutPart, LaidOut, LaidPlan} from './laid-out.js';
import {notesOn} from './notes.js';
import {pieceName} from './picture.js';
import {bareSize, place} from './sizes.js';

/** Which piece is pointed out in the picture, which are held, and how a row asks for it. */
export interface Pointing {
  readonly lit: number | undefined;
  /** Whether the places of many pieces are to be seen, and how that changes: they take their time. */
  readonly places: boolean;
  openPlaces(open: boolean): void;
  isHeld(piece: CutPiece, plan: LaidPlan): boolean;
  point(number: number | undefined): void;
  /** Takes a piece in hand. */
  take(number: number): void;
  /** Holds the piece in hand, or lets it go. */
  hold(number: number): void;
}

interface Row { readonly piece: CutPiece; readonly plan: LaidPlan }

/** More pieces than this are counted first, and their places stand behind a disclosure. */
const most = 24;

/** Every piece with its size and its place, part by part, and what is to be drawn on it. */
export function cutList(host: GliderElement, cut: LaidOut, design: GliderDesign, pointing: Pointing): TemplateResult {
  const words = host.say(sheetWords);
  const many = cut.plans.reduce((sum, {pieces}) => sum + pieces.length, 0) > most;
  return html`<div class="list">${many
    ? html`${countList(host, cut, design)}<details @toggle=${(e: Event) => { pointing.openPlaces((e.target as HTMLDetailsElement).open); }}><summary>${words.places}</summary>${pointing.places ? placeList(host, cut, design, pointing, false) : nothing}</details>`
    : placeList(host, cut, design, pointing, true)}</div>`;
}

/** How many of each part, with what is to be drawn on it. */
function countList(host: GliderElement, cut: LaidOut, design: GliderDesign): TemplateResult {
  const words = host.say(sheetWords);
  return html`<table part="list"><caption>${words.list}</caption>
    <thead><tr><th scope="col">${words.columns.part}</th><th scope="col" class="number">${words.columns.pieces}</th><th scope="col" class="number">${inUnit(host, words.columns.size)}</th></tr></thead>
    ${cut.parts.map((part) => {
      const count = countOf(cut, part);
      return count === 0 ? nothing : html`<tbody>
        <tr><th scope="row">${pieceName(host, part)}</th><td class="number">${count}</td><td class="number">${bareSize(host, part.outline)}</td></tr>
        ${noteRow(notesOn(host, part, design), 3)}</tbody>`;
    })}</table>`;
}

function placeList(host: GliderElement, cut: LaidOut, design: GliderDesign, pointing: Pointing, noted: boolean): TemplateResult {
  const words = host.say(sheetWords);
  const {columns} = words;
  const several = cut.sheets + cut.oldPieces > 1;
  return html`<table part="list"><caption class=${noted ? '' : 'hidden'}>${noted ? words.list : words.places}</caption>
    <thead><tr><th scope="col">${columns.piece}</th><th scope="col" class="number">${inUnit(host, columns.size)}</th>${several ? html`<th scope="col" class="number">${columns.sheet}</th>` : nothing}
      <th scope="col" class="number">${inUnit(host, columns.across)}</th><th scope="col" class="number">${inUnit(host, columns.up)}</th></tr></thead>
    ${cut.parts.map((part) => {
      const rows = cut.plans.flatMap((plan) => plan.pieces.filter((piece) => piece.part === part).map((piece): Row => ({piece, plan})));
      const count = countOf(cut, part);
      return rows.length === 0 ? nothing : html`<tbody>
        ${rows.map((row) => pieceRow(host, row, several, pointing))}
        ${noted ? noteRow([...count > 1 ? [words.note.pieces(count)] : [], ...notesOn(host, part, design)], several ? 5 : 4) : nothing}</tbody>`;
    })}</table>`;
}

const inUnit = (host: GliderElement, column: string): string => `${column}, ${usualUnit('length', host.system)}`;

/** The same piece is cut from every sheet of a plan. */
const countOf = ({plans}: LaidOut, part: CutPart): number =>
  plans.reduce((sum, {pieces, alike}) => sum + alike * pieces.filter((piece) => piece.part === part).length, 0);

const noteRow = (notes: readonly string[], columns: number): TemplateResult | typeof nothing =>
  notes.length === 0 ? nothing : html`<tr class="note"><td colspan=${columns}>${notes.join(' ')}</td></tr>`;

function pieceRow(host: GliderElement, {piece, plan}: Row, several: boolean, pointing: Pointing): TemplateResult {
  const words = host.say(sheetWords);
  const {number, part, placed} = piece;
  const name = pieceName(host, part);
  const on = (): void => { pointing.point(number); };
  const off = (): void => { pointing.point(undefined); };
  return html`<tr class=${number === pointing.lit ? 'lit' : ''} @pointerenter=${on} @pointerleave=${off} @focusin=${on} @focusout=${off}>
    <th scope="row"><span class="named"><button type="button" class="piece" part="button" aria-pressed=${pointing.isHeld(piece, plan) ? 'true' : 'false'} aria-label=${words.show({number, part: name})}
      @focus=${() => { pointing.take(number); }} @click=${() => { pointing.hold(number); }}>${number}</button> <span>${name}</span></span></th>
    <td class="number">${bareSize(host, part.outline)}</td>
    ${several ? html`<td class="number">${words.sheetNumbers(plan.first, plan.alike)}</td>` : nothing}
    <td class="number">${place(host, placed.x)}</td><td class="number">${place(host, placed.y)}</td></tr>`;
}
