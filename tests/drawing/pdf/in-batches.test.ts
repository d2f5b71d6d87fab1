import {expect} from '@open-wc/testing';
import {inBatches} from '../../../src/drawing/pdf/in-batches.js';
import {printInk} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';

function drawing(lines: number): SVGSVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('preserveAspectRatio', 'none');
  const pen = new Pen(svg, printInk);
  pen.begin({box: {x: 1, y: 2, width: 300, height: 200}, mmPerPx: 0.25});
  for (let i = 0; i < lines; i++) pen.line(`line-${String(i)}`, {x: i, y: 0}, {x: i, y: 9}, 'thin');
  pen.polygon('hatched', [{x: 0, y: 0}, {x: 9, y: 0}, {x: 9, y: 9}], 'thin', 'hatch');
  pen.finish();
  return svg;
}

describe('a drawing in batches', () => {
  it('has every node once and in order, each batch on the same page and with the patterns that it may need', () => {
    for (const lines of [3, 29, 30, 31, 200]) {
      const svg = drawing(lines);
      const order = [...svg.children].filter(({localName}) => localName !== 'pattern').map((node) => node.outerHTML);
      const batches = inBatches(svg);
      expect(batches.flatMap((batch) => [...batch.children].filter(({localName}) => localName !== 'pattern').map((node) => node.outerHTML))).to.deep.equal(order);
      for (const batch of batches) {
        expect(batch.getAttribute('viewBox')).to.equal('1 2 300 200');
        expect(batch.getAttribute('preserveAspectRatio')).to.equal('none');
        expect(batch.querySelectorAll('pattern')).to.have.length(1);
        expect(batch.children.length).to.be.within(2, 31);
      }
    }
  });
});
