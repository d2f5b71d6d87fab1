import {css, html} from 'lit';
import type {TemplateResult} from 'lit';
import {dimensionPaths, isDimensionPath} from '../../calc/design/dimensions.js';
import type {DimensionPath} from '../../calc/design/dimensions.js';
import {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import {fieldStyles} from '../base/field-styles.js';
import {Fields} from '../base/fields.js';
import {baseStyles} from '../base/styles.js';

const asList = (text: string | undefined): readonly string[] => (text ?? '').split(/[\s,]+/).filter(Boolean);

/**
 * Fields for some dimensions of a glider.
 *
 * `show` names paths (`wing.span`) or groups (`wing`); what does not exist is said in its place. `lock` names paths to be shown but not
 * changed; `lock` alone locks all.
 *
 * @summary Fields for the dimensions of a glider.
 * @attr {string} show - Paths or groups of dimensions, space-separated.
 * @attr {string} lock - Paths that a reader may not change; empty for all.
 * @slot - Shown in place of the fields while there is no glider.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderDimensions extends GliderElement {
  static override properties = {...GliderElement.properties, show: {type: String}, lock: {type: String}};
  static override styles = [baseStyles, fieldStyles, css`:host { margin-block: 1rem; }`];

  declare show: string | undefined;
  declare lock: string | undefined;
  readonly #fields = new Fields(this);

  override render(): TemplateResult {
    if (this.link.status === 'missing' || this.link.status === 'seeking') return this.renderWithout();
    const {notices} = this.state;
    const locked = asList(this.lock);
    return html`${notices.map((notice) => html`<p class="problem" part="problem">${explain(this, notice)}</p>`)}
      <div class="fields">${asList(this.show).map((name) => {
        const paths = this.#named(name);
        if (paths.length === 0) return html`<p class="problem" part="problem">${explain(this, {code: 'no-such-dimension', args: {name}})}</p>`;
        return paths.map((path) => this.#fields.of(path, {disabled: this.lock !== undefined && (locked.length === 0 || locked.includes(path))}));
      })}</div>`;
  }

  #named(name: string): readonly DimensionPath[] {
    return isDimensionPath(name) ? [name] : dimensionPaths.filter((path) => path.startsWith(`${name}.`));
  }
}
