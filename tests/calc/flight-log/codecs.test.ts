import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {readLogFile, writeLogFile} from '../../../src/calc/flight-log/file.js';
import {guardCell, unguardCell} from '../../../src/calc/flight-log/formula-guard.js';
import {emptyLog, withRows, type FlightLog} from '../../../src/calc/flight-log/log.js';
import {merged, readIn, type ReadIn} from '../../../src/calc/flight-log/read-in.js';
import {readTable, type ReadTable} from '../../../src/calc/flight-log/read-table.js';
import {writeTable} from '../../../src/calc/flight-log/write-table.js';
import {parseCsv, writeCsv} from '../../../src/components/flight-log/csv.js';
import {anyLog, cellText, newId} from './logs.js';

const options = {newId, now: 1000};
const why = (row: FlightLog['unread'][number]): string => row.problem.code;

function tableOf(text: string): ReadTable {
  const {rows, delimiter} = parseCsv(text);
  const read = readTable(rows, {...options, delimiter});
  if (!read.ok) throw new Error(read.problems[0]?.code);
  return read.value;
}

const readCsv = (text: string, into: FlightLog = emptyLog): ReadIn => readIn(into, tableOf(text), {...options, unnamed: 'A'});
const csvOf = (log: FlightLog, decimal: '.' | ','): string => writeCsv(writeTable(log, {decimal, why}), decimal);

/** A log without what a table does not carry: the ids of versions, and their gliders. */
const plain = ({versions, throws, unread}: FlightLog): unknown => ({
  throws: throws.map(({version, ...one}) => ({distance: undefined, time: undefined, height: undefined, ...one, version: versions.find(({id}) => id === version)?.name})),
  unread: unread.map(({text}) => text),
});

describe('a flight log as CSV', () => {
  for (const decimal of ['.', ','] as const) {
    it(`comes back the same, whatever is written in it, with ${decimal === '.' ? 'dots' : 'commas and semicolons'}`, () => {
      fc.assert(fc.property(anyLog, (log) => {
        const thrown = {...log, versions: log.versions.filter(({id}) => log.throws.some(({version}) => version === id))};
        expect(plain(readCsv(csvOf(thrown, decimal)).log)).to.deep.equal(plain(thrown));
      }), {numRuns: 300});
    });
  }

  it('has no cell that a spreadsheet would run', () => {
    fc.assert(fc.property(anyLog, (log) => {
      for (const cells of writeTable(log, {decimal: '.', why})) for (const cell of cells) expect(cell).not.to.match(/(^|[;,\t\r\n|])["\s]*[=+\-@＝＋－＠]/u);
    }));
    expect(guardCell('=1+1')).to.equal('\'=1+1');
    expect(guardCell('=HYPERLINK("x")')).to.match(/^'=/);
    expect(guardCell('far; =cmd')).to.equal('far; \'=cmd');
    expect(guardCell('a good one - then a dive')).to.equal('a good one - then a dive');
  });

  it('guards every text so that it can be had back', () => {
    fc.assert(fc.property(cellText, (text) => { expect(unguardCell(guardCell(text))).to.equal(text); }), {numRuns: 2000});
  });

  it('is not added twice', () => {
    const log = readCsv('version,distance,id\nA,8.4,x1\nB,9.1,x2\n').log;
    const again = readCsv(csvOf(log, '.'), log);
    expect(again).to.include({added: 0, known: 2, unread: 0});
    expect(again.log).to.deep.equal(log);
  });

  it('is read from a spreadsheet with semicolons, decimal commas, quotation marks and other units', () => {
    const {throws} = tableOf('\uFEFFVersion;Weite [m];Zeit (s);Höhe (cm);Bemerkung\r\nA;8,45;2,31;160;"weit; ""sehr"" weit"\r\nA;70;1 min 2 s;;\r\n');
    expect(throws.map(({distance, time, height, note}) => ({distance, time, height, note}))).to.deep.equal([
      {distance: 8.45, time: 2.31, height: 1.6, note: 'weit; "sehr" weit'}, {distance: 70, time: 62, height: undefined, note: ''},
    ]);
    const [feet] = tableOf('distance (ft)\ttime\n"27 ft 6 in"\t2.5 s\n').throws;
    expect(feet?.distance).to.be.closeTo(27.5 * 0.3048, 1e-12);
  });

  it('tells a comma that is the decimal mark from a dot that groups thousands', () => {
    const {throws, unread} = tableOf('Weite (cm);Zeit\n1.234,5;3,2\n845,5;2,31\n');
    expect(throws.map(({distance, time}) => [distance, time])).to.deep.equal([[8.455, 2.31]]);
    expect(unread.map(({problem}) => [problem.code, problem.args?.['suggestion']])).to.deep.equal([['quantity-decimal-mark', '1234,5 cm']]);
  });

  it('says of a log read again what is in it already, and what stood there otherwise', () => {
    const {log} = readCsv('id,version,distance\na,A,8.4\nb,A,9.1\n');
    const other = withRows(log, {throws: log.throws.map((one) => (one.id === 'b' ? {...one, distance: 7} : one))});
    expect(merged(log, log)).to.deep.include({added: 0, known: 2, replaced: 0});
    expect(merged(log, other)).to.deep.include({added: 0, known: 1, replaced: 1});
  });

  it('keeps what stands in columns it does not know, and dates of another kind', () => {
    const [one] = tableOf('date,distance,thrower\n4.5.31,8.4,Mia\n').throws;
    expect(one?.note).to.equal('date: 4.5.31; thrower: Mia');
    expect(one?.at).to.equal(1000);
  });

  it('keeps every row that it cannot read letter by letter, and reads the others', () => {
    const lines = ['A,"8.4",2.3', 'A,far,2', 'A,-3,2', 'A,0,2', 'A,8.4,-1', 'A,90,0.5', 'A,8,4,2', 'A,,', 'A,"8.4,2', 'A,8.8,2.2'];
    const {throws, unread} = tableOf(['version,distance,time', ...lines].join('\n'));
    expect(throws.map(({distance}) => distance)).to.deep.equal([8.4, 8.8]);
    expect(unread.map(({text}) => text)).to.deep.equal(lines.slice(1, -1));
    expect(unread.map(({problem}) => problem.code)).to.deep.equal([
      'quantity-not-a-number', 'throw-number-out-of-range', 'throw-number-out-of-range', 'throw-number-out-of-range', 'throw-too-fast', 'row-too-long', 'throw-empty', 'row-quotes',
    ]);
    const {log} = readCsv(['version,distance,time', ...lines].join('\n'));
    expect(readCsv(csvOf(log, ',')).log.unread.map(({text}) => text)).to.deep.equal(lines.slice(1, -1));
  });

  it('loses no row of anything under a heading, and throws at nothing', () => {
    fc.assert(fc.property(fc.array(fc.string({unit: 'grapheme', maxLength: 20}), {maxLength: 12}), fc.constantFrom('\n', '\r\n', '\r'), (lines, end) => {
      const {throws, unread} = tableOf(['version,distance,time', ...lines].join(end));
      const kept = unread.map(({text}) => text).join('');
      // a line is a throw, or it stands among the unread, unless there is nothing in it
      const filled = lines.flatMap((line) => line.split(/\r\n|\r|\n/)).filter((line) => line.split(',').some((cell) => cell.replaceAll('"', '').trim() !== ''));
      expect(throws.length + filled.filter((line) => kept.includes(line)).length).to.be.at.least(filled.length);
    }), {numRuns: 500});
    fc.assert(fc.property(fc.string({unit: 'binary', maxLength: 200}), (text) => {
      const {rows, delimiter} = parseCsv(text);
      readTable(rows, {...options, delimiter});
    }), {numRuns: 500});
  });

  it('stays quick with quotation marks open in every row', () => {
    const text = `version,distance\n${'"A,8.4\n'.repeat(10_000)}`;
    expect(tableOf(text).unread).to.have.length(10_000);
  });

  it('says why a table is none', () => {
    for (const [text, code] of [['', 'table-empty'], ['\n\n', 'table-empty'], ['8.4,2.3\n9,3', 'table-without-heading']] as const) {
      expect(() => tableOf(text)).to.throw(code);
    }
  });
});

describe('a flight log as a file', () => {
  it('comes back the same', () => {
    fc.assert(fc.property(anyLog, (log) => {
      const read = readLogFile(writeLogFile(log), options);
      expect(read.ok && plain(read.value)).to.deep.equal(plain(log));
    }));
  });

  it('keeps entries that cannot be read, and reads the others', () => {
    const read = readLogFile(JSON.stringify({
      flightLog: 1, versions: [{id: 'a', name: 'A'}, {id: 'b'}],
      throws: [{id: '1', version: 'a', distance: '8.4 m'}, {id: '2', version: 'a', distance: 8.4}, {id: '3', version: 'z', distance: '8 m'}, {id: '4', version: 'a', time: '-2 s'}, 7],
    }), options);
    if (!read.ok) throw new Error('not read');
    expect(read.value.throws.map(({id}) => id)).to.deep.equal(['1']);
    expect(read.value.unread.map(({problem}) => problem.code)).to.deep.equal(
      ['entry-not-a-version', 'file-number-without-unit', 'entry-without-version', 'throw-number-out-of-range', 'entry-not-a-throw']);
    const again = readLogFile(writeLogFile(read.value), options);
    expect(again.ok && again.value.unread).to.deep.equal(read.value.unread);
  });

  it('refuses what is no log, whole', () => {
    for (const [text, code] of [['{', 'log-not-json'], ['[]', 'log-not-a-log'], ['{"glider":1}', 'log-not-a-log'], ['{"flightLog":"x"}', 'file-version-unreadable'], ['{"flightLog":9}', 'log-of-later-version']] as const) {
      const read = readLogFile(text, options);
      expect(!read.ok && read.problems[0]?.code).to.equal(code);
    }
    fc.assert(fc.property(fc.json(), (text) => { readLogFile(text, options); }));
    fc.assert(fc.property(fc.jsonValue(), (list) => { readLogFile(JSON.stringify({flightLog: 1, versions: list, throws: list, unread: list}), options); }));
  });

  it('takes rows of any log into any other without losing one', () => {
    fc.assert(fc.property(anyLog, anyLog, (a, b) => {
      const both = withRows(a, b);
      expect(new Set(both.throws.map(({id}) => id)).size).to.equal(both.throws.length);
      expect(both.throws.length).to.equal(new Set([...a.throws, ...b.throws].map(({id}) => id)).size);
      const times = both.throws.map(({at}) => at);
      expect(times).to.deep.equal([...times].sort((x, y) => x - y));
    }));
  });
});
