import {expect} from '@open-wc/testing';
import {sights} from '../../../src/calc/trim-advice/seen.js';
import {drawSight, sightSheet} from '../../../src/drawing/figures/trim-advice.js';
import {screenInk} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';

function drawn(what: (typeof sights)[number]): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('width', String(sightSheet.width));
  document.body.append(svg);
  drawSight(new Pen(svg, screenInk), sightSheet.width, what);
  return svg;
}

describe('the small pictures of flights', () => {
  afterEach(() => { for (const svg of document.querySelectorAll('svg')) svg.remove(); });

  it('lie on their sheet, and no two are the same', () => {
    const pictures = sights.map((what) => {
      const svg = drawn(what);
      for (const one of svg.querySelectorAll<SVGGraphicsElement>(':scope > path, :scope > circle')) {
        const {x, y, width, height} = one.getBBox();
        expect(Math.min(x, y), what).to.be.at.least(0);
        expect(x + width, what).to.be.at.most(sightSheet.width);
        expect(y + height, what).to.be.at.most(sightSheet.height);
      }
      return svg.innerHTML;
    });
    expect(new Set(pictures).size).to.equal(sights.length);
  });

  it('show a turn to the side that it is called by, and level ground where one stands beside', () => {
    const leftmost = (what: 'left' | 'right'): number => drawn(what).querySelectorAll<SVGGraphicsElement>(':scope > path')[1]?.getBBox().x ?? NaN;
    expect(leftmost('left')).to.be.lessThan(30);
    expect(leftmost('right')).to.be.closeTo(sightSheet.width / 2, 0.5);
    expect(drawn('dives').innerHTML).to.contain('M2 41L70 41');
  });
});
