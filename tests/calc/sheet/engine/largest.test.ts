import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {defaultDesign, withValues} from '../../../../src/calc/design/design.js';
import {glidersFromBoard, ladderOf, LargestSearch, longestWing, type GlidersSought, type Job, type Ladder, type SpanSought} from '../../../../src/calc/sheet/index.js';
import {randomFrom} from '../../../../src/calc/sheet/engine/random.js';
import {mostKits} from '../../../../src/calc/sheet/place-kits.js';
import {anyDesign} from '../any-design.js';
import {board, expectSound, job, plate, stepClock} from './found-check.js';
import {parts, sliced} from './sliced.js';

const mm = 1e-3;
/** Where the first placement of gliders with tapered wings leaves board unused. */
const longerThanPlaced = {
  'board.length': 0.81, 'board.width': 0.23, 'wing.span': 0.4, 'wing.chord': 0.13, 'wing.tipChord': 0.08, 'body.length': 0.435, 'tail.span': 0.285,
};
const searchOf = (ladder: Ladder, seed = 1): LargestSearch => new LargestSearch(ladder, {seed, now: stepClock()});

/** Steps until it reaches a number or has done so many; checks that nothing is ever taken back, and every layout on the way. */
function goOn(search: LargestSearch, ladder: Ladder, until: number, steps: number): void {
  let before = search.reached ?? -Infinity, shown = search.shown;
  for (let n = 0; n < steps && search.reached !== until && search.work(1); n++) {
    const {reached = -Infinity, bound = Infinity} = search;
    expect(reached).to.be.at.least(before);
    expect(reached, 'what is proved to be too much').to.be.at.most(bound);
    before = reached;
    if (search.shown === shown) continue;
    shown = search.shown;
    const what = shown && ladder.jobOf(shown.n);
    if (shown && what) expectSound(shown.found, what);
  }
}

const gliders = (what: Job, from: number, more: Partial<GlidersSought> = {}): Ladder =>
  ladderOf({what: 'gliders', job: what, from, known: true, most: 40, ...more});

/** The kits that one sheet was sliced into, two to a sheet. */
const kitOf = (seed: number): Job['parts'] => parts(sliced(0.7, 0.25, 4 + seed % 4, 0, randomFrom(seed)));
const onSheets = (count: number, kit: Job['parts'], more: Partial<Job> = {}): Job => job(kit, [board(0.7, 0.5, {count})], more);

describe('a search for more gliders from the boards at hand', () => {
  it('finds what the first placement did not, where the number is known from how the parts were sliced', () => {
    let missed = 0, found = 0;
    for (let seed = 1; seed <= 8; seed++) {
      const sheets = 1 + seed % 3, kit = kitOf(seed);
      const first = mostKits(sheets, kit, {length: 0.7, width: 0.5, margin: 0, gap: 0}, 40);
      expect(first).to.be.within(1, 2 * sheets);
      if (first === 2 * sheets) continue;
      missed++;
      const ladder = gliders(onSheets(sheets, kit), first);
      const search = searchOf(ladder);
      goOn(search, ladder, 2 * sheets, 300);
      expect(search.bound, 'no board is left for one more').to.equal(2 * sheets);
      if (search.reached !== 2 * sheets) continue;
      found++;
      expect(search.shown?.n).to.equal(2 * sheets);
      expect(search.shown?.found.unplaced).to.deep.equal([]);
      expect(search.shown?.found.sheets.length).to.equal(sheets);
      expect(search.failed).to.equal(undefined);
    }
    expect(missed).to.be.at.least(5);
    expect(found).to.equal(missed);
  });

  it('does so for a glider too', () => {
    const first = glidersFromBoard(defaultDesign, 10);
    if (!first.ok) throw new Error('refused');
    const {gliders: reached, cut: {parts: all, stock}} = first.value;
    const what = job(all, [board(stock.length, stock.width, {count: 10})], {gap: stock.gap, cuts: 'free'});
    const ladder = gliders(what, reached);
    const search = searchOf(ladder);
    goOn(search, ladder, reached + 1, 2000);
    expect(search.reached).to.equal(reached + 1);
  });

  it('goes down to what there is room for where nothing is known yet', () => {
    const ladder = gliders(onSheets(2, kitOf(1)), 9, {known: false});
    const search = searchOf(ladder);
    expect(search.reached).to.equal(undefined);
    goOn(search, ladder, 4, 600);
    expect(search.reached).to.equal(4);
  });

  it('says of what it tried in vain that it did, proves nothing by that, and ends', () => {
    const ladder = gliders(onSheets(1, [plate('p', 0.4, 0.4)]), 1);
    const search = searchOf(ladder);
    goOn(search, ladder, Infinity, 500_000);
    // each takes more than half of both sides, though two of them have less area than the sheet
    expect([search.done, search.reached, search.bound, search.failed]).to.deep.equal([true, 1, 1, undefined]);
    const round = gliders(onSheets(1, [plate('p', 0.3, 0.19), plate('q', 0.24, 0.24, {count: 2})], {cuts: 'free'}), 1);
    const other = searchOf(round);
    goOn(other, round, Infinity, 500_000);
    expect(other.done).to.equal(true);
    expect([other.reached, other.bound, other.failed]).to.deep.equal([1, 2, 2]);
  });

  it('looks for none beyond what it is told', () => {
    const search = searchOf(gliders(onSheets(1, [plate('p', 0.1, 0.1)]), 40));
    search.work(200);
    expect([search.reached, search.bound, search.trying]).to.deep.equal([40, undefined, undefined]);
    const none = searchOf(gliders(onSheets(1, [plate('p', 0.8, 0.1)]), 1, {known: false}));
    expect(none.work(10)).to.equal(false);
    expect([none.reached, none.bound, none.shown]).to.deep.equal([undefined, 0, undefined]);
  });

  it('goes the same way every time', () => {
    const run = (seed: number): unknown => {
      const search = searchOf(gliders(onSheets(2, kitOf(5)), 3), seed);
      search.work(400);
      return [search.reached, search.shown, search.failed];
    };
    expect(run(3)).to.deep.equal(run(3));
  });

  it('works in short steps, and stops at the time it is given', () => {
    let now = 0;
    const search = new LargestSearch(gliders(onSheets(2, kitOf(1)), 3), {now: () => now});
    let steps = 0;
    while (search.reached !== 4 && steps < 1000) {
      now++;
      search.work(0);
      steps++;
    }
    expect(steps).to.be.within(20, 999);
  });

  it('never proves too much: what was sliced from the boards is always held to be possible', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 1e6}), fc.constantFrom(0, 2 * mm), fc.constantFrom('straight', 'free'), fc.integer({min: 1, max: 3}), (seed, gap, cuts, sheets) => {
      const random = randomFrom(seed);
      // whole sheets sliced into parts of one glider each, the knife’s room between them lost
      const kit = parts(sliced(0.7, (0.5 - gap) / 2, 3 + seed % 5, gap, random));
      const search = searchOf(gliders(onSheets(sheets, kit, {gap, cuts}), 1, {known: false}));
      while (search.trying === undefined && search.work(1)) { /* until the bound is there */ }
      expect(search.bound ?? 40).to.be.at.least(2 * sheets);
    }), {numRuns: 60});
  });
});

describe('a search for a longer wing', () => {
  const spanSought = (values: Parameters<typeof withValues>[1], kits: number, sheets: number): {first: number | undefined; sought: SpanSought} => {
    const design = withValues(defaultDesign, values);
    const longest = longestWing(design, kits, sheets, mm);
    if (!longest.ok) throw new Error('refused');
    const {span, cut: {stock, parts: all}} = longest.value;
    const what = job(all.map((part) => ({...part, count: part.count * kits})), [board(stock.length, stock.width, {count: sheets})], {gap: stock.gap, margin: stock.margin, cuts: 'free'});
    return {first: span, sought: {what: 'span', job: what, wing: design.wing, step: mm, from: Math.round((span ?? 0) / mm), known: span !== undefined}};
  };

  it('finds one where the first placement left board unused, and no longer one than is proved', () => {
    const {first, sought} = spanSought(longerThanPlaced, 2, 2);
    const ladder = ladderOf(sought);
    const search = searchOf(ladder);
    goOn(search, ladder, Infinity, 1500);
    const {reached = 0, bound = 0, shown} = search;
    expect(reached).to.be.above(Math.round((first ?? NaN) / mm));
    expect(bound).to.equal(Math.round(longerThanPlaced['board.length'] / mm));
    expect(shown?.n).to.equal(reached);
    // the wing that lies there is as long as is said
    const wing = shown?.found.sheets.flatMap(({cutouts}) => cutouts).flatMap(({pieces}) => pieces).find(({id}) => id === 'wing');
    const along = wing?.outline.map(({x, y}) => (wing.turn % 180 === 0 ? x : y)) ?? [];
    expect(Math.max(...along) - Math.min(...along)).to.be.closeTo(reached * mm, 1e-9);
  });

  it('leaves every other part as it is', () => {
    const {sought} = spanSought({}, 1, 1);
    const ladder = ladderOf(sought);
    const [short, long] = [ladder.jobOf(500), ladder.jobOf(700)];
    expect(long?.parts.filter(({id}) => id !== 'wing')).to.deep.equal(short?.parts.filter(({id}) => id !== 'wing'));
    expect(long?.boards).to.equal(short?.boards);
  });

  it('may go beyond the sheet where the wing may be glued up from lengths', () => {
    const {sought} = spanSought({}, 1, 1);
    const ladder = ladderOf({...sought, job: {...sought.job, parts: sought.job.parts.map((part) => ({...part, maySplice: part.id === 'wing'}))}});
    const search = searchOf(ladder);
    goOn(search, ladder, Infinity, 600);
    expect(search.reached).to.be.above(700);
    expect(search.bound).to.be.within(search.reached ?? NaN, Infinity);
    expect(search.shown?.found.spliced.map(({id}) => id)).to.deep.equal(['wing']);
  });

  it('never proves too much, whatever the glider: what the first placement holds is held to be possible', () => {
    fc.assert(fc.property(anyDesign, fc.constantFrom(1, 2), (design, kits) => {
      const longest = longestWing(design, kits, kits, mm);
      if (!longest.ok || longest.value.span === undefined) return;
      const {span, cut: {stock, parts: all}} = longest.value;
      const what = job(all.map((part) => ({...part, count: part.count * kits})), [board(stock.length, stock.width, {count: kits})], {gap: stock.gap, margin: stock.margin, cuts: 'free'});
      const search = searchOf(ladderOf({what: 'span', job: what, wing: design.wing, step: mm, from: 1, known: false}));
      while (search.trying === undefined && search.work(1)) { /* until the bound is there */ }
      expect((search.bound ?? Infinity) * mm).to.be.at.least(span - 1e-9);
    }), {numRuns: 25});
  });
});
