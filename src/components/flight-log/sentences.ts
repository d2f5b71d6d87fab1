import type {Difference} from '../../calc/flight-log/differences.js';
import {isChoiceRow, isListRow, isNumberRow, rowOf, type DimensionPath, type DimensionValue} from '../../calc/design/dimensions.js';
import {writeListForReading, type ListItem} from '../../calc/units/list.js';
import {dimensionWords} from '../../messages/en/dimensions.js';
import {flightLogWords} from '../../messages/en/flight-log.js';
import type {Answer} from '../base/calculator.js';
import type {GliderElement} from '../base/element.js';
import type {LogFound, Pair, Told} from './found.js';
import {writeMeasure} from './written.js';

/** The answer in a sentence to act on. */
export function logAnswer(host: GliderElement, found: LogFound): Answer {
  const words = host.say(flightLogWords);
  const {log, measure, pair, single} = found;
  if (!log.throws.some(({out}) => !out)) return {sentence: words.nothing};
  if (!single) return {sentence: words.nothingLike(words.measures[measure.id])};
  return pair ? pairAnswer(host, found, pair) : singleAnswer(host, found, single);
}

const nameOf = (host: GliderElement, {version}: Told): string => host.say(flightLogWords).Version(version.name);

function singleAnswer(host: GliderElement, {measure}: LogFound, told: Told): Answer {
  const words = host.say(flightLogWords);
  const {spread, interval} = told;
  if (!spread) return {sentence: words.nothing};
  const write = (value: number, fine = false): string => writeMeasure(host, measure.id, value, fine);
  const name = nameOf(host, told);
  if (spread.deviation === undefined) return {sentence: words.one({name: words.version(told.version.name), measure: measure.id, value: write(spread.mean)})};
  const best = measure.better === 'less' ? spread.least : spread.most;
  const aside = [
    measure.better === 'neither' ? words.scatterOnly(write(spread.deviation, true)) : words.scatter({deviation: write(spread.deviation, true), best: write(best)}),
    interval && interval.from < interval.to ? words.mean({from: write(interval.from), to: write(interval.to)}) : '',
  ].filter(Boolean).join(' ');
  return {sentence: words.several({name, measure: measure.id, mean: write(spread.mean), n: spread.n}), aside};
}

function pairAnswer(host: GliderElement, {measure}: LogFound, {a, b, comparison, more}: Pair): Answer {
  const words = host.say(flightLogWords);
  const {id} = measure;
  const [nameA, nameB] = [nameOf(host, a), nameOf(host, b)];
  const [inA, inB] = [words.version(a.version.name), words.version(b.version.name)];
  if (!comparison) return {sentence: [a, b].map((told) => meanSentence(host, id, told)).join(' ')};
  if (!comparison.ok) {
    return {sentence: comparison.problems[0]?.code === 'throws-all-alike' ? words.alike({nameA, nameB}) : words.tooFew({nameA, a: a.values.length, nameB, b: b.values.length})};
  }
  const {difference, interval: {from, to}, settled} = comparison.value;
  const second = measure.better === 'less' ? difference < 0 : difference >= 0;
  const [ahead, inAhead, behind] = second ? [nameB, inB, inA] : [nameA, inA, inB];
  // as fine as the difference needs it, and all alike
  const fine = id !== 'distance' || Math.abs(difference) < 0.5 || to - from < 0.5;
  const write = (value: number): string => writeMeasure(host, id, Math.abs(value), fine);
  // from the side of whichever is ahead
  const [least, most] = difference >= 0 ? [from, to] : [-to, -from];
  const told = {ahead, behind, measure: id, difference: write(difference)};
  if (settled) return {sentence: words.settled({...told, from: write(least), to: write(most)}), aside: words.settledAside({a: a.values.length, b: b.values.length})};
  const between = words.between({from: write(least), to: write(most), ahead: inAhead, behind});
  return {sentence: `${words.open(told)} ${more ? words.more({...more, nameA: inA, nameB: inB}) : words.hopeless}`, aside: between};
}

function meanSentence(host: GliderElement, id: LogFound['measure']['id'], told: Told): string {
  const {spread} = told;
  return spread ? host.say(flightLogWords).several({name: nameOf(host, told), measure: id, mean: writeMeasure(host, id, spread.mean), n: spread.n}) : '';
}

/** The value of a dimension as a reader reads it. */
function written(host: GliderElement, path: DimensionPath, value: DimensionValue): string {
  const row = rowOf(path);
  const none = host.say(flightLogWords).none;
  if (value === undefined || value === '') return none;
  if (isListRow(row)) return writeListForReading(value as readonly ListItem[], row.list, {system: host.system, decimal: host.decimal}) || none;
  if (isNumberRow(row)) return host.write(value as number, row.kind);
  const said = value as string;
  return (isChoiceRow(row) ? host.say(dimensionWords)[path].choices?.[row.choices.indexOf(said)] : undefined) ?? said;
}

/** Each difference as `Height of the stack 10 mm → 12 mm`; lists stay in their own order. */
export const differencesInWords = (host: GliderElement, found: readonly Difference[]): readonly string[] => found.map(({path, from, to}) =>
  host.say(flightLogWords).from({label: host.say(dimensionWords)[path].label, from: written(host, path, from), to: written(host, path, to)}));

/** What differs between the two versions that are compared. */
export function pairDifference(host: GliderElement, {a, b, differences}: Pair): string | undefined {
  if (!differences) return undefined;
  const words = host.say(flightLogWords);
  const names = {nameA: words.version(a.version.name), nameB: words.version(b.version.name)};
  const what = differencesInWords(host, differences);
  if (what.length === 0) return words.differNone({nameA: words.Version(a.version.name), nameB: words.version(b.version.name)});
  return what.length === 1 ? words.differOne({...names, what: what[0] ?? ''}) : words.differMany({...names, n: what.length, what});
}
