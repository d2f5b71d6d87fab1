import {mostGliders} from '../../calc/sheet/from-parts.js';
import type {PartId} from '../../calc/parts/part.js';
import type {Problem} from '../../calc/problem.js';
import type {Board, WayToCut} from '../../calc/sheet/engine/job.js';
import {readQuantity} from '../../calc/units/read.js';
import type {GliderElement} from '../base/element.js';
import {BoardsAtHand} from './boards-at-hand.js';
import {CountField} from './count-field.js';
import {wantedOf, type Wanted} from './found.js';
import {OptionalField} from './optional-field.js';

/** What an author may write on the element, and a reader changes in its fields; nothing of it belongs to the glider. */
export interface OwnEntries {
  kits: number | null | undefined;
  sheets: number | null | undefined;
  wanted: Wanted | null | undefined;
  cuts: WayToCut | null | undefined;
  spares: string | null | undefined;
  atHand: number | string | null | undefined;
  price: number | string | null | undefined;
  currency: string | null | undefined;
  splice: string | null | undefined;
}

/** At most so many gliders more than wanted. */
const mostSpares = 20;
export const mostAtHand = 99;
export const mostPrice = 10_000;

/** The parts that may be glued up from several lengths. */
export const mayBeSpliced: readonly PartId[] = ['wing', 'body', 'tailplane'];

/** The questions of the element's own: how many, how cut, on which boards, at what price. */
export class OwnQuestions {
  readonly #host: GliderElement & OwnEntries;
  readonly kits: CountField;
  readonly sheets: CountField;
  readonly spares: OptionalField<string>;
  readonly atHand: OptionalField<number>;
  readonly price: OptionalField<number>;
  readonly currency: OptionalField<string>;
  readonly boards: BoardsAtHand;

  constructor(host: GliderElement & OwnEntries) {
    this.#host = host;
    this.kits = new CountField(host, 'kits', mostGliders, () => host.kits, (value) => { host.kits = value; });
    this.sheets = new CountField(host, 'sheets', mostGliders, () => host.sheets, (value) => { host.sheets = value; });
    this.boards = new BoardsAtHand(host);
    const number = (text: string): number | undefined => {
      const read = readQuantity(text, 'count', {decimal: host.decimal});
      return read.ok ? read.value : undefined;
    };
    const plain = (value: number): string => (Number.isNaN(value) ? '' : String(value).replace('.', host.decimal));
    this.atHand = new OptionalField(host, 'at-hand', {
      get: () => host.atHand, set: (value) => { host.atHand = value; },
      read: (text) => wholeFrom(number(text), mostAtHand), write: plain,
    });
    this.spares = new OptionalField<string>(host, 'spares', {
      get: () => host.spares, set: (value) => { host.spares = value; },
      read: (text) => (sparesFrom(text, this.kits.value, host.decimal) === undefined ? undefined : text), write: (text) => text,
    });
    this.price = new OptionalField(host, 'price', {
      get: () => host.price, set: (value) => { host.price = value; }, read: (text) => priceFrom(text, host.decimal), write: plain,
    });
    this.currency = new OptionalField<string>(host, 'currency', {
      get: () => host.currency, set: (value) => { host.currency = value; }, read: (text) => text.slice(0, 12), write: (text) => text,
    });
  }

  get wanted(): Wanted { return wantedOf(this.#host.wanted); }
  get cuts(): WayToCut { return this.#host.cuts === 'straight' ? 'straight' : 'free'; }
  /** How many gliders are laid out beyond those wanted. */
  get spare(): number { return this.wanted === 'sheets' ? sparesFrom(this.spares.value ?? '', this.kits.value, this.#host.decimal) ?? 0 : 0; }
  get priceOfSheet(): number | undefined { return this.price.value; }

  /** Parts that the reader lets be glued up from lengths. */
  get splice(): readonly PartId[] { return mayBeSpliced.filter((id) => this.#named.includes(id)); }

  /** What an author wrote there that is no such part. */
  get notSpliced(): readonly string[] { return this.#named.filter((name) => !mayBeSpliced.some((id) => id === name)); }

  get #named(): readonly string[] { return (this.#host.splice ?? '').split(/\s+/).filter(Boolean); }

  /** How many sheets of the design's own board there are; undefined for as many as needed. */
  get ownCount(): number | undefined { return this.wanted === 'sheets' ? this.atHand.value : undefined; }

  get others(): readonly Board[] { return this.wanted === 'sheets' ? this.boards.boards : none; }

  /** What keeps the question from being answered; what a field shows itself has no words of its own here. */
  get problems(): readonly Problem[] {
    const counts = [this.wanted === 'gliders' ? undefined : this.kits.problem, this.wanted === 'sheets' ? undefined : this.sheets.problem];
    const optional = this.wanted !== 'sheets' ? [] : [
      ...this.spares.wrong ? [sparesUnread] : [], ...this.atHand.wrong ? [atHandUnread] : [], ...this.boards.wrong ? [{code: 'quantity-empty', path: 'boards'}] : [],
    ];
    return [...counts.filter((problem) => problem !== undefined), ...optional];
  }
}

const none: readonly Board[] = [];

export const sparesUnread: Problem = {code: 'spares-unread', path: 'spares'};
export const atHandUnread: Problem = {code: 'count-at-hand', path: 'at-hand', args: {most: mostAtHand}};

/** Whether a problem is one of those fields', which show it themselves. */
export const isOwn = ({path = ''}: Problem): boolean => /^(kits|sheets|spares|at-hand|boards)$/.test(path);

const wholeFrom = (value: number | undefined, most: number): number | undefined =>
  (value !== undefined && Number.isInteger(value) && value >= 1 && value <= most ? value : undefined);

/** A price with either decimal mark, but for the other one where it may part thousands. */
function priceFrom(text: string, decimal: '.' | ','): number | undefined {
  const written = text.trim();
  const other = decimal === '.' ? ',' : '.';
  if (!/^(\d+[.,]?\d*|[.,]\d+)$/.test(written) || written.includes(other) && /^[1-9]\d{0,2}[.,]\d{3}$/.test(written)) return undefined;
  const price = Number(written.replace(',', '.'));
  return price <= mostPrice ? price : undefined;
}

/** A number of spare gliders, or a share of those wanted, in whole gliders. */
function sparesFrom(text: string, kits: number, decimal: '.' | ','): number | undefined {
  if (text.trim() === '') return 0;
  const share = text.includes('%');
  const read = readQuantity(text, share ? 'ratio' : 'count', {decimal});
  if (!read.ok || !(read.value >= 0)) return undefined;
  if (!share) return Number.isInteger(read.value) && read.value <= mostSpares ? read.value : undefined;
  return read.value <= 0.5 ? Math.min(mostSpares, Math.ceil(read.value * kits - 1e-9)) : undefined;
}
