import {html, mathml} from 'lit';
import type {TemplateResult} from 'lit';

type MathPiece = TemplateResult | string;

/** A symbol such as θ. */
export const symbol = (name: string, below?: string): TemplateResult =>
  below === undefined ? mathml`<mi>${name}</mi>` : mathml`<msub><mi>${name}</mi><mi>${below}</mi></msub>`;

/** A quantity as written for the reader, its unit upright. Not `mtext`, which counts as space and takes the room from around operators. */
export const quantity = (written: string): TemplateResult => mathml`<mn>${written}</mn>`;

export const number = (written: string): TemplateResult => mathml`<mn>${written}</mn>`;

export const operator = (sign: string): TemplateResult => mathml`<mo>${sign}</mo>`;

export const row = (...pieces: readonly MathPiece[]): TemplateResult => mathml`<mrow>${pieces}</mrow>`;

export const fraction = (above: MathPiece, below: MathPiece): TemplateResult => mathml`<mfrac>${row(above)}${row(below)}</mfrac>`;

export const power = (base: MathPiece, exponent: string): TemplateResult => mathml`<msup>${base}<mn>${exponent}</mn></msup>`;

export const root = (inside: MathPiece): TemplateResult => mathml`<msqrt>${inside}</msqrt>`;

/** A function's name before its argument: `arcsin`. */
export const named = (name: string, argument: MathPiece): TemplateResult => mathml`<mrow><mi>${name}</mi><mo>\u2061</mo><mspace width="0.16em"/>${argument}</mrow>`;

export const brackets = (inside: MathPiece): TemplateResult => mathml`<mrow><mo>(</mo>${inside}<mo>)</mo></mrow>`;

/**
 * An equation that breaks at its equals signs where the page is narrow. `spoken` says it in words, since not every reader of screens
 * knows MathML.
 */
export const equation = (spoken: string, ...sides: readonly MathPiece[]): TemplateResult => html`<div class="equation" role="math" aria-label=${spoken}>${
  sides.map((side, i) => html`<math aria-hidden="true" displaystyle="true">${i ? mathml`<mrow><mo>=</mo>${side}</mrow>` : mathml`<mrow>${side}</mrow>`}</math>`)}</div>`;
