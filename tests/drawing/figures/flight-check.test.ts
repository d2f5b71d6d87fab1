import {expect} from '@open-wc/testing';
import {drawFlightPlot, reachOf, tickStep, type FlightPlot, type SinkAt} from '../../../src/drawing/figures/flight-check.js';
import {screenInk} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';

const at = (speed: number, usual: number): SinkAt => ({speed, least: usual * 0.7, usual, most: usual * 1.3});

const plot: FlightPlot = {
  polar: [at(14, 9.8), at(11, 4.4), at(9, 2.6), at(7.5, 1.7), at(6.5, 1.3), at(5.8, 1.05), at(5.2, 0.96)], stall: 5.2, best: at(5.6, 1.03),
  here: {...at(6.5, 1.3), slow: 5.8, fast: 7.2},
  words: {speed: 'flying speed, m/s', sink: 'sink, m/s', stall: 'stalls below', stallSpeed: '5.2 m/s', best: 'flattest glide', bestRatio: '1 : 5', throwAt: 'throw at', throwSpeed: 'about 6.5 m/s', tick: String},
};

function drawn(width: number, data: FlightPlot): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('width', String(width));
  document.body.append(svg);
  drawFlightPlot(new Pen(svg, screenInk), width, data);
  return svg;
}

const boxes = (svg: SVGSVGElement): readonly (readonly [string, DOMRect])[] => [...svg.querySelectorAll('text')].map((text) => [text.textContent, text.getBBox()]);

describe('plot of speed and sink', () => {
  for (const width of [280, 320, 768, 1100]) {
    it(`keeps its lettering apart and inside at ${String(width)} px`, () => {
      const svg = drawn(width, plot);
      const all = boxes(svg);
      expect(all.length).to.be.greaterThan(10);
      all.forEach(([words, box], i) => {
        expect(box.x, words).to.be.at.least(-0.5);
        expect(box.x + box.width, words).to.be.at.most(width + 0.5);
        for (const [other, rect] of all.slice(i + 1)) {
          const overlap = Math.min(box.x + box.width, rect.x + rect.width) - Math.max(box.x, rect.x) > 0.5 && Math.min(box.y + box.height, rect.y + rect.height) - Math.max(box.y, rect.y) > 3;
          expect(overlap, `${words} / ${other}`).to.equal(false);
        }
      });
      svg.remove();
    });
  }

  it('draws the plane’s dot where the axes put its speed and sink', () => {
    const svg = drawn(600, plot);
    const [dot] = [...svg.querySelectorAll('circle')].slice(-1);
    const {speed, sink} = reachOf(plot);
    const height = Number(svg.getAttribute('viewBox')?.split(' ')[3]);
    expect(Number(dot?.getAttribute('cx'))).to.be.closeTo(34 + (600 - 34 - 12) * 6.5 / speed, 1e-3);
    expect(Number(dot?.getAttribute('cy'))).to.be.closeTo(44 + (height - 44 - 24) * 1.3 / sink, 1e-3);
    svg.remove();
  });

  it('leaves out the plane that has no glide of its own', () => {
    const svg = drawn(600, {...plot, here: undefined});
    expect(svg.querySelectorAll('circle').length).to.equal(1);
    expect(svg.textContent).not.to.contain('throw at');
    svg.remove();
  });

  it('reaches beyond the plane’s own speed, and divides into steps of 1, 2 or 5', () => {
    expect(reachOf(plot).speed).to.be.greaterThan(7.2);
    expect(reachOf({...plot, here: {...at(12, 5.7), slow: 10, fast: 13}}).sink).to.be.greaterThan(5.7);
    expect([tickStep(9, 10), tickStep(9, 5), tickStep(2.4, 5), tickStep(30, 8)]).to.deep.equal([1, 2, 0.5, 5]);
  });
});
