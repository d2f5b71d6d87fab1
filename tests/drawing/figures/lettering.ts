import {expect, fixture, html} from '@open-wc/testing';
import {printInk, type Ink} from '../../../src/drawing/ink.js';
import {Pen} from '../../../src/drawing/pen.js';
import type {View} from '../../../src/drawing/view.js';

/** A face as wide as a page may be set in, so that what has room here has room everywhere. */
export const wideInk: Ink = {...printInk, font: 'DejaVu Serif, DejaVu Sans, Verdana, helvetica'};

/** A figure drawn at a width in pixels, as large as it would be on a page. */
export async function drawnAt(width: number, draw: (pen: Pen, widthPx: number) => View): Promise<SVGSVGElement> {
  const host = await fixture<HTMLElement>(html`<div><svg width=${width}></svg></div>`);
  const svg = host.querySelector('svg');
  if (!svg) throw new Error('no svg');
  draw(new Pen(svg, wideInk), width);
  svg.setAttribute('height', String(width * svg.viewBox.baseVal.height / svg.viewBox.baseVal.width));
  return svg;
}

/** Where the letters of a text stand on the page. Firefox gives a text's bounding rectangle a pixel more on each side; its box in the drawing is exact. */
export function boxOf(text: SVGTextElement): DOMRect {
  const {x, y, width, height} = text.getBBox();
  const matrix = text.getScreenCTM();
  if (!matrix) throw new Error('not on the page');
  const corners = [[x, y], [x + width, y], [x, y + height], [x + width, y + height]].map(([a, b]) => new DOMPoint(a, b).matrixTransform(matrix));
  const [left, top] = [Math.min(...corners.map((p) => p.x)), Math.min(...corners.map((p) => p.y))];
  return new DOMRect(left, top, Math.max(...corners.map((p) => p.x)) - left, Math.max(...corners.map((p) => p.y)) - top);
}

/** Letters large enough to read, in sight, and clear of each other. */
export function expectReadable(svg: SVGSVGElement): void {
  const sheet = svg.getBoundingClientRect();
  const letters = [...svg.querySelectorAll('text')].filter((text) => text.textContent !== '')
    .map((text) => ({words: text.textContent, box: boxOf(text), size: Number(text.getAttribute('font-size')) * sheet.width / svg.viewBox.baseVal.width}));
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
