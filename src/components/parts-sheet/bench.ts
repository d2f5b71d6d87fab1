import type {SheetPicture} from '../../drawing/figures/sheet-layout.js';
import {layOutSheets} from '../../drawing/figures/sheet-layout.js';
import type {Hand} from './hand.js';
import type {LaidOut} from './laid-out.js';
import {pieceAt, sheetAt} from './piece-at.js';

/** What is seen now, and what a pointer or a key may do to it. */
export interface Seen {
  readonly laid: LaidOut | undefined;
  readonly picture: SheetPicture | undefined;
}

/** So many ruler marks at once with Shift. */
const farther = 10;
/** A press that moves less than this is a tap, px. */
const still = 4;
/** The least that a thumb can take hold of, px. */
const thumb = 44;

/** The picture as a bench: parts are taken up and moved by pointer or by key. */
export class Bench {
  readonly #hand: Hand;
  readonly #seen: () => Seen;
  readonly #point: (number: number | undefined) => void;
  #drag: {readonly id: number; readonly from: {readonly x: number; readonly y: number}; readonly offset: {readonly x: number; readonly y: number}; moving: boolean} | undefined;

  /** `point` hears which piece the pointer is over. */
  constructor(hand: Hand, seen: () => Seen, point: (number: number | undefined) => void) {
    this.#hand = hand;
    this.#seen = seen;
    this.#point = point;
  }

  /** Where the pointer is in the picture: on which piece, and where on which sheet, in m. */
  #under(event: PointerEvent): {readonly number: number | undefined; readonly on: {readonly sheet: number; readonly x: number; readonly y: number} | undefined} {
    const svg = (event.currentTarget as Element).querySelector('svg');
    const {picture} = this.#seen();
    if (!svg || !picture) return {number: undefined, on: undefined};
    const {left, top, width} = svg.getBoundingClientRect();
    const layout = layOutSheets(picture, width);
    const x = event.clientX - left, y = event.clientY - top;
    return {number: pieceAt(picture, layout, x, y), on: sheetAt(picture, layout, x, y)};
  }

  readonly over = (event: PointerEvent): void => {
    const {number, on} = this.#under(event);
    const drag = this.#drag;
    const {laid} = this.#seen();
    if (drag?.id !== event.pointerId || !on || !laid) { this.#point(number); return; }
    drag.moving ||= Math.hypot(event.clientX - drag.from.x, event.clientY - drag.from.y) > still;
    const {piece} = this.#hand;
    const plan = laid.plans[on.sheet];
    if (drag.moving && piece && plan) this.#hand.moveTo({turn: piece.placed.turn, x: on.x - drag.offset.x, y: on.y - drag.offset.y}, plan);
  };

  readonly away = (): void => { this.#point(undefined); };

  /** A mouse drags any part; a finger, which must still scroll the page, drags the part that it has tapped before. */
  readonly down = (event: PointerEvent): void => {
    const {number, on} = this.#under(event);
    const {laid} = this.#seen();
    const byGrip = (event.target as Element).classList.contains('grip');
    if (event.button !== 0 || !laid || !on || this.#hand.isAsking || (event.pointerType === 'touch' && !byGrip)) return;
    if (!byGrip) this.#hand.take(laid, number);
    const {piece} = this.#hand;
    const wrap = event.currentTarget as HTMLElement;
    wrap.focus({preventScroll: true});
    if (!piece || (!byGrip && number === undefined)) return;
    wrap.setPointerCapture(event.pointerId);
    this.#drag = {id: event.pointerId, moving: false, from: {x: event.clientX, y: event.clientY}, offset: {x: on.x - piece.placed.x, y: on.y - piece.placed.y}};
    event.preventDefault();
  };

  /** Dropped, a part is to be held there; a finger takes up the part that it taps. */
  readonly up = (event: PointerEvent): void => {
    const drag = this.#drag;
    this.#drag = undefined;
    if (drag?.id === event.pointerId) {
      if (drag.moving) this.#hand.holdOrLetGo();
      return;
    }
    const {laid} = this.#seen();
    if (event.pointerType !== 'touch' || !laid) return;
    this.#hand.take(laid, this.#under(event).number);
    (event.currentTarget as HTMLElement).focus({preventScroll: true});
  };

  readonly cancel = (): void => { this.#drag = undefined; };

  /** Lays the grip over the part in hand, large enough for a thumb. */
  place(wrap: Element | null): void {
    const grip = wrap?.querySelector<HTMLElement>('.grip'), svg = wrap?.querySelector('svg');
    const {picture} = this.#seen();
    if (!grip || !svg || !picture) return;
    const {width} = svg.getBoundingClientRect();
    const {view: {box, mmPerPx}, corners} = layOutSheets(picture, width);
    picture.sheets.forEach(({pieces}, i) => {
      const outline = pieces.find(({number}) => number === this.#hand.number)?.outline, corner = corners[i];
      if (!outline || !corner) return;
      const side = (all: readonly number[]): readonly [middle: number, long: number] => {
        const low = Math.min(...all), high = Math.max(...all);
        return [(low + high) / 2, Math.max(thumb, (high - low) / mmPerPx)];
      };
      const [x, wide] = side(outline.map((p) => corner.x + p.x)), [y, high] = side(outline.map((p) => corner.y - p.y));
      const at = {left: (x - box.x) / mmPerPx - wide / 2, top: (y - box.y) / mmPerPx - high / 2, width: wide, height: high};
      for (const [name, px] of Object.entries(at)) grip.style.setProperty(name, `${String(px)}px`);
    });
  }

  readonly key = (event: KeyboardEvent): void => {
    const target = event.composedPath()[0] as Element;
    if (this.#hand.number === undefined || event.ctrlKey || event.metaKey || event.altKey || target.matches('input, select, textarea, summary')) return;
    const far = event.shiftKey ? farther : 1;
    const by = ({ArrowLeft: [-far, 0], ArrowRight: [far, 0], ArrowUp: [0, far], ArrowDown: [0, -far]} as Readonly<Record<string, readonly [number, number]>>)[event.key];
    if (by) this.#hand.moveBy(...by);
    else if (event.key === 'r' || event.key === 'R') this.#hand.turn();
    else if (event.key === 'Escape' && this.#hand.isMoved) this.#hand.putBack();
    else if (event.key === 'Enter' && !target.matches('button')) this.#hand.holdOrLetGo();
    else return;
    event.preventDefault();
  };
}
