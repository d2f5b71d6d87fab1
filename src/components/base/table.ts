import {html} from 'lit';
import type {TemplateResult} from 'lit';
import {commonWords} from '../../messages/en/common.js';
import type {GliderElement} from './element.js';

/** A table of the numbers in a picture, for those who do not see it. */
export const numbersTable = (host: GliderElement, rows: readonly (readonly [name: string, value: string])[]): TemplateResult =>
  html`<table><caption class="source">${host.say(commonWords).numbers}</caption><tbody>${rows.map(([name, value]) =>
    html`<tr><th scope="row">${name}</th><td class="number">${value}</td></tr>`)}</tbody></table>`;
