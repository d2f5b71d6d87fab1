import {expect, fixture, html} from '@open-wc/testing';
import '../../src/components/balance-point/define.js';
import '../../src/components/camber-shim/define.js';
import '../../src/components/parts-sheet/define.js';
import '../../src/components/value/define.js';
import de from '../../src/messages/de/index.js';
import type {Pack} from '../../src/messages/speaker.js';
import {american} from '../../src/messages/american.js';
import {filledIn, samplesFor} from './samples.js';
import {topics} from './topics.js';
import {until} from '../until.js';

const pack: Pack = de;

/** In an object of their own, since words that have a `then` among them would be taken for a promise. */
async function german(topic: string): Promise<{readonly words: unknown}> {
  const found = pack[topic];
  return {words: typeof found === 'function' ? (await (found as () => Promise<{readonly default: object}>)()).default : found};
}

/** A text, or what a function makes of the arguments for its path; every text of a topic with its path. */
function* textsOf(words: unknown, path: string): Generator<readonly [path: string, text: string]> {
  if (typeof words === 'function') yield [path, String((words as (...args: readonly unknown[]) => unknown)(...samplesFor(path)))];
  else if (typeof words === 'object' && words !== null) for (const [key, value] of Object.entries(words)) yield* textsOf(value, `${path}.${key}`);
  else yield [path, String(words)];
}

/** What a topic is made of, path by path. */
function shapeOf(words: unknown, path: string): readonly string[] {
  return typeof words === 'object' && words !== null ? Object.entries(words).flatMap(([key, value]) => shapeOf(value, `${path}.${key}`)) : [`${path}: ${typeof words}`];
}

/** The same in both languages: symbols, names, and words that German has taken over or had first. */
const shared: ReadonlySet<string> = new Set([
  'as-built-working.rows.planned',
  'common.dash', 'balance.grams', 'balance.pieces', 'balance-working.moments.moment', 'sheet.piece', 'sheet.sheetNumbers', 'sheet.pictureSheet', 'sheet.lengthOf', 'sheet-lists.corner', 'drawing.inUnit',
  'drawing.rows.several', 'drawing.heading', 'drawing.title', 'flight-check.plot.ratio', 'flight-check.wags.not', 'flight-path.seconds', 'flight-path.landing', 'flight-path.plan.bank',
  'flight-log.Version', 'flight-log.columns.version', 'flight-log.wind', 'flight-log.unsaid', 'flight-log.from', 'flight-log-panels.unnamed',
]);

/** Of books, which keep their language. */
const titles = /The Elements of Aerofoil and Airscrew Theory|USAF Stability and Control DATCOM|Dynamics of Flight|Basic Aircraft Design Rules|A Thousand Ways to Pack the Bin|e-Handbook of Statistical Methods/g;

const spoken = (element: Element): string => (element.shadowRoot?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

describe('German', () => {
  it('has words for every topic, in the shape they have in English', async () => {
    expect(Object.keys(pack).sort()).to.deep.equal(topics.map(({name}) => name).sort());
    for (const {name, en} of topics) expect([...shapeOf((await german(name)).words, name)].sort(), name).to.deep.equal([...shapeOf(en, name)].sort());
  });

  it('says something everywhere, fills in what English fills in, and leaves nothing in English', async () => {
    let sentences = 0;
    for (const {name, en} of topics) {
      const inGerman = new Map(textsOf((await german(name)).words, name));
      for (const [path, text] of textsOf(en, name)) {
        const said = inGerman.get(path);
        if (said === undefined) throw new Error(`nothing at ${path}`);
        expect(said.trim() === '', path).to.equal(text.trim() === '');
        expect(said, path).not.to.match(/undefined|NaN|\[object/);
        expect(filledIn(said), path).to.deep.equal(filledIn(text));
        if (shared.has(path)) continue;
        sentences++;
        expect(said, path).not.to.equal(text);
        expect(said.replace(titles, '').replace(/‹\w+›/g, ''), path).not.to.match(/\b(the|of|and|with|wing|board|sheet|must|prop|from|is)\b/);
      }
    }
    expect(sentences).to.be.above(400);
  });

  it('writes as German is printed: its own quotes, no straight apostrophe', async () => {
    for (const {name} of topics) for (const [path, text] of textsOf((await german(name)).words, name)) expect(text, path).not.to.match(/[“‘'’](?=\w)|\w[’']\w/);
  });

  it('counts in the right case and number', async () => {
    const {default: sheet} = await import('../../src/messages/de/sheet.js');
    const fits = {sheets: 1, kits: 1, old: 0, sheet: '1000 × 500 mm', leftover: undefined, from: 'one'} as const;
    expect(sheet.fits(fits)).to.equal('Alles passt auf **eine Platte** von 1000 × 500 mm; ein brauchbarer Rest bleibt nicht.');
    expect(sheet.fits({...fits, sheets: 3, kits: 12, leftover: '300 × 200 mm', from: 'last'}))
      .to.equal('**12 Gleiter** brauchen **drei Platten** von 1000 × 500 mm; von der letzten bleibt ein Stück von **300 × 200 mm** übrig.');
    expect(sheet.gives({...fits, sheets: 2, gliders: 1, used: 1, capped: false}))
      .to.equal('**Zwei Platten** von 1000 × 500 mm ergeben **einen Gleiter**, schon aus einer Platte; der Rest bleibt ganz.');
    expect(sheet.longest({sheets: 1, kits: 2, span: '800 mm', whole: false, sheet: 'A1'})).to.equal('Auf **einer Platte** von A1 können die Flügel von zwei Gleitern je **800 mm** lang sein.');
    expect(sheet.givesNone({sheets: 1, needed: 2, sheet: 'A1'})).to.equal('Eine Platte von A1 reicht **nicht für einen Gleiter**: Er braucht **zwei Platten**.');
    expect(sheet.doesNotFit({missing: ['body', 'tailplane'], sheets: 0, sheet: 'A1'}))
      .to.equal('**Der Rumpf und das Höhenleitwerk passen nicht** auf eine Platte von A1; sonst gibt es nichts zu verteilen.');

    const {default: balance} = await import('../../src/messages/de/balance.js');
    expect([balance.piece('eur-0.01', 1), balance.piece('eur-0.01', 2), balance.piece('washer-m6', 1), balance.piece('washer-m6', 4)])
      .to.deep.equal(['Ein-Cent-Münze', 'Ein-Cent-Münzen', 'M6-Unterlegscheibe', 'M6-Unterlegscheiben']);

    const {default: camber} = await import('../../src/messages/de/camber.js');
    expect([camber.stack(1, 0, 0), camber.stack(2, 1, 3), camber.stack(0, 0, 0)]).to.deep.equal(['1 Lage Platte', '2 Lagen Platte, 1 Stück Karton und 3 Blatt Papier', 'nichts']);
    expect([camber.wholeLayers({layers: 1, camber: '2 %'}), camber.wholeLayers({layers: 2, camber: '4 %'})])
      .to.deep.equal(['1 ganze Lage ergäbe 2 %.', '2 ganze Lagen ergäben 4 %.']);

    const {default: dihedral} = await import('../../src/messages/de/dihedral.js');
    const stand = {where: 'plumb', outermost: true, inset: '', fromJoint: '', width: '20 mm', propped: 'one-half', block: '40 mm', angle: '6°', fold: '12°'} as const;
    expect(dihedral.by.angle(stand))
      .to.equal('Eine Hälfte flach auflegen und die andere auf einen **40 mm** hohen und 20 mm breiten Klotz stützen, außen bündig mit dem Flügelende: Jede Hälfte steigt um **6°**, zusammen ein Knick von 12°.');
    expect(dihedral.by.angle({...stand, where: 'edge', outermost: false, propped: 'panel'}))
      .to.equal('Dann jeden inneren Flügelteil am nächsten Knick auf einen **40 mm** hohen Klotz stützen: Der Flügelteil steigt um **6°**.');
  });

  it('is spoken by a calculator, its figure, its working and its refusals', async () => {
    const element = await fixture(html`<glider-camber-shim lang="de" chord="115 mm" crease="45 mm" stack="10 mm"></glider-camber-shim>`);
    await until(() => spoken(element).includes('Wölbung'));
    expect(element.shadowRoot?.querySelector('[part=answer]')?.textContent.replaceAll('\u00a0', ' '))
      .to.match(/^Die Hinterkante auf 2 Lagen Platte \(10 mm\) stützen\. Das knickt den Flügel um 8,2° und gibt ihm \d,\d % Wölbung\./);
    await until(() => element.shadowRoot?.querySelector('svg')?.textContent.includes('Falz'), 'the figure stays in English');
    expect(element.shadowRoot?.querySelector('svg')?.textContent).not.to.match(/bench|crease|touches/);

    const working = element.shadowRoot?.querySelector<HTMLDetailsElement>('details[part=working]');
    if (working) working.open = true;
    await until(() => spoken(element).includes('Rechtwinkliges Dreieck'), 'the working stays in English');

    const stack = element.shadowRoot?.querySelector<HTMLInputElement>('[id="field-wing.stack"]');
    if (!stack) throw new Error('no field');
    stack.value = 'hoch';
    stack.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
    await until(() => spoken(element).includes('„hoch“ lässt sich nicht als Länge lesen.'), 'the refusal stays in English');
  });

  it('is no news where an answer only changes its language', async () => {
    const around = await fixture<HTMLElement>(html`<div lang="en-GB"><glider-camber-shim></glider-camber-shim></div>`);
    const [element] = around.getElementsByTagName('glider-camber-shim');
    if (!element) throw new Error('no element');
    around.lang = 'de';
    await until(() => spoken(element).includes('stützen'));
    await new Promise((later) => setTimeout(later, 900));   // longer than a burst of changes may last
    expect(element.shadowRoot?.querySelector('[aria-live]')?.textContent).to.equal('');
  });

  it('is spoken inside a sentence, with a decimal comma', async () => {
    const sentence = await fixture(html`<p lang="de-AT"><glider-value name="wing.camber" digits="1">?</glider-value>, <glider-value name="wing.propped">?</glider-value></p>`);
    const [camber, propped] = sentence.getElementsByTagName('glider-value');
    if (!camber || !propped) throw new Error('no element');
    await until(() => spoken(propped) === 'der hintere Flügelteil');
    expect(spoken(camber)).to.equal('4,0 %');
  });

  it('loads only the topics that are asked for', () => {
    expect(Object.entries(pack).filter(([, words]) => typeof words === 'object').map(([name]) => name)).to.deep.equal(['common', 'dimensions']);
  });
});

describe('American English', () => {
  it('spells every topic its own way', () => {
    let changed = 0;
    for (const topic of topics) {
      const usual = new Map(textsOf(american(topic), topic.name));
      for (const [path, text] of textsOf(topic.en, topic.name)) {
        const said = usual.get(path);
        expect(said, path).not.to.match(/centre|grey|colour|aerofoil|aeroplane|metre|gramme|modelling/i);
        if (said !== text) changed++;
      }
    }
    expect(changed).to.be.above(3);
  });

  it('is spoken by elements', async () => {
    const balance = await fixture(html`<glider-balance-point lang="en-US"></glider-balance-point>`);
    const sheet = await fixture(html`<glider-parts-sheet lang="en-US"></glider-parts-sheet>`);
    await until(() => spoken(balance).includes('modeling clay'));
    await until(() => /Center line/.test(spoken(sheet)));
    expect(sheet.shadowRoot?.querySelector<HTMLOptGroupElement>('optgroup:last-of-type')?.label).to.equal('Sold in millimeters');
    expect(sheet.shadowRoot?.innerHTML).not.to.match(/centre|metre/i);
  });
});
