import {expect} from '@open-wc/testing';
import {tailShimWords} from '../../src/messages/en/tail-shim.js';
import {arrivals, decimalMark, loadWords, wordsFor} from '../../src/messages/speaker.js';
import {topic} from '../../src/messages/topic.js';

describe('the speaker', () => {
  it('fetches words once, however often they are asked for, and speaks English until then', async () => {
    const before = arrivals();
    const coming = loadWords(tailShimWords, 'de');
    expect(coming).to.be.instanceOf(Promise);
    expect(loadWords(tailShimWords, 'DE-ch')).to.equal(coming);
    expect(wordsFor(tailShimWords, 'de')).to.equal(tailShimWords.en);
    expect(await coming).to.equal(true);
    expect(arrivals()).to.equal(before + 1);
    expect(loadWords(tailShimWords, 'de')).to.equal(undefined);
    expect(wordsFor(tailShimWords, 'de-AT').body).to.equal('Rumpf');
  });

  it('has nothing to wait for in English or in a language without words', () => {
    for (const lang of ['en', 'en-GB', 'fr', 'tlh', '']) expect(loadWords(tailShimWords, lang), lang).to.equal(undefined);
    expect(wordsFor(tailShimWords, 'fr')).to.equal(tailShimWords.en);
  });

  it('stays with English, and asks no further, where a language lacks a topic', async () => {
    const unknown = topic('no-such-topic', {word: 'word'});
    expect(await loadWords(unknown, 'de')).to.equal(false);
    expect(loadWords(unknown, 'de')).to.equal(undefined);
    expect(wordsFor(unknown, 'de')).to.equal(unknown.en);
  });

  it('respells for an American reader once it knows how', async () => {
    const colours = topic('some-colours', {one: 'grey', several: (n: number) => `${String(n)} colours, 3 millimetres of modelling clay`});
    expect(await (loadWords(colours, 'en-US') ?? true)).to.equal(true);
    expect(loadWords(colours, 'en-us')).to.equal(undefined);
    const {one, several} = wordsFor(colours, 'en-US');
    expect([one, several(2)]).to.deep.equal(['gray', '2 colors, 3 millimeters of modeling clay']);
    expect(wordsFor(colours, 'en-GB').one).to.equal('grey');
  });

  it('knows the decimal mark of a language, and takes a dot where a tag means nothing', () => {
    expect(['de', 'de-CH', 'en', 'fr', 'not a tag!'].map(decimalMark)).to.deep.equal([',', '.', '.', ',', '.']);
  });
});
