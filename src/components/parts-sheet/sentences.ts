import {mostGliders} from '../../calc/sheet/from-parts.js';
import {usable} from '../../calc/sheet/shape.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import type {Found} from './found.js';
import type {LaidOut} from './laid-out.js';
import {atLeast, atMost, kept, size, sizeOf, written} from './sizes.js';

/** The answer in a sentence to act on, and what follows from it. */
export function sheetAnswer(host: GliderElement, found: Found, currency: string): Answer {
  const aside = asideOf(host, found, currency).filter(Boolean).join(' ');
  return {sentence: sentenceOf(host, found), ...aside ? {aside} : {}};
}

function sentenceOf(host: GliderElement, found: Found): string {
  const words = host.say(sheetWords);
  const {wanted, cut, kits, sheets, span, gliders = 0} = found;
  const sheet = boardsIn(host, cut);
  const leftover = cut.leftover && kept(host, cut.leftover);
  const from = cut.sheets + cut.oldPieces === 1 ? 'one' : cut.plans.length === 1 ? 'each' : 'last';
  const missing = missingFrom(found);
  if (missing.length > 0 && missing.every(({problem}) => problem.code === 'sheets-run-out')) {
    return words.boardsRunOut({sheets: cut.sheets + cut.oldPieces, sheet, kits: kits + found.spare});
  }
  if (missing.length > 0) return words.doesNotFit({missing: missing.map(({id}) => id), sheets: cut.sheets, sheet});
  if (wanted === 'gliders') {
    return gliders === 0 ? words.givesNone({sheets, needed: cut.sheets, sheet})
      : words.gives({sheets, gliders, used: cut.sheets, capped: gliders === mostGliders, sheet, leftover, from});
  }
  if (wanted === 'span') {
    return span === undefined ? words.noWing({sheets, kits, sheet})
      : words.longest({sheets, kits, sheet, span: host.write(span, 'length'), whole: isLongest(found)});
  }
  return words.fits({sheets: cut.sheets, kits: kits + found.spare, old: cut.oldPieces, sheet, leftover, from});
}

/** The sizes of the whole boards that are cut, the design's own where none is. */
function boardsIn(host: GliderElement, {plans, stock}: LaidOut): string {
  const boards = plans.map(({sheet: {board}}) => board).filter(({leftover}) => !leftover);
  const sizes = new Set((boards.length > 0 ? boards : [stock]).map(({length, width}) => written(host, length, width)));
  return new Intl.ListFormat(host.speech, {type: 'conjunction'}).format(sizes);
}

/** Money as the reader's language writes it; what it is called is the reader's own. */
export const money = (host: GliderElement, amount: number, currency: string): string =>
  `${new Intl.NumberFormat(host.speech, {minimumFractionDigits: 2, maximumFractionDigits: 2}).format(amount)}\u00a0${currency}`.trim();

function asideOf(host: GliderElement, found: Found, currency: string): readonly string[] {
  const words = host.say(sheetWords);
  const {wanted, cut, span, spanNow} = found;
  const now = host.write(spanNow, 'length');
  if (wanted === 'span') {
    if (span === undefined) return missingFrom(found).length > 0 ? [] : [words.asNow(now)];
    return [Math.abs(span - spanNow) < 1e-9 ? words.justSo : span > spanNow ? words.asideLonger(now) : words.asideShorter(now), longerOrNot(host, found)];
  }
  if (missingFrom(found).length > 0) return [];
  const used = Math.round(100 * cut.usedArea / cut.sheetArea) / 100;
  return [...wanted === 'sheets' ? [...spares(host, found), ...fewest(host, cut), ...costs(host, found, currency)] : [moreOrNot(host, found)], words.use({
    used: host.write(used, 'ratio', {digits: 0}), waste: host.write(1 - used, 'ratio', {digits: 0}), mass: host.write(cut.usedArea * found.arealMass, 'mass'), about: !found.weighed,
  })];
}

/** What is proved about more gliders, or about a longer wing. */
function moreOrNot(host: GliderElement, {gliders = 0, bound}: Found): string {
  const words = host.say(sheetWords);
  return gliders === 0 || bound === undefined ? '' : bound > gliders ? words.noMoreThan(bound) : words.noMore;
}

/** Whether the wing is as long as the sheet. */
const isLongest = ({span = 0, longest = Infinity}: Found): boolean => span >= longest - 1e-9;

function longerOrNot(host: GliderElement, found: Found): string {
  const {span = 0, bound} = found, wholeSheet = isLongest(found);
  const words = host.say(sheetWords);
  if (bound === undefined) return wholeSheet ? '' : words.byHand;
  return bound - span > 1e-9 ? words.noLongerThan(host.write(bound, 'length')) : wholeSheet ? '' : words.noLonger;
}

const spares = (host: GliderElement, {kits, spare}: Found): readonly string[] => (spare === 0 ? [] : [host.say(sheetWords).spares({wanted: kits, spare})]);

/** What whole boards cost; what was left over has been paid for. */
function costs(host: GliderElement, {price, cut: {sheets}, kits, spare}: Found, currency: string): readonly string[] {
  if (price === undefined || sheets === 0) return [];
  const all = price * sheets, gliders = kits + spare;
  return [host.say(sheetWords).cost({sheet: money(host, price, currency), all: money(host, all, currency), each: gliders === 1 ? undefined : money(host, all / gliders, currency)})];
}

/** Whether fewer sheets could do, and what sheets that are all cut alike would take. */
function fewest(host: GliderElement, {kits, sheets, least, alike, plans}: LaidOut): readonly string[] {
  const words = host.say(sheetWords);
  return [
    sheets <= 1 || least === 0 ? '' : sheets === least ? words.fewest : words.maybeFewer(least),
    kits === 1 || !alike ? '' : alike.sheets > sheets ? words.alikeInstead(alike) : plans.length === 1 && sheets > 1 ? words.allAlike(alike.perSheet) : '',
  ];
}

/** What found no place; a wing of the wrong length is no news where its length is the question. */
const missingFrom = ({wanted, cut}: Found): LaidOut['leftOut'] => cut.leftOut.filter(({id}) => wanted !== 'span' || id !== 'wing');

/** For each part that found no place, why, and what would do. */
export function reasons(host: GliderElement, found: Found): readonly string[] {
  const {parts, stock} = found.cut;
  const {grain} = host.state.design.board;
  const words = host.say(sheetWords);
  const room = usable(stock);
  const whole = usable({...stock, margin: 0});
  return missingFrom(found).map(({id, problem, count}) => {
    const part = parts.find((each) => each.id === id);
    if (problem.code === 'sheets-run-out') return words.runOut({part: id, count});
    if (problem.code === 'too-many-parts') return explain(host, problem);
    if (problem.code !== 'part-too-big' || !part) return words.noOutline(id);
    const [longer, shorter] = sizeOf(part.outline);
    const fitsIn = (sheet: {readonly length: number; readonly width: number}): boolean =>
      longer <= Math.max(sheet.length, sheet.width) * (1 + 1e-9) && shorter <= Math.min(sheet.length, sheet.width) * (1 + 1e-9);
    const said = {part: id, size: size(host, part.outline), room: written(host, room.length, room.width)};
    if (grain !== 'none' && fitsIn(room)) return words.tooLongForGrain({...said, along: host.write(room[grain], 'length')});
    if (stock.margin > 0 && fitsIn(whole)) return words.tooBigForMargin({...said, margin: host.write(stock.margin, 'length')});
    const tooLong = longer > Math.max(room.length, room.width) * (1 + 1e-9);
    const edge = tooLong ? Math.max(room.length, room.width) : Math.min(room.length, room.width);
    const needs = atLeast(host, (tooLong ? longer : shorter) + 2 * stock.margin);
    return words.tooBig({...said, tooLong, needs: host.write(needs, 'length'), most: host.write(atMost(host, edge), 'length')});
  });
}
