import type {Sight} from '../../calc/trim-advice/seen.js';
import {screenInk} from '../../drawing/ink.js';
import {drawSight} from '../../drawing/figures/trim-advice.js';
import {Pen} from '../../drawing/pen.js';

const pens = new WeakMap<SVGSVGElement, Pen>();

/** Draws each small picture once; it follows the page's colours by itself. */
export function drawSights(svgs: Iterable<SVGSVGElement>): void {
  for (const svg of svgs) {
    if (pens.has(svg)) continue;
    const what = svg.dataset['sight'] as Sight;
    const pen = new Pen(svg, screenInk, `sight-${what}`);
    pens.set(svg, pen);
    drawSight(pen, 72, what);
  }
}
