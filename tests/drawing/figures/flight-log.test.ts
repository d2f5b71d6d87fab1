import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {drawThrows, scaleFor, type ThrowsPicture} from '../../../src/drawing/figures/flight-log.js';
import {screenInk} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';
import {flightLogWords} from '../../../src/messages/en/flight-log.js';
import {drawnAt, expectReadable} from './lettering.js';

const values = fc.array(fc.double({min: 0.01, max: 1e4, noNaN: true}), {maxLength: 40});

function drawn(picture: ThrowsPicture, width: number): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  drawThrows(new Pen(svg, screenInk, 'log'), width, picture);
  return svg;
}

const pictureOf = (dots: readonly number[], {from, to, step}: ReturnType<typeof scaleFor>): ThrowsPicture => ({
  lanes: [{names: ['A'], mean: '8', dots: dots.map((value, i) => ({value, out: i % 7 === 6})), average: dots[0], interval: undefined, band: {from, to: to + step}}],
  scale: {from, to, ticks: [{at: from, words: '0'}, {at: to, words: '1'}]},
  legend: {mean: 'average', interval: 'where it lies', band: 'predicted', out: 'left out'},
});

describe('the scale of a log of throws', () => {
  it('is round, holds every value, and wastes little', () => {
    fc.assert(fc.property(values, fc.boolean(), (all, fromNought) => {
      const {from, to, step} = scaleFor(all, fromNought, 6);
      for (const value of all) expect(value).to.be.within(from - 1e-9 * step, to + 1e-9 * to);
      expect((to - from) / step).to.be.within(1 - 1e-6, 8.001);
      expect(step / 10 ** Math.floor(Math.log10(step) + 1e-9)).to.satisfy((lead: number) => [1, 2, 5].some((one) => Math.abs(lead - one) < 1e-6));
      if (fromNought) expect(from).to.equal(0);
    }));
  });

  it('has a dot for every throw, at any width', () => {
    fc.assert(fc.property(values, fc.integer({min: 200, max: 1200}), (all, width) => {
      const svg = drawn(pictureOf(all, scaleFor(all, true, 6)), width);
      const dots = [...svg.querySelectorAll('path')].reduce((sum, path) => sum + (path.getAttribute('d')?.match(/a[\d.]+ [\d.]+ 0 1 0/g) ?? []).length / 2, 0);
      expect(dots).to.equal(all.length);
      expect(svg.outerHTML).not.to.match(/NaN|Infinity|undefined/);
    }), {numRuns: 60});
  });

  it('keeps a long legend inside a narrow picture', async () => {
    const lane = {names: ['A'], mean: '8,2 m', dots: [{value: 8, out: false}, {value: 3, out: true}], average: 8, interval: {from: 7, to: 9}, band: {from: 6, to: 12}};
    const legend = {mean: 'Mittel', interval: 'wo der wahre Mittelwert sehr wahrscheinlich liegt', band: 'was das Flugmodell vorhergesagt hat', out: 'nicht mitgezählt'};
    for (const width of [280, 328]) {
      expectReadable(await drawnAt(width, (pen, px) => drawThrows(pen, px, {lanes: [lane], scale: {from: 0, to: 14, ticks: [{at: 0, words: '0'}, {at: 14, words: '14 m'}]}, legend})));
    }
  });

  for (const width of [280, 320, 768, 1100]) {
    it(`is readable at ${String(width)} pixels`, async () => {
      const lane = {dots: [{value: 8, out: false}, {value: 3, out: true}], average: 8, interval: {from: 7, to: 9}, band: {from: 6, to: 12}};
      expectReadable(await drawnAt(width, (pen, px) => drawThrows(pen, px, {
        lanes: [['A, 12 throws'], ['More camber, still more, 120 throws', 'More cam…, 120 throws', 'Mo…, 120 throws']].map((names) => ({...lane, names, mean: 'average 8.23 m/s'})),
        scale: {from: 0, to: 14, ticks: [0, 2, 4, 6, 8, 10, 12, 14].map((at) => ({at, words: at === 14 ? '14.0\u00a0m' : `${String(at)}.0`}))},
        legend: flightLogWords.en.legend,
      })));
    });
  }
});
