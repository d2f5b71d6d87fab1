import {expect, fixture, html} from '@open-wc/testing';
import {printInk} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';
import type {View} from '../../../src/drawing/view.js';

/** A figure drawn at a width in pixels, as large as it would be on a page. */
export async function drawnAt(width: number, draw: (pen: Pen, widthPx: number) => View): Promise<SVGSVGElement> {
  const host = await fixture<HTMLElement>(html`<div><svg width=${width}></svg></div>`);
  const svg = host.querySelector('svg');
  if (!svg) throw new Error('no svg');
  draw(new Pen(svg, printInk), width);
  svg.setAttribute('height', String(width * svg.viewBox.baseVal.height / svg.viewBox.baseVal.width));
  return svg;
}

/** Letters large enough to read, in sight, and clear of each other. */
export function expectReadable(svg: SVGSVGElement): void {
  const sheet = svg.getBoundingClientRect();
  const letters = [...svg.querySelectorAll('text')].filter((text) => text.textContent !== '')
    .map((text) => ({words: text.textContent, box: text.getBoundingClientRect(), size: Number(text.getAttribute('font-size')) * sheet.width / svg.viewBox.baseVal.width}));
  expect(letters.length).to.be.greaterThan(2);
  for (const {words, box, size} of letters) {
    expect(box.left, words).to.be.at.least(sheet.left - 1);
    expect(box.right, words).to.be.at.most(sheet.right + 1);
    expect(box.top, words).to.be.at.least(sheet.top - 1);
    expect(box.bottom, words).to.be.at.most(sheet.bottom + 1);
    expect(size, words).to.be.at.least(10.99);
  }
  letters.forEach((a, i) => {
    for (const b of letters.slice(i + 1)) {
      const apart = a.box.right <= b.box.left + 1 || b.box.right <= a.box.left + 1 || a.box.bottom <= b.box.top + 3 || b.box.bottom <= a.box.top + 3;
      expect(apart, `${a.words} | ${b.words}`).to.equal(true);
    }
  });
}
