import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {layOutSheets, type SheetPicture} from '../../drawing/figures/sheet-layout.js';
import {sheetFileWords} from '../../messages/en/sheet-files.js';
import {sheetSearchWords} from '../../messages/en/sheet-search.js';
import {sheetWords} from '../../messages/en/sheet.js';
import {Figure} from '../base/figure.js';
import {Bench} from './bench.js';
import {cutList} from './cut-list.js';
import type {First, Found} from './found.js';
import {Hand} from './hand.js';
import {handBar} from './hand-bar.js';
import {sameAsked, type Asked, type Most} from './job-of.js';
import type {LaidOut} from './laid-out.js';
import {Layouts, type Shown} from './layouts.js';
import {notices} from './own-notices.js';
import type {OwnQuestions} from './own-questions.js';
import {Panels} from './panels.js';
import type {GliderPartsSheet} from './parts-sheet.js';
import {pictureInWords, sheetPicture} from './picture.js';
import {searchLine} from './search-line.js';
import {reasons} from './sentences.js';

/** Where nothing is looked for, nothing is asked but the first placement. */
const plainly: Omit<Asked, 'first'> = {cuts: 'free', ownCount: undefined, others: [], splice: [], held: [], most: undefined};

/** The layout as it is seen: the picture and the bench that it is, the search behind it, the cut list, and what is loaded of other lists. */
export class View {
  readonly #host: GliderPartsSheet;
  readonly #own: OwnQuestions;
  readonly #layouts: Layouts;
  readonly #hand: Hand;
  readonly #bench: Bench;
  readonly #panels: Panels;
  readonly #figure: Figure<SheetPicture>;
  #asked: Asked | undefined;
  #pointed: number | undefined;
  /** Whether the places of many pieces are to be seen. */
  #places = false;
  #picture: {readonly of: readonly unknown[]; readonly picture: SheetPicture} | undefined;

  /** `found` gives what is shown now. */
  constructor(host: GliderPartsSheet, own: OwnQuestions, found: () => Found | undefined) {
    this.#host = host;
    this.#own = own;
    this.#layouts = new Layouts(host, () => host.shows('search') && host.shows('picture'));
    this.#hand = new Hand(host, this.#layouts);
    this.#bench = new Bench(this.#hand, () => ({laid: found()?.cut, picture: this.#picture?.picture}), (number) => { this.#point(number); });
    this.#panels = new Panels(host);
    this.#figure = new Figure<SheetPicture>(host, {
      load: async () => (await import('../../drawing/figures/sheet.js')).drawSheets,
      data: () => {
        const good = found();
        return good && this.#pictureOf(good.cut);
      },
      height: (widthPx) => {
        const good = found();
        if (!good) return 0;
        const {view: {box, mmPerPx}} = layOutSheets(this.#pictureOf(good.cut), widthPx);
        return Math.round(box.height / mmPerPx);
      },
    });
  }

  /** The layout to show for what was placed at once, and how it stands to what is asked. */
  layoutFor(first: First): Shown {
    const {cuts, ownCount, others, splice} = this.#own;
    const asked: Asked = this.#host.shows('search')
      ? {first: first.cut, cuts, ownCount, others, splice, held: this.#hand.held, most: this.#mostAsked(first)}
      : {first: first.cut, ...plainly};
    if (!sameAsked(this.#asked, asked)) this.#asked = asked;
    return this.#layouts.ask(this.#asked ?? asked);
  }

  #mostAsked({wanted, sheets, gliders = 0, span, step}: First): Most | undefined {
    switch (wanted) {
      case 'sheets': return undefined;
      case 'gliders': return {what: wanted, sheets, gliders};
      case 'span': return {what: wanted, sheets, span, step, design: this.#host.state.design};
    }
  }

  /** The layout stays as it is until the reader wants to look on. */
  settle(): void { this.#layouts.settle(); }

  /** After another layout came. */
  follow({cut}: Found): void { this.#hand.follow(cut); }

  updated(): void { this.#bench.place(this.#host.renderRoot.querySelector('.bench')); }

  render(found: Found): TemplateResult {
    const host = this.#host;
    const words = host.say(sheetWords);
    const {cut, span} = found;
    const {cuts} = this.#own;
    const hand = this.#hand;
    const searches = host.shows('search');
    const why = [...reasons(host, found), ...host.shows('question') ? [] : notices(host, this.#own, searches)];
    const empty = cut.plans.length === 0;
    const piece = hand.piece;
    return html`${why.length > 0 ? html`<div class="reasons">${why.map((reason) => html`<p class="problem" part="problem">${reason}</p>`)}</div>` : nothing}
      ${searches ? searchLine(host, this.#layouts, found, cuts === 'straight') : nothing}
      ${span === undefined || Math.abs(span - host.state.design.wing.span) < 1e-9 || host.locked('wing.span') ? nothing
        : html`<p class="use"><button type="button" part="button" @click=${() => { this.#useSpan(span); }}>${words.useSpan(host.write(span, 'length'))}</button></p>`}
      <div class="laid ${cut.plans.length === 1 ? 'beside' : ''}" @keydown=${this.#bench.key}>
        <div class="seen"><p class="not-to-scale">${host.say(sheetFileWords).notToScale}</p>${empty ? nothing : html`
          <div class="bench" role="group" tabindex=${piece ? '0' : nothing} aria-label=${host.say(sheetSearchWords).bench}
            @pointermove=${this.#bench.over} @pointerleave=${this.#bench.away}
            @pointerdown=${searches ? this.#bench.down : nothing} @pointerup=${searches ? this.#bench.up : nothing} @pointercancel=${this.#bench.cancel}
            >${this.#figure.render(pictureInWords(host, cut))}${piece && searches ? html`<div class="grip" aria-hidden="true"></div>` : nothing}</div>
          <div class="doing">${this.#panels.render('cutting', found)}${searches ? handBar(host, hand, cut) : nothing}${this.#panels.render('marking', found)}</div>
          <p class="source read">${words.howToRead}${host.state.design.board.grain === 'none' ? nothing : ` ${words.grain}`}</p>
          <p class="caution">${words.caution}</p>`}</div>
        ${host.shows('list') && !empty ? cutList(host, cut, host.state.design, {
          lit: this.#lit, places: this.#places, openPlaces: (open) => { this.#openPlaces(open); }, isHeld: (each, plan) => hand.holds(each, plan), point: (number) => { this.#point(number); },
          take: (number) => { if (searches) hand.take(cut, number); },
          hold: (number) => {
            if (!searches) return;
            hand.take(cut, number);
            hand.holdOrLetGo();
          },
        }) : nothing}
      </div>`;
  }

  get #lit(): number | undefined { return this.#pointed ?? this.#hand.number; }

  #openPlaces(open: boolean): void {
    if (open === this.#places) return;
    this.#places = open;
    this.#host.requestUpdate();
  }

  #useSpan(span: number): void {
    this.#host.askFor('wing.span', span);
    this.#host.dispatchEvent(new Event('change', {bubbles: true}));
  }

  #point(number: number | undefined): void {
    if (number === this.#pointed) return;
    this.#pointed = number;
    this.#host.requestUpdate();
  }

  #pictureOf(laid: LaidOut): SheetPicture {
    const hand = this.#hand;
    const {piece, plan} = hand;
    const inHand = piece && plan && hand.isMoved ? {piece, plan} : undefined;
    const placed = inHand?.piece.placed;
    const of = [laid, this.#host.reader, hand.held, placed?.x, placed?.y, placed?.turn, inHand?.plan];
    const lit = this.#lit, cut = this.#panels.cut;
    const same = this.#picture?.of.every((each, i) => each === of[i]) === true;
    const kept = same ? this.#picture?.picture : undefined;
    if (kept && kept.lit === lit && kept.cut === cut) return kept;
    const picture: SheetPicture = {...kept ?? sheetPicture(this.#host, laid, {isHeld: (each, on) => hand.holds(each, on), inHand}), lit, cut};
    this.#picture = {of, picture};
    return picture;
  }
}
