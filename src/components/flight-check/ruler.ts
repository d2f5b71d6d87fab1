import {svg, html, nothing} from 'lit';
import type {SVGTemplateResult, TemplateResult} from 'lit';
import type {Measure} from '../../calc/flight/flight-check.js';

/** The usual range takes the middle half; a tenth of it is a division. */
const start = 25, half = 50, divisions = 20;

const edge = 3;
const percent = (value: number): string => `${value.toFixed(2)}%`;
const within = (place: number): number => Math.min(Math.max(place, edge), 100 - edge);

/**
 * A number on a ruler: the usual range is the thick stretch with its ends lettered, the pointer is solid inside it and hollow outside, and points off the
 * end where the number lies further out; the bar over it is how far an estimate may be out. Said in words beside it, so hidden from assistive technology.
 */
export function ruler({value, from, to, standing}: Measure, ends: readonly [from: string, to: string]): TemplateResult {
  const place = (at: number): number => start + half * (at - from) / (to - from);
  const at = place(value.usual);
  const [low, high] = [within(place(value.least)), within(place(value.most))];
  const solid = standing === 'within';
  return html`<svg class="ruler" direction="ltr" aria-hidden="true" focusable="false">
    <line x1="0" x2="100%" y1="18" y2="18" stroke="var(--_ink)" stroke-width="1"></line>
    <rect x=${percent(start)} width=${percent(half)} y="16" height="4" fill="var(--_ink)"></rect>
    ${Array.from({length: divisions + 1}, (_, i) => tick(i))}
    ${high - low > 1 ? svg`<line x1=${percent(low)} x2=${percent(high)} y1="6" y2="6" stroke="var(--_soft)" stroke-width="1.5"></line>
      ${[low, high].map((x) => svg`<line x1=${percent(x)} x2=${percent(x)} y1="2.5" y2="9.5" stroke="var(--_soft)" stroke-width="1.5"></line>`)}` : nothing}
    <svg x=${percent(within(at))} overflow="visible"><path d=${pointer(at)} fill=${solid ? 'var(--_ink)' : 'var(--_paper)'} stroke="var(--_ink)" stroke-width="1.5" stroke-linejoin="round"></path></svg>
    <text x=${percent(start)} y="41" text-anchor="middle">${ends[0]}</text><text x=${percent(start + half)} y="41" text-anchor="middle">${ends[1]}</text>
  </svg>`;
}

/** Down to the ruler, or off its end. */
function pointer(at: number): string {
  if (at < edge) return 'M-6 10L4 4.5V15.5Z';
  if (at > 100 - edge) return 'M6 10L-4 4.5V15.5Z';
  return 'M0 15.5L-5 4.5H5Z';
}

function tick(i: number): SVGTemplateResult {
  const x = percent(i * 100 / divisions), isEnd = i * 100 / divisions === start || i * 100 / divisions === start + half;
  return svg`<line x1=${x} x2=${x} y1="18" y2=${isEnd ? 29 : i % 5 === 0 ? 26 : 23} stroke="var(--_ink)" stroke-width=${isEnd ? 1.5 : 0.8}></line>`;
}
