import {html} from 'lit';
import type {TemplateResult} from 'lit';

/** Words with `**what is exact**` set in bold; everything is text, so no entry can become markup. */
export const emphasised = (words: string): TemplateResult =>
  html`${words.split('**').map((piece, i) => (i % 2 ? html`<strong>${piece}</strong>` : piece))}`;

/** The same words as plain text, for announcing and copying. */
export const plain = (words: string): string => words.replaceAll('**', '');
