import {expect, fixture, html} from '@open-wc/testing';
import {drawBalance, type BalancePicture} from '../../../src/drawing/figures/balance.js';
import {Pen} from '../../../src/drawing/pen.js';
import {boxOf, wideInk} from './lettering.js';

const slab = (x: number, length: number) => [{x, y: 0}, {x: x + length, y: 0}, {x: x + length, y: -5}, {x, y: -5}];
const picture = (changed: Partial<BalancePicture> = {}): BalancePicture => ({
  body: [{x: 0, y: 32}, {x: 600, y: 32}, {x: 600, y: 0}, {x: 0, y: 0}], height: 32, length: 600,
  wing: slab(150, 120), tip: [], tailplane: slab(520, 75), fin: [{x: 525, y: -5}, {x: 595, y: -5}, {x: 595, y: -75}, {x: 525, y: -75}],
  wingAt: 150, now: 240, then: 196, target: {from: 187, to: 205}, neutral: 223,
  fitted: [{at: 300, radius: 3, words: '2 g'}], added: {at: 15, radius: 11, words: '24 g'},
  words: {now: 'now 90 mm', then: 'then 46 mm', here: 'balance here: 37 to 55 mm', hereShort: 'balance here', neutral: 'neutral point'},
  ...changed,
});

async function draw(data: BalancePicture, width: number): Promise<SVGSVGElement> {
  const host = await fixture<HTMLElement>(html`<div><svg width=${width}></svg></div>`);
  const svg = host.querySelector('svg');
  if (!svg) throw new Error('no svg');
  drawBalance(new Pen(svg, wideInk), width, data);
  svg.setAttribute('height', String(width * svg.viewBox.baseVal.height / svg.viewBox.baseVal.width));
  return svg;
}

const lettersOf = (svg: SVGSVGElement) => [...svg.querySelectorAll('text')].map((text) => ({words: text.textContent, box: boxOf(text)}));

describe('the figure of a balance point', () => {
  const pictures = {
    'tail-heavy': picture(), 'on target': picture({then: undefined, added: undefined, now: 195}),
    'nose-heavy': picture({now: 160, added: {at: 580, radius: 9, words: '5 g'}, fitted: [{at: 10, radius: 3, words: '60 g'}]}),
    'ahead of the wing': picture({now: 120, then: 140, target: {from: 130, to: 148}}),
  };

  for (const [name, data] of Object.entries(pictures)) {
    for (const width of [300, 520, 1000]) {
      it(`keeps its lettering apart and in sight, ${name}, ${String(width)} px wide`, async () => {
        const svg = await draw(data, width);
        const sheet = svg.getBoundingClientRect();
        const letters = lettersOf(svg);
        expect(letters.length).to.be.greaterThan(2);
        for (const {words, box} of letters) {
          expect(box.left, words).to.be.at.least(sheet.left - 1);
          expect(box.right, words).to.be.at.most(sheet.right + 1);
          expect(box.height, words).to.be.at.least(11);
        }
        letters.forEach((a, i) => {
          for (const b of letters.slice(i + 1)) {
            const apart = a.box.right <= b.box.left || b.box.right <= a.box.left || a.box.bottom <= b.box.top + 2 || b.box.bottom <= a.box.top + 2;
            expect(apart, `${a.words} | ${b.words}`).to.equal(true);
          }
        });
      });
    }
  }

  it('is to scale: 600 mm of body and 14 px on either side fill its width', async () => {
    const svg = await draw(picture(), 628);
    expect(svg.viewBox.baseVal.width).to.be.closeTo(628, 1e-3);
    expect((await draw(picture(), 328)).viewBox.baseVal.width).to.be.closeTo(656, 1e-3);
  });

  it('is not blown out of scale by a balance point far beyond the plane', async () => {
    const svg = await draw(picture({now: 50_000, then: undefined, added: undefined}), 600);
    expect(svg.viewBox.baseVal.width).to.be.lessThan(700);
    expect(lettersOf(svg).map(({words}) => words)).not.to.include('now 90 mm');
  });
});
